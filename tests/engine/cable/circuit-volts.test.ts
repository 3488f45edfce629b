import { expect, test } from 'vitest';
import { circuitVoltage } from '#engine/cable/circuit-volts.ts';
import type { Facts } from '#rig/rig.ts';

test.for<[says: string, facts: Facts, volts: number]>([
  ['nothing told', {}, 12],
  ['a 24 V system', { systemVoltageV: 24 }, 24],
  ['one lithium of 24 V', { batteries: [{ count: 1, voltageV: 24, chemistry: 'lfp' }] }, 24],
  ['two of 100 Ah, joined nobody knows how', { batteries: [{ count: 2, capacityAh: 100 }] }, 12],
  ['two in parallel', { batteries: [{ count: 2, capacityAh: 100 }], arrangement: 'parallel' }, 12],
  ['two in series', { batteries: [{ count: 2, capacityAh: 100 }], arrangement: 'series' }, 24],
  [
    'two of 12 V in series, of no size',
    { batteries: [{ count: 2, voltageV: 12 }], arrangement: 'series' },
    24,
  ],
  ['four in series', { batteries: [{ count: 4, capacityAh: 100 }], arrangement: 'series' }, 48],
  ['two of 6 V in series', { batteries: [{ count: 2, voltageV: 6 }], arrangement: 'series' }, 12],
  [
    'a starter beside them counts for nothing',
    {
      batteries: [
        { count: 1, capacityAh: 70, role: 'starter' },
        { count: 1, capacityAh: 100 },
      ],
      arrangement: 'series',
    },
    12,
  ],
  [
    'panels in series, not the batteries',
    {
      batteries: [{ count: 2, capacityAh: 100 }],
      solar: [{ count: 2, powerW: 100 }],
      arrangement: 'series',
    },
    12,
  ],
  ['a reading of 25.6 V', { volts: 25.6 }, 24],
])('%s: %j is %i V', ([, facts, volts]) => expect(circuitVoltage(facts)).toBe(volts));
