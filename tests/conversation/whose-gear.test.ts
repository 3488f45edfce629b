import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { memorySchema } from '#conversation/memory.ts';
import { type Turn, talk, value } from './talk.ts';

const jos = 'Jo: my 100ah agm, fridge averages 1.5a, how long will it last?' as const;
const stus = 'Stu: 80ah lithium, fridge averages 1.2a, how long will it last?' as const;

describe('a thing that is named as somebody’s', () => {
  test('takes the place of one’s own, and is said', () => {
    const { last } = talk([jos, stus, "Jo: and on Stu's battery?"]);
    expect(value(last, 'usableCapacity')).toBeCloseTo(64, 0);
    expect(value(last, 'dailyUse')).toBeCloseTo(36, 0);
    expect(last.text).toMatch(/From Stu's question: 80 Ah lithium/);
    expect(last.text).not.toMatch(/1\.2 A/);
  });
  test('with one’s own back', () => {
    const turns: Turn[] = ['Jo: my rig: 100ah agm, fridge averages 1.5a', stus];
    const { last } = talk([
      ...turns,
      "Jo: how long would my fridge go on Stu's battery?",
      'Jo: and on my own?',
    ]);
    expect(value(last, 'usableCapacity')).toBeCloseTo(50, 0);
    expect(last.text).not.toMatch(/Stu/);
  });
  test('of which nothing is known is asked for', () => {
    const { last } = talk([jos, 'Ann: lol', "Jo: and on Ann's battery?"]);
    expect(last.figures).toEqual({});
    expect(last.text).toMatch(/battery/);
  });
  test('“hers” is the question of whom is spoken of', () => {
    const { last } = talk([stus, jos, 'Ann: and if hers was lithium?']);
    expect(value(last, 'usableCapacity')).toBeCloseTo(80, 0);
    expect(last.text).toMatch(/From Jo's question/);
  });
});

describe('two people side by side', () => {
  test.each(['who lasts longer, Jo or Stu?', "whose lasts longer, Jo's or Stu's?"])('%s', text => {
    const { last } = talk([jos, stus, `Kim: ${text}`]);
    expect(last.text).toMatch(/^Jo's gives out first, after about 33 hours; Stu's lasts about 2¼ days/);
  });
});

describe('a number put right', () => {
  test('goes into one’s own question, whatever others asked since', () => {
    const { last } = talk([jos, 'Cy: about 2 hours', stus, 'Jo: 1.4, sorry']);
    expect(value(last, 'dailyUse')).toBeCloseTo(33.6, 1);
    expect(value(last, 'usableCapacity')).toBeCloseTo(50, 0);
  });
  test('is asked about where it could be two figures, and picked by a word', () => {
    const cable = 'Ada: what cable for my 8a fridge, 6m one way?' as const;
    const { answers, memory } = talk([cable, 'Ada: sorry 7']);
    const asked = present(answers[1]);
    expect(asked.intent).toBe('unclear');
    expect(asked.next).toHaveLength(2);
    expect(memory.choice?.options).toHaveLength(2);
    const { last } = talk([`Ada: ${present(asked.next[0])}`], { memory });
    expect(last.intent).toBe('cable-size');
  });
});

describe('remarks among people', () => {
  test.each([
    '14 hours tops',
    'told her to get the bigger one',
    'will be there by 6',
    '38 is also his waist',
  ])('%s: no answer, and no question of theirs', text => {
    const { last, memory } = talk([jos, `Cy: ${text}`]);
    expect(last).toMatchObject({ text: '', figures: {} });
    expect(memory.frames.map(({ from }) => from)).toEqual(['jo']);
    expect(memorySchema.safeParse(memory).error).toBeUndefined();
  });
  test('what they claim is there when the bot is asked', () => {
    const { last } = talk([jos, 'Cy: 2 days easy', 'Mo: no way, 4 days', "Jo: bot, who's right?"]);
    expect(last.intent).toBe('settle');
    expect(last.text).toMatch(/Cy/);
    expect(last.text).toMatch(/Mo/);
  });
});

test.each(['same fridge as Jo', 'the same fridge as Jo’s'])('%s: its draw, and whose it is', same => {
  const { last } = talk([jos, `Kim: 75ah gel, ${same}, how long will it last?`]);
  expect(value(last, 'dailyUse')).toBeCloseTo(36, 0);
  expect(last.text).toMatch(/From Jo.s question: fridge 1\.5 A/);
});

test('“and ours in December?” turns one’s own question, where no rig is told', () => {
  const { last } = talk([
    'Dana: 200W panel flat in Broome in July, how much a day?',
    'Dana: and ours in December?',
  ]);
  expect(last.text).toMatch(/^200 W makes .* in Broome in December/);
});

describe('“ours” beside the rigs of others', () => {
  const debs = 'Deb: have got 200w on the roof and 2 x 100ah agm in parallel' as const;
  const kevs = 'Kev: ours is 100ah lithium with no solar' as const;
  test('is its writer’s', () => {
    const { answers, memory } = talk([
      debs,
      kevs,
      'Deb: how long will ours run a fridge averaging 3A',
      'Kev: and ours?',
    ]);
    expect(Object.keys(memory.rigs)).toEqual(['deb', 'kev']);
    expect(value(present(answers[2]), 'usableCapacity')).toBeCloseTo(100, 0);
    expect(value(present(answers[3]), 'usableCapacity')).toBeCloseTo(80, 0);
  });
  test('of who has told a battery and nothing that runs, the same runs on it', () => {
    const { last } = talk([
      debs,
      'Kev: we run a 200ah lithium',
      'Deb: how long would ours run a 2A fridge',
      'Kev: and ours?',
    ]);
    expect(value(last, 'usableCapacity')).toBeCloseTo(160, 0);
    expect(value(last, 'dailyUse')).toBeCloseTo(48, 0);
  });
  test('alone is the group’s', () => {
    expect(Object.keys(talk([kevs]).memory.rigs)).toEqual(['']);
  });
});
