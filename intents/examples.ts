import { createRequire } from 'node:module';
import { intents } from './index.ts';
import type { Example } from './intent.ts';

interface PhraseRow {
  readonly say: string;
  readonly show?: 'help';
}

const load = createRequire(import.meta.url);
let held: readonly Example[] | undefined;

/** The phrases marked for help, from the questions' own files; read at the first call and held. */
export function examples(): readonly Example[] {
  held ??= intents.flatMap(({ name, title }) =>
    (load(`./${name}/phrases.json`) as PhraseRow[])
      .filter(row => row.show === 'help')
      .map(row => ({ intent: name, title, say: row.say })),
  );
  return held;
}
