import type { Answer } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { english } from '#answer/speech.ts';
import { cut } from '#answer/text.ts';
import { intentNamed } from '#intents';
import { factsOf } from '#intents/facts.ts';
import type { Intent, Setting } from '#intents/intent.ts';
import { read } from '#language/read.ts';
import type { Context, Cue, Said } from '#language/said.ts';
import type { Facts, Rig, Stated } from '#rig/rig.ts';
import { toAnswer } from './answer.ts';
import { aside } from './aside.ts';
import { askBack, isAskingBack, missingOf, unsafe } from './ask-back.ts';
import { type Candidate, candidates, threshold } from './choose.ts';
import { dangers, isAbout } from './dangers.ts';
import { isAsking, isFollowUp, turn } from './follow-up.ts';
import { hangsOnPlace, noteLocation } from './location.ts';
import type { Last, Memory } from './memory.ts';
import type { Message } from './message.ts';
import { fill, ownKey, personKey, resolveLoads, rigFor } from './recall.ts';
import { remember } from './remember.ts';
import { freshened, type Options, peopleIn, settingOf, sourcesOf } from './setting.ts';
import { questionsOf } from './split.ts';
import { withStandIns } from './stand-in.ts';

export interface Conversed {
  readonly memory: Memory;
  readonly answer: Answer;
}

const mostWordsOfStop = 2;
const mostWordsOfWhy = 9;

/** What a message was taken for, before it is answered. */
interface Taken {
  readonly intent: Intent;
  readonly facts: Stated;
  readonly setting: Setting;
  readonly last: Last | undefined;
}

/**
 * One turn of a talk: a message in, an answer and the memory after it out. Pure: no clock, no store, no network;
 * the memory handed in is not touched. Never throws for any text.
 */
export function converse(kept: Memory, message: Message, options: Options = {}): Conversed {
  const memory = freshened(kept, message.at);
  const context: Context = {
    at: message.at,
    from: message.from.toLowerCase(),
    people: peopleIn(memory),
    lastIntent: memory.last?.intent,
  };
  if (message.location && message.text.trim() === '') return here(memory, message, context, options);
  const heard = contradicting(
    inLesson(aside(message.text, read(message.text, context), memory, context), memory, message),
    memory,
    message,
  );
  const said = memory.last && isFollowUp(heard, memory.last) ? withStandIns(memory.last, heard) : heard;
  const again = replay(memory, message, said, options);
  if (again) return again;
  const done: Conversed[] = [];
  for (const question of questionsOf(message.text, said, context)) {
    const taken = take(memory, message, question, options);
    const isNew = done.every(d => d.answer.intent !== taken.intent.name);
    const isIdle = taken.intent.name === 'unclear' && done.length > 0;
    if (isNew && !isIdle) done.push(answer(done.at(-1)?.memory ?? memory, message, question, taken));
  }
  return joined(done);
}

/** A location shared: noted, and a question before that hangs on it is answered again from there. */
function here(memory: Memory, message: Message, context: Context, options: Options): Conversed {
  const nothing = read('', context);
  const noted = noteLocation(memory, message, nothing);
  if (!hangsOnPlace(memory.last)) return noted;
  const taken = take(noted.memory, message, noted.said, options);
  if (taken.intent.name !== memory.last?.intent) return noted;
  const { memory: after, answer: again } = answer(noted.memory, message, noted.said, taken);
  return joined([
    { memory: after, answer: again },
    { memory: after, answer: noted.answer },
  ]);
}

/**
 * "A" and "c, 24 volts" answer a quiz only where one is open, and never while gear is told ("a 1.5A fridge too").
 * "Stop" stops a lesson; among other words it may mean anything else.
 */
