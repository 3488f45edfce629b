import type { Figure } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { span, timeSpan, withinSentence } from '#answer/say.ts';
import { english } from '#answer/speech.ts';
import type { Facts, Stated } from '#rig/rig.ts';
import { isMedicalNamed } from './facts.ts';
import { intentNamed } from './index.ts';
import { type Intent, needsOf, type RequestContext } from './intent.ts';
import { noGuess, noGuessOfHealth, type Usual, untoldTable } from './untold-table.ts';

/** What somebody was asked for and doesn't know: that it isn't known, where it is found, or that it is the usual. */
export type Unknown = 'unknown' | 'where' | 'usual' | 'still';

/** Whether two needs are of the same thing. */
export const isSameUnknown = (one: string, other: string): boolean =>
  one === other || (untoldTable[one] !== undefined && untoldTable[one] === untoldTable[other]);

/** A question that lacks something which its asker doesn't know. */
export interface Lacking {
  readonly intent: Intent;
  readonly facts: Stated;
  /** Keys of the needs that are not met. */
  readonly keys: readonly string[];
  readonly setting: RequestContext;
  /** Somebody's health hangs on it. */
  readonly isMedical: boolean;
}

const asTaken = ({ takes }: Intent, facts: Stated): Stated =>
  Object.fromEntries(Object.entries(facts).filter(([key]) => takes.includes(key as keyof Facts))) as Stated;

/** The answer with such gear: of the question, or of the one that it becomes with it. */
function replyWith({ intent, facts, setting }: Lacking, usual: Stated): Reply | undefined {
  const all = { ...facts, ...usual };
  const becomes = intent.becomes?.(all);
  // What is usual is none of the two that are weighed.
  const recalled = new Set([...setting.recalled, ...(Object.keys(usual) as (keyof Facts)[])]);
  for (const one of [...(becomes ? [intentNamed(becomes)] : []), intent]) {
    const ready = needsOf(one, setting.subject).safeParse(asTaken(one, all)).data;
    if (ready) return one.reply(ready, one.name === 'compare' ? { ...setting, recalled } : setting);
  }
  return undefined;
}

type Range = Extract<Figure, { readonly unit: string }>;
const isRange = (figure: Figure | undefined): figure is Range => figure !== undefined && 'low' in figure;

/** A figure's range as a first line holds it: "(19–67 hours)". */
const inBrackets = (one: Range): string =>
  `(${one.unit === 'h' ? timeSpan(one) : span(one.low, one.high, one.unit)})`;

/** The figures of an answer, each as wide as it is with smaller and bigger gear too. */
function widened({ figures = {} }: Reply, others: readonly Reply[]): Readonly<Record<string, Figure>> {
  const wide = (name: string, figure: Figure): Figure => {
    const all = [figure, ...others.map(other => other.figures?.[name])].filter(isRange);
    if (!isRange(figure)) return figure;
    return {
      ...figure,
      low: Math.min(...all.map(({ low }) => low)),
      high: Math.max(...all.map(({ high }) => high)),
    };
  };
  return Object.fromEntries(Object.entries(figures).map(([name, figure]) => [name, wide(name, figure)]));
}

/** A first line with the ranges of its figures as wide as they are by now. */
function withRanges(
  headline: string,
  before: Reply['figures'],
  now: Readonly<Record<string, Figure>>,
): string {
  let text = headline;
  for (const [name, figure] of Object.entries(before ?? {})) {
    const wide = now[name];
    if (isRange(figure) && isRange(wide)) text = text.replace(inBrackets(figure), () => inBrackets(wide));
  }
  return text;
}

/** What an answer begins with where gear decides that nobody knows. */
const decided = /^(?:Yes|No|Probably not|Probably|Hardly)[,:] /;
const withinLine = (text: string): string =>
  /^[A-Z](?:[a-z]|\s)/.test(text) && !text.startsWith('I ') ? withinSentence(text) : text;

