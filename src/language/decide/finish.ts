import type { Mention } from '../recognise/mention.ts';
import type { Recognised } from '../recognise/recognise.ts';
import { askedTerm, termOf } from './asked-term.ts';
import type { Stated } from './assemble.ts';
import { correctionOf } from './correction.ts';
import type { Option } from './decide.ts';
import type { TalkContext } from './frame.ts';

/** Facts that hang on the question as a whole: the word asked after, the answer to a quiz, what was put right. */
export function finish(recognised: Recognised, option: Option, context: TalkContext): Stated {
  const stated: Stated = { ...option.stated };
  const { mentions, words } = recognised;
  if (option.intent === 'term' || option.intent === 'learn') {
    const term = option.intent === 'term' ? (askedTerm(words) ?? termOf(words)) : undefined;
    if (term) stated.term = term;
    const choice = option.intent === 'learn' ? choiceOf(mentions) : undefined;
    if (choice) stated.choice = choice;
  }
  const corrects = context.lastIntent ? correctionOf(mentions, option.state) : undefined;
  if (corrects) stated.corrects = corrects;
  return stated;
}

function choiceOf(mentions: readonly Mention[]): string | undefined {
  for (let i = 0; i < mentions.length; i++) {
    const m = mentions[i]!;
    if (m.kind !== 'word' || !/^[a-d]$/.test(m.text)) continue;
    const next = mentions[i + 1];
    if (
      m.text === 'a' &&
      next &&
      next.kind !== 'sign' &&
      i > 0 &&
      mentions[i - 1]!.text !== 'answer' &&
      mentions[i - 1]!.text !== 'its'
    )
      continue;
    return m.text;
  }
  return undefined;
}
