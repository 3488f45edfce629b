import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { present } from '#basics/present.ts';
import { VolatileStore } from '#memory/volatile/store.ts';
import { buttonData, readButton } from '#telegram/ui/buttons.ts';
import { toasts } from '#telegram/updates/pressing/toasts.ts';
import { answer, stage } from '../fake/bot.ts';
import { Refusal } from '../fake/rules.ts';
import { World } from '../fake/world.ts';
import {
  alone,
  ann,
  fridge,
  group,
  kim,
  labelsOf,
  message,
  press,
  sam,
  scene,
  startMs,
  textOf,
  update,
} from './one-group.ts';

test('row 11: a press is answered before any work, edits in place, and twice is once; old buttons are polite', async () => {
  const s = scene();
  await s.say(`/power ${fridge}`);
  const first = s.last();
  const tap = press(first, 'Show working');
  await Promise.all([s.give({ callback_query: tap }), s.give({ callback_query: { ...tap, id: 'second' } })]);
  const methods = s.world.calls.slice(1).map(({ method }) => method);
  expect(methods).toEqual(['answerCallbackQuery', 'editMessageText', 'answerCallbackQuery']);
  await s.give({ callback_query: { ...tap, id: 'old', data: '0|x' } });
  expect(s.toast()).toBe(toasts.old);
  expect(s.answers()).toHaveLength(1);
});

test('row 12: only the asker or an admin changes an answer, a rig, a setting; nothing goes in one tap', async () => {
  const s = scene();
  await s.say('/rig 100Ah AGM, fridge 1.2A');
  const rig = s.last();
  await s.say("/rig Sam's rig is 200Ah lithium", { from: kim });
  await s.tap(rig, 'how long will it last?', kim);
  expect(s.toast()).toBe(toasts.notYours);
  const kept = async () => (await s.store.load(String(group.id))).memory;
  expect((await kept()).rigs.sam?.batteries?.[0]?.capacityAh).toBe(100);
  await s.say('/settings', { from: kim });
  const settings = s.last();
  await s.tap(settings, 'Turn the pictures off', kim);
  expect(s.toast()).toBe(toasts.onlyAdmin);
  expect((await kept()).settings.pictures).toBeUndefined();
  s.later(6 * 60);
  s.makeAdmin(group.id, ann.id);
  await s.tap(settings, 'Turn the pictures off', ann);
  expect((await kept()).settings.pictures).toBe(false);
  // What deletes is red, and asks first.
  await s.say('/forget', { from: ann });
  const asks = s.last();
  expect((await kept()).rigs.sam).toBeDefined();
  const danger = asks.reply_markup?.inline_keyboard.flat().filter(b => b.style === 'danger');
  expect(danger?.map(b => b.text)).toEqual(['yes, forget']);
  await s.tap(asks, 'yes, forget', kim);
  expect((await kept()).rigs.sam).toBeDefined();
  await s.tap(asks, 'yes, forget', ann);
  expect((await kept()).rigs).toEqual({});
});

test('row 12, under the answer of an anonymous admin: admins may, in the group’s name, and nobody else', async () => {
  const s = scene();
  const stand = { id: 1_087_968_824, is_bot: true, first_name: 'Group' };
  await s.say(`/power ${fridge}`, { from: stand, sender_chat: group });
  const given = s.last();
  const label = present(labelsOf(given)[0]);
  await s.tap(given, label, kim);
  expect(s.toast()).toBe(toasts.notYours);
  s.later(6 * 60);
  s.makeAdmin(group.id, ann.id);
  await s.tap(given, label, ann);
  expect(s.now(given).text).not.toBe(given.text);
  const { people = {} } = (await s.store.load(String(group.id))).memory;
  expect(Object.values(people)).not.toContain('Ann');
});

test('row 13: every button’s data has a version, at most 64 bytes, and reads back', () => {
  const actions = fc.constantFrom('next', 'working', 'picture', 'place', 'page', 'subject', 'set' as const);
  const any = fc.record({
    action: actions,
    index: fc.integer({ min: 0, max: 99 }),
    asker: fc.integer({ min: 0, max: 2 ** 52 }),
    answer: fc.stringMatching(/^[\w-]{8}$/),
  });
  fc.assert(
    fc.property(any, button => {
      const data = buttonData(button);
      expect(Buffer.byteLength(data)).toBeLessThanOrEqual(64);
      expect(data.startsWith('1|')).toBe(true);
      expect(readButton(data)).toEqual(button);
    }),
  );
});

test('row 14: nothing is ever longer than Telegram takes, and what is cut keeps its formatting', async () => {
  const s = scene({
    converse: memory => ({
      memory,
      answer: answer(`first 🏕\n${'a line of an answer 🏕\n'.repeat(400)}`, {
        hasWorking: () => true,
        again: () => ({
          working: Array.from({ length: 300 }, () => ({
            name: 'n',
            formula: 'a = b 🏕 = 1',
            value: 1,
            unit: 'Ah',
            source: '',
          })),
        }),
      }),
    }),
  });
  await s.say('/power x');
  expect(textOf(s.last()).length).toBeLessThanOrEqual(4096);
  expect(textOf(s.last()).endsWith('\n…')).toBe(true);
  await s.tap(s.last(), 'Show working', kim);
  s.world.isOld = true;
  await s.tap(s.last(), 'Show working', kim);
  expect(s.world.refused.filter(text => !text.includes('method not found'))).toEqual([]);
});

