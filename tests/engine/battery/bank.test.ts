import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { bankIn, bankOf, nominalVoltage } from '#engine/battery/bank.ts';
import type { Battery } from '#rig/rig.ts';

type Joined = readonly [ah: number, v: number];
const many = (count: number, rest: Partial<Battery>): Battery[] => [{ count, ...rest }];

test('a rig without a battery has no bank', () => {
  expect(bankIn({})).toBeUndefined();
  expect(bankIn({ batteries: [] })).toBeUndefined();
  expect(bankIn({ batteries: [{ count: 2, capacityAh: 100 }] })?.capacityAh).toBe(200);
});

describe('batteries joined', () => {
  test.for<
    [
      says: string,
      batteries: Battery[],
      how: 'parallel' | 'series' | undefined,
      system: number | undefined,
      want: Joined,
    ]
  >([
    ['one 100 Ah AGM', many(1, { capacityAh: 100, chemistry: 'agm' }), undefined, undefined, [100, 12]],
    [
      'two in parallel add amp hours',
      many(2, { capacityAh: 100, chemistry: 'agm' }),
      'parallel',
      undefined,
      [200, 12],
    ],
    [
      'two in series add volts',
      many(2, { capacityAh: 100, chemistry: 'agm' }),
      'series',
      undefined,
      [100, 24],
    ],
    [
      'two without a word are in parallel',
      many(2, { capacityAh: 120, chemistry: 'lfp' }),
      undefined,
      undefined,
      [240, 12.8],
    ],
    [
      'two lithium for 24 V',
      many(2, { capacityAh: 120, chemistry: 'lfp', voltageV: 12 }),
      undefined,
      24,
      [120, 25.6],
    ],
    [
      'two 6 V golf-cart batteries are meant for 12 V',
      many(2, { capacityAh: 225, voltageV: 6, chemistry: 'flooded' }),
      undefined,
      undefined,
      [225, 12],
    ],
    [
      'four 6 V: two strings',
      many(4, { capacityAh: 225, voltageV: 6, chemistry: 'agm' }),
      undefined,
      undefined,
      [450, 12],
    ],
    [
      'four 6 V in one string',
      many(4, { capacityAh: 225, voltageV: 6, chemistry: 'agm' }),
      'series',
      undefined,
      [225, 24],
    ],
    [
      'two 6 V in parallel stay 6 V',
      many(2, { capacityAh: 225, voltageV: 6, chemistry: 'agm' }),
      'parallel',
      undefined,
      [450, 6],
    ],
    [
      'four lithium cells',
      many(4, { capacityAh: 280, voltageV: 3.2, chemistry: 'lfp' }),
      undefined,
      undefined,
      [280, 12.8],
    ],
    [
      'four 12 V for 24 V: two strings',
      many(4, { capacityAh: 100, chemistry: 'agm' }),
      'series',
      24,
      [200, 24],
    ],
    ['three 12 V cannot make 24 V', many(3, { capacityAh: 100, chemistry: 'agm' }), undefined, 24, [300, 12]],
    [
      'a 24 V battery',
      many(1, { capacityAh: 100, voltageV: 24, chemistry: 'agm' }),
      undefined,
      undefined,
      [100, 24],
    ],
    ['a power station of 1,024 Wh', many(1, { energyWh: 1024 }), undefined, undefined, [80, 12.8]],
    [
      'a power bank: 20 Ah at 3.7 V',
      many(1, { capacityAh: 20, voltageV: 3.7 }),
      undefined,
      undefined,
      [74 / 12.8, 12.8],
    ],
    [
      'Ah go before Wh where both are told',
      many(1, { capacityAh: 100, energyWh: 5000, chemistry: 'agm' }),
      undefined,
      undefined,
      [100, 12],
    ],
    [
      'unlike in series: the smaller counts',
      [...many(1, { capacityAh: 80 }), ...many(1, { capacityAh: 100 })],
      'series',
      undefined,
      [80, 24],
    ],
  ])('%s', ([, batteries, how, system, [ah, v]]) => {
    const bank = present(bankOf(batteries, how, system));
    expect(bank.capacityAh).toBeCloseTo(ah, 9);
    expect(bank.voltageV).toBeCloseTo(v, 9);
  });

  test('energy is the same in series and in parallel', () => {
    const two = many(2, { capacityAh: 105, chemistry: 'gel' });
    const [a, b] = [present(bankOf(two, 'parallel')), present(bankOf(two, 'series'))];
    expect(a.capacityAh * a.voltageV).toBeCloseTo(b.capacityAh * b.voltageV, 9);
  });

  test('no size, no bank', () => {
    expect(bankOf([])).toBeUndefined();
    expect(bankOf(many(1, { chemistry: 'agm' }))).toBeUndefined();
    expect(bankOf(many(1, { capacityAh: 0 }))).toBeUndefined();
  });

  test('AGM is taken where nobody says, lithium for a pack told in Wh', () => {
    expect(bankOf(many(1, { capacityAh: 100 }))).toMatchObject({
      chemistry: 'agm',
      isChemistryAssumed: true,
    });
    expect(bankOf(many(1, { energyWh: 500 }))).toMatchObject({ chemistry: 'lfp', isChemistryAssumed: true });
    expect(bankOf(many(1, { capacityAh: 100, chemistry: 'gel' }))).toMatchObject({
      isChemistryAssumed: false,
    });
  });

  test('unlike type or size is noticed, alike is not', () => {
    const mixed = (a: Partial<Battery>, b: Partial<Battery>) =>
      present(bankOf([...many(1, { capacityAh: 100, ...a }), ...many(1, { capacityAh: 100, ...b })])).isMixed;
    expect(mixed({ chemistry: 'agm' }, { chemistry: 'lfp' })).toBe(true);
    expect(mixed({}, { capacityAh: 80 })).toBe(true);
    expect(mixed({}, {})).toBe(false);
  });

  test('the starter battery is left out of the house bank, and alone it counts', () => {
    const starter = many(1, { capacityAh: 70, role: 'starter' });
    expect(present(bankOf([...many(1, { capacityAh: 100 }), ...starter])).capacityAh).toBe(100);
    expect(present(bankOf(starter)).capacityAh).toBe(70);
  });
});

