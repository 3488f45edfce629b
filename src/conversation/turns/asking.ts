import { present } from '#basics/present.ts';
import type { Cue } from '#language/words/en/cues.ts';
import type { Heard } from '../hear.ts';

// Whether words ask, where no question mark tells it.

/** Cues of words that ask wherever they stand; the others ("get", "working", "fine") are as often said of anything. */
const plainAsking: readonly Cue[] = [
  'ask-how-long',
  'ask-what-size',
  'ask-how-much',
  'ask-total',
  'ask-which',
  'ask-who-is-right',
  'ask-whose',
  'ask-drop',
];
/** Words that open a request. */
const askingFirst: ReadonlySet<string> = new Set(
  `can could will would wont is are am isnt arent doesnt cant couldnt wouldnt shouldnt does do did should shall may how hows what
whats wot wots y which who whos whose why when where
show tell explain give work calculate check convert compare list need want best`.split(/\s+/),
);
const before: ReadonlySet<string> = new Set(
  'ok okay so hey and but then now right well please pls oh'.split(' '),
);

/** Whether a part of its text opens as a request does: "will we", "what do". */
export function opensAsking({ recognised: { words } }: Heard): boolean {
  const spoken = words.filter(word => !before.has(word));
  // It opens the text, or stands behind a sign.
  const isFirst = (at: number): boolean => at === 0 || /^[^\p{L}\p{N}%°]/u.test(present(spoken[at - 1]));
  return spoken.some((word, at) => askingFirst.has(word) && spoken[at + 1] !== 'be' && isFirst(at));
}

/** Whether its words ask, with or without a question mark. */
export const isAsking = (heard: Heard): boolean =>
  plainAsking.some(cue => heard.cues.has(cue)) || opensAsking(heard);

/** Whether a word of it may ask something of an answer that its writer got ("so it is enough"). */
export const isAskingMore = ({ cues }: Heard): boolean =>
  [...cues].some(cue => cue.startsWith('ask-') && cue !== 'ask-yield' && cue !== 'ask-compare');

/** The same but for "a day", which is as much of what is told as of what is asked. */
export const isAskingPlainly = (heard: Heard): boolean =>
  opensAsking(heard) || plainAsking.some(cue => cue !== 'ask-total' && heard.cues.has(cue));

/** Whether somebody says what is theirs, and asks nothing: "I've got a 75 Ah gel". */
export const isOwning = (heard: Heard): boolean =>
  heard.cues.has('own-statement') && !heard.cues.has('question-mark') && !isAskingPlainly(heard);