test('row 15: whatever is typed, by whoever, costs no answer', async () => {
  const s = scene();
  const hard = [
    '🔋'.repeat(1000),
    '_*[`~>#+-=|{}.!\\',
    '\u202eright to left\u202c',
    '<b>x</b> &amp;',
    '日本語',
    '@@@',
    'x'.repeat(4080),
  ];
  for (const [at, text] of hard.entries()) {
    s.later(10);
    await s.tell(text, { entities: [], from: { ...sam, first_name: text.slice(0, 64) } });
    expect([at, s.answers(alone.id).length]).toEqual([at, at + 1]);
  }
  expect(s.world.refused).toEqual([]);
});

test('row 16: where Telegram dislikes the format, the words come', async () => {
  const s = scene();
  s.world.faults.push({
    method: 'sendMessage',
    fault: new Refusal(400, "Bad Request: can't parse entities: unsupported"),
  });
  await s.say(`/power ${fridge}`);
  expect(s.answers()).toHaveLength(1);
  expect(s.last().entities).toBeUndefined();
});

describe('with a stopped clock', () => {
  beforeEach(() => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  test('row 17: a ban is waited out to the second, in its chat alone; other chats answer meanwhile', async () => {
    const s = scene();
    s.world.floods.ban(group.id, 90, s.clock.now);
    await s.say(`/power ${fridge}`);
    for (let second = 1; second <= 89; second++) {
      s.later(1);
      await vi.advanceTimersByTimeAsync(1000);
      await s.say(fridge, { chat: { ...alone, id: 5000 + second }, from: { ...sam, id: 5000 + second } });
      expect(s.answers(5000 + second)).toHaveLength(1);
    }
    expect(s.answers(group.id)).toHaveLength(0);
    s.later(2);
    await vi.advanceTimersByTimeAsync(2000);
    expect(s.answers(group.id)).toHaveLength(1);
    expect(s.world.floods.early).toBe(0);
  });

  test('row 18: a burst of one person gets one kind line, then silence; others go on', async () => {
    const s = scene();
    for (let i = 0; i < 40; i++) await s.say(`/power ${i + 1}W in amps`);
    expect(s.answers()).toHaveLength(11);
    expect(textOf(s.last())).toMatch(/Give me a minute/);
    await s.say('/power 60W in amps', { from: kim });
    expect(s.answers()).toHaveLength(12);
  });
});

test('row 19: the same update twice, also after a restart, is answered once', async () => {
  const [store, world] = [new VolatileStore(), new World()];
  const given = update({ message: message(`/power ${fridge}`) as never });
  const first = scene({ store, world });
  await first.give(given);
  await first.give(given);
  await scene({ store, world }).give(given);
  expect(first.answers()).toHaveLength(1);
});

test('row 19, out of order: webhooks that overtake each other are each answered once', async () => {
  const s = scene();
  const question = update({ message: message(`/power ${fridge}`) as never });
  const edit = update({
    edited_message: {
      ...question.message,
      text: '/power fridge 1.2A average, 200Ah AGM, 3 days?',
      edit_date: startMs / 1000,
    } as never,
  });
  const other = update({ message: message('/power 60W in amps', { from: kim }) as never });
  s.world.hear({ message: present(question.message) });
  for (const given of [other, edit, question, edit, other]) await s.give(given);
  const texts = s.answers().map(textOf);
  expect(texts.filter(text => text.includes('60 W'))).toHaveLength(1);
  expect(new Set(texts.map(text => text.split('\n')[0])).size).toBe(texts.length);
  expect(s.errors()).toEqual([]);
});

test('row 20: a process that dies between any two steps loses no question and answers none twice', async () => {
  for (const step of ['claim', 'save', 'finish'] as const) {
    const [store, world] = [new VolatileStore(), new World()];
    const given = update({ message: message('/power fridge') as never });
    const dying: VolatileStore = Object.create(store);
    let isDead = false;
    for (const name of ['claim', 'save', 'finish', 'release', 'load', 'withLock', 'tally'] as const)
      (dying as unknown as Record<string, unknown>)[name] = async (...args: unknown[]) => {
        if (isDead) throw new Error('the process is dead');
        if (name === step) isDead = true;
        if (name !== 'finish') return (store[name] as (...a: unknown[]) => unknown)(...args);
        throw new Error('the process is dead');
      };
    const first = stage({ store: dying, world });
    if (step !== 'finish') first.bot.api.config.use(() => Promise.reject(new Error('the process is dead')));
    await first.give(given).catch(() => {});
    await store.release(given.update_id);
    const next = stage({ store, world });
    await next.bot.resume();
    await next.give(given);
    expect([step, next.answers(group.id).length]).toEqual([step, 1]);
  }
});

test('row 20, a 502 or a line that breaks after the answer arrived: it stands once', async () => {
  for (const fault of ['cut-after', 'lost-after'] as const) {
    const s = stage();
    s.world.faults.push({ method: 'sendMessage', fault });
    await s.give({ message: message('/power fridge') as never });
    expect([fault, s.answers().length, s.world.sent().length]).toEqual([fault, 1, 1]);
  }
});
