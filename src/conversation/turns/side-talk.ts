import { intentNamed } from '#intents';
import type { Heard } from '../hear.ts';
import { isIntent, undemanding } from '../questions.ts';
import { leastSure } from '../unsure/sureness.ts';
import { factsIn, readingsOf } from '../unsure/two-readings.ts';
import { isAsking } from './asking.ts';
import { isPutAsQuestion, opensTurn } from './lean.ts';

// Whether an unsure line is talk among people or asks something after all.

/** What shows an answer that stands already in another way. */
const againCues = ['ask-working', 'simpler'] as const;

/** Whether it asks something in which gear is named: "how many panels for an air con". */
const asksOfGear = (heard: Heard): boolean =>
  isAsking(heard) && heard.recognised.mentions.some(({ kind }) => gearKinds.has(kind));
const gearKinds: ReadonlySet<string> = new Set(
  'thing battery chemistry station solar controller charger inverter cable fuse alternator monitor bms'.split(
    ' ',
  ),
);

/** Readings in which nothing is asked. */
const isQuiet = (intent: string | undefined): boolean => intent === 'none' || intent === 'unclear';

/** How likely no question is asked at all, whatever else is told. */
const quietShare = ({ options }: Heard): number =>
  options.reduce((sum, { intent, probability }) => (isQuiet(intent) ? sum + probability : sum), 0);

/** Less likely than this, a line that words alone don't show to ask is talk all the same. */
const leastQuiet = 0.25;
/** Likelier than this, no question is asked. */
const mostQuiet = 0.5;

/** As likely as this, what words show to be a trouble is told to hear what it is. */
const leastTrouble = 0.3;

/** Whether a trouble is told by its signs, though nothing is asked: "it wont charge off the solar today". */
const tellsTrouble = ({ options, recognised }: Heard): boolean =>
  options.some(({ intent, probability }) => intent === 'fault' && probability >= leastTrouble) &&
  intentNamed('fault').subjectIn?.(recognised.words, recognised.text) !== undefined;

/** What is read as no question, though all questions together are likelier: the likeliest of them, where gear is asked of. */
export function likelierAsked(heard: Heard): Heard | undefined {
  const { intent, certainty } = heard;
  if (isIntent(intent) && !isQuiet(intent)) return undefined;
  if (certainty >= leastSure || heard.hazards.length > 0) return undefined;
  const isTrouble = tellsTrouble(heard);
  if (!isTrouble && quietShare(heard) >= mostQuiet) return undefined;
  if (!isTrouble && !asksOfGear(heard) && !heard.cues.has('question-mark')) return undefined;
  const first = readingsOf(heard).find(({ intent: asked }) =>
    isTrouble ? asked === 'fault' : !undemanding.has(asked),
  );
  return first && { ...heard, intent: first.intent, facts: factsIn(first.stated, heard) };
}

/** Surer than this, a line is a question though it tells and asks nothing. */
const leastIdle = 0.85;

/** An unsure line that tells nothing, asks nothing and turns nothing is talk among people ("who's cooking"). */
export function sideTalk(heard: Heard): Heard | undefined {
  const { facts, removed, corrects, claims, owner, term, choice, cues, intent } = heard;
  const isTold =
    Object.keys(facts).length > 0 ||
    removed.length > 0 ||
    claims.length > 0 ||
    [corrects, owner, term, choice].some(one => one !== undefined);
  // What was taken by its words alone has no readings left.
  const least = heard.options.length > 0 ? leastIdle : leastSure;
  if (isTold || heard.certainty >= least || isPutAsQuestion(heard) || opensTurn(heard)) return undefined;
  if (asksOfGear(heard) || (heard.words > 1 && quietShare(heard) < leastQuiet)) return undefined;
  const isTalk = !isIntent(intent) || undemanding.has(intent);
  if (isTalk || againCues.some(cue => cues.has(cue))) return undefined;
  return { ...heard, intent: 'none', options: [] };
}
