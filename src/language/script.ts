import type { Token } from './lex/lex.ts';

const otherScript = /^[\u0370-\u1fff\u2e80-\ud7ff\uf900-\ufdff\ufe70-\ufefc]/;

/** Whether half of the words or more are of another script. */
export function isOtherScript(tokens: readonly Token[]): boolean {
  const words = tokens.filter(({ kind }) => kind === 'word');
  const foreign = words.filter(({ text }) => otherScript.test(text));
  return foreign.length > 0 && foreign.length * 2 >= words.length;
}
