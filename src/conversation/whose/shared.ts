import type { Rig } from '#rig/rig.ts';
import { personKey } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';

// A rig that several people share is kept once, under one of their names; the others' names stand for it.

/** The name under which a person's rig is kept. */
export const rigKeyOf = ({ shared }: Pick<Memory, 'shared'>, key: string): string =>
  shared !== undefined && Object.hasOwn(shared, key) ? (shared[key] ?? key) : key;

/** Who shares the rig of a name, that name first; nobody else where it is not shared. */
export function sharersOf(memory: Pick<Memory, 'shared'>, key: string): readonly string[] {
  const kept = rigKeyOf(memory, key);
  const all = Object.keys(memory.shared ?? {}).filter(name => rigKeyOf(memory, name) === kept);
  return [...new Set([key, kept, ...all])];
}

/** The rigs with each shared one under all its names. */
export function withShared(memory: Memory): Memory {
  if (memory.shared === undefined) return memory;
  const rigs: Memory['rigs'] = Object.assign(Object.create(null), memory.rigs);
  for (const [name, kept] of Object.entries(memory.shared)) {
    const rig = rigs[kept];
    if (rig) rigs[name] = rig;
  }
  return { ...memory, rigs };
}

/** The same as it is kept: each rig once. */
export function keptOnce(memory: Memory): Memory {
  const others = Object.entries(memory.shared ?? {}).filter(([name, kept]) => name !== kept);
  if (others.length === 0) return memory;
  const rigs = { ...memory.rigs };
  for (const [name, kept] of others) if (rigs[kept]) delete rigs[name];
  return { ...memory, rigs };
}

/** The rigs with a new one in the place of a person's, or without it; under all names of those who share it. */
export function withRig(memory: Memory, key: string, rig: Rig | null): Memory['rigs'] {
  const rigs = { ...memory.rigs };
  for (const name of sharersOf(memory, key)) {
    if (rig === null) delete rigs[name];
    else if (name === rigKeyOf(memory, key) || memory.rigs[name] !== undefined) rigs[name] = rig;
  }
  return rigs;
}

/** Two people share a rig from now on; as before where each has one already. @param isFree whether the other's may be taken so */
export function bound(memory: Memory, one: string, other: string, isFree: boolean): Memory {
  const [a, b] = [rigKeyOf(memory, one), rigKeyOf(memory, other)];
  const [own, theirs] = [memory.rigs[a], memory.rigs[b]];
  if (a === b || (own && theirs) || (theirs && !isFree)) return memory;
  const kept = theirs ? b : a;
  const names = [...sharersOf(memory, one), ...sharersOf(memory, other)];
  const shared = { ...memory.shared, ...Object.fromEntries(names.map(name => [name, kept])) };
  return withShared({ ...memory, shared });
}

/** Somebody's rig is theirs alone again: the others keep what they shared. */
export function unbound(memory: Memory, key: string): Memory {
  const { shared, ...rest } = memory;
  if (shared === undefined || shared[key] === undefined) return memory;
  const kept = rigKeyOf(memory, key);
  const others = sharersOf(memory, key).filter(name => name !== key);
  const heir = kept === key ? others[0] : kept;
  const left = others.length > 1 && heir !== undefined ? others.map(name => [name, heir] as const) : [];
  const apart = Object.entries(shared).filter(([name]) => name !== key && !others.includes(name));
  const now = Object.fromEntries([...apart, ...left]);
  const { [key]: rig, ...rigs } = memory.rigs;
  const { [key]: taught, ...learned } = memory.learned ?? {};
  const isMoved = heir !== undefined && kept === key;
  return {
    ...rest,
    rigs: isMoved && rig ? { ...rigs, [heir]: rig } : rigs,
    ...(memory.learned && { learned: isMoved && taught ? { ...learned, [heir]: taught } : learned }),
    ...(Object.keys(now).length > 0 && { shared: now }),
  };
}

/** "Our van": from now on whoever says that they share it may be taken at their word. */
export const opened = (memory: Memory, from: string): Memory =>
  memory.shared?.[personKey(from)] !== undefined
    ? memory
    : { ...memory, shared: { ...memory.shared, [personKey(from)]: personKey(from) } };
