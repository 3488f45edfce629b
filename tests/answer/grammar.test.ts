import { expect, test } from 'vitest';
import { inGrammar } from '#answer/grammar.ts';

test.each([
  ['A 80 Ah battery', 'An 80 Ah battery'],
  ['a 8.5 A charger', 'an 8.5 A charger'],
  ['A 800 W panel', 'An 800 W panel'],
  ['a 8,000 W heater', 'an 8,000 W heater'],
  ['a 11 A fuse and a 18 A one', 'an 11 A fuse and an 18 A one'],
  ['a 11,000 Wh bank', 'an 11,000 Wh bank'],
  ['a 110 W panel', 'a 110 W panel'],
  ['a 180 W panel', 'a 180 W panel'],
  ['a 1,100 W kettle', 'a 1,100 W kettle'],
  ['a 100 Ah AGM', 'a 100 Ah AGM'],
  ['For 1 days', 'For 1 day'],
  ['after 1 hours 1 minutes', 'after 1 hour 1 minute'],
  ['1.1 days, 0.1 days, 11 days, 1¼ days', '1.1 days, 0.1 days, 11 days, 1¼ days'],
  ['0–1 days', '0–1 days'],
  ['80 A 8 h', '80 A 8 h'],
])('%s → %s', (given, wanted) => {
  expect(inGrammar(given)).toBe(wanted);
});
