import type { Token } from '../lex/lex.ts';
import type { Mention } from './mention.ts';

type Beside = NonNullable<Mention['label']>;

/** What a panel's label calls its figures: volts with nothing on it, and those and the amps of full power and of a short. */
const labels: Readonly<Record<string, Beside>> = {
  voc: 'open volts',
  uoc: 'open volts',
  vmp: 'working volts',
  vmpp: 'working volts',
  vpm: 'working volts',
  imp: 'amps',
  impp: 'amps',
  isc: 'amps',
};
/** What may stand between a label and its figure. */
const between: ReadonlySet<string> = new Set([':', '=', 'of', 'is', 'at', 'about', 'says', 'reads', '-']);
const reach = 2;

const fits = (m: Mention | undefined, beside: Beside): boolean =>
  m !== undefined &&
  (m.kind === 'number' ||
    (m.kind === 'amount' && m.dimension === (beside === 'amps' ? 'current' : 'voltage')));

/** Where the figure after the label at `at` stands. */
function after(mentions: readonly Mention[], at: number, beside: Beside): number | undefined {
  for (let i = at + 1; i <= at + reach; i++) {
    if (fits(mentions[i], beside)) return i;
    if (!between.has(mentions[i]?.text ?? '')) return undefined;
  }
  return undefined;
}

const before = (mentions: readonly Mention[], at: number, beside: Beside): number | undefined =>
  fits(mentions[at - 1], beside) ? at - 1 : undefined;

/**
 * The mentions, the figures of a panel's label marked as what they are: "Voc 22.4, Vmp 18.2 V" or "18.2 V Vmp 22.4 V Voc".
 * Who writes the first figure before its label writes them all so.
 */
export function panelLabelTold(mentions: readonly Mention[], tokens: readonly Token[]): readonly Mention[] {
  const marked = new Map<number, Beside>();
  let isFigureFirst: boolean | undefined;
  mentions.forEach((m, at) => {
    const word = m.to === m.from + 1 ? (tokens[m.from]?.text ?? '') : '';
    if (!Object.hasOwn(labels, word)) return;
    const beside = labels[word] as Beside;
    isFigureFirst ??= before(mentions, at, beside) !== undefined;
    const sides = isFigureFirst ? [before, after] : [after, before];
    const found = sides.map(side => side(mentions, at, beside)).find(i => i !== undefined && !marked.has(i));
    if (found !== undefined) marked.set(found, beside);
  });
  if (marked.size === 0) return mentions;
  return mentions.map((m, i) => (marked.has(i) ? { ...m, label: marked.get(i) } : m));
}
