import { fromBase } from '#quantity/quantity.ts';
import { Near } from '../near.ts';
import { type Quantity, type State, saidOf, spanOf } from '../state.ts';
import { vocabulary } from './vocabulary.ts';

/** What a number with this unit can at most be in a camp; above it something else is meant. */
const most: Readonly<Record<string, number>> = {
  current: 2000,
  charge: 20_000,
  power: 200_000,
  energy: 1_000_000,
  voltage: 1000,
  time: 24 * 400,
  length: 9000,
  area: 400,
  percent: 100,
};
/** Two ways of saying one energy may differ by so much. */
const tolerance = 1.4;
const nominalV = 12;

/** Values that can't be meant, and statements that can't both be true. */
export function problems(state: State): void {
  for (const quantity of state.quantities) {
    const { dimension } = quantity.unit;
    if (
      dimension === 'temperature' ||
      dimension === 'percent' ||
      dimension === 'gauge' ||
      dimension === 'other'
    )
      continue;
    if (
      quantity.value < 0 ||
      quantity.value > (most[dimension] ?? Number.POSITIVE_INFINITY) ||
      (quantity.value === 0 && dimension !== 'time' && dimension !== 'voltage' && dimension !== 'length')
    )
      absurd(state, quantity);
  }
  for (const quantity of state.quantities)
    if (quantity.isRange && !quantity.taken) ambiguous(state, quantity);
  contradiction(state);
  unknownUnits(state);
}

function absurd(state: State, quantity: Quantity): void {
  const isZeroBattery = quantity.value === 0 && quantity.unit.dimension === 'charge';
  state.issues.push({
    code: 'absurd-value',
    span: spanOf(state, quantity.at),
    data: { thing: quantity.unit.dimension, said: saidOf(state, quantity.at) },
  });
  if (!isZeroBattery && !quantity.taken) quantity.taken = 'absurd';
}

/** "2-3 days": the larger is taken, and said to be. */
function ambiguous(state: State, { at, value, low, unit }: Quantity): void {
  if (unit.dimension === 'percent' || unit.dimension === 'other') return;
  const said = saidOf(state, at);
  const written = (amount: number): string => `${Math.round(amount * 1000) / 1000} ${unit.symbol}`;
  const taken = written(fromBase(value, unit));
  state.issues.push({
    code: 'ambiguous',
    span: spanOf(state, at),
    data: { said, taken, other: written(low) },
  });
}

const nearUnits = new Near([
  'amps',
  'watts',
  'volts',
  'hours',
  'days',
  'minutes',
  'metres',
  'amphours',
  'litres',
]);

/** "fridge 12zamps": letters glued to a number beside a thing, that are no unit. */
function unknownUnits(state: State): void {
  if (state.things.length === 0) return;
  for (let i = 0; i + 1 < state.tokens.length; i++) {
    const word = state.tokens[i + 1]!;
    if (state.tokens[i]!.kind !== 'number' || word.kind !== 'word' || !word.isGlued || word.isKnown) continue;
    if (word.text.length < 2 || vocabulary.has(word.text)) continue;
    const near = nearUnits.find(word.text) ?? nearUnits.find(word.text.slice(1));
    state.issues.push({
      code: 'unknown-unit',
      span: spanOf(state, i, i + 2),
      data: { said: saidOf(state, i, i + 2), ...(near ? { near } : {}) },
    });
  }
}

/** "12 V … 100 Ah so that's 5 kWh". */
function contradiction(state: State): void {
  const charge = state.quantities.find(
    q => q.unit.dimension === 'charge' && q.per === '' && q.value > 0 && q.taken !== 'claim',
  );
  const energy = state.quantities.find(
    q => q.unit.dimension === 'energy' && q.per === '' && q.value > 0 && q.taken !== 'claim',
  );
  if (
    !charge ||
    !energy ||
    energy.at < charge.at ||
    state.sentences[charge.at] !== state.sentences[energy.at] ||
    state.conversion
  )
    return;
  const between = state.tokens.slice(charge.at + 1, energy.at).map(token => token.text);
  if (
    !between.some(text => /^(so|thats|is|=|equals|means|makes|or|which|ie)$/.test(text)) ||
    between.length > 6
  )
    return;
  const volts =
    state.quantities.find(q => q.unit.dimension === 'voltage' && q.value <= 60)?.value ?? nominalV;
  const expected = charge.value * volts;
  energy.taken = 'again';
  if (energy.value > expected * tolerance || energy.value < expected / tolerance)
    state.issues.push({
      code: 'contradiction',
      span: spanOf(state, charge.at, energy.at + 1),
      data: {
        first: saidOf(state, charge.at),
        second: saidOf(state, energy.at),
        expected: `${Math.round(expected)} Wh`,
      },
    });
}
