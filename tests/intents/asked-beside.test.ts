import { describe, expect, test } from 'vitest';
import { cableSize } from '#intents/cable-size/intent.ts';
import { chargeTimeAsides } from '#intents/charge-time/asides-table.ts';
import { chargeTime } from '#intents/charge-time/intent.ts';
import { convertAsides } from '#intents/convert/asides-table.ts';
import { convert } from '#intents/convert/intent.ts';
import { fuseSize } from '#intents/fuse-size/intent.ts';
import { generatorAsides } from '#intents/generator/asides-table.ts';
import { generator } from '#intents/generator/intent.ts';
import { type Intent, needsOf } from '#intents/intent.ts';
import { inverterAsides } from '#intents/inverter-check/asides-table.ts';
import { inverterCheck } from '#intents/inverter-check/intent.ts';
import { settleAsides } from '#intents/settle/asides-table.ts';
import { settle } from '#intents/settle/intent.ts';
import { solarSizeAsides } from '#intents/solar-size/asides-table.ts';
import { solarSize } from '#intents/solar-size/intent.ts';
import { solarYieldAsides } from '#intents/solar-yield/asides-table.ts';
import { solarYield } from '#intents/solar-yield/intent.ts';
import { recognise } from '#language/recognise/recognise.ts';
import type { Stated } from '#rig/rig.ts';
import { misfits } from './beside.ts';
import { settingWith } from './setting.ts';

/** The first line to a message that tells these facts; a question gets those that it takes. */
function first(of: unknown, text: string, facts: Stated = {}): string {
  const asked = of as Intent;
  const recognised = recognise(text);
  const subject = asked.subjectIn?.(recognised.words, text);
  const setting = settingWith({ subject }, { recognised, facts });
  const taken: Stated = Object.fromEntries(
    Object.entries(facts).filter(([key]) => asked.takes.some(one => one === key)),
  );
  const { data } = needsOf(asked, subject).safeParse(taken);
  return data ? asked.reply(data, setting).headline : (asked.guess?.(taken, setting)?.headline ?? 'asks');
}

test.for(
  Object.entries({
    chargeTimeAsides,
    convertAsides,
    generatorAsides,
    inverterAsides,
    settleAsides,
    solarSizeAsides,
    solarYieldAsides,
  }),
)('%s: a name of its own, a first line that a phone shows whole, few lines more', ([, rows]) =>
  expect(misfits(rows, { lines: 3, letters: 600 })).toEqual([]),
);

type Row = readonly [asked: string, says: RegExp, facts?: Stated];

