import { all, create } from 'mathjs';
import { present } from '#basics/present.ts';
import { rules } from '../rules/all.ts';
import { unitsOfRules } from '../rules/units.ts';
import { interleaved, keep, round, type Section, times } from './measure.ts';

const count = 2000;

/** Formulas as plain functions, beside mathjs's own ways to evaluate the same text. */
export function formulas(): Section {
  const math = create(present(all), { predictable: true });
  const list = rules.map(({ rule }) => {
    const inputs = Object.fromEntries(
      Object.entries(rule.symbols).map(([name, { unit }]) => {
        const [low, high] = unitsOfRules[unit]?.span ?? [0.1, 1];
        return [name, (low + high) / 2];
      }),
    );
    return { rule, inputs, compiled: math.compile(rule.formula) };
  });
  const took = interleaved(7, {
    ours: () => {
      for (const { rule, inputs } of list) for (let i = 0; i < count; i++) keep(rule.evaluate(inputs));
    },
    compiled: () => {
      for (const { compiled, inputs } of list)
        for (let i = 0; i < count; i++) keep(compiled.evaluate(inputs));
    },
  });
  const text = interleaved(3, {
    evaluate: () => {
      for (const { rule, inputs } of list)
        for (let i = 0; i < 20; i++) keep(math.evaluate(rule.formula, { ...inputs }));
    },
  });
  const each = (ms: number, n = count) => (1000 * ms) / (n * list.length);
  return {
    title: `Formulas (${list.length} rules)`,
    lines: [
      { what: 'ours, µs', value: round(each(took.ours)) },
      { what: 'mathjs compiled, µs', value: round(each(took.compiled)) },
      { what: 'mathjs from text, µs', value: round(each(text.evaluate, 20)) },
      {
        what: 'as fast as mathjs compiled',
        value: times(took.compiled / took.ours),
        goal: '≥ 5 ×',
        isMet: took.compiled / took.ours >= 5,
      },
    ],
  };
}
