import { issueSentence } from '#answer/issues.ts';
import type { Reply } from '#answer/reply.ts';
import { listIn } from '#answer/say.ts';
import type { Speech } from '#answer/speech.ts';
import type { Intent } from '#intents/intent.ts';
import type { Said } from '#language/said.ts';

/** Something missing: as the bot asks for it, and the key of that sentence. */
export interface Missing {
  readonly ask: string;
  readonly key?: string;
}

/** What a question misses, from its needs held against the facts. */
export function missingOf(parsed: ReturnType<Intent['needs']['safeParse']>): Missing[] {
  if (parsed.success) return [];
  return parsed.error.issues.map(issue => {
    const { key } = (issue.code === 'custom' ? (issue.params ?? {}) : {}) as { key?: string };
    return { ask: issue.message, key };
  });
}

/** Is there something in the message that must be cleared up before any number is given? */
export const isAskingBack = (said: Said): boolean => said.issues.some(issue => issue.code === 'absurd-value');

/** The one question back: what can't be right first, else what is missing, in the words of the needs. */
export function askBack(intent: Intent, missing: readonly Missing[], said: Said, words: Speech): Reply {
  const wrong = said.issues.find(issue => issue.code === 'absurd-value' || issue.code === 'unknown-unit');
  if (wrong) return { headline: issueSentence(wrong, words) };
  const foreign = said.issues.find(issue => issue.code === 'other-language');
  if (foreign && said.known < 3) return { headline: issueSentence(foreign, words) };
  const needs = listIn(
    missing.map(({ ask, key }) => (key ? words.say(key, ask) : ask)),
    words,
  );
  const title = words.say('title', intent.title);
  const text = '{title} To work that out I need {needs}. Can you tell me?';
  return { headline: words.say('need', text, { title, needs }) };
}

/** The answer to something dangerous that has no numbers to work out: no; the caution says why. */
export const unsafe = (words: Speech): Reply => ({
  headline: words.say('unsafe', 'No, please don’t do that.'),
  verdict: 'no',
});
