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
import { fuseAsides } from '#intents/fuse-size/asides-table.ts';
import { fuseSize } from '#intents/fuse-size/intent.ts';
import { needsOf } from '#intents/intent.ts';
import { starterAsides } from '#intents/starter-reserve/asides-table.ts';
import { recognise } from '#language/recognise/recognise.ts';

import { first, misfits } from './beside.ts';

const tables: Readonly<Record<string, readonly Aside[]>> = {
  bank: bankAsides,
  cable: cableAsides,
  compare: compareAsides,
  fuse: fuseAsides,
  level: levelAsides,
  size: sizeAsides,
  starter: starterAsides,
  type: typeAsides,
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
  ['cable', 'can I use the chassis for the return', 'through-the-body'],
  ['cable', 'is bell wire good enough for that', 'speaker-wire'],
  ['cable', 'what cable for 10 A over 5 m', undefined],
  ['bank', 'must they be the same age and size', 'must-they-match'],
  ['bank', 'two 100 Ah in parallel, what do I have', undefined],
  ['starter', 'can I jump start the ute off the house battery', 'start-off-the-house'],
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
