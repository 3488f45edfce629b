import { expect, test } from 'vitest';
import { chargerStates } from '#intents/fault/charger-states-table.ts';
import { ask } from './ask.ts';
import { misfits } from './beside.ts';

const told = (say: string): string => ask({ say }).text;

test('each state of a charger fits a phone, and has a name of its own', () =>
  expect(misfits(chargerStates, { lines: 3, letters: 450 })).toEqual([]));

test.each([
  [
    'my mppt says float at 11 am, is something wrong?',
    /^No, that’s good: float at 11 am means the battery was full by then/,
  ],
  ['regulator already floating at 9 in the morning, is that ok?', /^Yes, that’s good: float at 9 am/],
  ['charger is in float but battery only 80%', /^They don’t agree/],
  ['dcdc says float after 20 minutes of driving, problem?', /^Fine if it was nearly full/],
  ['controller stuck in bulk all day, is that normal?', /^Normal on a low battery or a dull day/],
  ['solar reg stuck on bulk three days running, should I worry', /^Not right for days on end/],
  ['charger has been in absorption for 5 hours is that ok', /^Yes, that’s fine, 5 hours can be/],
  ['charger has been in absorption for 11 hours, agm, is that ok', /^11 hours is long/],
  ['solar controller says equalise, should i worry', /^Only wet \(flooded\) batteries want that/],
  ['mppt says standby at night, is it broken?', /^No, that’s fine: without sun/],
  [
    'dc-dc shows standby when parked, is that a fault',
    /^No, that’s fine: it only works while the engine runs/,
  ],
])('a state of a charger: %s', (say, line) => expect(told(say)).toMatch(line));

test.each([
  ['battery’s at 52 degrees in the boot', /^Too hot to charge at 52 °C/],
  ['lithium reads 3 degrees', /^Use it as usual at 3 °C, but charge it only gently/],
  ['lithium reads 49 degrees', /^Too hot to charge at 49 °C: lithium takes charge up to about 45 °C/],
  ['my agm is 50 degrees under the bonnet', /^Hot at 50 °C/],
  ['bms temp 33, ok?', /^Fine: any kind may be charged and used at 33 °C/],
  ['battery temperature sensor says -4, what now', /^Fine to use at -4 °C, but lithium must not be charged/],
  ['lithium sitting at 38 degrees is that ok', /^Warm, but within limits/],
])('a battery’s own temperature: %s', (say, line) => expect(told(say)).toMatch(line));

test.each([
  '45 degrees here. gel or agm in this heat?',
  'we camp at 15F with the furnace on. lithium or AGM?',
])('air is no temperature of the battery: %s', say =>
  expect(told(say)).not.toMatch(/may be charged and used|Too hot to charge/),
);
