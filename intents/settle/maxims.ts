import type { Mention } from '#language/recognise/mention.ts';
import { isSpotted, spotted } from '../spotting.ts';
import { type Maxim, maxims } from './maxims-table.ts';

/** What somebody says of a maxim: that it is so, or that it isn't. */
export type SaidOf = 'yes' | 'no';

const byName = new Map(maxims.map(maxim => [maxim.name, maxim]));

/** The maxim of a name that a chat kept. */
export const maximNamed = (name: string): Maxim | undefined => byName.get(name);

/** Which way words take a maxim, once that is what they are about. */
export function wayOf({ claims, denies }: Maxim, words: readonly string[]): SaidOf | undefined {
  if (isSpotted(words, denies)) return 'no';
  return isSpotted(words, claims) ? 'yes' : undefined;
}

/** In longer messages, which mostly tell a whole rig, words that stand far apart claim nothing together. */
const mostWords = 30;

/** Figures that go without saying in a claim: nominal volts, times, shares. */
const saidOfAny: ReadonlySet<string> = new Set(['voltage', 'time', 'percent', 'temperature']);

/** Whether figures of a rig are told ("a month", "an amp" are none): then it is a sum that settles it. */
export const hasRigFigures = (mentions: readonly Mention[]): boolean =>
  mentions.some(
    ({ kind, dimension, text }) =>
      kind === 'amount' && !saidOfAny.has(dimension ?? '') && !/^an?\b/i.test(text),
  );

/** The maxim that words take one way or the other. */
export const maximIn = (words: readonly string[]): Maxim | undefined =>
  words.length > mostWords
    ? undefined
    : spotted(
        words,
        maxims,
        ({ about }) => about,
        maxim => wayOf(maxim, words) !== undefined,
      );
