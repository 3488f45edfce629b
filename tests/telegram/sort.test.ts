import type { Chat, Update } from 'grammy/types';
import { describe, expect, test } from 'vitest';
import { orderKeys } from '#telegram/updates/arriving/order.ts';
import { allowedUpdates, sort } from '#telegram/updates/arriving/sort.ts';
import { alone, botMessage, group, kim, message, nowSec, plainGroup, sam, update } from './fake/people.ts';
import { me } from './fake/world.ts';

const ask = '/power 60W in amps?';
const channel = { id: -1009, type: 'channel', title: 'News' } as Chat.ChannelChat;
const kindOf = (given: Omit<Update, 'update_id'>, allowed?: ReadonlySet<number>): string | undefined =>
  sort(update(given), me, nowSec * 1000, allowed)?.kind;

const member = (status: string, user = sam) =>
  ({
    chat: group,
    from: sam,
    date: nowSec,
    old_chat_member: { status: 'member' },
    new_chat_member: { status, user },
  }) as never;

const cases: [what: string, given: Omit<Update, 'update_id'>, kind: string | undefined][] = [
  ['a question', { message: message(ask) as never }, 'question'],
  ['an edited question', { edited_message: message(ask, { edit_date: nowSec }) as never }, 'question'],
  ['another bot', { message: message(ask, { from: { ...kim, is_bot: true } }) as never }, undefined],
  [
    'a linked channel’s automatic forward',
    { message: message(ask, { is_automatic_forward: true }) as never },
    undefined,
  ],
  [
    'a member who writes as a channel',
    { message: message(ask, { sender_chat: channel }) as never },
    undefined,
  ],
  [
    'an admin who writes as the group',
    { message: message(ask, { sender_chat: group }) as never },
    'question',
  ],
  ['a channel’s post', { channel_post: message(ask, { chat: channel }) as never }, undefined],
  ['our own inline result', { message: message(ask, { via_bot: me }) as never }, undefined],
  ['11 minutes late in a group', { message: message(ask, { date: nowSec - 660 }) as never }, undefined],
  ['9 minutes late in a group', { message: message(ask, { date: nowSec - 540 }) as never }, 'question'],
  [
    '23 hours late in private',
    { message: message(ask, { chat: alone, date: nowSec - 82_800 }) as never },
    'question',
  ],
  [
    '25 hours late in private',
    { message: message(ask, { chat: alone, date: nowSec - 90_000 }) as never },
    undefined,
  ],
  ['a join', { message: message(undefined, { new_chat_members: [kim] }) as never }, undefined],
  ['a photo in a group', { message: message(undefined, { photo: [] as never }) as never }, undefined],
  [
    'a voice message in private',
    { message: message(undefined, { chat: alone, voice: {} as never }) as never },
    'wordless',
  ],
  [
    'a contact in private',
    { message: message(undefined, { chat: alone, contact: {} as never }) as never },
    'wordless',
  ],
  ['a poll in a group', { message: message(undefined, { poll: {} as never }) as never }, undefined],
  ['somebody leaves', { message: message(undefined, { left_chat_member: kim }) as never }, 'left'],
  ['the bot leaves', { message: message(undefined, { left_chat_member: me as never }) as never }, undefined],
  ['somebody is thrown out', { chat_member: member('kicked', kim) }, 'left'],
  ['somebody comes in', { chat_member: member('member', kim) }, undefined],
  [
    'a shared place in private',
    { message: message(undefined, { chat: alone, location: { latitude: -28, longitude: 153 } }) as never },
    'question',
  ],
  [
    'a move, told in the old chat',
    { message: message(undefined, { chat: plainGroup, migrate_to_chat_id: group.id }) as never },
    'moved',
  ],
  [
    'a move, told in the new chat',
    { message: message(undefined, { migrate_from_chat_id: plainGroup.id }) as never },
    'moved',
  ],
  [
    'a press',
    {
      callback_query: {
        id: '1',
        from: sam,
        chat_instance: 'x',
        data: 'x',
        message: botMessage('x') as never,
      },
    },
    'press',
  ],
  ['thrown out', { my_chat_member: member('kicked') }, 'membership'],
  ['typed after the name', { inline_query: { id: '1', from: sam, query: '60W', offset: '' } }, 'inline'],
  [
    'called as a guest',
    { guest_message: message('@camp_power_bot 60W in amps?', { guest_query_id: 'g' }) as never },
    'guest',
  ],
  [
    'called as a guest by a bot',
    { guest_message: message('x', { guest_query_id: 'g', from: { ...kim, is_bot: true } }) as never },
    undefined,
  ],
];

describe('an update is sorted', () => {
  test.each(cases)('%s', (_what, given, kind) => {
    expect(kindOf(given)).toBe(kind);
  });
});

test('200 lines of talk ask for nothing, also where the bot reads everything', () => {
  const talk = [
    'morning all',
    'anyone got a 100Ah battery?',
    'lol',
    'my fridge died :(',
    'is 200W enough for 3 days?',
  ];
  const lines = Array.from({ length: 200 }, (_, index) => `${talk[index % talk.length]} ${index}`);
  expect(lines.filter(text => kindOf({ message: message(text) as never }) !== undefined)).toEqual([]);
  expect(
    lines.filter(text => kindOf({ message: message(`/power ${text}`) as never }) === 'question'),
  ).toHaveLength(200);
});

test('only the chats allowed are answered', () => {
  const allowed = new Set([group.id]);
  expect(kindOf({ message: message(ask) as never }, allowed)).toBe('question');
  expect(kindOf({ message: message(ask, { chat: alone }) as never }, allowed)).toBeUndefined();
});

test('the kinds asked for are the kinds that are sorted', () => {
  const sorted = new Set(
    cases.filter(([, , kind]) => kind !== undefined).map(([, given]) => Object.keys(given)[0] as string),
  );
  expect([...sorted].toSorted()).toEqual([...allowedUpdates].toSorted());
});

test('an update waits in its chat’s queue, a move in both', () => {
  expect(orderKeys(update({ message: message(ask) as never }))).toEqual([String(group.id)]);
  const move = message(undefined, { chat: plainGroup, migrate_to_chat_id: group.id });
  expect(orderKeys(update({ message: move as never }))).toEqual([String(plainGroup.id), String(group.id)]);
});
