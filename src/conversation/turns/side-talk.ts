import type { Heard } from '../hear.ts';
import { isIntent, undemanding } from '../questions.ts';
import { leastSure } from '../unsure/sureness.ts';
import { isAsking } from './asking.ts';
import { isPutAsQuestion, opensTurn } from './lean.ts';

// Whether an unsure line is talk among people.

/** What shows an answer that stands already in another way. */
const againCues = ['ask-working', 'simpler'] as const;

/** Whether it asks something in which gear is named: "how many panels for an air con". */
const asksOfGear = (heard: Heard): boolean =>
  isAsking(heard) && heard.recognised.mentions.some(({ kind }) => gearKinds.has(kind));
/** Kinds of words that name gear. */
export const gearKinds: ReadonlySet<string> = new Set(
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
