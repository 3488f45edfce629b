import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { asRead, withGearTold } from '#conversation/told/gear-told.ts';
import { read } from '#language/reading.ts';
import type { Stated } from '#rig/rig.ts';
import { talk, value } from './talk.ts';

const fridge: Stated = { loads: [{ name: 'fridge' }] };
const told = (text: string, facts: Stated = fridge) =>
  present(present(withGearTold(facts, read(text).recognised).loads)[0]);

describe('what the words beside a fridge tell', () => {
  test.for<[text: string, want: object]>([
    ['120L fridge, 100Ah agm', { volumeL: 120 }],
    ['a 60 litre camping fridge', { volumeL: 60 }],
    ['the fridge has 60 litres', { volumeL: 60 }],
    ['the fridge, 45 L, and a lamp', { volumeL: 45 }],
    ['fridge and 80 litres of water', {}],
    ['80 litres water, fridge 1.2A', {}],
    ['fridge and a 20L kettle', {}],
    ['2L fridge', {}],
    ['a 5 gallon fridge', {}],
    ['kitchen fridge', { build: 'household' }],
    ['house battery and a fridge', {}],
    ['household fridge 12V', {}],
    ['230V fridge', { supply: 'ac' }],
    ['240 volt fridge', { supply: 'ac' }],
    ['fridge on 12V', {}],
    ['3 way fridge', { build: 'three-way' }],
    ['two way radio and a fridge', {}],
    ['thermoelectric fridge', { build: 'thermoelectric' }],
    ['a peltier fridge, 4A', { build: 'thermoelectric' }],
    ['fridge without a compressor', { build: 'thermoelectric' }],
    ['12V fridge, no compressor', { build: 'thermoelectric' }],
    ['compressor fridge', {}],
    ['no solar, a fridge with a compressor', {}],
  ])('%s', ([text, want]) => {
    expect(told(text)).toEqual({ name: 'fridge', ...want });
  });

  test('a count that is none goes, another stays', () => {
    expect(told('3 way fridge', { loads: [{ name: 'fridge', count: 3 }] })).not.toHaveProperty('count');
    expect(told('2 three way fridges', { loads: [{ name: 'fridge', count: 2 }] })).toHaveProperty('count', 2);
  });

  test('nothing of it is told of what does not cool', () => {
    expect(told('20L kettle', { loads: [{ name: 'kettle' }] })).toEqual({ name: 'kettle' });
  });
});

describe('how worn a battery is', () => {
  const agm: Stated = { batteries: [{ capacityAh: 100, chemistry: 'agm' }] };
  const wearOf = (text: string, facts: Stated = agm) =>
    withGearTold(facts, read(text).recognised).batteries?.[0]?.wear;

  test.for<[text: string, want: 'old' | 'tired' | undefined]>([
    ['my tired old 100Ah AGM', 'tired'],
    ['the AGM is pretty knackered, 100Ah', 'tired'],
    ['the batteries are on their last legs', 'tired'],
    ['100Ah lead acid thats seen better days', 'tired'],
    ['my old battery 100ah', 'old'],
    ['an old 12V 100Ah AGM', 'old'],
    ['the battery is getting old', 'old'],
    ["I'm tired, how long does a 100Ah AGM run a 45W fridge", undefined],
    ['old alternator, 100Ah agm, 20A charger', undefined],
    ['a new 100Ah AGM and an old fridge', undefined],
    ['100Ah AGM', undefined],
  ])('%s: %s', ([text, want]) => {
    expect(wearOf(text)).toBe(want);
  });

  test('years say more, and a starter battery is another', () => {
    expect(wearOf('my old 100Ah AGM', { batteries: [{ capacityAh: 100, ageYears: 6 }] })).toBeUndefined();
    expect(wearOf('my old 100Ah AGM', { batteries: [{ capacityAh: 70, role: 'starter' }] })).toBeUndefined();
  });

  test('it counts, and is no part of what was understood', () => {
    const hours = (text: string) => value(talk([`sam: ${text}`]).last, 'runTime');
    expect(hours('tired 100Ah AGM, 45W fridge, how long')).toBeLessThan(
      0.75 * hours('100Ah AGM, 45W fridge, how long'),
    );
    expect(asRead({ batteries: [{ capacityAh: 100, wear: 'old' }] })).toEqual({
      batteries: [{ capacityAh: 100 }],
    });
  });
});

