import { describe, expect, test } from 'vitest';
import { type Turn, talk } from './talk.ts';

const chat = (turns: readonly Turn[]) => talk(turns, { apartMin: 1 });

describe('one figure set against an answer or a claim', () => {
  test.for<[turns: Turn[], says: RegExp]>([
    // Of a cable each claim is enough or not, as the cable's own question has it.
    [
      [
        'Wes: 35mm2 is plenty for a 2000w inverter 2m away',
        'Col: no way you need 70',
        'Wes: do the sum someone',
      ],
      /^Col is right: it takes 70 mm²\.\nYour 35 mm² is too thin: it would lose 3\.6 %/,
    ],
    [
      ['Ben: 6mm2 is fine for a 30A dcdc 4m away', 'Cat: nah you want 16', "Dan: who's right billywatt"],
      /^Cat is right: it takes 16 mm²/,
    ],
    [
      [
        'Eve: what cable for a 15A fridge run 5m',
        'Fox: 4mm2 does it',
        'Gia: 10mm2 for that',
        "Eve: who's right?",
      ],
      /^Gia is right: it takes 10 mm²/,
    ],
    [
      ['Hal: 10 awg for a 40 amp load 3m', 'Ike: 6 awg at least', 'Hal: bot?'],
      /^Ike's 6 AWG does it, .*: 8 AWG is enough/,
    ],
    [
      ["Amy: 2000w inverter 1.5m from the battery, i say 25mm2 and dad says 50mm2. who's right"],
      /^Neither is enough: it takes 70 mm²\. Your dad's 50 mm² is nearest/,
    ],
    [
      ['Ned: fuse for a 1000w inverter should be 100A', 'Ola: no 150', "Ned: who's right?"],
      /^Ola is closest: it wants a fuse of about 125 A/,
    ],
    [
      [
        'Lee: how long will my 100ah agm run a 3A fridge',
        'Mia: 2 days',
        'Nan: nah 12 h',
        "Lee: who's right?",
      ],
      /^Mia is closest: it lasts about 2 days/,
    ],
    // A day's yield that is worked out aloud is doubted, and stays a claim.
    [
      [
        "Tom: my panel is 200w so that's 16A into the battery all day long, 190Ah a day!",
        'Bec: not a chance mate, maybe 60',
        "Tom: settle it, who's closer? january, Newcastle",
      ],
      /^Bec is closest: a day brings about 78 Ah/,
    ],
    [
      ['Ann: 200W of solar so 190 Ah a day!', 'Bob: nah 70', "Ann: who's closer billywatt"],
      /^Bob is closest: a day brings about 62 Ah/,
    ],
  ])('%j', ([turns, says]) => {
    const { answers, last } = chat(turns);
    expect(last).toMatchObject({ intent: 'settle', text: expect.stringMatching(says) });
    for (const answer of answers.slice(1, -1)) expect(answer.text).toBe('');
  });

  test('a figure put right is none', () => {
    const { last } = chat([
      'Jo: 100ah agm, fridge averages 2A, how long?',
      'Cy: what does a 200w panel make a day in Perth?',
      'Jo: 1.4, sorry',
    ]);
    expect(last.intent).toBe('run-time');
  });
});

describe('a sum of a day’s sun that can’t be', () => {
  test.for([
    "Tom: my panel is 200w so that's 16A into the battery all day long, 190Ah a day!",
    'Gus: got 160w so I get 13A for 12 hours, 160Ah a day',
    'Eli: 300w on the roof thats 2400Wh a day easy',
  ] as Turn[])('%j', turn => {
    const { last, memory } = chat([turn]);
    expect(last).toMatchObject({
      intent: 'solar-yield',
      text: expect.stringMatching(/^No, \d+ Ah is too much/),
    });
    expect(last.text).not.toMatch(/Not counted here: \d+ W?h|Ah of sun/);
    expect(memory.rigs).toEqual({});
    expect(memory.claims).toHaveLength(1);
  });

  test('one that may be is as it was', () => {
    expect(chat(['Tom: 200W of solar so 60 Ah a day']).last.text).toMatch(/^Yes, that’s about right/);
  });
});

describe('what somebody has, told as a tip', () => {
  test.for<[asked: Turn, tip: Turn, says: RegExp]>([
    [
      'Jo: What fuse for my 30A dcdc?',
      "Raj: i've got a 100A mega fuse on mine, just do that",
      /^Raj's 100 A is far off: it wants a fuse of about 50 A/,
    ],
    [
      'Eve: what cable for a 15A fridge 6m',
      'Fay: i used 2.5mm2, works a treat',
      /^Fay's 2\.5 mm² is too small: it takes 16 mm²/,
    ],
    ['Ann: what cable for a 2000w inverter, 1.5m', "Bob: mine's on 16mm2 and its fine", /it takes 70 mm²/],
  ])('that would do harm is warned of: %j', ([asked, tip, says]) => {
    expect(chat([asked, tip]).last.text).toMatch(says);
  });

  test.for<[asked: Turn, tip: Turn]>([
    ['Gus: what fuse for a 1000w inverter', 'Hal: we run a 150A one on ours, been good'],
    ['Kim: what fuse for my diesel heater, 10A', 'Lou: 15A like ours'],
    ['Mia: what cable for 40A over 4m', 'Ned: ours is 25mm2'],
  ])('that does no harm gets silence: %j', ([asked, tip]) => {
    expect(chat([asked, tip]).last.text).toBe('');
  });
});

test.for(['will do', "that's better", 'better', 'hmm', 'told ya'])(
  '%j takes note, and asks nothing',
  said => {
    const asked = 'Ida: what size fuse for 20A led lights';
    expect(chat([asked, `Ida: ${said}`]).last.text).toBe('');
  },
);
