import type { Chart } from '#answer/chart/chart.ts';
import { type Claimed, type Loaded, StaleRevision } from '#conversation/memory-store.ts';
import { exportFile } from '#telegram/ui/export.ts';
import { type Ask, type Draft, isForgotten, think } from '#telegram/updates/think.ts';
import { Cut, isLine, isUnsent } from './again/fault.ts';
import type { Content, SentMessage } from './again/place.ts';
import { seek } from './again/seek.ts';
import type { Part } from './calls.ts';
import { Held } from './hold.ts';
import { illustrateSoon } from './illustrate.ts';
import type { BotContext, OutgoingReply } from './reply.ts';

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
  const reply: OutgoingReply = { after: highest.of(chat), askedMs, ...unsent };
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

/**
 * Sends a reply that was never sent; where the line breaks around that, looks whether it arrived.
 * @throws Held, with the reply to be kept
 */
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
    if (error instanceof Held) error.mayStand = true;
    throw isLine(error) ? new Cut('the line to Telegram broke', { cause: error }) : error;
  }
}

/** As what a reply may stand in a chat, the likelier first. */
function partsOf({ chart, added, exports }: OutgoingReply): readonly Part[] {
  if (exports !== undefined) return ['caption'];
  if (chart !== undefined) return ['caption', 'whole'];
  return added === undefined ? ['whole'] : ['whole', 'caption'];
}

/** A reply in one person's place, or in a place of its own, has to wait for its turn there. */
const takesTurn = ({ at, place }: OutgoingReply): boolean =>
  at === undefined && place.onlyFor?.press === undefined;

/**
 * Sends a reply, or puts it in the place of the answer that it renews, or where it stands already.
 * @throws Held, with the reply to be kept
 */
async function post(
  room: BotContext,
  reply: OutgoingReply,
  mayStand: boolean,
): Promise<SentMessage | undefined> {
  try {
    return await tell(room, reply, mayStand);
  } catch (error) {
    if (error instanceof Held) error.unsent = reply;
    throw error;
  }
}

async function tell(
  room: BotContext,
  reply: OutgoingReply,
  mayStand: boolean,
): Promise<SentMessage | undefined> {
  const {
    at,
    place,
    chart,
    added: _added,
    exports,
    react,
    after: _after,
    more,
    askedMs: _,
    ...words
  } = reply;
  const { sender, deps } = room;
  if (react !== undefined && (await sender.react(place, react))) return undefined;
  // Talk among people gets no answer.
  if (words.said.text === '') return undefined;
  if (!mayStand && takesTurn(reply)) room.hold.takeTurn(place.chat);
  const content: Content = {
    ...words,
    ...(chart && { picture: await drawn(room, chart, place.chat) }),
    ...(exports && { file: await exportFile(deps.store, exports) }),
  };
  const sent = await (at === undefined
    ? put(room, reply, content, mayStand)
    : turn(room, at, reply, content));
  if (more !== undefined) {
    await sender.rebutton(more.of, more.buttons);
    room.kept.shows(more.of.chat, more.of.id, more.shows);
  }
  return sent;
}

/** Sends a reply, or lets it stand where it does already. */
async function put(
  room: BotContext,
  reply: OutgoingReply,
  content: Content,
  mayStand: boolean,
): Promise<SentMessage | undefined> {
  const { deps, sender } = room;
  const { place, after } = reply;
  const there = mayStand ? await seek(deps.store, sender, place, content, partsOf(reply), after) : undefined;
  const sent = there ?? (await sender.send(place, content));
  if (sent !== undefined) illustrateSoon(room, sent, reply);
  return sent;
}

/** Puts a reply in the place of an answer. Where a picture stands it waits for the new one: words can't take its place. */
async function turn(
  room: BotContext,
  at: SentMessage,
  reply: OutgoingReply,
  content: Content,
): Promise<SentMessage | undefined> {
  const { sender } = room;
  const { place, added } = reply;
  if (added === undefined) return sender.edit(at, place, content);
  if (await sender.words(at, content)) {
    illustrateSoon(room, at, reply);
    return at;
  }
  const picture = await drawn(room, added.chart, place.chat);
  return sender.edit(at, place, { ...content, picture, buttons: added.buttons });
}

/** The picture of a chart on the ground that its chat has chosen; none where drawing fails: the words say it all. */
async function drawn(
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
