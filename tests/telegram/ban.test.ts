import type { Message } from 'grammy/types';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import type { Converse } from '#telegram/ops/deps.ts';
import { toasts } from '#telegram/updates/pressing/toasts.ts';
import { parrot, type Stage, stage } from './fake/bot.ts';
import { alone, group, kim, message, nowSec, press, sam, update } from './fake/people.ts';
import { Refusal } from './fake/rules.ts';

let s: Stage;
const clock = { now: nowSec * 1000 };
beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  clock.now = nowSec * 1000;
  s = stage({ clock });
});
afterEach(() => {
  vi.useRealTimers();
});
const ask = (text: string, more: Partial<Message> = {}) =>
  s.give({ message: message(text, { date: Math.floor(clock.now / 1000), ...more }) as never });
/** Time goes on, for the bot and for Telegram. */
const pass = async (seconds: number): Promise<void> => {
  for (let left = seconds; left > 0; left--) {
    clock.now += 1000;
    await vi.advanceTimersByTimeAsync(1000);
  }
};
const texts = (chat: number = group.id): string[] => s.answers(chat).map(m => m.text?.split('\n')[0] ?? '');

describe('a chat in a ban (429)', () => {
  test.each([5, 30, 60, 90, 120])(
    'of %i s: the answers come after it, in order, and no call too early',
    async seconds => {
      s.world.floods.ban(group.id, seconds, clock.now);
      await ask('/power one');
      await ask('/power two', { from: kim });
      await ask('/power three');
      await pass(seconds - 1);
      expect(texts()).toEqual([]);
      expect(s.world.sent('sendMessage')).toHaveLength(1);
      await pass(3);
      expect(texts()).toEqual(['Answer to Sam: one', 'Answer to Kim: two', 'Answer to Sam: three']);
      expect(s.world.floods.early).toBe(0);
      expect(await s.store.due()).toEqual([]);
    },
  );

  test('the update is done for everybody else at once: no lock is held and others are answered', async () => {
    s.world.floods.ban(group.id, 90, clock.now);
    await ask('/power one');
    let isFree = false;
    await s.store.withLock(String(group.id), async () => {
      isFree = true;
    });
    expect(isFree).toBe(true);
    await ask('one of mine', { chat: alone });
    expect(texts(alone.id)).toEqual(['Answer to Sam: one of mine']);
  });

  test('an edited question edits its answer after it', async () => {
    const question = message('/power 100Ah');
    await s.give({ message: question as never });
    s.world.floods.ban(group.id, 40, clock.now);
    await s.give({ edited_message: { ...question, text: '/power 120Ah', edit_date: nowSec } as never });
    await pass(42);
    expect(texts()).toEqual(['Answer to Sam: 120Ah']);
  });

  test('a tap is told to come again; one that finds the ban is done after it', async () => {
    await ask('/power fridge');
    const [answer] = s.answers();
    s.world.floods.ban(group.id, 20, clock.now);
    await s.give({ callback_query: press(present(answer), 'make it 5 days') });
    await s.give({ callback_query: press(present(answer), 'make it 5 days') });
    expect(s.world.sent('answerCallbackQuery').at(-1)?.text).toBe(toasts.held);
    await pass(22);
    expect(texts()).toEqual(['Answer to Sam: make it 5 days']);
  });

  test('what is too old for a group when it ends is not sent: its loss is said, once', async () => {
    s.world.floods.ban(group.id, 900, clock.now);
    await ask('/power one');
    await ask('/power two');
    await pass(903);
    expect(texts()).toEqual([expect.stringMatching(/^2 questions went unanswered/)]);
    expect(await s.store.due()).toEqual([]);
    await ask('/power three');
    expect(texts().at(-1)).toBe('Answer to Sam: three');
  });

  test('a ban that goes on is waited out again', async () => {
    s.world.floods.ban(group.id, 10, clock.now);
    await ask('/power one');
    s.world.floods.ban(group.id, 60, clock.now);
    await pass(80);
    expect(texts()).toEqual(['Answer to Sam: one']);
  });

  test('a process that ends meanwhile leaves the answer to the next one', async () => {
    s.world.floods.ban(group.id, 60, clock.now);
    await ask('/power one');
    expect(await s.store.due()).toHaveLength(1);
    const next = stage({ store: s.store, world: s.world, clock });
    clock.now += 61_000;
    await next.bot.resume();
    await vi.advanceTimersByTimeAsync(100);
    expect(texts()).toEqual(['Answer to Sam: one']);
    await pass(5);
    expect(texts()).toHaveLength(1);
  });

  describe('a process that ends meanwhile leaves to the next one', () => {
    const forgetful: Converse = (memory, asked) => ({ ...parrot(memory, asked), memory });
    const hello = {
      my_chat_member: {
        chat: group,
        from: sam,
        date: nowSec,
        old_chat_member: { status: 'left' },
        new_chat_member: { status: 'member' },
      },
    };
    test.each([
      [
        'an answer that changes no memory',
        group.id,
        { message: message('/power one') },
        /^Answer to Sam: one/,
      ],
      ['the settings', group.id, { message: message('/settings') }, /^What I go by/],
      [
        'a setting turned',
        sam.id,
        { message: message('/pictures off', { chat: alone }) },
        /^Done: only words/,
      ],
      [
        'the word on voice notes',
        sam.id,
        { message: message(undefined, { chat: alone, voice: {} as never }) },
        /^Nice/,
      ],
      ['the hello', group.id, hello, /^Hello/],
    ])('%s', async (_what, chat, given, words) => {
      s = stage({ clock, converse: forgetful });
      s.world.floods.ban(chat, 60, clock.now);
      await s.give(structuredClone(given) as never);
      expect(texts(chat)).toEqual([]);
      vi.clearAllTimers();
      const next = stage({ store: s.store, world: s.world, clock, converse: forgetful });
      clock.now += 61_000;
      await next.bot.resume();
      await vi.advanceTimersByTimeAsync(100);
      expect(texts(chat)).toEqual([expect.stringMatching(words)]);
      expect(await s.store.due()).toEqual([]);
      expect(s.world.floods.early).toBe(0);
    });

    /** The next process, after the ban. */
    const takenUp = async () => {
      vi.clearAllTimers();
      const next = stage({ store: s.store, world: s.world, clock });
      clock.now += 61_000;
      await next.bot.resume();
      await vi.advanceTimersByTimeAsync(100);
      expect(await s.store.due()).toEqual([]);
      expect(s.world.floods.early).toBe(0);
    };
    const tap = (label: string, of = present(s.answers(alone.id)[0])) =>
      s.give({ callback_query: press(of, label) });

    test.each([
      ['the working that a tap asked for', 'Show working', / = /],
      ['a question asked by a tap', 'make it 5 days', /^Answer to Sam: make it 5 days/],
    ])('%s', async (_what, label, shown) => {
      await ask('fridge', { chat: alone });
      s.world.floods.ban(alone.id, 60, clock.now);
      await tap(label);
      expect(s.answers(alone.id)[0]?.text).not.toMatch(shown);
      await takenUp();
      expect(s.answers(alone.id)).toHaveLength(1);
      expect(s.answers(alone.id)[0]?.text).toMatch(shown);
    });
    test('a setting that a tap turned: it is shown so, and turned once', async () => {
      await ask('/settings', { chat: alone });
      s.world.floods.ban(alone.id, 60, clock.now);
      await tap('Turn the pictures off');
      expect((await s.store.load(String(alone.id))).memory.settings.pictures).toBe(false);
      await takenUp();
      expect((await s.store.load(String(alone.id))).memory.settings.pictures).toBe(false);
      expect(s.answers(alone.id)[0]?.text).toContain('Pictures with a trip: off');
    });
    test('a page that a tap turned to', async () => {
      await ask('/help', { chat: alone });
      s.world.floods.ban(alone.id, 60, clock.now);
      await tap('The battery');
      await takenUp();
      expect(texts(alone.id)).toEqual(['The battery:']);
    });
    test('a file that was asked for, as what is kept is by then', async () => {
      await ask('one', { chat: alone });
      s.world.floods.ban(alone.id, 60, clock.now);
      await ask('/export', { chat: alone });
      expect(s.answers(alone.id)).toHaveLength(1);
      await takenUp();
      const [file] = s.world.sent('sendDocument').slice(-1);
      expect(file?.caption).toBe('All that I keep of this chat.');
      expect(s.answers(alone.id)).toHaveLength(2);
    });
    test('a picture that a tap asked for, and the button goes', async () => {
      const now = { clock, converse };
      s = stage(now);
      await ask('how long will 100Ah AGM run a fridge averaging 1.5A?', { chat: alone });
      s.world.floods.ban(alone.id, 60, clock.now);
      await tap('Picture');
      expect(s.answers(alone.id)).toHaveLength(1);
      vi.clearAllTimers();
      clock.now += 61_000;
      const next = stage({ store: s.store, world: s.world, ...now });
      await next.bot.resume();
      expect(s.answers(alone.id).map(m => m.photo?.length)).toEqual([undefined, 1]);
      expect(JSON.stringify(s.answers(alone.id)[0]?.reply_markup)).not.toContain('Picture');
    });

    test('what is too old for a group by then: its loss is said, once', async () => {
      s.world.floods.ban(group.id, 60, clock.now);
      await ask('/power one');
      await ask('/power two');
      vi.clearAllTimers();
      const next = stage({ store: s.store, world: s.world, clock });
      clock.now += 900_000;
      await next.bot.resume();
      await vi.advanceTimersByTimeAsync(100);
      expect(texts()).toEqual([expect.stringMatching(/^2 questions went unanswered/)]);
      expect(await s.store.due()).toEqual([]);
    });
  });

  test('a file asked for comes after it', async () => {
    s.world.floods.ban(sam.id, 20, clock.now);
    await ask('/export', { chat: alone });
    expect(texts(alone.id)).toEqual([]);
    await pass(22);
    expect(s.world.sent('sendDocument')).toHaveLength(2);
    expect(s.logged.filter(({ level }) => level === 'error')).toEqual([]);
  });

  test('the buttons of an answer that was turned after it go on working', async () => {
    await ask('/power fridge');
    s.world.floods.ban(group.id, 20, clock.now);
    await s.give({ callback_query: press(present(s.answers()[0]), 'make it 5 days') });
    await pass(22);
    expect(texts()).toEqual(['Answer to Sam: make it 5 days']);
    await s.give({ callback_query: press(present(s.answers()[0]), /cloudy/) });
    expect(texts()).toEqual([expect.stringMatching(/^Answer to Sam: what if it's cloudy/)]);
  });

  test('the hello to a new group comes after it', async () => {
    s.world.floods.ban(group.id, 20, clock.now);
    const change = { old_chat_member: { status: 'left' }, new_chat_member: { status: 'member' } };
    await s.give({ my_chat_member: { chat: group, from: sam, date: nowSec, ...change } as never });
    await pass(22);
    expect(texts()).toEqual([expect.stringMatching(/^Hello/)]);
  });

  test('no more than a hundred wait; the loss of the others is said', async () => {
    s.world.floods.ban(sam.id, 60, clock.now);
    for (let i = 0; i < 130; i++) {
      clock.now += 2500;
      s.world.floods.ban(sam.id, 60, clock.now);
      await ask(`${i}`, { chat: alone });
    }
    await pass(130);
    expect(texts(alone.id)).toHaveLength(101);
    expect(texts(alone.id).at(-1)).toMatch(/^30 questions went unanswered/);
  });
});

test('a setting that a tap turned in a ban is turned once, by the same process as well', async () => {
  await ask('/settings', { chat: alone });
  s.world.floods.ban(alone.id, 20, clock.now);
  await s.give({ callback_query: press(present(s.answers(alone.id)[0]), 'Turn the pictures off') });
  await pass(22);
  expect(s.answers(alone.id)[0]?.text).toContain('Pictures with a trip: off');
  expect((await s.store.load(String(alone.id))).memory.settings.pictures).toBe(false);
});

test('a ban met while an answer is looked for: it is looked for again after it, and comes once', async () => {
  const asked = update({ message: message('one', { chat: alone, date: nowSec }) as never });
  const finish = s.store.finish.bind(s.store);
  s.store.finish = () => Promise.reject(new Error('the process is dead'));
  await s.give(asked).catch(() => {});
  s.store.finish = finish;
  await s.store.release(asked.update_id);
  const next = stage({ store: s.store, world: s.world, clock });
  s.world.floods.ban(alone.id, 20, clock.now);
  await next.give(asked);
  await pass(22);
  expect(texts(alone.id)).toEqual(['Answer to Sam: one']);
  expect(await s.store.due()).toEqual([]);
});

describe('a 5xx, or a line that breaks, is not sent again blind', () => {
  test('a file that stands is found, not sent twice', async () => {
    s.world.faults.push({ method: 'sendDocument', fault: 'lost-after' });
    await ask('/export', { chat: alone });
    expect(s.answers(alone.id)).toHaveLength(1);
  });
  test.each(['lost-after', 'cut-after'] as const)('%s: the answer that stands is found', async fault => {
    s.world.faults.push({ method: 'sendMessage', fault });
    await ask('/power fridge');
    expect(texts()).toEqual(['Answer to Sam: fridge']);
    expect(s.world.sent('sendMessage')).toHaveLength(1);
  });
  test('an answer that Telegram alone fails over is let go in the end, and its loss is said', async () => {
    const question = update({ message: message('/power fridge') as never });
    for (let i = 0; i < 13; i++)
      s.world.faults.push({ method: 'sendMessage', fault: new Refusal(500, 'Internal Server Error') });
    let failures = 0;
    for (let i = 0; i < 13; i++) await s.give(question).catch(() => failures++);
    expect(failures).toBe(11);
    expect(texts()).toEqual([expect.stringMatching(/^Sorry, something went wrong/)]);
    await ask('/power fan');
    expect(texts().at(-1)).toBe('Answer to Sam: fan');
  });
  test('an edit is tried again: twice the same says nothing twice', async () => {
    await ask('/power fridge');
    const [answer] = s.answers();
    s.world.faults.push({ method: 'editMessageText', fault: 'lost-after' });
    const tapped = s.give({ callback_query: press(present(answer), 'make it 5 days') });
    await vi.advanceTimersByTimeAsync(1000);
    await tapped;
    expect(texts()).toEqual(['Answer to Sam: make it 5 days']);
  });
});

describe('questions that are hours old, in private', () => {
  const old = (text: string, hours: number) => ask(text, { chat: alone, date: nowSec - hours * 3600 });

  test('are answered in one message, each with its time', async () => {
    await old('fridge 100Ah', 5);
    await old('and lithium?', 4);
    await old('60W in amps', 2);
    expect(texts(alone.id)).toEqual([]);
    await pass(3);
    const [only, ...more] = s.answers(alone.id);
    expect(more).toEqual([]);
    for (const said of ['fridge 100Ah', 'and lithium?', '60W in amps'])
      expect(only?.text).toContain(`Answer to Sam: ${said}`);
    const dates = only?.entities?.filter(e => e.type === 'date_time');
    expect(dates?.map(e => e.unix_time)).toEqual([5, 4, 2].map(hours => nowSec - hours * 3600));
    expect(await s.store.due()).toEqual([]);
  });
  test('a single one is answered as ever', async () => {
    await old('fridge 100Ah', 5);
    await pass(3);
    expect(texts(alone.id)).toEqual(['Answer to Sam: fridge 100Ah']);
    expect(s.answers(alone.id)[0]?.reply_to_message).toBeDefined();
  });
  test('twenty long ones stay within a message', async () => {
    for (let i = 0; i < 20; i++) await old(`${i} ${'long '.repeat(300)}`, 3);
    await pass(3);
    expect(s.world.refused).toEqual([]);
    expect(texts(alone.id)).toHaveLength(1);
  });
  test('a process that ends meanwhile leaves them to the next one', async () => {
    await old('fridge 100Ah', 5);
    await old('60W in amps', 2);
    vi.clearAllTimers();
    const next = stage({ store: s.store, world: s.world, clock });
    await next.bot.resume();
    await vi.advanceTimersByTimeAsync(100);
    expect(texts(alone.id)).toHaveLength(2);
  });
  test('in a group nothing that old is answered', async () => {
    await ask('/power fridge', { date: nowSec - 3600 });
    await pass(3);
    expect(texts()).toEqual([]);
  });
});

test('what waited goes out before what is asked right after the ban', async () => {
  s.world.floods.ban(sam.id, 8, clock.now);
  await ask('one', { chat: alone });
  // The ban is over, and no timer has come to it yet.
  clock.now += 8_400;
  await ask('two', { chat: alone });
  expect(texts(alone.id)).toEqual(['Answer to Sam: one', 'Answer to Sam: two']);
});
