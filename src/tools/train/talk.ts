import type { TalkContext } from '#language/decide/frame.ts';
import { conceptsIn } from '#language/hazards/features.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { afterLine, contextFor, heardFromBot, type LineReader, type Talk } from '#language/talk.ts';
import type { Group } from './groups.ts';

/** What the lines before a message leave for its reading. */
export function talkBefore(group: Group, read: LineReader): TalkContext {
  let talk: Talk = {};
  for (const { from, text } of group.before ?? []) {
    if (from === 'bot') talk = { ...talk, ...heardFromBot(text, talk, read) };
    else {
      const { intent, stated } = read(text, talk);
      talk = afterLine(talk, intent, stated, from, recognise(text).mentions, conceptsIn(text));
    }
  }
  return contextFor(talk, group.from);
}
