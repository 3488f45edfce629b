import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { chargeRow, flatPercent } from '#engine/battery/charge-table.ts';
import { absorptionVoltage } from '#engine/battery/charging.ts';
import { meanChargeV } from '#engine/battery/round-trip.ts';
import { batteryTemperature } from '#engine/battery/temperature.ts';
import { type Charge, chargeAssumptions, chargeOf, guessedBankAh } from '#engine/charging/charge.ts';
import { deratingOf, generatorAssumptions, generatorRatingW } from '#engine/charging/generator.ts';
import { dcdcSizeFor, recommendPath } from '#engine/charging/path.ts';
import { type Source, sourceAssumptions, sourceCurrentA } from '#engine/charging/source.ts';
import type { Chemistry } from '#rig/rig.ts';
import { Trace } from '#rule/trace.ts';

const likely = (list: readonly { name: string; value: number }[]) =>
  Object.fromEntries(list.map(a => [a.name, a.value]));
const ruleNames = (trace: Trace) => trace.steps.map(s => (s.kind === 'rule' ? s.rule.name : s.name));

test('where no bank was told, one of two and a half times what is missing is taken, 100 Ah at least', () => {
  expect([1, 40, 41, 60, 100].map(guessedBankAh)).toEqual([100, 100, 110, 150, 250]);
});

