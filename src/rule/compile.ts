import { callOf, functions, type Tree } from './tree.ts';

type Inputs = Readonly<Record<string, number>>;
/** A formula as a function of plain numbers. */
export type Closure = (inputs: Inputs) => number;

const operators: Readonly<Record<string, (a: Closure, b: Closure) => Closure>> = {
  add: (a, b) => x => a(x) + b(x),
  subtract: (a, b) => x => a(x) - b(x),
  multiply: (a, b) => x => a(x) * b(x),
  divide: (a, b) => x => a(x) / b(x),
  pow: (a, b) => x => a(x) ** b(x),
  smaller: (a, b) => x => (a(x) < b(x) ? 1 : 0),
  smallerEq: (a, b) => x => (a(x) <= b(x) ? 1 : 0),
  larger: (a, b) => x => (a(x) > b(x) ? 1 : 0),
  largerEq: (a, b) => x => (a(x) >= b(x) ? 1 : 0),
};

/** Turns a formula's tree into a closure over plain numbers, walking it once. */
export function compile(tree: Tree, symbols: readonly string[]): Closure {
  if (typeof tree === 'number') return () => tree;
  if (typeof tree === 'string') return symbols.includes(tree) ? x => x[tree] as number : () => Math.PI;
  const { fn, args } = callOf(tree);
  const parts = args.map(part => compile(part, symbols));
  const [a, b] = parts as [Closure, Closure];
  if (fn === 'group') return a;
  if (fn === 'unaryMinus') return x => -a(x);
  const operator = operators[fn];
  if (operator) return operator(a, b);
  const f = functions[fn] as (...values: number[]) => number;
  if (parts.length === 1) return x => f(a(x));
  if (parts.length === 2) return x => f(a(x), b(x));
  return x => f(...parts.map(part => part(x)));
}
