import { expect, test } from 'vitest';
import { ruledOut, type Told } from '#language/hazards/told.ts';
import type { HazardCode } from '#rig/hazard-codes.ts';

const starter = { capacityAh: 80, role: 'starter' };

test.for<[name: string, told: Told, codes: HazardCode[]]>([
  [
    'a limit that holds',
    {
      batteries: [{ chemistry: 'lfp', maxCurrentA: 150 }],
      inverter: { powerW: 1500 },
      loads: [{ name: 'kettle', powerW: 1200 }],
    },
    ['over-current'],
  ],
  [
    'a limit that is passed',
    {
      batteries: [{ chemistry: 'lfp', maxCurrentA: 50 }],
      inverter: { powerW: 1500 },
      loads: [{ name: 'kettle', powerW: 1200 }],
    },
    [],
  ],
  ['a limit, and nothing asked of it', { batteries: [{ maxCurrentA: 50 }] }, []],
  [
    'a cable that nobody judged',
    { batteries: [{ maxCurrentA: 150 }], loads: [{ name: 'kettle', powerW: 1200 }], cable: { areaMm2: 1.5 } },
    [],
  ],
  ['AGM in the frost', { frost: true, batteries: [{ chemistry: 'agm' }] }, ['cold-charge']],
  ['3 °C', { ambientC: 3 }, ['cold-charge']],
  ['2 °C', { ambientC: 2 }, []],
  ['8 °C by day and frost told', { ambientC: 8, frost: true }, []],
  [
    'little out of the starter',
    { batteries: [starter], loads: [{ name: 'radio', currentA: 1 }], durationH: 3 },
    ['starter-flat'],
  ],
  [
    'a seventh out of the starter',
    { batteries: [starter], loads: [{ name: 'fridge', currentA: 4 }], durationH: 3 },
    ['starter-flat'],
  ],
  [
    'more out of the starter',
    { batteries: [starter], loads: [{ name: 'fridge', currentA: 4 }], durationH: 4 },
    [],
  ],
  [
    'one of two loads without its hours',
    { batteries: [starter], loads: [{ currentA: 1, hoursOnce: 3 }, { currentA: 9 }] },
    [],
  ],
  ['nothing told', {}, []],
])('facts rule out: %s', ([, told, codes]) => {
  expect(ruledOut(told)).toEqual(codes);
});
