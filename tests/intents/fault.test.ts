import { describe, expect, test } from 'vitest';
import { print } from '#answer/text.ts';
import { present } from '#basics/present.ts';
import { factsOf } from '#intents/facts.ts';
import { symptomOf } from '#intents/fault/compute.ts';
import { fault } from '#intents/fault/intent.ts';
import { symptoms } from '#intents/fault/symptoms-table.ts';
import type { RequestContext } from '#intents/intent.ts';
import { recognise } from '#language/recognise/recognise.ts';
import type { Stated } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const reply = (stated: Stated, subject?: string, setting: Partial<RequestContext> = {}) =>
  fault.reply(fault.needs.parse(stated), settingWith({ subject, ...setting }));
const value = (of: ReturnType<typeof reply>, name: string) => Number(of.figures?.[name]?.value);
const named = (text: string) => present(fault.subjectIn)(recognise(text).words, text);

describe('which fault it is', () => {
  test.each<[Stated, string]>([
    [{ loads: [{ name: 'fridge' }] }, 'fridge-cuts-out'],
    [{ loads: [{ name: 'fridge' }], fuseA: 10 }, 'fuse-blows'],
    [{ loads: [{ name: 'lights' }, { name: 'water pump' }] }, 'lights-dim'],
    [{ loads: [{ name: 'water pump' }] }, 'pump-runs-on'],
    [{ chargers: [{ kind: 'dcdc' }] }, 'dcdc-wont-charge'],
    [{ chargers: [{ kind: 'isolator' }], volts: 12.4 }, 'isolator-wont-engage'],
    [
      {
        inverter: { powerW: 1500 },
        loads: [{ name: 'hair dryer', powerW: 1600 }],
      },
      'inverter-trips',
    ],
    [{ loads: [{ name: 'kettle', powerW: 2200 }] }, 'mains-trips'],
    [{ solar: [{ powerW: 160 }] }, 'panel-nothing'],
    [{ batteries: [{ capacityAh: 120, ageYears: 8 }] }, 'battery-worn'],
    [{ volts: 9.8, voltsTaken: 'rest', batteries: [{ capacityAh: 100 }] }, 'battery-very-low'],
    [{}, 'general'],
  ])('%j points at %s', (stated, name) => expect(symptomOf(factsOf(stated)).name).toBe(name));

  test('what the words name comes before what the facts point at', () => {
    expect(symptomOf(factsOf({ loads: [{ name: 'fridge' }] }), 'fuse-blows').name).toBe('fuse-blows');
  });

  test.each([
    ['The fridge keeps cutting out around three in the morning', 'fridge-cuts-out'],
    ['My controller shows 18V but no charge amps', 'panel-no-amps'],
    ['controller says float at 11am with hardly any amps in full sun, whats wrong', 'panel-rests'],
    ['the shunt shows amps going out and there is literally nothing on', 'drawn-with-all-off'],
    ['inverter beeps whenever the kettle is on', 'inverter-trips'],
    ['the battery never gets full', 'never-full'],
    ['the smart alternator doesn’t charge my second battery', 'smart-alternator'],
    ['isolator stays open while we drive', 'isolator-wont-engage'],
    ['volts drop when the winch runs', 'sags-under-load'],
    ['10A fuse keeps blowing', 'fuse-blows'],
    ['lights flicker when the pump runs', 'lights-dim'],
    ['battery flat in the morning', 'flat-overnight'],
    ['flat after two weeks parked with nothing on', 'flat-parked'],
    ['fridge shows a low voltage error', 'fridge-cuts-out'],
    ['the bms cut off last night', 'bms-cut'],
    ['panels make hardly anything', 'panel-little'],
    ['lithium refuses to charge in this frost', 'lithium-cold'],
    ['the kettle trips the post', 'mains-trips'],
    ['40 degrees and the fridge never stops', 'fridge-never-stops'],
    ['the pump pulses with all the taps shut', 'pump-runs-on'],
    ['the plug gets hot', 'hot-joint'],
  ])('"%s" is %s', (text, name) => expect(named(text)).toBe(name));

  test.each(['how long will 100Ah last', 'what fuse for a 40A dcdc', 'thanks'])('"%s" names none', text =>
    expect(named(text)).toBeUndefined(),
  );

  test('gear that is only remembered is no sign', () => {
    const recalled = new Set(['inverter'] as const);
    const stated: Stated = {
      inverter: { powerW: 2000 },
      loads: [{ name: 'fridge' }],
    };
    expect(reply(stated, undefined, { recalled }).headline).toMatch(/its volts sag/);
  });
});

