import type { Message } from 'grammy/types';
import { beforeEach, describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { VolatileStore } from '#memory/volatile/store.ts';
import { stage } from './fake/bot.ts';
import { alone, group, kim, message, update } from './fake/people.ts';
import { Refusal } from './fake/rules.ts';
import { me, World } from './fake/world.ts';

let world: World;
let store: VolatileStore;
beforeEach(() => {
  world = new World();
  store = new VolatileStore();
});

const question = (text = '/power fridge', chat: object = group) =>
  update({ message: message(text, { chat } as never) as never });
type Question = ReturnType<typeof question>;

/** A process that dies before it can note which message its answer is; where told, before it sends it. */
async function die(asked: Question, isSent: boolean): Promise<void> {
  const first = stage({ world, store });
  if (!isSent) first.bot.api.config.use(() => Promise.reject(new Error('the process is dead')));
  const finish = store.finish;
  store.finish = () => Promise.reject(new Error('the process is dead'));
  await first.give(asked).catch(() => {});
  store.finish = finish;
  await store.release(asked.update_id);
}
const answerAndDie = (asked: Question): Promise<void> => die(asked, true);
const dieBeforeSending = (asked: Question): Promise<void> => die(asked, false);

const replies = (chat: number): Message[] => stage({ world, store }).answers(chat);
const edits = (): number => world.sent('editMessageText').length;

describe('an answer that nobody could note is looked for before it is said again', () => {
  test.each([
    ['a supergroup', group],
    ['a private chat', alone],
  ])('in %s, right behind its question', async (_where, chat) => {
    const asked = question('/power fridge', chat);
    await answerAndDie(asked);
    await stage({ world, store }).give(asked);
    expect(replies(chat.id)).toHaveLength(1);
    expect(edits()).toBe(1);
    const [answer] = replies(chat.id);
    expect(await store.answerTo(String(chat.id), String(present(asked.message).message_id))).toBe(
      String(present(answer).message_id),
    );
  });

  test('behind what people wrote in between', async () => {
    const asked = question();
    world.hear(asked);
    for (const text of ['morning', 'who has the kettle?', 'me'])
      world.hear({ message: message(text, { from: kim }) as never });
    await answerAndDie(asked);
    await stage({ world, store }).give(asked);
    expect(replies(group.id)).toHaveLength(1);
    expect(edits()).toBe(4);
  });

  test('behind an answer to somebody else, which stays as it is', async () => {
    const [first, second] = [question('/power fridge'), question('/power lights')];
    world.hear(first);
    world.hear(second);
    await stage({ world, store }).give(first);
    await answerAndDie(second);
    await stage({ world, store }).give(second);
    expect(replies(group.id).map(({ text }) => text?.split('\n')[0])).toEqual([
      'Answer to Sam: fridge',
      'Answer to Sam: lights',
    ]);
  });

  test('where it is not there it is sent, and once', async () => {
    const asked = question();
    await dieBeforeSending(asked);
    world.hear({ message: message('hello?', { from: kim }) as never });
    await stage({ world, store }).give(asked);
    expect(replies(group.id)).toHaveLength(1);
  });

  test('a private chat, whose numbers have gaps, is looked through as far as others can have been at work', async () => {
    const asked = question('fridge', alone);
    await dieBeforeSending(asked);
    await stage({ world, store }).give(asked);
    expect(replies(alone.id)).toHaveLength(1);
    expect(edits()).toBe(120);
  });

  test('behind what other private chats wrote since it was asked, and behind what was on its way beside it', async () => {
    const other = (n: number) => ({ id: 7000 + n, type: 'private' as const, first_name: 'Other' });
    const asked = question('fridge', alone);
    world.hear(asked);
    const bystander = stage({ world, store });
    // A backlog: two hundred others were heard between the question and its answer.
    for (let n = 0; n < 200; n++) {
      const theirs = question(`/power ${n}`, other(n));
      world.hear(theirs);
      if (n === 199) await bystander.give(theirs);
    }
    const late = world.messages.size;
    const first = stage({ world, store });
    // It is kept behind the two hundred; forty more come in before it goes out.
    await first.give(question('/power lights', other(999)));
    first.bot.api.config.use((prev, method, payload, signal) => {
      if (method === 'sendMessage') for (let n = 0; n < 40; n++) world.hear(question('x', other(n)));
      return prev(method, payload, signal);
    });
    const finish = store.finish;
    store.finish = () => Promise.reject(new Error('the process is dead'));
    await first.give(asked).catch(() => {});
    store.finish = finish;
    await store.release(asked.update_id);
    expect(world.messages.size).toBeGreaterThan(late);
    const before = edits();
    await stage({ world, store }).give(asked);
    expect(replies(alone.id)).toHaveLength(1);
    expect(edits() - before).toBeLessThanOrEqual(42);
  });

  test('a refusal that tells nothing ends the looking, and it is sent', async () => {
    const asked = question();
    await dieBeforeSending(asked);
    world.faults.push({ method: 'editMessageText', fault: new Refusal(400, 'Bad Request: odd') });
    await stage({ world, store }).give(asked);
    expect(replies(group.id)).toHaveLength(1);
  });

  test('what only its asker sees is sent again: it has no number', async () => {
    world.admins.add(`${group.id} ${me.id}`);
    const asked = question('/power help');
    await answerAndDie(asked);
    await stage({ world, store }).give(asked);
    expect(edits()).toBe(0);
    expect(world.whispers.sent.size).toBe(2);
  });
});
