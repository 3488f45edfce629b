import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { read } from '#language/read.ts';
import { factsSchema } from '#rig/rig.ts';
import { context, facts, said } from './reading.ts';

describe('what is wrong with a message', () => {
  test.for([
    ['a 100A battery', 'unit-mismatch', '100 Ah'],
    ['fridge 1.2ah, 100ah agm', 'unit-mismatch', '1.2 A'],
    ['20ah dcdc', 'unit-mismatch', '20 A'],
    ['we use 45 amps a day', 'unit-mismatch', '45 Ah'],
    ['12v battery is 100ah so thats 5kwh', 'contradiction', '1200 Wh'],
    ['100ah battery at 130%', 'absurd-value', undefined],
    ['battery is 0ah', 'absurd-value', undefined],
    ['fridge -3A, 100ah', 'absurd-value', undefined],
    ['Сколько проработает холодильник', 'other-language', undefined],
  ] as const)('%s: %s', ([text, code, repair]) => {
    const issue = said(text).issues.find(i => i.code === code);
    expect(issue).toBeDefined();
    if (repair) expect(JSON.stringify(issue!.data)).toContain(repair);
  });

  test.for(['fridge 1A, 100ah agm, 3 days?', 'what cable for 10a over 5m', 'hi all', 'rob says 3 days'])(
    '%s: nothing',
    text => {
      expect(said(text).issues).toEqual([]);
    },
  );

  test('a unit nobody knows, with the one that was meant', () => {
    const { issues } = said('fridge 12 zamps');
    expect(issues.find(i => i.code === 'unknown-unit')).toBeUndefined();
    expect(facts('fridge 2 amsp')).toEqual({ loads: [{ name: 'fridge', currentA: 2 }] });
  });
});

describe('messages that nobody means', () => {
  test.for([
    '',
    ' ',
    '😂',
    '?',
    '....',
    '9'.repeat(4096),
    'a'.repeat(5000),
    '('.repeat(4096),
    '1,'.repeat(2000),
    '\u0000\u0007',
    '12V*((((1))))**9',
    '<'.repeat(1000),
    '-'.repeat(3000),
    "'".repeat(2000),
    '½'.repeat(2000),
  ])('%#', text => {
    expect(() => read(text, context)).not.toThrow();
  });

  test.for([
    'who left the gate open',
    'see you at 6 at the ramp',
    'lol',
    'the fish are biting, 3 so far',
    'site 12 is taken, 30 bucks a night',
    'happy birthday mum',
    '2.4',
    'anyone seen my thongs',
    'we caught 3 bream in 2 hours',
    'who ate all the snags',
  ])('%s: states nothing of power', text => {
    const { loads, batteries, solar, chargers, inverter, cable } = said(text).facts;
    expect({ loads, batteries, solar, chargers, inverter, cable }).toEqual({});
  });
});

const pieces = [
  'fridge 1.2A',
  '100Ah agm',
  '3 days',
  'lamp 10W 4h a night',
  '160w panel',
  '25a dcdc',
  '2000w inverter',
] as const;
const sorted = (value: unknown): unknown =>
  Array.isArray(value)
    ? [...value].map(sorted).sort((a, b) => JSON.stringify(a).localeCompare(JSON.stringify(b)))
    : value;
const inAnyOrder = (got: Record<string, unknown>): unknown =>
  Object.fromEntries(
    Object.entries(got)
      .map(([key, value]) => [key, sorted(value)])
      .sort(),
  );

describe('properties', () => {
  test('the same facts in any order read the same', () => {
    const want = inAnyOrder(facts(pieces.join(', ')) as Record<string, unknown>);
    fc.assert(
      fc.property(fc.shuffledSubarray([...pieces], { minLength: pieces.length }), order => {
        expect(inAnyOrder(facts(order.join(', ')) as Record<string, unknown>)).toEqual(want);
      }),
      { numRuns: 200 },
    );
  });

  test('spaces and case say nothing', () => {
    const want = facts('fridge 1.2A, 100Ah agm, 3 days');
    const space = fc.constantFrom('', ' ', '  ', '\t');
    fc.assert(
      fc.property(
        space,
        space,
        fc.constantFrom(', ', ' , ', ',', '; '),
        fc.boolean(),
        (a, b, comma, isUpper) => {
          const text = [`fridge 1.2${a}A`, `100${b}Ah agm`, '3 days'].join(comma);
          expect(facts(isUpper ? text.toUpperCase() : text)).toEqual(want);
        },
      ),
    );
  });

  test('whatever is written, reading ends, and its facts fit the shape', () => {
    const words = fc.constantFrom(
      'fridge',
      '100ah',
      '1.2a',
      'x',
      '2',
      '-',
      '/',
      'says',
      'sam',
      '3 days',
      '%',
      '40%',
      'to',
      'no',
      'not',
      '12v',
      'mm2',
      'in',
      'darwin',
      'july',
      '?',
      '.',
      ',',
      '(',
      ')',
      '½',
      'a day',
      'each',
      'and',
      'agm',
      'panel',
      '200w',
      'dcdc',
      'monday',
      '6pm',
      'till',
      'charge',
      '0',
      '-5',
      '999999999',
      'minus',
      'full',
      'flat',
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ unit: 'binary', maxLength: 60 }),
          fc.array(words, { maxLength: 25 }).map(list => list.join(' ')),
        ),
        text => {
          const got = read(text, context);
          expect(factsSchema.safeParse(got.facts).error).toBeUndefined();
          for (const issue of got.issues) expect(issue.span.to).toBeLessThanOrEqual(text.length);
        },
      ),
      { numRuns: 3000 },
    );
  });

  test('reading changes nothing outside: twice the same', () => {
    fc.assert(
      fc.property(fc.constantFrom(...pieces), text => {
        expect(said(text)).toEqual(said(text));
      }),
    );
  });
});

test.for([
  '½ constructor cable 5m',
  'twenty constructor amp hours, 100ah agm',
  'camping in constructor from constructor, fridge 1A',
  'arrive constructor, leave constructor in the constructor',
])('%s: a word that every record knows is a word like any other', text => {
  const { facts: told, claims } = said(text);
  expect(factsSchema.safeParse(told).error).toBeUndefined();
  for (const { value } of claims) expect(value).not.toBeNaN();
});
