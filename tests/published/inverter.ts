import { present } from '#basics/present.ts';
import { applianceOf } from '#catalog/appliances.ts';
import { batteryCurrentA, loadedVoltage } from '#engine/inverter/check.ts';
import { inverterEfficiency } from '#engine/inverter/efficiency.ts';
import { batteryCurrent, idleUse, partLoadEfficiency, startingPower } from '#engine/inverter/rules.ts';
import { throughWatts } from '#engine/inverter/watts.ts';
import { run } from '#rule/rule.ts';
import type { Row } from './row.ts';

const ohm = 'power in = power out ÷ efficiency, worked out by hand';
const common = 'common practice, off-grid inverters in use';

const values = { inverterEfficiency: inverterEfficiency.value, loadedVoltage: 12 };
const ac = (name: string, powerW: number, isInput?: boolean) => ({
  loads: [{ name, count: 1, powerW, supply: 'ac' as const, isInput }],
  mainsV: 230,
});

export const rows: readonly Row[] = [
  {
    id: 'E3-01',
    from: ohm,
    how: 'recomputed',
    gives: 92.6,
    within: 0.1,
    run: () => run(batteryCurrent, { P: 1000, eta: 0.9, V: 12 }),
  },
  {
    id: 'E3-01.full',
    from: ohm,
    how: 'recomputed',
    gives: 92.6,
    within: 0.1,
    run: () => batteryCurrentA(1000, 1000, values),
  },
  {
    id: 'E3-02',
    from: ohm,
    how: 'recomputed',
    gives: 101,
    within: 0.1,
    run: () => run(batteryCurrent, { P: 1000, eta: 0.9, V: 11 }),
  },
  {
    id: 'E3-03',
    from: ohm,
    how: 'recomputed',
    gives: 86.8,
    within: 0.1,
    run: () => batteryCurrentA(2000, 2000, { ...values, loadedVoltage: loadedVoltage(25.6, true).value }),
  },
  {
    id: 'E3-04.idle',
    from: 'arithmetic: 10 W for a day at 12 V',
    how: 'recomputed',
    gives: 20,
    within: 1e-9,
    run: () => run(idleUse, { P_0: 10, t: 24, V: 12 }),
  },
  {
    id: 'E3-05',
    from: common,
    how: 'memory',
    gives: 0.65,
    within: 0.12,
    differs:
      'a 4 kW inverter at 80 W: the part-load curve of PVWatts knows less idle draw than the one measured',
    run: () => run(partLoadEfficiency, { eta_n: 0.9, z: 80 / 4000 }),
  },
  {
    id: 'E3-06',
    from: common,
    how: 'memory',
    gives: 0.85,
    within: 0.05,
    run: () => run(partLoadEfficiency, { eta_n: 0.9, z: 0.1 }),
  },
  {
    id: 'E3-07',
    from: 'NEMA MG 1 articles: motors across the line start at 5 to 8 times',
    how: 'seen',
    gives: 5,
    within: 1.5,
    differs: 'ours is for small compressors behind an inverter, which limits the current: 4 times',
    run: () =>
      run(startingPower, {
        P: 1000,
        P_m: 1000,
        k_s: present(present(applianceOf('air conditioner')).surge),
      }) / 1000,
  },
  {
    id: 'E2-05.trap-11.700W',
    from: 'common practice: a 700 W microwave takes about 1,100 W',
    how: 'memory',
    gives: 1100,
    within: 30,
    run: () => throughWatts(ac('microwave', 700), {}),
  },
  {
    id: 'E2-05.trap-11.1000W',
    from: 'common practice: a 1,000 W microwave takes 1,500–1,600 W',
    how: 'memory',
    gives: 1550,
    within: 50,
    run: () => throughWatts(ac('microwave', 1000), {}),
  },
  {
    id: 'E2-05.trap-11.input',
    from: 'definition: amps times volts on the plate are the input',
    how: 'recomputed',
    gives: 1200,
    within: 1e-9,
    run: () => throughWatts(ac('microwave', 1200, true), {}),
  },
  {
    id: 'E3-04.trap-12',
    from: 'arithmetic: 10 W idle for a day against a 60 W lamp for 3 h, both at 12 V',
    how: 'recomputed',
    gives: 20 - 15,
    within: 1e-9,
    run: () => run(idleUse, { P_0: 10, t: 24, V: 12 }) - (60 * 3) / 12,
  },
];
