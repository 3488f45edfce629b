import { beforeEach, expect, test } from 'vitest';
import { Clock } from '#telegram/updates/arriving/clock.ts';
import { silent } from './fake/bot.ts';
import { message, nowSec, update } from './fake/people.ts';

let said: object[];
let now: number;
let clock: Clock;
beforeEach(() => {
  said = [];
  now = nowSec * 1000;
  clock = new Clock(() => now, { ...silent, warn: fields => void said.push(fields) });
});
const hear = (date: number) => clock.check(update({ message: message('x', { date } as never) as never }));

test.each([
  ['now', 0, false],
  ['a minute ahead', 60, false],
  ['a day late, as Telegram may keep it', -86_400, false],
  ['ten minutes ahead', 600, true],
  ['three days behind', -3 * 86_400, true],
])('a message from %s', (_, seconds, isSaid) => {
  hear(nowSec + seconds);
  expect(said).toEqual(isSaid ? [{ offSec: -seconds }] : []);
});

test('it is said once an hour', () => {
  for (let i = 0; i < 50; i++) hear(nowSec + 600);
  expect(said).toHaveLength(1);
  now += 61 * 60_000;
  hear(nowSec + 8000);
  expect(said).toHaveLength(2);
});
