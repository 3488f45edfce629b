import * as slot from '../propose/slots.ts';
import { alike, all, pair, pairBefore, self, writer } from '../propose/whose.ts';
import type { Mention } from '../recognise/mention.ts';
import { nicknames } from '../words/en/common.ts';
import { speakers } from '../words/en/people.ts';
import { attributes, named, plain, taken } from './fact-table.ts';
import type { State } from './state.ts';

type Row = Record<string, unknown>;
const lists = ['loads', 'batteries', 'solar', 'chargers'] as const;
type List = (typeof lists)[number];

/** What one message states, literally: the shape of the contract's `understood`. */
export interface Stated {
  loads?: Row[];
  batteries?: Row[];
  solar?: Row[];
  chargers?: Row[];
  claims?: { who: string; value: number; unit: string }[];
  inverter?: Row;
  cable?: Row;
  [key: string]: unknown;
}

const round = (value: number): number => Math.round(value * 1e6) / 1e6;
const hasName: ReadonlySet<string> = new Set([
  'thing',
  'noun',
  'inverter',
  'charger',
  'monitor',
  'regulator',
]);

/** Words for somebody, with a verb run into them or as an owner's. */
const pronouns: Readonly<Record<string, string>> = { your: 'you', hes: 'he', shes: 'she' };

/** Who a mention is, as claims name people: "i" for the writer. */
export const whoOf = (m: Mention | undefined): string =>
  !m || speakers.has(m.text) ? 'i' : ((Object.hasOwn(pronouns, m.text) ? pronouns[m.text] : m.raw) ?? m.text);

/** Nobody argues about the length of a millimetre cable: its area is meant. */
const claimUnit = (unit: string | undefined): string => (unit === 'mm' ? 'mm²' : (unit ?? ''));

/** What a load is called: as written, nicknames aside; one of many of them: "drone battery" of "two drone batteries". */
export const nameOf = (m: Mention): string => {
  if (m.kind === 'thing' && nicknames.has(m.text)) return m.key;
  const name = m.kind === 'noun' ? (m.raw ?? m.text) : m.text;
  return name.replace(/\b(batter|tell)ies$/, '$1y');
};

/** Energies and powers of claims in the units of the facts. */
const thousands: Readonly<Record<string, string>> = { kWh: 'Wh', kW: 'W' };

/** Names first, then by the letters. */
const byKey = (a: string, b: string): number =>
  a === b ? 0 : a === 'name' ? -1 : b === 'name' ? 1 : a < b ? -1 : 1;

/** A row with its keys in one order, in whatever order the mentions told them: what states the same looks the same. */
function inOrder<T extends Row>(row: T): T {
  const keys = Object.keys(row);
  let isSorted = true;
  for (let k = 1; k < keys.length && isSorted; k++) isSorted = byKey(keys[k - 1]!, keys[k]!) < 0;
  if (isSorted) return row;
  const out: Row = {};
  for (const key of keys.sort(byKey)) out[key] = row[key];
  return out as T;
}

const nowhere: ReadonlySet<number> = new Set();

/** Builds the facts of a decided state, entity by entity. */
class Assembly {
  readonly out: Stated = {};
  readonly #state: State;
  readonly #rows = new Map<number, Row>();
  readonly #loads: readonly number[];
  readonly #batteries: readonly number[];
  readonly #panels: readonly number[];

