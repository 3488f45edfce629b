import { describe, expect, test } from 'vitest';
import type { Answer } from '#answer/answer.ts';
import { hazardAnswers } from '#answer/hazard-answers-table.ts';
import { cautions } from '#answer/words/en.ts';
import { present } from '#basics/present.ts';
import { intents } from '#intents';
import { ask } from '../intents/ask.ts';
import { readPhrases } from '../intents/phrases.ts';
import { answerTo, page, samples } from './answers.ts';
import { asideLines, firstLine, mixedLines, pastBelief, stiff, tooExact } from './rules.ts';

const sixty = samples();
const phrases = intents.flatMap(({ name }) =>
  readPhrases(name)
    .filter(row => !row.not)
    .map(row => ({ said: row.say, answer: ask(row) })),
);
const told: readonly { readonly said: string; readonly answer: Answer }[] = [
  ...sixty.map(({ turns, answer }) => ({ said: turns.join(' | '), answer })),
  ...phrases,
];
const median = (all: readonly number[]): number =>
  present(all.toSorted((a, b) => a - b)[Math.floor(all.length / 2)]);
const faults = (find: (answer: Answer) => readonly string[]): string[] =>
  told.flatMap(({ said, answer }) => find(answer).map(line => `“${said}”: ${line}`));

test('sixty answers, one of each kind and verdict, as they stand on the page', async () => {
  expect(sixty).toHaveLength(60);
  expect(new Set(sixty.map(({ answer }) => answer.intent)).size).toBeGreaterThan(25);
  await expect(page(sixty)).toMatchFileSnapshot('answers.md');
});

describe('what every answer keeps to', () => {
  test('the first line is 100 characters at most', () =>
    expect(faults(answer => (firstLine(answer).length > 100 ? [firstLine(answer)] : []))).toEqual([]));

  test('whole answers are 600 characters at most at the median, of each question too', () => {
    expect(median(sixty.map(({ answer }) => answer.text.length))).toBeLessThanOrEqual(600);
    for (const { name } of intents) {
      const lengths = phrases
        .filter(({ answer }) => answer.intent === name)
        .map(one => one.answer.text.length);
      expect(median(lengths), name).toBeLessThanOrEqual(600);
    }
  });

  test('no two units of one kind in a line', () => expect(faults(mixedLines)).toEqual([]));

  test('assumptions and cautions take three lines at most, of two phone lines each', () => {
    expect(faults(answer => (asideLines(answer).length > 3 ? asideLines(answer) : []))).toEqual([]);
    const isLong = (line: string): boolean => line.length > 125;
    expect(
      faults(answer => (answer.text.includes('Working:') ? [] : asideLines(answer).filter(isLong))),
    ).toEqual([]);
  });

  test('no worked-out number closer than anybody says it', () => expect(faults(tooExact)).toEqual([]));

  test('no number past belief without a question', () => expect(faults(pastBelief)).toEqual([]));

  test('no stiff words', () => expect(faults(({ text }) => stiff.exec(text) ?? [])).toEqual([]));
});

test('a rule that finds nothing in a bad answer would be no rule', () => {
  const bad = {
    intent: 'run-time',
    text: 'It lasts about 1¾ days (35–48 h).\nYou use about 28.8 Ah a day.\nBuy 24 × 260 Ah.\nIt hangs on the sun.\nAssumed: a.\nCareful: b.',
  } as Answer;
  expect(mixedLines(bad)).toHaveLength(1);
  expect(tooExact(bad)).toHaveLength(1);
  expect(pastBelief(bad)).toHaveLength(1);
  expect(stiff.test(bad.text)).toBe(true);
  expect(asideLines(bad)).toHaveLength(2);
});

test('dangers say what to do in 100 characters, and cautions fit two phone lines', () => {
  expect(hazardAnswers.filter(({ first }) => first.length > 100).map(({ code }) => code)).toEqual([]);
  expect(Object.entries(cautions).filter(([, says]) => says.length > 117)).toEqual([]);
});

describe('the working is in words', () => {
  const working = present(
    answerTo(['fridge 1.2A, 100Ah, 3 days?', 'show the working']).text.split('Working:\n')[1],
  );

  test('numbers with their units, each with what it means', () => {
    expect(working).toContain('50 Ah (usable capacity) ÷ 1.2 A (average current) = 41.7 h');
  });

  test('no symbols', () => {
    for (const { turns, answer } of sixty)
      for (const { words } of answer.working)
        expect(words, turns.join(' | ')).not.toMatch(/\b(?:DoD|[A-Za-z]+_[a-z0-9]+|eta|tau)\b/);
  });
});

