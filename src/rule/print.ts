import { present } from '#basics/present.ts';
import { toCheck } from '#quantity/round.ts';
import type { Rule } from './rule.ts';
import type { Step } from './trace.ts';
import { callOf, operatorSigns, type Tree } from './tree.ts';
import { treeOf } from './trees.ts';

const show = (tree: Tree, symbol: (name: string) => string): string => {
  if (typeof tree === 'number') return String(tree);
  if (typeof tree === 'string') return symbol(tree);
  const { fn, args } = callOf(tree);
  const parts = args.map(part => show(part, symbol));
  if (fn === 'group') return `(${parts[0]})`;
  if (fn === 'unaryMinus') return `−${parts[0]}`;
  const sign = operatorSigns[fn];
  return sign ? parts.join(sign) : `${fn}(${parts.join(', ')})`;
};

const treeFor = (rule: Rule<string>): Tree => treeOf(rule.name, rule.formula, Object.keys(rule.symbols));

const withUnit = (number: string, unit: string): string => (unit ? `${number} ${unit}` : number);

/** The formula in the trade's signs: "C × DoD × k". */
export const printFormula = (rule: Rule<string>): string => show(treeFor(rule), name => name);

/** The formula with the numbers put in, to five significant figures: "100 Ah × 0.5 × 1". */
export const printNumbers = (rule: Rule<string>, inputs: Readonly<Record<string, number>>): string =>
  show(treeFor(rule), name => {
    const unit = rule.symbols[name]?.unit ?? '';
    const value = inputs[name];
    if (value === undefined) return name;
    const number = String(Number(value.toPrecision(5)));
    return value < 0 ? `(${withUnit(number, unit)})` : withUnit(number, unit);
  });

/** Sums of more parts than this are told by what goes in, not by their signs. */
const mostParts = 6;

/** Whether a formula is plain arithmetic, as a person does it on paper: + − × ÷ of a few things. */
function isArithmetic(tree: Tree): boolean {
  const leaves = (one: Tree): number =>
    typeof one === 'object' ? callOf(one).args.reduce<number>((sum, part) => sum + leaves(part), 0) : 1;
  const isPlain = (one: Tree): boolean =>
    typeof one !== 'object' ||
    (['add', 'subtract', 'multiply', 'divide', 'group'].includes(callOf(one).fn) &&
      callOf(one).args.every(isPlain));
  return isPlain(tree) && leaves(tree) <= mostParts;
}

/** As many figures as a person checks in a step that is no plain arithmetic. */
const mostTold = 3;

/** Those figures: as the rule has them, else the first with a unit. */
function toldOf({ symbols, tells }: Rule<string>): readonly string[] {
  if (tells) return tells.slice(0, mostTold);
  const names = Object.keys(symbols);
  const measured = names.filter(name => symbols[name]?.unit !== '');
  return (measured.length > 0 ? measured : names).slice(0, mostTold);
}

/** What a symbol means, short: what stands before a colon or a semicolon. */
const meaningOf = (says: string): string => present(says.split(/[:;]/, 1)[0]);

/**
 * A step in words: what the rule says, and the numbers with their units, each with what it means: "How long it lasts is
 * what you can use divided by what you draw: 50 Ah (usable capacity) ÷ 1.2 A (average current)". Where the formula is
 * more than plain arithmetic, the two or three figures that a person would check are named instead.
 */
function printWords(rule: Rule<string>, inputs: Readonly<Record<string, number>>): string {
  const says = rule.says.replace(/\.$/, '');
  const tree = treeFor(rule);
  const amountOf = (name: string): string =>
    withUnit(String(toCheck(inputs[name] ?? 0)), rule.symbols[name]?.unit ?? '');
  const meaning = (name: string): string => meaningOf(rule.symbols[name]?.says ?? name);
  if (isArithmetic(tree)) return `${says}: ${show(tree, name => `${amountOf(name)} (${meaning(name)})`)}`;
  // In a list a comma in a meaning would read as its end: "latitude in radians, south negative".
  const parts = toldOf(rule).map(name => `${meaning(name).replace(/, .*/, '')} ${amountOf(name)}`);
  return `${says} (${parts.join(', ')})`;
}

/** A table read or a sum made, in words: "P = 800 W + 900 W" of an acLoad is "Ac load: 800 W + 900 W". */
function lookedUp({ name, says }: { readonly name: string; readonly says: string }): string {
  const called = name.replace(/([A-Z])/g, ' $1').toLowerCase();
  const words = says.replace(/^[A-Za-z]\w* = /, `${called}: `);
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** One line of working as data: symbols, then numbers; the result apart. */
export interface PrintedStep {
  readonly name: string;
  /** The same for people, without the result: words, numbers and units, and what each number means. */
  readonly words: string;
  readonly formula: string;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
}

/** Prints a step of a trace. */
export function printStep(step: Step): PrintedStep {
  if (step.kind === 'lookup')
    return {
      name: step.name,
      words: lookedUp(step),
      formula: step.says,
      value: step.value,
      unit: step.unit,
      source: step.source,
    };
  const { rule, inputs, value } = step;
  const { symbol, unit } = rule.gives;
  const formula = `${symbol} = ${printFormula(rule)} = ${printNumbers(rule, inputs)}`;
  return { name: rule.name, words: printWords(rule, inputs), formula, value, unit, source: rule.source };
}
