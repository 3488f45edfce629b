import type { Issue } from '#language/issue.ts';
import { english, type Speech } from './speech.ts';

/** The sentence for a problem found while reading. */
export function issueSentence(issue: Issue, words: Speech = english): string {
  const { say } = words;
  if (issue.code === 'other-language')
    return say(
      'other-language',
      'Sorry, I read English so far. Can you write it in a few words of it, say “fridge 1.2A, 100Ah, 3 days?”',
    );
  const text = "“{said}” can't be right for the {thing}. What is it really?";
  return say('absurd-value', text, issue.data);
}
