import { describe, expect, test } from 'vitest';
import { facts, type Row } from './reading.ts';

const batteries: readonly Row[] = [
  ['100ah agm', { batteries: [{ capacityAh: 100, chemistry: 'agm' }] }],
  ['AGM 100 Ah', { batteries: [{ capacityAh: 100, chemistry: 'agm' }] }],
  ['a hundred amp hour agm', { batteries: [{ capacityAh: 100, chemistry: 'agm' }] }],
  ['100 amp hours of lithium', { batteries: [{ capacityAh: 100, chemistry: 'lfp' }] }],
  ['100 amp-hour LiFePO4 battery', { batteries: [{ capacityAh: 100, chemistry: 'lfp' }] }],
  ['lithum 100 ahr', { batteries: [{ capacityAh: 100, chemistry: 'lfp' }] }],
  ['a 100 amp battery', { batteries: [{ capacityAh: 100 }] }],
  ['100A agm in the boot', { batteries: [{ capacityAh: 100, chemistry: 'agm' }] }],
  ['1 x 120 amp gel', { batteries: [{ capacityAh: 120, chemistry: 'gel' }] }],
  ['two 100ah agms', { batteries: [{ count: 2, capacityAh: 100, chemistry: 'agm' }] }],
  ['2x100ah agm', { batteries: [{ count: 2, capacityAh: 100, chemistry: 'agm' }] }],
  ['2 × 100 Ah AGM', { batteries: [{ count: 2, capacityAh: 100, chemistry: 'agm' }] }],
  ['100ah agm x2', { batteries: [{ count: 2, capacityAh: 100, chemistry: 'agm' }] }],
  ['a pair of 105ah gels', { batteries: [{ count: 2, capacityAh: 105, chemistry: 'gel' }] }],
  [
    'three 12v 90ah wet cells',
    { batteries: [{ count: 3, capacityAh: 90, voltageV: 12, chemistry: 'flooded' }] },
  ],
  [
    '2 6v 220ah in series',
    { batteries: [{ count: 2, capacityAh: 220, voltageV: 6 }], arrangement: 'series' },
  ],
  ['12.8v 200ah lithium', { batteries: [{ capacityAh: 200, voltageV: 12.8, chemistry: 'lfp' }] }],
  ['12v/100ah lead acid', { batteries: [{ capacityAh: 100, voltageV: 12, chemistry: 'lead-acid' }] }],
  ['leisure battery, 95Ah, AGM', { batteries: [{ capacityAh: 95, chemistry: 'agm' }] }],
  [
    'my house battery is a 130ah deep cycle agm',
    { batteries: [{ capacityAh: 130, chemistry: 'agm', role: 'house' }] },
  ],
  [
    'starter is a 70ah flooded, house is 100ah lithium',
    {
      batteries: [
        { capacityAh: 70, chemistry: 'flooded', role: 'starter' },
        { capacityAh: 100, chemistry: 'lfp', role: 'house' },
      ],
    },
  ],
  ['80ah car battery', { batteries: [{ capacityAh: 80, role: 'starter' }] }],
  ['agm or lithium?', { batteries: [{ chemistry: 'agm' }, { chemistry: 'lfp' }] }],
  [
    '100ah agm vs 60ah lithium',
    {
      batteries: [
        { capacityAh: 100, chemistry: 'agm' },
        { capacityAh: 60, chemistry: 'lfp' },
      ],
    },
  ],
  ['1.28kwh lithium', { batteries: [{ energyWh: 1280, chemistry: 'lfp' }] }],
  ['1,500 Wh power station', { batteries: [{ energyWh: 1500 }] }],
  ['20000mAh power bank', { batteries: [{ energyWh: 74 }] }],
  [
    'a 75 and a 100ah agm in parallel',
    { batteries: [{ capacityAh: 75 }, { capacityAh: 100, chemistry: 'agm' }], arrangement: 'parallel' },
  ],
  ['100ah lithium at 60%', { batteries: [{ capacityAh: 100, chemistry: 'lfp', stateOfChargePercent: 60 }] }],
  [
    '100ah lithium, 60 percent',
    { batteries: [{ capacityAh: 100, chemistry: 'lfp', stateOfChargePercent: 60 }] },
  ],
  ['battery down to 45 %', { batteries: [{ stateOfChargePercent: 45 }] }],
  ['about 30% left in the agm', { batteries: [{ chemistry: 'agm', stateOfChargePercent: 30 }] }],
  ['a half flat 100ah agm', { batteries: [{ capacityAh: 100, chemistry: 'agm', stateOfChargePercent: 50 }] }],
  [
    '100ah agm, fully charged',
    { batteries: [{ capacityAh: 100, chemistry: 'agm', stateOfChargePercent: 100 }] },
  ],
  [
    '100ah agm full, fridge 1a',
    { batteries: [{ capacityAh: 100, chemistry: 'agm', stateOfChargePercent: 100 }] },
  ],
  [
    'using only 80% of my 100ah lithium',
    { batteries: [{ capacityAh: 100, chemistry: 'lfp' }], depthOfDischargePercent: 80 },
  ],
  [
    '100ah lithium run down to 20%',
    { batteries: [{ capacityAh: 100, chemistry: 'lfp' }], depthOfDischargePercent: 80 },
  ],
];

