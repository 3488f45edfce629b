import {
  isMedicalTold,
  isWithinCable,
  isWithinInverter,
  isWithinLighter,
  ruledOut,
  type Told,
} from '#language/hazards/told.ts';
import type { HazardCode } from '#rig/hazard-codes.ts';

type Concepts = ReadonlySet<string>;

/** What is seen of a message besides its facts. */
interface Shown {
  readonly concepts: Concepts;
  /** Gear is told, and nothing asked of it. */
  readonly isOnlyTold: boolean;
  /** The dangers that its facts rule out, whatever its words. */
  readonly byFacts: readonly HazardCode[];
}

interface Ruling {
  readonly code: HazardCode;
  /** Whether facts show that the danger is not there. */
  readonly isOut: (told: Told, shown: Shown) => boolean;
  /** What the words may show that no fact covers: then the danger stays. */
  readonly unless: Concepts;
}

const set = (...concepts: string[]): Concepts => new Set(concepts.join(' ').split(' '));
const heat = 'hot warm melt burnt-smell smoke flames';
/** What is on the way beside an inverter or a socket, and could be passed. */
const others = 'bms limit limit-word small-plug supply alternator isolator no-dcdc';

/** No starter battery is as small, and no jump pack larger, Ah. */
const mostOfPackAh = 30;

/** A battery's limit told ("my lithium has a 100 A BMS"), and nothing that could pass it. */
const isLimitAlone = ({
  batteries = [],
  loads,
  inverter,
  chargers,
  alternatorA,
  cable,
  fuseA,
}: Told): boolean =>
  batteries.some(({ maxCurrentA }) => maxCurrentA !== undefined) &&
  !loads?.length &&
  !chargers?.length &&
  [inverter, alternatorA, cable, fuseA].every(fact => fact === undefined);

const rulings: readonly Ruling[] = [
  {
    code: 'over-current',
    isOut: (told, { isOnlyTold, byFacts }) =>
      byFacts.includes('over-current') || (isOnlyTold && isLimitAlone(told)),
    unless: set(heat, 'ciggy small-plug socket plug supply alternator isolator no-dcdc direct'),
  },
  {
    code: 'over-current',
    isOut: isWithinInverter,
    unless: set(heat, others, 'ciggy wire-word thin chained'),
  },
  {
    code: 'over-current',
    isOut: (told, { concepts }) => concepts.has('ciggy') && isWithinLighter(told),
    unless: set(heat, others, 'wire-word thin #over-socket #over-fuse'),
  },
  // A fuse of which the size is told is there, unless words say where none is.
  {
    code: 'no-fuse',
    isOut: ({ fuseA }) => fuseA !== undefined,
    unless: set('no-fuse omit bypass-fuse cut-out nothing-else need-it short-run denial far'),
  },
  // A fuse that the told cable carries is none too large for it.
  {
    code: 'bigger-fuse',
    isOut: isWithinCable,
    unless: set(heat, 'blow foil bypass-fuse always bigger #over-fuse'),
  },
  // "What would you use then?" of a fuse just asked about shows nothing of its own.
  {
    code: 'bigger-fuse',
    isOut: (_told, { concepts }) => [...concepts].every(concept => concept === 'need-it'),
    unless: set(),
  },
  {
    code: 'mixed-parallel',
    isOut: (_told, { byFacts }) => byFacts.includes('mixed-parallel'),
    unless: set('old different age-word year-word one-of-them car-battery'),
  },
  {
    code: 'starter-flat',
    isOut: (_told, { byFacts }) => byFacts.includes('starter-flat'),
    unless: set(
      'no-start slow clicks dead-car battery-dead flat old remote always all-night frost #low-volts #below-zero',
    ),
  },
  // A jump pack asked for its hours or charges starts nothing.
  {
    code: 'jump-start',
    isOut: ({ batteries = [] }, { concepts }) =>
      concepts.has('jump') && batteries.some(({ capacityAh }) => (capacityAh ?? Infinity) <= mostOfPackAh),
    unless: set(
      'no-start clamps clamp-order will-start start-engine car dead-car battery-dead frost swollen second-battery lithium #two-voltages help-word',
    ),
  },
  {
    code: 'starter-flat',
    isOut: ({ batteries = [] }, { concepts }) =>
      concepts.has('jump') && batteries.every(({ capacityAh }) => (capacityAh ?? Infinity) <= mostOfPackAh),
    unless: set('no-start clamps will-start start-engine car-battery dead-car battery-dead frost'),
  },
  // The device of the talk before is none of a question that neither names nor counts it.
  { code: 'medical', isOut: told => !isMedicalTold(told), unless: set('medical') },
  { code: 'cold-charge', isOut: (_told, { byFacts }) => byFacts.includes('cold-charge'), unless: set() },
];

/** The dangers that facts rule out, unless the words show them in a way that no fact covers. */
export function outOf(told: Told, concepts: Concepts, isOnlyTold: boolean): readonly HazardCode[] {
  const shown: Shown = { concepts, isOnlyTold, byFacts: ruledOut(told) };
  return rulings.flatMap(({ code, isOut, unless }) =>
    [...unless].some(concept => concepts.has(concept)) || !isOut(told, shown) ? [] : [code],
  );
}
