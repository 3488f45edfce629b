import { isDeepStrictEqual } from 'node:util';
import type { User } from 'grammy/types';
import type { Answer } from '#answer/answer.ts';
import { printWorking } from '#answer/text.ts';
import { present } from '#basics/present.ts';
import { emptyMemory, type Frame, type Memory } from '#conversation/memory.ts';
import type { Message } from '#conversation/message.ts';
import { isForAdmins } from '#conversation/questions.ts';
import type { BotSettings, Deps } from '#telegram/ops/deps.ts';
import { answerDamaged, loadedOr, unread } from './arriving/damaged.ts';
import type { Admins } from './people/admins.ts';
import { nameIn, withNames } from './people/names.ts';
import { nameOf } from './people/people.ts';

/** A question put to the conversation: who asks, and the answer that it goes on from. */
export interface Ask {
  readonly chat: number;
  readonly kind: Message['kind'];
  /** The person's id; undefined for one who speaks as the group, who is an admin. */
  readonly person?: number;
  /** Whose question it is: they are called by their name; nobody for one who speaks as the group. */
  readonly whose?: User;
  readonly text: string;
  readonly at: Date;
  readonly location?: Message['location'];
  /** The bot is called by its name. */
  readonly isCalled?: boolean;
  /** The question as understood whose answer this one replies to. */
  readonly onto?: Frame;
}

/** An answer with the memory it leaves, and the revision to save against. */
export interface Draft {
  readonly answer: Answer;
  readonly memory: Memory;
  readonly before: Memory;
  readonly revision: number;
  readonly kind: Ask['kind'];
}

/** What thinking needs. */
export interface AnswerDeps {
  readonly settings: BotSettings;
  readonly deps: Deps;
  readonly admins: Admins;
  /** The bot's own id. */
  readonly bot: number;
}

/** Loads the chat's memory and answers; saves nothing. */
export async function think({ settings, deps, admins, bot }: AnswerDeps, ask: Ask): Promise<Draft> {
  const loaded = await loadedOr(deps.store.load(String(ask.chat)));
  const isDamaged = loaded === 'damaged';
  const { memory: before, revision } = isDamaged ? unread() : loaded;
  const { name: from, memory } =
    ask.kind === 'private' ? { name: nameOf(ask.whose), memory: before } : nameIn(before, ask.whose, bot);
  const isSure = ask.kind === 'private' || ask.person === undefined;
  const answer = (isAdmin: boolean) => {
    const { at, kind, location, onto } = ask;
    const text = kind === 'private' ? ask.text : withNames(memory, ask.text, bot);
    const chat = String(ask.chat);
    const message: Message = {
      chat,
      from,
      text,
      at,
      kind,
      isAdmin,
      isCalled: ask.isCalled,
      ...(location && { location }),
      ...(onto && { onto }),
    };
    return deps.converse(memory, message, { mainsV: settings.mainsV });
  };
  let result = answer(isSure);
  // Only what depends on who asks costs a look at the list of admins.
  if (!isSure && isForAdmins(result.answer.intent) && (await admins.has(ask.chat, present(ask.person))))
    result = answer(true);
  if (isDamaged) {
    const isAdmin = isSure || (await admins.has(ask.chat, present(ask.person)));
    const { answer: said, isForgotten: isGone } = answerDamaged(result.answer, isAdmin);
    return { answer: said, memory: isGone ? emptyMemory() : before, before, revision, kind: ask.kind };
  }
  return { answer: result.answer, memory: result.memory, before, revision, kind: ask.kind };
}

/** Whether an answer leaves nothing to keep: all of the chat was forgotten. */
export const isForgotten = (draft: Draft): boolean =>
  draft.answer.intent === 'forget' && isDeepStrictEqual(draft.memory, emptyMemory());

/** Whether an answer has steps to show. */
export const hasWorking = (answer: Answer): boolean => answer.hasWorking?.() ?? answer.working.length > 0;

/** The steps of an answer, one a line. */
export const workingOf = ({ working }: Pick<Answer, 'working'>): string =>
  working.map(printWorking).join('\n');
