import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { batteryBank } from '#intents/battery-bank/intent.ts';
import { batterySize } from '#intents/battery-size/intent.ts';
import { batteryType } from '#intents/battery-type/intent.ts';
import { chargeLevel } from '#intents/charge-level/intent.ts';
import { convert } from '#intents/convert/intent.ts';
import { energyBudget } from '#intents/energy-budget/intent.ts';
import type { Intent, RequestContext } from '#intents/intent.ts';
import { runTime } from '#intents/run-time/intent.ts';
import { starterReserve } from '#intents/starter-reserve/intent.ts';
import type { Conversion, ParsedMessage } from '#language/reading.ts';
import type { Cue } from '#language/words/en/cues.ts';
import type { Battery, Facts, Load } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const dc = (name: string, rest: Partial<Load> = {}): Load => ({ name, count: 1, supply: 'dc', ...rest });
const battery = (rest: Partial<Battery>): Battery => ({ count: 1, ...rest });
const agm = (capacityAh: number) => battery({ capacityAh, chemistry: 'agm' });
const lfp = (capacityAh: number) => battery({ capacityAh, chemistry: 'lfp' });
const fridge = dc('fridge', { currentA: 1 });

/** Facts through the needs into a reply, as a conversation does it. */
function reply(
  intent: Intent,
  facts: Facts,
  said: Partial<ParsedMessage> = {},
  setting: Partial<RequestContext> = {},
) {
  const checked = intent.needs.parse(facts);
  return intent.reply(checked, settingWith(setting, said));
}
const lacks = (intent: Intent, facts: Facts) =>
  intent.needs.safeParse(facts).error?.issues.map(issue => issue.message) ?? [];
const value = (of: ReturnType<typeof reply>, name: string) => of.figures?.[name]?.value;
const cues = (...list: Cue[]): Partial<ParsedMessage> => ({ cues: new Set(list) });
const whole = (of: ReturnType<typeof reply>) => [of.headline, ...(of.lines ?? [])].join('\n');