describe('sums that tell', () => {
  const agm = { capacityAh: 100, chemistry: 'agm' } as const;

  // 2 × 8 m × 14.1 mΩ/m at 35 °C (IEC 60228 class 5, 1.5 mm²: 13.3 mΩ/m at 20 °C) × 4 A = 0.90 V
  test('a thin cable comes first, with the size that cures it', () => {
    const stated: Stated = {
      loads: [{ name: 'fridge', currentA: 4 }],
      cable: { lengthM: 8, areaMm2: 1.5 },
    };
    const told = reply(stated, 'fridge-cuts-out');
    expect(value(told, 'voltageDrop')).toBeGreaterThan(0.85);
    expect(value(told, 'voltageDrop')).toBeLessThan(0.95);
    expect(told.headline).toMatch(/^Most likely the cable: it loses about 0\.9 V/);
    expect(told.lines?.[0]).toMatch(/^4 mm² cures it/);
  });

  test('a thick cable is cleared, and the battery comes before it', () => {
    const stated: Stated = {
      loads: [{ name: 'fridge', currentA: 4 }],
      cable: { lengthM: 2, areaMm2: 6 },
    };
    const told = reply(stated, 'fridge-cuts-out');
    expect(told.headline).toMatch(/battery is low/);
    expect(print(told)).toMatch(/thick enough/);
  });

  test('a day that is more than the battery gives', () => {
    const told = reply({ batteries: [{ ...agm, capacityAh: 50 }], dailyUseAh: 40 }, 'flat-overnight');
    expect(value(told, 'usableCapacity')).toBeCloseTo(25, 0);
    expect(told.headline).toMatch(/runs out: about 40 Ah a day from 25 Ah/);
  });

  test('more watts than the inverter has, more amps than the battery gives', () => {
    const over = reply({
      inverter: { powerW: 1500 },
      loads: [{ name: 'hair dryer', powerW: 1600 }],
    });
    expect(value(over, 'acLoad')).toBe(1600);
    expect(over.headline).toMatch(/^The hair dryer is too much for it: about 1600 W on 1500 W/);
    const stated: Stated = {
      batteries: [{ capacityAh: 50, chemistry: 'lfp' }],
      inverter: { powerW: 1500 },
      loads: [{ name: 'hair dryer', powerW: 1200 }],
    };
    // 1200 W ÷ 0.9 ÷ 12.8 V = 104 A from a 50 Ah lithium that stands 1 C = 50 A (makers' sheets, common practice)
    const cut = reply(stated, 'bms-cut');
    expect(value(cut, 'batteryCurrent')).toBeGreaterThan(95);
    expect(cut.headline).toMatch(/^Too many amps for the battery: .* about 50 A\.$/);
    expect(cut.cautions).toContain('bypass-bms');
  });

  test('volts under load beside those of a sound battery', () => {
    const stated: Stated = {
      batteries: [agm],
      loads: [{ name: 'fridge', currentA: 4 }],
      volts: 11.2,
      voltsTaken: 'load',
    };
    // 12.27 V at half − 4 A × 9 mΩ = 12.2 V
    const told = reply(stated, 'sags-under-load');
    expect(value(told, 'loadVoltage')).toBeCloseTo(12.2, 1);
    expect(print(told)).toMatch(/11\.2 V is low, worn, or measured behind a thin cable/);
    expect(print(reply({ ...stated, volts: 12.1 }, 'sags-under-load'))).toMatch(/no fault by itself/);
  });

  test('volts at rest, of the battery and system at hand', () => {
    const low = reply({ batteries: [agm], volts: 12.02, voltsTaken: 'rest' }, 'general');
    expect(value(low, 'stateOfCharge')).toBeCloseTo(25, 0);
    expect(low.headline).toMatch(/battery is low/);
    const truck = print(reply({ systemVoltageV: 24, loads: [{ name: 'fridge' }] }, 'fridge-cuts-out'));
    expect(truck).toMatch(/over 1 V less/);
    expect(truck).toMatch(/24\.4 V \(lithium 26\.3 V\)/);
    const own = print(reply({ batteries: [agm] }, 'fridge-cuts-out'));
    expect(own).toMatch(/under 12\.3 V at rest/);
  });

  test('panels: amps at noon, and what goes in against what goes out', () => {
    // 200 W × 0.95 ÷ 13.4 V = 14 A at the most
    const noon = reply({ solar: [{ powerW: 200 }], netCurrentA: 3 }, 'panel-little');
    expect(value(noon, 'chargeCurrent')).toBeGreaterThan(13);
    expect(value(noon, 'chargeCurrent')).toBeLessThan(15);
    expect(print(noon)).toMatch(/3 A is far too little/);
    const stated: Stated = {
      solar: [{ powerW: 100 }],
      dailyUseAh: 60,
      batteries: [agm],
      peakSunHours: 4,
    };
    const less = reply(stated, 'never-full');
    expect(value(less, 'dailyYield')).toBeLessThan(30);
    expect(less.headline).toMatch(/^Less goes in than out/);
  });

  test('an isolator on a smart alternator, a DC-DC’s input, a fuse’s load, years', () => {
    const isolator = reply({ chargers: [{ kind: 'isolator' }], alternator: 'smart' }, 'smart-alternator');
    expect(isolator.figures?.recommendation).toEqual({ value: 'dcdc' });
    // 25 A × 14.4 V ÷ 0.9 ÷ 13.5 V = 30 A
    const dcdc = reply({ chargers: [{ kind: 'dcdc', currentA: 25 }] }, 'dcdc-wont-charge');
    expect(value(dcdc, 'inputCurrent')).toBeCloseTo(30, -0.5);
    const fused = reply({ fuseA: 5, loads: [{ name: 'water pump', currentA: 6 }] }, 'fuse-blows');
    expect(value(fused, 'current')).toBeCloseTo(6, 6);
    expect(print(fused)).toMatch(/1\. Overload/);
    const old = reply({ batteries: [{ ...agm, ageYears: 8 }] }, 'battery-worn');
    expect(value(old, 'capacity')).toBeCloseTo(68, 0);
  });
});