const isQuestion = (line: string): boolean => line.endsWith('?');

/** The answer with usual gear in the place of what isn't known, said as such; undefined where no guess is sound. */
function usually(lacking: Lacking): Reply | undefined {
  const { intent, facts, keys, setting, isMedical } = lacking;
  if (isMedical || facts.loads?.some(({ name }) => isMedicalNamed(name))) return undefined;
  const asking = { intent: intent.name, cues: setting.parsed.cues };
  const found = keys.map(key => untoldTable[key]?.usual?.(facts, asking));
  const usual = found.filter((one): one is Usual => one !== undefined);
  if (usual.length === 0 || usual.length < keys.length) return undefined;
  const gearOf = (size: 'facts' | 'small' | 'big'): Stated =>
    Object.assign({}, ...usual.map(one => one[size] ?? one.facts));
  const mid = replyWith(lacking, gearOf('facts'));
  if (!mid) return undefined;
  const hasSizes = usual.some(({ small, big }) => small ?? big);
  const others = hasSizes
    ? [replyWith(lacking, gearOf('small')), replyWith(lacking, gearOf('big'))].filter(
        one => one !== undefined,
      )
    : [];
  const figures = widened(mid, others);
  const isOpen = others.some(({ verdict }) => (verdict ?? null) !== (mid.verdict ?? null));
  const headline = withRanges(mid.headline, mid.figures, figures);
  const answer = isOpen ? headline.replace(decided, 'Perhaps: ') : headline;
  const only = usual.length === 1 ? usual[0] : undefined;
  const listed = usual.map(({ gear }) => gear).join(' with ');
  const { chart: _of, remember: _kept, ...rest } = mid;
  return {
    ...rest,
    headline: english.say('with-usual', 'With {gear}, {answer}', {
      gear: only ? only.gear.replace(/^a /, 'a typical ') : english.say('typical-gear', 'typical gear'),
      answer: withinLine(answer),
    }),
    lines: [
      ...(only
        ? []
        : [english.say('usual-is', 'Typical is {gear}: what most camps have.', { gear: listed })]),
      ...(mid.lines ?? []).filter(line => !isQuestion(line)).slice(0, 1),
    ],
    figures,
    verdict: isOpen ? 'tight' : (mid.verdict ?? null),
    next: [],
  };
}

/** What the question answers by itself without what is missing, its own question back left out. */
function guessed({ intent, facts, setting }: Lacking): Reply | undefined {
  const guess = intent.guess?.(asTaken(intent, facts), setting);
  return guess && { ...guess, lines: guess.lines?.filter(line => !isQuestion(line)).slice(0, 2), next: [] };
}

/** The first line where nothing usual stands for what is missing. */
const withoutGuess = ({ intent, isMedical }: Lacking): string =>
  isMedical
    ? english.say('no-guess-health', noGuessOfHealth)
    : english.say('no-guess', noGuess[intent.name] ?? 'That hangs on your own figures.');

/**
 * The answer to who doesn't know what the bot asked for: the sum with typical gear, said as such, and where the figures
 * are to be found. No question is put a second time.
 */
export function answerUnknown(lacking: Lacking, how: Unknown): Reply | undefined {
  const where = [...new Set(lacking.keys.flatMap(key => untoldTable[key]?.where ?? []))];
  const sum = usually(lacking) ?? (lacking.isMedical ? undefined : guessed(lacking));
  if (how === 'still') return sum;
  if (where.length === 0) return undefined;
  const [first = '', ...others] = where;
  if (!sum) {
    const [headline, ...lines] =
      how === 'where' ? [first, ...others, withoutGuess(lacking)] : [withoutGuess(lacking), ...where];
    return { headline, lines, verdict: null };
  }
  if (how !== 'where') return { ...sum, lines: [...(sum.lines ?? []), ...where] };
  return { ...sum, headline: first, lines: [...others, sum.headline, ...(sum.lines ?? []).slice(0, 1)] };
}
