import type { MemoryStore } from '#conversation/memory-store.ts';
import { forQuestions, type Limit, type RateDecision } from './limits.ts';
import type { Question } from './sort.ts';

const verdictOf = (count: number, most: number): RateDecision =>
  count <= most ? 'answer' : count === most + 1 ? 'ask for a pause' : 'silence';

/** The stricter of two. */
const stricter = (one: RateDecision, other: RateDecision): RateDecision => {
  if (one === 'silence' || other === 'silence') return 'silence';
  return one === 'answer' ? other : one;
};

/**
 * Counts a question with those that other processes on the same data answer, by person and by group, as `Limits` does
 * in one of them. To be asked once a question.
 * @param own what this process found
 * @param nowMs ms since 1970
 */
export async function sharedVerdict(
  store: Pick<MemoryStore, 'tally'>,
  { message }: Pick<Question, 'message'>,
  own: RateDecision,
  nowMs: number,
  limit: Limit = forQuestions,
): Promise<RateDecision> {
  const { chat, from } = message;
  const all = { what: `${chat.id}`, most: chat.type === 'private' ? limit.alone : limit.group };
  if (chat.type === 'private') {
    const { count } = await store.tally(nowMs, all);
    return stricter(own, verdictOf(count, all.most));
  }
  const one = { what: `${chat.id} ${from?.id ?? 0}`, most: limit.person };
  const { count, within } = await store.tally(nowMs, one, all);
  const verdict = within === undefined ? verdictOf(count, one.most) : verdictOf(within, all.most);
  const both = stricter(own, verdict);
  if (both !== 'ask for a pause') return both;
  // A group is asked for a pause once a minute, however many there need one.
  const asked = await store.tally(nowMs, { what: `${chat.id} asked`, most: 1 });
  return asked.count === 1 ? both : 'silence';
}
