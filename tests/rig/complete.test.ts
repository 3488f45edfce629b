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
