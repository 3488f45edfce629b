import { describe, expect, test } from 'vitest';
import { hazardsOf, type Told } from '#language/hazards/told.ts';
import type { HazardCode } from '#rig/hazard-codes.ts';

const lfp = { capacityAh: 100, chemistry: 'lfp' };
const agm = { capacityAh: 100, chemistry: 'agm' };

describe('what facts show, on either side of each line', () => {
  test.for<[name: string, told: Told, codes: HazardCode[]]>([
    ['charged at 0 °C', { batteries: [lfp], ambientC: 0, asksCharge: true }, ['cold-charge']],
    ['charged at 1 °C', { batteries: [lfp], ambientC: 1, asksCharge: true }, []],
    [
      'frost told in words',
      { batteries: [lfp], frost: true, chargers: [{ kind: 'mains' }] },
      ['cold-charge'],
    ],
    ['frost and no charging', { batteries: [lfp], frost: true }, []],
    ['AGM in the frost', { batteries: [agm], ambientC: -10, asksCharge: true }, []],
    [
      'BMS just enough',
      {
        batteries: [{ ...lfp, maxCurrentA: 101 }],
        inverter: { powerW: 2000 },
        loads: [{ name: 'hob', powerW: 1130, supply: 'ac' }],
      },
      [],
    ],
    [
      'BMS just passed',
      {
        batteries: [{ ...lfp, maxCurrentA: 100 }],
        inverter: { powerW: 2000 },
        loads: [{ name: 'hob', powerW: 1140, supply: 'ac' }],
      },
      ['over-current'],
    ],
    [
      'two of them in parallel',
      {
        batteries: [{ ...lfp, count: 2, maxCurrentA: 100 }],
        arrangement: 'parallel',
        loads: [{ name: 'hob', powerW: 1800, supply: 'ac' }],
      },
      [],
    ],
    [
      'charger at the limit',
      { batteries: [{ ...lfp, maxCurrentA: 20 }], chargers: [{ kind: 'mains', currentA: 20 }] },
      [],
    ],
    [
      'charger over the limit',
      { batteries: [{ ...lfp, maxCurrentA: 20 }], chargers: [{ kind: 'mains', currentA: 20.2 }] },
      ['over-current'],
    ],
    [
      '24 V halves the current',
      {
        batteries: [{ ...lfp, maxCurrentA: 100 }],
        systemVoltageV: 24,
        loads: [{ name: 'hob', powerW: 2000, supply: 'ac' }],
      },
      [],
    ],
    ['thin cable', { cable: { areaMm2: 1.5, currentA: 20 } }, ['over-current']],
    ['thick cable', { cable: { areaMm2: 6, currentA: 20 } }, []],
    ['2000 W through 16 mm²', { inverter: { powerW: 2000 }, cable: { areaMm2: 16 } }, ['over-current']],
    ['2000 W through 70 mm²', { inverter: { powerW: 2000 }, cable: { areaMm2: 70 } }, []],
    [
      'an 1800 W heater on a mains lead of 2.5 mm², and no inverter',
      { loads: [{ powerW: 1800, supply: 'ac' }], cable: { areaMm2: 2.5 } },
      [],
    ],
    ['a 30 A pump on 1 mm²', { loads: [{ currentA: 30 }], cable: { areaMm2: 1 } }, ['over-current']],
    ['a 20 A compressor on a fuse of 15 A', { loads: [{ currentA: 20 }], fuseA: 15 }, ['over-current']],
    ['a 16 A compressor on a fuse of 15 A', { loads: [{ currentA: 16 }], fuseA: 15 }, []],
    [
      'a small lithium on a bare alternator',
      { batteries: [lfp], chargers: [{ kind: 'isolator' }], alternatorA: 120 },
      ['over-current'],
    ],
    [
      'an AGM on a bare alternator',
      { batteries: [agm], chargers: [{ kind: 'isolator' }], alternatorA: 120 },
      [],
    ],
    [
      'lithium on a bare isolator',
      { batteries: [{ ...lfp, capacityAh: 300 }], chargers: [{ kind: 'isolator' }], alternatorA: 90 },
      ['over-current'],
    ],
    [
      'with a DC-DC',
      { batteries: [{ ...lfp, capacityAh: 300 }], chargers: [{ kind: 'dcdc' }], alternatorA: 90 },
      [],
    ],
    ['kinds mixed', { batteries: [lfp, agm], arrangement: 'parallel' }, ['mixed-parallel']],
    ['kinds apart', { batteries: [lfp, agm] }, []],
    [
      'ages mixed',
      { batteries: [agm, { ...agm, ageYears: 5 }], arrangement: 'parallel' },
      ['mixed-parallel'],
    ],
    [
      'sizes mixed',
      { batteries: [agm, { ...agm, capacityAh: 200 }], arrangement: 'parallel' },
      ['mixed-parallel'],
    ],
    ['alike', { batteries: [agm, agm], arrangement: 'parallel' }, []],
    ['medical', { loads: [{ name: 'CPAP', powerW: 40 }] }, ['medical']],
    ['medical taken out', { loads: [{ name: 'cpap', powerW: 40 }], removed: ['cpap'] }, []],
    [
      'starter two thirds empty',
      {
        batteries: [{ capacityAh: 60, role: 'starter' }],
        loads: [{ name: 'fridge', currentA: 4 }],
        durationH: 10,
      },
      ['starter-flat'],
    ],
    [
      'starter hardly used',
      {
        batteries: [{ capacityAh: 60, role: 'starter' }],
        loads: [{ name: 'radio', currentA: 1 }],
        durationH: 3,
      },
      [],
    ],
    ['nothing', {}, []],
  ])('%s', ([, told, codes]) => {
    expect(hazardsOf(told)).toEqual(codes);
  });
});
