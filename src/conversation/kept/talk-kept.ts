import type { Memory } from '../memory.ts';

type Kept = NonNullable<Memory['talk']>;

/** What the lines before left, without what one person left of it: their last question, what they asked before, their lines. */
export function talkWithout(talk: Kept, from: string): Kept | undefined {
  if (talk.lastFrom === from) return undefined;
  const asks = talk.asks?.filter(([who]) => who !== from);
  const lines = talk.lines?.filter(([who]) => who !== from);
  const named = talk.named === from ? undefined : talk.named;
  return talk.lastWriter === from
    ? { ...talk, asks, lines, named, said: [], meant: [], lastWriter: undefined }
    : { ...talk, asks, lines, named };
}

/** The same with a person's new name in the place of the old one. */
export function talkRenamed(talk: Kept, old: string, now: string): Kept {
  const name = (from: string | undefined): string | undefined => (from === old ? now : from);
  return {
    ...talk,
    lastFrom: name(talk.lastFrom),
    lastWriter: name(talk.lastWriter),
    named: name(talk.named),
    asks: talk.asks?.map(([from, intent]) => [from === old ? now : from, intent]),
    lines: talk.lines?.map(([from, words]) => [from === old ? now : from, words]),
  };
}
