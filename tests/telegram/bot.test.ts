import type { Message } from 'grammy/types';
import { beforeEach, describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { VolatileStore } from '#memory/volatile/store.ts';
import { toasts } from '#telegram/updates/pressing/toasts.ts';
import { type Stage, stage } from './fake/bot.ts';
import { alone, group, kim, message, nowSec, plainGroup, press, sam, update } from './fake/people.ts';
import { Refusal } from './fake/rules.ts';

let s: Stage;
beforeEach(() => {
  s = stage();
});

/** Sam asks in the group; gives back the question and the bot's answer. */
async function ask(
  text: string,
  more: Partial<Message> = {},
): Promise<{ question: Message; answer: Message }> {
  const question = message(text, more);
  await s.give({ message: question as never });
  return { question, answer: present(s.answers().at(-1)) };
}
const now = (answer: Message): Message =>
  present(s.world.messages.get(`${answer.chat.id} ${answer.message_id}`));
const tap = (on: Message, label: string | RegExp, from = sam) =>
  s.give({ callback_query: press(on, label, from) });
const lastToast = () => s.world.sent('answerCallbackQuery').at(-1)?.text;

describe('a question', () => {
  test('gets one message, in reply, by entities, that survives the question’s deletion', async () => {
    const { question } = await ask('/power fridge');
    expect(s.world.calls.map(call => call.method)).toEqual(['sendMessage']);
    const sent = present(s.world.sent()[0]);
    expect(sent).toMatchObject({
      chat_id: group.id,
      text: 'Answer to Sam: fridge\nfirst',
      reply_parameters: { message_id: question.message_id, allow_sending_without_reply: true },
      entities: [{ type: 'bold', offset: 0, length: 21 }],
      link_preview_options: { is_disabled: true },
    });
    expect(sent).not.toHaveProperty('parse_mode');
    expect(sent.reply_markup.inline_keyboard.flat().map((b: { text: string }) => b.text)).toEqual([
      "what if it's cloudy?",
      'make it 5 days',
      'Show working',
    ]);
  });

  test('delivered twice is answered once', async () => {
    const twice = update({ message: message('/power fridge') as never });
    await s.give(twice);
    await s.give(twice);
    expect(s.answers()).toHaveLength(1);
  });

  test('delivered again after a restart is answered once', async () => {
    const store = new VolatileStore();
    const twice = update({ message: message('/power fridge') as never });
    const before = stage({ store });
    await before.give(twice);
    const after = stage({ store, world: before.world });
    await after.give(twice);
    expect(after.answers()).toHaveLength(1);
  });

  test('of an admin who speaks as the group belongs to nobody', async () => {
    const { answer } = await ask('/power fridge', { sender_chat: group });
    expect(answer.text).toContain('Answer to nobody');
  });

  test('two at once in one chat are answered one after the other, each knowing the one before', async () => {
    const given = ['a', 'b', 'c', 'd', 'e'].map(text =>
      s.give({ message: message(`/power ${text}`) as never }),
    );
    await Promise.all(given);
    expect(s.answers().map(m => m.text?.split('\n')[1])).toEqual([
      'first',
      'after <Sam: a>',
      'after <Sam: b>',
      'after <Sam: c>',
      'after <Sam: d>',
    ]);
  });
});

describe('topics', () => {
  test('the answer goes into the topic', async () => {
    await ask('/power x', { is_topic_message: true, message_thread_id: 77 });
    expect(s.world.sent()[0]).toMatchObject({ message_thread_id: 77 });
  });
  test('in General and without topics no thread is named', async () => {
    await ask('/power x', { message_thread_id: 77 });
    expect(s.world.sent()[0]).not.toHaveProperty('message_thread_id');
  });
  test('a topic that is gone does not cost the answer', async () => {
    s.world.deadThreads.add(77);
    await ask('/power x', { is_topic_message: true, message_thread_id: 77 });
    expect(s.answers()).toHaveLength(1);
  });
});

describe('an edited question', () => {
  test('edits its answer', async () => {
    const { question, answer } = await ask('/power 100Ah');
    await s.give({ edited_message: { ...question, text: '/power 120Ah', edit_date: nowSec } as never });
    expect(s.answers()).toHaveLength(1);
    expect(now(answer).text).toContain('120Ah');
  });
  test('that still says the same does nothing', async () => {
    const { question } = await ask('/power 100Ah');
    await s.give({ edited_message: { ...question, edit_date: nowSec } as never });
    expect(s.world.calls).toHaveLength(1);
  });
  test('finds its answer after a restart', async () => {
    const { question, answer } = await ask('/power 100Ah');
    const after = stage({ store: s.store, world: s.world });
    await after.give({ edited_message: { ...question, text: '/power 120Ah', edit_date: nowSec } as never });
    expect(now(answer).text).toContain('120Ah');
    expect(after.answers()).toHaveLength(1);
  });
  test('whose answer was deleted gets a new one', async () => {
    const { question, answer } = await ask('/power 100Ah');
    s.world.messages.delete(`${group.id} ${answer.message_id}`);
    await s.give({ edited_message: { ...question, text: '/power 120Ah', edit_date: nowSec } as never });
    expect(s.answers()).toHaveLength(1);
  });
  test('that is addressed only now is answered while it is fresh', async () => {
    const forgot = message('fridge 100Ah');
    await s.give({ message: forgot as never });
    await s.give({
      edited_message: {
        ...message('/power fridge 100Ah'),
        message_id: forgot.message_id,
        edit_date: nowSec,
      } as never,
    });
    expect(s.answers()).toHaveLength(1);
  });
});

describe('a button', () => {
  test('asks its own words and edits the answer in place', async () => {
    const { answer } = await ask('/power fridge');
    await tap(answer, "what if it's cloudy?");
    expect(s.world.calls.map(call => call.method)).toEqual([
      'sendMessage',
      'answerCallbackQuery',
      'editMessageText',
    ]);
    expect(now(answer).text).toBe(
      "Answer to Sam: what if it's cloudy?\nafter <Sam: fridge>\n\nwhat if it's cloudy?",
    );
  });
  test('goes on from the answer it stands under, not from a later one', async () => {
    const { answer } = await ask('/power fridge');
    await ask('/power 60W in amps', { from: kim });
    await tap(answer, 'make it 5 days');
    expect(now(answer).text).toContain('after <Sam: fridge>');
  });
  test('so does a reply', async () => {
    const { answer } = await ask('/power fridge');
    await ask('/power 60W in amps', { from: kim });
    const reply = await ask('and lithium?', { reply_to_message: answer as never });
    expect(reply.answer.text).toContain('after <Sam: fridge>');
  });
  test('shows the working in a quote that opens', async () => {
    const { answer } = await ask('/power fridge');
    await tap(answer, 'Show working');
    const { text = '', entities = [], reply_markup } = now(answer);
    const quote = present(entities.find(entity => entity.type === 'expandable_blockquote'));
    expect(text.slice(quote.offset)).toBe('usable = capacity × depth = 100 Ah × 0.5 = 50 Ah');
    expect(entities[0]).toMatchObject({ type: 'bold', offset: 0 });
    expect(JSON.stringify(reply_markup)).not.toContain('Show working');
    expect(s.answers()).toHaveLength(1);
  });
  test('pressed twice works once', async () => {
    const { answer } = await ask('/power fridge');
    const [first, second] = [press(answer, 'make it 5 days'), press(answer, 'make it 5 days')];
    await Promise.all([s.give({ callback_query: first }), s.give({ callback_query: second })]);
    expect(s.world.sent('editMessageText')).toHaveLength(1);
    expect(s.world.sent('answerCallbackQuery')).toHaveLength(2);
  });
  test('is for the asker, and others are told so', async () => {
    const { answer } = await ask('/power fridge');
    await tap(answer, 'make it 5 days', kim);
    expect(lastToast()).toBe(toasts.notYours);
    expect(s.world.sent('editMessageText')).toHaveLength(0);
  });
  test('is for an admin too, who asks about the asker’s things', async () => {
    const { answer } = await ask('/power fridge');
    s.world.admins.add(`${group.id} ${kim.id}`);
    await tap(answer, 'make it 5 days', kim);
    expect(now(answer).text).toContain('Answer to Sam: make it 5 days');
  });
  test('works after a restart, as long as the question still stands', async () => {
    const { answer } = await ask('/power fridge');
    await s.store.forget(String(group.id));
    s = stage({ store: s.store, world: s.world });
    await tap(answer, 'Show working');
    expect(now(answer).entities?.at(-1)?.type).toBe('expandable_blockquote');
  });
  test('after a restart and a later question says so, rather than show another one’s working', async () => {
    const { answer } = await ask('/power fridge');
    await ask('/power 60W in amps', { from: kim });
    s = stage({ store: s.store, world: s.world });
    await tap(answer, 'Show working');
    expect(lastToast()).toBe(toasts.moved);
  });
  test.each([
    ['of an older version', '0|n|0', toasts.old],
    ['of nobody', 'x'.repeat(64), toasts.old],
  ])('%s says so', async (_what, data, toast) => {
    const { answer } = await ask('/power fridge');
    await s.give({ callback_query: { ...press(answer, 'make it 5 days'), data } });
    expect(lastToast()).toBe(toast);
  });
  test('under a message that can no longer be seen says so', async () => {
    const { answer } = await ask('/power fridge');
    const message = { chat: group, message_id: answer.message_id, date: 0 } as never;
    await s.give({ callback_query: { ...press(answer, 'make it 5 days'), message } });
    expect(lastToast()).toBe(toasts.gone);
  });
});

describe('who may', () => {
  test('a member does not delete the group’s memory, an admin does', async () => {
    await ask('/power fridge');
    expect((await ask('/forget')).answer.text).toContain('Only an admin');
    expect((await s.store.load(String(group.id))).revision).not.toBe(0);
    s.clock.now += 6 * 60_000;
    s.world.admins.add(`${group.id} ${sam.id}`);
    expect((await ask('/forget', { date: nowSec + 360 })).answer.text).toContain('All forgotten');
    expect((await s.store.load(String(group.id))).revision).toBe(0);
  });
  test('in private everybody is their own admin, and nobody is looked up', async () => {
    expect((await ask('/forget', { chat: alone })).answer.text).toContain('All forgotten');
    expect(s.world.sent('getChatMember')).toHaveLength(0);
  });
});

describe('refusals', () => {
  const refuse = (method: string, code: number, text: string, parameters?: Record<string, number>) =>
    s.world.faults.push({ method, fault: new Refusal(code, text, parameters) });

  test('a refused format still brings the words', async () => {
    refuse('sendMessage', 400, "Bad Request: can't parse entities");
    const { answer } = await ask('/power fridge');
    expect(answer.text).toContain('Answer to Sam: fridge');
    expect(answer.entities).toBeUndefined();
  });
  test('a chat that is closed to us is left alone', async () => {
    s.world.closed.set(group.id, 'bot was kicked from the supergroup chat');
    await s.give({ message: message('/power fridge') as never });
    expect(s.world.sent()).toHaveLength(1);
    expect(s.logged.filter(entry => entry.level === 'error')).toEqual([]);
  });
  test('a group that moved gets the answer where it is now, with its memory', async () => {
    await ask('/power before', { chat: plainGroup });
    s.world.movedTo.set(plainGroup.id, group.id);
    await ask('/power fridge', { chat: plainGroup });
    expect(s.answers(group.id)[0]?.text).toContain('fridge');
    const { memory } = await s.store.load(String(group.id));
    expect(memory.frames.at(-1)?.claims[0]?.who).toBe('Sam: fridge');
  });
  test('a fault of ours is told with an id that stands in the log', async () => {
    const { answer } = await ask('/power crash');
    const fault = s.logged.find(entry => entry.level === 'error')?.fields as {
      fault: string;
      origin: string;
    };
    expect(fault.origin).toBe('ours');
    expect(answer.text).toContain(fault.fault);
    expect((await ask('/power fridge')).answer.text).toContain('fridge');
  });
});

describe('a move to a supergroup keeps the memory', () => {
  const toOld = () =>
    s.give({ message: message(undefined, { chat: plainGroup, migrate_to_chat_id: group.id }) as never });
  const toNew = () =>
    s.give({ message: message(undefined, { migrate_from_chat_id: plainGroup.id }) as never });
  const first = () => ask('/power fridge', { chat: plainGroup });
  const next = () => ask('/power later');

  test.each([
    ['old then new', [toOld, toNew]],
    ['new then old', [toNew, toOld]],
    ['only the old one', [toOld]],
    ['only the new one', [toNew]],
  ])('%s', async (_what, steps) => {
    await first();
    for (const step of steps) await step();
    expect((await next()).answer.text).toContain('after <Sam: fridge>');
  });
  test('a message in the new chat before either: its own newest question stays', async () => {
    await first();
    await next();
    await toOld();
    await toNew();
    expect((await ask('/power third')).answer.text).toContain('after <Sam: later>');
  });
});

test('logs hold no texts and no names', async () => {
  await ask('/power secretword');
  await ask('/power crash secretword');
  const lines = JSON.stringify(
    s.logged.map(({ fields, message }) => [Object.keys(fields), message, { ...fields, err: undefined }]),
  );
  expect(lines).not.toMatch(/secretword|Sam|Sunday/);
});