describe('beginners', () => {
  test('no figure at all: typical gear, said as such, and the one question that helps most', () => {
    const answer = answerTo(['how long will my fridge run?']);
    expect(answer.text).toMatch(/^A typical 100 Ah AGM runs it about .*\.\nThat is for a typical fridge/);
    expect(answer.text).toMatch(/What battery have you got\?/);
    expect(answer.figures.runTime).toBeDefined();
    expect(answer.verdict).toBeNull();
  });

  test('what they answer goes into it', () => {
    for (const told of ['120ah lithium', ...answerTo(['how long will my fridge run?']).next]) {
      const answer = answerTo(['how long will my fridge run?', told]);
      expect(answer.intent, told).toBe('run-time');
      expect(answer.text, told).toMatch(/^It lasts about/);
    }
  });

  test('somebody’s health is not guessed at', () =>
    expect(answerTo(['how long will my cpap run']).figures).toEqual({}));

  test('yes or no by a clock time', () => {
    const until = (text: string) => answerTo([text]);
    expect(until('100ah agm at 80%, fridge 1.2A average, will it run until 7am?')).toMatchObject({
      verdict: 'yes',
      text: expect.stringMatching(/^Yes, past 7am: it lasts about \d+ hours/),
    });
    expect(until('50ah agm at 60%, fridge 2A average, will it run until 7am?').text).toMatch(
      /^No, not to 7am: it lasts/,
    );
  });
});

describe('what an answer says to say is understood', () => {
  test.each([
    ['fridge 1.2A, 100Ah, 3 days?', 11.52],
    ['40W fridge on 120Ah lithium, how long', 75],
    ['freezer 4A, 200Ah agm, how long', 96],
  ])('after “%s”', (asked, dailyUseAh) => {
    const note = present(/I took .* say “([^”]+)”\.$/m.exec(answerTo([asked]).text)?.[1]);
    const answer = answerTo([asked, note]);
    expect(answer.intent).toBe('run-time');
    expect(answer.text).not.toContain('I took');
    expect(Number(/you use about ([\d.]+) Ah/.exec(answer.text)?.[1])).toBeCloseTo(dailyUseAh, 0);
  });
});

describe('what was taken for a draw is put right in a word', () => {
  const asked = 'fridge 40W on 120Ah lithium, how long';
  const turned = (said: string) => answerTo([asked, said]);

  test.each(['average', 'it’s the average', 'yes, its average', 'an average draw'])('“%s”', said => {
    expect(turned(said).intent).toBe('run-time');
    expect(turned(said).text).toBe(turned('fridge averages 40W').text);
  });

  test('not where it is asked, or where other things are told', () => {
    for (const said of ['is that the average?', 'average rainfall was grim'])
      expect(turned(said).text, said).not.toBe(turned('average').text);
  });
});

test('what memory filled in and the answer did not count is not counted when it is turned', () => {
  const asked = [
    'will a 2kVA generator run a 1500W kettle?',
    '80Ah AGM at 40%, 20A charger, how long till full?',
  ];
  const alone = answerTo([...asked.slice(1), 'what if lithium?']);
  expect(alone.figures.chargeTime).toBeDefined();
  expect(answerTo([...asked, 'what if lithium?']).figures).toEqual(alone.figures);
});

test('“show the working” keeps the cautions of the answer', () => {
  for (const asked of [
    'fan 3A on the starter battery 2 hours, 70ah, ok?',
    'how many hours of a 4A pump will the 90ah starter battery stand',
  ])
    expect(answerTo(['35Ah a day, 80ah agm, 42 hours, ok?', asked, 'show the working']).cautions).toEqual(
      answerTo(['35Ah a day, 80ah agm, 42 hours, ok?', asked]).cautions,
    );
});

test('one of two readings that was picked is answered, also where nothing of it is sure', () => {
  const talk = ['100Ah lithium at 60%, +8 A, how full in 3 hours'];
  const { intent, next } = answerTo(talk);
  expect(intent).toBe('unclear');
  for (const pick of next) expect(answerTo([...talk, pick]).intent, pick).not.toBe('none');
});

describe('units as the chat uses them', () => {
  test('as the message tells them', () => {
    const answer = answerTo(['what cable for 20A over 15 feet?']);
    expect(answer.text).toMatch(/over 15 ft\./);
    expect(answer.text).not.toMatch(/\d m\b/);
    expect(answerTo(['100ah agm, fridge 1.2A average, 90F out, how long']).text).not.toContain('°C');
  });

  test('changed by saying so, for what was answered and from then on', () => {
    const before = answerTo(['what cable for 20A over 4 m?']);
    const feet = answerTo(['what cable for 20A over 4 m?', 'use feet and awg']);
    expect(before.text).toMatch(/^6 mm².* over 4 m\./);
    expect(feet.text).toMatch(/^8 B&S \(AWG\).* over 13 ft\./);
    expect(feet.figures.voltageDrop).not.toEqual(before.figures.voltageDrop);
    const later = ['in fahrenheit please', '100ah agm, fridge 40W, how long'];
    expect(answerTo(later).text).toContain('77 °F');
    expect(answerTo([...later, 'use celsius']).text).toContain('25 °C');
  });

  test('what only names a unit is no wish', () => {
    for (const said of ['how many feet is 3 m', 'what is 8 awg in mm2', 'what is 95F in celsius'])
      expect(answerTo([said]).intent, said).not.toBe('none');
  });
});