const more: readonly Row[] = [
  [
    'four 12v 100ah lithium, two in series and two in parallel',
    {
      batteries: [{ count: 4, capacityAh: 100, voltageV: 12, chemistry: 'lfp' }],
      arrangement: 'series',
      systemVoltageV: 24,
    },
  ],
  [
    '4 x 100ah in 2s2p',
    { batteries: [{ count: 4, capacityAh: 100 }], arrangement: 'series', systemVoltageV: 24 },
  ],
  ['three 100 lithiums', { batteries: [{ count: 3, capacityAh: 100, chemistry: 'lfp' }] }],
  ['swap the agm for a 100ah lithium', { batteries: [{ capacityAh: 100, chemistry: 'lfp' }] }],
  [
    '100ah agm from 20 to 80%',
    { batteries: [{ capacityAh: 100, chemistry: 'agm', stateOfChargePercent: 20 }], targetChargePercent: 80 },
  ],
  [
    'how long till 20% on a 100ah lithium with a 2a fan',
    { depthOfDischargePercent: 80, loads: [{ name: 'fan', currentA: 2 }] },
  ],
  ['fridge 48w, runs a third of the time', { loads: [{ name: 'fridge', powerW: 48, dutyPercent: 33 }] }],
  [
    '6 x 2w led downlights 4 hours',
    { loads: [{ name: 'led downlight', count: 6, powerW: 2, hoursPerDay: 4 }] },
  ],
  ['3a of lights and fans', { loads: [{ name: 'light and fan', currentA: 3 }] }],
  ['25a no-name charger on mains', { chargers: [{ kind: 'mains', currentA: 25 }] }],
  ['a 1kw suitcase genny', { chargers: [{ kind: 'generator', powerW: 1000 }] }],
  ['160w flat in hobart in july', { solar: [{ powerW: 160 }], mount: 'flat', place: 'Hobart', month: 7 }],
  ['fixed 14.2v alternator, agm', { alternator: 'fixed', batteries: [{ chemistry: 'agm' }] }],
  ['on the road 3 hours every second day', { drivingHoursPerDay: 1.5 }],
  ['can i charge lithium at -5', { ambientC: -5 }],
  ['minus 3 overnight', { ambientC: -3 }],
  [
    '2000w generator at 1800 m altitude',
    { altitudeM: 1800, chargers: [{ kind: 'generator', powerW: 2000 }] },
  ],
];

const solar: readonly Row[] = [
  ['200w panel', { solar: [{ powerW: 200 }] }],
  ['200 watts of solar', { solar: [{ powerW: 200 }] }],
  ['solar 200w', { solar: [{ powerW: 200 }] }],
  ['two 110w panels', { solar: [{ count: 2, powerW: 110 }] }],
  ['2x110w solar, mppt', { solar: [{ count: 2, powerW: 110, controller: 'mppt' }] }],
  ['160w blanket pwm', { solar: [{ powerW: 160, controller: 'pwm' }] }],
  ['300w on the roof in broome in june', { solar: [{ powerW: 300 }], place: 'Broome', month: 6 }],
  ['120w panel, 5 sun hours', { solar: [{ powerW: 120 }], peakSunHours: 5 }],
  ['120w panel with four and a half hours of sun', { solar: [{ powerW: 120 }], peakSunHours: 4.5 }],
  ['5.2 peak sun hours', { peakSunHours: 5.2 }],
  ['120w panel flat on the roof', { solar: [{ powerW: 120 }], mount: 'flat' }],
  ['120w panel tilted at the sun', { solar: [{ powerW: 120 }], mount: 'tilted' }],
  ['120w panel under the trees', { solar: [{ powerW: 120 }], shade: 'heavy' }],
  ['120w panel, partly shaded', { solar: [{ powerW: 120 }], shade: 'half' }],
  ['120w panel when its cloudy', { solar: [{ powerW: 120 }], sky: 'overcast' }],
  ['120w panel, clear skies', { solar: [{ powerW: 120 }], sky: 'sunny' }],
  ['200w solar making about 60ah a day', { solar: [{ powerW: 200 }], solarAhPerDay: 60 }],
  ['120w panel and a 60w fridge', { solar: [{ powerW: 120 }], loads: [{ name: 'fridge', powerW: 60 }] }],
  [
    '60w fridge, 120w',
    { solar: [{ powerW: 120 }], loads: [{ name: 'fridge', powerW: 60 }], month: 1, missing: true },
  ],
  ['what will 150w make near hobart next month', { solar: [{ powerW: 150 }], place: 'Hobart', month: 6 }],
  ['100w panel this month in perth', { solar: [{ powerW: 100 }], place: 'Perth', month: 5 }],
  ['can we get by in may', { month: 5 }],
];

