import type { Answer, IntentName } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { english } from '#answer/speech.ts';
import { cut } from '#answer/text.ts';
import { present } from '#basics/present.ts';
import { intentNamed } from '#intents';
import type { Intent } from '#intents/intent.ts';
import type { Unknown } from '#intents/untold.ts';
import { worked } from '#intents/unused.ts';
import type { Cue } from '#language/words/en/cues.ts';
import type { ChatUnits } from '#quantity/chat-units.ts';
import type { Facts } from '#rig/rig.ts';
import { anotherSide } from './answering/another-side.ts';
import { silence, toAnswer, toldOf } from './answering/answer.ts';
import { countedLines } from './answering/counted.ts';
import { withNoChange, withReasonFirst } from './answering/no-change.ts';
import { askedOpenly } from './answering/open-asked.ts';
import { isEmergency, safe } from './answering/safe.ts';
import { shownIn } from './answering/shown.ts';
import { isReplay, isSilent, isStrange } from './answering/silence.ts';
import { type Heard, hear } from './hear.ts';
import { type Interpreted, interpret } from './interpret.ts';
import { learnt } from './kept/learned.ts';
import { hangsOnPlace, noteLocation } from './kept/location.ts';
import { lastFrame } from './kept/recall.ts';
import { remember } from './kept/remember.ts';
import { hearBot, talkAfter } from './kept/talk-read.ts';
import type { Memory } from './memory.ts';
import type { Message } from './message.ts';
import { isIntent, undemanding } from './questions.ts';
import { freshened, type Options } from './setting.ts';
import { unitsWish, unusualUnits } from './told/units.ts';
import { withMaxim } from './turns/maxims.ts';
import { listedByDay, turnedBack } from './turns/requests.ts';
import { questionsOf } from './turns/split.ts';
import { askBack, askedFor, askWhich, askWhose } from './unsure/ask-back.ts';
import { answerLacking } from './unsure/guess-of.ts';
import { isStillUnknown, notKnown } from './unsure/not-known.ts';
import { withGearAsked } from './whose/gear-asked.ts';
import { keptOnce, withShared } from './whose/shared.ts';
import { sharedBy } from './whose/sharing.ts';
import { isOfNobody } from './whose/whose.ts';

export interface Conversed {
  readonly memory: Memory;
  readonly answer: Answer;
}

/**
 * One turn of a talk: a message in, an answer and the memory after it out. Pure: no clock, no store, no network;
 * the memory handed in is not touched. Never throws for any text.
 */
export function converse(kept: Memory, message: Message, options: Options = {}): Conversed {
  const { memory, answer: said } = conversed(withShared(freshened(kept, message.at)), message, options);
  return { memory: keptOnce(memory), answer: said };
}

/** The same with each shared rig under all its names. */
function conversed(before: Memory, message: Message, options: Options): Conversed {
  const heard = withGearAsked(before, message, withMaxim(before, message, hear(before, message)));
  const memory = message.isBot ? before : sharedBy(before, message, heard);
  if (message.isBot) return { memory: hearBot(memory, message), answer: silence(heard) };
  if (message.location && message.text.trim() === '') return here(memory, message, heard, options);
  const wish = unitsWish(message.text);
  if (wish) return inUnits(memory, message, heard, wish, options);
  const turned = turnedBack(memory, message);
  if (turned) {
    const told = { facts: {}, undo: undefined, options: [], issues: [] };
    const asked = { ...heard, ...told, intent: turned.intent, probability: 1, certainty: 1 };
    const onto = { ...message, onto: turned };
    return answer(memory, onto, asWished(interpret(memory, onto, asked, options)));
  }
  const trip = listedByDay(memory, message);
  if (trip) {
    const told = { facts: {}, removed: [], corrects: undefined, options: [], issues: [] };
    const asked = { ...heard, ...told, intent: 'trip', probability: 1, certainty: 1, second: undefined };
    const onto = { ...message, onto: trip };
    return answer(memory, onto, asWished(interpret(memory, onto, asked, options)));
  }
  const lost = notKnown(memory, message, heard);
  if (lost) {
    const read = interpret(memory, lost.message, lost.heard, options);
    return answer(memory, lost.message, asWished(read), false, [], lost.how);
  }
  const done: Conversed[] = [];
  const read = learnt(memory, message, heard);
  for (const question of questionsOf(message.text, heard)) {
    const now = done.at(-1)?.memory ?? read.memory;
    const isFirst = done.length === 0;
    const interpreted = interpret(read.memory, message, question, options);
    const answered = answer(now, message, interpreted, !isFirst, isFirst ? read.lines : []);
    // A second question that would ask back is let go: the first has its answer.
    if (isFirst || answered.answer.intent !== 'unclear') done.push(answered);
    if (isEmergency(answered.answer.hazards)) break;
  }
  return joined(done);
}