describe('how long', () => {
  const intent = runTime as Intent;

  test('the trade’s exact sum: 1 A on 100 Ah AGM is 50 h, and its verdicts', () => {
    const facts = { loads: [fridge], batteries: [agm(100)] };
    expect(value(reply(intent, facts), 'runTime')).toBeCloseTo(50, 9);
    expect(reply(intent, { ...facts, durationH: 24 }).verdict).toBe('yes');
    expect(reply(intent, { ...facts, durationH: 48 }).verdict).toBe('tight');
    expect(reply(intent, { ...facts, durationH: 96 }).verdict).toBe('no');
    expect(whole(reply(intent, { ...facts, durationH: 96 }))).toMatch(/about 195 Ah of battery/);
  });

  test('what is missing is asked for', () => {
    expect(lacks(intent, { loads: [fridge] })[0]).toMatch(/battery/);
    expect(lacks(intent, { batteries: [agm(100)] })[0]).toMatch(/what runs/);
    expect(lacks(intent, { loads: [fridge], batteries: [agm(0)] })).toHaveLength(1);
  });

  test.for<[says: string, load: Load, more: Facts, note: RegExp]>([
    [
      'a compressor',
      dc('fridge', { powerW: 45 }),
      {},
      /took 45 W as the fridge’s draw while it runs, about 35 % of the time at 25 °C\. .*“fridge averages 45 W”\.$/m,
    ],
    ['in the heat', dc('fridge', { powerW: 45 }), { ambientC: 43 }, /about 78 % of the time at 43 °C/],
    [
      'a freezer',
      dc('freezer', { currentA: 4 }),
      {},
      /took 4 A as the freezer’s draw while it runs, about 50 % of the time at 25 °C/,
    ],
    [
      'so much that it may be a three-way one',
      dc('fridge', { currentA: 8 }),
      {},
      /all the time, so that is its average.*gas/,
    ],
    [
      'a three-way one, as told',
      dc('fridge', { currentA: 12, isAverage: true }),
      {},
      /12 V is for the drive; parked/,
    ],
  ])('how the draw was taken: %s', ([, load, more, note]) => {
    expect(whole(reply(intent, { loads: [load], batteries: [agm(100)], ...more }))).toMatch(note);
  });

  test.for<[says: string, load: Load]>([
    ['a big compressor', dc('fridge', { currentA: 7.9 })],
    ['a big freezer', dc('freezer', { powerW: 150 })],
    ['one on mains', { ...dc('fridge', { powerW: 150 }), supply: 'ac' }],
    ['a pump', dc('water pump', { currentA: 10 })],
  ])('no word of three-way fridges for %s', ([, load]) => {
    expect(whole(reply(intent, { loads: [load], batteries: [agm(100)] }))).not.toMatch(/three-way/);
  });

  test('a draw beyond the battery is warned of', () => {
    const heavy = reply(intent, { loads: [dc('winch', { currentA: 150 })], batteries: [agm(100)] });
    expect(heavy.cautions).toContain('big-current');
    expect(whole(heavy)).toMatch(/150 A, more than that battery should give/);
    expect(heavy.headline).toMatch(/minutes/);
  });

  test('how the draw of a fridge was taken is said where it may be either', () => {
    const text = whole(reply(intent, { loads: [dc('fridge', { powerW: 50 })], batteries: [agm(100)] }));
    expect(text).toMatch(/took .* as the fridge’s draw while it runs/);
    expect(text).toMatch(/say “fridge averages 50 W”/);
  });

  describe('whose', () => {
    const rigs = {
      robin: { loads: [dc('fridge', { currentA: 0.8 })], batteries: [agm(80)] },
      seb: { loads: [dc('fridge', { currentA: 1.6 })], batteries: [lfp(60)] },
      '': { place: 'the beach' },
    };

    test('goes first: the shortest is named on top, the asker’s is the figure', () => {
      const one = reply(intent, rigs.robin, cues('ask-whose'), { rigs });
      expect(one.headline).toMatch(/^Seb's gives out first/);
      expect(value(one, 'runTime')).toBeCloseTo(50, 9);
    });

    test('makes a time, of those named', () => {
      const said = { ...cues('ask-how-long'), owners: ['me', 'seb'] };
      const at = (durationH: number) => reply(intent, { ...rigs.robin, durationH }, said, { rigs }).headline;
      expect(at(48)).toBe("Yours makes 2 days, Seb's doesn't.");
      expect(at(12)).toMatch(/^All can make 12 hours/);
      expect(at(240)).toMatch(/^None makes 10 days/);
    });

    test('one rig alone is no comparison', () => {
      const one = reply(intent, rigs.robin, cues('ask-whose'), { rigs: { robin: rigs.robin } });
      expect(one.headline).toMatch(/^It lasts/);
    });
  });
});

describe('what battery', () => {
  const intent = batterySize as Intent;

  test('need over depth: 4 days of 24 Ah are 192 Ah of AGM or 120 of lithium', () => {
    const both = reply(intent, { loads: [fridge], durationH: 96 });
    expect(value(both, 'batteryCapacity')).toBeCloseTo(192, 9);
    expect(both.headline).toMatch(/190 Ah of AGM for 4 days.*120 Ah of lithium/);
    const one = reply(intent, { loads: [fridge], durationH: 96, batteries: [battery({ chemistry: 'lfp' })] });
    expect(value(one, 'batteryCapacity')).toBeCloseTo(120, 9);
    expect(one.headline).toMatch(/next usual size, 120 Ah/);
  });

  test('no time told: two days, and that is said; a night: one', () => {
    const two = reply(intent, { loads: [fridge] });
    expect(value(two, 'batteryCapacity')).toBeCloseTo(96, 9);
    expect(two.assumed?.[0]).toMatchObject({ name: 'durationH', value: 2, unit: 'days' });
    const lamp = dc('lamp', { currentA: 1, hoursPerDay: 10 });
    expect(value(reply(intent, { loads: [lamp] }, cues('night')), 'batteryCapacity')).toBeCloseTo(20, 9);
    expect(value(reply(intent, { loads: [lamp, fridge] }, cues('night')), 'batteryCapacity')).toBeCloseTo(
      136,
      9,
    );
  });

  test('at 24 V it takes half the amp hours', () => {
    const lights = [dc('light', { powerW: 24, hoursPerDay: 5 })];
    const at = (systemVoltageV: number) =>
      Number(value(reply(intent, { loads: lights, durationH: 48, systemVoltageV }), 'batteryCapacity'));
    expect(at(24)).toBeCloseTo(at(12) / 2, 9);
  });

  test('the cold asks for more, by IEEE 485', () => {
    const at = (ambientC: number) =>
      Number(value(reply(intent, { loads: [fridge], durationH: 48, ambientC }), 'batteryCapacity'));
    expect(at(10)).toBeCloseTo(1.19 * at(25), 9);
  });

  test('the battery there is, sun and big draws get a word', () => {
    const own = reply(intent, { loads: [fridge], durationH: 96, batteries: [agm(100)] });
    expect(whole(own)).toMatch(/Your 100 Ah falls short/);
    expect(whole(reply(intent, { loads: [fridge], durationH: 96, solarAhPerDay: 12 }))).toMatch(
      /about 96 Ah/,
    );
    expect(
      whole(reply(intent, { loads: [fridge], durationH: 96, solar: [{ count: 1, powerW: 100 }] })),
    ).toMatch(/Nothing coming in is counted/);
    const coffee = dc('coffee machine', { powerW: 1000, supply: 'ac', minutesPerDay: 10 });
    const big = reply(intent, { loads: [coffee], batteries: [battery({ chemistry: 'lfp' })] });
    expect(whole(big)).toMatch(/draws about \d+ A/);
    expect(big.cautions).toContain('big-current');
  });

  test('one day of lead-acid is pointed at years of days', () => {
    const text = whole(
      reply(intent, { loads: [fridge], durationH: 24, batteries: [battery({ chemistry: 'agm' })] }),
    );
    expect(text).toMatch(/about 80 Ah would last for more years/);
  });
});

describe('a day’s use', () => {
  const intent = energyBudget as Intent;

  test('Ah and Wh, biggest first', () => {
    const loads = [
      dc('lamp', { currentA: 0.5, hoursPerDay: 4 }),
      fridge,
      dc('pump', { currentA: 6, hoursPerDay: 0.5 }),
    ];
    const one = reply(intent, { loads });
    expect(value(one, 'dailyUse')).toBeCloseTo(29, 9);
    expect(value(one, 'dailyEnergy')).toBeCloseTo(348, 9);
    expect(one.lines?.[0]).toBe('Fridge 24 Ah, pump 3 Ah, lamp 2 Ah.');
    expect(one.lines?.[1]).toMatch(/took 1 A as the fridge’s average\./);
    const heater = dc('heater', { currentA: 1, hoursPerDay: 24 });
    const warm = reply(intent, { loads: [heater, present(loads[0]), present(loads[2])] });
    expect(warm.lines?.join('\n')).toMatch(/heater alone takes 83 %/);
  });

  test('with a battery: how long it carries that', () => {
    const text = whole(reply(intent, { loads: [fridge], batteries: [agm(96)] }));
    expect(text).toMatch(/about 2 days/);
  });
});

describe('a bank', () => {
  const intent = batteryBank as Intent;
  test.for<[batteries: Battery[], how: 'series' | 'parallel' | undefined, headline: RegExp, usable: number]>([
    [[{ count: 2, capacityAh: 100, chemistry: 'agm' }], 'parallel', /^2 in parallel: 200 Ah at 12 V/, 100],
    [
      [{ count: 2, capacityAh: 120, chemistry: 'lfp' }],
      'series',
      /^2 in series: 120 Ah at 24 V \(25\.6 V/,
      96,
    ],
    [
      [{ count: 4, capacityAh: 225, voltageV: 6, chemistry: 'agm' }],
      undefined,
      /^2 strings of 2 in series: 450 Ah at 12 V/,
      225,
    ],
    [[agm(100)], undefined, /^One battery: 100 Ah/, 50],
  ])('%j %s', ([batteries, arrangement, headline, usable]) => {
    const one = reply(intent, { batteries, arrangement });
    expect(one.headline).toMatch(headline);
    expect(value(one, 'usableCapacity')).toBeCloseTo(usable, 9);
    const volts = one.working?.().find(step => step.name === 'bankVolts');
    expect(volts?.value).toBe(value(one, 'bankVoltage'));
  });

  test('unlike batteries are warned of', () => {
    expect(reply(intent, { batteries: [agm(100), lfp(100)] }).cautions).toContain('mixed-batteries');
  });
});

describe('AGM or lithium', () => {
  const intent = batteryType as Intent;

  test('without a size 100 Ah are compared, and that is said', () => {
    const one = reply(intent, {});
    expect(value(one, 'usableCapacityAgm')).toBeCloseTo(50, 9);
    expect(value(one, 'usableCapacityLfp')).toBeCloseTo(80, 9);
    expect(one.assumed?.[0]).toMatchObject({ name: 'batteryCapacity', value: 100 });
  });

  test('two named: each its own; one named: its size for both', () => {
    const two = reply(intent, {
      batteries: [battery({ count: 2, capacityAh: 75, chemistry: 'agm' }), lfp(100)],
    });
    expect(two.headline).toMatch(
      /^The 100 Ah lithium gives more: about 80 Ah \(\d+–\d+ Ah\) to use, against 75 Ah/,
    );
    expect(value(reply(intent, { batteries: [lfp(200)] }), 'usableCapacityAgm')).toBeCloseTo(100, 9);
    expect(reply(intent, { batteries: [agm(160), lfp(100)] }).headline).toMatch(/^About the same/);
    expect(reply(intent, { batteries: [agm(300), lfp(100)] }).headline).toMatch(/^The 300 Ah AGM gives more/);
  });

  test('why not all of it', () => {
    const why = whole(reply(intent, { batteries: [battery({ capacityAh: 100 })] }, cues('ask-why')));
    expect(why).toMatch(/half/);
    expect(why).toMatch(/50 % depth of discharge/);
    expect(whole(reply(intent, { batteries: [lfp(100)] }, cues('ask-why')))).toMatch(
      /^Of a 100 Ah lithium about 80 %/,
    );
  });

  test('heat gets a word where it is hot', () => {
    expect(whole(reply(intent, { ambientC: 35 }))).toMatch(/In that heat lead-acid lasts about 50 % as long/);
    expect(whole(reply(intent, { ambientC: 20 }))).not.toMatch(/heat/);
  });
});

describe('how full', () => {
  const intent = chargeLevel as Intent;

  test('rested volts give a percentage with a span', () => {
    const one = reply(intent, { volts: 12.2, batteries: [battery({ chemistry: 'flooded' })] });
    expect(value(one, 'stateOfCharge')).toBeGreaterThan(48);
    expect(value(one, 'stateOfCharge')).toBeLessThan(60);
    expect(one.headline).toMatch(/% full \(\d+–\d+ %\): 12\.2 V at rest on a wet battery/);
  });

  test.for<[says: string, facts: Facts, said: Partial<ParsedMessage>]>([
    ['14.2 V', { volts: 14.2 }, {}],
    ['13.3 V on lead', { volts: 13.3, batteries: [battery({ chemistry: 'agm' })] }, {}],
    ['told to be on charge', { volts: 12.8, voltsTaken: 'charging' }, {}],
    ['14.4 V on lithium', { volts: 14.4, batteries: [battery({ chemistry: 'lfp' })] }, {}],
  ])('%s is a charger’s voltage: no promise', ([, facts, said]) => {
    const one = reply(intent, facts, said);
    expect(one.figures).toEqual({});
    expect(whole(one)).toMatch(/being charged/);
    expect(whole(one)).toMatch(/rest/);
  });

  test('13.3 V on lithium is a resting voltage, and a poor gauge', () => {
    const one = reply(intent, { volts: 13.3, batteries: [lfp(100)] });
    expect(value(one, 'stateOfCharge')).toBeGreaterThan(60);
    expect(whole(one)).toMatch(/shunt/);
  });

  test('under load there is more in it than the volts say', () => {
    const facts = { volts: 12, batteries: [battery({ chemistry: 'agm' })] } satisfies Facts;
    const loaded = Number(value(reply(intent, { ...facts, voltsTaken: 'load' }), 'stateOfCharge'));
    expect(loaded).toBeGreaterThan(Number(value(reply(intent, facts), 'stateOfCharge')));
  });

  test('a told level gives what is left: 70 % of 100 Ah AGM are 20 Ah to use', () => {
    const one = reply(intent, {
      batteries: [battery({ capacityAh: 100, chemistry: 'agm', stateOfChargePercent: 70 })],
    });
    expect(value(one, 'stateOfCharge')).toBe(70);
    expect(one.headline).toMatch(/about 20 Ah left to use/);
  });

  test('without volts or a level it asks', () => {
    expect(lacks(intent, { batteries: [agm(100)] })).toHaveLength(1);
  });
});

describe('off the starter battery', () => {
  const intent = starterReserve as Intent;
  const lamp = dc('lamp', { currentA: 1 });

  test('27 % of 80 Ah are 21.6 h of 1 A', () => {
    const at = (durationH?: number) =>
      reply(intent, { loads: [lamp], batteries: [battery({ capacityAh: 80 })], durationH });
    expect(value(at(), 'runTime')).toBeCloseTo(21.6, 9);
    expect(at().verdict).toBeNull();
    expect(at(9).verdict).toBe('yes');
    expect(at(20).verdict).toBe('tight');
    // Past the likely reserve it is no: what a start needs is a limit.
    expect(at(22).verdict).toBe('no');
    expect(at(48).verdict).toBe('no');
    expect(at(9).cautions).toContain('starter-reserve');
  });

  test('everything told runs all the time', () => {
    const loads = [dc('fan', { currentA: 2 }), dc('lamp', { currentA: 0.5 })];
    expect(value(reply(intent, { loads, batteries: [battery({ capacityAh: 80 })] }), 'runTime')).toBeCloseTo(
      8.64,
      9,
    );
  });

  test('no size: a usual one, with a wider span', () => {
    const guess = reply(intent, { loads: [lamp] });
    expect(whole(guess)).toMatch(/a usual 70 Ah/);
    expect(value(guess, 'runTime')).toBeCloseTo(18.9, 9);
  });

  test('a remembered house battery is not the starter', () => {
    const own = { loads: [lamp], batteries: [agm(200)] };
    const one = reply(intent, own, {}, { recalled: new Set(['batteries'] as const) });
    expect(value(one, 'runTime')).toBeCloseTo(18.9, 9);
  });
});

describe('units', () => {
  test.for<[conversion: Conversion, unit: string, min: number, max: number]>([
    [{ value: 60, unit: 'W' }, 'A', 5, 5],
    [{ value: 60, unit: 'W', voltageV: 24 }, 'A', 2.5, 2.5],
    [{ value: 7, unit: 'A', to: 'W' }, 'W', 84, 84],
    [{ value: 100, unit: 'Ah', to: 'kWh', voltageV: 12.8 }, 'kWh', 1.28, 1.28],
    [{ value: 20000, unit: 'mAh', to: 'Wh' }, 'Wh', 74, 74],
    [{ value: 20000, unit: 'mAh', to: 'Ah' }, 'Ah', 20, 20],
    [{ value: 60, unit: 'W', hours: 5 }, 'Wh', 300, 300],
    [{ value: 60, unit: 'W', to: 'Ah', hours: 5 }, 'Ah', 25, 25],
    [{ value: 2, unit: 'kW', to: 'A', voltageV: 230 }, 'A', 8.69, 8.7],
    [{ value: 8, unit: 'AWG' }, 'mm²', 8.36, 8.38],
    [{ value: 16, unit: 'mm²' }, 'AWG', 5, 6],
    [{ value: 1, unit: 'hp', to: 'W' }, 'W', 745, 746],
    [{ value: 30, unit: 'ft' }, 'm', 9.143, 9.145],
    [{ value: 95, unit: '°F' }, '°C', 34.999, 35.001],
    [{ value: -40, unit: '°C', to: '°F' }, '°F', -40.001, -39.999],
  ])('%j', ([conversion, unit, min, max]) => {
    const one = reply(convert as Intent, {}, { conversion });
    expect(one.figures?.result).toMatchObject({ unit });
    expect(value(one, 'result')).toBeGreaterThanOrEqual(min);
    expect(value(one, 'result')).toBeLessThanOrEqual(max);
  });

  // 0.9 of inverter, about 12 V under load; a microwave of 700 W cooks with 700 and takes about 1,085 (common practice).
  test.each([
    ['kettle', 1000, 85, 100, /1000 W at 12 V alone would be 83\.3 A/],
    ['microwave', 700, 90, 111, /cooks with/],
  ])(
    'what a %s for mains takes from the battery is more than its watts through 12 V',
    (name, powerW, min, max, line) => {
      const facts = { loads: [{ name, powerW, supply: 'ac' as const }] };
      const conversion = { value: powerW, unit: 'W', to: 'A' };
      const one = reply(convert as Intent, {}, { conversion, facts });
      expect(value(one, 'batteryCurrent')).toBeGreaterThan(min);
      expect(value(one, 'batteryCurrent')).toBeLessThan(max);
      expect(one.headline).toMatch(/through an inverter/);
      expect(one.lines?.join(' ')).toMatch(line);
      const onMains = reply(convert as Intent, {}, { conversion: { ...conversion, voltageV: 230 }, facts });
      expect(onMains.figures).not.toHaveProperty('batteryCurrent');
    },
  );

  test('what measures different things is refused in words', () => {
    const one = reply(convert as Intent, {}, { conversion: { value: 5, unit: 'V', to: 'Ah' } });
    expect(one.figures).toEqual({});
    expect(one.headline).toMatch(/different things/);
  });
});
