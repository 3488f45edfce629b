import type { Message } from 'grammy/types';
import { describe, expect, test } from 'vitest';
import { addressed } from '#telegram/updates/arriving/addressed.ts';
import { alone, botMessage, group, kim, message, sam } from './fake/people.ts';
import { me } from './fake/world.ts';

const asked = 'fridge 1.2A, 100Ah, 3 days?';
const mine = botMessage('About 42 hours.');
const theirs = message(asked, { from: kim });
const topicStart = {
  ...message(undefined),
  forum_topic_created: { name: 'Power', icon_color: 0 },
  from: me,
} as Message;
const mentionByName = (text: string, id: number): Message =>
  message(text, {
    entities: [{ type: 'text_mention', offset: 0, length: 3, user: { id, is_bot: false, first_name: 'x' } }],
  });

/** In a group: what was written, and what it says to the bot; null where it is none of its business. */
const groupCases: [what: string, message: Message, says: string | null][] = [
  ['talk', message('fridge 1.2A, 100Ah, 3 days?'), null],
  ['our command', message(`/power ${asked}`), asked],
  ['our command with our name', message(`/power@camp_power_bot ${asked}`), asked],
  ['our name in capitals', message(`/power@CAMP_POWER_BOT ${asked}`), asked],
  ['a command in capitals', message(`/POWER ${asked}`), asked],
  ['a command over two lines', message(`/power\n${asked}`), asked],
  ['another bot’s command', message(`/power@other_bot ${asked}`), null],
  ['a command that is not ours', message('/roll 2d6'), null],
  ['a command in the middle', message(`use /power ${asked}`), null],
  ['our command alone', message('/power'), 'help'],
  [
    'our command alone, to somebody’s question',
    message('/power', { reply_to_message: theirs as never }),
    asked,
  ],
  ['help', message('/help'), 'help'],
  ['a deep link', message('/start@camp_power_bot rig_abc'), 'help'],
  ['privacy', message('/privacy'), 'privacy'],
  ['forget', message('/forget'), 'forget everything'],
  ['my rig', message('/rig 120Ah AGM'), 'my rig is 120Ah AGM'],
  ['a mention', message(`@camp_power_bot ${asked}`), asked],
  ['a mention with a comma', message(`@Camp_Power_Bot, ${asked}`), asked],
  ['a mention at the end', message(`${asked} @camp_power_bot`), asked],
  [
    'a mention alone, to somebody’s question',
    message('@camp_power_bot', { reply_to_message: theirs as never }),
    asked,
  ],
  ['a mention alone', message('@camp_power_bot'), 'help'],
  ['a mention of a longer name', message(`@camp_power_bots ${asked}`), null],
  ['a mention by id', mentionByName('Bot 60W in amps?', me.id), '60W in amps?'],
  [
    'a reply to the bot',
    message('and with lithium?', { reply_to_message: mine as never }),
    'and with lithium?',
  ],
  ['a reply to somebody else', message('and with lithium?', { reply_to_message: theirs as never }), null],
  [
    'a reply to the bot that turns to somebody',
    message('@kim what do you say?', { reply_to_message: mine as never }),
    null,
  ],
  [
    'the same by id',
    { ...mentionByName('Kim what do you say?', kim.id), reply_to_message: mine as never },
    null,
  ],
  [
    'somebody else and the bot',
    message('@camp_power_bot is @kim right with 4 days?'),
    'is @kim right with 4 days?',
  ],
  [
    'a message in a topic that the bot opened',
    message('hello all', { reply_to_message: topicStart as never }),
    null,
  ],
  ['a photo with a question', message(undefined, { caption: `/power ${asked}` }), asked],
  ['emoji before the mention', message(`🔋🔋 ${asked} @camp_power_bot`), `🔋🔋 ${asked}`],
];

describe('a message in a group is meant for the bot', () => {
  test.each(groupCases)('%s', (_what, given, says) => {
    expect(addressed(given, me)?.text ?? null).toBe(says);
  });
});

describe('in private everything is', () => {
  test.each([
    ['plain words', asked, asked],
    ['our command', `/power ${asked}`, asked],
    ['an unknown command', '/frige 1.2A', 'frige 1.2A'],
    ['start with a payload', '/start rig_abc', 'help'],
  ])('%s', (_what, text, says) => {
    expect(addressed(message(text, { chat: alone }), me)?.text).toBe(says);
  });
});

test('called to somebody’s question, the question is that one’s', () => {
  const given = message('/power', { from: sam, reply_to_message: theirs as never });
  expect(addressed(given, me)?.source.from).toEqual(kim);
});

test('a reply says which answer it goes on from', () => {
  const given = message('why?', { chat: group, reply_to_message: mine as never });
  expect(addressed(given, me)?.answerId).toBe(mine.message_id);
});
