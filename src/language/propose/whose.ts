/** Owners that are no mention: nothing owns it, it makes an entity of its own, it holds for all of them. */
export const nobody = -1;
export const self = -2;
export const all = -3;
/** The writer, as the owner of a claim, where no word for them stands near. */
export const writer = -4;
/** The two things named last before it, of several: "…, a fan and a lamp, both 5 hours". */
export const pair = -5;

/** Another one of the kind named beside it: "a 20 A or a 40 A DC-DC". */
export const alike = -6;

/** The two that stand last before a place, where there are two. */
export function pairBefore(of: readonly number[], at: number): readonly [number, number] | undefined {
  let before = 0;
  while (before < of.length && of[before]! < at) before++;
  return before < 2 ? undefined : [of[before - 2]!, of[before - 1]!];
}
