import { expect, test } from 'vitest';
import { chargePathAsides } from '#intents/charge-path/asides-table.ts';
import { chargePath } from '#intents/charge-path/intent.ts';
import { chargeTimeAsides } from '#intents/charge-time/asides-table.ts';
import { chargeTime } from '#intents/charge-time/intent.ts';
import { answerEmergency } from '#intents/emergency/answer.ts';
import { faultAsides } from '#intents/fault/asides-table.ts';
import { fault } from '#intents/fault/intent.ts';
import { generatorAsides } from '#intents/generator/asides-table.ts';
import { generator } from '#intents/generator/intent.ts';
import { solarSizeAsides } from '#intents/solar-size/asides-table.ts';
import { solarSize } from '#intents/solar-size/intent.ts';
import { solarWiringAsides } from '#intents/solar-wiring/asides-table.ts';
import { solarWiring } from '#intents/solar-wiring/intent.ts';
import { solarYieldAsides } from '#intents/solar-yield/asides-table.ts';
import { solarYield } from '#intents/solar-yield/intent.ts';
import { recognise } from '#language/recognise/recognise.ts';
import type { HazardCode } from '#rig/hazard-codes.ts';
import type { Stated } from '#rig/rig.ts';
import { first, misfits } from './beside.ts';

const tables = {
  fault: faultAsides,
  chargePath: chargePathAsides,
  chargeTime: chargeTimeAsides,
  generator: generatorAsides,
  solarSize: solarSizeAsides,
  solarWiring: solarWiringAsides,
  solarYield: solarYieldAsides,
};

test.for(Object.entries(tables))('%s: each aside fits a phone, and has a name of its own', ([, rows]) =>
  expect(misfits(rows, { lines: 3, letters: 450 })).toEqual([]),
);

const lfp = { batteries: [{ count: 1, chemistry: 'lfp' as const }] };

test.for([
  [
    chargePath,
    'could I link the camper to the ute with jumper leads on the road',
    {},
    /^No, not on the road/,
  ],
  [chargePath, 'how much current comes down a 7 pin plug', {}, /^Little: 5 to 10 A/],
  [chargePath, 'may the freezer run while driving', {}, /^Yes, with the engine running/],
  [chargePath, 'mine was built in 1994', {}, /^An isolator will do: the alternator holds a fixed voltage/],
  [chargePath, 'ours is a 2021', {}, /^DC-DC charger: a smart alternator/],
  [chargePath, 'how much can the alternator handle', { alternatorA: 90 }, /^About 45 A for long/],
  [chargePath, 'it climbs to 15.4', { ...lfp, volts: 15.4 }, /^Too high: 15.4 V is more than the 14.6 V/],
  [chargePath, 'isolator or dcdc', {}, /^DC-DC charger: it suits any alternator/],
  [
    chargeTime,
    'what size charger',
    { batteries: [{ count: 1, chemistry: 'gel', capacityAh: 120 }] },
    /^A 12 to 24 A charger/,
  ],
  [chargeTime, 'can I leave the charger on all winter', {}, /^A smart charger/],
  [chargeTime, 'is using it ok though', {}, /^Yes: using lithium in the cold is fine/],
  [chargeTime, 'does a larger battery charge slower', {}, /^From empty, yes/],
  [
    chargeTime,
    'leave a 10A charger on all night',
    { batteries: [{ count: 1, capacityAh: 100 }], chargers: [{ kind: 'mains', currentA: 10 }] },
    /^About \d+ hours on the charger/,
  ],
  [
    solarWiring,
    'what size controller',
    { solar: [{ count: 1, powerW: 200 }] },
    /^A \d+ A controller: 200 W gives/,
  ],
  [solarWiring, 'pwm or mppt', { solar: [{ count: 1, powerW: 80 }] }, /^A PWM will do for 80 W/],
  [solarWiring, 'pwm or mppt', { solar: [{ count: 1, powerW: 330 }] }, /^MPPT: about/],
  [solarWiring, 'which order do I join them', {}, /^Battery to the controller first/],
  [solarYield, 'do I need to wash the panels', {}, /^Water and a soft cloth/],
  [
    solarYield,
    '160W panel but it only shows 95, is that right',
    { solar: [{ count: 1, powerW: 160 }] },
    /^Yes, about right: 95 W/,
  ],
  [
    solarYield,
    '2 A off a 200W panel, is that low',
    { solar: [{ count: 1, powerW: 200 }], netCurrentA: 2 },
    /^Low for clear noon: 2 A/,
  ],
  [solarYield, 'flat or tilted, 200W', { solar: [{ count: 1, powerW: 200 }] }, /^200 W makes about/],
  [solarSize, 'can you have too much solar', {}, /^Hardly/],
  [solarSize, 'how small a one to keep the battery full in storage', {}, /^About 10 to 20 W/],
  [generator, 'should a generator be earthed', {}, /^Usually not/],
  [generator, 'how much petrol an hour', {}, /^A 2 kW one drinks/],
  [fault, 'there was a spark when I connected the inverter', {}, /^A short snap is normal/],
  [fault, 'how do I find a parasitic drain', {}, /^All off, a meter in the minus lead/],
  [
    fault,
    'flooded battery sags and is done',
    { batteries: [{ count: 1, chemistry: 'flooded' }] },
    /^(?!Leave it off)/,
  ],
  [fault, 'can it be saved', { volts: 7 }, /^Perhaps in part/],
  [fault, 'is it dead', { volts: 0 }, /^Once does no harm/],
  [fault, 'the dcdc only gives 9 amps', {}, /^Most likely low volts at its input/],
] as const satisfies readonly (readonly [unknown, string, Stated, RegExp])[])(
  '%#: “%s”',
  ([intent, text, facts, says]) => expect(first(intent, text, facts as Stated)).toMatch(says),
);

const now = (text: string, hazards: readonly HazardCode[] = []) =>
  answerEmergency({ recognised: recognise(text), hazards }).headline;

test('an emergency by its danger, by its words, and where nothing is known of it', () => {
  expect(now('the panel charged it at -3', ['cold-charge'])).toMatch(/^Done already\? Stop the charge/);
  expect(now('acid on my fingers')).toMatch(/^Rinse it with running water/);
  expect(now('the alarm is old, surely faulty')).toMatch(/^Trust the alarm: everybody out/);
  expect(now('it has puffed up on one side')).toMatch(/^Don’t use or charge it again/);
  expect(now('help')).toMatch(/^Stop, get everybody out/);
  // A danger to life is never made less of.
  expect(now('help', ['carbon-monoxide'])).toMatch(/^Stop, get everybody out/);
});
