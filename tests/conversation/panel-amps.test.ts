import { describe, expect, test } from 'vitest';
import { type Turn, talk } from './talk.ts';

const chat = (turns: readonly Turn[], kind: 'private' | 'group' = 'group') =>
  talk(turns, { apartMin: 1, kind });

describe('amps asked of a panel', () => {
  test.for<[asked: Turn, says: RegExp]>([
    ['Sam: How many amps does 160w of solar make', /^About 4\.9 to 8\.1 A about clear noon.*\n.*\n.*49 Ah\./],
    ['Sam: how many amps will 120w make', /^About 3\.6 to 6\.1 A /],
    [
      'Sam: what amps should 200W give at noon',
      /^About 6\.1 to 10 A .*\n.*\nOver a day it comes to about 62 Ah/,
    ],
    ['Sam: what current does a 100w panel put out', /^About 3 to 5\.1 A /],
    ['Sam: how many amps from a 300W panel', /^About 9\.1 to 15 A /],
    ['Sam: amps out of 250 watts of solar?', /^About 7\.6 to 13 A /],
  ])('%j', ([asked, says]) => {
    expect(chat([asked]).last).toMatchObject({
      intent: 'solar-yield',
      text: expect.stringMatching(says),
      figures: { best: { unit: 'A' }, dailyYield: { unit: 'Ah' } },
    });
  });

  test.for<[asked: Turn, says: RegExp]>([
    ['Sam: how many amps does a 200W panel make a day', /^200 W makes about 62 Ah a day/],
    ['Sam: how many amps will 240w of solar give in june in hobart', /^240 W makes about 24 Ah a day/],
    ['Sam: how many amps will 200w of lights draw', /^200 W at 12 V is 16\.7 A/],
    ['Sam: how many amps does 100w make at 24v', /^100 W at 24 V is 4\.17 A/],
  ])('but not where a day, a place, a load or volts are told: %j', ([asked, says]) => {
    expect(chat([asked]).last.text).toMatch(says);
  });

  test.for<[turns: Turn[], says: RegExp]>([
    [
      ['Sam: How many amps does 160w of solar make', 'Tom: about 13 i reckon'],
      /^Your 13 A is far off: at clear noon it gives about 6\.3 A \(4\.9–8\.1 A\)\.\nYour 13 A would take 177 W, more than its label/,
    ],
    [
      [
        'Sam: How many amps does 160w of solar make',
        'Tom: about 13 i reckon',
        'Jo: thats never 13, more like 9',
        "Sam: who's right bot",
      ],
      /^Jo is closest: at clear noon it gives about 6\.3 A/,
    ],
    [
      [
        'Sam: how many amps will 120w of panel make',
        'Tom: 10 amps easy',
        'Jo: nah more like 6',
        'Sam: @billywatt who is right',
      ],
      /^Jo is closest: at clear noon it gives about 4\.7 A/,
    ],
    [
      ['Sam: what current does a 100w panel put out', 'Tom: 8 amps', 'Sam: is tom right?'],
      /^Tom's 8 A is far off: at clear noon it gives about 3\.9 A/,
    ],
    [
      ['Sam: what does a 200W panel make', 'Tom: 60', 'Jo: more like 40', "Sam: who's right bot"],
      /: a day brings about 62 Ah/,
    ],
  ])('claims are held against what was asked: %j', ([turns, says]) => {
    expect(chat(turns).last).toMatchObject({ intent: 'settle', text: expect.stringMatching(says) });
  });
});

describe('amps of a fridge times 24', () => {
  test.for(['private', 'group'] as const)('are doubted and not kept in a %s chat', kind => {
    for (const turn of [
      'Sam: our fridge pulls 5 amps so thats 120ah a day eh',
      "Kim: fridge draws 4A so that's 96 Ah a day",
      'Kim: my freezer pulls 6 amps, works out to 144 amp hours a day',
      'Kim: my fridge is 4 amps x 24 hours so 96 Ah a day, is that right',
    ] as Turn[]) {
      const { last, memory } = chat([turn], kind);
      expect(last).toMatchObject({
        intent: 'settle',
        text: expect.stringMatching(/^Your \d+ Ah is (?:far|a bit) off: a day takes .*\n.*24 of 24 hours/),
      });
      expect(JSON.stringify(memory.rigs)).not.toMatch(/AhPerDay|dailyUse/);
    }
  });

  test('a sum that counts the pauses is one of its use', () => {
    const { last } = chat(['Sam: our fridge pulls 5 amps so thats 45ah a day']);
    expect(last.text).not.toMatch(/off/);
  });
});

describe('chargers at once on the battery just asked about', () => {
  test.for<[turns: Turn[], says: RegExp]>([
    [
      ['Sam: how much can I charge a 280Ah lithium at, max?', 'Sam: two 60A DC-DCs on it at once?'],
      /^Yes, all at once: their 120 A is within the 140 A that 280 Ah lithium takes/,
    ],
    [
      ['Sam: maximum charge current for a 280Ah lithium', 'Sam: can i put two 60A dcdcs on it?'],
      /^Yes, all at once: their 120 A is within the 140 A/,
    ],
    [
      ['Sam: can i charge my 280Ah lithium at 140A?', 'Sam: two 60A DC-DCs on it at once?'],
      /^Yes, all at once: their 120 A is within the 140 A/,
    ],
    [
      [
        'Sam: what size charger for a 200Ah lithium',
        'Sam: three 40A dc-dc chargers on it together, alright?',
      ],
      /^No: their 120 A is over the 100 A/,
    ],
    [
      ['Sam: what size charger for a 200Ah lithium', 'Sam: a 40A and a 60A dcdc both at once ok?'],
      /^Yes, all at once: their 100 A is within the 100 A/,
    ],
    [
      ['Sam: maximum charge current for my 100Ah agm', 'Sam: could i run two 25A dcdcs together?'],
      /^No: their 50 A is over the 30 A/,
    ],
    [
      ['Sam: can two 40A dcdcs charge a 200Ah lithium at the same time'],
      /^Yes, all at once: their 80 A is within/,
    ],
    [['Sam: 280Ah lithium, two 60A DC-DCs on it at once?'], /^Yes, all at once: their 120 A is within/],
  ])('%j', ([turns, says]) => {
    expect(chat(turns).last.text).toMatch(says);
    expect(chat(turns).last.text).toMatch(/share of most alternators/);
  });

  test('how long one takes is still that', () => {
    const { last } = chat(['Sam: what size charger for a 200Ah lithium', 'Sam: and a 40A dcdc, how long?']);
    expect(last.text).toMatch(/of driving to fill it/);
  });
});
