import type { Message } from 'grammy/types';
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { VolatileStore } from '#memory/volatile/store.ts';
import { captionOf } from '#telegram/ui/caption.ts';
import { Pictures } from '#telegram/ui/pictures.ts';
import { toasts } from '#telegram/updates/pressing/toasts.ts';
import { type Stage, stage } from './fake/bot.ts';
import { alone, group, kim, message, nowSec, press, sam, update } from './fake/people.ts';
import { FakeTelegram } from './fake/server.ts';
import type { World } from './fake/world.ts';

let s: Stage;
beforeEach(() => {
  s = stage({ converse });
});

async function ask(text: string, more: Partial<Message> = {}) {
  const question = message(text, more);
  await s.give({ message: question as never });
  return { question, answer: present(s.answers().at(-1)) };
}
const now = (of: Message): Message => present(s.world.messages.get(`${of.chat.id} ${of.message_id}`));
const tap = (on: Message, label: string | RegExp, from = sam) =>
  s.give({ callback_query: press(now(on) ?? on, label, from) });
/** A tap, without waiting for pictures. */
const touch = async (on: Message, label: string | RegExp) => {
  const callback_query = press(on, label, sam);
  s.world.tap(callback_query);
  await s.bot.handleUpdate(update({ callback_query }));
};
const edit = (question: Message, text: string) =>
  s.give({
    edited_message: { ...message(text), message_id: question.message_id, edit_date: nowSec } as never,
  });
/** What was called; that it is typing depends on how busy the machine is. */
const methodsOf = ({ calls }: World) =>
  calls.map(call => call.method).filter(method => method !== 'sendChatAction');
const methods = () => methodsOf(s.world);
const labels = (of: Message) => (now(of).reply_markup?.inline_keyboard.flat() ?? []).map(b => b.text);

/** The head of a picture of 1200 × 675. */
const png = Buffer.from('89504e470d0a1a0a0000000d49484452000004b0000002a3', 'hex');
const trip = '/power 4 days, 120Ah lithium, fridge 1.8A average, 160W solar in Dubbo in October';
const runTime = '/power how long will 100Ah AGM run a fridge averaging 1.5A?';

