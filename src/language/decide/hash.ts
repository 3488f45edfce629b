/** A number for a string, the same on every machine (FNV-1a, 32 bits). */
export function hashText(text: string): number {
  let h = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) h = Math.imul(h ^ text.charCodeAt(i), 0x01000193);
  return h >>> 0;
}

/** Mixes the number of a template with what fills it. */
export function mix(template: number, a: number, b = 0): number {
  let h = Math.imul(template + 0x9e3779b9, 0x85ebca6b) ^ a;
  h = Math.imul(h ^ (h >>> 15), 0x2c1b3c6d) ^ b;
  h = Math.imul(h ^ (h >>> 13), 0x297a2d39);
  return (h ^ (h >>> 16)) >>> 0;
}
