import { beforeEach, describe, expect, test } from 'vitest';
import { converse } from '#conversation/converse.ts';
import { chatter } from './chatter.ts';
import { type Stage, stage } from './fake/bot.ts';
import { group, kim, message, nowSec, sam } from './fake/people.ts';

let s: Stage;
beforeEach(() => {
  s = stage({ converse });
});
/** Says a line half a minute after the one before: nobody floods. */
const say = async (text: string, index: number, more = {}): Promise<void> => {
  const date = nowSec + index * 30;
  s.clock.now = date * 1000;
  const from = index % 3 === 0 ? kim : sam;
  await s.give({ message: message(text, { from, date, ...more }) as never });
};
/** Messages; a picture joins one that stands already. */
const sends = () => s.world.calls.filter(call => /^send(Message|Photo|Document)/.test(call.method));

describe('200 lines of a group', () => {
  test('are 200, and some of them ask', () => {
    expect(chatter).toHaveLength(200);
    expect(chatter.filter(line => line.isQuestion)).toHaveLength(40);
  });

  test.each([
    ['a member', false],
    ['an admin, who hears everything', true],
  ])('to the bot as %s: no message and no call at all', async (_what, isAdmin) => {
    if (isAdmin) s.world.admins.add(`${group.id} ${s.bot.botInfo.id}`);
    for (const [i, { text }] of chatter.entries()) await say(text, i);
    expect(s.world.calls).toEqual([]);
  });

  test.each([
    ['by the command', (text: string) => `/power ${text}`],
    ['by name', (text: string) => `@camp_power_bot ${text}`],
    ['by the command with its name', (text: string) => `/power@camp_power_bot ${text}`],
  ])('their questions addressed %s: one message each, and none besides', async (_how, address) => {
    for (const [i, { text, isQuestion }] of chatter.entries()) {
      const before = sends().length;
      await say(isQuestion ? address(text) : text, i);
      expect(sends().length - before, text).toBe(isQuestion ? 1 : 0);
    }
    expect(s.logged.filter(entry => entry.level === 'error')).toEqual([]);
  });

  test('their questions in reply to the bot: one message each', async () => {
    await say('/power 60W in amps at 12V', 0);
    const [answer] = s.answers();
    for (const [i, { text, isQuestion }] of chatter.entries()) {
      const before = sends().length;
      await say(text, i + 1, isQuestion ? { reply_to_message: answer } : {});
      expect(sends().length - before, text).toBe(isQuestion ? 1 : 0);
    }
  });
});