function inLesson(told: Said, memory: Memory, message: Message): Said {
  const lesson = memory.lessons[personKey(message.from)];
  const isOpen = lesson?.isQuiz ?? false;
  const isStray = told.cues.has('stop') && told.words > mostWordsOfStop && !lesson?.isOpen;
  const said = isStray ? { ...told, cues: new Set([...told.cues].filter(cue => cue !== 'stop')) } : told;
  const tells = !!said.facts.loads?.length || !!said.facts.batteries?.length;
  const isAnswer = said.cues.has('quiz-answer') || said.choice !== undefined;
  if (!isAnswer || (isOpen && !tells)) return said;
  return { ...said, cues: new Set([...said.cues].filter(cue => cue !== 'quiz-answer')), choice: undefined };
}

/** "No, it's 12 amps", said against somebody else's number, is a claim and no slip of one's own. */
function contradicting(said: Said, { claims }: Memory, { from }: Message): Said {
  const [slip] = said.corrections;
  const who = personKey(from);
  const isAgainst = claims.some(claim => claim.unit === slip?.unit && claim.who !== who);
  if (!slip || slip.from !== undefined || !isAgainst || said.corrections.length > 1) return said;
  const cues = new Set([...said.cues].filter(cue => cue !== 'correction'));
  return { ...said, cues, corrections: [], claims: [{ who, value: slip.to, unit: slip.unit! }] };
}

/** Several answers to one message: the first as data, the texts one below the other. */
function joined(done: readonly Conversed[]): Conversed {
  const [first] = done as readonly [Conversed, ...Conversed[]];
  if (done.length === 1) return first;
  const { answer } = first;
  return {
    memory: done.at(-1)!.memory,
    answer: {
      ...answer,
      working: answer.working,
      text: cut(done.map(d => d.answer.text).join('\n\n')),
      figures: Object.assign({}, ...done.map(d => d.answer.figures).reverse()),
      cautions: [...new Set(done.flatMap(d => d.answer.cautions))],
      next: [...new Set(done.flatMap(d => d.answer.next))].slice(0, 3),
    },
  };
}

/** "Why?", "show the working", "simpler": the question before, told another way. */
function replay(memory: Memory, message: Message, said: Said, options: Options): Conversed | undefined {
  const { last } = memory;
  if (!last || last.asked || Object.keys(said.facts).length > 0 || said.term !== undefined) return undefined;
  const isWorking =
    said.cues.has('ask-working') || (said.cues.has('ask-why') && said.words <= mostWordsOfWhy);
  const isSimpler = said.cues.has('simpler') && !memory.lessons[personKey(message.from)]?.isOpen;
  if (!isWorking && !isSimpler) return undefined;
  const intent = intentNamed(last.intent);
  // A refusal has no numbers to go by, nor has a question that an older version kept with less.
  const parsed = intent.needs.safeParse(last.facts);
  if (!parsed.success) return undefined;
  const setting = settingOf(memory, message, said, options, {
    recalled: new Set(),
    owner: last.owner,
    claims: last.claims,
  });
  const reply = intent.reply(parsed.data, setting);
  const shown: Reply = isSimpler ? { ...reply, assumed: [], lines: reply.lines?.slice(0, 1) } : reply;
  const told = { said, isWorkingShown: isWorking, isBare: true };
  return { memory, answer: toAnswer(intent, shown, told) };
}

/** Decides which question it is and gathers its facts: said, then turned, then remembered. */
function take(memory: Memory, message: Message, said: Said, options: Options): Taken {
  const last = memory.last;
  const follows = isFollowUp(said, last);
  const rig = rigFor(memory, said, message.from, message.kind);
  const found = questionsFor(said, last, follows, rig?.rig);
  const stated = resolveLoads(said, rig?.rig);
  let first: Taken | undefined;
  for (const { intent, weight } of found) {
    if (first && weight < found[0]!.weight - 0.5) break;
    // A follow-up takes over the facts of the question it turns, also where it turns it into another one.
    const base = follows && last ? turn(last, said) : stated;
    const sources = sourcesOf(memory, said, rig?.rig, follows, intent.name === 'settle');
    const { facts, recalled } = fill(base, intent.takes, sources);
    const claims = said.claims.length > 0 ? said.claims : intent.name === 'settle' ? memory.claims : [];
    const owner =
      rig && rig.key !== '' && rig.key !== ownKey(message.from, message.kind) ? rig.key : undefined;
    const asked = follows && last?.isCheck && !isAsking(said) ? withCue(said, 'ask-can-it') : said;
    const setting = settingOf(memory, message, asked, options, { recalled, owner, claims });
    const taken: Taken = { intent, facts: pick(facts, intent.takes), setting, last };
    if (intent.needs.safeParse(taken.facts).success) return taken;
    first ??= taken;
  }
  if (first) return first;
  const setting = settingOf(memory, message, said, options, { recalled: new Set(), claims: said.claims });
  return { intent: intentNamed('unclear'), facts: {}, setting, last };
}

