import { createHash } from 'node:crypto';

/** Whether everything is tried (`npm run test:whole`), not the share of it that `npm test` takes. */
const isWhole = process.env.WHOLE === 'yes';

/** How often something is drawn: a few times, or many times where everything is tried. */
export const draws = (few: number, many: number): number => (isWhole ? many : few);

/** A number of 32 bits that stands for texts, and is another where any of them is. */
export const seedOf = (texts: readonly string[]): number => {
  const hash = createHash('sha256');
  for (const text of texts) hash.update(text).update('\0');
  return hash.digest().readUInt32LE();
};

/** Mixes a text into a seed (FNV-1a, with a last stir so that its lowest bits depend on all of them). */
function stirred(seed: number, text: string): number {
  let hash = seed ^ 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash ^ (hash >>> 15)) >>> 0;
}

/**
 * About one in `oneIn` of many texts, or all of them where everything is tried. Which ones hangs on all the texts
 * together: the same for the same texts, and others as soon as a text is added, so that every one has its turn.
 */
export function shareOf(texts: readonly string[], oneIn: number): string[] {
  if (isWhole) return [...texts];
  const seed = seedOf(texts);
  return texts.filter(text => stirred(seed, text) % oneIn === 0);
}
