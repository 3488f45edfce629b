import type { ParsedMessage } from '#language/reading.ts';
import { spotted } from '../../spotting.ts';
import { batteryQuestions } from './batteries-table.ts';
import { buyingQuestions } from './buying-table.ts';
import { careQuestions } from './care-table.ts';
import { chargingQuestions } from './charging-table.ts';
import { fittingQuestions } from './fitting-table.ts';
import { gearQuestions } from './gear-table.ts';
import { jobQuestions } from './jobs-table.ts';
import { knowingQuestions } from './knowing-table.ts';
import type { PlainQuestion } from './plain-question.ts';
import { readingQuestions } from './readings-table.ts';
import { solarQuestions } from './solar-table.ts';
import { statementQuestions } from './statements-table.ts';
import { upkeepQuestions } from './upkeep-table.ts';
import { useQuestions } from './use-table.ts';
import { vanQuestions } from './van-table.ts';
import { wordQuestions } from './words-table.ts';

/** Special ones before general ones. Common practice throughout; volts as in the tables of the engine. */
export const plainQuestions: readonly PlainQuestion[] = [
  ...statementQuestions,
  ...vanQuestions,
  ...careQuestions,
  ...fittingQuestions,
  ...knowingQuestions,
  ...useQuestions,
  ...jobQuestions,
  ...batteryQuestions,
  ...readingQuestions,
  ...solarQuestions,
  ...chargingQuestions,
  ...upkeepQuestions,
  ...gearQuestions,
  ...buyingQuestions,
  ...wordQuestions,
];

/** Volts that go without saying ("12V fridge"), and counts ("2 phones"): no figures of a question. */
const nominalV: ReadonlySet<number> = new Set([12, 24, 240, 230]);
const mostCounted = 10;
/** With figures in it, a longer message mostly tells a whole rig: words that stand far apart ask nothing together. */
const mostWords = 40;

const hasFigures = ({ recognised: { mentions } }: Pick<ParsedMessage, 'recognised'>): boolean =>
  mentions.some(
    ({ kind, dimension, value }) =>
      (kind === 'number' && value > mostCounted && !nominalV.has(value)) ||
      (kind === 'amount' && dimension !== 'time' && !(dimension === 'voltage' && nominalV.has(value))),
  );

type Spoken = Pick<ParsedMessage, 'recognised'>;

/** Words that point at what the question before was about. */
const pointing: ReadonlySet<string> = new Set('it that this them one'.split(' '));
const mostPointing = 9;

/** The words of a short message that points back ("where do I put it?") with what that was about. */
function wordsWith(
  { recognised: { words } }: Spoken,
  about: string | undefined,
): readonly string[] | undefined {
  const isPointing = words.length <= mostPointing && words.some(word => pointing.has(word));
  return about !== undefined && isPointing ? [...words, about] : undefined;
}

const asksIn = (
  words: readonly string[] | undefined,
  { recognised: { mentions } }: Spoken,
): PlainQuestion | undefined =>
  words &&
  spotted(
    words,
    plainQuestions,
    ({ spots }) => spots,
    ({ when }) => when?.(mentions) ?? true,
  );

/**
 * The plain question that a message asks, if any: of one that tells figures, only where they change nothing.
 * @param about - what the question before was about, in one word: "fuse"
 */
export function plainQuestionIn(parsed: Spoken, about?: string): PlainQuestion | undefined {
  const asked = asksIn(parsed.recognised.words, parsed) ?? asksIn(wordsWith(parsed, about), parsed);
  if (!asked || !hasFigures(parsed)) return asked;
  return asked.hasAnyFigures && parsed.recognised.words.length <= mostWords ? asked : undefined;
}
