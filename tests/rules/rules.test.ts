import fc from 'fast-check';
import type { SymbolNode } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { printFormula, printNumbers, printStep } from '#rule/print.ts';
import type { Rule } from '#rule/rule.ts';
import { Trace } from '#rule/trace.ts';
import { functions } from '#rule/tree.ts';
import { programFiles, read } from '../house/source.ts';
import { rules } from './all.ts';
import { countIn, evaluateWithUnits, judge, unitsOfRules, withUnit } from './units.ts';

type Inputs = Readonly<Record<string, number>>;
const seeded = { seed: 12, numRuns: 200 } as const;

/** Values for every symbol of a rule, each within what a camper may meet of that unit. */
const inputsOf = (rule: Rule<string>): fc.Arbitrary<Inputs> =>
  fc.record(
    Object.fromEntries(
      Object.entries(rule.symbols).map(([name, { unit }]) => {
        const [min, max] = unitsOfRules[unit]?.span ?? [0.1, 100];
        // Steps, not any double: two inputs a hair apart would test the rounding of their difference.
        return [name, fc.integer({ min: 0, max: 9973 }).map(step => min + ((max - min) * step) / 9973)];
      }),
    ),
  );

const isSame = (a: number, b: number, within = 1e-9): boolean =>
  Object.is(a, b) || Math.abs(a - b) <= within * Math.max(Math.abs(a), Math.abs(b), 1e-12) || a === b;

const symbolsIn = (rule: Rule<string>): string[] =>
  judge
    .parse(rule.formula)
    .filter((node, path) => node.type === 'SymbolNode' && path !== 'fn')
    .map(node => (node as SymbolNode).name)
    .filter(name => name !== 'pi');

/** The numbers part of a printed line, as something to evaluate: no units, plain signs. */
const unitText = Object.keys(unitsOfRules)
  .filter(Boolean)
  .sort((a, b) => b.length - a.length)
  .map(unit => unit.replace(/[/()·^]/g, '\\$&'))
  .join('|');
const readBack = (printed: string): number =>
  judge.evaluate(
    printed
      .replace(new RegExp(`(?<=\\d) (?:${unitText})(?=[\\s),^]|$)`, 'g'), '')
      .replaceAll('−', '-')
      .replaceAll('×', '*')
      .replaceAll('÷', '/')
      .replaceAll('≤', '<=')
      .replaceAll('≥', '>='),
  );

test('there are rules, and each name once', () => {
  const names = rules.map(({ rule }) => rule.name);
  expect(names.length).toBeGreaterThan(20);
  expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
});

