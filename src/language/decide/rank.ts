import * as slot from '../propose/slots.ts';
import type { Stated } from './assemble.ts';
import type { Frame } from './features.ts';
import { hashText, mix } from './hash.ts';
import type { State } from './state.ts';

/** How many of the likeliest readings are weighed as wholes. */
export const mostRanked = 10;

const bucket = (n: number): number => Math.min(n, 4);
const size = (value: number): number =>
  Number.isFinite(value) && value > 0 ? Math.round(Math.log2(value)) : -20;
type Row = Readonly<Record<string, unknown>>;
const signature = (row: Row): string =>
  Object.keys(row)
    .filter(key => key !== 'name')
    .sort()
    .join('+');
const rowsOf = (value: unknown): readonly Row[] => (Array.isArray(value) ? (value as Row[]) : []);

/** What speaks for a reading as a whole: whether its facts go together, with each other and with the question. */
export function rankFeatures(f: Frame, state: State, stated: Stated, intent: string, out: number[]): void {
  const q = hashText(intent);
  const keys = Object.keys(stated).sort();
  const put = (template: number, a: number, b = 0): void => {
    out.push(mix(template, a, b), mix(template + 1, mix(0, a, b), q));
  };
  put(700, hashText(keys.join(' ')));
  for (const key of keys) put(702, hashText(key));
  for (let i = 0; i < keys.length; i++)
    for (let j = i + 1; j < keys.length; j++) out.push(mix(704, hashText(keys[i]!), hashText(keys[j]!)));
  for (const first of f.questions) {
    out.push(mix(705, first, q), mix(706, mix(0, first, q), hashText(keys.join(' '))));
    for (const key of keys) out.push(mix(707, first, hashText(key)));
  }
  for (const c of f.context) out.push(mix(708, c, q), mix(709, c, hashText(keys.join(' '))));
  // Each list by what its rows tell.
  for (const list of ['loads', 'batteries', 'solar', 'chargers', 'claims', 'days'] as const) {
    const rows = rowsOf(stated[list]);
    const id = hashText(list);
    put(710, id, bucket(rows.length));
    const kinds = rows.map(signature);
    for (const kind of kinds) put(712, id, hashText(kind));
    put(714, id, hashText([...new Set(kinds)].sort().join(' ')));
    if (rows.length > 1)
      put(716, id, new Set(kinds).size === 1 ? 1 : new Set(kinds).size === rows.length ? 2 : 3);
    for (const row of rows)
      for (const [key, value] of Object.entries(row))
        if (typeof value === 'number') out.push(mix(718, mix(0, id, hashText(key)), size(Math.abs(value))));
  }
  const loads = rowsOf(stated.loads);
  const isBare = (row: Row): boolean => signature(row).replace('supply', '') === '';
  put(720, bucket(loads.filter(isBare).length), bucket(loads.filter(row => !isBare(row)).length));
  const claims = rowsOf(stated.claims);
  put(722, bucket(claims.length), bucket(new Set(claims.map(c => c.who)).size));
  put(724, new Set(claims.map(c => c.unit)).size, claims.length > 0 ? 1 : 0);
  for (const key of ['durationH', 'dailyUseAh', 'volts', 'ambientC', 'netCurrentA'] as const) {
    const value = stated[key];
    if (typeof value === 'number') out.push(mix(726, hashText(key), size(Math.abs(value))));
  }
  if (typeof stated.durationH === 'number')
    put(
      727,
      loads.some(l => l.hoursPerDay !== undefined || l.minutesPerDay !== undefined)
        ? 1
        : loads.some(l => l.hoursOnce !== undefined)
          ? 2
          : 0,
      stated.durationH < 24 ? 1 : 0,
    );
  // Each mention with its role, and what is left over.
  let left = 0;
  let leftThings = 0;
  let leftward = 0;
  let rightward = 0;
  let crossings = 0;
  const { mentions } = f;
  for (let i = 0; i < mentions.length; i++) {
    const s = state.slots[i]!;
    if (s < 0) continue;
    const m = mentions[i]!;
    if (s === slot.none) {
      if (m.kind === 'amount' || m.kind === 'number') {
        left++;
        put(730, f.cls[i]!, m.rate ? 1 : 0);
        out.push(
          mix(732, mix(0, f.cls[i]!, f.cls[i - 1] ?? 0), q),
          mix(733, mix(0, f.cls[i]!, f.cls[i + 1] ?? 0), q),
        );
      } else if (m.kind === 'thing' || m.kind === 'noun') leftThings++;
      if (m.kind !== 'amount' && m.kind !== 'number' && m.kind !== 'noun') put(734, f.cls[i]!);
      continue;
    }
    put(736, s, f.cls[i]!);
    out.push(
      mix(738, mix(0, s, f.cls[i - 1] ?? 0), f.cls[i]!),
      mix(739, mix(0, s, f.cls[i + 1] ?? 0), f.cls[i]!),
    );
    const o = state.owners[i]!;
    if (o >= 0) {
      if (o < i) leftward++;
      else rightward++;
      for (let j = Math.min(o, i) + 1; j < Math.max(o, i); j++)
        if (state.slots[j] === slot.load || state.slots[j] === slot.capacity) crossings++;
    }
  }
  put(740, bucket(left));
  put(742, bucket(leftThings));
  put(744, bucket(leftward), bucket(rightward));
  put(746, bucket(crossings));
  let before = -1;
  for (let i = 0; i < mentions.length; i++) {
    const s = state.slots[i]!;
    if (s <= 0) continue;
    out.push(mix(748, before + 2, s), mix(749, mix(0, before + 2, s), q));
    before = s;
  }
  out.push(mix(750, before + 2, 999));
  ownedFeatures(f, state, put);
  const bare = loads.filter(isBare).length;
  for (const first of f.questions)
    out.push(mix(752, first, bucket(bare)), mix(753, mix(0, first, bucket(left)), bucket(loads.length)));
  const names = loads.map(row => row.name);
  put(754, names.length - new Set(names).size, names.includes(undefined) ? 1 : 0);
}

