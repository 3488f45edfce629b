import { dropOldest } from '#basics/oldest.ts';
/** How many of a kind a minute are answered. */
export interface Limit {
  /** One person in one group. */
  readonly person: number;
  /** All of a group: Telegram lets a bot say 20 things a minute in one, so more could only pile up. */
  readonly group: number;
  /** One person in private. */
  readonly alone: number;
}

/** Questions: each may become a message. */
export const forQuestions: Limit = { person: 10, group: 20, alone: 30 };
/** Taps and edits: they change what stands there, and take nothing from the questions. */
export const forTurns: Limit = { person: 20, group: 40, alone: 40 };
const minuteMs = 60_000;
const mostKept = 10_000;

/** What to do with one more question: answer it, ask for a pause once, or say nothing. */
export type RateDecision = 'answer' | 'ask for a pause' | 'silence';

/** The one kind line of a flood; then it is silent for as long as the line says. */
export const pauseLine = 'Too many questions at once for me. Give me a minute, then ask again.';

interface Tally {
  since: number;
  count: number;
  pausedUntil: number;
}

/**
 * Counts what people ask, by person and by group, a minute at a time. It lives in the process, so that a flood is
 * passed over without a look at the store; what several processes let through is counted by `sharedVerdict`.
 * Bounded; what was not used for longest is forgotten first.
 */
export class Limits {
  readonly #tallies = new Map<string, Tally>();
  readonly #now: () => number;
  readonly #limit: Limit;

  constructor(now: () => number, limit: Limit = forQuestions) {
    this.#now = now;
    this.#limit = limit;
  }

  /** Notes one more question. A chat is asked for a pause once a minute, however many there need one. */
  note(chat: number, person: number, isPrivate: boolean): RateDecision {
    if (isPrivate) return this.#note(`${chat}`, this.#limit.alone);
    const own = this.#note(`${chat} ${person}`, this.#limit.person);
    const verdict = own === 'answer' ? this.#note(`${chat}`, this.#limit.group) : own;
    return verdict === 'ask for a pause' && this.#note(`${chat} asked`, 1) !== 'answer' ? 'silence' : verdict;
  }

  #note(key: string, most: number): RateDecision {
    const now = this.#now();
    const tally = this.#tallies.get(key) ?? { since: now, count: 0, pausedUntil: 0 };
    // Taken out and put in again, the map's order is that of the last use.
    this.#tallies.delete(key);
    this.#tallies.set(key, tally);
    if (this.#tallies.size > mostKept) dropOldest(this.#tallies);
    if (now < tally.pausedUntil) return 'silence';
    if (now - tally.since >= minuteMs || tally.pausedUntil > 0)
      Object.assign(tally, { since: now, count: 0, pausedUntil: 0 });
    tally.count++;
    if (tally.count <= most) return 'answer';
    tally.pausedUntil = now + minuteMs;
    return 'ask for a pause';
  }
}