const charging: readonly Row[] = [
  ['25a dcdc', { chargers: [{ kind: 'dcdc', currentA: 25 }] }],
  ['25 amp DC-DC charger', { chargers: [{ kind: 'dcdc', currentA: 25 }] }],
  ['a dc to dc of 25 amps', { chargers: [{ kind: 'dcdc', currentA: 25 }] }],
  ['b2b 30A', { chargers: [{ kind: 'dcdc', currentA: 30 }] }],
  ['20ah dcdc', { chargers: [{ kind: 'dcdc', currentA: 20 }] }],
  ['10a mains charger', { chargers: [{ kind: 'mains', currentA: 10 }] }],
  ['10a charger on 230v', { chargers: [{ kind: 'mains', currentA: 10 }] }],
  ['on hook-up with a 10 amp charger', { chargers: [{ kind: 'mains', currentA: 10 }] }],
  ['a wall brick of 200w', { chargers: [{ kind: 'mains', powerW: 200 }] }],
  [
    '1kw genny and a 40a charger',
    {
      chargers: [
        { kind: 'generator', powerW: 1000 },
        { kind: 'mains', currentA: 40 },
      ],
    },
  ],
  ['2 kVA generator', { chargers: [{ kind: 'generator', powerW: 2000 }] }],
  [
    'how long to put 40ah back with a 20a dcdc',
    { chargers: [{ kind: 'dcdc', currentA: 20 }], chargeNeededAh: 40 },
  ],
  [
    'need to put 40 amps back in the agm, 20ah dc-dc',
    { chargers: [{ kind: 'dcdc', currentA: 20 }], chargeNeededAh: 40 },
  ],
  [
    '100ah agm from 40% to 80% with a 25a charger',
    {
      batteries: [{ capacityAh: 100, chemistry: 'agm', stateOfChargePercent: 40 }],
      targetChargePercent: 80,
      chargers: [{ kind: 'mains', currentA: 25 }],
    },
  ],
  [
    'drive 2 hours a day with a 25a dcdc',
    { drivingHoursPerDay: 2, chargers: [{ kind: 'dcdc', currentA: 25 }] },
  ],
  ["an hour's drive each day", { drivingHoursPerDay: 1 }],
  ['3h driving daily', { drivingHoursPerDay: 3 }],
  [
    'smart alternator, 100ah agm',
    { alternator: 'smart', batteries: [{ capacityAh: 100, chemistry: 'agm' }] },
  ],
];

const inverters: readonly Row[] = [
  ['2000w inverter', { inverter: { powerW: 2000 } }],
  ['2kW inverter', { inverter: { powerW: 2000 } }],
  ['2k inverter', { inverter: { powerW: 2000 } }],
  ['inverter of 1,500 watts', { inverter: { powerW: 1500 } }],
  ['1500W pure sine', { inverter: { powerW: 1500, wave: 'pure-sine' } }],
  ['600w modified sine wave inverter', { inverter: { powerW: 600, wave: 'modified-sine' } }],
  ['2.000 W inverter', { inverter: { powerW: 2000 } }],
  [
    'will a 1200w inverter run a 900w toaster',
    { inverter: { powerW: 1200 }, loads: [{ name: 'toaster', powerW: 900, supply: 'ac' }] },
  ],
  [
    '900w toaster on a 1200w inverter',
    { inverter: { powerW: 1200 }, loads: [{ name: 'toaster', powerW: 900, supply: 'ac' }] },
  ],
  [
    'toaster (900w) + kettle (2kw), 3kw inverter',
    {
      inverter: { powerW: 3000 },
      loads: [
        { name: 'toaster', powerW: 900, supply: 'ac' },
        { name: 'kettle', powerW: 2000, supply: 'ac' },
      ],
    },
  ],
  [
    '1000w inverter, blender 500w 5 mins',
    { inverter: { powerW: 1000 }, loads: [{ name: 'blender', powerW: 500, minutesPerDay: 5, supply: 'ac' }] },
  ],
];

