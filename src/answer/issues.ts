import type { Issue } from '#language/issue.ts';
import { english, type Speech } from './speech.ts';

/** The sentence for a problem found while reading. */
export function issueSentence(issue: Issue, words: Speech = english): string {
  const { say } = words;
  switch (issue.code) {
    case 'unknown-unit': {
      const { said, near } = issue.data;
      return near
        ? say('unknown-unit-near', "I don't know “{said}”. Did you mean “{near}”?", { said, near })
        : say('unknown-unit', "I don't know the unit “{said}”. Which is it: A, Ah, W or V?", { said });
    }
    case 'unit-mismatch': {
      const { said, repair } = issue.data;
      return say('unit-mismatch', 'I read “{said}” as {repair}.', { said, repair });
    }
    case 'absurd-value': {
      const { said, thing } = issue.data;
      const text = "“{said}” can't be right for the {thing}. What is it really?";
      return say('absurd-value', text, { said, thing });
    }
    case 'contradiction': {
      const { first, second, expected } = issue.data;
      const text = "Two things don't fit: {first} makes {expected}, not {second}.";
      return say('contradiction', text, { first, second, expected });
    }
    case 'other-language':
      return say(
        'other-language',
        'Sorry, I read English so far. Can you write it in a few words of it, say “fridge 1.2A, 100Ah, 3 days?”',
      );
    case 'ambiguous': {
      const { said, taken, other } = issue.data;
      const text = 'I took “{said}” as {taken}; if you meant {other}, say so.';
      return say('ambiguous', text, { said, taken, other });
    }
  }
}
