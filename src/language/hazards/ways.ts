import { present } from '#basics/present.ts';
import type { HazardCode } from '#rig/hazard-codes.ts';
import type { Mention } from './concepts.ts';
import { hazardTable } from './hazard-table.ts';

/** Meanings at most so many words apart in one sentence stand together. */
const reach = 12;
/** What is not joined by nearness must still be of one matter, not of two ends of a long tale. */
const farReach = 25;

interface Way {
  readonly name: string;
  readonly parts: readonly (readonly string[])[];
  /** Which parts must stand near the one before them. */
  readonly isNear: readonly boolean[];
  readonly none: readonly string[];
}

function parse(name: string, way: string): Way {
  const [shows, none] = way.split(' - ');
  const joints = present(shows).match(/ [+~] /g) ?? [];
  return {
    name,
    parts: present(shows)
      .split(/ [+~] /)
      .map(part => part.split('|')),
    isNear: [false, ...joints.map(joint => joint === ' ~ ')],
    none: none?.split('|') ?? [],
  };
}

/** A danger that was seen in the talk before and is now argued about: "just for one night". */
const argued = (code: HazardCode): string => `plea + ^${code}`;

const ways: readonly Way[] = hazardTable.flatMap(row =>
  [...row.shows, argued(row.code)].map((way, i) => parse(`${row.code}/${i}`, way)),
);

/** Which part of which way a concept fills: the way's place in the list and the part's bit. */
const fills = new Map<string, (readonly [way: number, bit: number])[]>();
for (const [w, { parts }] of ways.entries())
  for (const [p, part] of parts.entries())
    for (const concept of part) {
      const row = fills.get(concept);
      if (row) row.push([w, 1 << p]);
      else fills.set(concept, [[w, 1 << p]]);
    }

/** Where each meaning of a message stands. */
export type Places = ReadonlyMap<string, readonly Mention[]>;

/** Whether some mention of one part stands near enough to some mention of the other. Figures stand anywhere. */
function standTogether(a: readonly string[], b: readonly string[], places: Places, isNear: boolean): boolean {
  for (const x of a)
    for (const m of places.get(x) ?? [])
      for (const y of b)
        for (const n of places.get(y) ?? []) {
          if (m.at < 0 || n.at < 0) return true;
          const far = Math.abs(m.at - n.at);
          if (isNear ? m.sentence === n.sentence && far <= reach && (far > 0 || x !== y) : far <= farReach)
            return true;
        }
  return false;
}

/** The parts of each way that some of these concepts fill, as bits. */
function filled(concepts: Iterable<string>): Map<number, number> {
  const bits = new Map<number, number>();
  for (const concept of concepts)
    for (const [way, bit] of fills.get(concept) ?? []) bits.set(way, (bits.get(way) ?? 0) | bit);
  return bits;
}

/**
 * The ways of the table that a message shows: "=" before those that it shows by itself, "<" before those that
 * it completes together with what was meant earlier.
 */
export function waysIn(places: Places, before: ReadonlySet<string>): readonly string[] {
  const found: string[] = [];
  const known = before.size > 0 ? filled(before) : undefined;
  for (const [w, here] of filled(places.keys())) {
    const { name, parts, isNear, none } = ways[w]!;
    const all = (1 << parts.length) - 1;
    if ((here | (known?.get(w) ?? 0)) !== all || none.some(concept => places.has(concept))) continue;
    const isTogether = parts.every((part, i) => {
      const both = (1 << i) | (1 << (i - 1));
      return i === 0 || (here & both) !== both || standTogether(parts[i - 1]!, part, places, isNear[i]!);
    });
    if (isTogether) found.push(`${here === all ? '=' : '<'}${name}`);
  }
  return found;
}
