import { expect, test } from 'vitest';
import { talk } from './talk.ts';

const loadIn = (text: string) => talk([`kim: ${text}`]).last.understood.loads?.[0];

test.each([
  ['cpap 30W for 8 h on a 50Ah lithium, how many nights?', 8, undefined],
  ['35w cpap, 8h, will 100ah lithium do 3 nights', 8, 72],
  ['need my cpap for 2 nights, 7 hours, 3A, have a 100ah agm', 7, 48],
  ['bipap draws 45w, 9hrs, 120ah lithium. number of nights please', 9, undefined],
])('hours told beside nights are those of each night: %s', (text, hoursPerDay, durationH) => {
  const { last } = talk([`kim: ${text}`]);
  expect(last.intent).toBe('run-time');
  expect(last.understood.loads?.[0]).toMatchObject({ hoursPerDay });
  expect(last.understood.durationH).toBe(durationH);
  expect(last.text).toMatch(/night/);
});

test.each([
  ['no nights are spoken of', '30w cpap 8 hours on 100ah lithium'],
  ['another thing runs', 'fan 2A for 8 hours on 100Ah AGM, how many nights?'],
])('nothing is changed where %s', (_, text) => {
  expect(loadIn(text)?.hoursPerDay).toBeUndefined();
});

// 35 W × 8 h = 280 Wh, 22 Ah a night from 12.8 V; of 100 Ah of lithium 80 are used.
test('a night takes what its hours take, and three nights not 72 hours of it', () => {
  const { last } = talk(['kim: 35w cpap, 8h, will 100ah lithium do 3 nights']);
  expect(last.text).toMatch(/it takes 6\d of the 80 Ah/);
});