describe('a trip', () => {
  test('comes as words at once, to which its picture comes: one message', async () => {
    const { question, answer } = await ask(trip);
    expect(methods()).toEqual(['sendMessage', 'editMessageMedia']);
    expect(s.answers()).toHaveLength(1);
    expect(s.world.sent('sendMessage')[0]).toMatchObject({
      reply_parameters: { message_id: question.message_id, allow_sending_without_reply: true },
      text: expect.stringMatching(/gets down to about \d+ %/),
    });
    expect(answer.caption).toBe(s.world.sent('sendMessage')[0]?.text);
    expect(answer.photo).toHaveLength(1);
    expect(answer.caption_entities).toMatchObject([{ type: 'bold', offset: 0 }]);
    expect(labels(answer)).toContain('Show working');
    expect(labels(answer)).not.toContain('Picture');
  });
  test('its words wait for no picture, nor does the next question, nor the end of an update', async () => {
    const drawn = Promise.withResolvers<Buffer>();
    vi.spyOn(Pictures.prototype, 'of').mockReturnValue(drawn.promise);
    await s.bot.handleUpdate(update({ message: message(trip) as never }));
    const [answer] = s.answers();
    expect(answer?.text).toMatch(/gets down to about/);
    expect(labels(present(answer))).toContain('Picture');
    await s.bot.handleUpdate(update({ message: message('/power 60W in amps', { from: kim }) as never }));
    expect(s.answers()).toHaveLength(2);
    expect(await s.store.due()).toEqual([]);
    drawn.resolve(png);
    await s.bot.settled();
    vi.restoreAllMocks();
  });
  test.each([
    ['turned by a tap', (of: Message) => touch(of, /overcast/)],
    ['with its working shown', (of: Message) => touch(of, 'Show working')],
    ['asked to be forgotten', () => s.store.forget(String(group.id))],
  ])('%s before it is drawn, it gets no picture of before', async (_what, act) => {
    const [old, mocked] = [Promise.withResolvers<Buffer>(), vi.spyOn(Pictures.prototype, 'of')];
    mocked.mockReturnValueOnce(old.promise).mockResolvedValue(png);
    await s.bot.handleUpdate(update({ message: message(trip) as never }));
    await act(present(s.answers()[0]));
    old.resolve(png);
    await s.bot.settled();
    const pictured = s.world.sent('editMessageMedia').map(({ media }) => media.caption);
    expect(pictured.filter(caption => !caption.includes('overcast?'))).toEqual([]);
    vi.restoreAllMocks();
  });
  test('that can’t be drawn stays as its words, with a button', async () => {
    vi.spyOn(Pictures.prototype, 'of').mockRejectedValue(new Error('no font'));
    const { answer } = await ask(trip);
    expect(methods()).toEqual(['sendMessage']);
    expect(labels(answer)).toContain('Picture');
    vi.restoreAllMocks();
  });
  test('is renewed in place when its question is edited', async () => {
    const { question, answer } = await ask(trip);
    const before = answer.caption;
    await edit(question, trip.replace('120Ah', '60Ah'));
    // A picture can't give way to words: the new one takes them along.
    expect(methods().slice(2)).toEqual(['editMessageText', 'editMessageMedia']);
    expect(now(answer).caption).not.toBe(before);
  });
  test('that is edited into another question leaves no picture that is wrong', async () => {
    const { question } = await ask(trip);
    await edit(question, '/power 60W in amps at 12V');
    expect(methods().slice(2)).toEqual(['editMessageText', 'deleteMessage', 'sendMessage']);
    expect(s.answers().map(m => m.text)).toEqual([expect.stringContaining('5 A')]);
  });
  test('comes as words in a group that forbids pictures', async () => {
    s.world.withoutPhotos.add(group.id);
    const { answer } = await ask(trip);
    expect(answer.text).toMatch(/gets down to about \d+ %/);
    expect(s.answers()).toHaveLength(1);
  });
  test('shows its working in a message of its own, once, where a second tap does nothing', async () => {
    const { answer } = await ask(trip);
    const [first, second] = [press(answer, 'Show working'), press(answer, 'Show working')];
    await s.give({ callback_query: first });
    await s.give({ callback_query: second });
    const [table, ...more] = s.world.sent('sendRichMessage');
    expect(more).toEqual([]);
    expect(table?.rich_message.blocks[1].cells[0].map((c: { text: string }) => c.text)).toEqual([
      'What',
      'How',
      'Comes to',
    ]);
    expect(s.answers().filter(m => m.rich_message !== undefined)).toHaveLength(1);
    expect(labels(answer)).not.toContain('Show working');
  });
  test('shows it as plain text where the server knows no tables', async () => {
    s.world.isOld = true;
    const { answer } = await ask(trip);
    await tap(answer, 'Show working');
    const working = s.answers().filter(m => m.text !== undefined);
    expect(working.map(m => m.text)).toEqual([expect.stringMatching(/^The working:\n\n[\s\S]* = /)]);
    expect(working[0]?.entities?.at(-1)?.type).toBe('expandable_blockquote');
  });
  test('turned by a button becomes a new picture in place', async () => {
    const { answer } = await ask(trip);
    await tap(answer, /overcast/);
    expect(methods().slice(2)).toEqual(['answerCallbackQuery', 'editMessageText', 'editMessageMedia']);
    expect(now(answer).caption).toContain("what if it's overcast?");
  });
  test('killed after the memory was saved, it goes out with its picture', async () => {
    const store = new VolatileStore();
    const first = stage({ store, converse });
    first.bot.api.config.use(() => Promise.reject(new Error('the process is dead')));
    const update = { update_id: 77, message: message(trip) as never };
    store.finish = () => Promise.reject(new Error('the process is dead'));
    await first.give(update).catch(() => {});
    Reflect.deleteProperty(store, 'finish');
    await store.release(77);
    s = stage({ store, converse });
    await s.give(update);
    expect(methods()).toEqual(['editMessageText', 'editMessageText', 'sendMessage', 'editMessageMedia']);
  });
});

