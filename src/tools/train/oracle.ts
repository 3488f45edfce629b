import { assemble, nameOf, whoOf } from '#language/decide/assemble.ts';
import type { Frame } from '#language/decide/frame.ts';
import { turnsOf } from '#language/decide/search.ts';
import { State } from '#language/decide/state.ts';
import { type Candidate, candidatesOf } from '#language/propose/candidates.ts';
import * as slot from '#language/propose/slots.ts';
import { all, nobody, alike as ofOneKind, pair, self } from '#language/propose/whose.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { areOfOneRow, areOneTime, compare, loose } from './compare.ts';

/** One decision of a derivation. */
export interface Step {
  readonly at: number;
  readonly slot: number;
  readonly owner: number;
  readonly variant: number;
}

type Row = Record<string, unknown>;
const words = (s: unknown): string[] => loose(s).split(' ').filter(Boolean);
const kinds = [
  'tv telly television',
  'fridge refrigerator icebox cooler coolbox freezer',
  'light lamp led strip lantern bulb globe',
  'phone mobile cell handset',
  'laptop computer notebook',
  'heater furnace',
  'kettle jug',
  'cpap bipap apnoea apnea',
  'nebuliser nebulizer',
  'ac aircon conditioner',
  'tasmania tassie',
  'husband hubby',
  'generator genny gennie genset gen',
  'i me myself we',
  'load thing stuff gear everything',
].map(row => new Set(row.split(' ')));
/** Names of one thing: as the scorer takes them, but by whole words. */
const alike = (a: unknown, b: unknown): boolean => {
  const [x, y] = [loose(a), loose(b)];
  if (x === '' || y === '') return false;
  if (x.includes(y) || y.includes(x) || areOfOneRow(x, y)) return true;
  const [p, q] = [words(a), words(b)];
  return kinds.some(set => p.some(w => set.has(w)) && q.some(w => set.has(w)));
};
const near = (a: number, b: unknown): boolean =>
  typeof b === 'number' && Math.abs(a - b) <= 0.011 * Math.max(1, Math.abs(b));
const listOf: Readonly<Record<string, string>> = {
  load: 'loads',
  battery: 'batteries',
  solar: 'solar',
  charger: 'chargers',
};

const fits = (rows: unknown, key: string, value: unknown): Row[] =>
  Array.isArray(rows)
    ? (rows as Row[]).filter(r =>
        typeof r[key] === 'number'
          ? near(value as number, r[key])
          : r[key] !== undefined && loose(r[key]) === loose(value),
      )
    : [];

