import type { Update } from 'grammy/types';
import { present } from '#basics/present.ts';

/** A small generator of repeatable chance (mulberry32): the same seed, the same million updates. */
export function chance(seed: number) {
  let state = seed;
  const next = (): number => {
    state = (state + 0x6d2b79f5) | 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (most: number): number => Math.floor(next() * most);
  return { next, below, of: <T>(list: readonly T[]): T => present(list[below(list.length)]) };
}
type Chance = ReturnType<typeof chance>;

/** Words that must be found nowhere in the store's file. */
export const canaries = ['Zzyzxname', 'qwvxsecretword', 'Wobblegong'];

/** Every kind of update of the Bot API (10.3), so also those that are not asked for. */
const kinds = [
  ...['message', 'edited_message', 'channel_post', 'edited_channel_post', 'business_connection'],
  ...['business_message', 'edited_business_message', 'deleted_business_messages', 'message_reaction'],
  ...['message_reaction_count', 'inline_query', 'chosen_inline_result', 'callback_query', 'shipping_query'],
  ...['pre_checkout_query', 'purchased_paid_media', 'poll', 'poll_answer', 'my_chat_member', 'chat_member'],
  ...[
    'chat_join_request',
    'chat_boost',
    'removed_chat_boost',
    'guest_message',
    'managed_bot',
    'no_such_kind',
  ],
];
/** The kinds that are read most often. */
const read = [
  'message',
  'edited_message',
  'callback_query',
  'inline_query',
  'guest_message',
  'my_chat_member',
];

const words = [
  ...[
    'fridge 1.2A',
    '100Ah',
    '3 days?',
    '12V',
    'lithium',
    '200W solar',
    'inverter 2000W',
    'kettle',
    'teach me',
  ],
  ...[
    'next',
    'quiz',
    'a',
    'my rig is',
    'forget everything',
    'show my rig',
    'what if',
    'who is right',
    'cable 5m',
  ],
  ...[
    'fuse',
    '-1',
    '1e308',
    '0',
    'NaN',
    '999999999999999999999',
    '50 %',
    'days',
    'help',
    'privacy',
    '/power',
  ],
  ...[
    '/forget',
    '/rig',
    '/export',
    '@camp_power_bot',
    'Broome',
    'in winter',
    'kWh',
    '½',
    '１２Ｖ',
    ...canaries,
  ],
];
const hostile = [
  '\0',
  '\ud800',
  '\u202e',
  '🔋'.repeat(50),
  '9'.repeat(300),
  '../../etc/passwd',
  "'; DROP TABLE memories; --",
  '$(cat .env)',
  '__proto__',
  'constructor',
  '<b>',
  '_*[`',
  '\n'.repeat(50),
  ' '.repeat(200),
  '﷽',
  'e\u0301'.repeat(40),
];
const odd = [null, 0, -1, 1.5, '', 'x', [], {}, true, 2 ** 53, '__proto__', { id: null }, [[[]]]];

function text(c: Chance): string {
  const parts = Array.from({ length: 1 + c.below(6) }, () => c.of(c.next() < 0.85 ? words : hostile));
  const whole = parts.join(c.of([' ', ', ', '\n', '']));
  // A few as long as Telegram lets them be; longer ones don't come.
  return c.next() < 0.003 ? whole.repeat(Math.ceil(4096 / (whole.length + 1))).slice(0, 4096) : whole;
}

const person = (c: Chance) => ({
  id: 1 + c.below(3000),
  is_bot: c.next() < 0.03,
  first_name: c.of([
    present(canaries[0]),
    '',
    '\u202eRTL',
    'x'.repeat(300),
    'Kim',
    '__proto__',
    'constructor',
  ]),
});

function chat(c: Chance): object {
  const id = 1 + c.below(3000);
  const kind = c.of(['private', 'private', 'group', 'supergroup', 'channel']);
  return kind === 'private'
    ? { id, type: kind, first_name: 'x' }
    : { id: -id, type: kind, title: canaries[2] };
}

function message(c: Chance, isSound: boolean, depth = 0): Record<string, unknown> {
  const more: Record<string, unknown> = {};
  if (isSound) {
    if (c.next() < 0.05) more.edit_date = now;
    if (c.next() < 0.1 && depth < 3) more.reply_to_message = message(c, true, depth + 1);
    return {
      message_id: 1 + c.below(1000),
      date: now,
      chat: chat(c),
      from: person(c),
      text: text(c) || 'x',
      ...more,
    };
  }
  const entity = {
    type: c.of(['mention', 'bot_command', 'text_mention', 'x']),
    offset: c.below(9) - 2,
    length: c.below(9999),
  };
  if (c.next() < 0.1) more.entities = [entity, entity];
  if (c.next() < 0.05) more.edit_date = c.below(2e9);
  if (c.next() < 0.05) more.is_topic_message = true;
  if (c.next() < 0.05) more.message_thread_id = c.below(5);
  if (c.next() < 0.02)
    more.location = { latitude: c.next() * 1e3 - 500, longitude: c.of([Number.NaN, 1e9, 5]) };
  if (c.next() < 0.02) more.sender_chat = c.of([chat(c), null, {}]);
  if (c.next() < 0.01) more.migrate_to_chat_id = -1 - c.below(3000);
  if (c.next() < 0.01) more.migrate_from_chat_id = -1 - c.below(3000);
  if (c.next() < 0.05) more.caption = text(c);
  if (c.next() < 0.02) more.photo = [{}];
  if (c.next() < 0.02) more.via_bot = person(c);
  if (c.next() < 0.15 && depth < 3) more.reply_to_message = message(c, false, depth + 1);
  const from = c.next() < 0.03 ? { id: 123456789, is_bot: true, first_name: 'x' } : person(c);
  return {
    message_id: c.below(1000),
    date: now,
    chat: chat(c),
    from,
    ...(c.next() < 0.9 && { text: text(c) }),
    ...more,
  };
}

/** The time that the messages show, in seconds. */
let now = 0;

function body(c: Chance, kind: string, isSound: boolean): unknown {
  switch (kind) {
    case 'callback_query':
      return {
        id: String(c.below(1e9)),
        from: person(c),
        ...(c.next() < 0.9 && { message: message(c, isSound) }),
        data: c.of([
          '1|n|0|rs|Ab12Cd34',
          '1|w|0|rs|Ab12Cd34',
          '',
          '9|x',
          text(c),
          '1|n|9|zzzzzzzzzzzz|--------',
        ]),
      };
    case 'inline_query':
      return { id: String(c.below(1e9)), from: person(c), query: text(c).slice(0, 256), offset: '' };
    case 'guest_message':
      return { ...message(c, isSound), guest_query_id: String(c.below(1e9)) };
    case 'my_chat_member': {
      const status = () => ({
        status: c.of(['left', 'member', 'kicked', 'administrator', 'x']),
        user: person(c),
      });
      return {
        chat: chat(c),
        from: person(c),
        date: now,
        old_chat_member: status(),
        new_chat_member: status(),
      };
    }
    default:
      return message(c, isSound);
  }
}

/** Breaks something, somewhere: takes a part away, or puts another thing in its place. */
function broken(c: Chance, value: unknown): unknown {
  if (typeof value !== 'object' || value === null || c.next() < 0.15) return c.of(odd);
  const keys = Object.keys(value);
  if (keys.length === 0) return c.of(odd);
  const key = c.of(keys);
  const part = (value as Record<string, unknown>)[key];
  if (c.next() < 0.2) return Object.fromEntries(Object.entries(value).filter(([name]) => name !== key));
  return { ...value, [key]: broken(c, part) };
}

/** An update, and whether it is one that Telegram could send. */
export interface Given {
  readonly update: Update;
  readonly isSound: boolean;
}

/** One update, sensible or not. @param id its number @param nowSec when it comes */
export function nonsense(c: Chance, id: number, nowSec: number): Given {
  now = nowSec - (c.next() < 0.05 ? c.below(100_000) : 0);
  const isSound = c.next() < 0.5;
  const kind = c.of(c.next() < 0.7 ? read : kinds);
  const whole = body(c, kind, isSound);
  const given = isSound || c.next() < 0.3 ? whole : broken(c, whole);
  const second = isSound || c.next() < 0.95 ? {} : { [c.of(kinds)]: c.of(odd) };
  // Some come twice. Sound ones have even ids, so that none is taken for another's repetition.
  const update_id =
    2 * (c.next() < 0.03 && !isSound ? Math.max(1, id - c.below(50)) : id) + (isSound ? 0 : 1);
  return { update: { update_id, [kind]: given, ...second } as unknown as Update, isSound };
}
