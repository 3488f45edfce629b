import { registerHooks } from 'node:module';
import { readGroups } from './groups.ts';
import { wordsOf } from './words.ts';

// Prints the words that the labelled messages teach, as JSON: what `src/language/words/learned.json` holds. Run in a
// process of its own, in which that file is empty: what was learned before must not count as known.
registerHooks({
  load: (url, context, next) =>
    url.endsWith('/language/words/learned.json')
      ? {
          format: 'json',
          shortCircuit: true,
          source: '{"vocabulary":[],"things":[],"people":[],"nouns":[]}',
        }
      : next(url, context),
});

const { nameLexicon } = await import('#language/recognise/lexicons.ts');

/** Whether a name stands in the tables of the project, whole. */
function isKnown(name: string): boolean {
  const words = name.split(' ');
  const found = nameLexicon.find({ length: words.length, wordAt: i => words[i] ?? '' }, 0);
  return found?.length === words.length;
}

const lists = Object.entries(wordsOf(readGroups('tests/messages'), isKnown));
const rows = lists.map(([name, words]) => `${JSON.stringify(name)}:${JSON.stringify(words)}`);
process.stdout.write(`{${rows.join(',\n')}}\n`);
