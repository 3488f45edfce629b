import { expect, test } from 'vitest';
import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { files, read } from '../house/source.ts';
import { rules } from './all.ts';

/** Messages for the rules that no phrase of a question's folder runs. */
const more = [
  '100Ah AGM at 80%, fridge 2A, how long?',
  '100Ah AGM is at 70%, how much is left?',
  'What is 60W over 5 hours in Wh?',
  'What is 300Wh over 5 hours in W?',
  'How many amps is 60Ah over 10 hours?',
  'What do I use a day: lights 1A 5h, 1500W inverter left on, laptop 60W 2h',
  'phone charger 5W on a 2000W inverter, what does it take from 12V?',
  'We camp in Cusco in July. What size generator for a 30A mains charger?',
  '200Ah lithium at 20%, 60A mains charger on a 800W generator, how long to run it?',
  'what fuse for two 200W panels with Isc 11A in parallel',
  'AGM or lithium, at 40 degrees?',
  'Overcast in Cairns in March, 200W of panel. Jo says 40Ah a day, me 60Ah',
  '100Ah lithium at 30%, 20A mains charger, 2A fan on. How long to full?',
];

/** Talks over a day, each line with its hour, for what only readings over time run. */
const talks: readonly (readonly (readonly [hour: number, text: string])[])[] = [
  [
    [8, 'my rig: 100Ah AGM, fridge 1.2A average'],
    [9, 'battery is at 99%, how long have we got'],
    [21, 'battery is at 75%, how long have we got'],
    [33, 'battery is at 51%, how long have we got'],
    [34, 'battery is at 49%, what will it be at 7am?'],
  ],
];

/** Sure enough of a panel only after more days of readings than fit here: held by `tests/engine/learn`. */
const slowest = ['learnedYield'];

const at = new Date('2026-01-15T09:00:00Z');

test('every rule is run by some answer', () => {
  const reached = new Set<string>();
  // The rules are plain objects: what runs them is noted on the way.
  for (const { rule } of rules) {
    const { evaluate, direct } = rule;
    const noted = rule as { evaluate: typeof evaluate; direct: typeof direct };
    noted.evaluate = inputs => {
      reached.add(rule.name);
      return evaluate(inputs);
    };
    noted.direct = () => {
      reached.add(rule.name);
      return direct();
    };
  }
  const phrases = files('intents/*/phrases.json').flatMap(path =>
    (JSON.parse(read(path)) as { say: string }[]).map(({ say }) => say),
  );
  for (const text of [...phrases, ...more])
    converse(emptyMemory(), { chat: 'c', from: 'kim', text, at, kind: 'private' });
  for (const lines of talks) {
    let memory = emptyMemory();
    for (const [hour, text] of lines) {
      const then = new Date(at.getTime() + hour * 3600_000);
      memory = converse(memory, { chat: 'c', from: 'kim', text, at: then, kind: 'private' }).memory;
    }
  }
  expect(rules.map(({ rule }) => rule.name).filter(name => !reached.has(name))).toEqual(slowest);
});
