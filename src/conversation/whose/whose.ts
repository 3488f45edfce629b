import { gearIn } from '#rig/gear.ts';
import { hasDraw, isSameName, mergeBatteries, mergeSolar } from '#rig/merge.ts';
import type { Rig, Stated, StatedLoad } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { ownKey, personKey } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { gearOf, thingOf } from './gear-of.ts';
import type { Lent } from './origins.ts';
import { openingName, peopleIn, personMeant, whoIn, wordsWritten } from './people.ts';
import type { Possession } from './possession.ts';

// "Her fridge on my battery": whose thing is spoken of, and what is known of it.

/** What a message borrows by naming whose it is. */
export interface Borrowed {
  readonly facts: Stated;
  readonly lent: readonly Lent[];
  /** Gear that is named as somebody's of whom it isn't known: nothing else stands for it. */
  readonly unknown: readonly (keyof Rig)[];
}

const ofSelf: ReadonlySet<string> = new Set(['my', 'our']);
const wholeOfSelf: ReadonlySet<string> = new Set(['mine', 'mines', 'ours']);
const ofThem: ReadonlySet<string> = new Set(['her', 'his', 'their']);
const wholeOfThem: ReadonlySet<string> = new Set(['hers', 'his', 'theirs']);
/** "She has", "shes got": what is told next is theirs. */
const having: ReadonlySet<string> = new Set(['she', 'he', 'they', 'shes', 'hes', 'theyve']);
const has: ReadonlySet<string> = new Set(['has', 'had', 'got', 'have', 'runs', 'owns']);
/** Words that end what belongs to somebody: behind them another thing begins. */
const reach = 3;
const rigWords: ReadonlySet<string> = new Set([
  'rig',
  'setup',
  'gear',
  'system',
  'van',
  'camper',
  'kit',
  'own',
]);
const kinds: Readonly<Record<string, keyof Rig>> = {
  battery: 'batteries',
  chemistry: 'batteries',
  station: 'batteries',
  solar: 'solar',
  charger: 'chargers',
  inverter: 'inverter',
  cable: 'cable',
  alternator: 'alternatorA',
};

/** Whose gear a message speaks of, in its order. */
function possessionsIn(memory: Memory, message: Message, heard: Heard): Possession[] {
  const { mentions } = heard.recognised;
  const words = wordsWritten(heard.recognised);
  const self = personKey(message.from);
  const known = new Set(peopleIn(memory));
  /** What follows an owner's word: a thing, a sort of gear. */
  const thingAfter = (at: number): Pick<Possession, 'key' | 'name' | 'to'> => {
    for (const { kind, key, from, to } of mentions) {
      if (from <= at || from > at + reach) continue;
      if (kind === 'sign' || words.slice(at + 1, from).some(word => stops.has(word))) break;
      const name = kind === 'thing' ? key : undefined;
      const sort = name === undefined ? kinds[kind] : 'loads';
      if (sort) return { key: sort, ...(name !== undefined && { name }), to };
    }
    return { to: at + 1 };
  };
  /** "The same fridge as Dina": hers, else that of whom is replied to, else of who last asked of one. */
  const sameThing = (at: number): Possession | undefined => {
    const word = words[at];
    if (word !== 'same' && !(word === 'that' && message.onto)) return undefined;
    const { key, name, to } = thingAfter(at);
    if (name === undefined) return undefined;
    const as = words.indexOf('as', to);
    const named = as < 0 ? undefined : whoIn(words[as + 1] ?? '', known);
    const asked = [...memory.frames].reverse().map(frame => frame.from);
    const who =
      named ??
      [message.onto?.from, ...asked, ...Object.keys(memory.rigs).reverse()].find(
        one => one !== undefined && one !== self && thingOf(memory, one, name) !== undefined,
      );
    return who === undefined || who === ''
      ? undefined
      : { who, isOwn: who === self, key, name, from: at, to };
  };
  /** What a sort of gear stands before "like Ann's", and what somebody's is that something runs "on". */
  const sortBefore = (at: number): Pick<Possession, 'key'> => {
    const before = words[at - 1] ?? '';
    const sort = mentions.findLast(({ to }) => to <= at - 1 && to >= at - 2);
    if (before === 'like' && sort && kinds[sort.kind]) return { key: kinds[sort.kind] };
    return ['on', 'off', 'from'].includes(before) ? { key: 'batteries' } : {};
  };
  // Of "hers" nothing stands in for what nobody fits; what is told of it needs no name.
  const isAskedOf = message.kind === 'group' && heard.intent !== 'rig' && !isSized(heard.facts);
  const found: Possession[] = [];
  words.forEach((word, at) => {
    const next = words[at + 1] ?? '';
    const twin = sameThing(at);
    if (twin) {
      found.push(twin);
      return;
    }
    const isSelf = ofSelf.has(word) || wholeOfSelf.has(word);
    const isThem = ofThem.has(word) || wholeOfThem.has(word);
    const name = isSelf || isThem ? undefined : whoIn(word, known);
    const isNamed = name !== undefined && word !== name && word.endsWith('s');
    // "Me and Matt have" is of both.
    const isHaver = (having.has(word) || name === word) && has.has(next) && words[at - 1] !== 'and';
    const who = isSelf
      ? self
      : isNamed || (isHaver && name)
        ? name
        : isThem || isHaver
          ? (personMeant(memory, message, words.slice(0, at), openingName(heard.recognised)) ??
            (isThem && isAskedOf ? word : undefined))
          : undefined;
    if (who === undefined) return;
    const thing = wholeOfSelf.has(word) || isHaver || rigWords.has(next) ? { to: at + 1 } : thingAfter(at);
    const isWhole =
      wholeOfThem.has(word) || wholeOfSelf.has(word) || isNamed || isHaver || rigWords.has(next);
    if (thing.key === undefined && !isWhole) return;
    const isBare = thing.key === undefined && who !== self && (isNamed || isThem);
    found.push({ who, isOwn: who === self, from: at, ...thing, ...(isBare && sortBefore(at)) });
  });
  return found;
}

