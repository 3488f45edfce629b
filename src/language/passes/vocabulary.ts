import { dayTimes, months, weekdays } from '../words/en/calendar.ts';
import { plainWords } from '../words/en/common.ts';
import { cueLexicon } from './cues.ts';
import { modifierLexicon } from './modifiers.ts';
import { numberLexicon } from './numbers.ts';
import { thingLexicon } from './things.ts';
import { unitLexicon } from './unit-words.ts';

/** Every single word that means something here. */
export const vocabulary: ReadonlySet<string> = (() => {
  const all = new Set<string>(plainWords);
  for (const lexicon of [cueLexicon, modifierLexicon, numberLexicon, thingLexicon, unitLexicon])
    lexicon.vocabulary(all);
  for (const table of [dayTimes, months, weekdays]) for (const word of Object.keys(table)) all.add(word);
  return all;
})();
