import { type Quantity, quantityAt, type State, wordAt } from '../state.ts';

/** Length, size and current of a cable. */
export function cable(state: State): void {
  const { cues, quantities, facts } = state;
  const found: NonNullable<typeof facts.cable> = {};
  for (const quantity of quantities) {
    if (quantity.taken) continue;
    const { unit, value } = quantity;
    if (unit.dimension === 'gauge') {
      found.awg = Math.round(value);
      quantity.taken = 'cable';
    } else if (unit.dimension === 'area') size(state, quantity, found);
    else if (unit.symbol === 'mm' || (unit.dimension === 'length' && value < 0.12 && unit.symbol !== 'm'))
      thickness(state, quantity, found);
    else if (unit.dimension === 'length' && isAltitude(state, quantity)) {
      facts.altitudeM = Math.round(value);
      quantity.taken = 'altitude';
    } else if (unit.dimension === 'length' && value > 0) {
      // Of two lengths the longer is the run ("0.5 m fuse lead, 6 m cable").
      if (found.lengthM === undefined || value > found.lengthM)
        found.lengthM = Math.round(value * 1000) / 1000;
      quantity.taken = 'cable';
    }
  }
  const hasSize = found.areaMm2 !== undefined || found.awg !== undefined || found.autoCableMm !== undefined;
  const sizes = quantities.filter(({ unit }) => unit.dimension === 'area' || unit.dimension === 'gauge');
  if (sizes.some(q => q.taken !== 'claim') && !state.conversion) cues.add('cable');
  const isCable =
    cues.has('cable') ||
    cues.has('ask-drop') ||
    hasSize ||
    sizes.length > 0 ||
    (found.lengthM !== undefined && (cues.has('ask-what-size') || state.cableA > 0 || state.dropPercent > 0));
  if (isCable || cues.has('fuse')) {
    const current = currentOf(state);
    if (current > 0) found.currentA = current;
  }
  if (state.dropPercent > 0) found.dropLimitPercent = state.dropPercent;
  if (found.lengthM !== undefined && isRound(state)) found.isRoundTrip = true;
  if (Object.keys(found).length > 0) facts.cable = found;
}

const isAltitude = (state: State, { at }: Quantity): boolean =>
  /^(altitude|elevation|asl|alt)$/.test(wordAt(state, at + 1)) ||
  (wordAt(state, at + 1) === 'above' && wordAt(state, at + 2) === 'sea') ||
  /^(altitude|elevation)$/.test(wordAt(state, at - 1)) ||
  /^(altitude|elevation)$/.test(wordAt(state, at - 2));

type Found = NonNullable<State['facts']['cable']>;

function size(state: State, quantity: Quantity, found: Found): void {
  quantity.taken = 'cable';
  // "is 6 mm the same as 6 mm²": the one in hand counts, and that is said first.
  if (found.areaMm2 === undefined && found.autoCableMm === undefined) found.areaMm2 = quantity.value;
  else if (found.autoCableMm === undefined && state.cues.has('auto-cable')) found.areaMm2 = quantity.value;
}

/** "6mm auto cable" is the outside; "6mm cable" alone is read as mm². */
function thickness(state: State, quantity: Quantity, found: Found): void {
  const mm = Math.round(quantity.value * 1e6) / 1e3;
  if (mm > 150) return;
  quantity.taken = 'cable';
  const isAuto = state.things.some(
    one => one.gear?.cues.includes('auto-cable') && Math.abs(one.at - quantity.at) <= 6,
  );
  if (isAuto) found.autoCableMm = mm;
  else found.areaMm2 ??= mm;
}

const isRound = (state: State): boolean => {
  for (let i = 0; i < state.tokens.length; i++) {
    const word = wordAt(state, i);
    if (
      word === 'return' ||
      word === 'loop' ||
      word === 'both' ||
      (word === 'round' && wordAt(state, i + 1) === 'trip') ||
      (word === 'there' && wordAt(state, i + 1) === 'and' && wordAt(state, i + 2) === 'back')
    )
      if (word !== 'both' || wordAt(state, i + 1) === 'ways') return !quantityAt(state, i)?.taken;
  }
  return false;
};

/** What flows: a current said of the cable, else that of the loads or the charger together. */
function currentOf(state: State): number {
  if (state.cableA > 0) return state.cableA;
  let sum = 0;
  for (const one of state.things)
    if (one.kind === 'load' && !one.isDropped && one.currentA > 0)
      sum += one.currentA * Math.max(1, one.count);
  if (sum > 0) return Math.round(sum * 1000) / 1000;
  return state.things.find(one => one.kind === 'charger' && one.currentA > 0)?.currentA ?? 0;
}
