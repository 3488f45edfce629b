import { describe, expect, test } from 'vitest';
import { cableSize } from '#intents/cable-size/intent.ts';
import { fuseSize } from '#intents/fuse-size/intent.ts';
import type { Intent, RequestContext } from '#intents/intent.ts';
import { inverterCheck } from '#intents/inverter-check/intent.ts';
import { list } from '#intents/list/intent.ts';
import type { Cue } from '#language/words/en/cues.ts';
import type { Facts, Load } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const load = (name: string, rest: Partial<Load> = {}): Load => ({ name, count: 1, supply: 'dc', ...rest });
const ac = (name: string, powerW?: number, rest: Partial<Load> = {}) =>
  load(name, { supply: 'ac', powerW, ...rest });
const lfp = (capacityAh: number) => [{ count: 1, capacityAh, chemistry: 'lfp' as const }];

const reply = (intent: Intent, facts: Facts, cues: Cue[] = [], setting: Partial<RequestContext> = {}) =>
  intent.reply(intent.needs.parse(facts), settingWith(setting, { cues: new Set(cues) }));
const lacks = (intent: Intent, facts: Facts) =>
  intent.needs.safeParse(facts).error?.issues.map(issue => issue.message) ?? [];
const value = (of: ReturnType<typeof reply>, name: string) => Number(of.figures?.[name]?.value);
const whole = (of: ReturnType<typeof reply>) => [of.headline, ...(of.lines ?? [])].join('\n');

describe('will the inverter run it', () => {
  const on = (powerW: number, ...loads: Load[]) => reply(inverterCheck, { inverter: { powerW }, loads });

  test('yes, tight, no', () => {
    expect(on(1500, ac('toaster', 700, { count: 2 })).verdict).toBe('yes');
    expect(on(1500, ac('kettle', 1480)).verdict).toBe('tight');
    expect(on(1500, ac('toaster', 800, { count: 2 })).verdict).toBe('no');
    expect(on(600, ac('air conditioner', 400)).verdict).toBe('tight');
    expect(on(300, ac('bar fridge', 70)).verdict).toBe('tight');
    expect(on(300, ac('mini fridge', 50)).verdict).toBe('yes');
    expect(on(1000, ac('bar fridge', 70)).verdict).toBe('yes');
    expect(whole(on(1500, ac('toaster', 800, { count: 2 })))).toMatch(/One at a time works/);
    expect(whole(on(1500, ac('kettle', 2000)))).not.toMatch(/One at a time/);
  });

  test('a surge rating told counts', () => {
    const fridge = [ac('fridge', 150)];
    const at = (surgeW: number) => reply(inverterCheck, { inverter: { powerW: 300, surgeW }, loads: fridge });
    expect(at(800).verdict).toBe('yes');
    expect(at(600).verdict).toBe('tight');
    expect(at(600).cautions).toContain('surge');
  });

  test('the battery’s own limit counts, and a second one helps', () => {
    const facts = { inverter: { powerW: 2000 }, loads: [ac('air fryer', 1500)] };
    const one = reply(inverterCheck, { ...facts, batteries: lfp(100) });
    expect(one.verdict).toBe('no');
    expect(whole(one)).toMatch(/^No: 130 A is more than a 100 Ah lithium should give \(about 100 A\)/);
    expect(whole(one)).toMatch(/a battery that can give 130 A or more, or a smaller load/);
    // A few amps over what is only usual of its kind.
    const slightly = reply(inverterCheck, { ...facts, loads: [ac('air fryer', 1200)], batteries: lfp(100) });
    expect(slightly.verdict).toBe('tight');
    expect(reply(inverterCheck, { ...facts, batteries: lfp(200) }).verdict).toBe('yes');
  });

  test('one use takes more than there is', () => {
    const facts = {
      inverter: { powerW: 1500 },
      batteries: lfp(50),
      loads: [ac('slow cooker', 200, { hoursPerDay: 8 })],
    };
    expect(reply(inverterCheck, facts).verdict).toBe('no');
    expect(whole(reply(inverterCheck, facts))).toMatch(/one go takes about 142 Ah/);
  });

  test('Ah for the time it runs: each load for its own', () => {
    const two = on(3000, ac('kettle', 2000, { minutesPerDay: 6 }), ac('lamp', 100, { hoursPerDay: 1 }));
    expect(value(two, 'batteryUse')).toBeCloseTo((value(two, 'batteryCurrent') * (200 + 100)) / 2100, 6);
    const timed = reply(inverterCheck, { loads: [ac('toaster', 1000)], durationH: 0.1 });
    expect(value(timed, 'batteryUse')).toBeCloseTo(value(timed, 'batteryCurrent') / 10, 9);
    expect(on(1500, ac('kettle', 1000)).figures).not.toHaveProperty('batteryUse');
  });

  test('no inverter told: what it takes, and the size to have; no load: flat out', () => {
    const none = reply(inverterCheck, { loads: [ac('coffee machine', 1200)] });
    expect(none.verdict).toBeNull();
    expect(none.headline).toMatch(/needs a 1500 W inverter/);
    const flat = reply(inverterCheck, { inverter: { powerW: 2000 } });
    expect(flat.headline).toMatch(/^Flat out, a 2000 W inverter takes about 185 A/);
    expect(lacks(inverterCheck, { inverter: {} })).toHaveLength(1);
  });

  test('what it commonly runs, where nobody said what shall: the biggest that fit, the smallest that do not', () => {
    const words = ['what', 'can', 'i', 'run'];
    const asked = (powerW: number) =>
      inverterCheck.reply(
        inverterCheck.needs.parse({ inverter: { powerW } }),
        settingWith({}, { recognised: { text: '', tokens: [], mentions: [], words } }),
      );
    expect(whole(asked(1000))).toMatch(/runs things like a .*\(\d+ W\)/);
    for (const powerW of [300, 1000, 2000]) {
      const [runs = '', not = ''] = [asked(powerW).headline, ...(asked(powerW).lines ?? [])];
      const watts = (line: string) => [...line.matchAll(/\((\d+) W\)/g)].map(([, w]) => Number(w));
      expect(Math.max(...watts(runs))).toBeLessThanOrEqual(powerW);
      expect(Math.min(...watts(not))).toBeGreaterThan(powerW);
    }
    expect(whole(on(300))).not.toMatch(/runs things like/);
  });

  test('24 V halves the current', () => {
    const at = (systemVoltageV: number) =>
      value(reply(inverterCheck, { loads: [ac('kettle', 1000)], systemVoltageV }), 'batteryCurrent');
    expect(at(24)).toBeCloseTo(at(12) / 2, 9);
  });

  test('a modified wave bothers some', () => {
    const at = (name: string) =>
      reply(inverterCheck, { inverter: { powerW: 2000, wave: 'modified-sine' }, loads: [ac(name, 500)] });
    expect(at('washing machine').headline).toMatch(/modified wave/);
    expect(at('toaster').verdict).toBe('yes');
  });

  test('a microwave’s plate is what it cooks with, unless it was its input', () => {
    expect(value(on(1500, ac('microwave', 800)), 'acLoad')).toBeCloseTo(1240, 6);
    expect(value(on(1500, ac('microwave', 1200, { isInput: true })), 'acLoad')).toBe(1200);
  });
});