test.each([
  ['as words', false],
  ['with its picture', true],
])('an answer that stands %s when its process dies is found: it comes once', async (_how, isPictured) => {
  const store = new VolatileStore();
  const first = stage({ store, converse });
  const finish = store.finish;
  store.finish = () => Promise.reject(new Error('the process is dead'));
  const asked = update({ message: message(trip) as never });
  if (!isPictured) vi.spyOn(Pictures.prototype, 'of').mockRejectedValue(new Error('dead'));
  await first.give(asked).catch(() => {});
  await first.bot.settled();
  vi.restoreAllMocks();
  store.finish = finish;
  await store.release(asked.update_id);
  s = stage({ store, world: first.world, converse });
  await s.give(asked);
  expect(s.answers()).toHaveLength(1);
  expect(s.answers()[0]?.photo).toHaveLength(1);
});

describe('an answer that can be drawn', () => {
  test('has a button that sends the picture in reply, its numbers as words', async () => {
    const { answer } = await ask(runTime);
    expect(labels(answer)).toContain('Picture');
    await tap(answer, 'Picture');
    expect(methods()).toEqual(['sendMessage', 'answerCallbackQuery', 'sendPhoto', 'editMessageReplyMarkup']);
    const sent = present(s.world.sent('sendPhoto')[0]);
    expect(sent.reply_parameters.message_id).toBe(answer.message_id);
    expect(sent.caption).toMatch(/From 100 % to 50 %, where it should stop: about \d+ hours/);
    expect(labels(answer)).not.toContain('Picture');
    expect(labels(answer)).toContain('Show working');
  });
  test('a second tap on the way sends no second one', async () => {
    const { answer } = await ask(runTime);
    const [first, second] = [press(answer, 'Picture'), press(answer, 'Picture')];
    await Promise.all([s.give({ callback_query: first }), s.give({ callback_query: second })]);
    expect(s.world.sent('sendPhoto')).toHaveLength(1);
  });
  test('the working can be shown after it, and it after the working', async () => {
    const { answer } = await ask(runTime);
    await tap(answer, 'Show working');
    await tap(answer, 'Picture');
    expect(s.world.sent('sendPhoto')).toHaveLength(1);
    expect(labels(answer)).not.toContain('Picture');
    expect(labels(answer)).not.toContain('Show working');
  });
  test('is shown to others as their own copy, and stays on offer to the asker', async () => {
    const { answer } = await ask(runTime);
    await tap(answer, 'Picture', kim);
    expect(s.world.sent('sendPhoto')[0]).toMatchObject({
      ephemeral_message_parameters: { receiver_user_id: kim.id, callback_query_id: expect.any(String) },
    });
    expect(s.world.sent('answerCallbackQuery')).toEqual([{ callback_query_id: expect.any(String) }]);
    expect(s.answers()).toHaveLength(1);
    await tap(answer, 'Picture');
    expect(s.answers()).toHaveLength(2);
  });
  test('says so where no copy can be shown, and shows nothing to all', async () => {
    const { answer } = await ask(runTime);
    s.world.isOld = true;
    await tap(answer, 'Picture', kim);
    expect(s.world.sent('answerCallbackQuery')[0]?.text).toBe(toasts.noCopy);
    expect(s.answers()).toHaveLength(1);
  });
  test('where pictures are forbidden its numbers come as a table', async () => {
    s.world.withoutPhotos.add(group.id);
    const { answer } = await ask(runTime);
    await tap(answer, 'Picture');
    expect(JSON.stringify(s.answers().at(-1)?.rich_message?.blocks)).toMatch(
      /where it should stop: about \d+ hours/,
    );
  });
  test('where the chat wants no pictures a table is offered, in words where there are none', async () => {
    await s.give({ message: message('/pictures off', { chat: alone }) as never });
    const { answer } = await ask(trip.replace('/power ', ''), { chat: alone });
    expect(methods()).toEqual(['sendMessage', 'sendMessage']);
    expect(labels(answer)).not.toContain('Picture');
    await tap(answer, 'Table');
    const [table] = s.world.sent('sendRichMessage');
    expect(table?.rich_message.blocks.at(-1).cells[0].map((c: { text: string }) => c.text)).toEqual([
      'Day',
      'Lowest',
    ]);
    expect(labels(answer)).not.toContain('Table');
    s.world.isOld = true;
    const again = await ask(trip.replace('/power ', ''), { chat: alone });
    await tap(again.answer, 'Table');
    expect(s.answers().at(-1)?.text).toMatch(/Lowest each day: day 1 \d+ %/);
    expect(s.world.sent('sendPhoto')).toEqual([]);
  });
  test('still works after a restart', async () => {
    const { answer } = await ask(runTime);
    await s.store.forget(String(group.id));
    s = stage({ store: s.store, world: s.world, converse });
    await tap(answer, 'Picture');
    expect(s.world.sent('sendPhoto')).toHaveLength(1);
  });
  test.each([
    ["a day's use", '/power fridge 1.5A average, lights 10W 4h a day, how much a day?', /Fridge|fridge/i],
    [
      'an argument',
      '/power Ness says 3 days, Col says 6. 100Ah lithium, fridge 1.5A average. Who is right?',
      /Col: 6 days/,
    ],
  ])('%s can be drawn too', async (_what, question, caption) => {
    const { answer } = await ask(question, { chat: alone });
    await tap(answer, 'Picture');
    expect(s.world.sent('sendPhoto')[0]?.caption).toMatch(caption);
  });
  test('a rig can be drawn too, as a sketch with its cautions', async () => {
    const { answer } = await ask('/rig 100Ah lithium, 200W panel, 1000W inverter, fridge 4A', {
      chat: alone,
    });
    await tap(answer, 'Picture');
    expect(s.world.sent('sendPhoto')[0]?.caption).toMatch(
      /not a plan to build by[\s\S]*licensed electrician/,
    );
  });
  test('is drawn on dark ground where the chat has chosen that', async () => {
    const grounds: string[] = [];
    vi.spyOn(Pictures.prototype, 'of').mockImplementation(async (_chart, theme) => {
      grounds.push(theme ?? '');
      return Buffer.from('x');
    });
    for (const ground of ['dark', 'light']) {
      await s.give({ message: message(`/pictures ${ground}`, { chat: alone }) as never });
      await tap((await ask(runTime, { chat: alone })).answer, 'Picture');
    }
    vi.restoreAllMocks();
    expect(grounds).toEqual(['dark', 'light']);
  });
  test('one without a picture has no button', async () => {
    expect(labels((await ask('/power 60W in amps at 12V')).answer)).not.toContain('Picture');
  });
});