describe('whether the watts of a microwave go in', () => {
  const isInput = (text: string, name = 'microwave') =>
    told(text, { loads: [{ name, powerW: 1100 }] }).isInput ?? false;
  test.for([
    'microwave 1100W input',
    'microwave, input 1100W',
    'the microwave draws 1100W',
    'microwave that pulls about 1100 watts',
    'microwave, 1100W off the wall',
    'the microwave takes 1.1kW from the socket',
    'microwave, power consumption 1100W',
    '700W microwave, its label says 1100W input',
  ])('%s', text => expect(isInput(text)).toBe(true));
  test.for([
    '1100W microwave',
    'microwave 1100 watts on a 2000W inverter',
    'how much does a 1100W microwave draw',
    '1100W microwave, lamp draws 20W',
    'microwave 1100W, 1500W input from solar',
  ])('not: %s', text => expect(isInput(text)).toBe(false));
  test('of other things it says nothing new', () => {
    expect(isInput('kettle draws 1100W', 'kettle')).toBe(false);
  });
});

describe('an inverter left on', () => {
  const isOn = (text: string) =>
    present(withGearTold({ inverter: { powerW: 1500 } }, read(text).recognised).inverter).isLeftOn;
  test.for([
    '1500W inverter left on',
    'inverter always on',
    'the inverter stays on all day',
    'if I leave the 1500W inverter on',
    'inverter on 24/7',
    'inverter on day and night',
  ])('%s', text => {
    expect(isOn(text)).toBe(true);
  });
  test.for([
    '1500W inverter',
    'fridge always on, 1500W inverter',
    'a kettle on the inverter',
    'inverter on my 100Ah',
  ])('not: %s', text => {
    expect(isOn(text)).toBeUndefined();
  });
});

describe('in answers', () => {
  const ask = (text: string) => talk([`ann: ${text}`]).last;

  test('it is counted and named, and is no part of what is called understood', () => {
    const small = ask('How long will my fridge last on a 200Ah lithium?');
    const large = ask('How long will my kitchen fridge, 350 litres, last on a 200Ah lithium?');
    expect(value(large, 'dailyUse')).toBeGreaterThan(2 * value(small, 'dailyUse'));
    expect(large.text).toContain('household fridge 350 L');
    expect(large.understood.loads).toEqual([{ name: 'fridge' }]);
  });

  test('it is kept with the rig', () => {
    const { last } = talk(['ann: my rig: 120L fridge, 200Ah lithium', 'ann: how long will it last?']);
    expect(last.text).toContain('fridge 120 L');
  });

  test('litres told of a fridge of the rig join what the rig has', () => {
    const { memory } = talk([
      'ann: my rig: fridge 4A, 200Ah lithium',
      'ann: how long will my 60L fridge run',
    ]);
    expect(present(memory.frames.at(-1)).facts.loads).toEqual([{ name: 'fridge', volumeL: 60, currentA: 4 }]);
  });

  test('watt hours an hour are an average: no duty on top', () => {
    const answer = ask('fridge uses 45 Wh an hour, 100Ah lithium, how long will it last?');
    expect(value(answer, 'dailyUse')).toBeGreaterThan(80);
    expect(value(ask('fridge 45 W, 100Ah lithium, how long will it last?'), 'dailyUse')).toBeLessThan(60);
  });

  test('a three-way fridge on 12 V is warned of', () => {
    const answer = ask('three way fridge on 12 V off a 100Ah AGM, how long will it last?');
    expect(answer.text).toMatch(/heats all the time on 12 V/);
    expect(value(answer, 'runTime')).toBeLessThan(6);
  });

  test('without a compressor it draws all the time', () => {
    const answer = ask('thermoelectric cool box 5A, 100Ah agm, how long');
    expect(value(answer, 'dailyUse')).toBeCloseTo(120, 6);
    expect(answer.understood.loads).toEqual([{ name: expect.any(String), currentA: 5 }]);
  });

  test('watts that go in are no output', () => {
    const answer = ask('microwave 1000W input, 1500W inverter ok?');
    expect(value(answer, 'acLoad')).toBe(1000);
    expect(answer.understood.loads?.[0]).not.toHaveProperty('isInput');
  });

  test('an inverter left on costs its idle draw', () => {
    const facts = 'What do I use a day: lights 1A 5h, 1500W inverter';
    expect(value(ask(`${facts} left on`), 'dailyUse')).toBeGreaterThan(
      value(ask(`${facts}`), 'dailyUse') + 15,
    );
  });

  test('a household compressor on a small inverter is no yes', () => {
    expect(ask('can a 500W inverter run a 300W fridge').verdict).not.toBe('yes');
  });
});

test('as it was read: nothing is left of it', () => {
  const facts: Stated = {
    loads: [{ name: 'fridge', volumeL: 80, build: 'household', powerW: 100, isInput: true }],
    inverter: { powerW: 1000, isLeftOn: true },
    durationH: 3,
  };
  expect(asRead(facts)).toEqual({
    loads: [{ name: 'fridge', powerW: 100 }],
    inverter: { powerW: 1000 },
    durationH: 3,
  });
});
