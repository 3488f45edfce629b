import type { MessageEntity } from 'grammy/types';
import { cut, textLimit } from '#answer/text.ts';
import type { Late } from '#telegram/delivery/backlog.ts';
import type { Say } from './say.ts';

const two = (n: number): string => String(n).padStart(2, '0');
/** "Thu 09:05 UTC", which clients show as the reader's own time. */
const clock = (sec: number): string => {
  const at = new Date(sec * 1000);
  const day = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'][at.getUTCDay()]!;
  return `${day} ${two(at.getUTCHours())}:${two(at.getUTCMinutes())} UTC`;
};

const oneLine = (text: string): string =>
  cut(text.toWellFormed().replace(/\s+/g, ' ').trim(), 80).split('\n')[0]!;

/**
 * The answers to questions that had to wait for hours, in one message: each below its question and the time of it, with
 * as much of it as all of them leave room for.
 */
export function sayLate(lates: readonly Late[]): Say {
  const head = `I was away; here is what you asked meanwhile:`;
  const share = Math.floor((textLimit - head.length) / lates.length) - 2;
  const entities: MessageEntity[] = [];
  let text = head;
  for (const { said, question, askedSec } of lates) {
    const when = clock(askedSec);
    const title = `${when}: ${oneLine(question)}`;
    text += '\n\n';
    entities.push({
      type: 'date_time',
      offset: text.length,
      length: when.length,
      unix_time: askedSec,
      date_time_format: 'wt',
    });
    text += `${title}\n`;
    const body = cut(said.text, Math.max(40, share - title.length - 1));
    const line = body.includes('\n') ? body.indexOf('\n') : body.length;
    entities.push({ type: 'bold', offset: text.length, length: line });
    text += body;
  }
  return { text: cut(text), entities };
}