/** An answer that was wished for once more, as it stands: that it is the same is no news. */
const asWished = (read: Interpreted): Interpreted => ({ ...read, replay: undefined });

/** A location shared: noted, and a question before that hangs on it is answered again from there. */
function here(memory: Memory, message: Message, nothing: Heard, options: Options): Conversed {
  const noted = noteLocation(memory, message, nothing);
  const last = lastFrame(memory, message.from);
  if (!last || !hangsOnPlace(last)) return noted;
  const asked = { ...noted.heard, intent: last.intent, probability: 1, second: undefined };
  const read = interpret(noted.memory, { ...message, onto: last }, asked, options);
  const { memory: after, answer: again } = answer(noted.memory, message, asWished(read));
  return joined([
    { memory: after, answer: again },
    { memory: after, answer: noted.answer },
  ]);
}

/** Units asked for ("use feet"): noted, and the last question is answered again in them. */
function inUnits(
  memory: Memory,
  message: Message,
  heard: Heard,
  wish: ChatUnits,
  options: Options,
): Conversed {
  const units = unusualUnits({ ...memory.settings.units, ...wish });
  const { units: _before, ...settings } = memory.settings;
  const frames = memory.frames.map(({ units: _told, ...frame }) => frame);
  const noted = { ...memory, frames, settings: { ...settings, ...(units && { units }) } };
  const last = message.onto ?? lastFrame(noted, message.from);
  const nothing = { facts: {}, removed: [], corrects: undefined, options: [], issues: [] };
  const asked = { ...heard, ...nothing, probability: 1, certainty: 1, second: undefined };
  if (!last || last.asked !== undefined) {
    const headline = english.say('units-noted', 'Right, I answer in that from now on.');
    return { memory: noted, answer: toAnswer({ headline }, { intent: 'none', heard: asked }) };
  }
  const onto = { ...message, onto: { ...last, units: undefined } };
  const again = { ...asked, intent: last.intent, cues: new Set<Cue>(['same-again']), words: 1 };
  return answer(noted, onto, interpret(noted, onto, again, options));
}

/** Several answers to one message: the first as data, the texts one below the other. */
function joined(done: readonly Conversed[]): Conversed {
  const [first] = done as readonly [Conversed, ...Conversed[]];
  if (done.length === 1) return first;
  const { answer } = first;
  return {
    // One message was heard, however many questions it asks.
    memory: { ...present(done.at(-1)).memory, talk: first.memory.talk },
    answer: {
      ...answer,
      hazards: [...new Set(done.flatMap(d => d.answer.hazards))],
      working: answer.working,
      text: cut(oneBelowOther(done.map(d => d.answer.text))),
      figures: Object.assign({}, ...done.map(d => d.answer.figures).reverse()),
      cautions: [...new Set(done.flatMap(d => d.answer.cautions))],
      next: [...new Set(done.flatMap(d => d.answer.next))].slice(0, 3),
    },
  };
}

/** Texts one below the other; a line that stands already ("Careful: …") is not said again. */
function oneBelowOther(texts: readonly string[]): string {
  const said = new Set<string>();
  const parts = texts.map(text => {
    const lines = text.split('\n').filter(line => line === '' || !said.has(line));
    for (const line of lines) said.add(line);
    return lines.join('\n').trim();
  });
  return parts
    .filter(Boolean)
    .join('\n\n')
    .replace(/\n{3,}/g, '\n\n');
}

/** Holds only what is given, and of that no way to tell why it was read so: hundreds of these are kept. */
const redo = (
  intent: Intent,
  facts: Facts,
  { parsed, ...setting }: Interpreted['setting'],
): NonNullable<Answer['again']> => {
  const read = { ...parsed, because: () => [], second: undefined };
  return () => {
    const { working, chart } = intent.reply(facts, { ...setting, parsed: read });
    return { working: working?.() ?? [], chart };
  };
};

/** Talk among people is no question: what it claims is all that is kept of it. */
const asTalk = (read: Interpreted): Interpreted => ({
  ...read,
  intent: intentNamed('none'),
  heard: { ...read.heard, intent: 'none' },
  two: undefined,
});

/** The question that an answer is to: as it was read, where plain words answer it in place of a sum. */
const askedAs = ({ intent, readAs }: Interpreted): IntentName =>
  readAs && isIntent(readAs.intent) && !undemanding.has(readAs.intent) ? readAs.intent : intent.name;

