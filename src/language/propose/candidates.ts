import { present } from '#basics/present.ts';
import type { State } from '../decide/state.ts';
import type { Mention } from '../recognise/mention.ts';
import { mayBeBare } from './bare-units.ts';
import { claimants, counted, isOfThem, nearest } from './owners.ts';
import { slotsOf, turnOf } from './roles.ts';
import * as slot from './slots.ts';
import { alike, all, nobody, pair, pairBefore, self, writer } from './whose.ts';

/** One role that a mention may play: the slot, whose it is, and which of the mention's values is meant. */
export interface Candidate {
  readonly slot: number;
  /** Mention of the owner; `self`, `all`, `nobody`. */
  readonly owner: number;
  /** Which variant of the value; −1: the plain one. */
  readonly variant: number;
  readonly value: number;
}

/** Slots in per cent that a fraction may fill: "half full", "three quarters of the time". */
const shares: ReadonlySet<number> = new Set([
  slot.batteryLevel,
  slot.batteryUsedShare,
  slot.target,
  slot.depth,
  slot.depthFloor,
  slot.loadDuty,
]);

const inRange = (s: slot.Slot, value: number): boolean =>
  !s.range || (value >= s.range[0] - 1e-9 && value <= s.range[1] + 1e-9);

/** A slot that a mention may fill, with the values that it may have in it; whose it is depends on what is decided. */
interface Offer {
  readonly slot: number;
  readonly variants: readonly number[];
  readonly values: readonly number[];
}

/** What a mention may be whatever is decided of the others. */
export interface Offers {
  readonly at: number;
  readonly list: readonly Offer[];
  /** Who may claim it. */
  readonly claimants: readonly number[];
  /** It may be the one size of batteries of several kinds: "AGM or lithium, both 100 Ah". */
  readonly isOfKinds: boolean;
}

const onlyOnce: ReadonlySet<number> = new Set([
  slot.capacity,
  slot.loadPower,
  slot.solarPower,
  slot.loadCurrent,
  slot.batteryVolts,
]);
const ofSpans: ReadonlySet<number> = new Set([
  slot.loadMinutes,
  slot.loadHours,
  slot.loadOnce,
  slot.duration,
]);

/** A month as a stay is told: 30 days. */
const hoursOfMonth = 720;

function offerOf(m: Mention, s: number): Offer {
  const row = present(slot.slots[s]);
  const variants: number[] = [];
  const values: number[] = [];
  const put = (variant: number, value: number): void => {
    variants.push(variant);
    values.push(value);
  };
  const offer = (variant: number, raw: number): void => {
    if (inRange(row, raw)) put(variant, row.from ? row.from(raw) : raw);
  };
  if (m.kind === 'mount' && s === slot.batteryLevel) {
    if (m.key === 'flat') put(-1, 0);
  } else if (m.kind === 'clock') {
    if (s === slot.until) put(-1, m.value);
    else
      m.variants.forEach((v, i) => {
        offer(i, v.value);
      });
  } else if (m.kind === 'amount' || m.kind === 'number') {
    const time = m.otherDimension === 'time' && row.group !== 'cable';
    // "4 mm" of a cable is its area, said short.
    const area = m.unit === 'mm' && s === slot.cableArea;
    if (m.kind === 'number' && m.told > 0 && m.told < 1 && (shares.has(s) || s === slot.claimPercent)) {
      offer(-1, m.told * 100);
    } else if (s === slot.loadDuty && m.dimension === 'time') offer(-1, Math.round(m.value * 1000) / 10);
    else if (s === slot.duration && m.unit === 'months') offer(-1, m.told * hoursOfMonth);
    else if (s === slot.ambient && m.dimension !== 'temperature') offer(-1, m.isNegative ? -m.told : m.told);
    else if (m.kind === 'number' && s === slot.duration) {
      offer(-1, m.told * 24);
      put(-2, m.told);
    } else offer(-1, time ? m.told / 60 : area ? m.told : m.value);
    m.variants.forEach((v, i) => {
      if (v.why === 'product' && !onlyOnce.has(s)) return;
      if (v.why === 'share' && s !== slot.claim) return;
      if (v.why === 'sum' && !ofSpans.has(s) && s !== slot.driving) return;
      if ((v.why === 'times' || (v.why === 'span' && m.kind === 'number')) && !ofSpans.has(s)) return;
      offer(i, v.value);
    });
  } else if (m.kind === 'level' || m.kind === 'always') offer(-1, m.value);
  else put(-1, m.value);
  return { slot: s, variants, values };
}

/** How many kinds of batteries are named. */
const chemistriesOf = (mentions: readonly Mention[]): number => {
  const kinds = new Set<string>();
  for (const m of mentions) if (m.kind === 'chemistry') kinds.add(m.key);
  return kinds.size;
};

/** Everything that the mention at `at` may be. */
export function offersOf(mentions: readonly Mention[], at: number): Offers {
  const m = present(mentions[at]);
  const list: Offer[] = [];
  let isClaim = false;
  for (const s of slotsOf(m)) {
    const isPersons = present(slot.slots[s]).owner === 'person';
    if (isPersons && s !== slot.claim && m.unit) continue;
    if (!mayBeBare(s, mentions, at)) continue;
    const offer = offerOf(m, s);
    if (offer.values.length === 0) continue;
    list.push(offer);
    isClaim ||= isPersons;
  }
  const isOfKinds = list.some(offer => offer.slot === slot.capacity) && chemistriesOf(mentions) > 1;
  return { at, list, claimants: isClaim ? claimants(mentions, at) : [], isOfKinds };
}

