import { describe, expect, test } from 'vitest';
import { factsOf } from '#intents/facts.ts';
import type { Stated } from '#rig/rig.ts';

describe('what was told, made ready for the engine', () => {
  test.each<[string, Stated, object]>([
    ['nothing', {}, {}],
    [
      'a thing named alone',
      { loads: [{ name: 'fridge' }] },
      { loads: [{ name: 'fridge', count: 1, supply: 'dc' }] },
    ],
    [
      'what runs on mains',
      { loads: [{ name: 'kettle' }] },
      { loads: [{ name: 'kettle', count: 1, supply: 'ac' }] },
    ],
    [
      'what was told stays',
      { loads: [{ name: 'kettle', count: 2, supply: 'dc', powerW: 170 }] },
      { loads: [{ name: 'kettle', count: 2, supply: 'dc', powerW: 170 }] },
    ],
    [
      'a name that nobody knows',
      { loads: [{ name: 'thingummy', powerW: 30 }] },
      { loads: [{ name: 'thingummy', powerW: 30, count: 1, supply: 'dc' }] },
    ],
    [
      'batteries and panels',
      { batteries: [{ capacityAh: 100 }], solar: [{ powerW: 200 }, { count: 2, powerW: 100 }] },
      {
        batteries: [{ count: 1, capacityAh: 100 }],
        solar: [
          { count: 1, powerW: 200 },
          { count: 2, powerW: 100 },
        ],
      },
    ],
    ['shade of no told size', { shade: true }, { shade: 'half' }],
    [
      'a plan of days',
      { days: [{ drivingH: 4 }, { sky: 'overcast' }, { sky: 'overcast' }] },
      { drivingPlanH: [4, 0, 0], durationH: 72, sky: 'overcast', skyLastDays: 2 },
    ],
    ['days of one sky', { days: [{ sky: 'sunny' }, { sky: 'sunny' }] }, { sky: 'sunny', durationH: 48 }],
    [
      'Ah used of a battery',
      { batteries: [{ capacityAh: 120 }], chargeUsedAh: 45 },
      { batteries: [{ count: 1, capacityAh: 120, stateOfChargePercent: 62.5 }], chargeUsedAh: 45 },
    ],
    [
      'Ah left of two alike',
      { batteries: [{ count: 2, capacityAh: 100 }], chargeLeftAh: 50 },
      { batteries: [{ count: 2, capacityAh: 100, stateOfChargePercent: 25 }], chargeLeftAh: 50 },
    ],
    [
      'a level told comes before what a monitor counts',
      { batteries: [{ capacityAh: 100, stateOfChargePercent: 80 }], chargeLeftAh: 50 },
      { batteries: [{ count: 1, capacityAh: 100, stateOfChargePercent: 80 }], chargeLeftAh: 50 },
    ],
    ['Ah used of who knows what', { chargeUsedAh: 45 }, { chargeUsedAh: 45, chargeNeededAh: 45 }],
    [
      'what goes out by a monitor',
      { netCurrentA: -3.5 },
      {
        netCurrentA: -3.5,
        loads: [{ name: 'load', count: 1, supply: 'dc', currentA: 3.5, isAverage: true }],
      },
    ],
    ['what goes in by a monitor is no load', { netCurrentA: 2 }, { netCurrentA: 2 }],
    [
      'a time told beside the days',
      { days: [{ drivingH: 4 }], durationH: 20 },
      { drivingPlanH: [4], durationH: 20 },
    ],
  ])('%s', (_name, stated, facts) => {
    const { days: _days, ...rest } = factsOf(stated);
    expect(rest).toEqual(facts);
  });

  test('the message itself is not touched', () => {
    const stated: Stated = { loads: [{ name: 'fridge' }] };
    factsOf(stated);
    expect(stated).toEqual({ loads: [{ name: 'fridge' }] });
  });
});
