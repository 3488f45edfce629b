import { examples } from '#intents/examples.ts';
import type { Setting } from '#intents/intent.ts';
import type { Said } from '#language/said.ts';
import type { Claim, Rig, Stated } from '#rig/rig.ts';
import type { Memory } from './memory.ts';
import type { Message } from './message.ts';
import { ownKey, personKey } from './recall.ts';

export interface Options {
  /** Mains voltage where the chat hasn't told its own, V. */
  readonly mainsV?: number;
}

/** How long facts said in passing and the last question may fill in a new one (ms). */
const freshMs = 12 * 3600_000;

/** Names whose rig is known here, for "sam's". */
export const peopleIn = (memory: Memory): string[] => Object.keys(memory.rigs).filter(name => name !== '');

/** Where a question's open facts come from, in order. */
export function sourcesOf(
  memory: Memory,
  said: Said,
  rig: Rig | undefined,
  follows: boolean,
  isArgument = false,
): readonly (Stated | undefined)[] {
  const { last, passing } = memory;
  // An argument is about the very question before, its days and its goal included.
  // "What size would we need instead": for as long as before.
  const isInstead = said.cues.has('ask-what-size') && Object.keys(said.facts).length === 0;
  const isWhole = isArgument || isInstead;
  const earlier = last && !follows ? (isWhole ? last.facts : carried(last.facts)) : undefined;
  // "My rig", "dad's": the rig named beats the talk; else the talk is nearer than the rig.
  if (said.owner !== undefined || said.cues.has('rig')) return [rig, passing];
  return [passing, earlier, rig];
}

/** What of the question before still holds in a new one: gear, place and season; not its span or its goal. */
function carried(facts: Stated): Stated {
  const {
    durationH: _d,
    targetChargePercent: _t,
    chargeNeededAh: _c,
    volts: _v,
    voltsTaken: _w,
    ...rest
  } = facts;
  return rest;
}

/** Everything around a question as plain values. */
export function settingOf(
  memory: Memory,
  message: Message,
  said: Said,
  options: Options,
  own: { readonly recalled: Setting['recalled']; readonly owner?: string; readonly claims: readonly Claim[] },
): Setting {
  return {
    from: message.from,
    at: message.at,
    mainsV: memory.settings.mainsV ?? options.mainsV ?? 230,
    recalled: own.recalled,
    owner: own.owner,
    claims: own.claims,
    rigs: memory.rigs,
    ownKey: ownKey(message.from, message.kind),
    said,
    kind: message.kind,
    isAdmin: message.isAdmin ?? true,
    lesson: memory.lessons[personKey(message.from)],
    examples,
  };
}

/** A record of names without a prototype: somebody may be called "constructor". */
const bare = <T>(record: Readonly<Record<string, T>>): Record<string, T> =>
  Object.assign(Object.create(null) as Record<string, T>, record);

/** The memory without what is too old to be meant: the last question, and what was said in passing. */
export function freshened(memory: Memory, now: Date): Memory {
  const isStale = (at: number | undefined): boolean => at !== undefined && now.getTime() - at > freshMs;
  const { last, passing: _passing, passingAt: _at, ...rest } = memory;
  return {
    ...rest,
    rigs: bare(memory.rigs),
    lessons: bare(memory.lessons),
    ...(last && !isStale(last.at) ? { last } : {}),
    ...(isStale(memory.passingAt) ? {} : { passing: memory.passing, passingAt: memory.passingAt }),
  };
}
