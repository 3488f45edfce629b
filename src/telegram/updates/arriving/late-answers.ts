import type { AnswerLink as Answered, MemoryStore } from '#conversation/memory-store.ts';
import { Backlog, type Late } from '#telegram/delivery/again/backlog.ts';
import type { Parked } from '#telegram/delivery/again/parked.ts';
import type { SentMessage } from '#telegram/delivery/again/place.ts';
import { postAgain, postFirst } from '#telegram/delivery/deliver.ts';
import { Held } from '#telegram/delivery/hold.ts';
import type { BotContext, OutgoingReply } from '#telegram/delivery/reply.ts';
import { sayLate } from '#telegram/ui/late.ts';
import { say } from '#telegram/ui/say.ts';
import type { PendingAcks } from './pending-acks.ts';
import { type Job, staleAfterSec } from './sort.ts';

/** When somebody asked for what a job does, ms since 1970. */
export function askedMs(job: Job, nowMs: number): number {
  const message = job.kind === 'question' || job.kind === 'wordless' ? job.message : undefined;
  return message === undefined ? nowMs : (message.edit_date ?? message.date) * 1000;
}

/** How old an answer may be when it can be sent at last (ms): in a group the talk has moved on sooner. */
export const goodForMs = (chat: number): number =>
  1000 * (chat > 0 ? staleAfterSec.private : staleAfterSec.group);

/** Says that answers were lost to a ban. */
export async function tellLoss({ sender }: BotContext, chat: number, lost: number): Promise<void> {
  const what = lost === 1 ? 'One question' : `${lost} questions`;
  await sender.send(
    { chat },
    {
      said: say(
        `${what} went unanswered while Telegram let me write nothing here. Ask again what still matters.`,
      ),
    },
  );
}

/** Which message answered which; nothing to note of one that a single person sees. */
function notedOf({ place }: OutgoingReply, sent: SentMessage | undefined): Answered | undefined {
  if (sent === undefined || sent.id <= 0) return undefined;
  const question = place.replyTo === undefined ? {} : { question: String(place.replyTo) };
  return { chat: String(sent.chat), answer: String(sent.id), ...question };
}

/** Answers that go out later than their question was worked on: in a heap, after a ban, after a crash. */
export class LateAnswers {
  readonly backlog = new Backlog((chat, lates) => this.#background(() => this.#sendHeap(chat, lates)));
  readonly #room: BotContext;
  readonly #parked: Parked;
  readonly #owed: PendingAcks;

  constructor(room: BotContext, parked: Parked, owed: PendingAcks) {
    this.#room = room;
    this.#parked = parked;
    this.#owed = owed;
  }

  get #store(): MemoryStore {
    return this.#room.deps.store;
  }

  #background(work: () => Promise<void>): void {
    work().catch(error => this.#failed(error));
  }

  #failed(error: unknown): void {
    this.#room.deps.log.error({ err: error }, 'a late answer could not be sent');
  }

  /** Takes up what an earlier process worked out and could not send. */
  async resume(): Promise<void> {
    const lost = new Map<number, number>();
    // One after the other: an answer is noted before the next one is looked for.
    for (const update of await this.#store.due())
      await this.#pay(update, postAgain, this.#room.deps.now(), lost).catch(error => this.#failed(error));
    for (const [chat, many] of lost)
      await tellLoss(this.#room, chat, many).catch(error => this.#failed(error));
  }

  /**
   * Sends one kept reply, unless somebody else has it.
   * @param lost notes, by chat, what was never sent and is too old to be by now
   */
  async #pay(
    update: number,
    post: typeof postAgain,
    nowMs: number,
    lost?: Map<number, number>,
  ): Promise<void> {
    const { deps } = this.#room;
    const claim = await this.#store.claim(update, deps.now());
    if (claim.state !== 'again' || claim.reply === undefined) {
      if (claim.state === 'again' || claim.state === 'new') await this.#owed.release(update);
      return;
    }
    const reply = JSON.parse(claim.reply) as OutgoingReply;
    const { chat } = reply.place;
    const askedAtMs = reply.askedMs ?? nowMs;
    if (lost !== undefined && claim.isUnsent && deps.now() - askedAtMs > goodForMs(chat)) {
      lost.set(chat, (lost.get(chat) ?? 0) + 1);
      return this.#owed.finish(update, undefined);
    }
    try {
      await this.#store.withLock(String(chat), async () => {
        const sent = await (claim.isUnsent ? postFirst : post)(this.#room, reply);
        await this.#owed.finish(update, notedOf(reply, sent));
      });
    } catch (error) {
      await this.#owed.release(update, error instanceof Held && !error.mayStand);
      if (!(error instanceof Held)) throw error;
      await this.#parked.put(chat, {
        askedMs: askedAtMs,
        goodForMs: goodForMs(chat),
        run: () => this.#pay(update, error.mayStand ? postAgain : postFirst, askedAtMs),
        drop: () => this.#owed.finish(update, undefined),
      });
    }
  }

  /** One message for all that was asked in a private chat while the bot was away. */
  async #sendHeap(chat: number, lates: readonly Late[]): Promise<void> {
    const [first] = lates;
    if (first === undefined) return;
    if (lates.length === 1) return this.#pay(first.update, postFirst, first.askedSec * 1000);
    try {
      await this.#room.sender.send({ chat }, { said: sayLate(lates) });
      for (const { update } of lates) await this.#owed.finish(update, undefined);
    } catch (error) {
      if (!(error instanceof Held)) throw error;
      await this.#parked.put(chat, {
        askedMs: this.#room.deps.now(),
        goodForMs: goodForMs(chat),
        run: () => this.#sendHeap(chat, lates),
        drop: async () => {
          for (const { update } of lates) await this.#owed.finish(update, undefined);
        },
      });
    }
  }
}
