import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { toasts } from '#telegram/updates/pressing/toasts.ts';
import { chatter } from '../chatter.ts';
import { fridge, group, kim, labelsOf, message, nowSec, sam, scene, sends, textOf } from './one-group.ts';

test('row 1: in groups it answers only when addressed, also as an admin who hears all', async () => {
  const s = scene();
  s.makeAdmin(group.id);
  for (const { text } of chatter) await s.say(text);
  expect(chatter).toHaveLength(200);
  expect(s.world.calls).toEqual([]);
  await s.say(`/power ${fridge}`);
  await s.say('and lithium?', { reply_to_message: s.last() as never });
  await s.say(`@camp_power_bot ${fridge}`);
  expect(s.answers()).toHaveLength(3);
});

test('row 2: fully useful with privacy mode on: commands, replies and taps alone; it says how to ask', async () => {
  const s = scene({ isPrivacyOn: true });
  const added = { old_chat_member: { status: 'left' }, new_chat_member: { status: 'member' } };
  await s.give({ my_chat_member: { chat: group, from: sam, date: nowSec, ...added } as never });
  expect(s.last().text).toContain('/power fridge 1.2A, 100Ah, 3 days?');
  expect(s.last().text).not.toContain('mention');
  await s.say('/rig 100Ah AGM, fridge 1.2A');
  await s.say('/power how long will it last?');
  const answer = s.last();
  expect(answer.text).toMatch(/^It lasts about/);
  await s.say('and with lithium?', { reply_to_message: answer as never });
  expect(s.last().text).toMatch(/lithium|It lasts/);
  await s.tap(answer, 'Show working');
  expect(s.now(answer).entities?.at(-1)?.type).toBe('expandable_blockquote');
  // All of it came through; a mention does not, nor a bare command once another bot has written.
  expect(s.passedBy).toEqual([]);
  await s.say(`@camp_power_bot ${fridge}`);
  await s.say('beep', { from: { ...kim, id: 77, is_bot: true } });
  await s.say(`/power ${fridge}`);
  expect(s.passedBy).toHaveLength(3);
  await s.say('/power@camp_power_bot 60W in amps');
  expect(s.last().text).toContain('5 A');
});

test('row 3: commands for other bots, bots, automatic forwards and channels get nothing', async () => {
  const s = scene();
  const channel = { id: -1009, type: 'channel', title: 'News' } as never;
  await s.say(`/power@another_bot ${fridge}`);
  await s.say(`/power ${fridge}`, { from: { ...kim, is_bot: true } });
  await s.say(`/power ${fridge}`, { is_automatic_forward: true });
  await s.say(`/power ${fridge}`, { sender_chat: channel });
  await s.give({ channel_post: message(`/power ${fridge}`, { chat: channel }) as never });
  expect(s.world.calls).toEqual([]);
});

test('row 4: it stays out when somebody else is addressed, also in a reply to it', async () => {
  const s = scene();
  await s.say(`/power ${fridge}`);
  const before = s.world.calls.length;
  await s.say('@ann_smith what do you think?', { from: kim, reply_to_message: s.last() as never });
  await s.say('Ann, is that right?', { from: kim });
  expect(s.world.calls).toHaveLength(before);
});

test('row 5: it replies to the question, and survives its deletion', async () => {
  const s = scene();
  const question = message(`/power ${fridge}`);
  s.world.hear({ message: question as never });
  s.world.messages.delete(`${group.id} ${question.message_id}`);
  await s.give({ message: question as never });
  expect(s.world.sent()[0]?.reply_parameters).toEqual({
    message_id: question.message_id,
    allow_sending_without_reply: true,
  });
  expect(s.answers()).toHaveLength(1);
});

test('row 6: the right topic; General; a topic that is gone', async () => {
  const s = scene();
  await s.say(`/power ${fridge}`, { is_topic_message: true, message_thread_id: 7 });
  await s.say(`/power ${fridge}`, { message_thread_id: 9 });
  s.world.deadThreads.add(11);
  await s.say(`/power ${fridge}`, { is_topic_message: true, message_thread_id: 11 });
  const threads = s.world.sent().map(({ message_thread_id }) => message_thread_id);
  expect(threads).toEqual([7, undefined, 11, undefined]);
  expect(s.answers()).toHaveLength(3);
});

test('row 7: one question, one message; the working behind a button', async () => {
  const s = scene();
  await s.say(`/power ${fridge}`);
  expect(sends(s.world)).toBe(1);
  expect(labelsOf(s.last())).toContain('Show working');
  expect(textOf(s.last())).not.toContain(' = ');
});

test('row 8: the short answer first, all of it on one screen of a phone', async () => {
  const s = scene();
  for (const text of [
    fridge,
    '80Ah AGM at 40%, 20A charger, how long till it is full?',
    'what cable for 20A over 4 m?',
  ])
    await s.say(`/power ${text}`);
  for (const answer of s.answers()) {
    const [first = '', ...lines] = textOf(answer).split('\n');
    expect(first).toMatch(/\d/);
    expect(first.length).toBeLessThanOrEqual(160);
    // A phone shows about 40 characters a line and 22 lines.
    const shown = [first, ...lines].reduce((sum, line) => sum + Math.max(1, Math.ceil(line.length / 40)), 0);
    expect(shown).toBeLessThanOrEqual(22);
  }
});

test('row 9: an edited question edits its answer; the same text does nothing', async () => {
  const s = scene();
  const question = await s.say(`/power ${fridge}`);
  const [answer] = s.answers();
  await s.give({ edited_message: { ...question, edit_date: nowSec } as never });
  expect(s.world.calls).toHaveLength(1);
  const text = '/power fridge 1.2A average, 200Ah AGM, 3 days?';
  await s.give({ edited_message: { ...question, text, edit_date: nowSec } as never });
  expect(s.answers()).toHaveLength(1);
  expect(s.world.sent('editMessageText')).toHaveLength(1);
  expect(s.now(present(answer)).text).toContain('200');
});

test('row 10: not understood, it asks one thing back, before all, with buttons; others’ taps get a toast', async () => {
  const s = scene();
  await s.say('/power 2 x 110ah gel and a 5A load nonstop, how many hours');
  const back = s.last();
  expect(textOf(back).match(/\?/g)?.length).toBeGreaterThan(0);
  expect(textOf(back).length).toBeLessThan(300);
  expect(labelsOf(back).length).toBeGreaterThan(0);
  await s.tap(back, present(labelsOf(back)[0]), kim);
  expect(s.toast()).toBe(toasts.notYours);
  expect(s.now(back)).toEqual(back);
  await s.tap(back, present(labelsOf(back)[0]));
  expect(s.now(back).text).not.toBe(back.text);
  // Where nobody asked it, it says nothing.
  const before = s.world.calls.length;
  await s.say('the thing with the other thing?');
  expect(s.world.calls).toHaveLength(before);
});
