import type { State } from '../decide/state.ts';
import type { Mention } from '../recognise/mention.ts';
import { speakers } from '../words/en/people.ts';
import * as slot from './slots.ts';

/** One role that a mention may play: the slot, whose it is, and which of the mention's values is meant. */
export interface Candidate {
  readonly slot: number;
  /** Mention of the owner; `self`, `all`, `nobody`. */
  readonly owner: number;
  /** Which variant of the value; −1: the plain one. */
  readonly variant: number;
  readonly value: number;
}

export const nobody = -1;
export const self = -2;
export const all = -3;
/** The writer, as the owner of a claim, where no word for them stands near. */
export const writer = -4;

const mostOwners = 3;

/** Owners on both sides, the nearest first, a few of each side. */
function nearest(of: readonly number[], at: number, most = mostOwners): number[] {
  const left = of
    .filter(i => i < at)
    .slice(-most)
    .reverse();
  const right = of.filter(i => i > at).slice(0, most);
  return [...left, ...right];
}

const isPerson = (m: Mention): boolean =>
  m.kind === 'person' ||
  m.kind === 'noun' ||
  (m.kind === 'word' && speakers.has(m.text)) ||
  (m.kind === 'place' && !m.text.includes(' ')) ||
  (m.kind === 'word' && (m.cls === '?' || (m.cls.startsWith('c') && /^c\d/.test(m.cls)))) ||
  (m.kind === 'word' && (m.text === 'he' || m.text === 'she' || m.text === 'they')) ||
  (m.kind === 'thing' && !m.text.includes(' ') && m.cls === 'thing?');

/** A word before a verb of saying or a colon: somebody, whatever it is called. */
const isSpeaker = (mentions: readonly Mention[], i: number): boolean => {
  const m = mentions[i]!;
  const next = mentions[i + 1];
  return (
    m.kind !== 'sign' &&
    m.kind !== 'amount' &&
    m.kind !== 'number' &&
    next !== undefined &&
    ((next.kind === 'word' && surelySaid.has(next.text)) ||
      (next.text === ':' && (m.kind === 'sky' || m.kind === 'word')))
  );
};
const surelySaid: ReadonlySet<string> = new Set(
  'says said sez reckons reckoned thinks claims claimed swears bets insists argues guesses believes figures'.split(
    ' ',
  ),
);
const claimReach = 12;

/** Who may claim the amount at `at`. */
function claimants(mentions: readonly Mention[], at: number): number[] {
  const out: number[] = [];
  for (let i = at - 1, n = 0; i >= 0 && i >= at - claimReach && n < 4; i--)
    if (isPerson(mentions[i]!) || isSpeaker(mentions, i)) {
      out.push(i);
      n++;
    }
  for (let i = at + 1, n = 0; i < mentions.length && i <= at + 6 && n < 2; i++)
    if (isPerson(mentions[i]!) || isSpeaker(mentions, i)) {
      out.push(i);
      n++;
    }
  return out;
}

