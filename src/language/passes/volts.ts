import { type Quantity, quantityAt, type State, type Thing, textAt, wordAt } from '../state.ts';
import { list } from '../words/list.ts';

/** Voltages of systems and batteries, as against what a meter reads. */
const nominal = new Set([2, 3.2, 5, 6, 8, 12, 12.8, 24, 25.6, 36, 48, 51.2]);
const readWords = list(`
  reads reading read says say shows showing sitting sits sittin sat measured measures voltage got gets at
  its is resting rested rest display multimeter meter gauge monitor down dropped settled only now still
  see seeing
`);
const mainsFrom = 90;

/** Nominal volts of gear, mains, and a voltage read off a battery with how it was taken. */
export function volts(state: State): void {
  for (const quantity of state.quantities)
    if (quantity.unit.dimension === 'voltage' && !quantity.taken) sort(state, quantity);
  if (state.facts.volts === undefined) bare(state);
  if (state.facts.volts !== undefined || state.context.lastIntent === 'charge-level') taken(state);
}

function sort(state: State, quantity: Quantity): void {
  const { facts } = state;
  const { at, value } = quantity;
  quantity.taken = 'volts';
  const next = wordAt(state, at + 1);
  if (value >= mainsFrom) {
    mains(state, quantity);
    return;
  }
  if (value <= 0) return;
  if (/^(fixed|constant|steady|holds|always)$/.test(wordAt(state, at - 1)) && value > 13 && value < 15.5)
    facts.alternator ??= 'fixed';
  if (isReading(state, quantity)) {
    facts.volts ??= value;
    return;
  }
  const ofCharger = state.things.some(one => one.kind === 'charger' && one.at === at + 1);
  if (ofCharger && (value === 24 || value === 48)) state.facts.systemVoltageV ??= value;
  if (/^(system|setup|electrics|circuit|bank|rig|house|van|truck|network)$/.test(next) || value >= 24) {
    if (nominal.has(value) && value >= 12 && !ofThing(state, quantity) && !/^(cpap|charger)$/.test(next))
      facts.systemVoltageV ??= Math.round(value / 12) * 12;
  }
  const battery = ofBattery(state, quantity);
  if (battery && nominal.has(value)) battery.voltageV = value;
}

/** "12.2 V": read off a battery where it has a decimal and no size stands beside, or the words say so. */
function isReading(state: State, { at, value, unit }: Quantity): boolean {
  const { cues } = state;
  if (unit.symbol !== 'V') return false;
  if (
    cues.has('ask-drop') ||
    cues.has('cable') ||
    /^(fixed|alternator|float|absorption|cut|cutoff)$/.test(wordAt(state, at - 1)) ||
    (cues.has('alternator') && !cues.has('ask-charge-level') && !cues.has('on-charge'))
  )
    return false;
  const multiple = value > 32 ? 48 : value > 18 ? 24 : 12;
  if (value < 0.6 * multiple || value > 1.35 * multiple) return false;
  const isDecimal = /\d[.,٫]\d/.test(state.tokens[at]!.raw);
  const talks =
    cues.has('ask-charge-level') ||
    cues.has('rest-reading') ||
    cues.has('on-charge') ||
    cues.has('under-load') ||
    cues.has('flat-battery');
  const isRead = isReadBefore(state, at);
  if (isDecimal) {
    const isOfSize =
      nominal.has(value) && value !== 12 && quantityAt(state, at + 1)?.unit.dimension === 'charge';
    const isBridge =
      quantityAt(state, at - 2)?.unit.dimension === 'power' ||
      quantityAt(state, at - 2)?.unit.dimension === 'charge';
    return !isOfSize && !isBridge && (talks || isRead || state.things.some(one => one.kind === 'battery'));
  }
  return isRead && talks && !nominal.has(value)
    ? true
    : talks &&
        (isRead || value === 13 || value === 14) &&
        !['battery', 'fridge', 'system', 'bank', 'setup'].includes(wordAt(state, at + 1)) &&
        quantityAt(state, at + 1) === undefined &&
        value !== 24;
}

const isReadBefore = (state: State, at: number): boolean => {
  for (let i = at - 1; i >= at - 3 && i >= 0; i--)
    if (readWords.has(wordAt(state, i)) || textAt(state, i) === ':') return true;
  return false;
};