/** Answers what was interpreted, or asks for what is missing, and keeps what the talk needs later. */
function answer(
  memory: Memory,
  message: Message,
  read: Interpreted,
  isSaid = false,
  learntLines: readonly string[] = [],
  unknown: Unknown | undefined = isStillUnknown(memory, message, read) ? 'still' : undefined,
): Conversed {
  const { intent, heard, missing, ready, setting, two, hazards, facts } = read;
  const { cues, issues } = heard;
  const talk = remember.bind(undefined, memory, message, read);
  if (isSilent(memory, read, message)) {
    const nothing = { reply: { headline: '' }, isBack: false };
    const left = remember(memory, message, asTalk(read), nothing);
    return { memory: left, answer: silence(heard) };
  }
  const concepts = hazards.length > 0 ? shownIn(message.text, heard, facts) : undefined;
  const known = hazards.filter(code => memory.frames.some(frame => frame.hazards?.includes(code)));
  const isCheck = cues.has('ask-can-it');
  const about = { intent: intent.name, facts, isSaid, isCheck, known };
  const danger = { codes: hazards, ...about, ...(concepts && { concepts }) };
  if (isEmergency(hazards)) {
    const reply = safe({ headline: '' }, { ...danger, isBack: false });
    // Nothing of it is kept but that it was said: the next line ("out now, still smoking") is of it.
    const left = { ...memory, talk: talkAfter(memory, message, heard) };
    return {
      memory: left,
      answer: toAnswer(reply, { intent: 'emergency', ...toldOf(read), lent: undefined }),
    };
  }
  if (two) {
    const asks = askWhich(two, english);
    const { intent: first } = two.options[0];
    // Which of two is meant may wait where a danger forbids to ask: then the likelier one is what was understood.
    const left = safe(asks, { ...danger, intent: 'unclear', isBack: true });
    const reply = left.next?.length ? safe(asks, { ...danger, intent: first, isBack: true }) : left;
    const isAsked = (reply.next?.length ?? 0) > 0;
    const memoryAfter = talk({ reply: asks, isBack: true });
    return {
      memory: memoryAfter,
      answer: toAnswer(reply, {
        intent: isAsked ? 'unclear' : first,
        ...toldOf(read),
        // A question back holds no figure of anybody's.
        ...(isAsked && { shared: two.shared, lent: undefined }),
        counted: learntLines,
      }),
    };
  }
  const isBack =
    ready === undefined || isStrange(heard) || issues.some(({ code }) => code === 'absurd-value');
  const asks = isBack ? askBack(intent, missing, issues, english) : undefined;
  const isNobodys = asks !== undefined && issues.length === 0 && isOfNobody(heard);
  const back = isNobodys ? askWhose(english) : asks;
  const whole =
    ready !== undefined && !back
      ? (read.worked ?? worked(() => intent.reply(ready, setting)))
      : { reply: (isNobodys ? undefined : answerLacking(read, unknown)) ?? present(back) };
  const full = whole.reply;
  const isAgain = isReplay(read);
  const isWorkingShown = cues.has('ask-working');
  const isSimpler = isAgain && cues.has('simpler');
  const shown: Reply = isSimpler
    ? { ...full, assumed: [], lines: full.lines?.slice(0, 1) }
    : isAgain && cues.has('ask-why') && !isWorkingShown
      ? withReasonFirst(full)
      : (anotherSide(full, read, memory) ?? withNoChange(full, read));
  const reply = safe(hazards.length > 0 ? shown : askedOpenly(shown, read), { ...danger, isBack });
  const isTold = reply.figures !== undefined || full.remember?.rigs !== undefined;
  const counted = isBack || !isTold ? undefined : countedLines(read, whole);
  const isAnswered = (reply.figures ?? reply.working ?? reply.chart) !== undefined;
  const isQuiz = full.remember?.lesson?.isQuiz === true;
  const isAsking = isBack || intent.name === 'unclear' || isQuiz;
  const isMissing = isBack && issues.length === 0 && missing.length > 0;
  const words = isMissing ? askedFor(missing) : [full.headline, ...(full.lines ?? [])].join('\n');
  const asked = isAsking ? words : undefined;
  return {
    memory: talk({ reply: full, isBack, asked, isUnknown: unknown !== undefined }),
    answer: toAnswer(reply, {
      // What is missing is asked for in the question's own name; what can't be right is asked about first.
      intent:
        isStrange(heard) || (isBack && ready !== undefined)
          ? 'unclear'
          : heard.isRivalry
            ? 'compare'
            : askedAs(read),
      ...toldOf(read),
      isWorkingShown,
      counted: [...learntLines, ...(counted?.lines ?? [])],
      unused: counted?.unused,
      unread: counted?.unread,
      again: isBack || !isAnswered ? undefined : redo(intent, ready, setting),
    }),
  };
}