test('rules are declared in rules.ts files alone', () => {
  const elsewhere = programFiles().filter(
    path => /\brule\(\{/.test(read(path)) && !path.endsWith('rules.ts'),
  );
  expect(elsewhere).toEqual([]);
});

describe.for(rules.map(({ path, rule }) => [`${rule.name} (${path})`, rule] as const))('%s', ([, rule]) => {
  test('says what it does, with a source and a unit for every symbol', () => {
    expect(rule.name).toMatch(/^[a-z][A-Za-z0-9]*$/);
    expect(rule.says).toMatch(/^[A-Z0-9].{14,}[.]$/);
    expect(rule.says.length).toBeLessThanOrEqual(200);
    expect(rule.source.trim().length).toBeGreaterThanOrEqual('IEC 60028'.length);
    for (const [name, { says, unit }] of Object.entries(rule.symbols)) {
      expect(says, name).not.toBe('');
      expect(Object.keys(unitsOfRules), `unit of ${name}`).toContain(unit);
    }
    expect(Object.keys(unitsOfRules)).toContain(rule.gives.unit);
    // What comes out has a letter of its own, and a step in words names at least one figure that goes in.
    expect(rule.gives.symbol).toMatch(/^[A-Za-z]\w*$/);
    expect(Object.keys(rule.symbols)).not.toContain(rule.gives.symbol);
    if (rule.tells) expect(rule.tells).not.toEqual([]);
  });

  test('uses the symbols that it declares and no others', () => {
    expect(new Set(symbolsIn(rule))).toEqual(new Set(Object.keys(rule.symbols)));
  });

  test('gives its unit, and the same value whichever units go in', () => {
    let finite = 0;
    fc.assert(
      fc.property(inputsOf(rule), inputs => {
        const scope = Object.fromEntries(
          Object.entries(inputs).map(([name, value]) => [
            name,
            withUnit(value, present(rule.symbols[name]).unit),
          ]),
        );
        const ours = rule.evaluate(inputs);
        // Beyond what a function takes (acos 2), mathjs has no answer with units to hold ours against.
        if (!Number.isFinite(ours)) return true;
        finite++;
        const theirs = countIn(evaluateWithUnits(rule.formula, scope), rule.gives.unit);
        return isSame(ours, theirs, 1e-7);
      }),
      { ...seeded, numRuns: 25 },
    );
    expect(finite).toBeGreaterThan(5);
  });

  test('evaluates as mathjs does on 200 inputs', () => {
    fc.assert(
      fc.property(inputsOf(rule), inputs =>
        isSame(rule.evaluate(inputs), Number(judge.evaluate(rule.formula, { ...inputs }))),
      ),
      seeded,
    );
  });

  test('prints a formula that reads back as itself', () => {
    fc.assert(
      fc.property(inputsOf(rule), inputs => {
        const printed = printFormula(rule).replaceAll('−', '-').replaceAll('×', '*').replaceAll('÷', '/');
        const value = Number(
          judge.evaluate(printed.replaceAll('≤', '<=').replaceAll('≥', '>='), { ...inputs }),
        );
        return isSame(value, rule.evaluate(inputs));
      }),
      { ...seeded, numRuns: 20 },
    );
  });

  test('prints numbers that give its result, to the digits shown', () => {
    fc.assert(
      fc.property(inputsOf(rule), inputs => {
        const printed = printNumbers(rule, inputs);
        const value = rule.evaluate(inputs);
        const shown = Number(readBack(printed));
        if (!Number.isFinite(value)) return true;
        // Five figures are shown of each input: what half of the last one can move, and no more.
        const slack = Object.entries(inputs).reduce(
          (sum, [name, x]) => {
            const moved = [x * (1 + 6e-5), x * (1 - 6e-5)].map(y => rule.evaluate({ ...inputs, [name]: y }));
            return sum + Math.max(0, ...moved.map(m => Math.abs(m - value)).filter(Number.isFinite));
          },
          1e-9 * Math.abs(value) + 1e-12,
        );
        if (Math.abs(shown - value) <= slack) return true;
        throw new Error(`${printed} reads ${shown}, the rule gives ${value}`);
      }),
      { ...seeded, numRuns: 50 },
    );
  });

  test('stands in a trace as it was run', () => {
    const trace = new Trace();
    const inputs = Object.fromEntries(Object.keys(rule.symbols).map((name, i) => [name, 0.25 + i / 8]));
    trace.rule(rule, inputs, rule.evaluate(inputs));
    const step = printStep(present(trace.steps[0]));
    expect(step).toMatchObject({ name: rule.name, unit: rule.gives.unit, source: rule.source });
    expect(step.formula.startsWith(`${rule.gives.symbol} = `)).toBe(true);
  });
});

describe('the judge itself', () => {
  const made = (formula: string, symbols: Record<string, string>) => {
    const scope = Object.fromEntries(Object.entries(symbols).map(([n, unit]) => [n, withUnit(2, unit)]));
    return evaluateWithUnits(formula, scope);
  };

  test.for<[formula: string, symbols: Record<string, string>, unit: string, want: number | RegExp]>([
    ['P / V', { P: 'W', V: 'V' }, 'A', 1],
    ['I * t', { I: 'A', t: 'h' }, 'Ah', 4],
    ['I * t', { I: 'A', t: 'min' }, 'Ah', 4 / 60],
    ['P / V', { P: 'W', V: 'V' }, 'Ah', /not in Ah/],
    ['P / P', { P: 'W' }, 'A', /pure number/],
    ['P', { P: 'W' }, '', /not a pure number/],
    ['P + V', { P: 'W', V: 'V' }, 'W', /Units do not match/],
    ['2 * L * I * r', { L: 'm', I: 'A', r: 'mΩ/m' }, 'V', 0.016],
  ])('%s counted in %s', ([formula, symbols, unit, want]) => {
    if (want instanceof RegExp) expect(() => countIn(made(formula, symbols), unit)).toThrow(want);
    else expect(countIn(made(formula, symbols), unit)).toBeCloseTo(want, 10);
  });

  test('a printed line that is untrue is seen', () => {
    expect(readBack('100 Ah × (0.5 − 0.1) ÷ 2 h^2')).toBe(10);
    expect(readBack('3 kWh/m² ÷ 1 kW/m²')).toBe(3);
  });

  test.for(Object.entries(functions))('%s is the same function in mathjs', ([name, f]) => {
    const call = ['min', 'max'].includes(name) ? `${name}(0.3, 0.7)` : `${name}(0.3)`;
    expect(judge.evaluate(call)).toBeCloseTo(f(0.3, ...(call.includes(',') ? [0.7] : [])), 12);
  });
});