/** The thing that the voltage stands before: "12v fridge", "24 v inverter". */
const ofThing = (state: State, { at }: Quantity): Thing | undefined =>
  state.things.find(
    one =>
      one.kind !== 'battery' &&
      (one.at === at + 1 || (one.at === at + 2 && wordAt(state, at + 1) !== '')) &&
      one.kind !== 'inverter',
  );

function ofBattery(state: State, { at }: Quantity): Thing | undefined {
  const own = state.things.find(
    one =>
      one.kind === 'battery' &&
      !one.isDropped &&
      one.at >= at &&
      one.at - at <= 4 &&
      state.segments[one.at] === state.segments[at],
  );
  if (own && !state.things.some(one => one.kind !== 'battery' && one.at > at && one.at < own.at)) return own;
  const after = quantityAt(state, at + 1) ?? (wordAt(state, at + 1) === '' ? undefined : undefined);
  if (after?.taken === 'battery')
    return state.things.find(one => one.kind === 'battery' && !one.isDropped && one.chargeAh === after.value);
  const before = state.things.findLast(
    one =>
      one.kind === 'battery' &&
      !one.isDropped &&
      one.at < at &&
      at - one.end <= 3 &&
      state.segments[one.at] === state.segments[at],
  );
  return before;
}

/** "240v": what stands beside it runs on mains; "10 amps at 120 V" is then a power. */
function mains(state: State, quantity: Quantity): void {
  const { at, value } = quantity;
  state.cues.add('mains');
  const current =
    quantityAt(state, at - 2)?.unit.dimension === 'current'
      ? quantityAt(state, at - 2)
      : quantityAt(state, at - 1);
  const isAt =
    current?.unit.dimension === 'current' &&
    (quantityAt(state, at - 1) === current || /^(at|on|@|from|x|times)$/.test(textAt(state, at - 1)));
  for (const one of state.things) {
    if (one.isDropped) continue;
    if (isAt && one.kind === 'load' && one.currentA === current!.value && Math.abs(one.at - at) < 8) {
      one.powerW = Math.round(one.currentA * value * 100) / 100;
      one.currentA = 0;
      one.isAc = true;
      one.isInput = true;
    }
    if (
      one.kind === 'load' &&
      (one.at === at + 1 || one.at === at + 2) &&
      wordAt(state, at + 1) !== 'inverter'
    )
      one.isAc = true;
    if (
      one.kind === 'charger' &&
      !one.gear?.charger &&
      (one.at === at + 1 || (one.end <= at && at - one.end <= 3))
    )
      one.isAc = true;
  }
}

/** "12.5 on the old wet cell", "its at 12.4": volts without the unit. */
function bare(state: State): void {
  const { cues, tokens } = state;
  const talks =
    cues.has('ask-charge-level') ||
    cues.has('rest-reading') ||
    cues.has('on-charge') ||
    cues.has('under-load') ||
    cues.has('monitor') ||
    cues.has('volts') ||
    (cues.has('full') && state.quantities.length === 0) ||
    cues.has('flat-battery');
  if (!talks && !state.things.some(one => one.kind === 'battery')) return;
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i]!;
    if (
      token.kind !== 'number' ||
      token.isClock ||
      token.value < 9 ||
      token.value > 30 ||
      (token.value > 15.5 && token.value < 20)
    )
      continue;
    const isDecimal = token.text.includes('.');
    if (
      !isDecimal &&
      !(
        talks &&
        isReadBefore(state, i) &&
        token.value >= 11 &&
        token.value <= 15 &&
        cues.has('ask-charge-level')
      )
    )
      continue;
    if (!talks && !isOnBattery(state, i)) continue;
    state.facts.volts = token.value;
    token.isKnown = true;
    token.text = 'volts';
    return;
  }
}

/** "12.4 on the battery", "the battery's at 12.1": nothing else has so much. */
const isOnBattery = (state: State, at: number): boolean =>
  state.tokens[at]!.value >= 10.5 &&
  state.tokens[at]!.value <= 14.8 &&
  (isReadBefore(state, at) ||
    [1, 2, 3].some(
      step => wordAt(state, at + step) === 'on' && /^(the|my|our|a)$/.test(wordAt(state, at + step + 1)),
    ));

function taken(state: State): void {
  const { cues, facts } = state;
  const rest = cues.has('rest-reading');
  const load = cues.has('under-load');
  const isCharging = cues.has('on-charge') || (cues.has('drive') && !rest);
  if (isCharging && !rest) facts.voltsTaken = 'charging';
  else if (load && !rest) facts.voltsTaken = 'load';
  else if (rest) facts.voltsTaken = 'rest';
}