  constructor(state: State, onMains: ReadonlySet<number>, spokenOf: string | undefined) {
    this.#state = state;
    this.#loads = state.loads();
    this.#batteries = state.batteries();
    this.#panels = state.panels();
    for (const i of this.#loads) this.#loadAt(i, onMains.has(i), spokenOf);
    for (const i of this.#batteries) this.#add('batteries', i, {});
    for (const i of this.#panels) this.#add('solar', i, {});
    for (const i of state.chargers()) this.#add('chargers', i, { kind: this.#chargerAt(i) });
  }

  /** The kind of a charger: named, that of the nearest named one, or a mains one. */
  #chargerAt(i: number): string {
    const { slots, owners } = this.#state;
    const kindOf = (at: number): string | undefined => slot.chargerKinds[slots[at]!];
    if (owners[i] !== alike) return kindOf(i) ?? 'mains';
    let best: number | undefined;
    for (const at of this.#state.chargers())
      if (kindOf(at) && (best === undefined || Math.abs(at - i) < Math.abs(best - i))) best = at;
    return (best === undefined ? undefined : kindOf(best)) ?? 'mains';
  }

  #add(list: List, at: number, row: Row): Row {
    const rows = this.out[list] ?? [];
    rows.push(row);
    this.out[list] = rows;
    this.#rows.set(at, row);
    return row;
  }

  #loadAt(i: number, isOnMains: boolean, spokenOf: string | undefined): void {
    const m = this.#state.mentions[i]!;
    const name = hasName.has(m.kind)
      ? nameOf(m)
      : this.#state.owners[i] === alike
        ? this.#nameBefore(i)
        : spokenOf;
    this.#add('loads', i, { ...(name !== undefined && { name }), ...(isOnMains && { supply: 'ac' }) });
  }

  /** The name of the load told last before: "a 1200 W griddle or the 1700 W one". */
  #nameBefore(i: number): string | undefined {
    let name: string | undefined;
    for (const at of this.#loads) {
      const m = this.#state.mentions[at]!;
      if (at < i && hasName.has(m.kind)) name = nameOf(m);
    }
    return name;
  }

