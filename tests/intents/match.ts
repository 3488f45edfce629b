import { present } from '#basics/present.ts';

type Json = unknown;

const isObject = (value: Json): value is Record<string, Json> =>
  value !== null && typeof value === 'object' && !Array.isArray(value);

/** Letters and digits only, small, without a plural's s: "Strip-lights" → "strip light". */
const loose = (text: Json): string =>
  String(text ?? '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}%²]+/gu, ' ')
    .trim()
    .replace(/s\b/g, '');

const unitNames: Readonly<Record<string, string>> = {
  day: 'day',
  night: 'day',
  d: 'day',
  hour: 'h',
  hr: 'h',
  amp: 'a',
  'amp hour': 'ah',
  watt: 'w',
  volt: 'v',
  percent: '%',
  mm2: 'mm²',
};
const unit = (text: Json): string => unitNames[loose(text)] ?? loose(text);

/** Words that people vary (names of things, people and places) match when one holds the other. */
const isNamed = (key: string): boolean => ['name', 'who', 'place'].includes(key);

/** Whether a plain value is the wanted one; numbers to about one per cent. */
function isSame(got: Json, want: Json, key: string): boolean {
  if (typeof want === 'number')
    return typeof got === 'number' && Math.abs(got - want) <= 0.011 * Math.max(1, Math.abs(want));
  if (key === 'unit') return unit(got) === unit(want);
  const [a, b] = [loose(got), loose(want)];
  return isNamed(key) ? a !== '' && (a.includes(b) || b.includes(a)) : a === b;
}

/** What a thing has without anybody saying so. */
const isUnsaid = (key: string, value: Json): boolean => key === 'supply' || (key === 'count' && value === 1);

/**
 * What is wrong with `got` against `want`, as lines to read; none where it fits. Lists fit in any order, each
 * entry once. With `isExact`, lists may not be longer nor things say more than wanted.
 */
export function differences(got: Json, want: Json, isExact = false, path = ''): string[] {
  const key = present(path.split('.').at(-1)).replace(/\[.*/, '');
  const at = path || 'value';
  if (Array.isArray(want)) {
    if (!Array.isArray(got)) return [`${at} is missing, wanted ${JSON.stringify(want)}`];
    const free = [...got];
    const lost = want.flatMap((entry, i) => {
      const found = free.findIndex(g => differences(g, entry, isExact, `${path}[${i}]`).length === 0);
      if (found >= 0) free.splice(found, 1);
      return found >= 0 ? [] : [`${at} has no ${JSON.stringify(entry)} in ${JSON.stringify(got)}`];
    });
    const extra = isExact && lost.length === 0 ? free.map(g => `${at} has also ${JSON.stringify(g)}`) : [];
    return [...lost, ...extra];
  }
  if (isObject(want)) {
    if (!isObject(got)) return [`${at} is missing, wanted ${JSON.stringify(want)}`];
    const inner = Object.entries(want).flatMap(([k, w]) =>
      differences(got[k], w, isExact, path ? `${path}.${k}` : k),
    );
    // The whole of what was understood may hold more than a row cares to name.
    const extra =
      isExact && path ? Object.entries(got).filter(([k, v]) => !(k in want) && !isUnsaid(k, v)) : [];
    return [...inner, ...extra.map(([k, v]) => `${at} says also ${k} ${JSON.stringify(v)}`)];
  }
  return isSame(got, want, key) ? [] : [`${at} is ${JSON.stringify(got)}, wanted ${JSON.stringify(want)}`];
}

interface Span {
  readonly min?: number;
  readonly max?: number;
  readonly value?: string | readonly string[];
}

/** What is wrong with the figures of an answer against the wanted spans or words. */
export function figureDifferences(
  figures: Readonly<Record<string, { readonly value: number | string }>>,
  want: Readonly<Record<string, Span>>,
): string[] {
  return Object.entries(want).flatMap(([name, { min = -Infinity, max = Infinity, value }]) => {
    const got = figures[name]?.value;
    if (value !== undefined) {
      const isFound = [value].flat().some(word => loose(word) === loose(got));
      return isFound ? [] : [`${name} is ${got}, wanted ${[value].flat().join(' or ')}`];
    }
    const isWithin = typeof got === 'number' && got >= min && got <= max;
    return isWithin ? [] : [`${name} is ${got}, wanted ${min} to ${max}`];
  });
}
