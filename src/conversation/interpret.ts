import type { Reply } from '#answer/reply.ts';
import { present } from '#basics/present.ts';
import { without } from '#basics/without.ts';
import { intentNamed } from '#intents';
import { factsOf } from '#intents/facts.ts';
import { type Intent, needsOf, type RequestContext } from '#intents/intent.ts';
import { withLearned } from '#intents/learned.ts';
import { hasCapacity } from '#intents/needs.ts';
import type { Worked } from '#intents/unused.ts';
import { toldApart } from '#intents/which-place.ts';
import type { Cue } from '#language/words/en/cues.ts';
import { gearIn } from '#rig/gear.ts';
import type { HazardCode } from '#rig/hazard-codes.ts';
import { mainsVoltsIn, withoutMainsVolts } from '#rig/mains.ts';
import type { Facts, Stated } from '#rig/rig.ts';
import { dangersIn, stillThere, withDangers } from './answering/dangers.ts';
import { type Heard, heardNothing } from './hear.ts';
import { learnedFor } from './kept/learned.ts';
import { fill, lastFrame, ownKey, personKey, resolved, rigFor } from './kept/recall.ts';
import {
  pick,
  remembered,
  rigFilling,
  saysMore,
  sourcesInOrder,
  wholeIn,
  withMore,
} from './kept/remembered.ts';
import { whereTheyCamp } from './kept/whereabouts.ts';
import type { Frame, Memory } from './memory.ts';
import type { Message } from './message.ts';
import { isIntent, undemanding } from './questions.ts';
import { type Options, settingOf } from './setting.ts';
import { outletVoltsIn } from './told/left-numbers.ts';
import { withSeasonTold } from './told/season-told.ts';
import { timed } from './told/timed.ts';
import { unitsFor } from './told/units.ts';
import { asked, beforeOf, isAskedAgain, stillRecalled } from './turns/again.ts';
import { appealed } from './turns/appeal.ts';
import { asMeant } from './turns/as-meant.ts';
import { arguedIn, claimsFor } from './turns/claims.ts';
import { contestedIn } from './turns/contested.ts';
import { figureClaimed } from './turns/figure-claims.ts';
import { forDays, leanOf } from './turns/lean.ts';
import { isSlipOf, ofArgument, ofFrame, turnOfTalk } from './turns/retake.ts';
import { sideTalk } from './turns/side-talk.ts';
import { leanOn, namedBy, subjectBefore } from './turns/subject.ts';
import { tipTold } from './turns/tips.ts';
import { toldGear, toldUnits } from './turns/told-gear.ts';
import { turned } from './turns/turn.ts';
import { type Missing, missingOf } from './unsure/ask-back.ts';
import { askedBeside, askedByFigures, askedPlainly } from './unsure/asked-plainly.ts';
import { doubtOf } from './unsure/doubt.ts';
import { triesOf } from './unsure/tried.ts';
import { factsIn, readingsOf, type Two, twoReadings } from './unsure/two-readings.ts';
import { type Lent, lentIn, sourcesOf } from './whose/origins.ts';
import { rigsOf } from './whose/rigs-of.ts';
import { sharersOf } from './whose/shared.ts';
import { borrowedIn } from './whose/whose.ts';

/** A message held against what is remembered: everything after goes by this one value. */
export interface Interpreted {
  /** The question. */
  readonly intent: Intent;
  /** What the message states, literally. */
  readonly heard: Heard;
  /** The same as it was read, where it is answered in plain words in place of a sum. */
  readonly readAs?: Heard;
  /** All that the question goes by, wherever it came from. */
  readonly facts: Stated;
  /** The same ready for the engine; absent where something is missing. */
  readonly ready?: Facts;
  readonly missing: readonly Missing[];
  readonly setting: RequestContext;
  /** Mains volts told with the question or the one that it turns, V. */
  readonly mainsV?: number;
  /** The question that it leans on. */
  readonly frame?: Frame;
  /** What of the facts is somebody else's. */
  readonly lent: readonly Lent[];
  /** Two readings that answer differently, of which neither is sure enough. */
  readonly two?: Two;
  /** It was read unsurely, and lacks something besides. */
  readonly isUnsure?: true;
  /** Codes of hazards seen in the message or in what memory adds. */
  readonly hazards: readonly HazardCode[];
  /** The answer to the question that it turns, or asks once more. */
  readonly replay?: () => Reply | undefined;
  /** The answer to a question before, as its asker had it. */
  readonly answerTo: (asked: Frame) => Reply | undefined;
  /** The answer, where it was worked out already to see whether another reading has the same. */
  readonly worked?: Worked;
}

