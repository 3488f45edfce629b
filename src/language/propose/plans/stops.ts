import { present } from '#basics/present.ts';
import type { Mention } from '../../recognise/mention.ts';

const hard: ReadonlySet<string> = new Set(['.', ';', '?', '!']);
const comma: ReadonlySet<string> = new Set([',']);

/** How strongly a mention parts what is around it: a comma 1, the end of a sentence 3, else 0. */
export const stopOf = (m: Mention): number =>
  m.kind !== 'sign' ? 0 : hard.has(m.text) ? 3 : comma.has(m.text) ? 1 : 0;
/** As `stopOf`; a stroke parts too where no numbers stand beside it. */
export const stopAt = (mentions: readonly Mention[], i: number): number =>
  present(mentions[i]).text === '/' &&
  !(mentions[i - 1]?.kind === 'number' && mentions[i + 1]?.kind === 'number')
    ? 1
    : stopOf(mentions[i]!);
