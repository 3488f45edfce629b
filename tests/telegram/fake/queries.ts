import type { Update } from 'grammy/types';
import { checkArticle, Refusal } from './rules.ts';
import type { Payload } from './world.ts';

const bad = (text: string): Refusal => new Refusal(400, `Bad Request: ${text}`);
const tooOld = bad('query is too old and response timeout expired or query ID is invalid');

/** How long Telegram keeps an inline query (its server's source), ms. */
const inlineKeptMs = 30_000;

/** Inline and guest queries that wait for an answer: each takes one, inline ones for half a minute. */
export class Queries {
  readonly #inline = new Map<string, number>();
  readonly #guest = new Set<string>();

  hear({ inline_query, guest_message }: Partial<Update>, atMs: number): void {
    if (inline_query !== undefined) this.#inline.set(inline_query.id, atMs);
    if (guest_message?.guest_query_id !== undefined) this.#guest.add(guest_message.guest_query_id);
  }

  /** @throws Refusal */
  answerInline({ inline_query_id, results, cache_time, button, next_offset }: Payload, atMs: number): true {
    const asked = this.#inline.get(inline_query_id);
    if (asked === undefined || atMs - asked > inlineKeptMs) throw tooOld;
    if (results.length > 50) throw bad('RESULTS_TOO_MUCH');
    const ids = results.map(({ id }: { id: string }) => id);
    if (new Set(ids).size < ids.length) throw bad('RESULT_ID_DUPLICATE');
    for (const result of results) checkArticle(result);
    if (cache_time !== undefined && !(Number.isInteger(cache_time) && cache_time >= 0))
      throw bad('CACHE_TIME_INVALID');
    if (Buffer.byteLength(next_offset ?? '') > 64) throw bad('NEXT_OFFSET_INVALID');
    if (button !== undefined && !/^[\w-]{1,64}$/.test(button.start_parameter ?? ''))
      throw bad('START_PARAM_INVALID');
    this.#inline.delete(inline_query_id);
    return true;
  }

  /** @throws Refusal */
  answerGuest({ guest_query_id, result }: Payload): object {
    if (!this.#guest.delete(guest_query_id)) throw tooOld;
    checkArticle(result);
    return { inline_message_id: `guest-${guest_query_id}` };
  }
}
