import type { MessageEntity } from 'grammy/types';
import { cut, textLimit } from '#answer/text.ts';

/** A text ready to send: entities by offset, never markup that somebody's words could break. */
export interface Say {
  readonly text: string;
  readonly entities: MessageEntity[];
}

const ellipsis = '…';

/**
 * Lays an answer out: the first line bold, the rest plain, then what was asked by a button in italics and the
 * working in a quote that opens at a tap. The whole stays within Telegram's limit (of a message, unless told another);
 * the working gives way first.
 */
export function say(
  text: string,
  more: { readonly asked?: string; readonly working?: string; readonly limit?: number } = {},
): Say {
  const { limit = textLimit } = more;
  const line = oneLine(more.asked ?? '');
  const asked = line === '' ? '' : `\n\n${line}`;
  const body = cut(text.toWellFormed().trim() || ellipsis, limit - asked.length);
  const entities: MessageEntity[] = [];
  const firstLine = body.includes('\n') ? body.indexOf('\n') : body.length;
  entities.push({ type: 'bold', offset: 0, length: firstLine });
  let whole = body;
  if (asked !== '') {
    entities.push({ type: 'italic', offset: whole.length + 2, length: asked.length - 2 });
    whole += asked;
  }
  const room = limit - whole.length - 2;
  const steps = more.working?.toWellFormed().trim() ?? '';
  if (steps !== '' && room > 40) {
    const working = cut(steps, room);
    entities.push({ type: 'expandable_blockquote', offset: whole.length + 2, length: working.length });
    whole += `\n\n${working}`;
  }
  return { text: whole, entities };
}

const oneLine = (text: string): string =>
  cut(text.toWellFormed().replace(/\s+/g, ' ').trim(), 200).replace(/\s+/g, ' ');

/** Adds the working below an answer that stands in the chat, keeping its own formatting. */
export function withWorking(shown: string, entities: readonly MessageEntity[], working: string): Say {
  const room = textLimit - shown.length - 2;
  const steps = working.toWellFormed().trim();
  if (room < 40 || steps === '') return { text: shown, entities: [...entities] };
  const quote = cut(steps, room);
  const added: MessageEntity = {
    type: 'expandable_blockquote',
    offset: shown.length + 2,
    length: quote.length,
  };
  return { text: `${shown}\n\n${quote}`, entities: [...entities, added] };
}

/** The working alone, in a quote that opens at a tap, where it can't go below its answer. */
export function workingAlone(title: string, working: string): Say {
  const { text, entities } = say(title, { working });
  return { text, entities };
}
