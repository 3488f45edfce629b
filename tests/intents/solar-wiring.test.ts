import { describe, expect, test } from 'vitest';
import type { Reply } from '#answer/reply.ts';
import { present } from '#basics/present.ts';
import { meanChargeV } from '#engine/battery/round-trip.ts';
import { solarWiring } from '#intents/solar-wiring/intent.ts';
import { platesIn } from '#intents/solar-wiring/plate.ts';
import { solarYield } from '#intents/solar-yield/intent.ts';
import { read } from '#language/reading.ts';
import type { Stated } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

const wired = (stated: Stated, said = ''): Reply =>
  solarWiring.reply(solarWiring.needs.parse(stated), settingWith({}, said ? read(said) : {}));
const yields = (stated: Stated): Reply => solarYield.reply(solarYield.needs.parse(stated), settingWith());
const value = (reply: Reply, name: string) => Number(reply.figures?.[name]?.value);
const textOf = ({ headline, lines = [] }: Reply) => [headline, ...lines].join('\n');

describe('what a controller’s plate says', () => {
  test.each<[string, ReturnType<typeof platesIn>]>([
    [
      'two 200w panels, voc 22.5, in series on a 30A mppt 50V max, ok?',
      { plate: { limitV: 50, ratedA: 30 }, fullPowerA: undefined },
    ],
    [
      'two 200W panels 24 voc in series, mppt 100/30, ok?',
      { plate: { limitV: 100, ratedA: 30 }, fullPowerA: undefined },
    ],
    [
      '4 panels 100w parallel with a 20A controller pwm 12V?',
      { plate: { limitV: undefined, ratedA: 20 }, fullPowerA: undefined },
    ],
    // The panel's own figures, a fuse and plain watts are no limit of a controller.
    [
      'two 100W panels, 22V open circuit, in series on an mppt, ok?',
      { plate: { limitV: undefined, ratedA: undefined }, fullPowerA: undefined },
    ],
  ])('%s', (said, plates) => {
    expect(platesIn(read(said))).toEqual(plates);
  });
});

describe('panels against the controller', () => {
  const two: Stated = {
    solar: [{ count: 2, powerW: 200, openCircuitV: 22.5, controller: 'mppt' }],
    arrangement: 'series',
  };

  test('a limit that a cold morning passes is a no, and what to do instead', () => {
    const reply = wired(two, 'two 200w panels, voc 22.5, in series on a 30A mppt 50V max, ok?');
    expect(reply.verdict).toBe('no');
    // 45 × (1 + 0.0032 × 35)
    expect(value(reply, 'coldVoltage')).toBeCloseTo(50.04, 2);
    expect(reply.headline).toMatch(/limit of 50 V/);
    expect(textOf(reply)).toMatch(/Better: parallel, about \d+ V in the cold/);
  });

  test('the same in a place without frost is a yes', () => {
    const said = 'two 200w panels, voc 22.5, in series on a 30A mppt 50V max, ok?';
    const reply = wired({ ...two, place: 'Darwin' }, said);
    expect(reply.verdict).toBe('yes');
    expect(value(reply, 'coldVoltage')).toBeLessThan(48);
  });

  test('above 60 V in the cold comes the caution about direct current', () => {
    const reply = wired({ ...two, solar: [{ ...present(present(two.solar)[0]), count: 3 }] });
    expect(reply.cautions?.[0]).toBe('high-dc');
    expect(wired(two).cautions).not.toContain('high-dc');
  });

  test('which wiring suits which controller, by the battery', () => {
    const solar = [{ count: 2, powerW: 100, openCircuitV: 22 }];
    expect(textOf(wired({ solar }))).toContain('A PWM controller needs parallel here; an MPPT takes series.');
    expect(textOf(wired({ solar, systemVoltageV: 24 }))).toContain(
      'A PWM controller needs series here; an MPPT takes series too.',
    );
    expect(textOf(wired({ solar: [{ ...present(solar[0]), controller: 'pwm' }] }))).not.toContain('needs');
  });

  test('a panel for a roof on a PWM: what an MPPT would bring', () => {
    const reply = wired({ solar: [{ powerW: 300, openCircuitV: 39, controller: 'pwm' }] });
    expect(reply.verdict).toBe('tight');
    expect(value(reply, 'chargeCurrent')).toBeCloseTo(9.38, 2);
    expect(textOf(reply)).toContain('An MPPT would bring about 21 A');
  });

  test('48 V: four panels for 12 V in series charge it, in parallel they do not', () => {
    const solar = [{ count: 4, powerW: 100, openCircuitV: 22, controller: 'mppt' as const }];
    const four = wired({ solar, systemVoltageV: 48, arrangement: 'series' });
    expect(four.verdict).toBe('tight');
    expect(value(four, 'chargeCurrent')).toBeCloseTo((400 * 0.95) / (4 * meanChargeV('agm', 'sun')[0]), 9);
    const flat = wired({ solar, systemVoltageV: 48, arrangement: 'parallel' });
    expect(flat.verdict).toBe('no');
    expect(flat.headline).toContain('too little to charge a 48 V battery');
    expect(flat.figures).not.toHaveProperty('chargeCurrent');
  });
});

