import { callOf, functions, type Tree } from './tree.ts';

type Inputs = Readonly<Record<string, number>>;
/** A formula as a function of plain numbers. */
export type Closure = (inputs: Inputs) => number;
/** The same with its inputs one after the other, in the order in which the rule declares its symbols. */
export type Direct = (...values: number[]) => number;

const operators: Readonly<Record<string, string>> = {
  add: '+',
  subtract: '-',
  multiply: '*',
  divide: '/',
  pow: '**',
};
const comparisons: Readonly<Record<string, string>> = {
  smaller: '<',
  smallerEq: '<=',
  larger: '>',
  largerEq: '>=',
};

/** The names of functions and symbols stand in code: nothing but a name may get there. */
const isName = (text: string): boolean => /^[A-Za-z_][A-Za-z0-9_]*$/.test(text);

/** A tree as an expression of JavaScript. @throws Error where it holds anything but numbers, symbols and known calls */
function expressionOf(tree: Tree, symbolAt: (name: string) => string): string {
  if (typeof tree === 'number') return `(${tree})`;
  if (typeof tree === 'string') return symbolAt(tree);
  const { fn, args } = callOf(tree);
  const parts = args.map(part => expressionOf(part, symbolAt));
  const [a, b] = parts;
  if (fn === 'group') return `(${a})`;
  if (fn === 'unaryMinus') return `(-${a})`;
  if (Object.hasOwn(operators, fn)) return `(${a} ${operators[fn]} ${b})`;
  if (Object.hasOwn(comparisons, fn)) return `(${a} ${comparisons[fn]} ${b} ? 1 : 0)`;
  if (Object.hasOwn(functions, fn) && isName(fn)) return `f.${fn}(${parts.join(', ')})`;
  throw new Error(`no function named ${fn}`);
}

/** A function made of a formula's own tree: it can hold only numbers, the symbols declared and functions of `tree.ts`. */
const made = <F>(parameters: string, body: string): F =>
  new Function('f', `'use strict'; return (${parameters}) => ${body};`)(functions) as F;

const checked = (symbols: readonly string[]): void => {
  for (const symbol of symbols) if (!isName(symbol)) throw new Error(`no symbol may be named ${symbol}`);
};

/** Turns a formula's tree into a function of an object of numbers. */
export function compile(tree: Tree, symbols: readonly string[]): Closure {
  checked(symbols);
  return made(
    'x',
    expressionOf(tree, name => (symbols.includes(name) ? `x.${name}` : 'Math.PI')),
  );
}

/** Turns a formula's tree into a function of its inputs in their order, for loops: it makes nothing. */
export function compileDirect(tree: Tree, symbols: readonly string[]): Direct {
  checked(symbols);
  const body = expressionOf(tree, name => (symbols.includes(name) ? `$${name}` : 'Math.PI'));
  return made(symbols.map(name => `$${name}`).join(', '), body);
}
