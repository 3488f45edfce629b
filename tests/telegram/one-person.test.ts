import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { alone, ann, buttonsOf, fridge, group, kim, message, sam, scene, textOf } from './rows/one-group.ts';

test('never for all, whoever the bot is there', async () => {
  const s = scene();
  const whisper = (text: string, id: number, from = sam) =>
    s.give({ message: message(text, { message_id: 0, ephemeral_message_id: id, from }) as never });
  await whisper('/help', 1);
  await whisper('/privacy', 2);
  await whisper('/settings', 3);
  expect(s.answers()).toEqual([]);
  expect(s.whispers().map(m => m.receiver_user?.id)).toEqual([sam.id, sam.id, sam.id]);
  expect(s.world.refused).toEqual([]);
  // Buttons below it edit it where it stands.
  await s.give({
    callback_query: {
      id: 'w1',
      from: sam,
      chat_instance: 'x',
      message: s.whispers()[0] as never,
      data: (buttonsOf(present(s.whispers()[0]))[1] as { callback_data: string }).callback_data,
    },
  });
  expect(s.whispers()[0]?.text).toContain('The battery');
  expect(s.world.refused).toEqual([]);
  // Too late for Telegram, it goes to the chat with the person, or nowhere.
  const late = message('/help', { message_id: 0, ephemeral_message_id: 4 });
  s.world.hear({ message: late as never });
  s.later(60);
  await s.give({ message: late as never });
  expect(s.answers(group.id)).toEqual([]);
  expect(s.answers(alone.id)).toHaveLength(1);
});

test('an ordinary /help is a door, which shows it to whoever taps, alone', async () => {
  const s = scene();
  await s.say('/help');
  await s.say('/privacy');
  const [help, privacy] = s.answers();
  expect([textOf(present(help)).length, textOf(present(privacy)).length].every(length => length < 120)).toBe(
    true,
  );
  await s.tap(present(help), 'Show the help', kim);
  await s.tap(present(privacy), 'Show the notice', ann);
  expect(s.whispers().map(m => m.receiver_user?.id)).toEqual([kim.id, ann.id]);
  expect(s.whispers()[1]?.text).toMatch(/^I keep the numbers/);
  expect(s.answers()).toHaveLength(2);
  // A server that can't whisper: the tap opens the chat with the bot, on that page.
  s.world.isOld = true;
  await s.tap(present(privacy), 'Show the notice', kim);
  expect(s.world.sent('answerCallbackQuery').at(-1)?.url).toBe('https://t.me/camp_power_bot?start=privacy');
  expect(s.answers()).toHaveLength(2);
});

test('thanks get a reaction, and no words among people', async () => {
  const s = scene();
  await s.say(`/power ${fridge}`);
  const thanks = await s.say('thanks legend', { reply_to_message: s.last() as never });
  expect(s.world.reactions.get(`${group.id} ${thanks.message_id}`)).toBe('\u{1F44D}');
  s.world.withoutReactions.add(group.id);
  await s.say('ta mate', { reply_to_message: s.last() as never });
  expect(s.answers()).toHaveLength(1);
  await s.tell('thanks');
  expect(s.answers(alone.id)).toEqual([]);
  s.world.withoutReactions.add(alone.id);
  await s.tell('thanks');
  expect(s.last(alone.id).text).toBe('You’re welcome.');
});

test('others who tap Working get their own copy, as a table or as text', async () => {
  const s = scene();
  await s.say(`/power ${fridge}`);
  const answer = s.last();
  await s.tap(answer, 'Show working', kim);
  expect(s.now(answer)).toEqual(answer);
  expect(s.whispers().map(m => m.receiver_user?.id)).toEqual([kim.id]);
  expect(s.world.sent('sendRichMessage')[0]?.rich_message.blocks[1].type).toBe('table');
  expect(s.world.sent('sendRichMessage')[0]?.ephemeral_message_parameters.callback_query_id).toBeDefined();
  await s.tap(answer, 'Show working', sam);
  expect(s.now(answer).entities?.at(-1)?.type).toBe('expandable_blockquote');
});
