import { sentence } from '#answer/say.ts';
import { isSpotted } from '#intents/spotting.ts';
import { gearIn } from '#rig/gear.ts';
import { hasDraw, isSameName } from '#rig/merge.ts';
import type { Stated, StatedLoad } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { ownKey, personKey } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { asTurn } from '../turns/as-turn.ts';
import { leastSure } from '../unsure/sureness.ts';
import type { Joined } from './joined.ts';
import { lentInFrame } from './origins.ts';
import { rigKeyOf } from './shared.ts';

// "What's that all up?", "does it run the lot?", "will that plus my fridge last?": what several people told of, together.

/** Words that ask for a sum. */
const summing: readonly string[] = [
  'all_up|altogether|in_total|total|totals|totalled|sum|add_up|adds_up|added_up|all_in_all|all_in|all_of_it|all_of_that -capacity -volts',
];
/** The same, where more than one thing, or more than one person, is meant for certain. */
const joining: readonly string[] = [
  'together|combined|both|the_lot|lot_of_it|whole_lot|everything|everyone|everybody|all_of_us|all_of_them|all_of_those|between_us -parallel -series -charge -charging -parallelled',
];
/** Said of a sum, these are no words that are asked after. */
const sums: ReadonlySet<string> = new Set(['combined', 'altogether', 'together', 'total', 'sum', 'both']);
/** "Will that plus my fridge": what was just spoken of, with what is told now. */
const pointing: ReadonlySet<string> = new Set(['that', 'those', 'these', 'them', 'this']);
const plus: ReadonlySet<string> = new Set(['plus', 'and', '+', '&', 'with', 'alongside']);

/** Questions of what runs. */
const ofUse: ReadonlySet<string> = new Set([
  'energy-budget',
  'run-time',
  'battery-size',
  'solar-size',
  'trip',
  'charge-time',
]);
/** What such a line is read as where it asks of nothing but the sum. */
const openToSum: ReadonlySet<string> = new Set([
  'none',
  'unclear',
  'rig',
  'convert',
  'settle',
  'compare',
  'battery-bank',
  'term',
]);
/** "Will it run both?": both things, and no two batteries. */
const bothThings: readonly string[] = [
  'do_both|run_both|power_both|handle_both|cover_both|manage_both|carry_both|for_both|of_both|both_of|them_both|keep_both',
];
/** What the last people said of what they run, as it was read. */
const telling: ReadonlySet<string> = new Set([...ofUse, 'rig', 'unclear', 'convert', 'settle']);
const mostWords = 16;
/** A sum of more people is not meant by "all up". */
const mostPeople = 6;

/** What somebody runs as things: a use told as one number is one. */
function asLoads(who: string, { loads = [], dailyUseAh, dailyUseWh }: Stated): readonly StatedLoad[] {
  const name = `${sentence(who)}’s use`;
  const isUseTold = (dailyUseAh ?? dailyUseWh) !== undefined;
  if (loads.some(hasDraw) || (loads.length > 0 && !isUseTold)) return loads;
  if (dailyUseAh !== undefined) return [{ name, chargeAhPerDay: dailyUseAh }];
  return dailyUseWh === undefined ? [] : [{ name, energyWhPerDay: dailyUseWh }];
}

/** What somebody runs. */
interface Run {
  readonly who: string;
  readonly loads: readonly StatedLoad[];
  /** It was told as gear, and in no question. */
  readonly isRig?: boolean;
}

/** What a person runs: what their last question was of, and what of their rig that leaves out. */
function runBy(memory: Memory, who: string, rigKey = who): Run {
  const frame = memory.frames.findLast(({ from, facts }) => from === who && asLoads(who, facts).length > 0);
  const lent = frame ? lentInFrame(frame, who).flatMap(({ facts }) => asLoads(who, facts)) : [];
  const isLent = (load: StatedLoad): boolean =>
    lent.some(one => isSameName(one.name, load.name) && JSON.stringify(one) === JSON.stringify(load));
  const asked = frame ? asLoads(who, frame.facts).filter(load => !isLent(load)) : [];
  const kept = asLoads(who, memory.rigs[rigKeyOf(memory, rigKey)] ?? memory.rigs[rigKey] ?? {});
  const loads = [...kept.filter(load => !asked.some(one => isSameName(one.name, load.name))), ...asked];
  return { who, loads, ...(asked.length === 0 && { isRig: true }) };
}