/** How figures lie to what owns them: how far, over what, and whether a value is likely for that thing. */
function ownedFeatures(f: Frame, state: State, put: (template: number, a: number, b?: number) => void): void {
  const { mentions } = f;
  let far = 0;
  let over = 0;
  for (let i = 0; i < mentions.length; i++) {
    const o = state.owners[i]!;
    const s = state.slots[i]!;
    if (o < 0 || s <= 0) continue;
    const owner = mentions[o]!;
    put(756, mix(0, s, hashText(owner.key)), size(Math.abs(state.values[i]!)));
    const [from, to] = o < i ? [o, i] : [i, o];
    far = Math.max(far, to - from);
    for (let j = from + 1; j < to; j++)
      if ((mentions[j]!.kind === 'thing' || mentions[j]!.kind === 'noun') && state.slots[j] === slot.none)
        over++;
    // A nearer thing that was passed over, or one that stands right beside the figure on its other side.
    const beside = mentions[o < i ? i + 1 : i - 1];
    if (beside && beside !== owner && (beside.kind === 'thing' || beside.kind === 'noun'))
      put(758, s, o < i ? 1 : 0);
  }
  put(760, far < 3 ? 0 : far < 6 ? 1 : far < 10 ? 2 : 3, Math.min(over, 3));
  for (let i = 0; i < mentions.length; i++) {
    const m = mentions[i]!;
    if (state.slots[i] !== slot.none || (m.kind !== 'thing' && m.kind !== 'noun')) continue;
    const next = mentions[i + 1];
    const before = mentions[i - 1];
    const isBeside = (x: typeof next): number => (x?.kind === 'amount' || x?.kind === 'number' ? 1 : 0);
    put(762, isBeside(before) + 2 * isBeside(next), f.cls[i + 1] ?? 0);
  }
}

/** Weights of whole readings: of their features, and of the logarithms they come with (roles, question, plan). */
export interface Ranker {
  readonly index: ReadonlyMap<number, number>;
  readonly values: Float32Array;
  /** Of the roles' log-probability and of the question's. */
  readonly logs: readonly [roles: number, question: number];
}

/** The score of a whole reading. */
export function rankOf(ranker: Ranker, features: readonly number[], roles: number, question: number): number {
  let sum = ranker.logs[0] * roles + ranker.logs[1] * question;
  for (const feature of features) {
    const row = ranker.index.get(feature);
    if (row !== undefined) sum += ranker.values[row]!;
  }
  return sum;
}
