import type { Reply } from '#answer/reply.ts';
import type { Intent, Setting } from '#intents/intent.ts';
import type { Said } from '#language/said.ts';
import { mergeFacts } from '#rig/merge.ts';
import type { Claim, Rig, Stated } from '#rig/rig.ts';
import { factsSchema, rigSchema } from '#rig/rig.ts';
import { emptyMemory, type Last, lastSchema, type Memory } from './memory.ts';
import type { Message } from './message.ts';
import { personKey } from './recall.ts';

/** What was done with a message, as far as memory cares. */
export interface Done {
  readonly intent: Intent;
  readonly facts: Stated;
  readonly reply: Reply;
  readonly setting: Setting;
  readonly missing: readonly string[];
  readonly isBack: boolean;
}

/** Questions that don't count as "the question before". */
const passingBy = new Set(['rig', 'help', 'privacy', 'forget', 'unclear', 'term', 'learn']);
const gearKeys = new Set(Object.keys(rigSchema.shape));
const claimsKept = 8;

/** The memory after a message. Never touches the one handed in. */
export function remember(memory: Memory, message: Message, said: Said, done: Done): Memory {
  const wish = done.isBack ? undefined : done.reply.remember;
  if (wish?.forget === 'chat') return emptyMemory();
  const from = personKey(message.from);
  let next: Memory = { ...memory, claims: keepClaims(memory, said, personKey(message.from)) };
  if (wish?.forget === 'me') next = withoutPerson(next, done.setting.ownKey, from);
  if (wish?.rigs) next = { ...next, rigs: changedRigs(next.rigs, wish.rigs), last: undefined };
  if (wish?.lesson)
    next = { ...next, lessons: { ...next.lessons, [from]: { ...wish.lesson, done: [...wish.lesson.done] } } };
  // "It's minus 5 here this morning": no question, and the next one is asked in that cold.
  if (done.intent.name === 'rig' || done.intent.name === 'unclear')
    next = {
      ...next,
      passing: sound(factsSchema, passingOf(next.passing, said.facts)),
      passingAt: message.at.getTime(),
    };
  next = { ...next, aside: done.intent.name === 'term' ? 'term' : undefined };
  if (!passingBy.has(done.intent.name))
    next = { ...next, last: sound(lastSchema, lastOf(message, said, done)) };
  return strip(next);
}

/** What is new, if the store would take it (no battery of 1e30 Ah): one odd number must not cost the whole answer. */
const sound = <T>(schema: { safeParse(value: unknown): { success: boolean } }, value: T): T | undefined =>
  schema.safeParse(value).success ? value : undefined;

const lastOf = (message: Message, said: Said, done: Done): Last => ({
  intent: done.intent.name,
  facts: done.facts,
  claims: done.setting.claims.slice(-claimsKept).map(claim => ({ ...claim })),
  owner: done.setting.owner,
  from: personKey(message.from),
  at: message.at.getTime(),
  conversion: said.conversion && { ...said.conversion },
  isCheck: done.setting.said.cues.has('ask-can-it') ? true : undefined,
  asked: done.isBack ? done.missing.slice(0, 10) : undefined,
});

function keepClaims({ claims: old, last }: Memory, said: Said, from: string): Claim[] {
  const told = said.claims.length > 0 ? said.claims : guessOf(said, last, from);
  const isRenewed = (claim: Claim): boolean =>
    told.some(one => one.who === claim.who && one.unit === claim.unit);
  return [...old.filter(claim => !isRenewed(claim)), ...told].slice(-claimsKept);
}

/** "2 hours", said by somebody else after "how long will it last?": a guess, which may be argued about later. */
function guessOf({ facts, words }: Said, last: Last | undefined, from: string): Claim[] {
  const { durationH, ...rest } = facts;
  const isGuess = durationH !== undefined && Object.keys(rest).length === 0 && words <= mostWordsOfGuess;
  const isHowLong = last?.intent === 'run-time' && last.from !== from && last.facts.durationH === undefined;
  if (!isGuess || !isHowLong) return [];
  return [
    durationH < 48
      ? { who: from, value: durationH, unit: 'h' }
      : { who: from, value: durationH / 24, unit: 'days' },
  ];
}

const mostWordsOfGuess = 4;

function changedRigs(old: Memory['rigs'], change: Readonly<Record<string, Rig | null>>): Memory['rigs'] {
  const rigs = { ...old };
  for (const [owner, rig] of Object.entries(change)) {
    if (rig === null) delete rigs[owner];
    else if (sound(rigSchema, rig)) rigs[owner] = rig;
  }
  return rigs;
}

/** Stated of the talk that are no gear: days, driving, sky. */
function passingOf(old: Stated | undefined, facts: Stated): Stated | undefined {
  const rest = Object.fromEntries(Object.entries(facts).filter(([key]) => !gearKeys.has(key))) as Stated;
  return Object.keys(rest).length > 0 ? mergeFacts(old ?? {}, rest) : old;
}

function withoutPerson(memory: Memory, ownKey: string, from: string): Memory {
  const rigs = { ...memory.rigs };
  const lessons = { ...memory.lessons };
  const people = Object.entries(memory.people ?? {}).filter(([, name]) => name.toLowerCase() !== from);
  delete rigs[ownKey];
  delete lessons[from];
  return {
    ...memory,
    rigs,
    lessons,
    people: people.length > 0 ? Object.fromEntries(people) : undefined,
    claims: memory.claims.filter(c => c.who.toLowerCase() !== from),
    last: memory.last?.from === from ? undefined : memory.last,
  };
}

/** Leaves out keys without a value, so that what is stored reads back the same. */
const strip = (memory: Memory): Memory => JSON.parse(JSON.stringify(memory)) as Memory;