describe('what a charge takes for granted', () => {
  const bank = (chemistry?: Chemistry, stateOfChargePercent?: number) =>
    present(bankOf([{ count: 1, capacityAh: 100, chemistry, stateOfChargePercent }]));
  const of = (changes: Partial<Charge>) =>
    chargeAssumptions({ bank: bank('agm', 50), isSizeAssumed: false, isIsolator: false, ...changes });
  const one = (changes: Partial<Charge>, name: string) => of(changes).find(a => a.name === name);

  test('lead keeps less at the very end; up to 80 % that is no matter', () => {
    const low = { value: 0.97, low: 0.94, high: 0.985, why: 'AGM, up to 80 % full' };
    expect(one({ targetPercent: 80 }, 'chargeEfficiency')).toMatchObject(low);
    expect(one({ targetPercent: 80 }, 'topEfficiency')).toBeUndefined();
    expect(one({ targetPercent: 81 }, 'topEfficiency')).toMatchObject({ value: 0.5, low: 0.35, high: 0.75 });
    expect(one({}, 'chargeEfficiency')).toMatchObject(low);
    const lithium = { value: 0.99, why: 'lithium' };
    expect(one({ bank: bank('lfp', 20), targetPercent: 80 }, 'chargeEfficiency')).toMatchObject(lithium);
    expect(one({ bank: bank('lfp', 20) }, 'chargeEfficiency')).toMatchObject(lithium);
    expect(present(one({ bank: bank() }, 'chargeEfficiency')).why).toMatch(/^AGM, as you didn't say/);
  });

  test('an age told counts: less to fill, and more slowly; a temperature taken is never frost for lithium', () => {
    const old = { ...bank('agm', 50), ageYears: 5 };
    expect(one({ bank: old }, 'age')).toMatchObject({ value: 0.8 });
    const charge: Charge = { bank: old, isSizeAssumed: false, isIsolator: false };
    const values = likely(chargeAssumptions(charge));
    expect(chargeOf(charge, 20, values).neededAh).toBeCloseTo(
      0.8 * chargeOf({ ...charge, bank: bank('agm', 50) }, 20, { ...values, age: 1 }).neededAh,
      9,
    );
    const temperature = batteryTemperature({ latitudeDeg: 62, longitudeDeg: 25, month: 1 }, 'outside');
    expect(one({ temperature }, 'batteryTemperature')).toEqual(temperature);
    expect(one({ bank: bank('lfp', 50), temperature }, 'batteryTemperature')).toMatchObject({ low: 0 });
    expect(one({ temperature, temperatureC: 5 }, 'batteryTemperature')).toBeUndefined();
  });

  test('on an isolator the last part takes half as long again', () => {
    expect(one({}, 'timeConstant')).toMatchObject({ value: 1.2, low: 0.9, high: 1.8 });
    expect(one({ isIsolator: true }, 'timeConstant')).toMatchObject({
      value: expect.closeTo(1.8, 9),
      low: expect.closeTo(1.35, 9),
      high: expect.closeTo(2.7, 9),
    });
    expect(present(one({ isIsolator: true }, 'timeConstant')).why).toMatch(/alternator/);
  });

  test('a level only where neither it nor the missing charge is told; a size only where it is a guess', () => {
    const names = (changes: Partial<Charge>) => of(changes).map(a => a.name);
    const base = ['chargeEfficiency', 'topEfficiency', 'timeConstant', 'fullAt'];
    expect(names({})).toEqual(base);
    expect(names({ missingAh: 20 })).toEqual(base);
    expect(names({ bank: bank('agm'), missingAh: 20 })).toEqual(base);
    expect(names({ bank: bank('agm') })).toEqual([...base, 'stateOfCharge']);
    expect(names({ isSizeAssumed: true })).toEqual([...base, 'batteryCapacity']);
    expect(one({ isSizeAssumed: true }, 'batteryCapacity')).toMatchObject({ value: 100, low: 80, high: 200 });
  });

  test('told Ah and a told level: from that level', () => {
    const charge: Charge = { bank: bank('lfp', 40), missingAh: 30, isSizeAssumed: false, isIsolator: false };
    const values = likely(chargeAssumptions(charge));
    expect(chargeOf(charge, 20, values).startPercent).toBeCloseTo(40, 9);
    const unknown = { ...charge, bank: bank('lfp') };
    expect(chargeOf(unknown, 20, values).startPercent).toBeCloseTo(70, 9);
  });

  test('a size that is moved takes more', () => {
    const charge: Charge = { bank: bank('lfp', 20), isSizeAssumed: true, isIsolator: false };
    const values = likely(chargeAssumptions(charge));
    const { neededAh } = chargeOf(charge, 20, values);
    expect(chargeOf(charge, 20, { ...values, batteryCapacity: 200 }).neededAh).toBeCloseTo(2 * neededAh, 9);
  });

  test('told flat: from a level near nothing', () => {
    const [flat] = of({ bank: bank('lfp'), isFlat: true }).filter(a => a.name === 'stateOfCharge');
    expect(flat).toMatchObject({ value: flatPercent[0], unit: '%', why: 'flat, as you said' });
    expect(of({ bank: bank('lfp', 20), isFlat: true }).map(a => a.name)).not.toContain('stateOfCharge');
  });

  describe('an amount put back into a battery of no told size', () => {
    const back = (changes: Partial<Charge> = {}): Charge => ({
      bank: bank('agm'),
      missingAh: 30,
      isSizeAssumed: true,
      isIsolator: false,
      ...changes,
    });
    const names = (charge: Charge) => chargeAssumptions(charge).map(a => a.name);
    const hours = (charge: Charge, amps: number, moved = {}) =>
      chargeOf(charge, amps, { ...likely(chargeAssumptions(charge)), ...moved }).timeH;

    test('its slow last part is an assumption of its own, only there', () => {
      expect(names(back())).toContain('slowPart');
      expect(chargeAssumptions(back()).find(a => a.name === 'slowPart')).toMatchObject({
        value: 0,
        low: 0,
        high: 1,
        unit: '',
      });
      expect(names(back({ targetPercent: 90 }))).not.toContain('slowPart');
      expect(names(back({ isSizeAssumed: false }))).not.toContain('slowPart');
      expect(names(back({ missingAh: undefined }))).not.toContain('slowPart');
    });

    test('30 Ah at 10 A: what is put in over the current, and up to the time to the brim', () => {
      // It ends where chargers stop, at 97 %: 13 Ah at 97 %, then 17 Ah at less and less.
      const inAh = 13 / 0.97 + (20 / 0.47) * Math.log(0.97 / (0.5 + (0.47 * 3) / 20));
      const steady = inAh / 10;
      const brim = hours(back({ isSizeAssumed: false }), 10);
      expect(brim).toBeGreaterThan(steady);
      expect(hours(back(), 10)).toBeCloseTo(steady, 9);
      expect(hours(back(), 10, { slowPart: 1 })).toBeCloseTo(brim, 9);
      expect(hours(back(), 10, { slowPart: 0.5 })).toBeCloseTo((steady + brim) / 2, 9);
    });

    test('a small current is as long to the brim, which calls itself full a little early', () => {
      // 1 A: the steady part alone is longer than the time to 97 %.
      const brim = hours(back({ isSizeAssumed: false }), 1);
      expect(brim).toBeLessThan(36.1);
      expect(hours(back(), 1)).toBeCloseTo(brim, 9);
    });
  });

  test('absorption of two in series is twice as high', () => {
    const two = (chemistry: Chemistry) =>
      present(bankOf([{ count: 2, capacityAh: 100, chemistry }], 'series'));
    expect(absorptionVoltage(two('gel'))).toBeCloseTo(28.4, 9);
    expect(absorptionVoltage(two('lfp'))).toBeCloseTo(28.8, 9);
    expect(absorptionVoltage(bank('lead-acid'))).toBe(absorptionVoltage(bank('agm')));
  });
});

describe('sources', () => {
  const source = (changes: Partial<Source>): Source => ({
    kind: 'mains',
    row: chargeRow('agm'),
    blocks: 1,
    ...changes,
  });
  const names = (changes: Partial<Source>) => sourceAssumptions(source(changes)).map(a => a.name);
  const one = (changes: Partial<Source>, name: string) =>
    sourceAssumptions(source(changes)).find(a => a.name === name);

  test('what is taken for granted, by what is told', () => {
    expect(names({ currentA: 20 })).toEqual(['chargerOutput']);
    expect(names({ powerW: 300 })).toEqual(['chargerOutput', 'chargeVoltage']);
    expect(names({ powerW: 300, currentA: 20 })).toEqual(['chargerOutput']);
    expect(names({ kind: 'isolator', currentA: 140, alternator: 'fixed' })).toEqual(['chargerCurrent']);
    expect(names({ kind: 'isolator' })).toEqual(['chargerCurrent', 'alternatorShare']);
    expect(names({ kind: 'dcdc', alternator: 'smart' })).toEqual(['chargerCurrent']);
    expect(names({ generatorW: 1000 })).toEqual([
      'chargerCurrent',
      'continuousShare',
      'chargerEfficiency',
      'powerFactor',
    ]);
  });

  test('an isolator’s share of the driving', () => {
    const unknown = present(one({ kind: 'isolator' }, 'alternatorShare'));
    expect(unknown).toMatchObject({ value: 1, low: 0.6, high: 1, why: expect.stringMatching(/less with/) });
    const smart = present(one({ kind: 'isolator', alternator: 'smart' }, 'alternatorShare'));
    expect(smart).toMatchObject({ value: 0.5, low: 0.2, high: 1, why: expect.stringMatching(/drops out/) });
  });

  test('volts of a charge by the blocks of the bank', () => {
    const [value, low, high] = meanChargeV('agm').map(v => 2 * v);
    expect(one({ powerW: 300, blocks: 2 }, 'chargeVoltage')).toMatchObject({ value, low, high, unit: 'V' });
    expect(Math.abs(present(value) - 27.6)).toBeLessThan(0.4);
  });

  test('a whole alternator needs no share in the working', () => {
    const working = (changes: Partial<Source>) => {
      const trace = new Trace();
      const s = source(changes);
      sourceCurrentA(s, likely(sourceAssumptions(s)), trace);
      return ruleNames(trace);
    };
    expect(working({ kind: 'isolator' })).toEqual([]);
    expect(working({ kind: 'isolator', alternator: 'smart' })).toEqual(['outputCurrent']);
    expect(working({ currentA: 20 })).toEqual(['outputCurrent']);
    expect(working({ powerW: 300 })).toEqual(['chargerCurrent', 'outputCurrent']);
    // 20 A at 14.4 V are 288 W, 414 VA from the generator.
    expect(working({ currentA: 20, generatorW: 600 })).toEqual(['outputCurrent']);
    const limited = ['outputCurrent', 'continuousPower', 'generatorCurrent'];
    expect(working({ currentA: 20, generatorW: 400 })).toEqual(limited);
    expect(working({ currentA: 20, generatorW: 600, blocks: 2 })).toEqual(limited);
  });

  test('a generator counts at the bank’s own volts', () => {
    const amps = (blocks: number) => {
      const s = source({ currentA: 50, generatorW: 600, blocks });
      return sourceCurrentA(s, likely(sourceAssumptions(s)));
    };
    expect(amps(2)).toBeCloseTo(amps(1) / 2, 9);
    expect(amps(2)).toBeCloseTo((600 * 0.85 * 0.87 * 0.8) / 28.8, 6);
    // A 600 W generator leaves a 50 A charger about half of its rating.
    expect(amps(1)).toBeCloseTo(24.65, 1);
  });
});

describe('a generator, at its edges', () => {
  const none = { chargerA: 0, chargeV: 14.4, loadW: 0, startW: 0 };
  const values: Record<string, number> = { ...likely(generatorAssumptions({})), startFactor: 2 };
  const working = (duty: object, site: object, v = values) => {
    const trace = new Trace();
    const ratingW = generatorRatingW({ ...none, ...duty }, site, v, trace);
    return { ratingW, names: ruleNames(trace) };
  };

  test('height counts from 300 m up', () => {
    expect(generatorAssumptions({ altitudeM: 300 })).toHaveLength(2);
    const [, , share] = generatorAssumptions({ altitudeM: 1500 });
    expect(share).toMatchObject({ name: 'altitudeShare', value: 0.825, low: 0.825, high: 0.97 });
  });

  test('heat is told from 40 °C up, and never takes more than seven tenths', () => {
    expect(working({ chargerA: 20 }, { ambientC: 40 }).names).toEqual(['chargerInput']);
    expect(working({ chargerA: 20 }, { ambientC: 45 }).names).toEqual([
      'chargerInput',
      'heatFactor',
      'ratingNeeded',
    ]);
    expect(deratingOf({ ambientC: 300 }, { altitudeShare: 0.1 })).toEqual({ f_z: 0.3, f_T: 0.3 });
    expect(deratingOf({}, {})).toEqual({ f_z: 1, f_T: 1 });
  });

  test('a charger alone at the sea needs one line; with loads or height the sum is told', () => {
    expect(working({ chargerA: 20 }, {}).names).toEqual(['chargerInput']);
    expect(working({ chargerA: 20, loadW: 100, startW: 100 }, {}).names).toEqual([
      'chargerInput',
      'ratingNeeded',
    ]);
    expect(working({ chargerA: 20 }, {}, { ...values, altitudeShare: 0.9 }).names).toEqual([
      'chargerInput',
      'ratingNeeded',
    ]);
    expect(working({ loadW: 100, startW: 100 }, {}).names).toEqual(['ratingNeeded']);
    expect(working({ loadW: 100, startW: 400 }, {}).names).toEqual([
      'apparentPower',
      'startRating',
      'ratingNeeded',
    ]);
  });

  test('a start is shared by what a generator stands for a moment', () => {
    const duty = { loadW: 500, startW: 4000 };
    expect(working(duty, {}).ratingW).toBeCloseTo(2000, 9);
    expect(working(duty, {}, { ...values, startFactor: 1.6 }).ratingW).toBeCloseTo(2500, 9);
    const { startFactor: _, ...without } = values;
    expect(generatorRatingW({ ...none, ...duty }, {}, without)).toBeCloseTo(2000, 9);
    // With the charger on it the charger's share counts too: (662 + 4000) / 2.
    const charger = (32 * 14.4) / 0.87 / 0.8;
    expect(working({ ...duty, chargerA: 32 }, {}).ratingW).toBeCloseTo((charger + 4000) / 2, 6);
  });
});

describe('the whole list of reasons', () => {
  test.for<[about: Parameters<typeof recommendPath>[0], reasons: string[]]>([
    [{ house: 'agm', alternator: 'fixed', lengthM: 2 }, ['fixed-alternator', 'same-kind', 'short-run']],
    [{ house: 'agm', alternator: 'fixed', lengthM: 4 }, ['fixed-alternator', 'same-kind', 'short-run']],
    [{ house: 'agm', alternator: 'fixed' }, ['fixed-alternator', 'same-kind']],
    [{ alternator: 'fixed' }, ['fixed-alternator']],
    [{ alternator: 'fixed', lengthM: 2 }, ['fixed-alternator', 'short-run']],
    [{ house: 'agm', starter: 'lfp', alternator: 'fixed' }, ['fixed-alternator']],
    [{ house: 'lfp', starter: 'lfp', alternator: 'fixed' }, ['fixed-alternator', 'same-kind']],
    [{ house: 'agm', alternator: 'fixed', hasSolar: true }, ['fixed-alternator', 'same-kind']],
    [{ house: 'gel', alternator: 'fixed', lengthM: 2 }, ['unlike-lead']],
    [{ house: 'lfp', alternator: 'smart', lengthM: 9 }, ['lithium', 'smart-alternator', 'long-run']],
    [{ house: 'agm' }, ['alternator-unknown']],
    [{ house: 'agm', lengthM: 2 }, ['alternator-unknown']],
    [{ house: 'lfp' }, ['lithium']],
    [{ house: 'lfp', hasSolar: true }, ['lithium', 'solar-input']],
    [{ hasSolar: false }, ['alternator-unknown']],
  ])('%j', ([about, reasons]) => {
    expect(recommendPath(about).reasons).toEqual(reasons);
  });

  test('no charger beyond what its kind stands, nor beyond those sold', () => {
    const size = (capacityAh: number, chemistry: Chemistry) =>
      dcdcSizeFor(present(bankOf([{ count: 1, capacityAh, chemistry }])));
    expect([size(400, 'lfp'), size(160, 'agm'), size(80, 'gel'), size(10, 'lfp')]).toEqual([60, 40, 15, 10]);
  });
});

test('a battery above where chargers stop, by its volts, takes no more and gives nothing back', () => {
  const bank = present(bankOf([{ count: 1, capacityAh: 100, chemistry: 'agm' }]));
  const level = {
    name: 'stateOfCharge',
    value: 99,
    low: 95,
    high: 100,
    unit: '%',
    why: 'by its volts',
  } as const;
  const charge = { bank, isSizeAssumed: false, isIsolator: false, level };
  const { neededAh, timeH } = chargeOf(charge, 20, likely(chargeAssumptions(charge)));
  expect(neededAh).toBe(0);
  expect(timeH).toBe(0);
});
