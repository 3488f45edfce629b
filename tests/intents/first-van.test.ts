import { expect, test } from 'vitest';
import { asideIn } from '#intents/asides.ts';
import { compareAsides } from '#intents/compare/asides-table.ts';
import { compare } from '#intents/compare/intent.ts';
import { namedAsides } from '#intents/compare/names-table.ts';
import { energyBudget } from '#intents/energy-budget/intent.ts';
import { runTime } from '#intents/run-time/intent.ts';
import { solarSizeAsides } from '#intents/solar-size/asides-table.ts';
import { solarYield } from '#intents/solar-yield/intent.ts';
import { plainQuestionIn } from '#intents/term/plain/plain-questions.ts';
import { recognise } from '#language/recognise/recognise.ts';
import type { Stated } from '#rig/rig.ts';
import { talk } from '../conversation/talk.ts';
import { first, misfits } from './beside.ts';

// What people ask who have just bought their first van.

test.for([
  ['how is a leisure battery different to a starter battery', 'leisure-or-car'],
  ['leisure battery vs an ordinary one', 'leisure-or-car'],
  ['why shouldnt I use a car battery in the caravan', 'why-no-car-battery'],
  ['is it fine to charge a leisure battery off the car battery charger', undefined],
  ['is it ok having the fridge on while driving', 'fridge-on-the-drive'],
  ['should the fridge be off when we drive', 'fridge-on-the-drive'],
  ['fridge on while driving 3 hours, how much does the battery get', undefined],
] as const)('%s', ([text, name]) => {
  expect(plainQuestionIn({ recognised: recognise(text) })?.name).toBe(name);
});

test.for([
  ['would a portable panel do instead of a fixed one', 'fold-instead'],
  ['charge the laptop by a 12 V adapter or the inverter', 'laptop-by-inverter'],
  ['what size inverter for a laptop or a telly', undefined],
  ['is one big battery better than two small ones', 'one-big-or-two'],
  ['do we need a panel for weekends', 'for-weekends'],
  ['what size panel do I need for a weekend', undefined],
] as const)('%s', ([text, name]) => {
  const rows = [...namedAsides, ...compareAsides, ...solarSizeAsides];
  expect(asideIn(recognise(text).words, rows)?.name).toBe(name);
});

test('each has a name of its own and fits a phone', () => {
  expect(misfits(namedAsides, { lines: 3, letters: 600 })).toEqual([]);
  expect(misfits(solarSizeAsides, { lines: 3, letters: 600 })).toEqual([]);
});

test('one or two batteries: no figures where no size was told, its own where one was', () => {
  expect(first(compare, 'is one big battery better than two small ones')).toMatch(/^Much the same/);
  const sized = { batteries: [{ capacityAh: 200, chemistry: 'agm' as const }] };
  expect(first(compare, 'is one big battery better than two small ones', sized)).toMatch(/100 Ah/);
});

const kettle = { loads: [{ name: 'kettle', powerW: 400, supply: 'ac' as const }] };
test.for<[text: string, facts: Stated, says: RegExp]>([
  // 500 Wh, four fifths for use and a tenth lost in the inverter, by 80 Wh a boil.
  [
    'how many times does it boil in 12 minutes',
    { ...kettle, durationH: 0.2, batteries: [{ energyWh: 500 }] },
    /^About 4 times .*, 12 minutes each/,
  ],
  // Without its minutes the water tells.
  ['how many times does it boil', { ...kettle, batteries: [{ energyWh: 500 }] }, /^About \d+ cups/],
  [
    'what can I run off it for a weekend',
    { batteries: [{ capacityAh: 110, chemistry: 'agm' }], durationH: 48 },
    /^About 28 Ah a day for 2 days: lights/,
  ],
])('%s', ([text, facts, says]) => {
  expect(first(runTime, text, facts)).toMatch(says);
});

test.for([
  ['how much is that over the weekend', /^About 20 Ah over 2 days: 10 Ah a day/],
  ['how much is that fri, sat and sun night', /^About 30 Ah over 3 days/],
  ['how much is that a day', /^About 10 Ah a day/],
] as const)('%s', ([text, says]) => {
  expect(first(energyBudget, text, { loads: [{ name: 'fan', chargeAhPerDay: 10 }] })).toMatch(says);
});

test.for([
  ['will it keep the fridge going', 30, /^Hardly: 100 W makes|^Only just: 100 W makes/],
  ['will it keep the fridge going', 5, /^Yes: 100 W makes/],
  ['will it keep the fridge going', 90, /^No: 100 W makes/],
  ['how much does it make', 90, /^100 W makes/],
] as const)('%s: %d Ah a day', ([text, chargeAhPerDay, says]) => {
  const facts = { solar: [{ powerW: 100 }], loads: [{ name: 'fridge', chargeAhPerDay }] };
  expect(first(solarYield, text, facts)).toMatch(says);
});

test('a coolbox may have no compressor, and then never stops', () => {
  const { last } = talk(['ann: coolbox 45W, 100Ah agm, how long?']);
  expect(last.text).toMatch(/never stops: about 90 Ah a day, so 13 hours\./);
  const told = talk(['ann: fridge 45W, 100Ah agm, how long?']);
  expect(told.last.text).not.toMatch(/never stops/);
});

test('“how many nights?” after “will it last two?” is told without a yes', () => {
  const { last } = talk([
    'ann: will a 200Ah lithium run a 1A fridge for 3 days?',
    'ann: how many days then?',
  ]);
  expect(last.text).toMatch(/^It lasts about 6/);
});