describe('what they are as one', () => {
  const of = (...batteries: (Partial<Battery> & { readonly count?: number })[]) =>
    present(bankOf(batteries.map(battery => ({ count: 1, ...battery }))));
  const pack = { capacityAh: 20, voltageV: 3.7, isOfCell: true } as const;

  test('series as told goes before the volts of the system', () => {
    const two = many(2, { capacityAh: 100, chemistry: 'agm' });
    expect(present(bankOf(two, 'series', 12))).toMatchObject({ capacityAh: 100, voltageV: 24, inSeries: 2 });
    expect(present(bankOf(two, 'parallel', 24))).toMatchObject({ inSeries: 2, voltageV: 24 });
    expect(present(bankOf(two, undefined, 12))).toMatchObject({ capacityAh: 200, voltageV: 12, inSeries: 1 });
    // Three make no equal strings of two.
    const three = many(3, { capacityAh: 100, chemistry: 'agm' });
    expect(present(bankOf(three, undefined, 24))).toMatchObject({ capacityAh: 300, voltageV: 12 });
    expect(present(bankOf(three, 'series', 24))).toMatchObject({ capacityAh: 100, voltageV: 36 });
  });

  test('a 12 V and a 6 V one in series are 18 V, and the smaller one’s Ah', () => {
    const unlike = [
      ...many(1, { capacityAh: 100, chemistry: 'agm', voltageV: 12 }),
      ...many(1, { capacityAh: 80, chemistry: 'agm', voltageV: 6 }),
    ];
    expect(present(bankOf(unlike, 'series'))).toMatchObject({ voltageV: 18, capacityAh: 80, isMixed: true });
  });

  test('a power bank is one alone: beside a battery it is a part of a bank', () => {
    expect(of(pack).isOfCell).toBe(true);
    expect(of(pack, { capacityAh: 100, chemistry: 'agm' })).not.toHaveProperty('isOfCell');
  });

  test('without its kind a battery is AGM, a pack told in Wh or of cells lithium; a kind that is told goes for all', () => {
    expect(of({ capacityAh: 100 })).toMatchObject({ chemistry: 'agm', isChemistryAssumed: true });
    expect(of({ energyWh: 1024 })).toMatchObject({
      chemistry: 'lfp',
      isChemistryAssumed: true,
      capacityAh: 80,
    });
    expect(of(pack)).toMatchObject({ chemistry: 'lfp', isChemistryAssumed: true });
    expect(of({ capacityAh: 100 }, { capacityAh: 100, chemistry: 'gel' })).toMatchObject({
      chemistry: 'gel',
      isChemistryAssumed: false,
      isMixed: false,
    });
    expect(of({ energyWh: 1200, chemistry: 'agm' })).toMatchObject({ chemistry: 'agm', capacityAh: 100 });
  });

  test('the level of the one that was told, the age of the oldest, tired before old', () => {
    expect(of({ capacityAh: 100 }, { capacityAh: 100, stateOfChargePercent: 0 }).stateOfChargePercent).toBe(
      0,
    );
    expect(of({ capacityAh: 100, ageYears: 2 }, { capacityAh: 100, ageYears: 5 }).ageYears).toBe(5);
    expect(of({ capacityAh: 100, ageYears: 0 }).ageYears).toBe(0);
    expect(of({ capacityAh: 100, wear: 'old' }, { capacityAh: 100, wear: 'tired' }).wear).toBe('tired');
    expect(of({ capacityAh: 100, wear: 'old' }, { capacityAh: 100 }).wear).toBe('old');
    expect(of({ capacityAh: 100 })).not.toHaveProperty('ageYears');
    expect(of({ capacityAh: 100 })).not.toHaveProperty('wear');
  });

  test('of no size there is no bank', () => {
    expect(bankOf([{ count: 1, capacityAh: 0 }])).toBeUndefined();
    expect(bankOf([{ count: 1 }])).toBeUndefined();
    expect(bankOf([])).toBeUndefined();
    expect(present(bankOf([{ count: 1 }, { count: 2, capacityAh: 50 }])).count).toBe(2);
  });
});

