import { type Cue, cuePhrases } from '../words/en/cues.ts';
import { Lexicon } from './lexicon.ts';

const lexicon = new Lexicon<readonly Cue[]>();
const byPhrase = new Map<string, Cue[]>();
for (const [cue, phrases] of Object.entries(cuePhrases) as [Cue, readonly string[]][])
  for (const phrase of phrases) {
    const cues = byPhrase.get(phrase) ?? [];
    if (!cues.includes(cue)) cues.push(cue);
    byPhrase.set(phrase, cues);
  }
for (const [phrase, cues] of byPhrase) lexicon.add(phrase, cues);

/** The cue phrases that a message says, in their order. */
export function cuesIn(words: readonly string[]): ReadonlySet<Cue> {
  const text = { length: words.length, wordAt: (i: number) => words[i] ?? '' };
  const found = new Set<Cue>();
  for (let i = 0; i < words.length; i++) {
    if (words[i] === '?') found.add('question-mark');
    for (const cue of lexicon.find(text, i)?.value ?? []) found.add(cue);
  }
  return found;
}
