import { expect, test } from 'vitest';
import { type Aside, asideIn } from '#intents/asides.ts';
import { bankAsides } from '#intents/battery-bank/asides-table.ts';
import { sizeAsides } from '#intents/battery-size/asides-table.ts';
import { typeAsides } from '#intents/battery-type/asides-table.ts';
import { batteryType } from '#intents/battery-type/intent.ts';
import { cableAsides } from '#intents/cable-size/asides-table.ts';
import { levelAsides } from '#intents/charge-level/asides-table.ts';
import { chargeLevel } from '#intents/charge-level/intent.ts';
import { compareAsides } from '#intents/compare/asides-table.ts';
import { useAsides } from '#intents/energy-budget/asides-table.ts';
import { fuseAsides } from '#intents/fuse-size/asides-table.ts';
import { fuseSize } from '#intents/fuse-size/intent.ts';
import { needsOf } from '#intents/intent.ts';
import { lastingAsides } from '#intents/run-time/asides-table.ts';
import { starterAsides } from '#intents/starter-reserve/asides-table.ts';
import { starterReserve } from '#intents/starter-reserve/intent.ts';
import { recognise } from '#language/recognise/recognise.ts';

import { first, misfits } from './beside.ts';

const tables: Readonly<Record<string, readonly Aside[]>> = {
  bank: bankAsides,
  cable: cableAsides,
  compare: compareAsides,
  fuse: fuseAsides,
  lasting: lastingAsides,
  level: levelAsides,
  size: sizeAsides,
  starter: starterAsides,
  type: typeAsides,
  use: useAsides,
};

test.for(Object.entries(tables))(
  '%s: each has a name of its own, a first line that a phone shows whole, and few lines more',
  ([, rows]) => expect(misfits(rows, { lines: 3, letters: 600 })).toEqual([]),
);

test.for([
  ['fuse', 'does the fuse go near the battery or near the fridge, where do I put it', 'where'],
  ['fuse', 'why must the fuse sit so close to the battery', 'why-so-close'],
  ['fuse', 'do I fuse the negative lead too', 'in-the-minus'],
  ['fuse', 'what kind of fuse should it be', 'which-sort'],
  ['fuse', 'what size fuse for a 7 A pump', undefined],
  ['level', 'which volts should I stop at with a gel', 'stop-at'],
  ['level', 'how many hours must it rest before I measure', 'rest-time'],
  ['level', 'how full is an agm at 12.5', undefined],
  ['level', 'gel battery in the shed over winter, leave it full or half', 'store-at'],
  ['level', 'may it stay on float for weeks', 'left-on-charge'],
  ['level', 'what setting for the fridge cut-out with the second battery, medium or high', 'fridge-cut-out'],
  ['level', 'what voltage counts as flat', 'flat-volts'],
  ['level', 'how can I tell when it is half', 'half-volts'],
  ['level', 'how many amp hours left at half', undefined],
  ['level', 'does the gauge lie about the percentage', 'whom-to-trust'],
  ['use', 'does the gas fridge need any 12 V when it is on gas', 'gas-fridge-on-gas'],
  ['use', 'no sticker on the compressor, how do I find out what it draws', 'no-label'],
  ['use', 'how long does a 200 W kettle take to boil', 'time-to-boil'],
  ['use', 'is a warmer setting worth it', 'fridge-warmer'],
  ['use', 'can the freezer be switched off at night', 'cold-off-by-night'],
  ['use', 'what does a freezer use a day', undefined],
  ['lasting', 'and if the esky fridge only runs at night', 'cold-off-by-day'],
  ['lasting', 'will a jump starter run a cool box', 'jump-pack'],
  ['lasting', 'how long can the camper stand with everything off', 'standing-unused'],
  ['lasting', 'does a USB socket flatten it in a month', 'small-drain'],
  ['lasting', 'is any old car battery good for lights', 'engine-battery-for-camp'],
  ['lasting', 'how long will the fridge run on 80 Ah', undefined],
  ['size', 'where do I start with sizing a battery', 'how-to-size'],
  ['size', 'is 400 Ah overkill', 'too-big'],
  ['starter', 'engine running or off for the tyre pump', 'engine-on-or-off'],
  ['starter', 'do cranking amps say if it runs a fridge', 'cold-cranking-amps'],
  ['starter', 'it wouldnt start this morning', 'wont-start'],
  ['starter', 'will it still start after six hours of fridge', undefined],
  ['cable', 'can I use the chassis for the return', 'through-the-body'],
  ['cable', 'is bell wire good enough for that', 'speaker-wire'],
  ['cable', 'what cable for 10 A over 5 m', undefined],
  ['bank', 'must they be the same age and size', 'must-they-match'],
  ['bank', 'two 100 Ah in parallel, what do I have', undefined],
  ['starter', 'can I jump start the ute off the house battery', 'start-off-the-house'],
  ['starter', 'we left the lights on all night, the motor does not start', 'flat-already'],
  ['starter', 'how long before it won’t start', undefined],
  ['starter', 'will the ute still start after a night of fridge', undefined],
  ['compare', 'a portable panel or a fixed one on the roof', 'fold-or-roof'],
  ['compare', 'a bigger battery or another panel', 'battery-or-solar'],
] as const)('in a question of the %s: %s', ([table, text, name]) => {
  expect(asideIn(recognise(text).words, tables[table] ?? [])?.name).toBe(name);
});

