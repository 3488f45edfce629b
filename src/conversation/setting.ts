import { examples } from '#intents/examples.ts';
import type { RequestContext } from '#intents/intent.ts';
import type { Heard } from './hear.ts';
import { learnedOf } from './kept/learned.ts';
import { aboutBefore, ownKey, personKey } from './kept/recall.ts';
import type { Memory } from './memory.ts';
import type { Message } from './message.ts';
import { openMs, undoMs } from './turns/requests.ts';
import { rigsWith } from './whose/rivals.ts';
import { sharersOf } from './whose/shared.ts';

export interface Options {
  /** Mains voltage where the chat hasn't told its own, V. */
  readonly mainsV?: number;
}

/** How long facts said in passing and questions may fill in a new one (ms). */
const freshMs = 12 * 3600_000;

/** Everything around a question as plain values. */
export function settingOf(
  memory: Memory,
  message: Message,
  parsed: Heard,
  own: Pick<
    RequestContext,
    | 'mainsV'
    | 'recalled'
    | 'owner'
    | 'claims'
    | 'argued'
    | 'contested'
    | 'learned'
    | 'before'
    | 'subject'
    | 'units'
  >,
): RequestContext {
  return {
    from: message.from,
    at: message.at,
    mainsV: own.mainsV,
    units: own.units,
    recalled: own.recalled,
    owner: own.owner,
    claims: own.claims,
    argued: own.argued,
    contested: own.contested,
    held: parsed.held,
    gearAsked: parsed.gearAsked,
    rigs: rigsWith(memory, message, parsed),
    learned: own.learned,
    before: own.before,
    subject: own.subject,
    about: aboutBefore(memory, message),
    sharing: owner => sharersOf(memory, owner),
    learnedOf: owner => learnedOf(memory, owner, message.at),
    ownKey: ownKey(message.from, message.kind),
    parsed,
    kind: message.kind,
    isAdmin: message.isAdmin ?? true,
    lesson: memory.lessons[personKey(message.from)],
    forgetting: parsed.forgetting,
    undo: parsed.undo?.rigs,
    examples,
  };
}

/** A record of names without a prototype: somebody may be called "constructor". */
const bare = <T>(record: Readonly<Record<string, T>>): Record<string, T> =>
  Object.assign(Object.create(null) as Record<string, T>, record);

/** The memory without what is too old to be meant: questions, what was said in passing, what stands open. */
export function freshened(memory: Memory, now: Date): Memory {
  const isStale = (at: number | undefined, ms = freshMs): boolean =>
    at !== undefined && now.getTime() - at > ms;
  const { talk, choice, forgetting, undo, passing, passingAt, passingFrom, ...rest } = memory;
  return {
    ...rest,
    rigs: bare(memory.rigs),
    lessons: bare(memory.lessons),
    frames: memory.frames.filter(frame => !isStale(frame.at)),
    claims: memory.claims.filter(({ at }) => !isStale(at)),
    ...(talk && !isStale(talk.at) ? { talk } : {}),
    ...(choice && !isStale(choice.at) ? { choice } : {}),
    ...(forgetting && !isStale(forgetting.at, openMs) ? { forgetting } : {}),
    ...(undo && !isStale(undo.at, undoMs) ? { undo } : {}),
    ...(isStale(passingAt) ? {} : { passing, passingAt, passingFrom }),
  };
}
