import { present } from '#basics/present.ts';
import {
  type DangerPoint,
  dangerPoints,
  isExact,
  type Point,
  percent,
  points,
  type Result,
  sharesOf,
  totals,
} from '../train/measure.ts';

const row = (cells: readonly (string | number)[]): string => `| ${cells.join(' | ')} |`;

/** A table as a page of `docs/` shows it. */
export const table = (head: readonly string[], rows: readonly (readonly (string | number)[])[]): string[] => [
  row(head),
  row(head.map((_, i) => (i === 0 ? '---' : '---:'))),
  ...rows.map(row),
];

const ofPoint = ({ least, wrong, back }: Point): string[] => [`${least}`, percent(wrong), percent(back)];
const ofDanger = ({ least, seen, alarms }: DangerPoint): string[] => [
  `${least}`,
  percent(seen),
  percent(alarms),
];

/** Totals and curves of one set: all that is told of a closed one. */
export const summary = (name: string, results: readonly Result[]): string[] => [
  `${name}: ${totals(results)}`,
  '',
  ...table(['least certainty answered', 'answered wrong %', 'asked back %'], points(results).map(ofPoint)),
  '',
  ...table(['least danger told', 'dangers seen %', 'false alarms %'], dangerPoints(results).map(ofDanger)),
];

function byKey(results: readonly Result[], key: (r: Result) => string): Map<string, Result[]> {
  const out = new Map<string, Result[]>();
  for (const r of results) {
    const list = out.get(key(r));
    if (list) list.push(r);
    else out.set(key(r), [r]);
  }
  return out;
}

/** Each file by itself, the worst last. */
export function bySubject(results: readonly Result[]): string[] {
  const rows = [...byKey(results, r => r.group.file)]
    .map(([file, own]) => ({ file, ...sharesOf(own) }))
    .sort((a, b) => b.exact - a.exact);
  return table(
    ['file', 'groups', 'reach %', 'choice %', 'questions %', 'exact %', 'whole %'],
    rows.map(s => [s.file, s.groups, ...[s.reach, s.choice, s.questions, s.exact, s.whole].map(percent)]),
  );
}

/** What is wrong with one reading, in one line. */
const faults = (r: Result): string =>
  [
    ...(r.isIntent ? [] : [`${r.intent} for ${r.group.intent.join(' or ')}`]),
    ...(r.isReached ? [] : ['out of reach']),
    ...r.differences,
  ]
    .slice(0, 5)
    .join('; ');

/** The groups with the most that is wrong: none of their wordings read exactly, then by how much. */
export function worstGroups(results: readonly Result[], most: number): string[] {
  const weight = (own: readonly Result[]): number =>
    own.reduce((sum, r) => sum + r.differences.length + (r.isIntent ? 0 : 2), 0) / own.length;
  return [...byKey(results, r => r.group.id)]
    .filter(([, own]) => !own.some(isExact))
    .sort((a, b) => weight(b[1]) - weight(a[1]) || (a[0] < b[0] ? -1 : 1))
    .slice(0, most)
    .map(([id, own]) => `${id}: ${present(own[0]).text.slice(0, 100)}\n    ${faults(present(own[0]))}`);
}

/** Wordings that are not read as their label says, and what differs. */
export const failures = (results: readonly Result[], most: number): string[] =>
  results
    .filter(r => !isExact(r))
    .slice(0, most)
    .map(r => `${r.group.id} (${r.probability.toFixed(2)}) ${r.text}\n    ${faults(r)}`);
