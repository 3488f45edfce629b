import { isStop, markKnown, type State, textAt, wordAt } from '../state.ts';
import { list } from '../words/list.ts';
import { plural } from './things.ts';

/** What is asked after, taught, or answered in a quiz. */
export function lessons(state: State): void {
  term(state);
  lesson(state);
  choice(state);
}

const openers: readonly (readonly string[])[] = [
  ['what', 'is'],
  ['what', 'are'],
  ['what', 'means'],
  ['meaning', 'of'],
  ['definition', 'of'],
  ['what', 'does'],
  ['what', 'do'],
  ['difference', 'between'],
  ['go', 'with'],
  ['mean', 'by'],
  ['meant', 'by'],
  ['heck', 'is'],
  ['hell', 'is'],
  ['exactly', 'is'],
  ['actually', 'is'],
  ['earth', 'is'],
  ['me', 'what'],
];
const single = list('whats wots wats explain define wtf eli5');
const skipped = list(`
  a an the is are this that these those to me meant by thing please actually us what exactly of between
  difference meaning called so heck hell means on earth your all about term word with go story deal point idea
`);
const ending = list(`
  and or mean means from in do does please pls isnt is are for when if stand thing but because again to so work
  works thats like anyway mate guys vs versus that i you we they actually exactly on at good everyone
  people then even plz compared with really
`);
const mostWords = 7;

/** The word or phrase after "what is", "explain", "whats a" …, without articles and in the singular. */
function term(state: State): void {
  if (!state.cues.has('ask-what-is') && !state.cues.has('ask-why')) return;
  for (let i = 0; i < state.tokens.length; i++) {
    const word = wordAt(state, i);
    const opener = single.has(word)
      ? 1
      : openers.some(([a, b]) => a === word && b === wordAt(state, i + 1))
        ? 2
        : 0;
    if (!opener) continue;
    const isPair = word === 'difference' || state.tokens.some(token => token.text === 'difference');
    const phrase = phraseFrom(state, i + opener, isPair);
    if (phrase) {
      state.term = phrase;
      return;
    }
  }
  // "is a watt more than an amp", "why cant i use all 100 of my 100ah"
  const first = wordAt(state, 0);
  if ((first === 'is' || first === 'are') && state.cues.has('ask-compare'))
    state.term = phraseFrom(state, 1, true);
  else if (
    state.cues.has('ask-why') &&
    state.tokens.some((_, i) => wordAt(state, i) === 'use' && wordAt(state, i + 1) === 'all')
  )
    state.term = 'depth of discharge';
}

const pairing = list('and or vs versus than a an the more less to from same as');

/** The words asked after; of a comparison both terms with what joins them. */
function phraseFrom(state: State, at: number, isPair = false): string | undefined {
  const words: string[] = [];
  let i = at;
  while (skipped.has(wordAt(state, i)) && !(wordAt(state, i) === 'b')) i++;
  for (; i < state.tokens.length && words.length < mostWords; i++) {
    const { kind, text } = state.tokens[i]!;
    if (kind === 'sign' && (text === '-' || text === '/' || (/^["“”']$/.test(text) && words.length === 0)))
      continue;
    if (kind === 'number' && words.length > 0) {
      words.push(text);
      continue;
    }
    if (isPair && pairing.has(text)) {
      if (words.length > 0 && text.length > 2 && text !== 'the') words.push(text);
      continue;
    }
    if (kind !== 'word' || ending.has(text)) break;
    if ((text === 'a' || text === 'an' || text === 'the') && words.length === 0) continue;
    if (
      words.length > 0 &&
      (text === 'a' || text === 'an' || text === 'the' || text === 'more' || text === 'less')
    )
      break;
    words.push(text);
  }
  if (
    words.length === 0 ||
    /^(my|our|your|it|they|daily|best|better|smallest|biggest|wrong|up|going|happening|next|for|left|total|his|her|you|u|answer|we|i|smallest|cheapest|size)$/.test(
      words[0]!,
    )
  )
    return undefined;
  if (state.quantities.some(q => q.at >= at && q.at <= i && q.at < at + 2)) return undefined;
  if (words.some(word => /^(per|day|daily|total|best|drop|drain)$/.test(word))) return undefined;
  markKnown(state, at, Math.min(i, state.tokens.length));
  return singular(words.join(' '));
}

const singular = (phrase: string): string => {
  if (
    phrase.length < 4 ||
    !phrase.endsWith('s') ||
    phrase.endsWith('ss') ||
    phrase.endsWith('us') ||
    phrase.endsWith('bms')
  )
    return phrase;
  const one = phrase.slice(0, -1);
  return plural(one) === phrase ? one : phrase;
};

/** "lesson 3", "lesson on solar", "teach me about fuses". */
function lesson(state: State): void {
  if (!state.cues.has('learn')) return;
  for (let i = 0; i < state.tokens.length; i++) {
    const word = wordAt(state, i);
    if (
      word !== 'lesson' &&
      word !== 'lessons' &&
      word !== 'about' &&
      word !== 'chapter' &&
      word !== 'step' &&
      word !== 'learn' &&
      word !== 'teach'
    )
      continue;
    let next = i + 1;
    while (/^(number|no|on|about|of|the|me|us|a|how|some|basics|basic)$/.test(wordAt(state, next))) next++;
    const token = state.tokens[next];
    if (token?.kind === 'number') {
      state.lesson = { number: token.value };
      return;
    }
    if (
      token?.kind === 'word' &&
      !/^(please|pls|camping|one|from|plan|start|power|everything|stuff|to|this|it|again|12v|electrics|electricity|something)$/.test(
        token.text,
      )
    ) {
      const words = [token.text];
      const second = wordAt(state, next + 1);
      if (second && !/^(please|pls|to|and|from|for|in|on|mate|bot|works?|work)$/.test(second))
        words.push(second);
      if (!isStop(token.text)) {
        state.lesson = { topic: singular(words.join(' ')) };
        return;
      }
    }
  }
}

const letters = /^[abcd]$/;
const longestAnswer = 8;

/** "c, 24 volts", "b", "the answer is d". */
function choice(state: State): void {
  const { tokens } = state;
  if (tokens.length === 0 || tokens.length > longestAnswer || state.cues.has('question-mark')) return;
  const text = state.text.trim();
  const start = /^(u+m+|u+h+|e+r+m*|hm+|ok|okay|maybe|so|well|is|its|i|pick|say|definitely)$/.test(
    wordAt(state, 0),
  )
    ? 1
    : 0;
  const first = wordAt(state, start);
  const after = textAt(state, start + 1);
  if (letters.test(first) && (after === '' || /^[,.):!-]$/.test(after))) {
    give(state, first, text);
    return;
  }
  const last = wordAt(state, tokens.length - 1);
  const before = wordAt(state, tokens.length - 2);
  if (
    letters.test(last) &&
    /^(is|its|answer|option|say|pick|choose|guess|reckon|think|maybe|letter|take|with|for)$/.test(before)
  ) {
    give(state, last, text);
    return;
  }
  if (tokens.length <= 2 && tokens.some(token => token.kind === 'quantity')) state.choice = { text };
}

function give(state: State, letter: string, text: string): void {
  state.choice = { letter, text };
  state.cues.add('quiz-answer');
  markKnown(state, 0);
}