/** What may own a count: a load, panels, batteries. */
function counted(state: State, at: number): number[] {
  const { mentions } = state;
  const out: number[] = [];
  for (let i = Math.max(0, at - 6); i < Math.min(mentions.length, at + 8); i++) {
    const m = mentions[i]!;
    const s = state.slots[i]!;
    if (
      s === slot.load ||
      s === slot.loadCurrent ||
      s === slot.loadPower ||
      s === slot.capacity ||
      s === slot.batteryEnergy ||
      s === slot.solarPower ||
      m.kind === 'chemistry' ||
      m.kind === 'battery' ||
      m.kind === 'solar' ||
      m.kind === 'role'
    ) {
      if ((s === slot.loadCurrent || s === slot.loadPower) && state.owners[i] !== self) continue;
      if (i !== at) out.push(i);
    }
  }
  return nearest(out, at);
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

/** Slots that a battery owns: their owners are known only after the batteries are. */
export const ofBattery: ReadonlySet<number> = new Set([
  slot.batteryChemistry,
  slot.batteryRole,
  slot.batteryVolts,
  slot.batteryLevel,
  slot.batteryUsedShare,
  slot.batteryAge,
  slot.batteryLimit,
]);

/** All roles that the mention at `at` may play, given what is decided already. The first is always "none". */
export function candidatesOf(state: State, at: number): Candidate[] {
  const { mentions } = state;
  const m = mentions[at]!;
  const out: Candidate[] = [{ slot: slot.none, owner: nobody, variant: -1, value: Number.NaN }];
  const isEarly = slot.turnOf(m) < 5;
  for (const s of slot.slotsOf(m)) {
    const row = slot.slots[s]!;
    const values: (readonly [variant: number, value: number])[] = [];
    const offer = (variant: number, raw: number): void => {
      if (inRange(row, raw)) values.push([variant, row.from ? row.from(raw) : raw]);
    };
    if (m.kind === 'mount' && s === slot.batteryLevel) {
      if (m.key === 'flat') values.push([-1, 0]);
    } else if (m.kind === 'clock') {
      if (s === slot.until) values.push([-1, m.value]);
      else
        m.variants.forEach((v, i) => {
          offer(i, v.value);
        });
    } else if (m.kind === 'amount' || m.kind === 'number') {
      const time = m.otherDimension === 'time' && slot.slots[s]!.group !== 'cable';
      if (m.kind === 'number' && m.told > 0 && m.told < 1 && shares.has(s)) {
        offer(-1, m.told * 100);
      } else if (m.kind === 'number' && s === slot.ambient) offer(-1, m.isNegative ? -m.told : m.told);
      else if (m.kind === 'number' && s === slot.duration) {
        offer(-1, m.told * 24);
        values.push([-2, m.told]);
      } else offer(-1, time ? m.told / 60 : m.value);
      m.variants.forEach((v, i) => {
        if (
          v.why === 'product' &&
          s !== slot.capacity &&
          s !== slot.loadPower &&
          s !== slot.solarPower &&
          s !== slot.loadCurrent
        )
          return;
        if (v.why === 'times' && s !== slot.loadMinutes && s !== slot.loadHours && s !== slot.loadOnce)
          return;
        offer(i, v.value);
      });
    } else if (m.kind === 'level' || m.kind === 'always') offer(-1, m.value);
    else values.push([-1, m.value]);
    if (values.length === 0) continue;
    const put = (owner: number): void => {
      for (const [variant, value] of values) out.push({ slot: s, owner, variant, value });
    };
    if (s === slot.same) {
      if (state.hasLoadLike(at)) put(nobody);
    } else if (!row.owner) put(row.isMaker ? self : nobody);
    else if (row.owner === 'load') {
      const owners = nearest(state.loads(), at);
      for (const owner of owners) if (!state.isTaken(owner, s)) put(owner);
      if (row.isMaker || (owners.length === 0 && state.hasTalk && row.group === 'hours')) put(self);
      if (row.forAll && state.loads().length > 1) put(all);
    } else if (row.owner === 'battery') {
      if (isEarly) put(nobody);
      else {
        const anchors = state.batteries();
        for (const owner of nearest(anchors, at)) if (!state.isTaken(owner, s)) put(owner);
        if (anchors.length === 0 || s === slot.batteryChemistry || s === slot.batteryRole) put(self);
        if (row.forAll && anchors.length > 1) put(all);
      }
    } else if (row.owner === 'solar') {
      const anchors = state.panels();
      for (const owner of nearest(anchors, at)) if (!state.isTaken(owner, s)) put(owner);
      if (anchors.length === 0) put(self);
      if (row.forAll && anchors.length > 1) put(all);
    } else if (row.owner === 'charger') {
      for (const owner of nearest(state.chargers(), at)) if (!state.isTaken(owner, s)) put(owner);
      put(self);
    } else if (row.owner === 'person') {
      if (s !== slot.claim && m.unit) continue;
      for (const owner of claimants(mentions, at)) put(owner);
      put(writer);
    } else
      for (const owner of counted(state, at))
        if (Number.isInteger(m.told) && !state.isTaken(owner, s)) put(owner);
  }
  return out;
}