/** Whether gear is told with figures. */
const isSized = (facts: Stated): boolean => /\d/.test(JSON.stringify(gearIn(facts)));

/** Whether a message speaks of "hers" or "his", and nobody fits. */
export const isOfNobody = ({ possessions = [] }: Heard): boolean =>
  possessions.some(({ who }) => ofThem.has(who) || wholeOfThem.has(who));

const stops: ReadonlySet<string> = new Set(
  'on off from and with in at to or for run runs last lasts is are was were has'.split(' '),
);

/**
 * A message with whose gear it speaks of: each possession once for all that is asked of it later, and its owner, where
 * its words tell that by "hers" or "she has", or beside one's own.
 */
export function withOwner(memory: Memory, message: Message, said: Heard): Heard {
  const all = possessionsIn(memory, message, said);
  const heard = { ...said, possessions: all };
  const others = all.filter(one => !one.isOwn);
  const [own] = all.filter(one => one.isOwn && one.key === undefined);
  const [first] = others;
  if (borrowedIn(memory, message, heard)) return { ...heard, owner: own ? 'me' : undefined };
  if (first && (heard.owner === undefined || (heard.owner === 'me' && isPutAway(heard.recognised.words))))
    return { ...heard, owner: first.who };
  return own && heard.owner === undefined && heard.cues.has('mine') ? { ...heard, owner: 'me' } : heard;
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

/** What is known of a thing that is spoken of as somebody's. */
function gearFor(memory: Memory, { kind, from }: Message, { who, isOwn, key, name }: Possession): Rig {
  const rigKey = isOwn ? ownKey(from, kind) : who;
  if (name !== undefined) {
    const thing = thingOf(memory, who, name, rigKey);
    return thing ? { loads: [thing] } : {};
  }
  const gear = gearOf(memory, who, rigKey) ?? (isOwn ? memory.rigs[''] : undefined) ?? {};
  return key !== undefined && gear[key] !== undefined ? { [key]: gear[key] } : {};
}

/** Gear told half ("2 like Ann's") with what is known of it. */
function laidOver(gear: Rig, facts: Stated): Stated {
  const { batteries, solar, loads } = gear;
  const named = (load: StatedLoad): StatedLoad => ({
    ...loads?.find(one => isSameName(one.name, load.name)),
    ...load,
  });
  return {
    ...gear,
    ...(batteries && facts.batteries && { batteries: mergeBatteries(batteries, facts.batteries, 'state') }),
    ...(solar && facts.solar && { solar: mergeSolar(solar, facts.solar, 'state') }),
    ...(loads && {
      loads: [
        ...(facts.loads ?? []).map(named),
        ...loads.filter(load => !facts.loads?.some(one => isSameName(one.name, load.name))),
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
