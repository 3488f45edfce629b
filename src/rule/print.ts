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

/** One line of working as data: symbols, then numbers; the result apart. */
export interface PrintedStep {
  readonly name: string;
  readonly formula: string;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
}

/** Prints a step of a trace. */
export function printStep(step: Step): PrintedStep {
  if (step.kind === 'lookup')
    return { name: step.name, formula: step.says, value: step.value, unit: step.unit, source: step.source };
  const { rule, inputs, value } = step;
  const { symbol, unit } = rule.gives;
  const formula = `${symbol} = ${printFormula(rule)} = ${printNumbers(rule, inputs)}`;
  return { name: rule.name, formula, value, unit, source: rule.source };
}