describe('drawing', () => {
  const chart = {
    kind: 'bars',
    title: 'A day',
    note: 'at 12 V',
    unit: 'Ah',
    bars: [{ name: 'fan', value: 3 }],
  } as const;
  const other = (value: number) => ({ ...chart, bars: [{ name: 'fan', value }] });

  test('the same picture is drawn once; the oldest are forgotten', async () => {
    const draw = vi.fn(async () => Buffer.from('x'));
    const pictures = new Pictures(draw, 2);
    for (const value of [3, 3, 4, 5, 3]) await pictures.of(other(value));
    expect(draw).toHaveBeenCalledTimes(4);
  });
  test('one that failed is tried again', async () => {
    const draw = vi.fn(async () => Buffer.from('x')).mockRejectedValueOnce(new Error('no font'));
    const pictures = new Pictures(draw);
    await expect(pictures.of(chart)).rejects.toThrow('no font');
    expect(await pictures.of(chart)).toHaveLength(1);
  });
  test('a caption tells every bar, biggest first', () => {
    expect(
      captionOf({
        ...chart,
        bars: [
          { name: 'fan', value: 3 },
          { name: 'fridge', value: 28.8 },
        ],
      }),
    ).toBe('A day\nat 12 V\nfridge 28.8 Ah, fan 3 Ah.');
  });
});

test('over the wire it is an upload that Telegram can read', async () => {
  const telegram = await new FakeTelegram().start();
  try {
    const { createBot } = await import('#telegram/updates/bot.ts');
    const { me, token } = await import('./fake/world.ts');
    const { silent } = await import('./fake/bot.ts');
    const deps = { converse, store: new VolatileStore(), log: silent, now: () => nowSec * 1000 };
    const bot = createBot({ token, apiRoot: telegram.root, isPaced: false }, deps, { botInfo: me });
    await bot.handleUpdate({ update_id: 1, message: message(trip) as never });
    await bot.settled();
    expect(methodsOf(telegram.world)).toEqual(['sendMessage', 'editMessageMedia']);
    expect(telegram.world.sent('editMessageMedia')[0]?.media.caption).toMatch(/gets down to about/);
  } finally {
    await telegram.stop();
  }
});
