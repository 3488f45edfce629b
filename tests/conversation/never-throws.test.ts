import { expect, test } from 'vitest';
import { readGroups } from '../../src/tools/train/groups.ts';
import { shareOf } from '../house/share.ts';
import { type Turn, talk } from './talk.ts';

const turns = ['what if it was half?', 'and double that', 'only one of them', 'back to the first'];

/** What goes wrong when a talk is played and all that it says is worked out; nothing where all is well. */
function fault(lines: readonly Turn[]): string | undefined {
  try {
    for (const { again } of talk(lines).answers) again?.();
    return undefined;
  } catch (error) {
    return `${lines.join('\n')}\n${(error as Error).stack}`;
  }
}

test('whatever was asked and whatever turn follows, something is answered', () => {
  const groups = readGroups('tests/messages');
  const drawn = new Set(
    shareOf(
      groups.map(g => g.id),
      120,
    ),
  );
  const faults = groups
    .filter(g => drawn.has(g.id))
    .flatMap(({ before = [], from, wordings: [wording] }, i) => {
      const lines = [...before.filter(b => b.from !== 'bot'), { from, text: wording }];
      return fault([
        ...lines.map((b): Turn => `${b.from}: ${b.text}`),
        `${from}: ${turns[i % turns.length]}`,
      ]);
    });
  expect(faults.filter(f => f !== undefined)).toEqual([]);
});
