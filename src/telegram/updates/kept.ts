import type { Answer } from '#answer/answer.ts';
import type { Frame } from '#conversation/memory.ts';

/** What is known of an answer that stands in a chat. No texts of people: a hash of the question. */
export interface Kept {
  readonly answerId: number;
  /** Hash of the question's text, to tell a real edit from one of the metadata. */
  readonly question: string;
  /** Hash of the text that is shown now. */
  readonly shown: string;
  /** The question as understood, so that a button or a reply goes on from this answer and not from a later one. */
  readonly onto?: Frame;
  /** Whether a button offers the working, and one a picture: each is shown once. */
  readonly hasWorking: boolean;
  readonly hasPicture: boolean;
  /** Whether its numbers come as a table in place of a picture. */
  readonly isTable: boolean;
  /** Works the answer out once more for them. */
  readonly again: NonNullable<Answer['again']>;
  readonly next: readonly string[];
  /** Whether a button offers to make it closer by a place. */
  readonly lacksPlace?: boolean;
}

/** Each holds some kB to be worked out once more. */
const mostKept = 500;

/**
 * The answers of late, by question and by answer, bounded: the oldest go first. Lives in memory; after a restart
 * buttons recompute what they need from the message itself.
 */
export class KeptAnswers {
  readonly #byQuestion = new Map<string, Kept>();
  readonly #byAnswer = new Map<string, { readonly question: string; readonly kept: Kept }>();
  readonly #limit: number;

  constructor(limit = mostKept) {
    this.#limit = limit;
  }

  set(chat: number, questionId: number, kept: Kept): void {
    const question = `${chat} ${questionId}`;
    const answer = `${chat} ${kept.answerId}`;
    this.#byQuestion.delete(question);
    this.#byQuestion.set(question, kept);
    this.#byAnswer.delete(answer);
    this.#byAnswer.set(answer, { question, kept });
    trim(this.#byQuestion, this.#limit);
    trim(this.#byAnswer, this.#limit);
  }

  ofQuestion(chat: number, questionId: number): Kept | undefined {
    return this.#byQuestion.get(`${chat} ${questionId}`);
  }

  ofAnswer(chat: number, answerId: number): Kept | undefined {
    return this.#byAnswer.get(`${chat} ${answerId}`)?.kept;
  }

  /** Puts something new in the place of an answer that is known. */
  change(chat: number, answerId: number, kept: Kept): void {
    const known = this.#byAnswer.get(`${chat} ${answerId}`);
    const question = known === undefined ? `${chat} ?${answerId}` : known.question;
    this.#byAnswer.set(`${chat} ${answerId}`, { question, kept });
    if (known !== undefined) this.#byQuestion.set(question, kept);
    trim(this.#byAnswer, this.#limit);
  }

  /** Notes that what a button of an answer offers has been shown. */
  shows(chat: number, answerId: number, what: 'working' | 'picture'): void {
    const known = this.ofAnswer(chat, answerId);
    if (known === undefined) return;
    const shown = what === 'working' ? { hasWorking: false } : { hasPicture: false };
    this.change(chat, answerId, { ...known, ...shown });
  }

  /** Drops one answer. */
  lose(chat: number, answerId: number): void {
    const known = this.#byAnswer.get(`${chat} ${answerId}`);
    this.#byAnswer.delete(`${chat} ${answerId}`);
    if (known !== undefined) this.#byQuestion.delete(known.question);
  }

  /** Drops all of a chat: its ids are void after a move, and what it knows after "forget". */
  drop(chat: number): void {
    for (const map of [this.#byQuestion, this.#byAnswer])
      for (const key of map.keys()) if (key.startsWith(`${chat} `)) map.delete(key);
  }
}

function trim<V>(map: Map<string, V>, limit: number): void {
  for (const key of map.keys()) {
    if (map.size <= limit) return;
    map.delete(key);
  }
}
