import type { Reply } from '#answer/reply.ts';

/** The privacy notice in short; `docs/privacy.md` is the long one. */
export const answerPrivacy = (): Reply => ({
  headline:
    'I keep the numbers of your rig and last question, used for your answers alone, never your messages.',
  lines: [
    'Kept for each chat: rigs with first names, figures of the last question, which words I know the last lines had, claims in an argument, and how far each is in the lessons.',
    'It is encrypted, shared with nobody, and deleted when you say so, when you leave the group, or 30 days after I am removed from the chat.',
    'Say “forget everything” to delete it, or “forget my rig” for only yours: I ask once first. Only you or an admin can change your rig; “undo” takes your last change back within the hour.',
  ],
  next: ['show my rig', 'forget everything'],
});