describe('what cable', () => {
  test('what is missing is asked for', () => {
    expect(lacks(cableSize, { inverter: {} })).toHaveLength(2);
    expect(lacks(cableSize, { cable: { currentA: 10 } })[0]).toMatch(/how long the cable is/);
  });

  test('the limit goes with the circuit: charging 3 %, general 5 %, lamps 10 %; told beats all', () => {
    const percent = (facts: Facts) =>
      value(reply(cableSize, { cable: { lengthM: 6 }, ...facts }), 'voltageDropPercent');
    const area = (facts: Facts) =>
      value(reply(cableSize, { cable: { lengthM: 6 }, ...facts }), 'conductorArea');
    const pump = [load('water heater', { currentA: 10 })];
    const lamps = [load('light', { currentA: 10 })];
    expect(percent({ chargers: [{ kind: 'mains', currentA: 10 }] })).toBeLessThanOrEqual(3);
    expect(percent({ loads: pump })).toBeLessThanOrEqual(5);
    expect(percent({ loads: pump })).toBeGreaterThan(3);
    expect(area({ loads: lamps })).toBeLessThan(area({ loads: pump }));
    expect(area({ loads: lamps, cable: { lengthM: 6, dropLimitPercent: 2 } })).toBeGreaterThan(
      area({ loads: pump }),
    );
  });

  test('says mm², and B&S = AWG; speaks in gauges to those who do', () => {
    const facts = { cable: { lengthM: 5, currentA: 15 } };
    expect(reply(cableSize, facts).headline).toMatch(/^6 mm²: /);
    expect(whole(reply(cableSize, facts))).toMatch(/In the shop: 8 B&S \(AWG\)/);
    expect(reply(cableSize, facts, ['bs-gauge']).headline).toMatch(/^10 B&S \(AWG\): /);
    expect(whole(reply(cableSize, facts, ['bs-gauge']))).toMatch(/That is 5.3 mm² of copper/);
  });

  test('the length is one way unless told there and back', () => {
    const drop = (isRoundTrip: boolean, lengthM: number) =>
      value(reply(cableSize, { cable: { lengthM, isRoundTrip, areaMm2: 6, currentA: 10 } }), 'voltageDrop');
    expect(drop(true, 10)).toBeCloseTo(drop(false, 5), 9);
    expect(whole(reply(cableSize, { cable: { lengthM: 5, currentA: 10 } }))).toMatch(
      /The wire back is counted in/,
    );
    expect(whole(reply(cableSize, { cable: { lengthM: 5, isRoundTrip: true, currentA: 10 } }))).toMatch(
      /there and back\./,
    );
  });

  test('auto cable: its mm is the outside', () => {
    const facts = { cable: { lengthM: 6, currentA: 10, autoCableMm: 6 } };
    const asked = reply(cableSize, facts, ['auto-cable', 'ask-compare']);
    expect(asked.verdict).toBe('no');
    expect(whole(asked)).toMatch(/about 4.6 mm² of copper/);
    expect(value(asked, 'voltageDrop')).toBeGreaterThan(
      1.2 * value(reply(cableSize, { cable: { lengthM: 6, currentA: 10, areaMm2: 6 } }), 'voltageDrop'),
    );
    expect(reply(cableSize, facts, ['auto-cable', 'ask-can-it']).verdict).toBe('yes');
  });

  test('does the cable told do: yes, tight, no; too hot is no as well', () => {
    const verdict = (areaMm2: number, currentA: number, lengthM = 5) =>
      reply(cableSize, { cable: { areaMm2, currentA, lengthM } }, ['ask-can-it']).verdict;
    expect([verdict(10, 15), verdict(6, 17.5), verdict(4, 30)]).toEqual(['yes', 'tight', 'no']);
    expect(verdict(2.5, 60, 0.3)).toBe('no');
    const drop = reply(cableSize, { cable: { areaMm2: 6, currentA: 15, lengthM: 5 } }, ['ask-drop']);
    expect([drop.verdict, drop.headline]).toEqual(['yes', expect.stringMatching(/^The drop is about/)]);
    expect(reply(cableSize, { cable: { currentA: 15, lengthM: 5 } }).verdict).toBeNull();
  });

  test('an inverter’s cable carries its fuse; big currents get a caution', () => {
    const big = reply(cableSize, { inverter: { powerW: 2000 }, cable: { lengthM: 1.5 } });
    expect(value(big, 'conductorArea')).toBe(70);
    expect(whole(big)).toMatch(/The current sets that size/);
    expect(big.cautions).toContain('big-current');
    const half = reply(cableSize, {
      inverter: { powerW: 2000 },
      cable: { lengthM: 1.5 },
      systemVoltageV: 24,
    });
    expect(value(half, 'conductorArea')).toBe(25);
  });
});

