import { createRequire } from 'node:module';
import { intents } from './index.ts';
import type { Example } from './intent.ts';

interface PhraseRow {
  readonly say: string;
  readonly show?: 'help';
}

const load = createRequire(import.meta.url);
let held: readonly Example[] | undefined;

/** The same in another language: for the questions that have words in it, the example among them. */
export function examplesIn(language: string): readonly Example[] {
  if (language === 'en') return examples();
  return intents.flatMap(({ name, title, words }) => {
    const own = words?.(language);
    const say = own?.find('example');
    return say ? [{ intent: name, title: own!.say('title', title), say }] : [];
  });
}

/** The phrases marked for help, from the questions' own files; read at the first call and held. */
export function examples(): readonly Example[] {
  held ??= intents.flatMap(({ name, title }) =>
    (load(`./${name}/phrases.json`) as PhraseRow[])
      .filter(row => row.show === 'help')
      .map(row => ({ intent: name, title, say: row.say })),
  );
  return held;
}