/** Whether a candidate says something that the label says too. */
function isTold(
  mentions: readonly Mention[],
  at: number,
  c: Candidate,
  states: Row,
  spokenOf?: string,
): boolean {
  const m = mentions[at]!;
  const row = slot.slots[c.slot]!;
  const name = row.name;
  switch (c.slot) {
    case slot.load:
      return Array.isArray(states.loads) && (states.loads as Row[]).some(l => alike(nameOf(m), l.name));
    case slot.same:
      return true;
    case slot.removed:
      return Array.isArray(states.removed) && (states.removed as string[]).some(r => alike(m.text, r));
    case slot.without:
      return Array.isArray(states.without) && (states.without as string[]).includes(m.key);
    case slot.month:
      return states.month === m.value;
    case slot.place:
      return states.place !== undefined && alike(m.raw ?? m.key, states.place);
    case slot.until:
      return states.until !== undefined && areOneTime(m.key, states.until);
    case slot.sky:
    case slot.mount:
    case slot.arrangement:
      return states[name] !== undefined && loose(states[name]) === loose(m.key);
    case slot.shade:
      return states.shade !== undefined;
    case slot.takenRest:
    case slot.takenLoad:
    case slot.takenCharging:
      return states.voltsTaken !== undefined && states.voltsTaken === name.split(':')[1];
    case slot.tripOne:
    case slot.tripRound:
      return (states.cable as Row | undefined)?.isRoundTrip === (c.slot === slot.tripRound);
    case slot.inverterWave:
      return (states.inverter as Row | undefined)?.wave === m.key;
    case slot.alternatorSmart:
    case slot.alternatorFixed:
      return (
        states.alternator !== undefined &&
        (c.slot === slot.alternatorSmart) === (states.alternator === 'smart')
      );
    case slot.claim:
    case slot.claimAh:
    case slot.claimDays:
    case slot.claimHours:
    case slot.claimWatts:
    case slot.claimAmps:
    case slot.claimPercent:
    case slot.claimArea:
    case slot.claimGauge:
    case slot.claimVolts:
    case slot.claimEnergy:
    case slot.claimPanels:
    case slot.claimBatteries:
      return (
        Array.isArray(states.claims) &&
        (states.claims as Row[]).some(
          k =>
            (near(c.slot === slot.claimPercent ? c.value : m.told, k.value) ||
              ((m.unit === 'kWh' || m.unit === 'kW') && near(m.told * 1000, k.value)) ||
              m.variants.some(v => near(m.told === 0 ? v.value : v.value / (m.value / m.told), k.value))) &&
            (c.owner === -4 ? alike('i', k.who) : alike(whoOf(mentions[c.owner]), k.who)),
        )
      );
    case slot.loadAverage:
      return fits(states.loads, 'isAverage', true).length > 0;
    default:
  }
  if (slot.chargerKinds[c.slot]) return fits(states.chargers, 'kind', slot.chargerKinds[c.slot]).length > 0;
  if (c.slot === slot.count) {
    if (c.owner === self)
      return fits(states.loads, 'count', c.value).some(r => alike(spokenOf ?? 'load', r.name));
    const o = mentions[c.owner]!;
    const lists =
      o.kind === 'solar'
        ? ['solar']
        : o.kind === 'chemistry' || o.kind === 'battery' || o.kind === 'role'
          ? ['batteries']
          : ['loads', 'batteries', 'solar'];
    return lists.some(l => fits(states[l], 'count', c.value).length > 0);
  }
  const [group, key = ''] = name.split(/[.:]/) as [string, string?];
  const list = listOf[group];
  if (list) {
    const value =
      c.slot === slot.batteryChemistry || c.slot === slot.batteryRole || c.slot === slot.solarController
        ? m.key
        : c.value;
    const found = fits(states[list], key, value);
    if (found.length === 0) return false;
    if (c.owner === all || c.owner === pair) return found.length > 1;
    if (list === 'loads' && c.owner >= 0) {
      const owner = mentions[c.owner]!;
      const named =
        owner.kind === 'thing' ||
        owner.kind === 'noun' ||
        owner.kind === 'inverter' ||
        owner.kind === 'charger' ||
        owner.kind === 'monitor'
          ? nameOf(owner)
          : (spokenOf ?? 'load');
      return found.some(r => alike(named, r.name));
    }
    if (list === 'loads' && c.owner === ofOneKind)
      return (states.loads as Row[]).some((r, k, rows) =>
        rows.some((o, n) => n !== k && alike(o.name, r.name)),
      );
    if (list === 'loads' && c.owner === self)
      return found.some(r => r.name === undefined || alike(spokenOf ?? 'load', r.name));
    if (list === 'chargers' && c.owner === ofOneKind) return found.length > 0;
    if (list === 'chargers' && c.owner === self)
      return found.some(r => r.kind === 'mains' || r.kind === undefined);
    const variant = c.variant >= 0 ? m.variants[c.variant] : undefined;
    if (variant?.why === 'product') return found.some(r => r.count === variant.count);
    return true;
  }
  if (group === 'cable' || group === 'inverter') {
    const of = states[group] as Row | undefined;
    if (of === undefined || !near(c.value, of[key])) return false;
    return c.slot === slot.cableRound
      ? of.isRoundTrip === true
      : c.slot === slot.cableLength
        ? of.isRoundTrip !== true
        : true;
  }
  const fact = name.split(':')[0]!;
  if (!near(c.value, states[fact])) return false;
  if (fact === 'volts') {
    const want = states.voltsTaken;
    const kind = name.split(':')[1];
    return want === undefined ? kind === undefined : kind === want;
  }
  return true;
}

