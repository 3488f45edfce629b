import { expect, test } from 'vitest';
import { files, read } from '../house/source.ts';
import { groupSchema, partialSchema } from './group-schema.ts';

interface Line {
  readonly where: string;
  readonly value: unknown;
}

const linesOf = (path: string): Line[] =>
  read(path)
    .split('\n')
    .flatMap((text, i) => (text === '' ? [] : [{ where: `${path}:${i + 1}`, value: JSON.parse(text) }]));

const whole = [...files('tests/messages/*.jsonl'), ...files('tests/messages/dangers/*.jsonl')];
const partial = files('tests/messages/partial/*.jsonl');
// Nobody reads closed groups: that their ids are no others' is all that is looked at.
const closed = files('tests/messages/closed/*.jsonl');

const faults = (path: string, schema: typeof groupSchema | typeof partialSchema): string[] =>
  linesOf(path).flatMap(({ where, value }) => {
    const { error } = schema.safeParse(value);
    return (error?.issues ?? []).map(issue => `${where} ${issue.path.join('.')}: ${issue.message}`);
  });

test('there are messages to check', () => {
  expect(whole.length).toBeGreaterThan(20);
  expect(partial.length).toBeGreaterThan(0);
});

test.for(whole)('%s has the format of its README', path => {
  expect(faults(path, groupSchema)).toEqual([]);
});

test.for(partial)('%s has the format of its README', path => {
  expect(faults(path, partialSchema)).toEqual([]);
});

test('every id is there once', () => {
  const ids = [...whole, ...partial, ...closed].flatMap(path =>
    linesOf(path).map(({ value }) => (value as { id: string }).id),
  );
  const seen = new Set<string>();
  expect(ids.filter(id => seen.size === seen.add(id).size)).toEqual([]);
});

test('the schema sees what is wrong', () => {
  const good = {
    id: 'made-up-001',
    from: 'kim',
    wordings: ['fridge 2A?', 'a fridge of two amps?'],
    intent: ['run-time'],
    asked: [],
    states: { loads: [{ name: 'fridge', currentA: 2 }] },
    ignore: [],
    danger: null,
  };
  expect(groupSchema.safeParse(good).success).toBe(true);
  const wrong = [
    { ...good, intent: ['run-times'] },
    { ...good, danger: 'tripping' },
    { ...good, notes: 'x' },
    { ...good, states: { loads: [{ name: 'fridge', amps: 2 }] } },
    { ...good, states: { volt: 12 } },
    { ...good, wordings: ['only one'] },
  ];
  for (const group of wrong) expect(groupSchema.safeParse(group).success).toBe(false);
});