const tables: Readonly<Record<string, { readonly of: unknown; readonly rows: readonly Row[] }>> = {
  fuse: {
    of: fuseSize,
    rows: [
      [
        'fuse where exactly, near battery or near fridge',
        /^At the battery, within/,
        { loads: [{ name: 'fridge' }] },
      ],
      ['near the battery or near the fridge?', /^At the battery, within/, { loads: [{ name: 'fridge' }] }],
      ['does it matter which way round the fuse goes', /^No: a fuse has no plus and minus/],
      ['what can I run on that', /^About 12 A for long/, { fuseA: 15 }],
      ['can I use the house ones, same thing for a fuse yeah', /^No: those are made for AC/],
      [
        'is a 60A fuse too big for 16mm2',
        /^That’s fine: a 60 A fuse guards/,
        { fuseA: 60, cable: { areaMm2: 16 } },
      ],
      [
        'is a 60A fuse too big for 6mm2',
        /^No, too big: 6 mm² would burn/,
        { fuseA: 60, cable: { areaMm2: 6 } },
      ],
      ['is a 60A fuse ok for 6mm2', /^No: 6 mm² would burn/, { fuseA: 60, cable: { areaMm2: 6 } }],
      [
        '12v kettle says 12.5 amps, what fuse',
        /^An? (15|20) A fuse/,
        { loads: [{ name: 'kettle', currentA: 12.5 }] },
      ],
    ],
  },
  cable: {
    of: cableSize,
    rows: [
      [
        '12v kettle says 12.5 amps, 2m lead, what wire',
        /^2\.5 mm²: it loses .* at 13 A over 2 m/,
        { loads: [{ name: 'kettle', currentA: 12.5 }], cable: { lengthM: 2 } },
      ],
      [
        '35mm2 to a 2kw inverter 2 m each way, too thin?',
        /^No, too thin: 35 mm² gets hot/,
        { cable: { areaMm2: 35, lengthM: 2 }, inverter: { powerW: 2000 } },
      ],
      [
        'is 35mm2 too big for a 1000w inverter',
        /^No, a cable is never too thick/,
        { inverter: { powerW: 1000 }, cable: { areaMm2: 35 } },
      ],
      ['should the solar regulator go near the battery or near the panel', /^Controller near the battery/],
      ['longer lead or thicker lead', /^Thicker, never longer/],
      ['does the hook-up lead have to be fully unrolled', /^Yes, all of it/],
      [
        'is 25 metres of hook-up lead alright or do I lose too much',
        /^Fine: 25 m of 2\.5 mm²/,
        { cable: { lengthM: 25 } },
      ],
      ['how do you wire a switch for the camera', /^In the plus wire, after the fuse/],
    ],
  },
  inverter: {
    of: inverterCheck,
    rows: [
      [
        'can I run my telly on 12v straight, label says 12v 3a',
        /^No inverter needed: on 12 V it takes about 3 A/,
        { loads: [{ name: 'telly', currentA: 3, supply: 'dc' }] },
      ],
      [
        'can I charge my laptop off the car lighter',
        /^Yes, if it has a 12 V lead: it takes about/,
        { loads: [{ name: 'laptop' }] },
      ],
      ['can the kettle go off the ciggy socket', /^No: it takes about/, { loads: [{ name: 'kettle' }] }],
      [
        'how many watts can a 100 ah lithium give at once',
        /^About 1200 W at once: 100 A/,
        { batteries: [{ capacityAh: 100, chemistry: 'lfp' }] },
      ],
      ['little spark when i first connect the inverter', /^Normal at the first touch/],
      [
        'why is it more than 700',
        /^Its watts are what it cooks with/,
        { loads: [{ name: 'microwave', powerW: 700 }] },
      ],
    ],
  },
  charging: {
    of: chargeTime,
    rows: [
      [
        'can I charge a lithium that shows 9 volts',
        /^At 9 V its BMS has shut it off/,
        { batteries: [{ chemistry: 'lfp' }], volts: 9 },
      ],
      [
        'what should the charger be set to for a gel battery',
        /^The gel setting: .* 14(\.0)? to 14\.4 V/,
        { batteries: [{ chemistry: 'gel' }] },
      ],
      [
        'what amps to charge a 50ah lithium',
        /^A 5 to 25 A charger suits 50 Ah lithium/,
        { batteries: [{ capacityAh: 50, chemistry: 'lfp' }] },
      ],
      [
        'temperature compensation, do I need it at 8°C?',
        /^Yes for lead-acid: at 8 °C about 0\.4 V more/,
        { ambientC: 8 },
      ],
      ['it is zero out but the battery is inside at 15, charge ok?', /^Yes/, { ambientC: 15 }],
      [
        'how long on the generator for 100ah from flat, 30 amps',
        /^About 3¾ hours of running the generator/,
        {
          batteries: [{ capacityAh: 100, chemistry: 'lfp', stateOfChargePercent: 0 }],
          chargers: [{ kind: 'generator', currentA: 30 }],
        },
      ],
    ],
  },
  generator: {
    of: generator,
    rows: [
      ['how noisy is a little generator compared to the car', /^A small inverter one is about 50 to 60 dB/],
      [
        'at what point do i turn the genny on like what percent',
        /^At about 50 % for lead-acid/,
        { chargers: [{ kind: 'generator' }] },
      ],
      [
        'does altitude cut my genny? 1800 m',
        /^Yes, about 1 % for each 100 m/,
        { chargers: [{ kind: 'generator', powerW: 2000 }] },
      ],
      [
        'how many hours of the generator each day if the charger is a 20 amp',
        /^Each hour puts in about (19|20) Ah/,
        { chargers: [{ kind: 'mains', currentA: 20 }] },
      ],
    ],
  },
  panel: {
    of: solarYield,
    rows: [
      ['best solar angle at 34 south in july', /^About (55|60)° from flat, facing north/, { month: 7 }],
      ['do panels get hot and make less', /^Yes: each 10 °C takes about 4 %/],
      [
        'yield yesterday 0.62kwh from 200w. good?',
        /^Yes, that’s about right: 52 Ah/,
        { solar: [{ powerW: 200 }], solarWhPerDay: 620 },
      ],
      ['yesterday only 6 ah from 200w, good?', /^Low: 6 Ah/, { solar: [{ powerW: 200 }], solarAhPerDay: 6 }],
      ['what happens if it rains on the panel', /^Rain does a panel no harm/],
      ['do clouds kill it completely', /^They do work, only less/, { sky: 'overcast' }],
      ['what does a 200w panel make a day', /^200 W makes about/, { solar: [{ powerW: 200 }] }],
    ],
  },
  size: {
    of: solarSize,
    rows: [
      [
        'the fridge hardly runs in winter, so can I halve the panels',
        /^No: in winter the sun falls/,
        { loads: [{ name: 'fridge' }] },
      ],
    ],
  },
  argument: {
    of: settle,
    rows: [
      ['kev reckons you cant put a lithium in a boat. is he right', /^It may: LiFePO4/],
      [
        'fella runs his charger off the inverter off the same battery, reckons it tops up for free',
        /^It only goes flat sooner/,
      ],
      [
        'wife reckons the fridge uses more at night, I say in the day',
        /^By day, as a rule/,
        { loads: [{ name: 'fridge' }] },
      ],
    ],
  },
  units: {
    of: convert,
    rows: [
      [
        'is it safe to fly with my power bank',
        /^Yes, in hand luggage only: it holds about 74 Wh/,
        { batteries: [{ capacityAh: 20 }] },
      ],
      [
        '28ah from 8 to 8, what is that average',
        /^28 Ah over 12 hours is 2\.3 A on average/,
        { chargeUsedAh: 28, durationH: 12 },
      ],
      ['watts to amps, how do I do it', /^Amps are watts divided by volts/],
    ],
  },
};

describe.for(Object.entries(tables))('asked of %s beside its sum', ([, { of, rows }]) => {
  test.for(rows)('%s', ([asked, says, facts]) => expect(first(of, asked, facts)).toMatch(says));
});