/** Which questions it may be: by what it says, else together with the gear it is said about ("will it cope for a week?"). */
function questionsFor(
  said: Said,
  last: Last | undefined,
  follows: boolean,
  rig: Rig | undefined,
): Candidate[] {
  const isLikely = ({ weight }: Candidate): boolean => weight >= threshold;
  const found = candidates(said, last, follows).filter(isLikely);
  const says = Object.keys(said.facts).length > 0 || isAsking(said);
  const gear = rig ?? last?.facts;
  const isOfRig = said.removed.length > 0 || said.cues.has('remove');
  if (found.length > 0 || !says || !gear || isOfRig) return found;
  const whole = { ...said, facts: factsOf({ ...gear, ...said.facts }) };
  return candidates(whole, last, follows).filter(c => isLikely(c) && c.intent.name !== 'rig');
}

const withCue = (said: Said, cue: Cue): Said => ({ ...said, cues: new Set([...said.cues, cue]) });

/** Holds only what is given: made where the reply stands, it would keep all of its sums as well. */
const redo =
  (intent: Intent, facts: Facts, setting: Setting): NonNullable<Answer['again']> =>
  () => {
    const { working, chart } = intent.reply(facts, setting);
    return { working: working?.() ?? [], chart };
  };

/** What of the facts is not as it was before. */
const changed = (facts: Stated, before: Stated = {}): Stated =>
  Object.fromEntries(
    Object.entries(facts).filter(
      ([key, value]) => JSON.stringify(value) !== JSON.stringify(before[key as keyof Stated]),
    ),
  );

const pick = (facts: Stated, keys: readonly (keyof Stated)[]): Stated =>
  Object.fromEntries(keys.flatMap(key => (facts[key] === undefined ? [] : [[key, facts[key]]]))) as Stated;

/** Answers a question taken, or asks for what is missing, and keeps what the talk needs later. */
function answer(memory: Memory, message: Message, said: Said, taken: Taken): Conversed {
  const { intent, facts, setting } = taken;
  const parsed = intent.needs.safeParse(facts);
  const missing = missingOf(parsed);
  // Somebody about to do harm is not asked for numbers first.
  const { ambientC } = facts;
  const codes = dangers(said, ambientC);
  const isUnsafe = missing.length > 0 && codes.some(code => code !== 'medical');
  const isBack = !isUnsafe && (missing.length > 0 || isAskingBack(said));
  const reply = isUnsafe
    ? unsafe(english)
    : isBack
      ? askBack(intent, missing, said, english)
      : intent.reply(parsed.data as Facts, setting);
  const isWorkingShown = said.cues.has('ask-working') && isAsking(said);
  const isVague = isBack || (isUnsafe && !isAbout(intent.name, codes));
  const name = isVague ? 'unclear' : intent.name;
  const done = { intent, facts, reply, setting, missing: missing.map(({ ask }) => ask), isBack };
  const again = parsed.success && !isBack ? redo(intent, parsed.data, setting) : undefined;
  const corrected = said.corrections.length > 0 ? changed(facts, taken.last?.facts) : undefined;
  return {
    memory: remember(memory, message, said, done),
    answer: toAnswer(intent, reply, {
      said,
      name,
      isWorkingShown,
      ambientC,
      corrected,
      again,
    }),
  };
}
