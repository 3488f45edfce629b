import type { Message, User } from 'grammy/types';
import { present } from '#basics/present.ts';

/** The user that stands for an anonymous admin, and for posts of a linked channel (Bot API, `from`). */
const standIns = new Set([1_087_968_824, 136_817_688, 777_000]);

/** The longest name that is kept, in UTF-16 units, in capitals and small: a key of the memory holds 60. */
const longest = 54;
/** Made for the first name that is too long: a start would feel it. */
let graphemes: Intl.Segmenter | undefined;

/** As many whole characters as fit, of whatever script: no accent, no joined sign and no emoji is torn. */
function cutWhole(name: string): string {
  if (name.length <= longest && name.toLowerCase().length <= longest) return name;
  graphemes ??= new Intl.Segmenter('en', { granularity: 'grapheme' });
  let kept = '';
  for (const { segment } of graphemes.segment(name)) {
    const longer = kept + segment;
    if (longer.length > longest || longer.toLowerCase().length > longest) break;
    kept = longer;
  }
  return kept.trimEnd();
}

const joiners = new Set([' ', '\u200c', '\u200d']);

/** Without spaces and joiners at its ends, where they join nothing. */
function trimmed(name: string): string {
  let [from, to] = [0, name.length];
  while (from < to && joiners.has(present(name[from]))) from++;
  while (to > from && joiners.has(present(name[to - 1]))) to--;
  return name.slice(from, to);
}

/** Letters that show nothing: names made of these alone name nobody. */
const isSeen = (name: string): boolean =>
  /[\p{L}\p{N}\p{S}\p{P}]/u.test(name.replace(/[\u115f\u1160\u2800\u3164\uffa0]/g, ''));

/**
 * The name under which a person is known in a chat: the first name in its own script, without what would break a
 * line or turn the writing direction. The joiners that Persian, Hindi or an emoji are written with stay.
 * "" where there is none, and for anonymous admins, who share one stand-in.
 */
export function nameOf(user: User | undefined): string {
  if (user === undefined || standIns.has(user.id)) return '';
  const name = cutWhole(
    trimmed(
      user.first_name
        .toWellFormed()
        .normalize('NFC')
        .replace(/(?:(?![\u200c\u200d])[\p{C}\s\ufffd])+/gu, ' '),
    ),
  );
  if (!isSeen(name)) return '';
  // Names are keys of the memory; these two are those of every object already.
  return name.toLowerCase() in Object.prototype ? `${name}.` : name;
}

/** Whether a message was written by a person: no bot, no channel's automatic forward, no channel. */
export function isByPerson(message: Message): boolean {
  if (message.chat.type === 'channel' || message.is_automatic_forward === true) return false;
  if (isAnonymousAdmin(message)) return true;
  if (message.sender_chat !== undefined) return message.sender_chat.type !== 'channel';
  return message.from !== undefined && !message.from.is_bot;
}

/** An admin who speaks as the group itself. */
export const isAnonymousAdmin = (message: Message): boolean => message.sender_chat?.id === message.chat.id;
