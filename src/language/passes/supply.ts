import { isAlwaysOn } from '#catalog/appliances.ts';
import { type State, type Thing, textAt, wordAt } from '../state.ts';
import { list } from '../words/list.ts';

const through = list('on through thru via off by from using into with to');
const doing = list(`
  run runs handle running power powering start drive feed take enough cope ok okay fine alright do for
  operate
`);

/** Which loads go through the inverter: mains things, and what is said to run on it. "All 12 V" says that none does. */
export function supply(state: State): void {
  const loads = state.things.filter(one => one.kind === 'load' && !one.isDropped);
  if (loads.length === 0) return;
  const isAllDc = all12v(state) || state.cues.has('starter');
  for (const one of loads) {
    const before = wordAt(state, one.at - 1);
    if (before === 'ac' || before === 'mains' || before === '240v') one.isAc = true;
    const at12 = state.quantities.find(
      q => q.unit.dimension === 'voltage' && (q.at === one.at - 1 || q.at === one.at - 2) && q.value <= 48,
    );
    if (at12 || before === 'dc' || isAllDc) one.isDc = true;
  }
  for (const inverter of state.things)
    if (inverter.kind === 'inverter' && !inverter.isDropped) ofInverter(state, inverter, loads);
}

function all12v(state: State): boolean {
  for (const q of state.quantities) {
    if (q.unit.dimension !== 'voltage' || q.value > 48) continue;
    const before = wordAt(state, q.at - 1);
    if (
      before === 'all' ||
      before === 'both' ||
      (/^(is|are|on|runs|run)$/.test(before) && /^(all|everything|both|its)$/.test(wordAt(state, q.at - 2)))
    )
      return true;
  }
  return state.tokens.some((_, i) => wordAt(state, i) === 'all' && wordAt(state, i + 1) === 'dc');
}

/** "… on the inverter": the loads just before; "600 W inverter run a …": the loads behind. */
function ofInverter(state: State, inverter: Thing, loads: readonly Thing[]): void {
  let lead = inverter.at - 1;
  while (
    lead > inverter.at - 6 &&
    lead >= 0 &&
    !through.has(wordAt(state, lead)) &&
    (state.tokens[lead]!.kind !== 'word' ||
      /^(a|an|the|my|our|it|its|this|that|small|big|little|cheap|volt|watt|pure|modified|sine|wave)$/.test(
        wordAt(state, lead),
      ))
  )
    lead--;
  const before = loads.filter(one => one.at < inverter.at);
  if (before.length > 0 && through.has(wordAt(state, lead))) {
    for (const one of before)
      if (
        state.sentences[one.at] === state.sentences[inverter.at] &&
        (one.powerW > 0 || one.appliance?.supply === 'ac' || before.length === 1) &&
        (one === before.at(-1) || isJoined(state, one, before.at(-1)!))
      )
        one.isAc = true;
    return;
  }
  const next = loads.filter(one => one.at > inverter.at);
  const isRunning = next.length > 0 && hasDoing(state, inverter.end, next[0]!.at);
  if (
    isRunning ||
    ((state.cues.has('question-mark') || state.cues.has('ask-can-it')) &&
      !state.cues.has('rig') &&
      loads.length <= 2 &&
      !state.things.some(one => one.kind === 'solar'))
  )
    for (const one of next.length > 0 ? next : before)
      if (one.powerW > 0 && !isAlwaysOn(one.appliance)) one.isAc = true;
}

const isJoined = (state: State, a: Thing, b: Thing): boolean => {
  for (let i = a.end; i < b.at; i++) if (/^(and|plus|n|,|\+|&)$/.test(textAt(state, i))) return true;
  return false;
};

const hasDoing = (state: State, from: number, to: number): boolean => {
  for (let i = from; i < to; i++) if (doing.has(wordAt(state, i))) return true;
  return false;
};
