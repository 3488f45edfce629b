import { present } from '#basics/present.ts';
import { intentNamed } from '#intents';
import type { RequestContext } from '#intents/intent.ts';
import type { ParsedMessage } from '#language/reading.ts';
import { hasDraw, isSameName, isShortFor, mergeBatteries, mergeSolar, patchLoad } from '#rig/merge.ts';
import type { Rig, Stated, StatedLoad } from '#rig/rig.ts';
import type { Frame, Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { gearOf } from '../whose/gear-of.ts';

/** A person's name as a key: small letters, and never the one that no record can hold. */
export const personKey = (name: string): string => {
  const key = name.toLowerCase();
  return key === '__proto__' ? 'proto' : key;
};

/** The key under which a person's own gear is kept: in a private chat the chat's own is theirs. */
export const ownKey = (from: string, kind: 'private' | 'group'): string =>
  kind === 'private' ? '' : personKey(from);

/** What was only asked about as one of two readings, and turned another question: nothing leans on it. */
const isUnread = ({ asked, onto }: Frame): boolean => asked?.length === 0 && onto !== undefined;

/** The question last asked by a person. */
export const ownFrame = (frames: readonly Frame[], from: string): Frame | undefined =>
  frames.findLast(frame => frame.from === personKey(from) && !isUnread(frame));

/** What somebody's last question was about, in one word ("fuse"); undefined where it was about no one thing. */
export function aboutBefore(
  memory: Memory,
  { from, onto }: Pick<Message, 'from' | 'onto'>,
): string | undefined {
  const frame = onto ?? lastFrame(memory, from);
  return frame && intentNamed(frame.intent).thing;
}

/** The question last asked by a person, else by anybody. */
export const lastFrame = ({ frames }: Memory, from: string): Frame | undefined =>
  ownFrame(frames, from) ?? frames.at(-1);

const ownWords: ReadonlySet<string> = new Set(['my', 'mine', 'mines', 'me', 'ive']);

/** Whether the writer speaks of their own gear, in which nobody else's is meant. */
export const isOfOwn = ({ recognised }: Pick<ParsedMessage, 'recognised'>): boolean =>
  recognised.words.some(
    (word, i) => ownWords.has(word) && !(word === 'me' && isAskedFor(recognised.words, i)),
  );

/** "Tell me", "show me", "for me": the writer asks, and speaks of nothing that is theirs. */
const isAskedFor = (words: readonly string[], at: number): boolean =>
  /^(?:tell|show|give|help|let|remind|teach|ask|quiz|excuse|forget|send|explain|to|with|for|told)$/.test(
    words[at - 1] ?? '',
  );

/** Which rig a message is about, and whose it is. */
export function rigFor(
  memory: Memory,
  { owner, recognised }: Pick<ParsedMessage, 'owner' | 'recognised'>,
  from: string,
  kind: 'private' | 'group',
): { readonly rig: Rig; readonly key: string } | undefined {
  const pick = (key: string) => (memory.rigs[key] ? { rig: memory.rigs[key], key } : undefined);
  // Who has told no rig has perhaps asked of one.
  const asked = (who: string, key = who) => {
    const rig = gearOf(memory, who, key);
    return rig && { rig, key };
  };
  const own = ownKey(from, kind);
  if (owner === 'me') return pick(own) ?? pick('') ?? asked(personKey(from), own);
  // "Ours" of who has told a battery of their own is that.
  const isOwnFirst = memory.shared?.[own] !== undefined || memory.rigs[own]?.batteries !== undefined;
  if (owner === 'us') return isOwnFirst ? (pick(own) ?? pick('')) : (pick('') ?? pick(own));
  if (owner !== undefined) return pick(personKey(owner)) ?? asked(personKey(owner));
  // "My fridge" of somebody whose gear is not known runs on nobody else's battery; nor does what they asked of before.
  const isApart = isOfOwn({ recognised }) || ownFrame(memory.frames, from) !== undefined;
  const only = isApart ? [] : Object.keys(memory.rigs);
  return (
    pick(own) ??
    pick('') ??
    (new Set(only.map(key => memory.rigs[key])).size === 1 ? pick(present(only[0])) : undefined)
  );
}

const hasFigures = ({
  name: _name,
  supply: _supply,
  volumeL: _litres,
  build: _build,
  ...rest
}: StatedLoad): boolean => Object.keys(rest).length > 0;

/** The load of a rig that a name stands for: the one of that name, else the only one that it is short for. */
function named(name: string, { loads = [] }: Rig): StatedLoad | undefined {
  const same = loads.find(load => isSameName(load.name, name));
  const longer = loads.filter(load => isShortFor(name, load.name));
  return same ?? (longer.length === 1 ? longer[0] : undefined);
}

/**
 * A load named without figures stands for the one in the rig of that name, else for a typical one; told with its hours
 * alone it draws what that one does.
 */
function known(load: StatedLoad, rig: Rig | undefined): StatedLoad {
  if (hasDraw(load)) return load;
  const own = rig && named(load.name, rig);
  if (!own) return load;
  return hasFigures(load) ? patchLoad(own, { ...load, name: own.name }, false) : { ...load, ...own };
}

/** Loads whose draw isn't told looked up in the rig. */
export const resolved = (told: Stated, rig: Rig | undefined): Stated =>
  told.loads ? { ...told, loads: told.loads.map(load => known(load, rig)) } : told;

export interface Recalled {
  readonly facts: Stated;
  readonly recalled: RequestContext['recalled'];
}

/** One place in two ways: a name told now must not get the coordinates of another one. */
const whereKeys: readonly (keyof Stated)[] = ['place', 'latitudeDeg', 'longitudeDeg'];
const useKeys: readonly (keyof Stated)[] = ['loads', 'dailyUseAh', 'dailyUseWh'];

/**
 * Fills in what the message leaves open, from the sources in order, and only the keys the question takes.
 * Gear told without a size ("battery at 40 %") colours what is remembered.
 * @param isDraw the amps told tell what it draws, in the place of any loads
 */
export function fill(
  facts: Stated,
  takes: readonly (keyof Stated)[],
  sources: readonly (Stated | undefined)[],
  isDraw = false,
): Recalled {
  const filled: Record<string, unknown> = { ...facts };
  const recalled = new Set<keyof Stated>();
  for (const source of sources) {
    if (!source) continue;
    const isKnown = (keys: readonly (keyof Stated)[]) => keys.some(key => filled[key] !== undefined);
    const [alreadyUse, alreadyWhere] = [isDraw || isKnown(useKeys), isKnown(whereKeys)];
    for (const key of takes) {
      if (source[key] === undefined) continue;
      if (useKeys.includes(key) && alreadyUse) continue;
      if (whereKeys.includes(key) && alreadyWhere) continue;
      if (filled[key] === undefined) {
        filled[key] = source[key];
        recalled.add(key);
      } else if (!recalled.has(key)) colour(filled, source, key, recalled);
    }
  }
  return { facts: filled as Stated, recalled };
}

/** Joins half-told gear with what is known of it; whole gear is left alone. */
function colour(
  filled: Record<string, unknown>,
  source: Stated,
  key: keyof Stated,
  recalled: Set<keyof Stated>,
): void {
  const said = filled as Stated;
  const [told, known] = [said.batteries, source.batteries];
  const [one, other] = [told?.[0], known?.[0]];
  // "It's 100 Ah" of a battery of which the kind alone was told.
  const isOne = key === 'batteries' && told?.length === 1 && known?.length === 1 && one && other;
  if (
    isOne &&
    one.chemistry === undefined &&
    other.capacityAh === undefined &&
    other.energyWh === undefined
  ) {
    filled.batteries = [{ ...other, ...one }];
    return;
  }
  if (
    key === 'batteries' &&
    said.batteries?.every(b => b.capacityAh === undefined && b.energyWh === undefined)
  ) {
    if (said.batteries.length > 1) return;
    filled.batteries = mergeBatteries(present(source.batteries), said.batteries, 'state');
    recalled.add(key);
  } else if (key === 'solar' && said.solar?.every(s => s.powerW === undefined)) {
    filled.solar = mergeSolar(present(source.solar), said.solar, 'state');
    recalled.add(key);
  } else if (key === 'inverter' || key === 'cable') {
    filled[key] = { ...source[key], ...said[key] };
  }
}
