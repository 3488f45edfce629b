import { describe, expect, test } from 'vitest';
import { converse } from '#conversation/converse.ts';
import { emptyMemory, type Memory, memorySchema } from '#conversation/memory.ts';
import { type Week, weeks } from './weeks.ts';

/** Plays a chat over its days, a message a minute from nine in the morning, each by somebody who is no admin. */
function played({ lines }: Week): Memory {
  let memory: Memory = emptyMemory();
  for (const [i, [day, from, text]] of lines.entries()) {
    const at = new Date(Date.UTC(2026, 0, 10 + day, 9, i));
    ({ memory } = converse(memory, { chat: 'camp', from, text, at, kind: 'group', isAdmin: false }));
  }
  return memory;
}

describe('rigs told over a week', () => {
  test.each(weeks)('$what', week => {
    const memory = played(week);
    expect(memorySchema.safeParse(memory).error).toBeUndefined();
    expect({ ...memory.rigs }).toEqual(week.rigs);
  });
});
