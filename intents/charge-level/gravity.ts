import type { Mention } from '#language/recognise/mention.ts';
import { decimals } from '#quantity/round.ts';
import type { Aside } from '../asides.ts';

/** Specific gravity of the acid, flat and full, at about 25 °C; in between it goes evenly. Common practice. */
const gravity = { flat: 1.12, full: 1.265 } as const;
/** What a hydrometer can show. */
const scale = { least: 1.05, most: 1.32 } as const;
/** Cells that differ by more than this are not alike: one is failing, or wants equalising. Common practice. */
const alike = 0.03;
/** From these levels on it counts as full, and below as too low, %. */
const levels = { full: 95, low: 55 } as const;

/** Readings of a hydrometer: "1.190", or "1190" as many are marked. */
const readings = (mentions: readonly Mention[]): number[] =>
  mentions.flatMap(({ kind, value }) => {
    if (kind !== 'number' || typeof value !== 'number') return [];
    const read = value > 1000 ? value / 1000 : value;
    return read >= scale.least && read <= scale.most ? [read] : [];
  });

const levelOf = (read: number): number =>
  Math.min(100, Math.max(0, Math.round((20 * (read - gravity.flat)) / (gravity.full - gravity.flat)) * 5));

function headline(mentions: readonly Mention[]): string {
  const read = readings(mentions);
  const [low, high] = [Math.min(...read), Math.max(...read)];
  if (high - low > alike)
    return `The cells differ: ${decimals(low, 3)} is about ${levelOf(low)} %, ${decimals(high, 3)} about ${levelOf(high)} %.`;
  const level = levelOf(low);
  const judged = level >= levels.full ? 'Full' : level <= 5 ? 'Flat' : `About ${level} % full`;
  const advice =
    level >= levels.full
      ? 'nothing to do'
      : level < levels.low
        ? 'charge it today'
        : 'fine for now, charge it right up when you can';
  return `${judged} by ${decimals(low, 3)}: ${advice}.`;
}

/** A hydrometer's reading of the acid in a wet battery, as its level. */
export const gravityAsides: readonly Aside[] = [
  {
    name: 'specific-gravity',
    hasAnyFigures: true,
    isAsked: 'for-sure',
    spots: ['hydrometer|hydrometers|gravity|sg|refractometer'],
    when: (_facts, { recognised: { mentions } }) => readings(mentions).length > 0,
    says: (_facts, mentions) => headline(mentions),
    lines: [
      'Wet cells: 1.265 to 1.28 is full, about 1.19 half, about 1.12 flat, at 25 °C.',
      'One cell more than 0.03 below the others is failing. Just topped up it reads low: charge it first, then read.',
    ],
    cautions: [],
    next: ['12.2V flooded at rest, how full?'],
  },
];
