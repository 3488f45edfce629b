import type { UserFromGetMe } from 'grammy/types';
import type { Chart } from '#answer/chart/chart.ts';
import { type Claimed, type Loaded, StaleRevision } from '#conversation/memory-store.ts';
import type { Pictures } from '#telegram/ui/pictures.ts';
import type { KeptAnswers } from '#telegram/updates/kept.ts';
import { type AnswerDeps, type Ask, type Draft, isForgotten, think } from '#telegram/updates/think.ts';
import { Cut, isLine, isUnsent } from './fault.ts';
import type { Highest } from './highest.ts';
import { Held, type Hold } from './hold.ts';
import type { SentMessage, Unsent } from './place.ts';
import { seek } from './seek.ts';
import type { Sender } from './send.ts';

/** What the handlers of one bot share. */
export interface BotContext extends AnswerDeps {
  readonly kept: KeptAnswers;
  readonly sender: Sender;
  readonly pictures: Pictures;
  readonly highest: Highest;
  /** Which chats have to wait. */
  readonly hold: Hold;
  /** Who the bot is, as `getMe` told. */
  readonly me: () => UserFromGetMe;
  /** Private chats in which a key to share a location may still be shown. */
  readonly keyed: Set<number>;
}

/** A reply ready to go out, as it is also kept until it is known to have gone out. */
export interface OutgoingReply extends Unsent {
  /** A picture that goes out with the words. */
  readonly chart?: Chart;
  /** A reaction on the message, which says it all where it is allowed. */
  readonly react?: '\u{1F44D}' | '\u{1F44C}';
  /** The highest number of a message that was seen when it was kept, where chats share their numbers. */
  readonly after?: number;
  /** When it was asked for, ms since 1970. */
  readonly askedMs?: number;
}

/** An answer as it went out. */
export interface Delivered {
  readonly draft: Draft;
  readonly reply: OutgoingReply;
  readonly sent: SentMessage | undefined;
}

const attempts = 4;

/**
 * Answers: think, keep the memory together with the reply, send. Where another instance saved in between, thinks
 * again from what it left; so nothing that has been said needs taking back.
 * @param isLater the reply is kept and not sent: its caller does that
 * @throws Held where the chat has to wait, Cut where the line broke, so that the reply is due still
 */
export async function deliver(
  room: BotContext,
  update: number,
  ask: Ask,
  make: (draft: Draft) => OutgoingReply,
  { isLater = false }: { readonly isLater?: boolean } = {},
): Promise<Delivered> {
  for (let attempt = 1; ; attempt++) {
    const draft = await think(room, ask);
    const reply = { ...make(draft), after: room.highest.of(ask.chat), askedMs: ask.at.getTime() };
    const closing = { update, reply: JSON.stringify(reply) };
    // What has to wait for its turn is kept, so that nothing and nobody else has to.
    const isKept = isLater || room.hold.leftMs(ask.chat) > 0 || draft.memory !== draft.before;
    try {
      await commit(room, String(ask.chat), draft, closing, isKept);
    } catch (error) {
      if (error instanceof StaleRevision && attempt < attempts) continue;
      throw error;
    }
    if (isForgotten(draft)) room.kept.drop(ask.chat);
    try {
      return { draft, reply, sent: isLater ? undefined : await postFirst(room, reply) };
    } catch (error) {
      if (error instanceof Held) {
        // What changed no memory was not kept beside it either.
        if (!isKept && !isForgotten(draft)) await commit(room, String(ask.chat), draft, closing, true);
        error.isKept = true;
      }
      throw error;
    }
  }
}

/** Keeps what a ban kept from being said, so that it outlives the process; the update has to be this process's. */
export async function keepUnsent(
  { deps: { store }, highest }: BotContext,
  update: number,
  held: Held,
  askedMs: number,
) {
  const { unsent } = held;
  if (held.isKept || unsent === undefined) return;
  const { chat } = unsent.place;
  const { memory, revision } = await store.load(String(chat));
  const reply: OutgoingReply = { ...unsent, after: highest.of(chat), askedMs };
  await store.save(String(chat), memory, revision, { update, reply: JSON.stringify(reply) });
}

async function commit(
  room: BotContext,
  chat: string,
  draft: Draft,
  update: Claimed,
  isKept: boolean,
): Promise<void> {
  const { store } = room.deps;
  if (isForgotten(draft)) await store.forget(chat, update);
  else if (isKept) await store.save(chat, draft.memory, draft.revision, update);
}

/** Keeps a memory together with a reply that the conversation had no part in, and sends that. @throws Held, Cut */
export async function keptAndSent(
  room: BotContext,
  update: number,
  { memory, revision }: Loaded,
  reply: OutgoingReply,
): Promise<SentMessage | undefined> {
  const { chat } = reply.place;
  const kept = { ...reply, after: room.highest.of(chat) };
  await room.deps.store.save(String(chat), memory, revision, { update, reply: JSON.stringify(kept) });
  try {
    return await postFirst(room, kept);
  } catch (error) {
    if (error instanceof Held) error.isKept = true;
    throw error;
  }
}

/** Sends a reply that was never sent; where the line breaks around that, looks whether it arrived. */
export async function postFirst(room: BotContext, reply: OutgoingReply): Promise<SentMessage | undefined> {
  try {
    return await post(room, reply, false);
  } catch (error) {
    if (!isLine(error) || isUnsent(error)) throw error;
    return postAgain(room, reply);
  }
}

/** Sends a reply of which nobody knows whether it went out before; only if it is not found in the chat. @throws Cut */
export async function postAgain(room: BotContext, reply: OutgoingReply): Promise<SentMessage | undefined> {
  try {
    return await post(room, reply, true);
  } catch (error) {
    throw isLine(error) ? new Cut('the line to Telegram broke', { cause: error }) : error;
  }
}

/** Sends a reply, or puts it in the place of the answer that it renews, or where it stands already. */
async function post(
  room: BotContext,
  { at, place, chart, react, after, ...words }: OutgoingReply,
  mayStand: boolean,
): Promise<SentMessage | undefined> {
  const { sender, deps } = room;
  if (react !== undefined && (await sender.react(place, react))) return undefined;
  // Talk among people gets no answer.
  if (words.said.text === '') return undefined;
  if (at === undefined && !mayStand) room.hold.takeTurn(place.chat);
  const content = { ...words, picture: chart && (await drawn(room, chart, place.chat)) };
  if (at !== undefined) return sender.edit(at, place, content);
  const found = mayStand ? await seek(deps.store, sender, place, content, after) : undefined;
  return found ?? sender.send(place, content);
}

/** The picture of a chart on the ground that its chat has chosen; none where drawing fails: the words say it all. */
export async function drawn(
  { pictures, deps }: BotContext,
  chart: Chart,
  chat: number,
): Promise<Buffer | undefined> {
  try {
    const { memory } = await deps.store.load(String(chat));
    return await pictures.of(chart, memory.settings.isDark ? 'dark' : 'light');
  } catch (error) {
    deps.log.error({ err: error }, 'a picture could not be drawn');
    return undefined;
  }
}
