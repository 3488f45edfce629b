const start = 0x811c9dc5 | 0;

/** Goes on with the hash of a text by a further text. */
export function hashOn(hash: number, text: string): number {
  let h = hash;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  return h;
}

/** A number of 32 bits for a string, the same on every machine (FNV-1a). */
export const hashText = (text: string): number => hashOn(start, text);

/** The first half of `mix`: a template and what fills its first place. Worth keeping where the second varies. */
export function begun(template: number, a: number): number {
  const h = Math.imul((template + 0x9e3779b9) | 0, 0x85ebca6b) ^ a;
  return Math.imul(h ^ (h >>> 15), 0x2c1b3c6d);
}

/** The second half of `mix`. */
export function ended(half: number, b: number): number {
  let h = half ^ b;
  h = Math.imul(h ^ (h >>> 13), 0x297a2d39);
  return h ^ (h >>> 16);
}

/** A feature: the number of a template mixed with what fills it. */
export const mix = (template: number, a: number, b = 0): number => ended(begun(template, a), b);
