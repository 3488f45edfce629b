import { expect, test } from 'vitest';
import { beyondBelief } from '#conversation/told/beyond.ts';
import { read } from '#language/reading.ts';

const why = 'no part of the question';
const asked = (text: string, number: string, reason = why) =>
  beyondBelief({ recognised: read(text).recognised, unread: [{ text: number, why: reason }] }).map(
    issue => 'data' in issue && issue.data.said,
  );

test.for<[text: string, number: string, said: readonly string[]]>([
  ['we use 7000Ah a day', '7000Ah', ['7000 Ah a day']],
  ['my battery is 90000 Ah', '90000 Ah', ['90,000 Ah']],
  ['a kettle of 80000W', '80000W', ['80,000 W']],
  ['a charger of 5000 amps', '5000 amps', ['5000 A']],
  ['we use 400Ah a day', '400Ah', []],
  ['a kettle of 2000W', '2000W', []],
])('%s', ([text, number, said]) => {
  expect(asked(text, number)).toEqual(said);
});

test('what was left out for another reason is not asked about', () => {
  expect(asked('we use 7000Ah a day', '7000Ah', 'said before')).toEqual([]);
});
