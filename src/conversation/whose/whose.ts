import { isSpoken } from '#basics/spoken.ts';
import { isSetup } from '#intents/needs.ts';
import { valuesOf } from '#language/talk.ts';
import { hasDraw, isSameName, isShortFor, mergeBatteries, mergeSolar } from '#rig/merge.ts';
import type { Rig, Stated, StatedLoad } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { personKey } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { isAsking } from '../turns/asking.ts';
import { leastSure } from '../unsure/sureness.ts';
import { gearOf } from './gear-of.ts';
import type { Lent } from './origins.ts';
import { peopleIn, wordsWritten } from './people.ts';
import type { Possession } from './possession.ts';
import { gearFor, isSaidOfThem, isSized, possessionsIn, wholeOfSelf } from './possessions.ts';

// "Her fridge on my battery": whose thing is spoken of, and what is known of it.

/** What a message borrows by naming whose it is. */
export interface Borrowed {
  readonly facts: Stated;
  readonly lent: readonly Lent[];
  /** Gear that is named as somebody's of whom it isn't known: nothing else stands for it. */
  readonly unknown: readonly (keyof Rig)[];
}

/** Words that put something on top of what one has. */
const adding: ReadonlySet<string> = new Set('with plus adding add using borrowing'.split(' '));
/** Whether a message speaks of "hers" or "his", and nobody fits. */
export const isOfNobody = ({ possessions = [] }: Heard): boolean =>
  possessions.some(({ who }) => isSaidOfThem(who));

/**
 * A message with whose gear it speaks of: each possession once for all that is asked of it later, and its owner, where
 * its words tell that by "hers" or "she has", or beside one's own.
 */
export function withOwner(memory: Memory, message: Message, said: Heard): Heard {
  const all = possessionsIn(memory, message, said);
  const heard = { ...said, possessions: all };
  const others = all.filter(one => !one.isOwn && !one.isSpoken);
  const { words } = said.recognised;
  const [own] = all.filter(one => one.isOwn && one.key === undefined);
  const [first] = others;
  const added = others.find(({ key, from }) => key === undefined && adding.has(words[from - 1] ?? ''));
  // "And with Vic's 200 W": on what the writer has.
  if (added && others.length === 1 && isSized(heard.facts) && heard.intent !== 'rig')
    return { ...heard, ...theirsOf(memory, added.who, heard), possessions: all.filter(one => one !== added) };
  // Whose the kettle is that was spoken of doesn't tell whose gear is asked of.
  const owned = { ...heard, possessions: all.filter(one => !one.isSpoken) };
  if (borrowedIn(memory, message, owned))
    return { ...heard, owner: own ? 'me' : isForUs(words) ? 'us' : undefined };
  if (first && (heard.owner === undefined || (heard.owner === 'me' && isPutAway(heard.recognised.words))))
    return { ...heard, owner: first.who };
  if (heard.owner !== undefined) return heard;
  if (own && heard.cues.has('mine')) return { ...heard, owner: 'me' };
  if (isForSelf(words) && heard.cues.has('same-again')) return { ...heard, owner: 'me' };
  const asked = personAsked(memory, message, heard);
  if (asked) return { ...heard, owner: asked };
  return isForUs(words) ? { ...heard, owner: 'us' } : heard;
}

/** A figure told as somebody's, as that thing of theirs that has it: their 200 W is a panel's. */
function theirsOf(memory: Memory, who: string, heard: Heard): Partial<Heard> {
  const gear = gearOf(memory, who) ?? {};
  const told = new Set(valuesOf({ ...heard.facts }).map(([, value]) => value));
  const [one, ...more] = (['solar', 'batteries', 'inverter', 'chargers'] as const).filter(key =>
    valuesOf({ [key]: gear[key] }).some(([, value]) => value > 1 && told.has(value)),
  );
  if (one === undefined || more.length > 0) return { owner: undefined };
  return { owner: undefined, facts: { [one]: gear[one] }, options: [], certainty: leastSure };
}

const spoken = (words: readonly string[]): string[] => words.filter(isSpoken);
const mostBare = 4;

/** "And us?", "what about us", "and us? same heater". */
function isForUs(words: readonly string[]): boolean {
  const end = words.findIndex(word => !isSpoken(word));
  const said = spoken(end > 0 ? words.slice(0, end) : words);
  return (
    said.length <= mostBare && said.at(-1) === 'us' && ['and', 'about', 'for'].includes(said.at(-2) ?? '')
  );
}

/** "Same for us", "same for me". */
function isForSelf(words: readonly string[]): boolean {
  const said = spoken(words);
  return said.length <= mostBare && said.at(-2) === 'for' && ['us', 'me'].includes(said.at(-1) ?? '');
}