export interface Derivation {
  readonly steps: readonly Step[];
  readonly errors: number;
  readonly missing: readonly string[];
  readonly extra: readonly string[];
}

/** "Skinning light", "organ amplifier": a word of a thing's name whose head stands right after it. */
function isOfHead(mentions: readonly Mention[], at: number, states: Row): boolean {
  const [m, head] = [mentions[at]!, mentions[at + 1]];
  return (
    head?.kind === 'thing' &&
    (m.kind === 'noun' || m.kind === 'thing') &&
    Array.isArray(states.loads) &&
    (states.loads as Row[]).some(l => alike(m.text, l.name) && alike(nameOf(head), l.name))
  );
}

/** How many ways are followed at once; more where these lead to no exact one. */
const widths = [60, 400] as const;
const most = 6;
const intentOnly = ['term', 'choice', 'corrects', 'owner', 'days'];

/** The ways to decide a message that come nearest to its label; several where they come equally near. */
export function derivationsOf(
  mentions: readonly Mention[],
  states: Row,
  fixed: ReadonlySet<number> = new Set(),
  spokenOf?: string,
  talk: Pick<Frame, 'lean' | 'awaits'> = { lean: spokenOf === undefined ? 'whole' : 'thing', awaits: [] },
): Derivation[] {
  const [narrow, wide] = widths;
  const found = derived(mentions, states, fixed, spokenOf, talk, narrow);
  return found[0]!.errors === 0 ? found : derived(mentions, states, fixed, spokenOf, talk, wide);
}

function derived(
  mentions: readonly Mention[],
  states: Row,
  fixed: ReadonlySet<number>,
  spokenOf: string | undefined,
  { lean, awaits }: Pick<Frame, 'lean' | 'awaits'>,
  width: number,
): Derivation[] {
  let beam: { state: State; steps: Step[]; cost: number }[] = [
    { state: State.empty(mentions, lean), steps: [], cost: 0 },
  ];
  for (const at of turnsOf(mentions, awaits)) {
    if (fixed.has(at)) continue;
    const next: typeof beam = [];
    for (const item of beam) {
      const candidates = candidatesOf(item.state, at);
      const told = candidates.filter(c => c.slot !== slot.none && isTold(mentions, at, c, states, spokenOf));
      const options = [candidates[0]!, ...told];
      for (const c of options) {
        const far = c.owner >= 0 ? Math.abs(c.owner - at) * 0.05 : 0;
        const penalty =
          (c.slot === slot.none
            ? told.some(t => t.slot !== slot.same) && !isOfHead(mentions, at, states)
              ? 2
              : 0
            : c.slot === slot.same
              ? 0.5
              : 0) +
          far +
          (c.owner === nobody || c.owner >= 0 ? 0 : 0.2) +
          (c.variant >= 0 ? 0.3 : 0);
        next.push({
          state: item.state.with(at, c.slot, c.owner, c.variant, c.value, 0),
          steps: [...item.steps, { at, slot: c.slot, owner: c.owner, variant: c.variant }],
          cost: item.cost + penalty,
        });
      }
    }
    next.sort((a, b) => a.cost - b.cost);
    beam = next.slice(0, width);
  }
  const want = Object.fromEntries(Object.entries(states).filter(([key]) => !intentOnly.includes(key)));
  // The supply of a load is decided apart.
  if (Array.isArray(want.loads))
    want.loads = (want.loads as Row[]).map(({ supply: _supply, ...rest }) => rest);
  const judged = beam.map(item => {
    const got = assemble(item.state, undefined, spokenOf);
    const { missing, extra } = compare(got, want);
    return { steps: item.steps, errors: missing.length + extra.length, missing, extra, cost: item.cost };
  });
  const least = Math.min(...judged.map(j => j.errors));
  const best = judged.filter(j => j.errors === least).sort((a, b) => a.cost - b.cost);
  return best.filter(j => j.cost <= best[0]!.cost + 0.61).slice(0, most);
}
