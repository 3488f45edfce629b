import { expect, test } from 'vitest';
import { batteryBank } from '#intents/battery-bank/intent.ts';
import { cableSize } from '#intents/cable-size/intent.ts';
import { chargePath } from '#intents/charge-path/intent.ts';
import { chargeTime } from '#intents/charge-time/intent.ts';
import { convertedFacts } from '#intents/convert/from-facts.ts';
import { factsOf } from '#intents/facts.ts';
import { fuseSize } from '#intents/fuse-size/intent.ts';
import { generator } from '#intents/generator/intent.ts';
import { inverterAsides } from '#intents/inverter-check/asides-table.ts';
import { inverterCheck } from '#intents/inverter-check/intent.ts';
import { settleAsides } from '#intents/settle/asides-table.ts';
import { settle } from '#intents/settle/intent.ts';
import { solarSize } from '#intents/solar-size/intent.ts';
import { solarWiring } from '#intents/solar-wiring/intent.ts';
import { solarYield } from '#intents/solar-yield/intent.ts';
import { recognise } from '#language/recognise/recognise.ts';
import type { Stated } from '#rig/rig.ts';
import { first, misfits } from './beside.ts';
import { settingWith } from './setting.ts';

test.for([
  ['inverter', inverterAsides],
  ['settle', settleAsides],
] as const)('%s: each aside fits a phone, and has a name of its own', ([, rows]) =>
  expect(misfits(rows, { lines: 3, letters: 450 })).toEqual([]),
);

const kettle = { name: 'kettle', powerW: 1000, supply: 'ac' as const };
const lfp = (capacityAh: number) => ({ batteries: [{ capacityAh, chemistry: 'lfp' as const, count: 1 }] });
const genny = (currentA: number, powerW?: number) => ({
  chargers: [
    { kind: 'mains' as const, currentA },
    { kind: 'generator' as const, powerW },
  ],
});

