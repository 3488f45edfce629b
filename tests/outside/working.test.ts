import { evaluate } from 'mathjs';
import { expect, test } from 'vitest';
import type { WorkingStep } from '#answer/answer.ts';
import { printWorking } from '#answer/text.ts';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { intents } from '#intents';
import { allRules } from '#rule/rule.ts';
import { readPhrases } from '../intents/phrases.ts';
import '../rules/all.ts';
import { unitsOfRules } from '../rules/units.ts';

// The working of whole answers, read back as somebody with a pocket calculator would: what stands right of the last
// "=" of a printed formula, without its units, has to come to the number that the answer gives for that step.

const unitText = Object.keys(unitsOfRules)
  .filter(Boolean)
  .sort((a, b) => b.length - a.length)
  .map(unit => unit.replace(/[/()·^]/g, '\\$&'))
  .join('|');
const units = new RegExp(`(?<=\\d) ?(?:${unitText})(?=[\\s),^]|$)`, 'g');
const plain = (numbers: string): string =>
  numbers
    .replace(units, '')
    .replaceAll('−', '-')
    .replaceAll('×', '*')
    .replaceAll('÷', '/')
    .replaceAll('≤', '<=')
    .replaceAll('≥', '>=');
const figure = /\d+(?:\.\d+)?(?:e[-+]?\d+)?/g;

/** What printed numbers come to, and how far off the figures that were left out may put it: each is shown to five. */
function readBack(numbers: string): { readonly value: number; readonly slack: number } {
  const value = Number(evaluate(numbers));
  let slack = 1e-9 * Math.abs(value) + 1e-12;
  for (const found of numbers.matchAll(figure)) {
    const [shown] = found;
    const moved = [1 + 6e-5, 1 - 6e-5].map(by => {
      const before = numbers.slice(0, found.index);
      const after = numbers.slice(found.index + shown.length);
      return Math.abs(Number(evaluate(`${before}${Number(shown) * by}${after}`)) - value);
    });
    slack += Math.max(...moved.filter(Number.isFinite), 0);
  }
  return { value, slack };
}

const ruleOf = new Map(allRules.map(rule => [rule.name, rule]));
/** A line that a rule printed; a table that was read may bear the name of the rule it stands in for. */
const isRule = (step: WorkingStep): boolean => {
  const rule = ruleOf.get(step.name);
  return rule !== undefined && step.formula.startsWith(`${rule.gives.symbol} = `);
};
/** A line with numbers alone right of its last "=": not "k_temp = 1 ÷ 1.19, the size factor at 10 °C". */
const numbersOf = (step: WorkingStep): string | undefined => {
  const numbers = plain(present(step.formula.split(' = ').at(-1)));
  const rest = numbers.replace(/\b(?:min|max|sqrt|exp|log10|log|abs|a?sin|a?cos|a?tan|pi)\b/g, '');
  return /^[-+*/^()<>=,.\d\se]*$/.test(rest) && step.formula.includes(' = ') ? numbers : undefined;
};

const at = new Date('2026-01-15T09:00:00Z');
const answerTo = (before: readonly string[], say: string) => {
  let memory = emptyMemory();
  let answer: ReturnType<typeof converse>['answer'] | undefined;
  for (const text of [...before, say])
    ({ memory, answer } = converse(memory, { chat: 'c', from: 'kim', text, at, kind: 'group' }));
  return present(answer);
};

test.for(intents.map(({ name }) => name))('%s: every line of its working comes to its number', name => {
  for (const { before = [], say } of readPhrases(name)) {
    for (const step of answerTo(before, say).working) {
      const where = `"${say}": ${step.formula}`;
      const numbers = numbersOf(step);
      // What a rule prints must be readable to the last sign; a table that was read may be told in words.
      if (isRule(step)) expect(numbers, where).toBeDefined();
      if (numbers === undefined || !Number.isFinite(step.value)) continue;
      const { value, slack } = readBack(numbers);
      // A sum of loads is told to two decimals of each.
      const told = isRule(step) ? slack : 0.02 + 0.002 * Math.abs(step.value);
      expect(Math.abs(value - step.value), where).toBeLessThanOrEqual(told);
      // And as a person reads it: the result at the end of the line, to its own last figure.
      const shown = present(printWorking(step).split(' = ').at(-1));
      const [end] =
        plain(shown)
          .replaceAll(',', '')
          .match(/-?[\d.]+/) ?? [];
      if (end !== undefined) {
        const half = 0.5 * 10 ** -(end.split('.')[1]?.length ?? 0);
        const most = half + 1e-9 + 0.0006 * Math.abs(step.value);
        expect(Math.abs(Number(end) - step.value), `${where}, shown ${shown}`).toBeLessThanOrEqual(most);
      }
    }
  }
});

test('the answers have working enough to be read back', () => {
  const steps = intents.flatMap(({ name }) =>
    readPhrases(name).flatMap(({ before = [], say }) => answerTo(before, say).working),
  );
  const names = new Set(steps.filter(isRule).map(step => step.name));
  expect(steps.length).toBeGreaterThan(600);
  // Most rules show up in some answer.
  expect(names.size).toBeGreaterThan(allRules.length / 2);
});

test('a line that is untrue is seen', () => {
  const step = { name: 'runTime', formula: 't = Q ÷ I = 50 Ah ÷ 1.04 A', value: 48, unit: 'h', source: '' };
  const { value, slack } = readBack(present(numbersOf(step)));
  expect(value).toBeCloseTo(48.08, 2);
  expect(slack).toBeLessThan(0.01);
});
