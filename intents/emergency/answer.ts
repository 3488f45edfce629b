import type { Reply } from '#answer/reply.ts';

/**
 * The one thing to do now, where nothing closer is known of the danger: out, air, help. No figures and nothing to
 * tap. Common practice of fire services.
 */
export const answerEmergency = (): Reply => ({
  headline:
    'Stop, get everybody out and well away into fresh air, then call the emergency number (000, 111, 112 or 911).',
  lines: [
    'Don’t go back in, and don’t touch, move or switch anything to save gear.',
    'Once all are safe: use none of it again until a licensed person has looked at it.',
  ],
});
