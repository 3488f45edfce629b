import { stripTypeScriptTypes } from 'node:module';
import tokens from 'js-tokens';
import { present } from '#basics/present.ts';

/**
 * Where a number stands: `table`, a value that is declared (a table's cell, an assumption, a default); `formula`, a
 * number in the text of a rule; `whole`, a rule's result; `arithmetic`, any other number in the code of a function. Two
 * are no facts of the world: `text`, a number of the words about a figure (their rounding), and `grain`, one declared in
 * a file of that name (how near a search comes, what of a sum is binary dust).
 */
export type Kind = 'table' | 'formula' | 'whole' | 'arithmetic' | 'text' | 'grain';

/** A constant of a file, as the place in its text (types blanked out) that a change replaces. */
export interface Constant {
  readonly path: string;
  readonly line: number;
  readonly kind: Kind;
  /** What is found there: the number, or the name of the rule of which it is the result. */
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** The text in its place with the number, or the result, multiplied. */
  readonly times: (factor: number) => string;
}

/** A number that is left as it is, and why. */
export interface Untried {
  readonly path: string;
  readonly line: number;
  readonly text: string;
  readonly why: 'nothing' | 'place in a list' | 'count of a list' | 'text';
}

interface Token {
  readonly type: string;
  readonly value: string;
  readonly start: number;
}

/** The code without its types, each character at its place. */
export const plainCode = (typescript: string): string => stripTypeScriptTypes(typescript, { mode: 'strip' });

/** The tokens that mean something, with their places. */
function read(code: string): Token[] {
  let start = 0;
  const all: Token[] = [];
  for (const { type, value } of tokens(code)) {
    if (!/^(WhiteSpace|LineTerminatorSequence|SingleLineComment|MultiLineComment)$/.test(type))
      all.push({ type, value, start });
    start += value.length;
  }
  return all;
}

const rounded = (n: number): string => String(Number(n.toPrecision(12)));
const scaled = (text: string, factor: number): string => rounded(Number(text.replaceAll('_', '')) * factor);

/** What opens the brackets round each token: "[" of a list, "[]" of an index, "{" or "(". */
function surroundings(all: readonly Token[]): string[] {
  const open: string[] = [];
  return all.map(({ value, type }, i) => {
    if (type === 'Punctuator' && /^[\])}]$/.test(value)) open.pop();
    const around = open.at(-1) ?? '';
    if (type === 'Punctuator' && /^[[({]$/.test(value)) {
      const before = all[i - 1];
      const isIndex =
        before !== undefined && (before.type === 'IdentifierName' || /^[\])]$/.test(before.value));
      open.push(value === '[' && isIndex && before.value !== 'return' ? '[]' : value);
    }
    return around;
  });
}

/** For each token, whether its statement has come to a function by then: what stands before is a table. */
function inFunctions(all: readonly Token[], code: string): boolean[] {
  let isIn = false;
  return all.map(({ value, type, start }) => {
    if (type === 'IdentifierName' && (start === 0 || code[start - 1] === '\n')) isIn = false;
    if (value === '=>' || value === 'function') isIn = true;
    return isIn;
  });
}

/** For each token, whether it stands between the words of a text. */
function inTexts(all: readonly Token[]): boolean[] {
  let depth = 0;
  return all.map(({ type }) => {
    if (type === 'TemplateHead') depth++;
    if (type === 'TemplateTail') depth--;
    return depth > 0;
  });
}

/** Whether the number is the whole of a value: of a property, a list's member, a name or a default. */
function isDeclared(before: Token | undefined, after: Token | undefined, around: string): boolean {
  const opens = /^(:|=|\?\?|\?|\[)$/.test(before?.value ?? '') || (before?.value === ',' && around === '[');
  return opens && /^(,|\}|\]|;|\)|:|as)?$/.test(after?.value ?? '');
}

/** The constants of a file's code, in the order of its text, and the numbers that are none. */
export function constantsOf(path: string, code: string): { tried: Constant[]; untried: Untried[] } {
  const all = read(code);
  const around = surroundings(all);
  const isInFunction = inFunctions(all, code);
  const isInText = inTexts(all);
  const isGrain = /(^|\/)grain\.ts$/.test(path);
  const tried: Constant[] = [];
  const untried: Untried[] = [];
  const lineOf = (at: number): number => code.slice(0, at).split('\n').length;
  for (const [i, { type, value, start }] of all.entries()) {
    const line = lineOf(start);
    const end = start + value.length;
    if (type === 'NumericLiteral') {
      const sign = all[i - 1]?.value === '-' ? 1 : 0;
      const before = all[i - 1 - sign];
      const isIndex =
        (around[i] === '[]' && before?.value === '[' && all[i + 1]?.value === ']') ||
        (before?.value === '(' && all[i - sign - 2]?.value === 'at' && all[i + 1]?.value === ')');
      const isLength = before?.value === ':' && all[i - 2]?.value === 'length';
      const why =
        Number(value) === 0 ? 'nothing' : isIndex ? 'place in a list' : isLength && 'count of a list';
      if (why) untried.push({ path, line, text: value, why });
      else {
        const isTable = !isInFunction[i] || isDeclared(before, all[i + 1], present(around[i]));
        const kind = isGrain ? 'grain' : isInText[i] ? 'text' : isTable ? 'table' : 'arithmetic';
        tried.push({ path, line, kind, text: value, start, end, times: f => scaled(value, f) });
      }
    }
    if (type === 'StringLiteral' && all[i - 1]?.value === ':' && all[i - 2]?.value === 'formula')
      tried.push(...ofFormula(path, line, value, start));
    else if (type === 'NoSubstitutionTemplate' && value.includes('\n'))
      for (const [text] of value.matchAll(/-?\d+(\.\d+)?/g)) untried.push({ path, line, text, why: 'text' });
  }
  return { tried, untried };
}

/** The numbers in a formula's text and its result as a whole. */
function ofFormula(path: string, line: number, quoted: string, start: number): Constant[] {
  const quote = present(quoted[0]);
  const formula = quoted.slice(1, -1);
  const end = start + quoted.length;
  const numbers = read(formula).filter(({ type, value }) => type === 'NumericLiteral' && Number(value) !== 0);
  return [
    {
      path,
      line,
      kind: 'whole',
      text: formula,
      start,
      end,
      times: f => `${quote}${f} * (${formula})${quote}`,
    },
    ...numbers.map(
      (number): Constant => ({
        path,
        line,
        kind: 'formula',
        text: `${number.value} in ${formula}`,
        start: start + 1 + number.start,
        end: start + 1 + number.start + number.value.length,
        times: f => scaled(number.value, f),
      }),
    ),
  ];
}

/** The code with one constant multiplied. */
export const changed = (code: string, at: Constant, factor: number): string =>
  code.slice(0, at.start) + at.times(factor) + code.slice(at.end);