describe('cable and fuse as a pair', () => {
  test.for<[fuseA: number, said: RegExp]>([
    [60, /60 A fuse guards it, but would blow at 93 A/],
    [95, /95 A fuse guards it, with little to spare over 93 A/],
    [150, /150 A fuse is too big: 16 mm² would burn before it blows/],
  ])('a fuse spoken of is judged where the cable is too thin for any: %d A', ([fuseA, said]) => {
    const there = reply(fuseSize, { cable: { areaMm2: 16 }, fuseA, inverter: { powerW: 1000 } });
    expect(there.verdict).toBe('no');
    expect(whole(there)).toMatch(/that cable is too thin/);
    expect(whole(there)).toMatch(said);
  });

  const solar = [{ count: 1, powerW: 200 }];

  test('the cable comes with its fuse, and the fuse with its cable', () => {
    const facts: Facts = { cable: { lengthM: 5 }, loads: [load('pump', { currentA: 20 })] };
    const cable = reply(cableSize, facts);
    expect(value(cable, 'fuseRating')).toBe(25);
    expect(whole(cable)).toMatch(/suits a 25 A fuse \(blade\)/);
    const area = value(cable, 'conductorArea');
    expect(whole(reply(fuseSize, facts))).toMatch(new RegExp(`Its cable: ${area} mm² over 5 m`));
    const there = { ...facts, cable: { lengthM: 10, isRoundTrip: true } };
    expect(whole(reply(fuseSize, there))).toMatch(new RegExp(`Its cable: ${area} mm² over 5 m`));
    expect(whole(reply(fuseSize, { ...facts, cable: { lengthM: 400 } }))).toMatch(/must carry that/);
  });

  test('a DC-DC charger: drop and fuse by what it takes in, of the vehicle’s volts', () => {
    const chargers = [{ kind: 'dcdc' as const, currentA: 40 }];
    const given = reply(cableSize, { chargers, cable: { lengthM: 6, areaMm2: 25 } });
    // 40 A × 14.4 V ÷ 0.9 ÷ 13.5 V = 47.4 A; 0.78 mΩ/m, 15 K warmer.
    const dropV = 2 * 6 * 47.407 * 0.00078 * (1 + 15 * 0.00393);
    expect(value(given, 'voltageDrop')).toBeCloseTo(dropV, 3);
    expect(value(given, 'voltageDropPercent')).toBeCloseTo((100 * dropV) / 13.5, 2);
    expect(whole(given)).toMatch(/draws about 47 A to give 40 A/);
  });

  test('a DC-DC charger has a fuse at each battery: what it takes in on one, what it gives on the other', () => {
    const chargers = [{ kind: 'dcdc' as const, currentA: 40 }];
    const both = reply(fuseSize, { chargers, batteries: lfp(200) });
    expect(both.headline).toBe('A 60 A fuse (small bolt-down).');
    expect(whole(both)).toMatch(
      /At the house battery goes another fuse, 50 A \(high-breaking, class T style\)/,
    );
    expect(whole(both)).toMatch(/13,000 A: the one there breaks about 20,000 A/);
    const cable = reply(cableSize, { chargers, batteries: lfp(200), cable: { lengthM: 3 } });
    expect(whole(cable)).toMatch(/60 A fuse \(small bolt-down\)/);
  });

  test('heat asks for more copper and a smaller fuse; a bundle is told of', () => {
    const at = (ambientC?: number) => reply(cableSize, { cable: { lengthM: 0.5, currentA: 30 }, ambientC });
    expect([at(), at(60)].map(r => value(r, 'conductorArea'))).toEqual([6, 10]);
    expect(whole(at())).toMatch(/Bundled with three or more other loaded wires, go to 10 mm²/);
    const fuse = (ambientC?: number) =>
      value(reply(fuseSize, { cable: { areaMm2: 6 }, ambientC }), 'fuseRating');
    expect([fuse(), fuse(50)]).toEqual([40, 30]);
    const carries = (ambientC?: number) => reply(cableSize, { cable: { areaMm2: 6 }, ambientC });
    expect(value(carries(50), 'ampacity')).toBeCloseTo(value(carries(), 'ampacity') * Math.sqrt(25 / 45), 6);
  });

  // IEC 60228 class 5: 3.3 mΩ/m for 6 mm² at 20 °C, so 30 A loses 5 % of 12 V over 0.6 V / (2 × 30 A × 3.3 mΩ/m) = 3.03 m; warm copper a little less.
  test('how far a cable carries a current, where its length is not told', () => {
    const cable = { areaMm2: 6, currentA: 30 };
    const far = (rest: Facts = {}) => value(reply(cableSize, { cable, ...rest }), 'length');
    expect(far()).toBeGreaterThan(2.7);
    expect(far()).toBeLessThan(3.03);
    expect(far({ systemVoltageV: 24 })).toBeCloseTo(2 * far(), 6);
    expect(whole(reply(cableSize, { cable }))).toMatch(/At 30 A it may be about 2\.\d m long one way/);
    expect(reply(cableSize, { cable: { areaMm2: 6 } }).figures).not.toHaveProperty('length');
  });

  test('a list names the fuse by the battery that it lists', () => {
    const about = (chemistry: 'lfp' | 'agm') =>
      reply(list, {
        loads: [load('fridge', { powerW: 45 }), ac('kettle', 1000, { minutesPerDay: 5 })],
        batteries: [{ count: 1, chemistry }],
        inverter: {},
        durationH: 72,
      });
    expect(whole(about('lfp'))).toMatch(
      /50 mm² to the inverter \(1 m, 175 A fuse, high-breaking, class T style\)/,
    );
    expect(whole(about('agm'))).toMatch(/175 A fuse, bolt-down strip\)/);
  });

  test('a cable that carries the load but not its fuse is tight', () => {
    const of = (currentA: number) =>
      reply(cableSize, { cable: { areaMm2: 6, currentA, lengthM: 0.3 } }, ['ask-can-it']);
    expect(of(30).verdict).toBe('yes');
    expect(of(44).verdict).toBe('tight');
    expect(whole(of(44))).toMatch(/less than the 60 A fuse/);
  });

  test('panels: 125 % twice of their short-circuit current, and another fuse behind the controller', () => {
    const one = reply(fuseSize, { solar });
    // 200 W ÷ (0.82 × 22 V) × 1.07 × 1.25 × 1.25 = 18.5 A.
    expect(value(one, 'fuseRating')).toBe(20);
    expect(one.headline).toBe('A 20 A fuse (in-line solar fuse).');
    expect(whole(one)).toMatch(/Between controller and battery goes another, at the battery: 25 A \(blade\)/);
    const onBank = whole(reply(fuseSize, { solar, batteries: lfp(200) }));
    expect(onBank).toMatch(/put the one there in a fuse block behind a main fuse at the battery/);
    expect(whole(reply(fuseSize, { solar, systemVoltageV: 48 }))).not.toMatch(/marked for/);
    const two = reply(fuseSize, { solar: [{ count: 2, powerW: 200 }] });
    expect(value(two, 'fuseRating')).toBe(40);
  });

  test('the kind of fuse goes by the bank and its volts', () => {
    const inverter = { powerW: 2000 };
    const fuse = (facts: Facts) => reply(fuseSize, { inverter, ...facts });
    expect(fuse({ batteries: lfp(200) }).headline).toBe('A 250 A fuse (high-breaking, class T style).');
    expect(whole(fuse({ batteries: lfp(200) }))).toMatch(
      /up to about 13,000 A: this kind breaks about 20,000 A/,
    );
    expect(whole(fuse({ batteries: lfp(600) }))).toMatch(/give each battery its own/);
    const agm = [{ count: 1, capacityAh: 200, chemistry: 'agm' as const }];
    expect(fuse({ batteries: agm }).headline).toBe('A 250 A fuse (bolt-down strip).');
    expect(whole(fuse({}))).toMatch(/On a lithium bank use a high-breaking/);
    expect(fuse({ systemVoltageV: 48 }).headline).toBe('A 60 A fuse (bolt-down strip marked 80 V).');
    expect(whole(fuse({ systemVoltageV: 48 }))).toMatch(/marked for 60 V or more/);
    const small = reply(fuseSize, { loads: [load('light', { currentA: 8 })], batteries: lfp(200) });
    expect(small.headline).toBe('A 10 A fuse (blade, red).');
    expect(whole(small)).toMatch(/in a fuse block behind a main fuse at the battery \(high-breaking/);
    const plain = reply(fuseSize, { loads: [load('light', { currentA: 8 })] });
    expect(whole(plain)).not.toMatch(/short|lithium/);
  });
});

