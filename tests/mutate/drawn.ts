/** What a mutant is known by from one run to the next, and whether it is met only while files load. */
export interface Mutant {
  readonly id: string;
  readonly fileName: string;
  readonly location: { readonly start: Place; readonly end: Place };
  readonly replacement?: string;
  readonly static?: boolean;
  readonly coveredBy?: readonly string[];
}
interface Place {
  readonly line: number;
  readonly column: number;
}

/** How many mutants, by which seed; `static` ones are those that only the loading of a file meets, left out by `ignoreStatic`. */
export interface Draw {
  readonly size: number;
  readonly seed: number;
  readonly isStatic: boolean;
}

/** Evenly spread over 32 bits, the same for the same text and seed (FNV-1a, with the finish of MurmurHash3). */
export function spreadOf(text: string, seed: number): number {
  let hash = (0x811c9dc5 ^ Math.imul(seed, 0x9e3779b1)) >>> 0;
  for (const character of text) hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 0x01000193);
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b);
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35);
  return (hash ^ (hash >>> 16)) >>> 0;
}

/** Where a mutant stands and what it puts there; the folder in which Stryker works differs by run. */
function keyOf({ fileName, location: { start, end }, replacement }: Mutant): string {
  const path = fileName.slice(fileName.lastIndexOf('/src/') + 1);
  return `${path}:${start.line}:${start.column}-${end.line}:${end.column} ${replacement ?? ''}`;
}

/** The ids of the mutants that a seed draws, each as likely as any other, whatever the order they come in. */
export function drawn(mutants: readonly Mutant[], { size, seed, isStatic }: Draw): Set<string> {
  const isWanted = (mutant: Mutant): boolean =>
    isStatic === (mutant.static === true && !mutant.coveredBy?.length);
  return new Set(
    mutants
      .filter(isWanted)
      .map(mutant => ({ id: mutant.id, place: spreadOf(keyOf(mutant), seed) }))
      .sort((a, b) => a.place - b.place)
      .slice(0, size)
      .map(({ id }) => id),
  );
}
