import { describe, expect, test } from 'vitest';
import { facts, type Row } from './reading.ts';

const rows: readonly Row[] = [
  [
    '2 fridges, one 1.2A the other 0.9A',
    {
      loads: [
        { name: 'fridge', currentA: 1.2 },
        { name: 'fridge', currentA: 0.9 },
      ],
    },
  ],
  ['2A fridge, 100A bms', { loads: [{ name: 'fridge', currentA: 2 }] }],
  ['2A fridge, the bms is rated 100 amps', { loads: [{ name: 'fridge', currentA: 2 }] }],
  ['60W fridge cycles half the time', { loads: [{ name: 'fridge', powerW: 60, dutyPercent: 50 }] }],
  ['45W fridge, runs 40 % of the time', { loads: [{ name: 'fridge', powerW: 45, dutyPercent: 40 }] }],

  // before and behind
  ['1.3 amp fridge', { loads: [{ name: 'fridge', currentA: 1.3 }] }],
  ['fridge 1.3A', { loads: [{ name: 'fridge', currentA: 1.3 }] }],
  ['the fridge pulls 1.3 amps', { loads: [{ name: 'fridge', currentA: 1.3 }] }],
  ['Fridge: 1.3 A', { loads: [{ name: 'fridge', currentA: 1.3 }] }],
  ['fridge=1.3a', { loads: [{ name: 'fridge', currentA: 1.3 }] }],
  ['fridge @ 1.3a', { loads: [{ name: 'fridge', currentA: 1.3 }] }],
  ['fridge, 1.3a', { loads: [{ name: 'fridge', currentA: 1.3 }] }],
  ['fridge (1.3A)', { loads: [{ name: 'fridge', currentA: 1.3 }] }],
  ['fridge - 1.3A', { loads: [{ name: 'fridge', currentA: 1.3 }] }],
  ['FRIDGE 1,3 A', { loads: [{ name: 'fridge', currentA: 1.3 }] }],
  ['my fridge uses around 1.3 amps', { loads: [{ name: 'fridge', currentA: 1.3 }] }],
  ['frigde 1.3a', { loads: [{ name: 'fridge', currentA: 1.3 }] }],
  ['fridge .8a', { loads: [{ name: 'fridge', currentA: 0.8 }] }],
  ['a fridge that draws 1½ amps', { loads: [{ name: 'fridge', currentA: 1.5 }] }],
  ['fridge draws two and a half amps', { loads: [{ name: 'fridge', currentA: 2.5 }] }],
  ['fridge draws 800mA', { loads: [{ name: 'fridge', currentA: 0.8 }] }],
  ['fridge 1.1 to 1.4 amps', { loads: [{ name: 'fridge', currentA: 1.4 }] }],
  ['40 watt freezer', { loads: [{ name: 'freezer', powerW: 40 }] }],
  ['coolbox 0.9A average', { loads: [{ name: 'coolbox', currentA: 0.9, isAverage: true }] }],
  ['cool box averaging 0.9A', { loads: [{ name: 'cool box', currentA: 0.9, isAverage: true }] }],
  ['average of 0.9A for the cooler', { loads: [{ name: 'cooler', currentA: 0.9, isAverage: true }] }],
  ['fridge measured at 22 amp hours a day', { loads: [{ name: 'fridge', chargeAhPerDay: 22 }] }],
  ['fridge uses 300wh a day', { loads: [{ name: 'fridge', energyWhPerDay: 300 }] }],
  ['fridge takes 36wh per hour', { loads: [{ name: 'fridge', powerW: 36, isAverage: true }] }],
  // several
  [
    '1.3a fridge 10w lamp 4h',
    {
      loads: [
        { name: 'fridge', currentA: 1.3 },
        { name: 'lamp', powerW: 10, hoursPerDay: 4 },
      ],
    },
  ],
  [
    'fridge 1.3a lamp 10w 4h',
    {
      loads: [
        { name: 'fridge', currentA: 1.3 },
        { name: 'lamp', powerW: 10, hoursPerDay: 4 },
      ],
    },
  ],
  [
    'fridge 1.3a + lamp 10w x 4h',
    {
      loads: [
        { name: 'fridge', currentA: 1.3 },
        { name: 'lamp', powerW: 10, hoursPerDay: 4 },
      ],
    },
  ],
  [
    'lamp 10w 4h n fridge 1.3a',
    {
      loads: [
        { name: 'lamp', powerW: 10, hoursPerDay: 4 },
        { name: 'fridge', currentA: 1.3 },
      ],
    },
  ],
  [
    'fan 2a 8hrs, pump 4a 10 mins, laptop 65w 2 hrs',
    {
      loads: [
        { name: 'fan', currentA: 2, hoursPerDay: 8 },
        { name: 'pump', currentA: 4, minutesPerDay: 10 },
        { name: 'laptop', powerW: 65, hoursPerDay: 2 },
      ],
    },
  ],
  [
    'fridge 1A\nfan 0.5A 6h\nlights 12W 4h',
    {
      loads: [
        { name: 'fridge', currentA: 1 },
        { name: 'fan', currentA: 0.5, hoursPerDay: 6 },
        { name: 'light', powerW: 12, hoursPerDay: 4 },
      ],
    },
  ],
  ['a fan at 1.1 amps for nine hours', { loads: [{ name: 'fan', currentA: 1.1, hoursPerDay: 9 }] }],
  [
    'I run a 30 watt telly three hours every evening',
    { loads: [{ name: 'telly', powerW: 30, hoursPerDay: 3 }] },
  ],
  ['tv 30w for 3h each night', { loads: [{ name: 'tv', powerW: 30, hoursPerDay: 3 }] }],
  ['3 hours a night of telly at 30w', { loads: [{ name: 'telly', powerW: 30, hoursPerDay: 3 }] }],
  ['cpap 40w 7.5 hrs nightly', { loads: [{ name: 'cpap', powerW: 40, hoursPerDay: 7.5 }] }],
  ['cpap machine 40W, 7h30 per night', { loads: [{ name: 'cpap machine', powerW: 40, hoursPerDay: 7.5 }] }],
  ['heater 1.2A 1h 30m a day', { loads: [{ name: 'heater', currentA: 1.2, hoursPerDay: 1.5 }] }],
  [
    'two fans 8w each and a 15w router, 9 hrs',
    {
      loads: [
        { name: 'fan', count: 2, powerW: 8, hoursPerDay: 9 },
        { name: 'router', powerW: 15, hoursPerDay: 9 },
      ],
    },
  ],
  [
    'fairy lights 5 watts from 7pm till 11pm every night',
    { loads: [{ name: 'fairy light', powerW: 5, hoursPerDay: 4 }] },
  ],
  ['radio half an amp two hours', { loads: [{ name: 'radio', currentA: 0.5, hoursPerDay: 2 }] }],
  // how many
  ['4 x 5w lights', { loads: [{ name: 'light', count: 4, powerW: 5 }] }],
  ['4x5w lights', { loads: [{ name: 'light', count: 4, powerW: 5 }] }],
  ['four 5 watt lights', { loads: [{ name: 'light', count: 4, powerW: 5 }] }],
  ['4 lights, 5w each', { loads: [{ name: 'light', count: 4, powerW: 5 }] }],
  ['lights 5w each 4', { loads: [{ name: 'light', count: 4, powerW: 5 }] }],
  ['5w lights x4', { loads: [{ name: 'light', count: 4, powerW: 5 }] }],
  ['5w lights x 4 for 3 hours', { loads: [{ name: 'light', count: 4, powerW: 5, hoursPerDay: 3 }] }],
  ['a couple of 5w lamps 3h', { loads: [{ name: 'lamp', count: 2, powerW: 5, hoursPerDay: 3 }] }],
  ['a dozen led lights at 0.1A each', { loads: [{ name: 'led light', count: 12, currentA: 0.1 }] }],
  ['2 laptops 60w', { loads: [{ name: 'laptop', count: 2, powerW: 60 }] }],
  ['lights 15w total', { loads: [{ name: 'light', powerW: 15 }] }],
  // how often
  ['pump 4A 3 mins five times a day', { loads: [{ name: 'pump', currentA: 4, minutesPerDay: 15 }] }],
  ['pump 4A, 3 minutes, 5x a day', { loads: [{ name: 'pump', currentA: 4, minutesPerDay: 15 }] }],
  [
    'kettle 1800w 5 mins twice a day',
    { loads: [{ name: 'kettle', powerW: 1800, minutesPerDay: 10, supply: 'ac' }] },
  ],
  [
    'coffee machine 1200w, ten minutes each morning',
    { loads: [{ name: 'coffee machine', powerW: 1200, minutesPerDay: 10, supply: 'ac' }] },
  ],
  // round the clock
  ['2A load nonstop', { loads: [{ name: 'load', currentA: 2, hoursPerDay: 24, isAverage: true }] }],
  ['router 10w 24/7', { loads: [{ name: 'router', powerW: 10, hoursPerDay: 24, isAverage: true }] }],
  ['router 10w all day', { loads: [{ name: 'router', powerW: 10, hoursPerDay: 24 }] }],
  ['fan 1A round the clock', { loads: [{ name: 'fan', currentA: 1, hoursPerDay: 24, isAverage: true }] }],
  ['fridge 45w, runs 40% of the time', { loads: [{ name: 'fridge', powerW: 45, dutyPercent: 40 }] }],
  ['fridge 4A with a 35% duty cycle', { loads: [{ name: 'fridge', currentA: 4, dutyPercent: 35 }] }],
  ['fridge 4A on half the time', { loads: [{ name: 'fridge', currentA: 4, dutyPercent: 50 }] }],
  // names nobody lists
  ['5A of stuff', { loads: [{ name: 'stuff', currentA: 5 }] }],
  ['a 30w doodad 3 hours', { loads: [{ name: 'doodad', powerW: 30, hoursPerDay: 3 }] }],
  [
    'doodad 30w 3 hours, fridge 1a',
    {
      loads: [
        { name: 'doodad', powerW: 30, hoursPerDay: 3 },
        { name: 'fridge', currentA: 1 },
      ],
    },
  ],
  ['14 amp heater fan', { loads: [{ name: 'heater fan', currentA: 14 }] }],
  // which side
  ['hair dryer 1200w', { loads: [{ name: 'hair dryer', powerW: 1200, supply: 'ac' }] }],
  ['microwave 8 amps at 120v', { loads: [{ name: 'microwave', powerW: 960, supply: 'ac', isInput: true }] }],
  ['240v fridge 80w', { loads: [{ name: 'fridge', powerW: 80, supply: 'ac' }] }],
  ['fridge 80w on the inverter', { loads: [{ name: 'fridge', powerW: 80, supply: 'ac' }] }],
  ['12v kettle 150w', { loads: [{ name: 'kettle', powerW: 150 }] }],
  [
    'telly 30w, kettle 150w, all 12v',
    {
      loads: [
        { name: 'telly', powerW: 30 },
        { name: 'kettle', powerW: 150 },
      ],
    },
  ],
  // what else people add
  ['40 litre fridge 45w', { loads: [{ name: 'fridge', powerW: 45 }] }],
  ['45w fridge, $900 new', { loads: [{ name: 'fridge', powerW: 45 }] }],
  ['12v 45w fridge', { loads: [{ name: 'fridge', powerW: 45 }] }],
  ['my 10 year old fridge 3A', { loads: [{ name: 'fridge', currentA: 3 }] }],
  ['<b>fridge</b> 1A', { loads: [{ name: 'fridge', currentA: 1 }] }],
  ['**fridge** 1A', { loads: [{ name: 'fridge', currentA: 1 }] }],
  ['[fridge](http://x.example/a?b=5) 1A', { loads: [{ name: 'fridge', currentA: 1 }] }],
  ['🧊 fridge 🔌 1A', { loads: [{ name: 'fridge', currentA: 1 }] }],
  ['fridge ١.٢ A', { loads: [{ name: 'fridge', currentA: 1.2 }] }],
];

describe('loads', () => {
  test.for(rows.map(([text, want]) => [text, want] as const))('%s', ([text, want]) => {
    expect(facts(text)).toMatchObject(want);
    expect((facts(text) as { loads: unknown }).loads).toEqual((want as { loads: unknown }).loads);
  });
});
