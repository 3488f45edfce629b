import type { IntentName } from '#answer/answer.ts';
import type { Heard } from '../hear.ts';
import { alone } from '../questions.ts';
import { readingsOf } from '../unsure/two-readings.ts';

const joins: ReadonlySet<string> = new Set(['and', '&', '+', 'n']);
const askings: ReadonlySet<string> = new Set(['what', 'whats', 'which', 'how', 'wat']);

/** Whether its words ask, and ask once more after an "and": "what wire AND what fuse". */
function asksTwice(words: readonly string[]): boolean {
  const first = words.findIndex(word => askings.has(word));
  if (first < 0) return false;
  return words.some((word, i) => i > first + 1 && askings.has(word) && joins.has(words[i - 1] ?? ''));
}

/** As likely as this a reading is meant as well. Of 43 such messages that no weight had seen, both were meant in 31. */
const leastMeant = 0.15;

/** The question that the words ask beside the likeliest one, of the very same facts. */
export function secondAsked(heard: Heard): IntentName | undefined {
  if (!asksTwice(heard.recognised.words)) return undefined;
  const [first, ...others] = readingsOf(heard);
  if (!first || first.intent !== heard.intent || alone.has(first.intent)) return undefined;
  const facts = JSON.stringify(first.stated);
  return others.find(
    ({ intent, stated, probability }) =>
      probability >= leastMeant &&
      !alone.has(intent) &&
      intent !== first.intent &&
      JSON.stringify(stated) === facts,
  )?.intent;
}
