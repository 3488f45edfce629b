import { describe, expect, test } from 'vitest';
import { withoutPerson } from '#conversation/whose/without-person.ts';
import { type Turn, talk } from './talk.ts';

const chat = (turns: readonly Turn[], more: { isAdmin?: boolean } = {}) =>
  talk(turns, { apartMin: 2, ...more });

/** Whose "mine", "Dot's", "ours" have the one rig of Dot and Eli: 160 Ah at 3 A are 53 h. */
const asked: Turn[] = [
  'Dot: how long will mine last?',
  'Eli: how long will mine last?',
  "Fay: how long will Dot's last?",
  "Fay: how long will Eli's last?",
  'Dot: how long will ours last?',
  'Eli: how long will ours last?',
];

describe('a rig that two people share', () => {
  test.for<[told: Turn[]]>([
    [['Dot: our van has 200Ah lithium and a fridge 3A average', "Eli: me and Dot's van is packed"]],
    [["Eli: me and Dot's van has 200Ah lithium and a fridge 3A average"]],
    [['Eli: Dot and I share a van: 200Ah lithium and a fridge 3A average']],
    [['Dot: my rig: 200Ah lithium and a fridge 3A average', "Eli: I'm in Dot's van"]],
    [['Dot: my rig: 200Ah lithium and a fridge 3A average', 'Eli: sharing the van with Dot']],
    [['Dot: our camper (me and Eli) has 200Ah lithium', 'Eli: our camper has a fridge 3A average']],
  ])('is answered for either, by any name: %j', ([told]) => {
    for (const question of asked) {
      const { last } = chat([...told, question]);
      expect(last, question).toMatchObject({ intent: 'run-time' });
      const hours = last.figures.runTime?.value;
      expect(hours, question).toBeGreaterThan(48);
      expect(hours, question).toBeLessThan(58);
    }
  });

  test.for(['Dot', 'Eli'])('is changed by %s, and the other is shown it', who => {
    const { answers, memory } = chat([
      'Dot: our van has 200Ah lithium and a fridge 3A average',
      "Eli: me and Dot's van is parked up",
      `${who}: my rig has 160W solar too`,
      'Dot: show my rig',
      'Eli: show my rig',
    ]);
    expect(answers[2]?.text).toMatch(/^(?:Changed|Added)\. The rig of you and (Dot|Eli): .*160 W/);
    for (const shown of answers.slice(3)) expect(shown.text).toMatch(/^The rig of you and .*160 W solar/);
    expect(Object.keys(memory.rigs)).toEqual(['dot']);
  });

  test('says nobody’s name where its own people ask', () => {
    const { last } = chat([
      "Eli: me and Dot's van has 200Ah lithium and a fridge 3A average",
      "Fay: how long will Dot's last?",
      'Eli: how long will mine last?',
    ]);
    expect(last.text).not.toMatch(/Dot|Fay/);
  });

  test('is joined by who is asked in, or by an admin', () => {
    const told: Turn[] = [
      'Dot: my rig: 200Ah lithium and a fridge 3A average',
      "Eli: me and Dot's van has 100W solar",
    ];
    expect(chat(told, { isAdmin: false }).last.text).toMatch(/^Only Dot or an admin/);
    expect(chat(told, { isAdmin: true }).last.text).toMatch(/^(?:Changed|Added)\. The rig of you and Dot/);
  });

  test('two who have told rigs of their own keep them', () => {
    const { memory } = chat([
      'Dot: my rig: 200Ah lithium',
      'Eli: my rig: 75Ah AGM',
      "Eli: me and Dot's van is full",
    ]);
    expect(memory.rigs.eli?.batteries?.[0]?.capacityAh).toBe(75);
    expect(memory.rigs.dot?.batteries?.[0]?.capacityAh).toBe(200);
  });

  test('ends where one of them tells their own', () => {
    const { memory } = chat([
      "Eli: me and Dot's van has 200Ah lithium",
      'Dot: I have my own battery now, 75Ah AGM',
    ]);
    expect(memory.rigs.eli?.batteries).toMatchObject([{ capacityAh: 200 }]);
    expect(memory.rigs.dot?.batteries).toMatchObject([{ capacityAh: 75 }]);
  });

  test.for<[gone: string, left: string]>([
    ['dot', 'eli'],
    ['eli', 'dot'],
  ])('stays with the other where %s leaves', ([gone, left]) => {
    const { memory } = chat([
      'Dot: our van has 200Ah lithium',
      "Eli: me and Dot's van has a fridge 3A average",
    ]);
    const after = withoutPerson(memory, gone);
    expect(JSON.stringify(after)).not.toContain(`"${gone}"`);
    expect(after.rigs[left]?.batteries).toMatchObject([{ capacityAh: 200 }]);
  });

  test.for([
    "Eli: how long would mine and Dot's last in parallel?",
    'Eli: me and Dot have 2 fans each',
    "Eli: Dot's van is nice",
    'Eli: me and Dot are off to the beach',
    "Eli: is Kim in Dot's van?",
  ] as Turn[])('%s: tells of none', text => {
    const { memory } = chat(['Dot: my rig: 200Ah lithium', text]);
    expect(memory.shared).toBeUndefined();
  });
});

describe('who has told a rig and names nobody means that', () => {
  test('also where a thing of it is left off', () => {
    const { last } = chat([
      'Dot: my rig: 200Ah lithium, fridge 2A average, fan 10W 8 h a day',
      'Fay: fridge 1A average on 100Ah agm, how long?',
      'Dot: what if we leave the fan off',
    ]);
    expect(last.figures.runTime).toMatchObject({ value: expect.closeTo(80, -1) });
    expect(last.text).not.toMatch(/Fay/);
  });

  test.for<[turns: Turn[]]>([
    [
      [
        'Cal: 100Ah agm, 1A average, how long?',
        'Ann: my rig: 200Ah lithium, fridge 2A average',
        'Ann: how long will it last?',
      ],
    ],
    [
      [
        'Cal: my rig: 200Ah lithium, fridge 2A average',
        'Ann: fridge 1.4A average on 100Ah agm, how long?',
        'Cal: how long?',
      ],
    ],
  ])('%j', ([turns]) => {
    const { last } = chat(turns);
    expect(last.figures.runTime).toMatchObject({ value: expect.closeTo(80, -1) });
    expect(last.text).not.toMatch(/From /);
  });
});

describe('"hers" where nobody fits', () => {
  const own: Turn = 'Ann: my rig: 100Ah lithium, fridge 1.1A average';
  test.for<[turns: Turn[]]>([
    [[own, 'Ann: how long would hers last?']],
    [[own, 'Bea: nice evening', 'Ann: how long would it run on his battery?']],
    [[own, 'Ben: my rig: 70Ah agm, fridge 1.4A average', 'Cat: how long will hers last?']],
  ])('is asked about, and no other gear stands in: %j', ([turns]) => {
    const { last } = chat(turns);
    expect(last.text).toMatch(/^Whose do you mean\?/);
    expect(last.figures).toEqual({});
  });

  test('is of who was named last', () => {
    const { last } = chat([
      own,
      'Ben: my rig: 70Ah agm, fridge 1.4A average',
      'Cat: Ben cooked tonight',
      'Ann: how long will his last?',
    ]);
    expect(last.text).toMatch(/Ben's 70 Ah/);
  });
});
