import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { type ParsedMessage, read } from '#language/reading.ts';
import { readGroups } from '../../src/tools/train/groups.ts';

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

/**
 * Every number of all labelled messages is in a fact, or unread with its reason. Tens of thousands of messages: two
 * files of tests share them, so that two processors do.
 * @param part which files of messages: every other one, from the first or from the second on
 */
export function everyNumberIsAccountedFor(part: 0 | 1): void {
  describe('every number is in a fact, or unread with its reason', () => {
    const groups = readGroups('tests/messages');
    const files = [...new Set(groups.map(group => group.file))].filter((_, i) => i % 2 === part);
    test.for(files)('in %s', { timeout: 120_000 }, file => {
      const texts = groups.filter(group => group.file === file).flatMap(group => group.wordings);
      const lost = texts.flatMap(text => vanished(text).map(number => `${number}: ${text}`));
      expect(lost).toEqual([]);
    });
  });
}
