import type { Rule } from './rule.ts';

/** A rule that was run: its inputs as they were put in, and what came out. */
export interface RuleStep {
  readonly kind: 'rule';
  readonly rule: Rule<string>;
  readonly inputs: Readonly<Record<string, number>>;
  readonly value: number;
}

/** A table that was read, or a choice that was made: no formula, but a source. */
export interface LookupStep {
  readonly kind: 'lookup';
  readonly name: string;
  /** For people: "AWG 8 → 8.37 mm²" or "from table …, row …". */
  readonly says: string;
  readonly value: number;
  readonly unit: string;
  readonly source: string;
}

export type Step = RuleStep | LookupStep;

/** The record of the calls that made a number. Give one to get the working, leave it out for speed. */
export class Trace {
  readonly steps: Step[] = [];

  rule(rule: Rule<string>, inputs: Readonly<Record<string, number>>, value: number): void {
    this.steps.push({ kind: 'rule', rule, inputs: { ...inputs }, value });
  }

  lookup(step: Omit<LookupStep, 'kind'>): void {
    this.steps.push({ kind: 'lookup', ...step });
  }
}
