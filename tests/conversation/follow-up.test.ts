import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { memorySchema } from '#conversation/memory.ts';
import { type Turn, talk, value } from './talk.ts';

const first: Turn = 'kim: fridge 1.5A average, 120ah agm, how long?';

/** What one more message makes of the question before: the intent stays, one fact changes. */
const turns: { say: string; intent?: string; figures: Record<string, [min: number, max: number]> }[] = [
  { say: 'what if lithium', figures: { usableCapacity: [96, 120], runTime: [60, 80] } },
  { say: 'what if its 200ah', figures: { usableCapacity: [90, 116] } },
  { say: 'make it 5 days', figures: { runTime: [36, 46] } },
  { say: 'no, its 100 not 120', figures: { usableCapacity: [45, 58] } },
  { say: '*1.2 not 1.5', figures: { dailyUse: [28.7, 28.9] } },
  { say: 'and with a 20w light 5 hours a night', figures: { dailyUse: [44, 44.8] } },
  { say: 'what if the fridge draws 2A', figures: { dailyUse: [47.9, 48.1] } },
  { say: 'what about 80% depth of discharge', figures: { usableCapacity: [90, 96] } },
];

describe('a question turned', () => {
  test.each(turns)('$say', ({ say, intent, figures }) => {
    const { last } = talk([first, `kim: ${say}`]);
    expect(last.intent).toBe(intent ?? 'run-time');
    for (const [name, [min, max]] of Object.entries(figures)) {
      expect(value(last, name), `${name} in: ${last.text}`).toBeGreaterThanOrEqual(min);
      expect(value(last, name), `${name} in: ${last.text}`).toBeLessThanOrEqual(max);
    }
  });

  test('somebody else may turn it', () => {
    expect(talk([first, 'lou: what if lithium']).last.intent).toBe('run-time');
  });

  test('chatter in between does not lose it', () => {
    const { last } = talk([first, 'lou: no way mate', 'kim: *100 not 120']);
    expect(value(last, 'usableCapacity')).toBeCloseTo(50, 0);
  });

  test('the working of the last answer, on request', () => {
    const { last } = talk([first, 'lou: show the working']);
    expect(last.intent).toBe('run-time');
    expect(last.text).toMatch(/÷/);
    expect(last.working.length).toBeGreaterThan(2);
  });

  test('why? is told in one line what the answer comes from', () => {
    const { text } = talk([first, 'lou: why?']).last;
    expect(text).toMatch(/^A 120 Ah AGM gives you about 60 Ah to use; you use about 36 Ah a day\./);
    expect(text).not.toMatch(/÷/);
  });

  const week =
    'kim: 4 days, 100Ah lithium, 40Ah a day, drive 4h day 1, overcast day 3, 200W panel in Darwin in July';
  test.each(['day by day please', 'show me each day', 'Day by day?'])('the days of a trip: %s', say => {
    const { last } = talk([week, `kim: ${say}`]);
    expect(last.intent).toBe('trip');
    expect(last.text).toMatch(/^Day 1: out .* Ah; on offer: driving \d+ \(there about 1 pm\), sun/m);
    expect(last.text).toMatch(/^Day 3: .*sun [\d.]+ \(overcast\)/m);
    expect(last.text).not.toMatch(/^Day 5/m);
    expect(value(last, 'lowestCharge')).toBeCloseTo(value(talk([week]).last, 'lowestCharge'), 9);
  });

  test('days are told where they are asked for, and by anybody', () => {
    expect(talk([week]).last.text).not.toMatch(/^Day 1/m);
    expect(talk([week]).last.next).toContain('day by day please');
    expect(talk([week, 'lou: day by day']).last.text).toMatch(/^Day 1/m);
    expect(talk([first, 'kim: day by day']).last.intent).toBe('trip');
    expect(talk(['kim: hello all', 'kim: day by day']).last.text).not.toMatch(/^Day 1/m);
  });

  test('sun joins a run time as a trip', () => {
    const { last } = talk([first, 'kim: and with 200w of solar in july in dubbo']);
    expect(last.intent).toBe('trip');
  });
});

describe('a question with something missing', () => {
  test('is asked back and taken up', () => {
    const { answers, last } = talk(['bo: how long will my fridge last? it draws 1A', 'bo: 100ah agm']);
    // The question is known, what it lacks is asked for: no figure yet.
    expect(answers[0]).toMatchObject({ intent: 'run-time', verdict: null, figures: {} });
    expect(present(answers[0]).text).toContain('?');
    expect(last.intent).toBe('run-time');
    expect(value(last, 'runTime')).toBeCloseTo(50, 0);
  });

  test('several questions in one message get an answer each', () => {
    const { last } = talk([
      'bo: 100ah agm, fridge 1A average. how long will it last? and what panel do i need to keep up?',
    ]);
    expect(value(last, 'runTime')).toBeGreaterThan(40);
    expect(value(last, 'panelPower')).toBeGreaterThan(50);
  });
});

