import { things } from '#catalog/appliances.ts';

/** How a reading is held against a label, as the scorer of meaning groups does: names are loose, some facts are free. */

const near = (a: unknown, b: unknown): boolean =>
  typeof a === 'number' && typeof b === 'number' && Math.abs(a - b) <= 0.011 * Math.max(1, Math.abs(b));
const looseCache = new Map<string, string>();
export const loose = (s: unknown): string => {
  const text = String(s ?? '');
  let out = looseCache.get(text);
  if (out === undefined) {
    out = text
      .toLowerCase()
      .normalize('NFKD')
      .replace(/\p{M}/gu, '')
      .replace(/[^\p{L}\p{N}%]+/gu, ' ')
      .trim()
      .replace(/ies\b/g, 'y')
      .replace(/s\b/g, '');
    if (looseCache.size < 50000) looseCache.set(text, out);
  }
  return out;
};
const sets = [
  'tv telly television',
  'fridge refrigerator icebox cooler coolbox freezer',
  'light lamp led strip lantern bulb globe',
  'phone mobile cell handset',
  'laptop computer notebook',
  'heater furnace',
  'kettle jug',
  'pump',
  'fan',
  'cpap bipap apnoea apnea',
  'nebuliser nebulizer',
  'tasmania tassie',
  'husband hubby',
  'generator genny gennie genset',
  'i me myself we',
  'load thing stuff gear everything',
].map(row => row.split(' '));
/** The row of the catalogue that a name is of: "hairdryer" and "hair dryer", "wireless" and "radio" are one thing. */
const rows = new Map<string, string>();
for (const row of things) for (const name of [...row.names, row.id]) rows.set(loose(name), row.id);
export const areOfOneRow = (x: string, y: string): boolean => rows.has(x) && rows.get(x) === rows.get(y);
export const alike = (a: unknown, b: unknown): boolean => {
  const [x, y] = [loose(a), loose(b)];
  if (x === '') return false;
  return (
    x.includes(y) ||
    y.includes(x) ||
    areOfOneRow(x, y) ||
    sets.some(set => set.some(w => x.includes(w)) && set.some(w => y.includes(w))) ||
    [x, y].every(name => /\b(?:ac|air ?con|conditioner)\b/.test(name))
  );
};
const units: Readonly<Record<string, string>> = {
  d: 'day',
  night: 'day',
  hour: 'h',
  hr: 'h',
  minute: 'min',
  amp: 'a',
  'amp hour': 'ah',
  watt: 'w',
  volt: 'v',
  percent: '%',
  mm2: 'mm²',
};
/** "5pm sunday" and "Sunday 5 pm" are one time. */
export const areOneTime = (a: unknown, b: unknown): boolean => {
  const partsOf = (s: unknown): string =>
    loose(s)
      .replace(/(\d) (?=[ap]m\b)/g, '$1')
      .split(' ')
      .sort()
      .join(' ');
  return alike(a, b) || (loose(a) !== '' && partsOf(a) === partsOf(b));
};
const unit = (s: unknown): string => units[loose(s)] ?? loose(s);
const free = new Set(['supply', 'isAverage', 'count', 'role', 'voltsTaken', 'kind']);
const freeFacts = new Set([
  'month',
  'peakSunHours',
  'startHour',
  'startWeekday',
  'latitudeDeg',
  'longitudeDeg',
  'altitudeM',
  'solarAhPerDay',
  'solarWhPerDay',
  'isRoundTrip',
  'shade',
  'unread',
  'rig',
  'corrects',
  'targetChargePercent',
  'owner',
]);

export interface Difference {
  readonly missing: string[];
  readonly extra: string[];
}
type Any = Record<string, unknown>;

/** What of `want` is missing in `got`, and what `got` has beside it. */
export function compare(got: unknown, want: unknown, path = ''): Difference {
  const missing: string[] = [];
  const extra: string[] = [];
  if (Array.isArray(want)) {
    const rest: unknown[] = Array.isArray(got) ? [...got] : got === undefined ? [] : [got];
    for (const [i, w] of want.entries()) {
      const rows =
        path === 'days'
          ? [compare(rest[0], w, `${path}[${i}]`)]
          : rest.map(g => compare(g, w, `${path}[${i}]`));
      let best = -1;
      rows.forEach((r, k) => {
        if (r.missing.length === 0 && (best < 0 || r.extra.length < rows[best]!.extra.length)) best = k;
      });
      if (best < 0) missing.push(`${path}[${i}] ${JSON.stringify(w)}`);
      else {
        extra.push(...rows[best]!.extra);
        rest.splice(best, 1);
      }
    }
    for (const r of rest)
      if (!(path === 'chargers' && Object.keys(r as Any).length === 1))
        extra.push(`${path} ${JSON.stringify(r)}`);
  } else if (want !== null && typeof want === 'object') {
    if (got === null || typeof got !== 'object') return { missing: [path], extra };
    const g = got as Any;
    for (const [k, w] of Object.entries(want)) {
      if (path === '' && k === 'owner' && g.owner === undefined) continue;
      if (k === 'count' && w === 1 && g[k] === undefined) continue;
      const r = compare(g[k], w, path ? `${path}.${k}` : k);
      missing.push(...r.missing);
      extra.push(...r.extra);
    }
    for (const k of Object.keys(g))
      if (
        !(k in want) &&
        !free.has(k) &&
        !(
          path === '' &&
          (freeFacts.has(k) || (k === 'inverter' && (g.inverter as Any | undefined)?.powerW === undefined))
        )
      )
        extra.push(`${path}.${k} ${JSON.stringify(g[k])}`);
  } else if (want === false && got === undefined) {
    /* not said is no */
  } else if (want === true || want === '') {
    if (got === undefined) missing.push(path);
  } else if (typeof want === 'number') {
    if (!near(got, want)) missing.push(`${path} ${got} for ${want}`);
  } else if (/unit$/.test(path)) {
    if (unit(got) !== unit(want)) missing.push(`${path} ${got} for ${want}`);
  } else if (path === 'until') {
    if (!areOneTime(got, want)) missing.push(`${path} ${got} for ${want}`);
  } else if (/(name|who|place|owner|term)$/.test(path) || /^removed/.test(path)) {
    // A load that nobody named is called so.
    const name = got ?? (/^loads.*name$/.test(path) ? 'load' : undefined);
    if (!alike(name, want)) missing.push(`${path} ${got} for ${want}`);
  } else if (loose(got) !== loose(want)) missing.push(`${path} ${got} for ${want}`);
  return { missing, extra };
}
