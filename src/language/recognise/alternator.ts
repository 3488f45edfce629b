import { alternatorKinds } from '../words/en/alternator-kinds.ts';
import type { Mention } from './mention.ts';

const reach = 6;

/** The mentions, where one is an alternator with the words near it that may tell its kind taken as such: "alt's a fixed 140". */
export function alternatorTold(mentions: readonly Mention[]): readonly Mention[] {
  const at = mentions.findIndex(m => m.kind === 'alternator' && m.key === '');
  if (at < 0) return mentions;
  return mentions.map((m, i) => {
    const isWord = m.kind === 'word' || m.kind === 'noun' || m.kind === 'average' || m.kind === 'always';
    const key = isWord && Math.abs(i - at) <= reach ? told(m.text) : undefined;
    return key === undefined ? m : { ...m, kind: 'alternator', key, cls: `alternator?:${key}` };
  });
}

const told = (text: string): 'smart' | 'fixed' | undefined =>
  Object.hasOwn(alternatorKinds, text) ? alternatorKinds[text] : undefined;