describe('how it is said', () => {
  test('a fuse that blows is never answered with a larger one', () => {
    const told = reply({ fuseA: 10, loads: [{ name: 'water pump' }] });
    expect(told.headline).toMatch(/^No bigger fuse/);
    expect(told.verdict).toBe('no');
    expect(told.cautions).toContain('no-fuse');
    expect(print(told)).not.toMatch(/larger fuse|bigger fuse (?!:)(?!on)/i);
  });

  test('the question back goes where its answer is told', () => {
    const open = print(reply({ loads: [{ name: 'fridge' }] }, 'fridge-cuts-out'));
    expect(open).toMatch(/What does it read at the fridge plug while it runs\?/);
    const told = print(
      reply({ loads: [{ name: 'fridge' }], volts: 11.4, voltsTaken: 'load' }, 'fridge-cuts-out'),
    );
    expect(told).not.toMatch(/\?$/m);
  });

  test.each(symptoms.map(symptom => [symptom.name, symptom] as const))(
    '%s: a number or sign to go by in each check, fits a phone, defers',
    (name, { causes, spots, asks }) => {
      expect(spots.length > 0 || name === 'general').toBe(true);
      expect(causes.length).toBeGreaterThanOrEqual(2);
      for (const { likely, check } of causes) {
        expect(likely.length, likely).toBeLessThanOrEqual(100);
        expect(check.length, check).toBeLessThanOrEqual(130);
        expect(check, 'starts with its name').toMatch(/^[A-Z][^:]{2,16}: /);
      }
      expect(asks[0]).toMatch(/\?$/);
      const told = reply({}, name);
      expect(told.headline.length).toBeLessThanOrEqual(100);
      expect(told.cautions).toContain('fault-finding');
      expect(print(told)).toMatch(/auto electrician/);
      expect(print(told)).not.toMatch(/[{}]|undefined|NaN/);
      expect(print(told).length).toBeLessThanOrEqual(750);
    },
  );

  test('half of the symptoms say it in 600 characters', () => {
    const lengths = symptoms.map(({ name }) => print(reply({}, name)).length).sort((a, b) => a - b);
    expect(lengths[Math.floor(lengths.length / 2)]).toBeLessThanOrEqual(600);
  });
});

describe('a reading at the thing', () => {
  test.each<[string, number, RegExp, RegExp]>([
    ['inverter-trips', 10.6, /10\.6 V is too low for an inverter/, /runs out of volts/],
    ['inverter-trips', 11.8, /11\.8 V is enough for an inverter/, /load is above/],
    ['isolator-wont-engage', 12.6, /too low for an isolator/, /joins near 13\.3 V/],
    ['heater-faults', 11.2, /too low for a heater/, /fall under its limit/],
  ])('%s at %d V', (name, volts, says, headline) => {
    const told = reply({ volts, voltsTaken: 'load' }, name);
    expect(told.headline).toMatch(headline);
    expect(print(told)).toMatch(says);
  });
});
