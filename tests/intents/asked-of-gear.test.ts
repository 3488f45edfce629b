import { expect, test } from 'vitest';
import { batteryBank } from '#intents/battery-bank/intent.ts';
import { joiningAsides } from '#intents/battery-bank/joining-table.ts';
import { buyingAsides } from '#intents/battery-type/buying-table.ts';
import { batteryType } from '#intents/battery-type/intent.ts';
import { livingAsides } from '#intents/battery-type/living-table.ts';
import { chargePath } from '#intents/charge-path/intent.ts';
import { wayAsides } from '#intents/charge-path/ways-table.ts';
import { compare } from '#intents/compare/intent.ts';
import { namedAsides } from '#intents/compare/names-table.ts';
import { checkAsides } from '#intents/fault/checks-table.ts';
import { fault } from '#intents/fault/intent.ts';
import { normalAsides } from '#intents/fault/normal-table.ts';
import { handlingAsides } from '#intents/solar-wiring/handling-table.ts';
import { solarWiring } from '#intents/solar-wiring/intent.ts';
import { term } from '#intents/term/intent.ts';
import type { Stated } from '#rig/rig.ts';
import { first, misfits } from './beside.ts';

test.for([
  ['living', livingAsides],
  ['buying', buyingAsides],
  ['normal', normalAsides],
  ['checks', checkAsides],
  ['names', namedAsides],
  ['ways', wayAsides],
  ['joining', joiningAsides],
  ['handling', handlingAsides],
] as const)('%s: each aside fits a phone, and has a name of its own', ([, rows]) =>
  expect(misfits(rows, { lines: 3, letters: 450 })).toEqual([]),
);

const agm = { batteries: [{ count: 1, chemistry: 'agm' as const }] };
const lithium = { batteries: [{ count: 1, chemistry: 'lfp' as const }] };
const charging = (volts: number, chemistry?: 'agm' | 'lfp') => ({
  volts,
  voltsTaken: 'charging' as const,
  ...(chemistry && { batteries: [{ count: 1, chemistry }] }),
});