describe('the most that they may give together', () => {
  const of = (count: number, maxCurrentA?: number): Battery => ({
    count,
    capacityAh: 100,
    chemistry: 'lfp',
    maxCurrentA,
  });
  test.for<[says: string, batteries: Battery[], how: 'parallel' | 'series', limitA: number | undefined]>([
    ['one', [of(1, 100)], 'parallel', 100],
    ['two alike in parallel add up', [of(2, 100)], 'parallel', 200],
    ['so they do told one by one', [of(1, 100), of(1, 100)], 'parallel', 200],
    ['the weakest of three is at its limit first', [of(2, 100), of(1, 50)], 'parallel', 150],
    ['two alike in series: the same current goes through both', [of(2, 100)], 'series', 100],
    ['so it does told one by one', [of(1, 100), of(1, 100)], 'series', 100],
    ['in series the weaker one counts', [of(1, 100), of(1, 50)], 'series', 50],
    ['one of two told in series: no more than that', [of(1, 100), of(1)], 'series', 100],
    ['one of two told in parallel: the other adds nothing', [of(1, 100), of(1)], 'parallel', 100],
    ['none told', [of(2)], 'parallel', undefined],
  ])('%s', ([, batteries, how, limitA]) => {
    expect(present(bankOf(batteries, how)).maxCurrentA).toBe(limitA);
  });

  test('four for 24 V are two strings', () => {
    expect(present(bankOf([of(4, 100)], undefined, 24))).toMatchObject({ maxCurrentA: 200, voltageV: 25.6 });
  });
});

test.for<[told: number | undefined, kind: 'agm' | 'lfp', volts: number]>([
  [undefined, 'agm', 12],
  [undefined, 'lfp', 12.8],
  [12, 'lfp', 12.8],
  [12.8, 'lfp', 12.8],
  [24, 'lfp', 25.6],
  [25.6, 'lfp', 25.6],
  [36, 'lfp', 38.4],
  [48, 'lfp', 51.2],
  [3.2, 'lfp', 3.2],
  [6, 'agm', 6],
  [12.6, 'agm', 12],
  [24, 'agm', 24],
  [2, 'agm', 2],
])('a battery told as %s V of %s has %s V nominal', ([told, kind, volts]) => {
  expect(nominalVoltage(told, kind)).toBeCloseTo(volts, 9);
});