/** "How long can Tess stay?": the one person that a question names whose gear is known. */
function personAsked(memory: Memory, { from, kind }: Message, heard: Heard): string | undefined {
  const { recognised, intent, facts } = heard;
  const isAsked = isAsking(heard) || heard.cues.has('question-mark');
  if (kind !== 'group' || !isAsked || isSetup(facts) || ['rig', 'settle', 'none'].includes(intent))
    return undefined;
  const known = new Set(peopleIn(memory));
  const named = wordsWritten(recognised).flatMap(word => (known.has(word) ? [word] : []));
  const [who, ...more] = [...new Set(named)];
  return who !== undefined && more.length === 0 && who !== personKey(from) && gearOf(memory, who)
    ? who
    : undefined;
}

/** "If I take mine out": what is one's own is not meant. */
const isPutAway = (words: readonly string[]): boolean =>
  words.some((word, at) => wholeOfSelf.has(word) && ['out', 'off', 'away'].includes(words[at + 1] ?? ''));

/** Whether the figures of a thing are told in the message itself: then nothing of it is borrowed. */
function isTold(
  { loads, batteries, solar, chargers, inverter, cable }: Stated,
  { key, name }: Possession,
): boolean {
  switch (key) {
    case 'loads':
      return !!loads?.some(load => isSameName(load.name, name ?? '') && hasDraw(load));
    case 'batteries':
      return !!batteries?.some(b => b.capacityAh !== undefined || b.energyWh !== undefined);
    case 'solar':
      return !!solar?.some(panel => panel.powerW !== undefined);
    case 'chargers':
      return !!chargers?.some(charger => charger.currentA !== undefined || charger.powerW !== undefined);
    case 'inverter':
      return inverter?.powerW !== undefined;
    default:
      return cable !== undefined;
  }
}

/** Gear told half ("2 like Ann's") with what is known of it. */
function laidOver(gear: Rig, facts: Stated): Stated {
  const { batteries, solar, loads } = gear;
  const isIt = (one: StatedLoad, load: StatedLoad): boolean =>
    isSameName(one.name, load.name) || isShortFor(load.name, one.name);
  const named = (load: StatedLoad): StatedLoad => {
    const theirs = loads?.find(one => isIt(one, load));
    return theirs ? { ...theirs, ...load, name: theirs.name } : load;
  };
  return {
    ...gear,
    ...(batteries && facts.batteries && { batteries: mergeBatteries(batteries, facts.batteries, 'state') }),
    ...(solar && facts.solar && { solar: mergeSolar(solar, facts.solar, 'state') }),
    ...(loads && {
      loads: [
        ...(facts.loads ?? []).map(named),
        ...loads.filter(load => !facts.loads?.some(one => isIt(load, one))),
      ],
    }),
  };
}

/** "Hook Dirk's up in parallel with mine": the batteries of both, one beside the other. */
function banksIn(
  memory: Memory,
  message: Message,
  heard: Heard,
  all: readonly Possession[],
): Borrowed | undefined {
  const whole = all.filter(({ key }) => key === undefined || key === 'batteries');
  const owners = [...new Map(whole.map(one => [one.who, one])).values()];
  if (heard.facts.arrangement === undefined || heard.facts.batteries || owners.length < 2) return undefined;
  const banks = owners.map(one => ({
    ...one,
    gear: gearFor(memory, message, { ...one, key: 'batteries' }),
  }));
  if (banks.some(({ gear }) => !gear.batteries)) return undefined;
  return {
    facts: { batteries: banks.flatMap(({ gear }) => gear.batteries ?? []) },
    lent: banks.filter(one => !one.isOwn).map(({ who, gear }) => ({ who, facts: gear })),
    unknown: [],
  };
}

/**
 * What a message speaks of as somebody's, so far as it tells no figures of it itself and something is known.
 * @param heard as `withOwner` leaves it
 */
export function borrowedIn(memory: Memory, message: Message, heard: Heard): Borrowed | undefined {
  const all = heard.possessions ?? [];
  const banks = banksIn(memory, message, heard, all);
  if (banks) return banks;
  const parts = all.filter(one => one.key !== undefined && !isTold(heard.facts, one));
  // "My fridge" by itself is anybody's way to ask; beside another's battery it is told apart.
  if (parts.every(({ isOwn }) => isOwn)) return undefined;
  let facts: Stated = {};
  const lent: Lent[] = [];
  const unknown: (keyof Rig)[] = [];
  for (const part of parts) {
    const gear = gearFor(memory, message, part);
    if (Object.keys(gear).length === 0) {
      if (part.key !== undefined && part.key !== 'loads' && !part.isOwn) unknown.push(part.key);
      continue;
    }
    const loads = [...(facts.loads ?? []), ...(gear.loads ?? [])];
    facts = { ...facts, ...gear, ...(loads.length > 0 && { loads }) };
    if (!part.isOwn) lent.push({ who: part.who, facts: gear });
  }
  if (lent.length === 0 && unknown.length === 0) return undefined;
  return { facts: laidOver(facts, heard.facts), lent, unknown };
}
