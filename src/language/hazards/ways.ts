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
  /** The bits of all its parts. */
  readonly all: number;
}

function parse(name: string, way: string): Way {
  const [shows, none] = way.split(' - ');
  const joints = present(shows).match(/ [+~] /g) ?? [];
  const parts = present(shows)
    .split(/ [+~] /)
    .map(part => part.split('|'));
  return {
    name,
    parts,
    all: (1 << parts.length) - 1,
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
const fills = new Map<string, { readonly way: number; readonly bit: number }[]>();
for (const [w, { parts }] of ways.entries())
  for (const [p, part] of parts.entries())
    for (const concept of part) {
      const row = fills.get(concept);
      const fill = { way: w, bit: 1 << p };
      if (row) row.push(fill);
      else fills.set(concept, [fill]);
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

/** The parts of each way that some concepts fill, as bits; which ways are filled at all. Used over and over. */
class Filled {
  readonly bits = new Int32Array(ways.length);
  readonly some: number[] = [];

  fill(concepts: Iterable<string>): this {
    for (const way of this.some) this.bits[way] = 0;
    this.some.length = 0;
    for (const concept of concepts)
      for (const { way, bit } of fills.get(concept) ?? []) {
        if (this.bits[way] === 0) this.some.push(way);
        this.bits[way]! |= bit;
      }
    return this;
  }
}

const filledNow = new Filled();
const filledBefore = new Filled();

/**
 * The ways of the table that a message shows: "=" before those that it shows by itself, "<" before those that
 * it completes together with what was meant earlier.
 */
export function waysIn(places: Places, before: ReadonlySet<string>): readonly string[] {
  const found: string[] = [];
  const known = filledBefore.fill(before).bits;
  const { bits, some } = filledNow.fill(places.keys());
  for (const w of some) {
    const here = bits[w]!;
    const { name, parts, isNear, none, all } = ways[w]!;
    if ((here | known[w]!) !== all || none.some(concept => places.has(concept))) continue;
    const isTogether = parts.every((part, i) => {
      const both = (1 << i) | (1 << (i - 1));
      return i === 0 || (here & both) !== both || standTogether(parts[i - 1]!, part, places, isNear[i]!);
    });
    if (isTogether) found.push(`${here === all ? '=' : '<'}${name}`);
  }
  return found;
}
