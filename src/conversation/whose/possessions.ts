import { cools } from '#intents/facts.ts';
import { gearIn } from '#rig/gear.ts';
import type { Rig, Stated } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import { ownKey, personKey } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { gearOf, thingIn, thingOf } from './gear-of.ts';
import { openingName, peopleIn, personMeant, whoIn, wordsWritten } from './people.ts';
import type { Possession } from './possession.ts';

// Whose gear a line speaks of: "her fridge", "Kev's", "the same battery", "the kettle".

const ofSelf: ReadonlySet<string> = new Set(['my', 'our']);
export const wholeOfSelf: ReadonlySet<string> = new Set(['mine', 'mines', 'ours']);
const ofThem: ReadonlySet<string> = new Set(['her', 'his', 'their']);
const wholeOfThem: ReadonlySet<string> = new Set(['hers', 'his', 'theirs']);
/** Whether it says whose by "her" or "hers". */
export const isSaidOfThem = (word: string): boolean => ofThem.has(word) || wholeOfThem.has(word);
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
/** What may stand between a thing and "same". */
const being: ReadonlySet<string> = new Set('is are s the exactly about pretty much exact just'.split(' '));
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
export function possessionsIn(memory: Memory, message: Message, heard: Heard): Possession[] {
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
  /** What is said to be the same: "my fridge is the same". */
  const thingBefore = (at: number): Pick<Possession, 'key' | 'name' | 'to'> => {
    const last = mentions.findLast(({ kind, to }) => to <= at && (kind === 'thing' || kinds[kind]));
    const isSaid = last && words.slice(last.to, at).every(word => being.has(word)) && last.to < at;
    if (!isSaid) return { to: at + 1 };
    const name = last.kind === 'thing' ? last.key : undefined;
    const key = name === undefined ? kinds[last.kind] : 'loads';
    return { to: at + 1, ...(key && { key }), ...(name !== undefined && { name }) };
  };
  /** Of the others who has it: first who is replied to, then who asked of late, then who told gear of late. */
  const whoHas = (has: (one: string) => boolean): string | undefined =>
    [
      message.onto?.from,
      ...memory.frames.map(frame => frame.from).reverse(),
      ...Object.keys(memory.rigs).reverse(),
    ].find(one => one !== undefined && one !== self && has(one));
  /** "The same fridge as Dina", "my fridge is the same": hers, else that of whom is replied to, else of who last asked of one. */
  const sameThing = (at: number): Possession | undefined => {
    const word = words[at];
    if (word !== 'same' && !(word === 'that' && message.onto)) return undefined;
    const after = thingAfter(at);
    const { key, name, to } = after.key === undefined && word === 'same' ? thingBefore(at) : after;
    if (key === undefined || (key === 'loads' && name === undefined)) return undefined;
    const isThere = (one: string): boolean =>
      Object.keys(gearFor(memory, message, { who: one, isOwn: false, key, name, from: at, to })).length > 0;
    const as = words.indexOf('as', to - 1);
    const named = as < 0 ? undefined : whoIn(words[as + 1] ?? '', known);
    // "Off the same battery" of who has one is of that.
    if (named === undefined && name === undefined && isThere(self)) return undefined;
    const who = named ?? whoHas(isThere);
    return who === undefined || who === ''
      ? undefined
      : { who, isOwn: who === self, key, ...(name !== undefined && { name }), isSame: true, from: at, to };
  };
  /** "Would it do the kettle?": a thing that somebody else of the chat has told, and the writer hasn't. */
  const theThing = (at: number): Possession | undefined => {
    if (!definite.has(words[at] ?? '') || message.kind !== 'group') return undefined;
    const thing = mentions.find(({ kind, from }) => kind === 'thing' && from === at + 1);
    const name = thing?.key;
    // Everybody has a fridge of their own.
    if (!thing || name === undefined || cools(name)) return undefined;
    const rigKey = ownKey(message.from, message.kind);
    if (thingOf(memory, self, name, rigKey) || thingIn(memory.rigs[''], name)) return undefined;
    const who = whoHas(one => one !== '' && thingOf(memory, one, name) !== undefined);
    return who === undefined
      ? undefined
      : { who, isOwn: false, key: 'loads', name, isSpoken: true, from: at, to: thing.to };
  };
  /** What a sort of gear stands before "like Ann's", and what somebody's is that something runs "on". */
  const sortBefore = (at: number): Pick<Possession, 'key'> => {
    const before = words[at - 1] ?? '';
    const sort = mentions.findLast(({ to }) => to <= at - 1 && to >= at - 2);
    if (before === 'like' && sort && kinds[sort.kind]) return { key: kinds[sort.kind] };
    return ['on', 'off', 'from'].includes(before) ? { key: 'batteries' } : {};
  };
  /** "If we stop at Ted's 11.8": what somebody said or read, of whom no gear is known. */
  const isFigureOf = (who: string, at: number): boolean =>
    mentions.some(({ kind, from }) => from === at + 1 && (kind === 'amount' || kind === 'number')) &&
    !['on', 'off', 'from'].includes(words[at - 1] ?? '') &&
    !isSized(heard.facts) &&
    gearOf(memory, who) === undefined;
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
    const spoken = theThing(at);
    if (spoken) {
      found.push(spoken);
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
    if (isNamed && thing.key === undefined && isFigureOf(name, at)) return;
    const isBare = thing.key === undefined && who !== self && (isNamed || isThem);
    found.push({ who, isOwn: who === self, from: at, ...thing, ...(isBare && sortBefore(at)) });
  });
  return found;
}

/** Words before a thing that was spoken of. */
const definite: ReadonlySet<string> = new Set(['the', 'that', 'those', 'this']);
const stops: ReadonlySet<string> = new Set(
  'on off from and with in at to or for run runs last lasts is are was were has do does did would will can could handle manage cope power'.split(
    ' ',
  ),
);

/** Whether gear is told with figures. */
export const isSized = (facts: Stated): boolean => /\d/.test(JSON.stringify(gearIn(facts)));

/** What is known of a thing that is spoken of as somebody's. */
export function gearFor(memory: Memory, { kind, from }: Message, { who, isOwn, key, name }: Possession): Rig {
  const rigKey = isOwn ? ownKey(from, kind) : who;
  if (name !== undefined) {
    const thing = thingOf(memory, who, name, rigKey);
    return thing ? { loads: [thing] } : {};
  }
  const gear = gearOf(memory, who, rigKey) ?? (isOwn ? memory.rigs[''] : undefined) ?? {};
  return key !== undefined && gear[key] !== undefined ? { [key]: gear[key] } : {};
}
