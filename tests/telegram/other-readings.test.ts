import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { present } from '#basics/present.ts';
import { Refusal } from './fake/rules.ts';
import { alone, fridge, group, kim, message, type Scene, sam, scene, textOf } from './rows/one-group.ts';

/** Where Telegram's documents may be read in more than one way, or name no words, the bot does right by each. */

let s: Scene;
beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  s = scene();
});
afterEach(() => {
  expect(s.errors()).toEqual([]);
  vi.useRealTimers();
});
const pass = async (seconds: number): Promise<void> => {
  for (let left = seconds; left > 0; left--) {
    s.later(1);
    await vi.advanceTimersByTimeAsync(1000);
  }
};

describe('rows 10 and 12: a message for one person that Telegram will not have', () => {
  const refusals = [
    new Refusal(400, 'Bad Request: BOT_NOT_ADMIN'),
    new Refusal(400, 'Bad Request: USER_NOT_PARTICIPANT'),
    new Refusal(400, 'Bad Request: PEER_ID_INVALID'),
    new Refusal(403, 'Forbidden: bot is not an administrator of the supergroup chat'),
    new Refusal(404, 'Not Found: method not found'),
  ];
  test.each(refusals.map(refusal => [refusal.message, refusal] as const))('%s', async (_words, refusal) => {
    const isOwn = /^I (keep the numbers|work out camping power)/;
    s.world.whispers.refusal = refusal;
    // Thought to be an admin, and is none any more.
    s.makeAdmin(group.id);
    await s.say('/power 60W in amps');
    await s.say('/help');
    s.world.admins.clear();
    await s.say('/privacy', { from: kim });
    expect(
      s
        .answers(group.id)
        .map(textOf)
        .filter(text => isOwn.test(text)),
    ).toEqual([]);
    await s.say('/power 90W in amps');
    expect(textOf(s.last(group.id))).toContain('90 W');
  });

  test.each([2, 15, 60])('%i s to answer a tap or a command in', async seconds => {
    s.world.whispers.withinMs = seconds * 1000;
    const asked = message('/help', { message_id: 0, ephemeral_message_id: 4 });
    s.world.hear({ message: asked as never });
    s.later(5);
    await s.give({ message: asked as never });
    expect(s.answers(group.id)).toEqual([]);
    expect(s.whispers().length + s.answers(alone.id).length).toBe(1);
  });
});

describe('row 17: a ban', () => {
  test.each([
    ['that an early call does not lengthen', 0, 0],
    ['that an early call doubles', 60, 0],
    ['that lasts a second longer than it says', 10, 1],
    ['that lasts five seconds longer than it says', 10, 5],
  ])('%s', async (_what, earlySec, shortSec) => {
    Object.assign(s.world.floods, { earlySec, shortSec });
    s.world.floods.ban(group.id, 30, s.clock.now);
    await s.say(`/power ${fridge}`);
    await s.say('/power 60W in amps', { from: kim });
    await pass(200);
    expect(s.answers(group.id)).toHaveLength(2);
    expect(await s.store.due()).toEqual([]);
  });
});

test.each([5, 10, 20])(
  'row 18: a group that is let have %i messages a minute hears all its answers',
  async most => {
    const sent: number[] = [];
    s.bot.api.config.use(async (prev, method, payload, signal) => {
      if (method !== 'sendMessage') return prev(method, payload, signal);
      const from = s.clock.now - 60_000;
      const late = sent.filter(at => at > from);
      if (late.length >= most)
        return {
          ok: false,
          error_code: 429,
          description: 'Too Many Requests',
          parameters: { retry_after: Math.ceil((present(late[0]) - from) / 1000) },
        } as never;
      sent.push(s.clock.now);
      return prev(method, payload, signal);
    });
    for (let i = 0; i < 8; i++) {
      await s.say(`/power ${60 + i}W in amps`, { from: i % 2 ? kim : sam });
      await pass(2);
    }
    await pass(180);
    expect(s.answers(group.id)).toHaveLength(8);
  },
);

describe('row 20: an answer whose line broke is looked for by edits', () => {
  test.each(['message to edit not found', 'MESSAGE_ID_INVALID'])(
    'nothing there is told by “%s”',
    async words => {
      s.bot.api.config.use(async (prev, method, payload, signal) => {
        const done = await prev(method, payload, signal);
        return !done.ok && /not found/.test(done.description)
          ? { ...done, description: `Bad Request: ${words}` }
          : done;
      });
      s.world.faults.push({ method: 'sendMessage', fault: 'cut-before' });
      await s.say(`/power ${fridge}`);
      expect(s.answers(group.id)).toHaveLength(1);
      s.world.faults.push({ method: 'sendMessage', fault: 'cut-after' });
      await s.say('/power 60W in amps', { from: kim });
      expect(s.answers(group.id)).toHaveLength(2);
    },
  );
});
