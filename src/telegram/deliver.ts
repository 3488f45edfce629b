import type { InlineKeyboardMarkup } from 'grammy/types';
import type { Chart } from '#answer/chart/chart.ts';
import { type Claimed, StaleRevision } from '#conversation/memory.ts';
import type { KeptAnswers } from './kept.ts';
import type { Pictures } from './pictures.ts';
import type { Say } from './say.ts';
import type { Place, Sender, Sent } from './send.ts';
import { type Ask, isForgotten, type Mind, type Thought, think } from './think.ts';

/** What the handlers of one bot share. */
export interface Room extends Mind {
  readonly kept: KeptAnswers;
  readonly sender: Sender;
  readonly pictures: Pictures;
}

/** A reply ready to go out, as it is also kept until it is known to have gone out. */
export interface Reply {
  readonly place: Place;
  readonly said: Say;
  readonly buttons?: InlineKeyboardMarkup;
  /** A picture that goes out with the words. */
  readonly chart?: Chart;
  /** The answer that it takes the place of. */
  readonly at?: Sent;
}

/** An answer as it went out. */
export interface Delivered {
  readonly thought: Thought;
  readonly reply: Reply;
  readonly sent: Sent | undefined;
}

const attempts = 4;

/**
 * Answers: think, keep the memory together with the reply, send. Where another instance saved in between, thinks
 * again from what it left; so nothing that has been said needs taking back.
 */
export async function deliver(
  room: Room,
  update: number,
  ask: Ask,
  make: (thought: Thought) => Reply,
): Promise<Delivered> {
  for (let attempt = 1; ; attempt++) {
    const thought = await think(room, ask);
    const reply = make(thought);
    try {
      await commit(room, String(ask.chat), thought, { update, reply: JSON.stringify(reply) });
    } catch (error) {
      if (error instanceof StaleRevision && attempt < attempts) continue;
      throw error;
    }
    if (isForgotten(thought)) room.kept.drop(ask.chat);
    return { thought, reply, sent: await post(room, reply) };
  }
}

async function commit(room: Room, chat: string, thought: Thought, update: Claimed): Promise<void> {
  const { store } = room.deps;
  if (isForgotten(thought)) await store.forget(chat, update);
  else if (thought.memory !== thought.before)
    await store.save(chat, thought.memory, thought.revision, update);
}

/** Sends a reply, or puts it in the place of the answer that it renews. */
export async function post(
  room: Room,
  { at, place, said, buttons, chart }: Reply,
): Promise<Sent | undefined> {
  const content = { said, buttons, picture: chart && (await drawn(room, chart)) };
  return at === undefined ? room.sender.send(place, content) : room.sender.edit(at, place, content);
}

/** The picture of a chart; none where drawing fails: the words say it all. */
export async function drawn({ pictures, deps }: Room, chart: Chart): Promise<Buffer | undefined> {
  try {
    return await pictures.of(chart);
  } catch (error) {
    deps.log.error({ err: error }, 'a picture could not be drawn');
    return undefined;
  }
}
