import { isSpotted } from '#intents/spotting.ts';
import { hasDraw } from '#rig/merge.ts';
import type { Heard } from '../hear.ts';
import { personKey } from '../kept/recall.ts';
import type { Frame, Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { asTurn } from './as-turn.ts';

// "12.4 this morning", "12.8 last night", "only had the fridge on", "is it dying?": of what went between the two.

/** By so little two readings are the same, and by more they are of two batteries, V. */
const apartV = { least: 0.1, most: 1.5 } as const;
const mostWords = 14;
/** Words by which somebody says that little ran. */
const littleRan: readonly string[] = [
  'only|just|nothing|but|except|apart|all_we|all_i|all_that|didnt_run|didnt_use|didnt_have|not_much -why -when -cuts -cut -stops -trips',
];
/** Words that ask whether that is right, or the battery done for. */
const asksAfter: readonly string[] = [
  'dying|dead|stuffed|cactus|shot|had_it|way_out|worn|knackered|rooted|buggered|finished|new_one|replace|faulty|failing|normal|right|ok|okay|bad|crook|tired|done_for is|it|that|i|we|need -charger -fridge -panel -inverter',
];
/** What such lines are read as. */
const besides: ReadonlySet<string> = new Set(
  'fault charge-level unclear none run-time rig settle battery-type energy-budget'.split(' '),
);

/** Under this no charger holds the volts up, whatever they were read as, V of a 12 V battery. */
const leastChargingV = 13;

const voltsOf = ({ intent, facts: { volts = 0, voltsTaken } }: Frame): number | undefined =>
  intent === 'charge-level' && volts > 0 && (voltsTaken !== 'charging' || volts < leastChargingV)
    ? volts
    : undefined;

/** The two readings that somebody told one after the other, as the subject of a question; undefined: they told none. */
function dropOf({ frames }: Memory, from: string): string | undefined {
  const own = frames.filter(frame => frame.from === from);
  const last = own.at(-1);
  if (!last || last !== frames.at(-1) || last.intent !== 'charge-level') return undefined;
  if (last.subject?.startsWith('drop ')) return last.subject;
  const [one, two] = own.slice(-2).map(voltsOf);
  if (one === undefined || two === undefined) return undefined;
  const [high, low] = [Math.max(one, two), Math.min(one, two)];
  const fell = high - low;
  return fell >= apartV.least - 1e-9 && fell <= apartV.most ? `drop ${high} ${low}` : undefined;
}

/** A line after two readings that tells what ran between them, or asks whether that is normal. */
export function overnight(memory: Memory, message: Message, heard: Heard): Heard {
  const { facts, words, recognised, corrects, removed, intent } = heard;
  if (words > mostWords || corrects || removed.length > 0 || message.onto || !besides.has(intent))
    return heard;
  const { loads = [], voltsTaken: _taken, ...others } = facts;
  if (Object.keys(others).length > 0 || loads.some(hasDraw)) return heard;
  const subject = dropOf(memory, personKey(message.from));
  if (subject === undefined) return heard;
  const isOfIt =
    loads.length > 0 ? isSpotted(recognised.words, littleRan) : isSpotted(recognised.words, asksAfter);
  if (!isOfIt) return heard;
  return asTurn(heard, { intent: 'charge-level', subject });
}
