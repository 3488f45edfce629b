import type { Mention } from '../recognise/mention.ts';
import type { Recognised } from '../recognise/recognise.ts';
import { unitLexicon } from '../recognise/units.ts';
import type { Stated } from './assemble.ts';
import type { Option } from './decide.ts';
import type { TalkContext } from './frame.ts';

/** Facts that hang on the question as a whole: the word asked after, the answer to a quiz, what was put right. */
export function finish(recognised: Recognised, option: Option, context: TalkContext): Stated {
  const stated: Stated = { ...option.stated };
  const { mentions, words } = recognised;
  if (option.intent === 'term' || option.intent === 'learn') {
    const term = option.intent === 'term' ? termOf(words) : undefined;
    if (term) stated.term = term;
    const choice = option.intent === 'learn' ? choiceOf(mentions) : undefined;
    if (choice) stated.choice = choice;
  }
  const corrects = context.lastIntent ? correctionOf(mentions, recognised) : undefined;
  if (corrects) stated.corrects = corrects;
  return stated;
}

const fillers = new Set(
  'a an the is are was what whats wat wot wots whatis does do did mean means meaning of explain define please pls plz me to us in it its this that thing even exactly actually really hell heck on earth kindly could would can you someone somebody anybody anyone tell stand stands for when people say they talk about by and so ok hey hi hello bot um er then like i my we our keep keeps hearing reading read see seeing every everyone all with word words term short simple simply plain english whats a again how works work why called call sorry dumb stupid silly question quick beginner here newbie new'.split(
    ' ',
  ),
);

/** The word or phrase asked after: what is left when the asking is taken off. */
export function termOf(words: readonly string[]): string | undefined {
  const spans: string[][] = [];
  let run: string[] = [];
  // After "what is", "explain", "mean by": the first run of words that are no asking.
  let from = 0;
  words.forEach((word, i) => {
    if (/^(?:whats?|wats?|wots?|explain|define|meaning|mean|means|difference)$/.test(word) && from === 0)
      from = i;
  });
  for (let i = 0; i < words.length; i++) {
    const word = words[i]!;
    if (word === '' || fillers.has(word) || /^[^\p{L}\p{N}]+$/u.test(word)) {
      const isOf =
        (word === 'of' || word === 'to' || word === 'and') &&
        run.length > 0 &&
        words[i + 1] &&
        !fillers.has(words[i + 1]!);
      if (isOf) run.push(word);
      else if (run.length > 0) {
        spans.push(run);
        run = [];
      }
    } else run.push(word);
  }
  if (run.length > 0) spans.push(run);
  const after = spans.find(s => words.indexOf(s[0]!) >= from);
  return (after ?? spans[0])?.slice(0, 5).join(' ');
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

const slips = new Set([
  'sorry',
  'meant',
  'mean',
  'correction',
  'oops',
  'typo',
  'mistake',
  'wrong',
  'misread',
  'actually',
  'wait',
  'scrub',
  'scratch',
  'mistyped',
  'fat',
  'swapped',
  'correct',
  'soz',
  'whoops',
]);
const negations = new Set(['not', 'isnt', 'wasnt', 'instead', 'rather', 'never', 'nae']);

/** "6 h, not 16", "sorry, 800 W": the number that is right, and the wrong one where it is told. */
export function correctionOf(
  mentions: readonly Mention[],
  { tokens }: Recognised,
): { from?: number; to: number; unit?: string } | undefined {
  const amounts = mentions.filter(m => m.kind === 'amount' || m.kind === 'number');
  if (amounts.length === 0 || amounts.length > 4) return undefined;
  const isSlip = mentions.some(m => m.kind === 'word' && slips.has(m.text));
  let wrong: Mention | undefined;
  for (const m of amounts) {
    const at = mentions.indexOf(m);
    for (let d = 1; d <= 3 && at - d >= 0; d++) {
      const before = mentions[at - d]!;
      if (before.kind === 'amount' || before.kind === 'number') break;
      if (negations.has(before.text)) wrong = m;
    }
  }
  const right = amounts.find(m => m !== wrong && (!wrong || m.unit === wrong.unit || !m.unit || !wrong.unit));
  if (!right || (!wrong && !isSlip)) return undefined;
  if (!wrong && amounts.length > 2) return undefined;
  const other = wrong ?? (amounts.length === 2 ? amounts.find(m => m !== right) : undefined);
  const unit = right.unit ?? wrong?.unit;
  void unitLexicon;
  void tokens;
  return { ...(other && wrong ? { from: other.told } : {}), to: right.told, ...(unit ? { unit } : {}) };
}
