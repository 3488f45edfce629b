import { isStop, markKnown, quantityAt, type State, type Thing, textAt, wordAt } from '../state.ts';
import { list } from '../words/list.ts';
import { thingLexicon } from './things.ts';

const removing = list(`
  without forget remove delete ditch minus lose skip drop scrap except excluding sold unplug removed
  dropped leave take turn switch cut turned switched less sans no ignore chuck pull wihtout witout erase
  clear binned get leaving taking removing skipping forgetting ignoring dump bin scratch
`);
const particles = list(
  'out off away rid of about the my our a an any using that those all down her his their both one dads mums',
);
const apart = list('out off away rid');
/** These need a word behind them: "take out", "turn off". */
const needsParticle = list('leave take turn switch cut turned switched chuck pull get leaving taking');
const notRemoved = list('battery cable fuse other');
const plainRemoving = list('scratch remove forget delete ditch without');
const joints = list('and , or & n');
const swapping = list(
  'swap swapped replace replaced change switch upgrade trade exchange swapping replacing',
);
const swapJoints = list('for with to by into');

/** "without the lights", "forget the heater", "turn the fan off", "swap the agm for a lithium": what no longer counts. */
export function removals(state: State): void {
  for (let i = 0; i < state.tokens.length; i++) {
    const word = wordAt(state, i);
    if (swapping.has(word)) swap(state, i);
    if (!removing.has(word)) continue;
    if (word === 'bin' && wordAt(state, i - 1) === 'chilly') continue;
    if (word === 'drop' && wordAt(state, i + 1) === 'saw') continue;
    if (word.startsWith('forget') && /^(dont|not|never)$/.test(wordAt(state, i - 1))) continue;
    if (word === 'drop' && (state.cues.has('ask-drop') || state.cues.has('cable'))) continue;
    let next = i + 1;
    let hasParticle = false;
    while (next < i + 5 && particles.has(wordAt(state, next))) {
      if (apart.has(wordAt(state, next))) hasParticle = true;
      next++;
    }
    if (needsParticle.has(word) && !hasParticle) {
      const one = thingAt(state, next);
      if (!one || !apart.has(wordAt(state, one.end))) continue; // "take the lights out"
    }
    leaveOut(state, next, word, i);
  }
}

const thingAt = (state: State, at: number): Thing | undefined =>
  state.things.find(one => one.at === at && !one.isDropped);

/** "swap the agm for a 100 Ah lithium": the first goes, where another of its kind comes. */
function swap(state: State, at: number): void {
  let next = at + 1;
  while (/^(the|my|our|out|that|old)$/.test(wordAt(state, next))) next++;
  const old = thingAt(state, next);
  if (!old || !swapJoints.has(wordAt(state, old.end))) return;
  if (state.things.some(one => one.at > old.end && one.kind === old.kind)) old.isDropped = true;
}

/** Leaves out the things named from `at`, as many as are joined by "and" or commas. */
function leaveOut(state: State, at: number, verb: string, verbAt: number): void {
  for (let next = at; ; ) {
    const one = thingAt(state, next);
    if (!one) {
      unknown(state, next, verb, verbAt);
      return;
    }
    if (verb === 'no' && (one.kind !== 'load' || state.quantities.length > 0)) {
      ruleOut(state, one);
      return;
    }
    if (one.kind === 'fuse' || (notRemoved.has(one.kind) && verb === 'without')) return;
    if (verb === 'less' && wordAt(state, verbAt + 1) !== 'the') return;
    one.isDropped = true;
    state.removed.push(one.name);
    state.cues.add(verb === 'without' || verb === 'no' || verb === 'minus' ? 'without' : 'remove');
    markKnown(state, verbAt);
    const joint = textAt(state, one.end);
    if (!joints.has(joint)) return;
    next = one.end + 1;
    while (/^(the|my|our|and|a|no|without)$/.test(wordAt(state, next))) next++;
    if (isStop(textAt(state, next)) || !thingLexicon.find(state, next)) return;
    if (joint === ',' && quantityAt(state, thingAt(state, next)?.end ?? -1)) return;
  }
}

/** "no inverter", "cpap, no humidifier, 25 W": what is not there is not spoken of. */
function ruleOut(state: State, one: Thing): void {
  if (one.kind !== 'fuse' && (one.kind === 'load' || !quantityAt(state, one.end))) one.isDropped = true;
}

/** "remove the widget": a thing only the rig knows. */
function unknown(state: State, at: number, verb: string, verbAt: number): void {
  const word = wordAt(state, at);
  if (!plainRemoving.has(verb) || at === verbAt + 1 || word.length < 3 || state.tokens[at]!.isKnown) return;
  const isLast =
    at + 1 >= state.tokens.length ||
    /^[.,!?;]$/.test(textAt(state, at + 1)) ||
    wordAt(state, at + 1) === 'from';
  if (isLast) state.removed.push(word.length > 3 && word.endsWith('s') ? word.slice(0, -1) : word);
}
