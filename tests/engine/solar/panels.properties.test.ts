import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { turnedBeamFactor } from '#engine/solar/facing.ts';
import { dailyYield, type SolarCase } from '#engine/solar/model.ts';
import { meanDay, outsideRadiationOf, sunDay } from '#engine/solar/sun.ts';
import { beamFactor } from '#engine/solar/tilt.ts';
import { type PanelCase, wire, wiringAssumptions } from '#engine/solar/wiring.ts';
import type { Solar } from '#rig/rig.ts';
import { draws } from '../../house/share.ts';

// What must hold of panels whatever they are, on 1,000 draws each, or 10,000 where everything is tried.

const runs = { numRuns: draws(1000, 10_000), seed: 20 };
const amount = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined });
const panel = fc.record({
  count: fc.integer({ min: 1, max: 4 }),
  powerW: maybe(amount(20, 500)),
  openCircuitV: maybe(amount(16, 60)),
}) as fc.Arbitrary<Solar>;
const panels = fc.array(panel, { minLength: 1, maxLength: 4 });
const blocks = fc.constantFrom(1, 2, 4);
const controller = fc.constantFrom<('mppt' | 'pwm' | undefined)[]>('mppt', 'pwm', undefined);

const likely = (about: PanelCase) => Object.fromEntries(wiringAssumptions(about).map(a => [a.name, a.value]));
const wired = (about: PanelCase, inSeries: number) => wire(about, inSeries, likely(about));
const countOf = (all: readonly Solar[]) => all.reduce((sum, { count }) => sum + count, 0);
const within = (a: number, b: number) => expect(a).toBeLessThanOrEqual(b + 1e-9 * Math.abs(b));
const near = (a: number, b: number) =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * Math.abs(b) + 1e-12);

describe('wiring', () => {
  test('colder never gives a lower string voltage, told or by how cold it is taken to be', () => {
    fc.assert(
      fc.property(
        panels,
        blocks,
        amount(-50, 40),
        amount(0, 60),
        fc.boolean(),
        (all, n, warm, by, isTold) => {
          const about: PanelCase = { panels: all, blocks: n, isShaded: false };
          const volts = (coldestC: number) =>
            isTold
              ? wired({ ...about, coldestC }, countOf(all)).coldVoltage
              : wire(about, 1, { ...likely(about), coldestC }).coldVoltage;
          within(volts(warm), volts(warm - by));
        },
      ),
      runs,
    );
  });

  test('the order in which panels are told does not matter', () => {
    fc.assert(
      fc.property(panels, controller, fc.boolean(), blocks, (all, by, isSeries, n) => {
        const about = (order: readonly Solar[]): PanelCase => ({
          panels: order,
          blocks: n,
          isShaded: false,
          ...(by && { controller: by }),
        });
        const inSeries = isSeries ? countOf(all) : 1;
        const [there, back] = [wired(about(all), inSeries), wired(about([...all].reverse()), inSeries)];
        near(there.stringVoltage, back.stringVoltage);
        near(there.coldVoltage, back.coldVoltage);
        near(there.chargeCurrent, back.chargeCurrent);
      }),
      runs,
    );
  });

  test('MPPT never gives less current than PWM', () => {
    fc.assert(
      fc.property(panels, fc.boolean(), blocks, (all, isSeries, n) => {
        const told = all.map(p => ({ ...p, powerW: p.powerW ?? 100 }));
        const amps = (by: 'mppt' | 'pwm') =>
          wired({ panels: told, blocks: n, isShaded: false, controller: by }, isSeries ? countOf(told) : 1)
            .chargeCurrent;
        within(amps('pwm'), amps('mppt'));
      }),
      runs,
    );
  });

  test('more panels in parallel never give less current', () => {
    fc.assert(
      fc.property(panels, panel, controller, blocks, (all, more, by, n) => {
        const amps = (some: readonly Solar[]) => {
          const about: PanelCase = {
            panels: some,
            blocks: n,
            isShaded: false,
            ...(by && { controller: by }),
          };
          // The same volts on every label: higher ones beside them would not be the same panels.
          return wire(about, 1, { ...likely(about), openCircuitVoltage: 22 }).chargeCurrent;
        };
        const alike = [...all, more].map(p => ({
          ...p,
          openCircuitV: present(all[0]).openCircuitV,
        })) as Solar[];
        within(amps(alike.slice(0, -1)), amps(alike));
      }),
      runs,
    );
  });
});

describe('what they make a day', () => {
  const solarCase = fc.record({
    panels: maybe(panels),
    blocks,
    peakSunHours: amount(0.5, 9),
    ambientC: amount(-30, 55),
    mount: fc.constantFrom(undefined, 'flat', 'tilted'),
    sky: fc.constantFrom(undefined, 'sunny', 'overcast'),
    shade: fc.constantFrom(undefined, 'half', 'heavy'),
  }) as fc.Arbitrary<SolarCase>;

  test('MPPT never gives less than PWM, in watt hours and in amp hours', () => {
    fc.assert(
      fc.property(solarCase, amount(20, 2000), (c, powerW) => {
        const made = (by: 'mppt' | 'pwm') =>
          dailyYield({ ...c, controller: by, powerW, nominalVoltageV: 12.8 * present(c.blocks) });
        within(made('pwm').dailyYieldEnergyWh, made('mppt').dailyYieldEnergyWh);
        within(made('pwm').dailyYieldAh, made('mppt').dailyYieldAh);
      }),
      runs,
    );
  });

  test('the order of panels does not matter', () => {
    fc.assert(
      fc.property(solarCase, panels, (c, all) => {
        const made = (order: readonly Solar[]) =>
          dailyYield({ ...c, panels: order, controller: 'pwm', powerW: 100, nominalVoltageV: 12 })
            .dailyYieldAh;
        near(made(all), made([...all].reverse()));
      }),
      runs,
    );
  });
});

describe('facing', () => {
  const months = Array.from({ length: 12 }, (_, m) => m + 1);
  const latitude = fc.tuple(amount(25, 65), fc.constantFrom(-1, 1)).map(([away, side]) => away * side);

  test('away from the equator never gives more direct sun in a year, outside the tropics', () => {
    fc.assert(
      fc.property(latitude, amount(0, 1), amount(0, 180), (latitudeDeg, share, awayDeg) => {
        const tiltDeg = share * Math.abs(latitudeDeg);
        const year = (away: number) =>
          months.reduce(
            (sum, m) =>
              sum +
              outsideRadiationOf(latitudeDeg, m) *
                turnedBeamFactor(sunDay(latitudeDeg, meanDay(m)), tiltDeg, away),
            0,
          );
        // The sum goes by steps of the day: to one part in ten thousand.
        expect(year(awayDeg)).toBeLessThanOrEqual(1.0001 * year(0));
      }),
      runs,
    );
  });

  test('towards the equator and towards the pole as by the closed form', () => {
    for (const latitudeDeg of [-43, -27, 0, 15, 35, 52])
      for (const month of months)
        for (const tiltDeg of [0, 20, 45]) {
          const sun = sunDay(latitudeDeg, meanDay(month));
          expect(Math.abs(turnedBeamFactor(sun, tiltDeg, 0) - beamFactor(sun, tiltDeg))).toBeLessThan(0.01);
        }
    // East and west come to the same.
    const sun = sunDay(-35, meanDay(7));
    expect(turnedBeamFactor(sun, 30, 60)).toBeCloseTo(turnedBeamFactor(sun, 30, -60), 12);
    expect(turnedBeamFactor(sun, 30, 180)).toBeLessThan(0.6 * turnedBeamFactor(sun, 30, 0));
  });
});
