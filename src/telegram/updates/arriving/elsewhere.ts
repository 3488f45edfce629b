import type { Api } from 'grammy';
import type { InlineQuery, InlineQueryResultArticle, Message } from 'grammy/types';
import type { Answer } from '#answer/answer.ts';
import { present } from '#basics/present.ts';
import { emptyMemory, type Memory } from '#conversation/memory.ts';
import { hash } from '#telegram/ui/buttons.ts';
import { say } from '#telegram/ui/say.ts';
import { nameOf } from '../people/people.ts';
import type { AnswerDeps } from '../think.ts';

/** Answers in chats that the bot is not in: inline queries and guest queries. Nothing is kept of them. */

const article = (answer: Answer, question: string): InlineQueryResultArticle => {
  const said = say(answer.text, { asked: question });
  const [title = '', ...rest] = said.text.split('\n');
  return {
    type: 'article',
    id: hash(said.text),
    title,
    description: rest
      .filter(line => line !== '')
      .join(' ')
      .slice(0, 200)
      .toWellFormed(),
    input_message_content: {
      message_text: said.text,
      entities: said.entities,
      link_preview_options: { is_disabled: true },
    },
  };
};

/** What a person told the bot in private: the only memory that may go with them into other chats. */
async function ownMemory({ deps }: AnswerDeps, person: number): Promise<Memory> {
  return (await deps.store.load(String(person))).memory;
}

function answerTo(
  { deps, settings }: AnswerDeps,
  memory: Memory,
  from: string,
  text: string,
  atMs: number,
): Answer {
  const message = {
    chat: 'elsewhere',
    from,
    text,
    at: new Date(atMs),
    kind: 'private' as const,
    isAdmin: false,
  };
  return deps.converse({ ...memory, frames: [], talk: undefined }, message, { mainsV: settings.mainsV })
    .answer;
}

/** Offers an answer to what is being typed after the bot's name. */
export async function answerInline(mind: AnswerDeps, api: Api, query: InlineQuery): Promise<void> {
  const text = query.query.trim();
  const button = { text: 'How to ask', start_parameter: 'help' };
  if (text === '') return void (await api.answerInlineQuery(query.id, [], { cache_time: 300, button }));
  const memory = await ownMemory(mind, query.from.id);
  // What a rig went into is for its owner alone; anything else is the same for all who type it.
  const isPersonal = Object.keys(memory.rigs).length > 0;
  const from = isPersonal ? nameOf(query.from) : '';
  const answer = answerTo(mind, isPersonal ? memory : emptyMemory(), from, text, mind.deps.now());
  const results = answer.intent === 'unclear' || answer.intent === 'forget' ? [] : [article(answer, text)];
  await api.answerInlineQuery(query.id, results, {
    cache_time: isPersonal ? 10 : 300,
    is_personal: isPersonal,
    ...(results.length === 0 && { button }),
  });
}

/**
 * Answers a message in a chat that called the bot as a guest. The chat's id means nothing to us, so nothing is looked
 * up by it; the asker's own rig is used only where they say "my".
 */
export async function answerGuest(mind: AnswerDeps, api: Api, message: Message, text: string): Promise<void> {
  const isOwn = /\b(my|mine|our)\b/i.test(text) && message.from !== undefined;
  const memory = isOwn ? await ownMemory(mind, present(message.from).id) : emptyMemory();
  const answer = answerTo(mind, memory, nameOf(message.from), text, message.date * 1000);
  await api.answerGuestQuery(present(message.guest_query_id), article(answer, text));
}
