import { present } from '#basics/present.ts';
import type { Talk } from './talk.ts';
import type { Said } from './telegram.ts';

/** What was said to one message of a talk: sent, or for an edited message put in the place of its answer. */
export type AnswersTo = (talk: Talk, turn: number) => readonly Said[];

/** Sorts what was said by what it answers. */
export function answersIn(said: readonly Said[]): AnswersTo {
  const byQuestion = Map.groupBy(said, ({ chat, question, isEdit }) => `${chat} ${question} ${isEdit}`);
  return ({ chat, updates }, turn) => {
    const { message, edited_message } = present(updates[turn]);
    const question = present(message ?? edited_message).message_id;
    return byQuestion.get(`${chat} ${question} ${message === undefined}`) ?? [];
  };
}