/** What is asked, what is told, and the first line: one row of each kind of sub-question, and near misses of the wide ones. */
test.for<[string, unknown, string, Stated, RegExp]>([
  ['how deep, lead', batteryType, 'how low may I take my agm?', agm, /^Lead-acid to about half, 12\.\d V/],
  [
    'how deep, lithium',
    batteryType,
    'how low can I take a lithium?',
    lithium,
    /^Lithium: down to 10 or 20 %/,
  ],
  [
    'what volts',
    batteryType,
    'what voltage should I charge it at?',
    agm,
    /^Charge AGM at 14\.2 to 14\.7 V, then float/,
  ],
  [
    'may it freeze',
    batteryType,
    'at what point does an agm freeze?',
    agm,
    /^A flat one freezes from about -10 °C/,
  ],
  ['use in frost', batteryType, 'but discharging it is fine?', lithium, /^Yes, lithium may be used/],
  [
    'how to store',
    batteryType,
    'winter storage of lithium, full or half?',
    lithium,
    /^Store lithium at about half/,
  ],
  [
    'is it real',
    batteryType,
    'what is the catch, 200Ah that cheap',
    { batteries: [{ count: 1, capacityAh: 200 }] },
    /about 24 kg, of AGM 60 kg/,
  ],
  ['used', batteryType, 'is a used agm any good?', agm, /^Only if it passes a test/],
  [
    'starter for camping',
    batteryType,
    'is a leisure battery just a car battery?',
    {},
    /^A car battery is made to start/,
  ],
  ['still weighed', batteryType, 'agm or lithium?', {}, /lithium gives more: about 80 Ah/],
  ['blinks', fault, 'the charger light flashes red, what now', {}, /^Each maker has its own blinks/],
  [
    'lamps that flicker',
    fault,
    'lights flicker when the pump runs',
    { loads: [{ name: 'light' }, { name: 'pump' }] },
    /^The cable they share/,
  ],
  ['is it killed', fault, 'have I ruined my agm?', agm, /^Once, mostly not/],
  [
    'charging volts, right',
    fault,
    'is that too high?',
    charging(14.4, 'agm'),
    /^All fine: 14\.4 V is absorption/,
  ],
  ['charging volts, high', fault, 'is that too high?', charging(14.8, 'lfp'), /^A bit high: 14\.8 V/],
  [
    'over the label',
    fault,
    'the label says max 14.4, ok?',
    charging(14.6),
    /^The battery’s label goes first/,
  ],
  [
    'a breaker near its rating',
    fault,
    'the breaker trips after a while',
    { fuseA: 50, cable: { currentA: 45 } },
    /carries 90 % of its rating/,
  ],
  [
    'a breaker with room',
    fault,
    'the breaker trips after a while',
    { fuseA: 50, cable: { currentA: 20 } },
    /^No bigger fuse/,
  ],
  [
    'a test that was read',
    fault,
    'did the test, is it dead?',
    {
      batteries: [{ count: 1, capacityAh: 100, chemistry: 'agm' }],
      loads: [{ name: 'lamp', currentA: 5 }],
      durationH: 5,
    },
    /^That is about 25 Ah out of 100 Ah: worn/,
  ],
  ['cranking, pass', fault, 'it dips while cranking, pass or fail', { volts: 10.1 }, /^Pass: 10\.1 V/],
  ['cranking, weak', fault, 'it dips while cranking, pass or fail', { volts: 8.5 }, /^Weak: 8\.5 V/],
  ['a dead cell', fault, 'still reads that after a full charge', { volts: 10.5 }, /^Most likely a dead cell/],
  ['no meter', fault, 'I have no multimeter', {}, /^Then try it with the engine on/],
  [
    'where the shunt',
    fault,
    'does the shunt go on the plus or the minus?',
    {},
    /^The shunt goes in the minus/,
  ],
  [
    'fridge by inverter',
    compare,
    'fridge on 12v or through the inverter?',
    { loads: [{ name: 'fridge' }] },
    /^Straight from 12 V/,
  ],
  [
    'most amps',
    chargePath,
    'max charge current?',
    { batteries: [{ count: 1, capacityAh: 100, chemistry: 'lfp' }] },
    /^About 50 A for 100 Ah lithium/,
  ],
  [
    'chargers together, too much',
    chargePath,
    'all chargers at once?',
    {
      batteries: [{ count: 1, capacityAh: 80, chemistry: 'agm' }],
      chargers: [
        { kind: 'mains', currentA: 20 },
        { kind: 'dcdc', currentA: 20 },
      ],
    },
    /40 A is over the 24 A/,
  ],
  [
    'chargers together, fine',
    chargePath,
    'all chargers at once?',
    {
      batteries: [{ count: 1, capacityAh: 200, chemistry: 'agm' }],
      chargers: [
        { kind: 'mains', currentA: 20 },
        { kind: 'dcdc', currentA: 20 },
      ],
    },
    /40 A is within the 60 A/,
  ],
  ['still the choice', chargePath, 'isolator or dcdc?', {}, /^DC-DC charger/],
  [
    'one big or two',
    batteryBank,
    'is one 200 better than two 100s?',
    {
      batteries: [
        { count: 1, capacityAh: 200 },
        { count: 2, capacityAh: 100 },
      ],
    },
    /^The same amp hours/,
  ],
  [
    'alike ones',
    batteryBank,
    'two of the same age in parallel, ok?',
    { batteries: [{ count: 2, chemistry: 'agm' }], arrangement: 'parallel' },
    /^Yes, alike ones may/,
  ],
  [
    'series and amps',
    solarWiring,
    'do two in series make more amps?',
    { solar: [{ count: 2, powerW: 100 }], arrangement: 'series' },
    /^No: series adds the volts/,
  ],
  ['off first', solarWiring, 'which do I disconnect first?', {}, /^Panel off first/],
  [
    'no controller',
    solarWiring,
    'what happens with the panel straight on the battery, no controller?',
    {},
    /^No, use a controller/,
  ],
  ['a label', term, 'my display says LVD and all is dark', {}, /^LVD or LVC is the low-voltage cut-off/],
  ['welding', term, 'must I disconnect the battery to weld on the trailer?', {}, /^Yes: both leads off/],
  ['on a panel', term, 'may I walk on the panel?', {}, /^Don’t walk on a panel/],
  ['a walk beside a panel', term, 'we walk while the panel charges', {}, /^I'm not sure which word/],
  ['a doubter asks no weight', batteryType, 'does anyone actually believe in lithium?', {}, /^(?!Weigh it)/],
  ['a meter that was used', fault, 'no lights, I checked the fuse with the meter', {}, /^(?!Then try it)/],
  [
    'no battery',
    solarWiring,
    'can the panel stay on a controller with no battery?',
    {},
    /^(?!No, use a controller)/,
  ],
  [
    'a used fridge that runs on',
    fault,
    'bought the fridge used and it never stops',
    { loads: [{ name: 'fridge' }] },
    /^(?!Run it on)/,
  ],
])('%s', ([, intent, text, facts, line]) => expect(first(intent, text, facts)).toMatch(line));
