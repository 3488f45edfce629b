import { type Answer, inWords } from '#answer/answer.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { Damaged, type Loaded } from '#conversation/memory-store.ts';

/** A memory, or that it is there and can't be read any more. */
export async function loadedOr(load: Promise<Loaded>): Promise<Loaded | 'damaged'> {
  try {
    return await load;
  } catch (error) {
    if (error instanceof Damaged) return 'damaged';
    throw error;
  }
}

const words = {
  forgotten: 'What I kept of this chat could not be read any more. It is gone now: tell me your rig again.',
  damaged:
    'What I keep of this chat is damaged, and I can’t read it. Say “forget everything” and I start afresh; then ask again.',
  onlyAdmin:
    'What I keep of this chat is damaged. An admin of the group may say “forget everything”, and I start afresh.',
} as const;

/**
 * What is said of a memory that can't be read. A wish to forget is met at once: there is nothing left to lose by it.
 * @param wish what an empty memory makes of the message
 * @param isAdmin whether its writer may forget all of the chat
 */
export function answerDamaged(wish: Answer, isAdmin: boolean): { answer: Answer; isForgotten: boolean } {
  const isForgotten = wish.intent === 'forget' && isAdmin;
  if (isForgotten) return { answer: inWords('forget', words.forgotten), isForgotten };
  // Danger is answered whatever was kept.
  if (wish.intent === 'emergency' || wish.hazards.length > 0) return { answer: wish, isForgotten };
  return {
    answer: inWords('unclear', wish.intent === 'forget' ? words.onlyAdmin : words.damaged),
    isForgotten,
  };
}

/** Stands for what could not be read. Nothing is saved over it. */
export const unread = (): Loaded => ({ memory: emptyMemory(), revision: 0 });
