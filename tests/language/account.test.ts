import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { type ParsedMessage, read } from '#language/reading.ts';
import { readGroups } from '../../src/tools/train/groups.ts';
import { shareOf } from '../house/share.ts';

/** The numbers that a message tells, found by other means than reading's own account: what its tokens and words say. */
function numbersOf({ recognised: { text, tokens, mentions } }: ParsedMessage) {
  return mentions.flatMap(m => {
    const digits = tokens.slice(m.from, m.to).filter(t => t.kind === 'number');
    const isSaid = m.kind === 'amount' || m.kind === 'number';
    if (!isSaid && digits.length === 0) return [];
    const said = [m.told, m.value, ...m.variants.flatMap(v => [v.value, (v.value * m.told) / m.value])];
    const raw = text.slice(present(tokens[m.from]).start, present(tokens[m.to - 1]).end);
    return [
      {
        raw,
        key: m.key,
        values: said.flatMap(v => [v, 100 - v, 100 * v, 100 - 100 * v, v * 60, v * 24, v * 1000]),
      },
    ];
  });
}

function told(facts: unknown, into: (number | string)[] = []): (number | string)[] {
  if (typeof facts === 'number' || typeof facts === 'string') into.push(facts);
  else if (facts !== null && typeof facts === 'object')
    for (const inner of Object.values(facts)) told(inner, into);
  return into;
}

/** Numbers of a message that are in nothing that was made of it. */
function vanished(text: string): string[] {
  const parsed = read(text);
  const { facts, claims, corrects, conversion, unread, options } = parsed;
  const all = told([facts, claims, corrects, conversion]);
  const left = unread.map(u => u.text);
  // A plan of days may hold a number as a day of its own ("day 3"): its days account for it.
  const hasPlan = present(options[0]).stated.days !== undefined;
  const isNear = (a: number, b: number): boolean =>
    Math.abs(Math.abs(a) - Math.abs(b)) <= 0.011 * Math.max(1, Math.abs(b));
  return numbersOf(parsed).flatMap(n => {
    const isTold = all.some(value =>
      typeof value === 'string' ? value === n.key : n.values.some(v => isNear(value, v)),
    );
    if (isTold || hasPlan) return [];
    const place = left.indexOf(n.raw);
    if (place < 0) return [n.raw];
    left.splice(place, 1);
    return [];
  });
}

test('every number of the labelled messages is in a fact, or unread with its reason', {
  timeout: 900_000,
}, () => {
  const texts = shareOf(
    readGroups('tests/messages').flatMap(group => group.wordings),
    30,
  );
  expect(texts.length).toBeGreaterThan(1500);
  const lost = texts.flatMap(text => vanished(text).map(number => `${number}: ${text}`));
  expect(lost).toEqual([]);
});

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