/** What is asked, what is told, and the first line: one row of each kind of sub-question. */
test.for<[string, unknown, string, Stated, RegExp]>([
  [
    'which',
    inverterCheck,
    'which inverter would a jug need',
    { loads: [kettle] },
    /^A 1500 W inverter: the kettle/,
  ],
  [
    'yes or no',
    inverterCheck,
    'is that alright',
    { loads: [kettle], ...lfp(200) },
    /^Yes, on a 1500 W inverter/,
  ],
  [
    'flat out',
    inverterCheck,
    'can it feed that',
    { inverter: { powerW: 1000 }, ...lfp(200) },
    /^Flat out, a 1000 W inverter takes about .* within the 200 A/,
  ],
  [
    'idle',
    inverterCheck,
    'what does the inverter take with nothing plugged in',
    {},
    /^An inverter that is on takes/,
  ],
  [
    'wave',
    inverterCheck,
    'is modified sine ok for a cpap',
    { loads: [{ name: 'cpap' }] },
    /^Pure sine for the cpap/,
  ],
  ['where', inverterCheck, 'does the inverter go near the battery or by the tv', {}, /^Near the battery/],
  [
    'peak',
    inverterCheck,
    'will it run that',
    { loads: [{ ...kettle, powerW: 1800 }], inverter: { surgeW: 3000 } },
    /^No: 1800 W is more than the 1500 W/,
  ],
  [
    'plate',
    inverterCheck,
    'what inverter, 900 W on the door and 1400 W on its plate',
    { loads: [{ name: 'microwave', powerW: 1400, supply: 'ac' }] },
    /^A 1500 W inverter/,
  ],
  [
    'not at once',
    inverterCheck,
    'what inverter for both, never together',
    { loads: [kettle, { ...kettle, name: 'toaster', powerW: 700 }] },
    /^A 1500 W inverter: the kettle/,
  ],
  [
    'on 12 V',
    inverterCheck,
    'and a 12 V jug of 120 W',
    { loads: [{ name: 'kettle', powerW: 120, supply: 'dc' }] },
    /^No inverter needed: on 12 V it takes about 10 A/,
  ],
  [
    'on site',
    inverterCheck,
    'hookup of 10 A, do both run',
    { loads: [kettle, { ...kettle, powerW: 2000 }] },
    /^No: together/,
  ],
  ['how big', inverterCheck, 'how big an inverter does that allow', lfp(100), /^Up to a 1000 W one/],
  ['hours', generator, 'what do I get back', { ...genny(20), durationH: 3 }, /^About 58 Ah .* in 3 hours/],
  [
    'enough',
    generator,
    'is that enough',
    { ...genny(20), durationH: 2, chargeUsedAh: 60 },
    /^No: that takes about/,
  ],
  ['how long', generator, 'how long must it run', { ...genny(20, 1000), chargeUsedAh: 60 }, /^Run it about/],
  [
    'fuel',
    generator,
    'how much petrol in that time',
    { ...genny(20, 1000), durationH: 2 },
    /^About 0.6 to 1.2 litres/,
  ],
  [
    'no faster',
    generator,
    'would a bigger genny charge it faster',
    {},
    /^No: the charger’s amps set the pace/,
  ],
  ['refuel', generator, 'when do I refuel it, before bed', {}, /^In daylight, with it off and cool/],
  ['size', chargeTime, 'what size charger would suit', lfp(100), /^A 10 to 50 A charger suits/],
  ['harm', chargeTime, 'is charging faster bad for it', {}, /^Not within its limit: for each 100 Ah about/],
  ['short trips', chargeTime, 'do short trips fill it', {}, /^A little: at best 20 Ah an hour/],
  ['repair', chargeTime, 'it has a desulphate mode', {}, /^Never on lithium or gel/],
  ['same', chargePath, 'is a relay the same as a dcdc', {}, /^No: a relay only joins/],
  [
    'of two',
    chargePath,
    'which of the two, 20 or 40',
    {
      ...lfp(100),
      chargers: [
        { kind: 'dcdc', currentA: 20 },
        { kind: 'dcdc', currentA: 40 },
      ],
    },
    /^The 40 A one/,
  ],
  ['settings', chargePath, 'how do I set the regulator for lifepo4', {}, /^Its lithium \(LiFePO4\) profile/],
  ['tap', batteryBank, 'can I tap one battery of the lorry', {}, /^No: 12 V off one of two/],
  [
    'age',
    batteryBank,
    'what is left of it',
    { batteries: [{ capacityAh: 100, ageYears: 6, count: 1 }] },
    /^About .* at 6 years/,
  ],
  ['doubles', batteryBank, 'which doubles the Ah, series or parallel', {}, /^Parallel doubles the amp hours/],
  [
    'needed',
    solarWiring,
    'do I need a regulator with it',
    { solar: [{ powerW: 80, count: 1 }] },
    /^Yes: without one/,
  ],
  [
    'normal',
    solarWiring,
    'it shows 20 volts, is that right',
    { solar: [{ openCircuitV: 20, count: 1 }] },
    /^Yes, that is normal/,
  ],
  [
    'noon',
    solarYield,
    'what amps about noon',
    { solar: [{ powerW: 200, count: 1 }] },
    /^About 6\.1 to 10 A about clear noon/,
  ],
  ['winter', solarYield, 'still true in winter', {}, /^Much less: a third to a half/],
  [
    'sun',
    solarYield,
    'how much sun',
    { place: 'darwin', month: 7 },
    /hours’ worth of full sun a day in Darwin/,
  ],
  ['by battery', solarSize, 'what panel then', lfp(100), /^A 160 W panel/],
  ['joints', cableSize, 'may I solder the lugs', {}, /^Crimp it rather/],
  [
    'carries',
    cableSize,
    'will it do',
    { cable: { areaMm2: 2.5 }, loads: [{ name: 'pump', currentA: 8 }] },
    /^Yes: 2\.5 mm² carries/,
  ],
  ['both ends', fuseSize, 'do I need one at both ends', {}, /^At both ends only where/],
  ['far end', fuseSize, 'mine is at the fridge end', {}, /^There it guards the gear/],
  [
    'switch',
    fuseSize,
    'what switch for it',
    { loads: [{ name: 'pump', currentA: 8 }] },
    /^A switch for DC of 10 A/,
  ],
  ['myth', settle, 'he says a concrete floor drains them', {}, /^Concrete doesn’t drain/],
  [
    'all day',
    settle,
    'she swears the panel makes that all day',
    { solar: [{ powerW: 150, count: 1 }] },
    /^Not all day: 150 W gives about 600 Wh/,
  ],
  ['emptied', settle, 'he reckons an agm can go down to nothing each night', {}, /^Not as a habit/],
])('%s', ([, intent, text, facts, says]) => expect(first(intent, text, facts)).toMatch(says));

test('what is told twice is counted once, and a bigger figure is no reason for a yes', () => {
  expect(first(generator, 'do I get enough', { ...genny(20), durationH: 6, chargeUsedAh: 60 })).toMatch(
    /^Yes: /,
  );
  expect(
    first(inverterCheck, 'is that alright', { loads: [{ ...kettle, powerW: 2400 }], ...lfp(100) }),
  ).toMatch(/^No: /);
});

test.for<[string, Stated, string]>([
  ['how many ah is that', { solarWhPerDay: 600 }, '600 Wh at 12 V is 50 Ah.'],
  [
    'is it the same',
    {
      batteries: [
        { capacityAh: 50, voltageV: 24 },
        { capacityAh: 100, voltageV: 12 },
      ],
    },
    'Yes, in what they store: both are 1200 Wh.',
  ],
  ['120 minutes of reserve capacity', {}, 'About 50 Ah at that rate: 120 minutes at 25 A.'],
  [
    'may I divide watts by ten',
    {},
    'Near enough: at 12 V divide the watts by 12; by 10 for what runs through an inverter.',
  ],
])('facts turned into another unit: %s', ([text, facts, says]) => {
  const setting = settingWith({}, { recognised: recognise(text), facts });
  expect(convertedFacts(factsOf(facts), setting)?.headline).toBe(says);
});