describe('what fuse', () => {
  const fuse = (facts: Facts) => value(reply(fuseSize, facts), 'fuseRating');

  test('125 % and the next size', () => {
    expect(fuse({ loads: [load('pump', { currentA: 8 })] })).toBe(10);
    expect(fuse({ cable: { currentA: 12, areaMm2: 4 } })).toBe(15);
    expect(fuse({ loads: [load('light', { powerW: 60 })] })).toBe(7.5);
    expect(fuse({ inverter: { powerW: 2000 } })).toBe(250);
    expect(fuse({ inverter: { powerW: 2000 }, systemVoltageV: 24 })).toBe(125);
  });

  test('a DC-DC charger takes in more than it gives', () => {
    expect(fuse({ chargers: [{ kind: 'dcdc', currentA: 25 }] })).toBe(40);
    expect(fuse({ chargers: [{ kind: 'dcdc', currentA: 40 }] })).toBe(60);
    expect(fuse({ chargers: [{ kind: 'dcdc', currentA: 40 }], cable: { currentA: 40 } })).toBe(60);
    expect(fuse({ chargers: [{ kind: 'mains', currentA: 25 }] })).toBe(35);
  });

  test('never above what the cable carries: the cable must grow', () => {
    const thin = reply(fuseSize, { cable: { areaMm2: 1.5, currentA: 30 } });
    expect(thin.verdict).toBe('no');
    expect(value(thin, 'fuseRating')).toBeLessThanOrEqual(15);
    expect(whole(thin)).toMatch(/Go to 6 mm² or more/);
    expect(reply(fuseSize, { cable: { areaMm2: 6 } }).headline).toMatch(/^At most 40 A on 6 mm²/);
  });

  test('what was said goes before what is remembered', () => {
    const facts = { loads: [load('pump', { currentA: 8 })], inverter: { powerW: 2000 } };
    const said = reply(fuseSize, facts, [], { recalled: new Set(['inverter'] as const) });
    expect(value(said, 'fuseRating')).toBe(10);
    expect(lacks(fuseSize, {})).toHaveLength(1);
  });
});