/** Less likely than this another question is not taken, though it could be answered. */
const leastLikely = 0.25;

/** Holds a message against memory, once: the question, its facts and whose they are, and what is missing. */
export function interpret(memory: Memory, message: Message, said: Heard, options: Options = {}): Interpreted {
  // What was chosen of two readings is what is asked.
  if (said.isPicked) return taken(memory, message, said, undefined, options);
  const argument = appealed(memory, message, said, asked => replayed(memory, message, asked, options));
  if (argument) return taken(memory, message, argument, undefined, options);
  const claim =
    figureClaimed(memory, message, said) ??
    tipTold(memory, message, said, asked => replayed(memory, message, asked, options));
  if (claim) return taken(memory, message, claim, undefined, options);
  const told = asMeant(memory, message, said);
  if (told.together) return taken(memory, message, told, undefined, options);
  const byFigures = askedByFigures(told);
  if (byFigures) return { ...taken(memory, message, byFigures, undefined, options), readAs: told };
  const plain = told.issues.length > 0 ? undefined : (toldGear(memory, message, told) ?? toldUnits(told));
  if (plain) return taken(memory, message, plain, undefined, options);
  const leaning = ofFrame(memory, message, told);
  const heard = ofArgument(memory, turnOfTalk(memory, message, leaning) ?? sideTalk(leaning) ?? leaning);
  const tries = triesOf((intent, facts) =>
    taken(memory, message, { ...heard, intent, facts }, undefined, options),
  );
  const doubt = heard.issues.length > 0 ? undefined : doubtOf(memory, message, heard);
  if (doubt) return taken(memory, message, heard, doubt, options);
  const isPlain = heard.issues.length > 0 || isSlipOf(lastFrame(memory, message.from), heard);
  const unsure = isPlain ? undefined : twoReadings(heard, tries.answerOf);
  const asked = taken(memory, message, heard, undefined, options);
  const isWeak = !asked.ready || undemanding.has(heard.intent);
  const inWords = askedPlainly(memory, message, heard, unsure ? 'torn' : isWeak ? 'weak' : 'sure');
  if (inWords) return { ...taken(memory, message, inWords, undefined, options), readAs: heard };
  const beside = askedBeside(heard, message, unsure);
  if (beside) return taken(memory, message, beside, undefined, options);
  const asking = (of: Two) => taken(memory, message, heard, tries.withFirstLines(of), options);
  if (unsure && unsure.echo === undefined) return asking(unsure);
  // What lacks something is asked for by that; nothing would be worked out yet.
  if (unsure && asked.ready) return asking(unsure);
  const becomes = asked.intent.becomes?.(asked.facts);
  const whole = becomes && taken(memory, message, { ...heard, intent: becomes }, undefined, options);
  if (whole?.ready) return whole;
  const first = {
    ...asked,
    worked: tries.workedOf(heard.intent, heard.facts),
    ...(unsure && { isUnsure: true as const }),
  };
  if (first.ready || heard.issues.length > 0) return first;
  // What can't be answered may have been another question, or have told more, so that it can.
  for (const { intent, stated, probability } of readingsOf(heard)) {
    if (probability < leastLikely || undemanding.has(intent)) continue;
    const facts = factsIn(stated, heard);
    if (intent === 'rig' && Object.keys(facts).length === 0) continue;
    const other = taken(memory, message, { ...heard, intent, facts }, undefined, options);
    if (other.ready) return other;
  }
  return first;
}

