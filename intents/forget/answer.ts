import type { Reply } from '#answer/reply.ts';
import type { Setting } from '../intent.ts';

/** Deletes at once: nothing kept here can't be told again in one line. */
export function answerForget({ kind, isAdmin, parsed }: Setting): Reply {
  const isOwnOnly = parsed.owner === 'me' && kind === 'group';
  if (kind === 'private' || (isAdmin && !isOwnOnly))
    return {
      headline: 'Done: everything I knew of this chat is deleted and forgotten.',
      lines: ['Rigs, last questions, claims and lessons are gone. Ask again whenever you like.'],
      remember: { forget: 'chat' },
    };
  return {
    headline: 'Done: your rig, your last question and your lessons are deleted and forgotten.',
    lines: isOwnOnly
      ? []
      : ['What belongs to the whole group only an admin can delete: ask one to say “forget everything”.'],
    remember: { forget: 'me' },
  };
}
