import type { Stated } from './decide/assemble.ts';
import type { TalkContext } from './decide/frame.ts';
import { hashText } from './decide/hash.ts';
import type { Mention } from './recognise/mention.ts';
import { recognise } from './recognise/recognise.ts';
import { denials, sayingVerbs } from './words/en/people.ts';

/** What the lines before leave for the reading of the next, and whose the last of them was. Training and the running bot build it alike. */
export interface Talk extends TalkContext {
  /** Whose the last question was. */
  readonly lastFrom?: string;
  /** Who wrote the last line, whatever it was. */
  readonly lastWriter?: string;
  /** What each of the last people asked, the latest last. */
  readonly asks?: readonly (readonly [from: string, intent: string])[];
  /** The last two lines of people, and the bot's own after them, the latest last: the hashes of their words. */
  readonly lines?: readonly (readonly [from: string, words: readonly number[]])[];
}

/** Reads one line of a talk: the question and its facts. */
export type LineReader = (
  text: string,
  context: TalkContext,
) => { readonly intent: string; readonly stated: Stated };

/** Lines that leave the question before where it is. */
const idle: ReadonlySet<string> = new Set(['none', 'help', 'privacy', 'forget']);

/**
 * What a person's line leaves, of which it says much or nothing.
 * @param concepts what it means as dangers go
 */
export function afterLine(
  before: Talk,
  intent: string,
  stated: Stated,
  from: string,
  mentions: readonly Mention[],
  concepts: readonly string[] = [],
): Talk {
  const keys = keysOf(stated);
  const talk = {
    ...before,
    said: linesAfter(before.said, signsOf(mentions)),
    meant: linesAfter(before.meant, concepts.slice(0, mostConcepts)),
    lines: [...peopleOf(before.lines).slice(-1), [from, wordsOf(mentions)] as const],
    lastWriter: from,
  };
  if (idle.has(intent)) return talk;
  const hasRig = talk.hasRig || intent === 'rig';
  if (intent === 'unclear' && keys.length === 0) return talk;
  const loads = (stated.loads ?? []).flatMap(load => (typeof load.name === 'string' ? [load.name] : []));
  const things = loads.length > 0 ? loads : talk.things;
  const { said, meant, lines } = talk;
  const asks = [...(talk.asks ?? []).filter(([who]) => who !== from), [from, intent] as const];
  return {
    lastIntent: intent,
    lastKeys: keys,
    lastValues: valuesOf(stated),
    hasRig,
    asked: [],
    said,
    meant,
    lines,
    ...(things && { things }),
    lastFrom: from,
    lastWriter: from,
    asks: asks.slice(-mostAsks),
  };
}

/** The facts that are told, and of gear which of its figures: "loads", "loads.powerW". */
export const keysOf = (stated: Stated): string[] => [
  ...new Set(
    Object.entries(stated).flatMap(([key, value]) => [key, ...rowsOf(value).flatMap(row => inRow(key, row))]),
  ),
];

/** The figures told, each with what it is of: what a turn most often puts another value for. */
export const valuesOf = (stated: Stated): (readonly [string, number])[] =>
  Object.entries(stated).flatMap(([key, value]) =>
    typeof value === 'number'
      ? [[key, value] as const]
      : rowsOf(value).flatMap(row =>
          Object.entries(row).flatMap(([name, v]) =>
            typeof v === 'number' ? [[`${key}.${name}`, v] as const] : [],
          ),
        ),
  );

type Row = Readonly<Record<string, unknown>>;
const isRow = (value: unknown): value is Row =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
const rowsOf = (value: unknown): readonly Row[] =>
  Array.isArray(value) ? value.filter(isRow) : isRow(value) ? [value] : [];
const inRow = (key: string, row: Row): string[] =>
  Object.keys(row).flatMap(name => (name === 'name' || name === 'who' ? [] : [`${key}.${name}`]));

const mostSigns = 10;
const mostConcepts = 20;
const mostAsks = 6;

/** What a line looks like, in a few signs: how long it is, which kinds of figures it tells, whether it asks, claims or denies. */
function signsOf(mentions: readonly Mention[]): string[] {
  const n = mentions.length;
  const signs = new Set([n < 4 ? 'short' : n < 12 ? 'line' : 'long']);
  for (const m of mentions) {
    if (m.kind === 'amount') signs.add(m.cls);
    else if (m.kind === 'number' || m.kind === 'person' || m.text === '?')
      signs.add(m.kind === 'sign' ? '?' : m.kind);
    else if (sayingVerbs.has(m.text)) signs.add('says');
    else if (denials.has(m.text)) signs.add('no');
  }
  return [...signs].slice(0, mostSigns);
}