test('a sum is needed for by its own subject alone', () => {
  expect(needsOf(chargeLevel, 'stop-at').safeParse({}).success).toBe(true);
  expect(needsOf(chargeLevel, 'pwm-mppt')).toBe(chargeLevel.needs);
});

test('what is asked of the kind is told of that kind', () => {
  const lfp = { batteries: [{ chemistry: 'lfp' as const, count: 1 }] };
  expect(first(chargeLevel, 'what volts is a full one at rest', lfp)).toMatch(/13\.3 to 13\.5 V on lithium/);
  expect(first(chargeLevel, 'what volts do I stop at', lfp)).toMatch(/20 %/);
  expect(first(batteryType, 'how many years does it last', lfp)).toMatch(/10 years or more, or 5000 cycles/);
});

test('weight, life and lead kinds are told for what was asked', () => {
  const two = { batteries: [{ capacityAh: 200, chemistry: 'lfp' as const }, { chemistry: 'agm' as const }] };
  expect(first(batteryType, 'how heavy are they', two)).toBe(
    '200 Ah of lithium weighs about 24 kg, 200 Ah of AGM about 60 kg.',
  );
  const lead = { batteries: [{ chemistry: 'agm' as const }, { chemistry: 'gel' as const }] };
  expect(first(batteryType, 'agm or gel', lead)).toMatch(/^AGM for most: gel/);
});

test('a fuse for a load is judged by the cable that it needs, where none is told', () => {
  const fridge = { loads: [{ name: 'fridge', currentA: 6 }] };
  expect(first(fuseSize, 'is a 10 A fuse right', { ...fridge, fuseA: 10 })).toMatch(/^Yes: .* on cable of/);
  expect(first(fuseSize, 'is a 30 A fuse right', { ...fridge, fuseA: 30 })).toMatch(
    /^Not unless its cable is/,
  );
});

test('a starter battery is judged by its volts', () => {
  expect(first(starterReserve, 'will she start', { volts: 12.6 })).toMatch(/^Yes, most likely: 12\.6 V/);
  expect(first(starterReserve, 'will she start', { volts: 12.1 })).toMatch(/^Doubtful: 12\.1 V at rest/);
  expect(first(starterReserve, 'will it crank', { volts: 11.7, ambientC: -4 })).toMatch(
    /^Hardly, less so in the cold: 11\.7 V/,
  );
});

test('a per cent beside volts: which of them to believe', () => {
  const lead = { batteries: [{ chemistry: 'agm' as const, stateOfChargePercent: 95 }], volts: 12.1 };
  expect(first(chargeLevel, 'monitor says 95 %, or trust the volts', lead)).toMatch(
    /^The volts: 12\.1 V at rest on AGM is .* looks wrong\.$/,
  );
  const lfp = { batteries: [{ chemistry: 'lfp' as const, stateOfChargePercent: 70 }], volts: 13.2 };
  expect(first(chargeLevel, 'monitor says 70 percent, can it be', lfp)).toMatch(
    /^They agree: 13\.2 V at rest on lithium/,
  );
  const either = { batteries: [{ stateOfChargePercent: 60 }], volts: 13.2 };
  expect(first(chargeLevel, 'can 60 percent be', either)).toMatch(/^60 % could be, no more: .* on lithium/);
});

test('a level is told for both kinds where nobody said which, and a current by itself as what it is', () => {
  const half = { batteries: [{ capacityAh: 200, stateOfChargePercent: 40 }] };
  expect(first(chargeLevel, 'what is left', half)).toBe(
    '40 % is 80 Ah of 200 Ah: 0 Ah to use on lead-acid, 40 Ah on lithium.',
  );
  expect(first(chargeLevel, 'it says plus 7', { netCurrentA: 7 })).toMatch(/^7 A is going in/);
  expect(
    first(chargeLevel, 'it stood at 10.5 since autumn', { volts: 10.5, batteries: [{ chemistry: 'agm' }] }),
  ).toMatch(/^Flat, or nearly/);
  expect(first(chargeLevel, 'is 12.2 bad', { volts: 12.2, batteries: [{ chemistry: 'flooded' }] })).toMatch(
    /^(?:At the limit|Fine for now)/,
  );
});