  #nearest(anchors: readonly number[], at: number): Row | undefined {
    let best: number | undefined;
    for (const a of anchors) if (best === undefined || Math.abs(a - at) < Math.abs(best - at)) best = a;
    return best === undefined ? undefined : this.#rows.get(best);
  }

  /** The row of a word that owns a count and has no row of its own: "two lithiums" counts what that word colours. */
  #rowOfWord(owner: number): Row | undefined {
    const { kind } = this.#state.mentions[owner]!;
    if (kind === 'solar') return this.#nearest(this.#panels, owner) ?? this.#add('solar', owner, {});
    if (kind !== 'chemistry' && kind !== 'battery' && kind !== 'role') return undefined;
    const to = this.#state.owners[owner]!;
    return (
      (to >= 0 ? this.#rows.get(to) : undefined) ??
      this.#nearest(this.#batteries, owner) ??
      this.#add('batteries', owner, {})
    );
  }

  #valueOf(s: number, i: number): unknown {
    if (s === slot.loadAverage) return true;
    const isWord = s === slot.batteryChemistry || s === slot.batteryRole || s === slot.solarController;
    return isWord ? this.#state.mentions[i]!.key : round(this.#state.values[i]!);
  }

  /** An attribute of an entity. */
  attribute(i: number, s: number, key: string): void {
    const owner = this.#state.owners[i]!;
    const told = this.#valueOf(s, i);
    if (owner === all || owner === pair) {
      const of = slot.slots[s]!.owner;
      const group =
        owner === pair
          ? (pairBefore(this.#loads, i) ?? [])
          : of === 'load'
            ? this.#loads
            : of === 'solar'
              ? this.#panels
              : this.#batteries;
      for (const at of group) {
        const row = this.#rows.get(at)!;
        row[key] ??= told;
      }
      return;
    }
    const own = owner === self || owner === alike ? i : owner;
    const row =
      own >= 0
        ? (this.#rows.get(own) ?? this.#rowOfWord(own))
        : (this.#nearest(this.#batteries, i) ?? this.#add('batteries', i, {}));
    if (!row) return;
    row[key] = told;
    const variant = this.#variantAt(i);
    if (variant?.why === 'product') row.count = variant.count;
  }

  #variantAt(i: number): Mention['variants'][number] | undefined {
    const variant = this.#state.variants[i]!;
    return variant >= 0 ? this.#state.mentions[i]!.variants[variant] : undefined;
  }

  /** A fact that stands by itself, in a group of its own ("cable") or on top. */
  fact(i: number, s: number, group: string, key: string): void {
    const value = round(this.#state.values[i]!);
    if (group === '') this.out[key] = value;
    else {
      const row = (this.out[group] as Row | undefined) ?? {};
      row[key] = value;
      if (s === slot.cableRound) row.isRoundTrip = true;
      this.out[group] = row;
    }
    if (taken[s]) this.out.voltsTaken = taken[s];
  }

  claim(i: number, s: number): void {
    const { mentions, owners } = this.#state;
    const m = mentions[i]!;
    const variant = this.#variantAt(i);
    const scale = m.told !== 0 && Number.isFinite(m.told) ? m.value / m.told : 1;
    // "Half full", "three quarters": shares of a charge, in per cent.
    const told = s === slot.claimPercent ? this.#state.values[i]! : variant ? variant.value / scale : m.told;
    const claims = this.out.claims ?? [];
    const unit =
      s !== slot.claim ? slot.slots[s]!.name.slice(6) : m.kind === 'number' ? '' : claimUnit(m.unit);
    const base = thousands[unit];
    claims.push({
      who: owners[i] === writer ? 'i' : whoOf(mentions[owners[i]!]),
      value: round((m.isNegative && m.dimension === 'temperature' ? -told : told) * (base ? 1000 : 1)),
      unit: base ?? unit,
    });
    this.out.claims = claims;
  }

  /** A fact that a word tells. */
  word(i: number, s: number): void {
    const m = this.#state.mentions[i]!;
    const { out } = this;
    const listed = (key: 'without' | 'removed', value: string): void => {
      const values = (out[key] as string[] | undefined) ?? [];
      out[key] = values.includes(value) ? values : [...values, value];
    };
    if (s === slot.shade) out.shade = m.key === '' ? true : m.key;
    else if (taken[s]) out.voltsTaken = taken[s];
    else if (s === slot.tripOne || s === slot.tripRound)
      out.cable = { ...out.cable, isRoundTrip: s === slot.tripRound };
    else if (named[s]) out[named[s]] = s === slot.place ? (m.raw ?? m.key) : m.key;
    else if (s === slot.without) listed('without', m.key);
    else if (s === slot.removed) listed('removed', m.text);
    else if (s === slot.inverterWave) out.inverter = { ...out.inverter, wave: m.key };
    else if (s === slot.alternatorSmart) out.alternator = 'smart';
    else if (s === slot.alternatorFixed) out.alternator = 'fixed';
  }

  /** An inverter that is only named is told all the same; a claim without a unit takes that of the others. */
  finish(): Stated {
    const { out } = this;
    const { mentions, slots } = this.#state;
    if (mentions.some((m, i) => m.kind === 'inverter' && slots[i] !== slot.load)) out.inverter ??= {};
    const unit = out.claims?.find(c => c.unit !== '')?.unit;
    if (unit) for (const c of out.claims!) if (c.unit === '') c.unit = unit;
    for (const list of lists) out[list] &&= out[list].map(inOrder);
    if (out.inverter) out.inverter = inOrder(out.inverter);
    if (out.cable) out.cable = inOrder(out.cable);
    return inOrder(out);
  }
}

/**
 * The facts that a decided state tells.
 * @param onMains loads (by their mentions) that run on mains
 * @param spokenOf the thing of the talk before that a figure without a name is of
 */
export function assemble(state: State, onMains: ReadonlySet<number> = nowhere, spokenOf?: string): Stated {
  const assembly = new Assembly(state, onMains, spokenOf);
  state.slots.forEach((s, i) => {
    if (s <= slot.same) return;
    const attribute = attributes[s];
    const fact = plain[s];
    if (attribute) assembly.attribute(i, s, attribute);
    else if (fact) assembly.fact(i, s, ...fact);
    else if (slot.claims.has(s)) assembly.claim(i, s);
    else assembly.word(i, s);
  });
  return assembly.finish();
}
