import { callOf, functions, type Tree } from './tree.ts';

/** A formula as a function of plain numbers. */
export type Formula = (inputs: Readonly<Record<string, number>>) => number;

/** Operators by their mathjs name, as JavaScript has them; a comparison gives 1 or 0. */
const operators: Readonly<Record<string, (a: string, b: string) => string>> = {
  add: (a, b) => `${a} + ${b}`,
  subtract: (a, b) => `${a} - ${b}`,
  multiply: (a, b) => `${a} * ${b}`,
  divide: (a, b) => `${a} / ${b}`,
  pow: (a, b) => `${a} ** ${b}`,
  smaller: (a, b) => `${a} < ${b} ? 1 : 0`,
  smallerEq: (a, b) => `${a} <= ${b} ? 1 : 0`,
  larger: (a, b) => `${a} > ${b} ? 1 : 0`,
  largerEq: (a, b) => `${a} >= ${b} ? 1 : 0`,
};

/** A symbol is put into code only as such a name, so that a tree can hold no code of its own. */
const name = /^[A-Za-z_]\w*$/;

/**
 * A tree as JavaScript. Every part stands in brackets, so that no order of operators is left to chance.
 * @throws Error where the tree holds what no formula may
 */
function codeOf(tree: Tree, symbols: readonly string[]): string {
  if (typeof tree === 'number') return `(${tree})`;
  if (typeof tree === 'string') {
    if (symbols.includes(tree) && name.test(tree)) return `x.${tree}`;
    if (tree === 'pi') return `(${Math.PI})`;
    throw new Error(`${tree} is no symbol of the formula`);
  }
  const { fn, args } = callOf(tree);
  const parts = args.map(part => codeOf(part, symbols));
  if (fn === 'group') return parts[0]!;
  if (fn === 'unaryMinus') return `(-${parts[0]})`;
  if (Object.hasOwn(operators, fn)) return `(${operators[fn]!(parts[0]!, parts[1]!)})`;
  if (Object.hasOwn(functions, fn)) return `f.${fn}(${parts.join(', ')})`;
  throw new Error(`${fn} is nothing that a formula may call`);
}

/**
 * Turns a formula's tree into one plain function, which the engine of JavaScript makes as fast as one written by
 * hand. Trees come from our own formulas alone, and only numbers, known names and known functions get into the code.
 */
export function compile(tree: Tree, symbols: readonly string[]): Formula {
  return new Function('f', `return x => ${codeOf(tree, symbols)}`)(functions) as Formula;
}