describe('a day of a PWM controller', () => {
  const on = (stated: Stated) => yields({ peakSunHours: 5, ...stated });
  const pwm = (openCircuitV?: number) => [
    { powerW: 300, controller: 'pwm' as const, ...(openCircuitV && { openCircuitV }) },
  ];
  // What dirt, wiring, mismatch and glancing light leave.
  const left = 0.95 * 0.97 * 0.95 * 0.96;

  test('its amps at full power times the hours: 300 ÷ (0.82 × 39) × 5', () => {
    const reply = on({ solar: pwm(39) });
    expect(value(reply, 'dailyYield')).toBeCloseTo((300 / (0.82 * 39)) * 5 * left, 6);
    expect(textOf(reply)).toContain('a PWM loses 58 % of the panel');
  });

  test('a panel for 12 V: 300 ÷ 18.1 × 5, and less if it is one for a roof', () => {
    const reply = on({ solar: pwm() });
    expect(value(reply, 'dailyYield')).toBeCloseTo((300 / 18.1) * 5 * left, 6);
    expect((present(reply.figures).dailyYield as { low: number }).low).toBeLessThan(
      0.6 * value(reply, 'dailyYield'),
    );
    expect(textOf(reply)).toContain('panel for a roof');
  });

  test('the same panel on 24 V: no more amps, twice the watt hours, held by its heat', () => {
    const [low, high] = [on({ solar: pwm(39) }), on({ solar: pwm(39), systemVoltageV: 24 })];
    expect(value(high, 'dailyYield')).toBeLessThanOrEqual(value(low, 'dailyYield') + 1e-9);
    expect(value(high, 'dailyYieldEnergy')).toBeGreaterThan(1.8 * value(low, 'dailyYieldEnergy'));
  });

  test('48 V has a quarter of the amp hours of 12 V', () => {
    const [one, four] = [on({ solar: pwm() }), on({ solar: pwm(), systemVoltageV: 48 })];
    expect(value(four, 'dailyYield')).toBeCloseTo(value(one, 'dailyYield') / 4, 6);
  });

  test('a panel that can’t reach the battery makes nothing, and two of them in series do', () => {
    const solar = [{ powerW: 100, openCircuitV: 22 }];
    const none = on({ solar, systemVoltageV: 24 });
    expect(value(none, 'dailyYield')).toBe(0);
    expect(none.headline).toContain('too little to charge a 24 V battery');
    expect(
      value(on({ solar: [{ ...present(solar[0]), count: 2 }], systemVoltageV: 24 }), 'dailyYield'),
    ).toBeGreaterThan(10);
    // "A 12 V panel" names a panel, and is no label.
    expect(value(on({ solar: [{ powerW: 100, openCircuitV: 12 }] }), 'dailyYield')).toBeGreaterThan(10);
  });

  test('a tilted panel may be turned away from the sun, a flat one not', () => {
    const at = (mount: 'flat' | 'tilted') =>
      present(yields({ solar: [{ powerW: 100 }], place: 'Hobart', month: 6, mount }).assumed).map(
        a => a.name,
      );
    expect(at('tilted')).toContain('panelAzimuth');
    expect(at('flat')).not.toContain('panelAzimuth');
  });
});
