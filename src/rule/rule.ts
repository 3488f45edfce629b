import { type Closure, compile, compileDirect, type Direct } from './compile.ts';
import { treeOf } from './trees.ts';

/** A symbol of a formula: what it means and its unit (a symbol of `quantity/units.ts`, "" for a pure number). */
interface FormulaSymbol {
  readonly says: string;
  readonly unit: string;
}

/**
 * A formula as a value: the one place where it is written. It gives the number, the printed working,
 * the dimension check in the tests and a row of `docs/method.md`.
 */
export interface Rule<S extends string> {
  /** camelCase, unique: "usableCapacity". */
  readonly name: string;
  /** One plain sentence for beginners. */
  readonly says: string;
  /** In the trade's symbols, without the left-hand side: "C * DoD * k". */
  readonly formula: string;
  readonly symbols: Readonly<Record<S, FormulaSymbol>>;
  /** What a person would check, where the formula is more than plain arithmetic; else the first with a unit. */
  readonly tells?: readonly NoInfer<S>[];
  /** The result: its symbol and unit. */
  readonly gives: { readonly symbol: string; readonly unit: string };
  /** A work and page, "definition", or "common practice". */
  readonly source: string;
  readonly evaluate: (inputs: Readonly<Record<S, number>>) => number;
  /** The formula as a function of its inputs one after the other, in the order of `symbols`: for loops over hours. */
  readonly direct: () => Direct;
}

/** Every rule made, in order of making; the docs and the tests walk it. */
export const allRules: Rule<string>[] = [];

/**
 * Declares a rule. The formula is compiled at its first use and must hold only numbers, its own symbols,
 * `pi`, + - * / ^, brackets, comparison, and the functions of `tree.ts`.
 * @throws Error naming the rule, where the formula holds anything else
 */
export function rule<const S extends string>(written: Omit<Rule<S>, 'evaluate' | 'direct'>): Rule<S> {
  let closure: Closure | undefined;
  let direct: Direct | undefined;
  const symbols = Object.keys(written.symbols);
  const made: Rule<S> = {
    ...written,
    evaluate: inputs => {
      closure ??= compile(treeOf(written.name, written.formula, symbols), symbols);
      return closure(inputs);
    },
    direct: () => {
      direct ??= compileDirect(treeOf(written.name, written.formula, symbols), symbols);
      return direct;
    },
  };
  allRules.push(made as unknown as Rule<string>);
  return made;
}

/** What notes each rule that is run; `trace.ts` has the one in use. */
export interface Recorder {
  rule(rule: Rule<string>, inputs: Readonly<Record<string, number>>, value: number): void;
}

/** Runs a rule on plain numbers in the units of its symbols; with a trace, the step is recorded. */
export function run<S extends string>(
  r: Rule<S>,
  inputs: Readonly<Record<S, number>>,
  trace?: Recorder,
): number {
  const value = r.evaluate(inputs);
  trace?.rule(r as unknown as Rule<string>, inputs, value);
  return value;
}