/** Signs or meanings of the last two lines: 1 before those of the last, 2 before those of the one before it. */
const linesAfter = (said: readonly string[] = [], signs: readonly string[]): string[] => [
  ...signs.map(sign => `1${sign}`),
  ...said.filter(sign => sign.startsWith('1')).map(sign => `2${sign.slice(1)}`),
];

const mostWords = 20;
/** The bot among those who write. */
const bot = 'bot';
const peopleOf = (lines: Talk['lines'] = []) => lines.filter(([from]) => from !== bot);

/** The hashes of what a line says, each once. */
const wordsOf = (mentions: readonly Mention[]): number[] =>
  [...new Set(mentions.flatMap(m => (m.kind === 'sign' ? [] : [hashText(m.cls)])))].slice(0, mostWords);

/** What the bot's own line leaves: what it asked for, as the kinds it names. */
export function heardFromBot(text: string, talk: Talk, read: LineReader): Partial<Talk> {
  const { mentions } = recognise(text);
  const lines = [...peopleOf(talk.lines), [bot, wordsOf(mentions)] as const];
  const isQuestion = text.includes('?');
  const asked = isQuestion ? ['?', ...kindsOf(mentions)] : [];
  const named = isQuestion
    ? mentions.filter(m => m.kind === 'thing' && !asking.has(m.text)).map(m => m.text)
    : [];
  const things =
    named.length > 0
      ? [...(talk.things ?? []).filter(name => !named.includes(name)), ...named.slice(0, 2).reverse()]
      : talk.things;
  return {
    asked,
    said: linesAfter(talk.said, ['bot']),
    lines,
    ...(things && { things }),
    ...(talk.lastIntent === undefined && saidByBot(read(text, {}), isQuestion, things)),
  };
}

/** What the bot says with no question before it stands for the question that it answers, with its facts. */
function saidByBot(
  { intent, stated }: ReturnType<LineReader>,
  isQuestion: boolean,
  things: readonly string[] | undefined,
): Partial<Talk> {
  if (isQuestion) return { lastIntent: intent };
  const named = (stated.loads ?? []).flatMap(load => (typeof load.name === 'string' ? [load.name] : []));
  return {
    lastIntent: intent,
    lastKeys: keysOf(stated),
    lastValues: valuesOf(stated),
    ...(!things && named.length > 0 && { things: named }),
  };
}

/** The talk as somebody's next line is read in it. */
export function contextFor({ lastFrom, lastWriter, asks, lines, ...rest }: Talk, from: string): TalkContext {
  const ownIntent = asks?.find(([who]) => who === from)?.[1];
  const writers = new Set([...(asks ?? []), ...peopleOf(lines)].map(([who]) => who.toLowerCase()));
  writers.delete(from.toLowerCase());
  return {
    ...rest,
    ...(writers.size > 0 && { others: [...writers] }),
    ...(lines && { heard: heardIn(lines, from) }),
    isOwn: lastFrom === from,
    wroteLast: lastWriter === from,
    ...(ownIntent !== undefined && { ownIntent }),
  };
}

/** What was said in the lines before, by whom and how long ago. */
function heardIn(lines: Talk['lines'] = [], from: string): NonNullable<TalkContext['heard']> {
  const people = peopleOf(lines).length;
  let ago = people;
  return lines.map(([who, words]) => {
    if (who === bot) return { whose: 'bot', ago: 0, words };
    ago--;
    return { whose: who === from ? 'own' : 'other', ago, words };
  });
}

/** The kinds of gear and amounts named. */
export const kindsOf = (mentions: readonly Mention[]): string[] => [
  ...new Set(
    mentions.flatMap(m => {
      const isPlain = m.kind === 'word' || m.kind === 'sign' || m.kind === 'number';
      if (isPlain) return asking.has(m.text) ? [m.text] : [];
      return [m.kind === 'amount' ? m.cls : m.kind];
    }),
  ),
];

/** Plain words by which the bot asks for something. */
const asking: ReadonlySet<string> = new Set(
  'amps watts hours days volts size big long quiz many metres draw ah which where month what lesson a b average type chemistry day amp hour full percent'.split(
    ' ',
  ),
);