const cables: readonly Row[] = [
  ['5m of 6mm2 at 20a, drop?', { cable: { lengthM: 5, areaMm2: 6, currentA: 20 } }],
  ['drop on 4 metres of 10mm² with 30 amps', { cable: { lengthM: 4, areaMm2: 10, currentA: 30 } }],
  ['20 feet of 10 awg carrying 15 amps', { cable: { lengthM: 6.096, awg: 10, currentA: 15 } }],
  ["20' of 10awg, 15A", { cable: { lengthM: 6.096, awg: 10, currentA: 15 } }],
  ['what cable for 12 amps over 7m', { cable: { lengthM: 7, currentA: 12 } }],
  [
    'what b&s for a 30a dcdc 4 m away',
    { cable: { lengthM: 4, currentA: 30 }, chargers: [{ kind: 'dcdc', currentA: 30 }] },
  ],
  ['8 b&s, 3m, 40a, whats the drop', { cable: { lengthM: 3, awg: 8, currentA: 40 } }],
  ['2/0 awg 2m 200A drop?', { cable: { lengthM: 2, awg: -1, currentA: 200 } }],
  ['#8 wire 10 ft 20 amps', { cable: { lengthM: 3.048, awg: 8, currentA: 20 } }],
  ['6mm auto cable 5m 15a', { cable: { lengthM: 5, autoCableMm: 6, currentA: 15 } }],
  ['6 mm cable 5m 15a', { cable: { lengthM: 5, areaMm2: 6, currentA: 15 } }],
  ['4 sq mm, 5m, 10 amps, what drop', { cable: { lengthM: 5, areaMm2: 4, currentA: 10 } }],
  ['16 square on a 3 metre run at 60 amps', { cable: { lengthM: 3, areaMm2: 16, currentA: 60 } }],
  [
    'cable for a 10a fridge 6m away, 3% max',
    { cable: { lengthM: 6, currentA: 10, dropLimitPercent: 3 }, loads: [{ name: 'fridge', currentA: 10 }] },
  ],
  ['what cable for 10a, 4 m there and back', { cable: { lengthM: 4, currentA: 10, isRoundTrip: true } }],
  ['fuse for 20a on 6mm2', { cable: { areaMm2: 6, currentA: 20 } }],
  ['what fuse for a 9 amp pump', { cable: { currentA: 9 }, loads: [{ name: 'pump', currentA: 9 }] }],
];

const levels: readonly Row[] = [
  [
    'agm at 12.3v rested overnight, how full',
    { volts: 12.3, voltsTaken: 'rest', batteries: [{ chemistry: 'agm' }] },
  ],
  ['battery reads 12,6 V', { volts: 12.6 }],
  ['its showing 12.1 how flat is it', { volts: 12.1 }],
  ['12.4 on the gel after sitting all day, how full', { volts: 12.4, batteries: [{ chemistry: 'gel' }] }],
  ['voltage says 14.2 with the engine on, is it full?', { volts: 14.2, voltsTaken: 'charging' }],
  ['13.1v on the lithium at rest', { volts: 13.1, voltsTaken: 'rest', batteries: [{ chemistry: 'lfp' }] }],
  ['11.9 volts with the fridge running, dead?', { volts: 11.9, voltsTaken: 'load' }],
  ['24v bank reads 25.1 rested', { volts: 25.1, voltsTaken: 'rest' }],
  ['12v fridge 1a', { loads: [{ name: 'fridge', currentA: 1 }] }],
];

describe.for([
  ['batteries', batteries],
  ['more', more],
  ['solar', solar.filter(([, want]) => !('missing' in want))],
  ['charging', charging],
  ['inverters', inverters],
  ['cables and fuses', cables],
  ['how full', levels],
] as const)('%s', ([, rows]) => {
  test.for(rows)('%s', ([text, want]) => {
    const got = facts(text) as Record<string, unknown>;
    expect(Object.fromEntries(Object.keys(want).map(key => [key, got[key]]))).toEqual(want);
  });
});
