import { isSpoken } from '#basics/spoken.ts';
import type { Conversion } from '#language/reading.ts';
import { unitOf } from '#quantity/quantity.ts';
import type { Heard } from '../hear.ts';
import { ownFrame } from '../kept/recall.ts';
import type { Frame, Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { leastSure } from '../unsure/sureness.ts';
import { asTurn } from './as-turn.ts';

// "And over 5 hours?" after 8 A in watts, "so 40 Ah, yeah?" after that.

const mostWords = 9;
/** What such a line is read as: hours turned into minutes, a day's use, how long something lasts. */
const besides: ReadonlySet<string> = new Set(['convert', 'energy-budget', 'run-time', 'unclear', 'none']);
/** Words of a battery that runs out, or of minutes that are asked for: then it is no time of use. */
const ofElse: ReadonlySet<string> = new Set(
  'last lasts lasting flat dead battery left charge minutes seconds days'.split(' '),
);

/** The power or current that a question turned into another unit. */
function flowIn({ intent, conversion, facts, asked }: Frame): Conversion | undefined {
  if (intent !== 'convert' || !conversion || asked !== undefined) return undefined;
  const dimension = unitOf(conversion.unit)?.dimension;
  // Through an inverter it is more than amps times hours.
  const isMains = facts.loads?.some(({ supply }) => supply === 'ac') === true;
  if (isMains || (dimension !== 'power' && dimension !== 'current')) return undefined;
  const { to: _to, ...rest } = conversion as Conversion;
  return { ...rest, ...(facts.systemVoltageV !== undefined && { voltageV: facts.systemVoltageV }) };
}

/** The question that a short line may be of: the one replied to, one's own, the chat's. */
const before = ({ frames }: Memory, { onto, from }: Message): Frame | undefined =>
  onto ?? (frames.at(-1)?.intent === 'convert' ? frames.at(-1) : ownFrame(frames, from)) ?? frames.at(-1);

/** A line that tells hours alone, after a power or a current in other units: that for so long. */
export function overHours(memory: Memory, message: Message, heard: Heard): Heard {
  const { facts, words, recognised, corrects } = heard;
  const { durationH, until: _until, ...others } = facts;
  if (durationH === undefined || corrects || words > mostWords || !besides.has(heard.intent)) return heard;
  const amounts = recognised.mentions.filter(({ kind }) => kind === 'amount');
  const isOfAmount = (at: number): boolean => amounts.some(({ from, to }) => at >= from && at < to);
  const isOfElse = recognised.words.some((word, at) => ofElse.has(word) && !isOfAmount(at));
  if (Object.keys(others).length > 0 || isOfElse) return heard;
  const frame = before(memory, message);
  const isOfInverter = frame?.intent === 'inverter-check' && frame.asked === undefined && frame.facts.loads;
  if (frame && isOfInverter && heard.intent === 'convert')
    return { ...heard, intent: frame.intent, conversion: undefined, options: [], certainty: leastSure };
  const flow = frame && flowIn(frame);
  if (!flow) return heard;
  return asTurn(heard, { intent: 'convert', conversion: { ...flow, hours: durationH, to: 'Ah' } });
}

/** Questions whose answer is so many amp hours. */
const inAmpHours: ReadonlySet<string> = new Set(['convert', 'energy-budget']);
/** May stand beside a figure that is guessed. */
const aroundGuess: ReadonlySet<string> = new Set(
  'so that thats its it is be would about roughly around then yeah yep yes right correct ok ah oh hm hmm and i get make makes say reckon near enough just bout ish eh huh hey'.split(
    ' ',
  ),
);
/** Of a guess they ask whether it is right. */
const asksRight: ReadonlySet<string> = new Set([
  'yeah',
  'yep',
  'yes',
  'right',
  'correct',
  'eh',
  'huh',
  'hey',
  '?',
]);
const mostGuess = 8;

/** "So 40 Ah, yeah?" after an answer in amp hours: a guess at that answer, whoever asked. */
export function guessedAt(memory: Memory, message: Message, heard: Heard): Heard {
  const { recognised, words } = heard;
  const frame = message.onto ?? memory.frames.at(-1);
  if (!frame || frame.asked !== undefined || !inAmpHours.has(frame.intent) || words > mostGuess) return heard;
  if (frame.intent === 'convert' && frame.conversion?.hours === undefined) return heard;
  const amounts = recognised.mentions.filter(({ kind }) => kind === 'amount' || kind === 'number');
  const [figure, more] = amounts;
  if (!figure || more || (figure.dimension !== 'charge' && figure.dimension !== 'energy')) return heard;
  const beside = recognised.words.filter((_, at) => at < figure.from || at >= figure.to);
  const isBare = beside.every(word => !isSpoken(word) || aroundGuess.has(word));
  if (!isBare || !beside.some(word => asksRight.has(word)) || figure.unit === undefined) return heard;
  return asTurn(heard, {
    intent: 'settle',
    facts: {},
    claims: [{ who: 'i', value: figure.told, unit: figure.unit }],
  });
}
