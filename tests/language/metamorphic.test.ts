import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { changeNames, changes } from '../../src/tools/metamorphic/changes.ts';
import { isSameReading } from '../../src/tools/metamorphic/unchanged.ts';
import { measured, percentOf, readFloors } from './metamorphic.ts';

const outcomes = measured();
const floors = readFloors();

describe('a change that says nothing new leaves the reading as it was', () => {
  test.for(changeNames)('%s', (name, context) => {
    const outcome = present(outcomes.find(o => o.change === name));
    const reached = percentOf(outcome);
    expect(outcome.tried).toBeGreaterThan(30);
    expect(
      reached,
      outcome.others
        .slice(0, 5)
        .map(([a, b]) => `${a}\n→ ${b}`)
        .join('\n'),
    ).toBeGreaterThanOrEqual(floors[name]);
    void context.annotate(
      `${reached} % of ${outcome.tried} stay (node tests/language/metamorphic-ratchet.ts)`,
    );
  });
});

describe('the changes themselves', () => {
  const text = 'My fridge draws 1.5 A, battery 100 Ah AGM. How long will it last?';
  const apply = (name: (typeof changeNames)[number], message = text, n = 0) =>
    changes[name].apply(message, n);

  test('an opening stands before the message', () => {
    expect(apply('politeOpening')).toMatch(/^[A-Z].* My fridge draws 1\.5 A/);
  });

  test('the last sentence or clause comes first, unless it leans on the others', () => {
    expect(apply('turnedRound')).toBe('How long will it last? My fridge draws 1.5 A, battery 100 Ah AGM.');
    expect(apply('turnedRound', 'fridge 2A, 3 days?')).toBe('3 days? fridge 2A');
    expect(apply('turnedRound', 'Fridge 2A. And for 3 days?')).toBeUndefined();
    expect(apply('turnedRound', 'fridge 2A')).toBeUndefined();
  });

  test('one slip, in no unit, number or name', () => {
    for (let n = 0; n < 30; n++) {
      const slipped = present(apply('slip', text, n));
      expect(slipped).not.toBe(text);
      expect(Math.abs(slipped.length - text.length)).toBeLessThanOrEqual(1);
      expect(slipped).toMatch(/1\.5 A, .*100 Ah/);
    }
    expect(apply('slip', '20 amps, 3 days')).toBeUndefined();
  });

  test('punctuation goes, decimals stay', () => {
    expect(apply('noPunctuation')).toBe('My fridge draws 1.5 A battery 100 Ah AGM How long will it last');
    expect(apply('noPunctuation', 'fridge 2A')).toBeUndefined();
  });

  test('capitals come or go', () => {
    expect(apply('capitals')).toBe(text.toUpperCase());
    expect(apply('capitals', text, 1)).toBe(text.toLowerCase());
  });

  test.for<[text: string, changed: string | undefined]>([
    ['fridge 1.5 A', 'fridge 1500 mA'],
    ['a 2000W inverter', 'a 2 kW inverter'],
    ['for 2 days', 'for 48 hours'],
    ['for half an hour', 'for 30 minutes'],
    ['3 metres of cable', '300 cm of cable'],
    ['25 degrees', '77 °F'],
    ['for two nights', undefined],
    ['a weekend', undefined],
    ['2-3 amps', undefined],
    ['100 Ah', undefined],
  ])('%s in another unit: %s', ([message, changed]) => {
    expect(apply('otherUnit', message)).toBe(changed);
  });
});

test('two readings are the same whatever the order of a list, and not where a fact is another', () => {
  const reading = (...loads: object[]) => ({ intent: 'run-time', stated: { loads } });
  const [fridge, lamp] = [
    { name: 'fridge', currentA: 2 },
    { name: 'lamp', powerW: 5 },
  ];
  expect(isSameReading(reading(fridge, lamp), reading(lamp, fridge))).toBe(true);
  expect(isSameReading(reading(fridge, lamp), reading(fridge))).toBe(false);
  expect(isSameReading(reading(fridge), reading(fridge, lamp))).toBe(false);
  expect(isSameReading(reading(fridge), reading({ ...fridge, currentA: 3 }))).toBe(false);
  expect(isSameReading(reading(fridge), { ...reading(fridge), intent: 'trip' })).toBe(false);
});
