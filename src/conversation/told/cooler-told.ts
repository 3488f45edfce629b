import type { IntentName } from '#answer/answer.ts';
import { cools, factsOf } from '#intents/facts.ts';
import { isEitherDraw } from '#intents/use.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { hasDraw } from '#rig/merge.ts';
import type { Stated, StatedLoad } from '#rig/rig.ts';
import { lastFrame, ownFrame, ownKey } from '../kept/recall.ts';
import type { Frame, Memory } from '../memory.ts';
import type { Message } from '../message.ts';

// A few bare words after an answer or a note, that tell more of the one thing in it that cools.

/** What such words tell, as the question or the note that they belong to has it. */
export interface CoolerTold {
  readonly intent: IntentName;
  readonly facts: Stated;
}

/** One thing that a bare line can tell of a fridge. */
interface Detail {
  /** Words of which one must be there; none: any line of amounts. */
  readonly keys: ReadonlySet<string>;
  /** What it tells of the load; undefined where the line's figures don't fit it, or it is known. */
  readonly told: (load: StatedLoad, figures: readonly Mention[]) => Partial<StatedLoad> | undefined;
}

const setOf = (words: string): ReadonlySet<string> => new Set(words.split(' '));

/** Words that may stand about it and add nothing. */
const fillers = setOf(
  'yes yeah yep no nah ok it is its it’s thats that the an a on in as fridge freezer draw draws one day over of time only just like about roughly around maybe litre litres l while when whenever compressor sorry btw oh and so',
);
const mostWords = 10;

/** The one figure of a line; undefined where it has none or several. */
const only = (figures: readonly Mention[]): Mention | undefined =>
  figures.length === 1 ? figures[0] : undefined;

const isOf = ({ kind, unit }: Mention, of: string): boolean => kind === 'amount' && unit === of;

/** Least and most that a camp fridge holds, L. */
const [leastL, mostL] = [5, 300];

/** How much of the time it runs, in %: "40 % of the time", "a third of the time". */
function shareOf(figure: Mention | undefined): number | undefined {
  if (!figure) return undefined;
  const share = isOf(figure, '%') ? figure.value : figure.kind === 'number' ? figure.value * 100 : 0;
  return share >= 1 && share < 100 ? Math.round(share) : undefined;
}

const details: readonly Detail[] = [
  // "Average", "that's its average", to an answer that took a draw one way and offered the other.
  {
    keys: setOf('average averaged averages avg'),
    told: (load, figures) => (figures.length === 0 && isEither(load) ? { isAverage: true } : undefined),
  },
  // "Only while it runs", "running": the draw noted is that of its compressor.
  {
    keys: setOf('running runs run'),
    told: (load, figures) => (figures.length === 0 && hasDraw(load) ? { isAverage: false } : undefined),
  },
  // "It only runs a third of the time."
  {
    keys: setOf('runs run running'),
    told: (load, figures) => {
      const dutyPercent = shareOf(only(figures));
      return dutyPercent !== undefined && hasDraw(load) ? { dutyPercent } : undefined;
    },
  },
  // "It's a 40 L."
  {
    keys: new Set(),
    told: (_load, figures) => {
      const litres = only(figures);
      const isSize = litres && isOf(litres, 'L') && litres.value >= leastL && litres.value <= mostL;
      return isSize ? { volumeL: litres.value } : undefined;
    },
  },
];

const isEither = (load: StatedLoad): boolean => factsOf({ loads: [load] }).loads?.some(isEitherDraw) === true;

/** The words of a line that are neither figures nor idle. */
const wordsOf = ({ recognised }: ParsedMessage): string[] =>
  recognised.words.map(word => word.replaceAll("'", '')).filter(word => /^[a-z]/.test(word));

/** What a line tells of a load, where all of its words are of that. */
function detailIn(parsed: ParsedMessage, load: StatedLoad): Partial<StatedLoad> | undefined {
  const words = wordsOf(parsed);
  if (parsed.words > mostWords || parsed.cues.has('question-mark')) return undefined;
  // "One" of "a 75 litre one" counts nothing.
  const figures = parsed.recognised.mentions.filter(
    ({ kind, text, value }) => kind === 'amount' || (kind === 'number' && !(value === 1 && text === 'one')),
  );
  const isShare = figures.some(({ kind }) => kind === 'number');
  for (const { keys, told } of details) {
    const isBare = words.every(word => keys.has(word) || fillers.has(word) || (isShare && shares.has(word)));
    const isNamed = keys.size === 0 || words.some(word => keys.has(word));
    const found = isBare && isNamed ? told(load, figures) : undefined;
    if (found) return found;
  }
  return undefined;
}
const shares = setOf('third half quarter thirds quarters');

/** The one load that cools. */
function coolerOf({ loads = [] }: Stated): StatedLoad | undefined {
  const [first, ...others] = loads.filter(({ name }) => cools(name));
  return others.length === 0 ? first : undefined;
}

/** The gear that a bare line may be of: one's last question, else one's own rig. */
function spokenOf(memory: Memory, { from, kind, onto }: Message, isAverage: boolean): CoolerTold | undefined {
  const frame: Frame | undefined =
    onto ?? (isAverage ? lastFrame(memory, from) : ownFrame(memory.frames, from));
  if (frame) return { intent: frame.intent, facts: frame.facts };
  const rig = memory.rigs[ownKey(from, kind)];
  return rig && { intent: 'rig', facts: rig };
}

/** The few words that say more of a fridge in the question or rig before; undefined for anything else. */
export function coolerTold(memory: Memory, message: Message, parsed: ParsedMessage): CoolerTold | undefined {
  const isAverage = wordsOf(parsed).some(word => details[0]?.keys.has(word));
  const spoken = spokenOf(memory, message, isAverage);
  const load = spoken && coolerOf(spoken.facts);
  const found = load && detailIn(parsed, load);
  if (!spoken || !found) return undefined;
  const { name, currentA, powerW } = load;
  // A rig keeps the draw that it has.
  if (spoken.intent === 'rig') return { intent: 'rig', facts: { loads: [{ name, ...found }] } };
  const draw = currentA !== undefined ? { currentA } : powerW !== undefined ? { powerW } : {};
  return { intent: spoken.intent, facts: { loads: [{ name, ...draw, ...found }] } };
}

/** Words that point at what was spoken of. */
const pointing = setOf('it its that thats this draw draws fridge freezer');

/**
 * Facts without an average that is not told: one that is only asked after ("is that the average?"), or of something else
 * ("average rainfall was grim").
 */
export function withoutAsked(facts: Stated, parsed: ParsedMessage): Stated {
  const { loads, ...rest } = facts;
  const isAverageAlone = loads?.every(load => load.isAverage === true && !hasDraw(load));
  if (!isAverageAlone) return facts;
  const words = wordsOf(parsed);
  const isAsked = parsed.cues.has('question-mark') && parsed.words <= mostWords;
  const isBare = words.every(word => fillers.has(word) || details[0]?.keys.has(word));
  return isAsked || !(isBare || words.some(word => pointing.has(word))) ? rest : facts;
}
