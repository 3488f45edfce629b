import { Lexicon } from '../lexicon.ts';
import type { Cue } from '../said.ts';
import { isStop, markKnown, quantityAt, type State, textAt, wordAt } from '../state.ts';
import { cuePhrases } from '../words/en/cues.ts';
import { list } from '../words/list.ts';
import { unitLexicon } from './unit-words.ts';

export const cueLexicon = new Lexicon<readonly Cue[]>();
const all = new Map<string, Cue[]>();
for (const [cue, phrases] of Object.entries(cuePhrases) as [Cue, readonly string[]][])
  for (const phrase of phrases) {
    const list = all.get(phrase) ?? [];
    if (!list.includes(cue)) list.push(cue);
    all.set(phrase, list);
  }
for (const [phrase, list] of all) cueLexicon.add(phrase, list);

/** Single words that steer a lesson; in longer messages they are everyday words. */
const steering = new Set<Cue>(['next', 'previous', 'stop', 'start-over']);
const steeringWords = 5;
const asking = list('can could if do will would should may how when what until till must did shall');

/** Hears the cues: every phrase of `words/en/cues.ts` that occurs, and questions put without one. */
export function cues(state: State): void {
  const { tokens } = state;
  const words = tokens.reduce((sum, token) => sum + (token.kind === 'sign' ? 0 : 1), 0);
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!;
    if (token.kind === 'sign') {
      if (token.text === '?') state.cues.add('question-mark');
      if (token.text !== '/') continue;
    } else if (token.kind !== 'word') continue;
    const found = cueLexicon.find(state, i);
    if (found) {
      for (const cue of found.value) {
        if (steering.has(cue) && words > steeringWords) continue;
        if (cue === 'ask-drop' && wordAt(state, i) === 'drop' && wordAt(state, i + 1) === 'saw') continue;
        if (cue === 'own-statement' && asking.has(wordAt(state, i - 1))) continue; // "can i run …"
        state.cues.add(cue);
      }
      markKnown(state, i, i + found.length);
    }
    if (/^keep(s|ing)?$/.test(token.text)) kept(state, i);
    if (token.text === 'hows') goes(state, i);
    if (can.has(token.text) && isFirst(state, i) && isFigure(state, i + 1)) state.cues.add('ask-can-it');
    if (
      token.text === 'how' ||
      token.text === 'what' ||
      token.text === 'which' ||
      token.text === 'wat' ||
      token.text === 'wot'
    )
      asked(state, i);
    if (i + 1 === tokens.length || tokens[i + 1]!.text === '?') lastWord(state, i);
  }
}

const can = list('will would can could is are does do');
const kinds = list('panel panels solar battery batteries lithiums agms');
const wanting = list('need needs needed require required want should for to do');

const isFirst = (state: State, at: number): boolean => at === 0 || isStop(textAt(state, at - 1));
const isFigure = (state: State, at: number): boolean =>
  quantityAt(state, at) !== undefined || state.tokens[at]?.kind === 'number';

/** "keep my two fridges going": whether it does. */
function kept(state: State, at: number): void {
  for (let i = at + 2; i <= at + 5; i++)
    if (/^(going|running|cold|alive|up)$/.test(wordAt(state, i))) state.cues.add('ask-can-it');
}

/** "hows 200w of solar go with a fridge": whether it does. */
function goes(state: State, at: number): void {
  for (let i = at + 1; i <= at + 8; i++) if (wordAt(state, i) === 'go') state.cues.add('ask-can-it');
}

/** "how many solar panels do i need": asks for a size, in pieces. */
function pieces(state: State, at: number): void {
  for (let i = at; i < at + 4; i++) {
    if (!kinds.has(wordAt(state, i))) continue;
    for (let k = i + 1; k < i + 4; k++) if (wanting.has(wordAt(state, k))) state.cues.add('ask-what-size');
  }
}

/** "…, days?", "fuse?": a question of one word. */
function lastWord(state: State, at: number): void {
  if (
    state.tokens[at - 1]?.kind === 'number' ||
    /^(amps?|ampere|watts?|kilowatt|sun|peak|milliamp)$/.test(wordAt(state, at - 1))
  )
    return;
  const word = wordAt(state, at);
  if (/^(days|nights|hours|hrs|weeks|sleeps)$/.test(word)) state.cues.add('ask-how-long');
  else if (word === 'which') state.cues.add('ask-which');
  else if (/^(percent|%|soc)$/.test(word)) state.cues.add('ask-charge-level');
  else if (/^(fuse|cable|wire|gauge|size|awg|capacity)$/.test(word)) state.cues.add('ask-what-size');
  else if (/^(watts|amps|ah|wh|w|a)$/.test(word) && textAt(state, at + 1) === '?')
    state.cues.add(
      state.cues.has('solar') && word !== 'ah' && word !== 'wh' ? 'ask-what-size' : 'ask-how-much',
    );
}

/** "how many <unit>", "what (…) battery/panel/fuse": questions by the kind of their object. */
function asked(state: State, at: number): void {
  const word = wordAt(state, at);
  const next = wordAt(state, at + 1);
  if (word === 'how') {
    if (next !== 'many' && next !== 'mny' && next !== 'much') return;
    if (next !== 'much') pieces(state, at + 2);
    for (let i = at + 2; i < at + 5; i++) {
      const found = unitLexicon.find(state, i);
      if (!found || wordAt(state, i) === 'a') continue;
      const isTime = found.value.dimension === 'time';
      if (isTime && next !== 'much') state.cues.add('ask-how-long');
      else if (!isTime) state.cues.add('ask-how-much');
      return;
    }
    return;
  }
  if (
    /^(is|are|does|do|did|a|an|the|my|our|about|if|s|i|you|we|u|kind|type|should|would|will|can|would)$/.test(
      next,
    )
  )
    return;
  for (let i = at + 1; i < at + 4; i++)
    if (
      /^(battery|batteries|batt|agm|lithium|lifepo4|lfp|gel|panel|panels|cable|wire|fuse|breaker|generator|genny|inverter|solar|gauge|charger|fuses|lithum)$/.test(
        textAt(state, i),
      )
    ) {
      state.cues.add('ask-what-size');
      return;
    }
}
