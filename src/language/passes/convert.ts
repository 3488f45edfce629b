import { fromBase } from '#quantity/quantity.ts';
import type { Unit } from '#quantity/units.ts';
import { type Quantity, quantityAt, type State, textAt, wordAt } from '../state.ts';
import { list } from '../words/list.ts';
import { unitLexicon } from './unit-words.ts';

const convertible = list(`
  current charge power energy voltage length area gauge temperature resistance time distance
`);

/** "what is 60 W in amps", "how many watts is 5 A at 12 V", "60W/12V", "25 feet in metres". */
export function convert(state: State): void {
  const free = state.quantities.filter(q => !q.taken && convertible.has(q.unit.dimension) && q.per !== 'day');
  const values = free.filter(q => q.unit.dimension !== 'voltage' && q.unit.dimension !== 'time');
  const bridge = free.find(q => q.unit.dimension === 'voltage');
  if (values.length > 2 || free.length === 0) return;
  if (state.quantities.some(q => q.unit.dimension === 'sun' || q.count > 1)) return;
  const asked = askedUnit(state);
  const hasThing = state.things.some(
    one =>
      !one.isDropped &&
      one.kind !== 'other' &&
      !(one.kind === 'battery' && !one.gear?.role) &&
      one.kind !== 'cable' &&
      one.kind !== 'fuse',
  );
  const value = values[0] ?? (asked ? (free.find(q => q !== bridge) ?? bridge) : undefined);
  if (!value) return;
  if (asked) {
    if (asked.unit.symbol === value.unit.symbol && asked.unit.dimension === value.unit.dimension) return;
    if (asked.how === 'many' && (hasThing || value.unit.dimension === 'time')) return;
    if (asked.how === 'many' && !isEquated(state, value)) return;
    if (values.length > 1 && !(asked.how === 'in')) return;
    if (state.claims.length > 0 && asked.how === 'many') return;
    if (hasThing && asked.how === 'in' && !state.cues.has('ask-what-is') && state.cues.has('ask-how-long'))
      return;
    make(state, value, asked.unit, bridge);
    return;
  }
  if (hasThing || values.length !== 1 || !bridge) return;
  // "60W/12V": nothing but a quotient of the two
  if (textAt(state, value.at + 1) === '/' && quantityAt(state, value.at + 2) === bridge)
    make(state, value, undefined, bridge);
}

interface Asked {
  readonly unit: Unit;
  readonly how: 'in' | 'many';
}

function askedUnit(state: State): Asked | undefined {
  let many: Asked | undefined;
  for (let i = 0; i < state.tokens.length; i++) {
    const word = textAt(state, i);
    const isIn = word === 'in' || word === 'to' || word === 'into' || word === 'as';
    const isMany =
      (word === 'many' && wordAt(state, i - 1) === 'how') ||
      ((word === 'what' || word === 'whats') && wordAt(state, i + 1) !== 'a');
    const isEqual = word === '=' && textAt(state, i + 1) !== '';
    if (!isIn && !isMany && !isEqual) continue;
    let next = i + 1;
    if (textAt(state, next) === '?') next++;
    const found = unitLexicon.find(state, next);
    if (!found || !convertible.has(found.value.dimension)) continue;
    if (
      isIn &&
      (found.value.dimension === 'time' ||
        (/^(a|the|in|c|s|d)$/.test(wordAt(state, next)) &&
          state.tokens[next]!.raw !== state.tokens[next]!.raw.toUpperCase()))
    )
      continue;
    if (isIn && quantityAt(state, i - 1) === undefined && !isBehind(state, i)) continue;
    if (isIn || isEqual) return { unit: found.value, how: 'in' };
    if (found.value.dimension !== 'time') many ??= { unit: found.value, how: 'many' };
  }
  return many;
}

/** "60 W at 12 V in amps", "a 50 Ah battery in Wh". */
const isBehind = (state: State, at: number): boolean => {
  for (let i = at - 1; i >= Math.max(0, at - 6); i--) if (quantityAt(state, i)) return true;
  return false;
};

/** "how many amps IS 60 W", "60 W IS how many amps", "how many Wh IN 150 Ah". */
function isEquated(state: State, value: Quantity): boolean {
  for (let i = value.at - 1; i >= value.at - 4; i--)
    if (/^(is|in|are|=|equals|equal|make|makes|does|do|would|will|for|s)$/.test(textAt(state, i)))
      return !/^(run|last|use|fridge|draw)$/.test(wordAt(state, value.at + 1));
  for (let i = value.at + 1; i < state.tokens.length; i++)
    if (/^(is|=|equals|are|makes|gives|be)$/.test(textAt(state, i))) return true;
  return wordAt(state, value.at + 1) === 'how' || textAt(state, value.at + 1) === ',';
}

function make(state: State, value: Quantity, to: Unit | undefined, bridge: Quantity | undefined): void {
  value.taken = 'convert';
  const hours = state.quantities.find(q => q !== value && q.unit.dimension === 'time' && !q.taken);
  if (hours) hours.taken = 'convert';
  if (bridge && bridge !== value) bridge.taken = 'convert';
  const voltageV = bridge && bridge !== value ? bridge.value : bareVolts(state);
  state.conversion = {
    value: Math.round(fromBase(value.value, value.unit) * 1e6) / 1e6,
    unit: value.unit.symbol,
    ...(to ? { to: to.symbol } : {}),
    ...(voltageV ? { voltageV } : {}),
    ...(hours ? { hours: hours.value } : {}),
  };
}

/** "2000 watts on 240": volts without the unit. */
function bareVolts(state: State): number | undefined {
  for (let i = 1; i < state.tokens.length; i++) {
    const token = state.tokens[i]!;
    if (token.kind !== 'number' || !/^(on|at)$/.test(wordAt(state, i - 1)) || !usualVolts.has(token.value))
      continue;
    token.isKnown = true;
    return token.value;
  }
  return undefined;
}

const usualVolts = new Set([12, 24, 48, 110, 115, 120, 220, 230, 240]);
