import { expect, test } from 'vitest';
import { chargeLevel } from '#intents/charge-level/intent.ts';
import { energyBudget } from '#intents/energy-budget/intent.ts';
import { runTime } from '#intents/run-time/intent.ts';
import { starterReserve } from '#intents/starter-reserve/intent.ts';
import { buyingQuestions } from '#intents/term/plain/buying-table.ts';
import { plainQuestionIn } from '#intents/term/plain/plain-questions.ts';
import { recognise } from '#language/recognise/recognise.ts';
import type { Stated } from '#rig/rig.ts';
import { first } from './beside.ts';

const agm = (capacityAh: number): Stated => ({ batteries: [{ capacityAh, chemistry: 'agm' }] });
const lfp = (capacityAh: number): Stated => ({ batteries: [{ capacityAh, chemistry: 'lfp' }] });
const heater = { name: 'diesel heater', currentA: 2 };
const fridge = { name: 'fridge' };

/** What is asked, what is told, and the first line. */
test.for<[string, unknown, string, Stated, RegExp]>([
  [
    'yes means flat',
    runTime,
    'will it kill the battery',
    { loads: [{ name: 'pump', currentA: 5 }], ...agm(100), durationH: 24 },
    /^Yes, within 24 hours: it lasts only about/,
  ],
  [
    'no means it lasts',
    runTime,
    'would that flatten it',
    { loads: [heater], ...agm(100), durationH: 8 },
    /^No, not in 8 hours: it lasts about/,
  ],
  [
    'a plain can-it keeps its yes',
    runTime,
    'will it do',
    { loads: [heater], ...agm(100), durationH: 8 },
    /^Yes, 8 hours is fine/,
  ],
  [
    'amp hours left, size untold',
    runTime,
    'is that enough till breakfast',
    { loads: [{ name: 'fan', currentA: 1 }], chargeLeftAh: 30, durationH: 9 },
    /^Yes, if it may run to empty: 30 Ah left lasts about/,
  ],
  [
    'amp hours left that are too few',
    runTime,
    'is that enough till breakfast',
    { loads: [{ name: 'fan', currentA: 4 }], chargeLeftAh: 20, durationH: 9 },
    /^No, not even run to empty/,
  ],
  [
    'volts to stop at are no reading',
    runTime,
    'and if I stop at 12.1',
    { loads: [{ name: 'fan', currentA: 2 }], ...agm(100), volts: 12.1 },
    /^It lasts about/,
  ],
  [
    'what is left',
    runTime,
    'how much is left after that',
    { loads: [{ name: 'drone', energyWhPerDay: 480 }], ...lfp(200) },
    /^A day of it takes about 38 Ah: about 1\d\d of 1\d\d usable Ah are left\.$/,
  ],
  ['why half', runTime, 'why only half of it', agm(100), /^Because taken under half, lead-acid wears out/],
  [
    'a notch warmer',
    runTime,
    'does making the fridge warmer help',
    { loads: [fridge], ...agm(100) },
    /^Each degree warmer saves/,
  ],
  ['in summer', energyBudget, 'does a fridge use more in summer', { loads: [fridge] }, /^Yes: at 40 °C/],
  ['dimmed', energyBudget, 'do the leds use less if I dim them', { loads: [{ name: 'light' }] }, /^LEDs yes/],
  ['what takes most', energyBudget, 'what uses the most as a rule', {}, /^Mostly the fridge/],
  [
    'noticeable',
    energyBudget,
    'two 5W fans, noticeable?',
    { loads: [{ name: 'fan', powerW: 5, hoursPerDay: 8, count: 2 }] },
    /^Not much: about/,
  ],
  [
    '13.1 V of a kind untold',
    chargeLevel,
    'it says 13.1',
    { volts: 13.1 },
    /lead-acid is about full, lithium about/,
  ],
  [
    '13.3 V of a kind untold',
    chargeLevel,
    'it says 13.3 tonight',
    { volts: 13.3 },
    /^At 13\.3 V lithium at rest is about 85 %/,
  ],
  [
    '13.3 V of a kind told',
    chargeLevel,
    'it says 13.3',
    { volts: 13.3, batteries: [{ chemistry: 'lfp' }] },
    /^About 85 % full/,
  ],
  ['13.3 V on the charger', chargeLevel, 'it says 13.3 on the charger', { volts: 13.3 }, /^It can't be told/],
  [
    'held at charge volts, hardly any amps',
    chargeLevel,
    'is it full',
    { volts: 14.4, netCurrentA: 0.3 },
    /^Full, or very nearly: at 14\.4 V only 0\.3 A goes in\.$/,
  ],
  [
    'held at charge volts, many amps',
    chargeLevel,
    'is it full',
    { volts: 14.4, netCurrentA: 12 },
    /^It can't be told/,
  ],
  [
    'amp hours gone',
    chargeLevel,
    'the counter shows minus 40',
    { chargeUsedAh: 40 },
    /^40 Ah have gone out since/,
  ],
  [
    'low cut',
    chargeLevel,
    'what do I set the low voltage cutoff to',
    {},
    /^Set it to about 12 V on lead-acid/,
  ],
  [
    'a low cut that is low',
    chargeLevel,
    'low cut is 11.4, too low?',
    { volts: 11.4, batteries: [{ chemistry: 'agm' }] },
    /^Yes, low: at 11\.4 V it is nearly flat\./,
  ],
  [
    'read with the fridge on',
    chargeLevel,
    'the fridge was on, does that change it',
    {},
    /^Under a load it reads 0\.1/,
  ],
  ['read on charge', chargeLevel, 'it was charging when I looked', {}, /^Yes: while it charges/],
  [
    'float',
    chargeLevel,
    'what float voltage',
    { batteries: [{ chemistry: 'gel' }] },
    /^Float is about 13\.4 V for gel/,
  ],
  [
    'starter, tight',
    starterReserve,
    'will it start after ten hours of fridge',
    { loads: [fridge], durationH: 10 },
    /^Tight: it may not start after 10 hours; it’s good for about/,
  ],
  [
    'the fridge’s own cut-out',
    starterReserve,
    'is the cut-out enough to protect the starter',
    {},
    /^Set it to high, about 11\.8 V/,
  ],
])('%s', ([, intent, text, facts, line]) => expect(first(intent, text, facts)).toMatch(line));

test('cut-offs, floors and floats are those of the kind that was told', () => {
  const lithium = { batteries: [{ chemistry: 'lfp' as const }] };
  expect(first(chargeLevel, 'what do I set the low voltage cutoff to', lithium)).toMatch(
    /12\.5 V on lithium/,
  );
  expect(first(chargeLevel, 'what percentage should I not go below', lithium)).toMatch(
    /^Not under about 20 %/,
  );
});

test.for([
  ['what fridge is best for two', 'which-fridge-to-buy'],
  ['what do I need to buy for a fridge and a fan', undefined],
  ['which battery should I buy for a fridge', undefined],
  ['what is a good multimeter', 'which-multimeter'],
  ['where do I buy lugs', 'where-to-buy'],
  ['what do you pay for a new lithium', 'prices-of-one'],
] as const)('of one thing to buy: %s', ([text, name]) => {
  const asked = plainQuestionIn({ recognised: recognise(text) });
  expect(asked && buyingQuestions.includes(asked) ? asked.name : undefined).toBe(name);
});

test('each row of what to buy has a first line that a phone shows whole', () => {
  expect(buyingQuestions.filter(({ says }) => says.length > 100)).toEqual([]);
});