/** Candidates side by side, in lists that are used over and over. */
export class Candidates {
  readonly slots: number[] = [];
  readonly owners: number[] = [];
  readonly variants: number[] = [];
  readonly values: number[] = [];
  count = 0;

  put(offer: Offer, owner: number): void {
    for (let k = 0; k < offer.values.length; k++) {
      const at = this.count++;
      this.slots[at] = offer.slot;
      this.owners[at] = owner;
      this.variants[at] = offer.variants[k]!;
      this.values[at] = offer.values[k]!;
    }
  }

  /** For each of the owners that have no such slot filled yet. */
  putFree(state: State, offer: Offer, owners: readonly number[]): void {
    for (const owner of owners) if (!state.isTaken(owner, offer.slot)) this.put(offer, owner);
  }
}

/** What a turn may tell of the thing last spoken of, which it doesn't name: "40 percent of the time", "starts at 1900 W". */
const ofSpokenOf: ReadonlySet<number> = new Set([
  slot.loadHours,
  slot.loadMinutes,
  slot.loadOnce,
  slot.loadDuty,
  slot.loadAverage,
  slot.loadStart,
]);

/** Volts or a length in the same message are what such a word tells of: then it is no answer by itself. */
function isOpen(state: State, s: number): boolean {
  const isTrip = s === slot.tripOne || s === slot.tripRound;
  const others = isTrip
    ? [slot.tripOne, slot.tripRound]
    : [slot.takenRest, slot.takenLoad, slot.takenCharging];
  const dimension = isTrip ? 'length' : 'voltage';
  return (
    !others.some(o => state.has(o)) &&
    !state.mentions.some(m => m.dimension === dimension || m.otherDimension === dimension)
  );
}

const nothing: Offer = { slot: slot.none, variants: [-1], values: [Number.NaN] };

/** Puts all roles that a mention may play, given what is decided already, into `out`. The first is always "none". */
export function propose(
  state: State,
  { at, list, claimants: people, isOfKinds }: Offers,
  out: Candidates,
): void {
  const m = present(state.mentions[at]);
  const isEarly = turnOf(m) < 5;
  const near: Partial<Record<slot.OwnerKind, readonly number[]>> = {};
  out.count = 0;
  out.put(nothing, nobody);
  for (const offer of list) {
    const s = offer.slot;
    const row = present(slot.slots[s]);
    if (s === slot.same) {
      if (state.hasLoadLike(at)) out.put(offer, nobody);
    } else if (s === slot.batteryCount || s === slot.panelCount) {
      near.counted ??= counted(state, at);
      if (near.counted.length === 0 && Number.isInteger(m.told)) out.put(offer, self);
    } else if (row.group === 'taken') {
      if (!state.has(s) && isOpen(state, s)) out.put(offer, nobody);
    } else if (!row.owner) {
      out.put(offer, row.isMaker ? self : nobody);
      if (s === slot.capacity && isOfKinds) out.put(offer, all);
      // "640 Wh, 50 Ah": one battery, told both ways.
      if (s === slot.capacity || s === slot.batteryEnergy) {
        near.battery ??= nearest(state.batteries(), at);
        out.putFree(state, offer, near.battery);
      }
    } else if (row.owner === 'load') {
      near.load ??= nearest(state.loads(), at);
      out.putFree(state, offer, near.load);
      if (row.isMaker && near.load.some(o => o < at && state.isTaken(o, s))) out.put(offer, alike);
      if (row.isMaker || (near.load.length === 0 && state.lean === 'thing' && ofSpokenOf.has(s)))
        out.put(offer, self);
      if (row.forAll && state.loads().length > 1) {
        out.put(offer, all);
        if (state.loads().length > 2 && pairBefore(state.loads(), at)) out.put(offer, pair);
      }
    } else if (row.owner === 'battery') {
      if (isEarly) {
        out.put(offer, nobody);
        // "Both half full".
        if (row.forAll && state.batteries().length > 1) out.put(offer, all);
        continue;
      }
      near.battery ??= nearest(state.batteries(), at);
      out.putFree(state, offer, near.battery);
      if (state.batteries().length === 0 || s === slot.batteryChemistry || s === slot.batteryRole)
        out.put(offer, self);
      if (row.forAll && state.batteries().length > 1) out.put(offer, all);
    } else if (row.owner === 'solar') {
      near.solar ??= nearest(state.panels(), at);
      out.putFree(state, offer, near.solar);
      if (state.panels().length === 0) out.put(offer, self);
      if (row.forAll && state.panels().length > 1) out.put(offer, all);
    } else if (row.owner === 'charger') {
      near.charger ??= nearest(state.chargers(), at);
      out.putFree(state, offer, near.charger);
      out.put(offer, self);
      if (near.charger.some(o => state.isTaken(o, s))) out.put(offer, alike);
    } else if (row.owner === 'person') {
      for (const owner of people) out.put(offer, owner);
      out.put(offer, writer);
    } else if (Number.isInteger(m.told)) {
      near.counted ??= counted(state, at);
      out.putFree(state, offer, near.counted);
      // "Two bikes?", "3 of them": as many of the thing last spoken of, which the turn doesn't name.
      if (state.lean === 'thing' && (near.counted.length === 0 || isOfThem(state.mentions, at)))
        out.put(offer, self);
    }
  }
}

/** All roles that the mention at `at` may play, one by one. */
export function candidatesOf(state: State, at: number): Candidate[] {
  const list = new Candidates();
  propose(state, offersOf(state.mentions, at), list);
  return Array.from({ length: list.count }, (_, k) => ({
    slot: list.slots[k]!,
    owner: list.owners[k]!,
    variant: list.variants[k]!,
    value: list.values[k]!,
  }));
}
