import type { State } from '../state.ts';

const otherScript = /[\u0370-\u1fff\u2e80-\ud7ff\uf900-\ufdff\ufe70-\ufefc]/;

/** Says where half of the words or more are of another script; numbers and units are read all the same. */
export function script(state: State): void {
  const words = state.tokens.filter(({ kind }) => kind === 'word');
  const foreign = words.filter(({ text }) => text.charCodeAt(0) > 0x36f && otherScript.test(text));
  const span = { from: 0, to: state.text.length };
  if (foreign.length > 0 && foreign.length * 2 >= words.length)
    state.issues.push({ code: 'other-language', span, data: {} });
}
