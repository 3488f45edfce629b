import type { Mention } from '#language/recognise/mention.ts';
import type { Recognised } from '#language/recognise/recognise.ts';
import type { Stated, StatedSolar } from '#rig/rig.ts';

// "Voc 49.5, two in series on a 100/30": the panels are counted, and nobody says the word.

/** Words that may stand between a count and "in series". */
const between: ReadonlySet<string> = new Set(
  'x of them these those panels panel modules module wired connected all off'.split(' '),
);
/** More in one string nobody has who asks here. */
const mostInString = 20;

/** What is told of which: panels, or batteries. */
const isOfBattery = ({ kind, unit }: Mention): boolean =>
  kind === 'battery' || kind === 'chemistry' || unit === 'Ah';

/** How many are told right before "in series"; undefined where no number is, or where batteries were spoken of last. */
function countInSeries({ tokens, mentions }: Recognised): number | undefined {
  const series = mentions.find(({ kind, key }) => kind === 'arrangement' && key === 'series');
  if (!series) return undefined;
  let at = series.from;
  while (at > 0 && between.has(tokens[at - 1]?.text.toLowerCase() ?? '')) at--;
  const number = mentions.find(({ kind, to }) => kind === 'number' && to === at);
  if (number === undefined || !Number.isInteger(number.value)) return undefined;
  if (number.value < 2 || number.value > mostInString) return undefined;
  const things = mentions.filter(one => one.to <= number.from && (one.kind === 'solar' || isOfBattery(one)));
  const last = things.at(-1);
  return last !== undefined && isOfBattery(last) ? undefined : number.value;
}

/** Panels told in two, by their volts and by their number, as the one kind that they are. */
function asOne(solar: readonly StatedSolar[], count: number): StatedSolar | undefined {
  const [first = {}, second = {}, ...more] = solar;
  const isCounted = solar.some(one => one.count !== undefined && one.count !== count);
  const isTold = first.openCircuitV !== undefined || first.powerW !== undefined;
  const isOther = second.openCircuitV !== undefined || second.powerW !== undefined;
  return more.length > 0 || isCounted || isOther || !isTold ? undefined : { ...second, ...first, count };
}

/** Conditions of a panel's label, which stand where a place may: "49.5 V at STC". */
const ofLabels: ReadonlySet<string> = new Set(['stc', 'noct', 'nmot']);

/** Panels in series with the count told by "two in series" alone, and no label's test conditions for a place. */
export function withSeriesTold(facts: Stated, recognised: Recognised): Stated {
  const { place, ...placeless } = facts;
  const spoken = place !== undefined && ofLabels.has(place.toLowerCase()) ? placeless : facts;
  const { solar, arrangement } = spoken;
  if (!solar || arrangement !== 'series') return spoken;
  const count = countInSeries(recognised);
  const one = count === undefined ? undefined : asOne(solar, count);
  return one === undefined ? spoken : { ...spoken, solar: [one] };
}