describe('rigs', () => {
  // The reader takes gear told without a question for one yet.
  test.skip('told in pieces by several people, used by all', () => {
    const { last } = talk([
      "ada: we've got 200ah lithium in the bus",
      'ben: and 160w on the roof',
      'ada: a 1.5A fridge too',
      'ben: how long does it last with no sun?',
    ]);
    expect(last.intent).toBe('run-time');
    expect(value(last, 'runTime')).toBeCloseTo(160 / 1.5, -1);
    expect(last.text).toMatch(/your 200 Ah lithium/i);
  });

  test('each their own: mine, theirs', () => {
    const { answers } = talk([
      'ada: my rig is 100ah agm and a 1A fridge',
      'ben: my rig is 50ah lithium and a 2A fridge',
      'ada: how long will mine last?',
      "ada: and how long will ben's rig last?",
    ]);
    expect(value(present(answers[2]), 'runTime')).toBeCloseTo(50, 0);
    expect(value(present(answers[3]), 'runTime')).toBeCloseTo(20, 0);
  });

  test('add, change, remove, show', () => {
    const { last } = talk([
      'ada: rig: 100ah agm, fridge 1A, 120w solar',
      'ada: add a 15w fan to the rig',
      'ada: change the solar to 200w',
      'ada: forget the fridge',
      'ada: show the rig',
    ]);
    expect(last.understood.rig?.solar?.[0]?.powerW).toBe(200);
    expect(last.understood.rig?.loads?.map(l => l.name)).toEqual(['fan']);
  });

  test('a battery told by its charge only is the one in the rig', () => {
    const { last } = talk([
      'ada: rig: 200ah lithium and a 40a dcdc',
      'ada: its at 30%, how long to charge it?',
    ]);
    expect(last.intent).toBe('charge-time');
    expect(value(last, 'chargeNeeded')).toBeGreaterThan(135);
    expect(value(last, 'chargeNeeded')).toBeLessThan(150);
  });
});

describe('forgetting', () => {
  const told: Turn[] = [
    'ada: our rig: 100ah agm, fridge 1A',
    'ada: my rig is 60ah gel',
    'ben: my rig is 75ah agm',
  ];
  test('an admin clears the chat', () => {
    expect(talk([...told, 'ada: forget everything', 'ada: yes, forget']).memory.rigs).toEqual({});
  });
  test('somebody else only their own', () => {
    expect(
      Object.keys(
        talk([...told, 'ben: forget everything', 'ben: yes, forget'], { isAdmin: false }).memory.rigs,
      ).sort(),
    ).toEqual(['', 'ada']);
  });
});

describe('memory', () => {
  test('what is kept passes its own schema and holds no sentence', () => {
    const { memory } = talk([
      first,
      'kim: my rig is 100ah agm with a 1A fridge in dubbo',
      'lou: lou says 3 days, kim says 2',
      'kim: teach me',
    ]);
    expect(memorySchema.safeParse(memory).error).toBeUndefined();
    expect(JSON.stringify(memory)).not.toContain('how long');
  });

  test('the memory handed in is left as it was', () => {
    const { memory } = talk([first]);
    const before = structuredClone(memory);
    talk(['kim: rig: 75ah gel', 'kim: forget everything', 'kim: yes, forget'], { memory });
    expect(memory).toEqual(before);
  });
});

describe('odd names and numbers', () => {
  test.each(['constructor', '__proto__', 'toString', ''])(
    'somebody called “%s” is answered and remembered',
    name => {
      const { last, memory } = talk([`${name}: my rig is 100ah agm`, `${name}: fridge 1A average, how long`]);
      expect(last.intent).toBe('run-time');
      expect(memorySchema.safeParse(memory).error).toBeUndefined();
    },
  );

  test('numbers that no memory holds are let go', () => {
    for (const say of [
      '999999999999999999999',
      'make it 99999999999 days',
      'rig: 0ah agm',
      'NaN ½ kim who is right cable 5m -1',
      '1e30 ah battery fridge 1A how long',
    ]) {
      const { memory } = talk([first, `kim: ${say}`]);
      expect(memorySchema.safeParse(memory).error, say).toBeUndefined();
    }
  });
});

test.each(['100ah agm at 40%, fridge 1.2A, 3 days?', '100ah agm at 50%, fridge 1.2A, how long'])(
  '%s: nothing is left to use, and no battery of infinite size is asked for',
  say => {
    const { last } = talk([`kim: ${say}`]);
    expect(last.intent).toBe('run-time');
    expect(value(last, 'runTime')).toBe(0);
    expect(last.text).toMatch(/^Nothing is left to use/);
    expect(last.text).not.toMatch(/Infinity|NaN/);
  },
);