/** Who told of late what they run, the latest last: back to the last that spoke of something else. */
function tellersOf({ talk }: Memory, self: string): string[] {
  const asks = (talk?.asks ?? []).filter(([who]) => who !== self);
  const other = asks.findLastIndex(([, intent]) => !telling.has(intent));
  return asks.slice(other + 1).map(([who]) => who);
}

/** The loads of several people as one, with whose they are. */
function joined(rows: readonly Run[], self: string): Joined {
  return {
    facts: { loads: rows.flatMap(({ loads }) => loads) },
    lent: rows
      .filter(({ who }) => who !== self)
      .map(({ loads, ...whose }) => ({ ...whose, facts: { loads: [...loads] } })),
    unknown: [],
  };
}

/** Whether a line points at what was spoken of and puts something to it. */
function isPlus({ recognised: { words }, facts }: Heard): boolean {
  if (!facts.loads?.some(hasDraw)) return false;
  return (
    words.some((word, at) => pointing.has(word) && plus.has(words[at + 1] ?? '')) ||
    isSpotted(words, ['on_top_of_that|as_well_as_that|along_with_that|plus_that|and_that_too'])
  );
}

/** "That plus my fridge" of what somebody else has just spoken of. */
function withPlus(memory: Memory, self: string, heard: Heard): Joined | undefined {
  const [other] = tellersOf(memory, self).reverse();
  const last = memory.frames.at(-1);
  // One's own question turns by itself.
  if (other === undefined || (last?.from === self && memory.talk?.lastFrom === self)) return undefined;
  const theirs = runBy(memory, other);
  const told = heard.facts.loads ?? [];
  const spoken = theirs.loads.filter(load => !told.some(one => isSameName(one.name, load.name)));
  if (spoken.length === 0) return undefined;
  return joined(
    [
      { ...theirs, loads: spoken },
      { who: self, loads: told },
    ],
    self,
  );
}

/** What the asker and who told of theirs of late run together. */
function theLot(memory: Memory, { from, kind }: Message, heard: Heard): Joined | undefined {
  const { words } = heard.recognised;
  const isOfAll = isSpotted(words, joining);
  if (!isOfAll && !isSpotted(words, summing)) return undefined;
  const self = personKey(from);
  const own = runBy(memory, self, ownKey(from, kind));
  // Of several things of one's own the total is that of those.
  if (own.loads.length > 1 && !isOfAll) return undefined;
  const others = tellersOf(memory, self).map(who => runBy(memory, who));
  const rows = [own, ...others].filter(({ loads }) => loads.length > 0);
  // Where reading is torn, one's own alone is what its sum is of.
  const isOfSelf = rows[0] === own && heard.certainty < leastSure;
  const isEnough = rows.length > 1 || isOfSelf;
  return isEnough && rows.length <= mostPeople ? joined(rows, self) : undefined;
}

/** What such a line tells itself: how two things are joined, or how many batteries there are, it doesn't. */
function toldBeside({ facts, recognised: { words } }: Heard): Stated {
  const { arrangement: _joined, batteries, ...rest } = facts;
  if (!batteries || !isSpotted(words, bothThings)) return batteries ? { ...rest, batteries } : rest;
  return { ...rest, batteries: batteries.map(({ count: _both, ...battery }) => battery) };
}

/** A group's line that asks for what several people have told, as the question of all of it. */
export function withTogether(memory: Memory, message: Message, heard: Heard): Heard {
  const isOfOther = heard.possessions?.some(({ isOwn, isSpoken }) => !isOwn && !isSpoken) === true;
  if (message.kind !== 'group' || message.onto || isOfOther || heard.issues.length > 0) return heard;
  if (heard.corrects || heard.removed.length > 0) return heard;
  const isOfElse =
    (heard.intent === 'battery-bank' && heard.cues.has('battery')) ||
    (heard.term !== undefined && !sums.has(heard.term));
  const isOpen = openToSum.has(heard.intent) && !isOfElse;
  if (!isOpen && !ofUse.has(heard.intent)) return heard;
  const isSum = heard.facts.loads === undefined && heard.words <= mostWords;
  const together = isPlus(heard)
    ? withPlus(memory, personKey(message.from), heard)
    : isSum
      ? theLot(memory, message, heard)
      : undefined;
  if (!together) return heard;
  const hasBattery = gearIn(heard.facts).batteries !== undefined;
  const intent = isOpen ? (hasBattery ? 'run-time' : 'energy-budget') : heard.intent;
  return asTurn(heard, { together, intent, facts: toldBeside(heard) });
}