/** The bot's own answer to a question before, by what that went by. */
function replayed(memory: Memory, message: Message, frame: Frame, options: Options): Reply | undefined {
  const again = {
    ...heardNothing(),
    intent: frame.intent,
    cues: new Set<Cue>(['same-again']),
    certainty: 1,
    options: [],
  };
  const read = taken(memory, { ...message, onto: frame }, again, undefined, options);
  return read.ready && read.intent.reply(read.ready, read.setting);
}

/** A message taken for one question. */
function taken(
  memory: Memory,
  message: Message,
  said: Heard,
  two: Two | undefined,
  options: Options,
): Interpreted {
  const intent = intentNamed(two || !isIntent(said.intent) ? 'unclear' : said.intent);
  const from = personKey(message.from);
  const rig = rigFor(memory, said, message.from, message.kind);
  const named = namedBy(two ? two.options.map(option => intentNamed(option.intent)) : [intent], said);
  // "I have the same battery as Bea": told of one's own rig, it is what hers is.
  const isOfSame = said.possessions?.some(({ isSame }) => isSame) === true;
  const borrowed =
    said.together ?? (intent.isOfGear && !isOfSame ? undefined : borrowedIn(memory, message, said));
  const spoken = borrowed ? { ...said, facts: { ...said.facts, ...borrowed.facts } } : said;
  const leaning = forDays(leanOf(memory, message, spoken, intent), intent);
  // What runs is told by all that was put together: of the question before stays where and when.
  const isOfAll = said.together && leaning.extent === 'all';
  const lean = leanOn(isOfAll ? { ...leaning, extent: 'circumstances' } : leaning, intent, named);
  // "Save it as my rig": what was just spoken of.
  const isSaved = intent.name === 'rig' && said.cues.has('save') && Object.keys(said.facts).length === 0;
  const heard = isSaved && lean.frame ? { ...spoken, facts: gearIn(lean.frame.facts) } : spoken;
  const toldV = heard.conversion ? undefined : (mainsVoltsIn(heard.facts) ?? outletVoltsIn(heard));
  const mainsV = toldV ?? (lean.extent === 'all' ? lean.frame?.mainsV : undefined);
  const plain = heard.conversion ? heard.facts : withoutMainsVolts(heard.facts);
  const where = [lean.frame?.facts, memory.passing, rig?.rig, memory.rigs['']];
  const told = toldApart(resolved(plain, rig?.rig), where);
  const { lent, passing, isDraw } = remembered(memory, message, heard, lean, rig?.rig);
  const isTurn = lean.extent === 'all' && lean.frame !== undefined && lent !== undefined;
  // "If I add a fan": to what one has.
  const isOfRigMeant = rig?.key === ownKey(message.from, message.kind) || heard.owner !== undefined;
  const isAdded = !isTurn && saysMore(heard) && isOfRigMeant;
  const base =
    isAdded && rig
      ? withMore(rig.rig, told)
      : isTurn
        ? turned(present(lean.frame), lent, { ...heard, facts: told })
        : told;
  // Its own use and battery are all the gear there is: a rig or a talk adds where and when, and no more.
  const own = rigFilling(rig, heard, message, { intent, told, isTurn });
  const isOfRig = heard.owner !== undefined || heard.cues.has('rig');
  // One's own gear goes before what somebody else asked about.
  const isOfOther = lean.frame !== undefined && lean.frame.from !== from;
  const isOwnFirst = isOfOther && rig?.key === ownKey(message.from, message.kind);
  const rest = isTurn ? undefined : lent;
  const gear = isOwnFirst ? [own, rest] : [rest, own];
  const sources = sourcesInOrder(passing, isOfRig ? [own, lent] : gear, isOfRig);
  const takes = intent.takes.includes('durationH') ? [...intent.takes, 'until' as const] : intent.takes;
  const known = fill(base, takes, sources, isDraw);
  const here = whereTheyCamp(memory, message, intent, known.facts);
  const filled = here ? fill(base, takes, [...sources, here.facts], isDraw) : known;
  const seasoned = withSeasonTold(filled.facts, heard, intent);
  const all = timed(without(seasoned, ...(borrowed?.unknown ?? [])), memory, message);
  const facts = pick(all, intent.takes);
  const subject = (intent.isArgument ? said.held?.name : undefined) ?? named ?? subjectBefore(intent, lean);
  const parsed = needsOf(intent, subject).safeParse(facts);
  const claims = claimsFor(intent, heard, memory, from, lean.frame);
  const sharers = sharersOf(memory, from);
  const isOthers = rig && ![...sharers, '', ownKey(message.from, message.kind)].includes(rig.key);
  const ofRig = isOthers ? rig.key : undefined;
  const ofIt = rig ? [{ who: ofRig, facts: rig.rig, isRig: memory.rigs[rig.key] !== undefined }] : [];
  const [ofOwn, ofOther] = ofRig === undefined ? [ofIt, []] : [[], ofIt];
  const lentNow = lentIn(
    // What was not decided yet is kept with all its facts, and whose they are.
    two ? all : facts,
    resolved(said.facts, rig?.key === from ? rig.rig : undefined),
    [
      ...(borrowed ? [...borrowed.lent, { facts: borrowed.facts }] : []),
      // What stands in the writer's own rig is theirs, whoever has such a one too.
      ...ofOwn,
      ...(lean.frame && lean.extent !== 'none' ? sourcesOf(lean.frame, from) : []),
      ...rigsOf(memory, lean.frame, from),
      ...ofOther,
      { who: memory.passingFrom === from ? undefined : memory.passingFrom, facts: passing ?? {} },
      ...(here ? [here] : []),
    ],
    sharers,
  );
  const learned = learnedFor(memory, rig?.key, facts, message.at);
  const bank = lentNow.find(one => hasCapacity(factsOf(one.facts)));
  // What was dangerous before still is, where this is the same question.
  const isSame = lean.frame?.intent === intent.name && lean.extent === 'all';
  const kept = isSame ? stillThere(present(lean.frame), heard, facts) : [];
  // Asked for again ("show the working"), it goes by what it went by.
  const again = isSame && isAskedAgain(heard) ? lean.frame : undefined;
  const turning = asked(heard, lean);
  const cues = again ? new Set([...turning.cues, ...((again.cues ?? []) as Cue[])]) : turning.cues;
  // Readings that were not taken are no part of what is kept to answer again.
  const setting = settingOf(
    memory,
    message,
    { ...turning, cues, options: [] },
    {
      recalled: again
        ? new Set(again.recalled as (keyof Stated)[])
        : new Set([
            ...[...filled.recalled].filter(wholeIn(rig?.rig, own)),
            ...(isSame ? stillRecalled(lean.frame, told, heard) : []),
          ]),
      owner: bank?.who ?? ofRig,
      claims,
      mainsV: mainsV ?? memory.settings.mainsV ?? options.mainsV ?? 230,
      units: unitsFor(memory, said, lean.frame),
      contested: intent.isArgument
        ? contestedIn(memory, heard, claims, lean.frame, asked => replayed(memory, message, asked, options))
        : undefined,
      argued: intent.isArgument ? arguedIn(memory, lean.frame) : undefined,
      learned,
      before: isTurn ? beforeOf(intent, present(lean.frame), learned) : undefined,
      subject,
    },
  );
  return {
    intent,
    heard: borrowed ? { ...heard, facts: said.facts } : heard,
    facts: two ? { ...all, ...two.shared } : all,
    ready: parsed.success ? withLearned(parsed.data, learned) : undefined,
    missing: missingOf(parsed),
    setting,
    mainsV,
    frame: lean.frame,
    replay: isSame ? () => replayed(memory, message, present(lean.frame), options) : undefined,
    answerTo: of => replayed(memory, { ...message, from: of.from }, of, options),
    lent: lentNow,
    two,
    // Asked for again, nothing of its facts is new.
    hazards: withDangers(again ? heard.hazards : dangersIn(message.text, heard, intent, base, sources), kept),
  };
}
