import { expect, test } from 'vitest';
import { convert } from '#intents/convert/intent.ts';
import { energyBudget } from '#intents/energy-budget/intent.ts';
import type { Intent } from '#intents/intent.ts';
import { inverterCheck } from '#intents/inverter-check/intent.ts';
import { learn } from '#intents/learn/intent.ts';
import { runTime } from '#intents/run-time/intent.ts';
import { trip } from '#intents/trip/intent.ts';
import { recognise } from '#language/recognise/recognise.ts';
import type { Facts, Stated } from '#rig/rig.ts';
import { settingWith } from './setting.ts';

type Asked = readonly [text: string, facts: Stated, says: RegExp];

/** The first line, of a question read just so: with these words and these facts. */
function first<F extends Facts>(asked: Intent<F>, text: string, facts: Stated = {}): string | undefined {
  const setting = settingWith({}, { facts, recognised: recognise(text) });
  const ready = asked.needs.safeParse(facts).data;
  return (asked.guess?.(facts, setting) ?? (ready && asked.reply(ready, setting)))?.headline;
}

const pump = { name: 'water pump', currentA: 4, hoursPerDay: 0.25 };
const lfp100: Stated = { batteries: [{ capacityAh: 100, chemistry: 'lfp' }] };

test.for<Asked>([
  [
    'do led strips use much power',
    { loads: [{ name: 'led strip' }] },
    /^(?:Hardly anything|Not much): about/,
  ],
  ['4A pump 15 minutes a day, do I bother', { loads: [pump] }, /^Hardly anything: about 1 Ah a day\.$/],
  ['is 60Ah a day a lot', { dailyUseAh: 60 }, /^A lot: about 60 Ah a day\.$/],
  ['what matters most is what 40Ah a day is', { dailyUseAh: 40 }, /^About 40 Ah a day\.$/],
  ['and in 3 days', { dailyUseAh: 35, durationH: 72 }, /^About 105 Ah over 3 days: 35 Ah a day\.$/],
  ['in watt hours', { dailyUseAh: 40 }, /^About 480 Wh a day\.$/],
  [
    'how many amps does a 60W pump use',
    { loads: [{ ...pump, currentA: undefined, powerW: 60 }] },
    /^About 5 A while it runs; about 1\.\d Ah a day\.$/,
  ],
  ['1.5A fan overnight', { loads: [{ name: 'fan', currentA: 1.5 }] }, /^About 15 Ah a day\.$/],
  [
    'water pump draws 7 amps, does that matter',
    { loads: [{ ...pump, currentA: 7, hoursPerDay: undefined }] },
    /^Hardly anything: about 1\.\d Ah a day/,
  ],
  [
    'does a phone matter next to the fridge',
    { loads: [{ name: 'phone' }, { name: 'fridge' }] },
    /^About 3\d Ah a day/,
  ],
  [
    'two 60W blankets all night',
    { loads: [{ name: 'electric blanket', powerW: 60, count: 2 }] },
    /^About 100 Ah a day\.$/,
  ],
  ['my cpap says 90W', { loads: [{ name: 'cpap', powerW: 90 }] }, /^About 60 Ah a day/],
  ['1.5A fan', { loads: [{ name: 'fan', currentA: 1.5 }] }, /^About 12 Ah a day \(/],
  [
    'a 9A pump for 3 hours',
    { loads: [{ name: 'water pump', currentA: 9 }], durationH: 3 },
    /^About 27 Ah a day\.$/,
  ],
  ['fridge till morning', { loads: [{ name: 'fridge' }], durationH: 12 }, /^About 16 Ah in 12 hours \(/],
  [
    'how much more at 38 degrees',
    { loads: [{ name: 'fridge' }], ambientC: 38 },
    /^About 5\d Ah a day at 38 °C, .* the 31 Ah at 25 °C/,
  ],
  [
    'and at 38 degrees',
    { loads: [{ name: 'fridge', currentA: 4, dutyPercent: 40 }], ambientC: 38 },
    /^About 38 Ah a day\.$/,
  ],
  ['what wattage is a telly', { loads: [{ name: 'tv' }] }, /^Usually about 40 W/],
  [
    'is half an amp with everything off too much',
    { netCurrentA: -0.4 },
    /^0\.4 A all the time is about 9\.6 Ah a day/,
  ],
  ['1.5A fridge overnight', { loads: [{ name: 'fridge', currentA: 1.5 }] }, /^About 36 Ah a day\.$/],
])('a day’s use, asked as “%s”', ([text, facts, said]) => {
  expect(first(energyBudget, text, facts)).toMatch(said);
});

test.for<Asked>([
  [
    'how many times will a 20000mAh power bank charge my phone',
    { batteries: [{ capacityAh: 20 }], loads: [{ name: 'phone' }] },
    /^About 3 full phone charges \(2½–4\)\.$/,
  ],
  [
    'how many phone charges from it',
    { ...lfp100, loads: [{ name: 'phone' }] },
    /^About 5\d full phone charges \(4\d–6\d\)\.$/,
  ],
  ['how long for my phone', { ...lfp100, loads: [{ name: 'phone' }] }, /^It lasts about \d+ days/],
  [
    'lantern 6W all night on 7Ah?',
    { batteries: [{ capacityAh: 7, chemistry: 'agm' }], loads: [{ name: 'lantern', powerW: 6 }] },
    /^(?:No|Probably not)/,
  ],
  [
    'how long for a 30W fan',
    { loads: [{ name: 'fan', powerW: 30 }] },
    /^A typical 100 Ah AGM runs it about 20 hours/,
  ],
  [
    'a 1500W heater for 4 hours',
    { loads: [{ name: 'heater', powerW: 1500, supply: 'ac' }], durationH: 4 },
    /^Not for long: about \d+ A is more than a typical 100 Ah AGM should give/,
  ],
  [
    'how many cuppas from a 1000W kettle',
    { ...lfp100, loads: [{ name: 'kettle', powerW: 1000, supply: 'ac' }] },
    /^About 3\d cups, 7\.\d litres boiled in all\.$/,
  ],
  [
    'how many times does it charge a 50 Wh camera pack',
    { ...lfp100, loads: [{ name: 'camera pack', energyWhPerDay: 50 }] },
    /^About (?:1\d|2\d)½? in all \(/,
  ],
  [
    'how many phone charges',
    { loads: [{ name: 'phone' }] },
    /^From a typical 100 Ah AGM: about \d+ full phone/,
  ],
  [
    'how long at 45 %',
    { batteries: [{ capacityAh: 100, stateOfChargePercent: 45 }], loads: [{ name: 'fan', powerW: 30 }] },
    /^Lead-acid has nothing left to use at that; lithium lasts about \d+ hours/,
  ],
  [
    'enough for a day and a half?',
    { ...lfp100, loads: [{ name: 'fridge' }], durationH: 36 },
    /^Probably: it lasts about 2¾ days/,
  ],
  ['what can I run off it', lfp100, /^A usual fridge about .*, for example\.$/],
  ['how long does it last', lfp100, /^It lasts about/],
  [
    'fan 0.8A all night on 35Ah',
    { batteries: [{ capacityAh: 35, chemistry: 'agm' }], loads: [{ name: 'fan', currentA: 0.8 }] },
    /^It lasts about 2¼ days/,
  ],
])('how long it lasts, asked as “%s”', ([text, facts, said]) => {
  expect(first(runTime, text, facts)).toMatch(said);
});

test.for<Asked>([
  [
    '2000W inverter on a single 100Ah lithium ok?',
    { ...lfp100, inverter: { powerW: 2000 } },
    /^Not flat out: 175 A is more than a 100 Ah lithium/,
  ],
  [
    '600W inverter on a 100Ah lithium',
    { ...lfp100, inverter: { powerW: 600 } },
    /^Flat out, a 600 W inverter takes about/,
  ],
  ['what is the biggest thing on it', { inverter: { powerW: 600 } }, /^One at a time it usually runs/],
  [
    'how many watts is a rice cooker',
    { loads: [{ name: 'rice cooker' }] },
    /^Usually about 500 W while it runs \(300–700 W\)/,
  ],
  [
    'a 1200W coffee machine, and I have got 100Ah agm',
    {
      batteries: [{ capacityAh: 100, chemistry: 'agm' }],
      loads: [{ name: 'coffee machine', powerW: 1200, supply: 'ac' }],
    },
    /^(?:Tight|No): /,
  ],
])('an inverter, asked as “%s”', ([text, facts, said]) => {
  expect(first(inverterCheck, text, facts)).toMatch(said);
});

test('a thing’s watts are told where nothing is to be turned into them', () => {
  const watts = (text: string) =>
    convert.reply(
      {},
      settingWith({}, { facts: { loads: [{ name: 'rice cooker' }] }, recognised: recognise(text) }),
    ).headline;
  expect(watts('how many watts is a rice cooker')).toMatch(/^Usually about 500 W/);
  expect(watts('how many amps is it')).toMatch(/^Tell me the number/);
});

test('a trip on a battery and panels takes a usual fridge where nothing is told to run', () => {
  const batteries: Stated['batteries'] = [{ capacityAh: 200, chemistry: 'lfp' }];
  const told: Stated = { batteries, solar: [{ powerW: 300 }], durationH: 168 };
  expect(first(trip, 'does that do a week', told)).toMatch(/^(?:Yes|Tight)/);
  const text = trip.guess?.(told, settingWith({}, { facts: told }))?.lines?.at(-1);
  expect(text).toMatch(/typical fridge/);
});

test('a question taken for a wish to learn begins no course', () => {
  expect(first(learn, 'where do the probes go')).toMatch(/^I have no short answer/);
  expect(first(learn, 'for how long can I leave it')).toMatch(/^I have no short answer/);
  expect(first(learn, 'can you explain the basics')).toMatch(/^Lesson 1/);
  expect(first(learn, '12V power')).toMatch(/^Lesson 1/);
});
