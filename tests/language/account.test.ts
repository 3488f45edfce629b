import { describe, expect, test } from 'vitest';
import { read } from '#language/reading.ts';
import { everyNumberIsAccountedFor } from './accounted.ts';

everyNumberIsAccountedFor(0);

describe('the account', () => {
  const unread = (text: string): string[] => read(text).unread.map(u => `${u.text}: ${u.why}`);

  test('a price is left out and said to be one', () => {
    expect(unread('fridge 1.2A on a 100Ah AGM that cost $400, how long?')).toContain('400: a price');
  });

  test('what is put right is told, not left out', () => {
    expect(read('120Ah, not 100', { lastIntent: 'run-time' }).corrects).toMatchObject({ to: 120 });
    expect(read('120Ah, not 100', { lastIntent: 'run-time' }).unread).toEqual([]);
  });

  test('the days of a plan are in the plan', () => {
    const parsed = read('20A dcdc, day 1 drive 5h, day 2 parked, day 3 drive 2h, fridge 2A, 100Ah, enough?');
    expect(parsed.facts.days).toHaveLength(3);
    expect(parsed.unread).toEqual([]);
  });
});
