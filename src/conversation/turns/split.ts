import { read } from '#language/reading.ts';
import { keysOf, valuesOf } from '#language/talk.ts';
import type { Heard } from '../hear.ts';
import { alone } from '../questions.ts';
import { leastSure as leastRead } from '../unsure/sureness.ts';
import { secondAsked } from './twofold.ts';

/** As sure as this a part of a message is a question of its own. */
const leastSure = 0.6;
const mostParts = 6;

/** "What cable and fuse" is two questions with one set of facts. */
function cableAndFuse({ intent, cues, facts, claims }: Heard): string | undefined {
  const isBoth = cues.has('cable') && cues.has('fuse') && cues.has('ask-what-size');
  if (!isBoth || facts.cable?.lengthM === undefined || claims.length > 0) return undefined;
  return intent === 'cable-size' ? 'fuse-size' : intent === 'fuse-size' ? 'cable-size' : undefined;
}

/** One message with two questions. */
const pairOf = (heard: Heard, other: string): readonly Heard[] => [
  { ...heard, beside: other },
  { ...heard, intent: other, beside: heard.intent },
];

/**
 * The questions of one message. Facts hold for all of them; what is asked, each has for itself:
 * "100Ah, fridge 1.2A: how long? And what panel?" is two. Most messages are one.
 */
export function questionsOf(text: string, heard: Heard): readonly Heard[] {
  const other = cableAndFuse(heard);
  if (other) return [heard, { ...heard, intent: other }];
  // Which of the two is meant is no question where both are.
  const beside = secondAsked(heard);
  if (beside) return pairOf({ ...heard, certainty: Math.max(heard.certainty, leastRead) }, beside);
  // What follows the last mark asks nothing: "a battery or a panel first? 100Ah AGM, fridge 1.5A".
  const parts = text
    .split('?')
    .slice(0, -1)
    .filter(part => part.trim() !== '');
  if (parts.length < 2 || parts.length > mostParts || alone.has(heard.intent)) return [heard];
  const context = {
    lastIntent: heard.intent,
    lastKeys: keysOf({ ...heard.facts }),
    lastValues: valuesOf({ ...heard.facts }),
    isOwn: true,
  };
  const asked = parts.map(part => read(`${part}?`, context)).filter(part => part.probability >= leastSure);
  const names = new Set(asked.map(part => part.intent).filter(name => !alone.has(name)));
  if (!names.has(heard.intent)) return [heard];
  names.delete(heard.intent);
  const [second] = names;
  return second === undefined ? [heard] : pairOf(heard, second);
}
