import { type Quantity, quantityAt, type State, textAt, wordAt } from '../state.ts';

const isDrive = (word: string): boolean =>
  word.startsWith('driv') || word === 'drove' || word === 'road' || word === 'engine' || word === 'motoring';

/** Hours driven: "2h driving", "drive 3 hours a day", "an hour's drive". */
export function driving(state: State): void {
  const { facts, quantities, cues } = state;
  if (!cues.has('drive') || facts.drivingPlanH) return;
  for (const quantity of quantities) {
    if (
      quantity.taken ||
      quantity.unit.dimension !== 'time' ||
      quantity.unit.factor > 1 ||
      quantity.value > 24 ||
      !isBeside(state, quantity)
    )
      continue;
    quantity.taken = 'drive';
    if (isChoice(state, quantity)) continue;
    // "three days at the beach, then an hour's drive": after the days asked about, not on each of them.
    if (wordAt(state, quantity.at - 1) === 'then') continue;
    facts.drivingHoursPerDay ??= quantity.value;
    const campedDays = quantity.per === '' ? campedAfter(state, quantity) : 0;
    if (campedDays > 0) facts.drivingPlanH = [quantity.value, ...new Array<number>(campedDays).fill(0)];
  }
}

function isBeside(state: State, { at }: Quantity): boolean {
  const segment = state.segments[at];
  for (let i = at + 1; i <= at + 3; i++)
    if (isDrive(wordAt(state, i)) && state.segments[i]! - segment! <= 0) return true;
  for (let i = at + 1; i <= at + 2; i++)
    if (isDrive(wordAt(state, i)) && /^(of|a|on|s)$/.test(textAt(state, at + 1))) return true;
  for (let i = at - 1; i >= at - 5; i--)
    if (
      isDrive(wordAt(state, i)) &&
      (state.segments[i] === segment || /^(for|about)$/.test(wordAt(state, at - 1)))
    )
      return !/^(long|many|of)$/.test(wordAt(state, at - 1));
  return false;
}

/** "2 or 4 hours?" asks, it tells nothing. */
const isChoice = (state: State, quantity: Quantity): boolean =>
  quantity.isRange && /\bor\b/.test(state.tokens[quantity.at]!.raw);

const mostCampedDays = 59;
const soon = 8;

/** "drive 4 hrs, camp 3 days": for how many days one stays after the drive. */
function campedAfter(state: State, { at }: Quantity): number {
  for (let i = at + 1; i < at + soon; i++) {
    const quantity = quantityAt(state, i);
    if (!quantity) {
      if (/^(daily|each|every|per)$/.test(wordAt(state, i))) return 0;
      continue;
    }
    const lead = [wordAt(state, i - 1), wordAt(state, i - 2)];
    const isCamp = lead.some(word => /^(camp|camped|camping|stay|staying|park|parked|sit|stop)$/.test(word));
    if (!isCamp || quantity.unit.dimension !== 'time' || quantity.unit.factor < 24) return 0;
    return Math.min(mostCampedDays, Math.round(quantity.value / 24));
  }
  return 0;
}
