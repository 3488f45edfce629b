import type { MessageEntity } from 'grammy/types';
import { cut, textLimit } from '#answer/text.ts';
import { phrases } from '#answer/words/en.ts';
import { present } from '#basics/present.ts';
import type { Late } from '#telegram/delivery/again/backlog.ts';
import type { Say } from './say.ts';

const two = (n: number): string => String(n).padStart(2, '0');
/** "Thu 09:05 UTC", which clients show as the reader's own time. */
const clock = (sec: number): string => {
  const at = new Date(sec * 1000);
  const day = present(['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'][at.getUTCDay()]);
  return `${day} ${two(at.getUTCHours())}:${two(at.getUTCMinutes())} UTC`;
};

const head = 'I was away; here is what you asked meanwhile:';

const oneLine = (text: string): string =>
  present(cut(text.toWellFormed().replace(/\s+/g, ' ').trim(), 80).split('\n')[0]);

const careful = `${phrases.caution}:`;

/** An answer without its cautions, and those. */
function parted(text: string): { readonly body: string; readonly cautions: readonly string[] } {
  const lines = text.split('\n');
  return {
    body: lines
      .filter(line => !line.startsWith(careful))
      .join('\n')
      .trim(),
    cautions: lines.filter(line => line.startsWith(careful)),
  };
}

/** The same words asked twice are answered once, by the later answer. */
const distinct = (lates: readonly Late[]): Late[] => [
  ...new Map(lates.map(late => [oneLine(late.question).toLowerCase(), late])).values(),
];

/**
 * The answers to questions that had to wait for hours, in one message: each below its question and the time of it, with
 * as much of it as all of them leave room for; what there is to be careful of stands at the end, whole, and never goes.
 */
export function sayLate(lates: readonly Late[]): Say {
  const items = distinct(lates).map(late => ({ ...late, ...parted(late.said.text) }));
  const cautions = [...new Set(items.flatMap(item => item.cautions))].join('\n').slice(0, textLimit / 2);
  const room = textLimit - head.length - cautions.length - 2;
  const share = Math.floor(room / items.length) - 2;
  const entities: MessageEntity[] = [];
  let text = head;
  for (const { body, question, askedSec } of items) {
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
    const shown = cut(body, Math.max(40, share - title.length - 1));
    const line = shown.includes('\n') ? shown.indexOf('\n') : shown.length;
    entities.push({ type: 'bold', offset: text.length, length: line });
    text += shown;
  }
  return { text: cautions === '' ? text : `${text}\n\n${cautions}`, entities };
}
