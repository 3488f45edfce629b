/** Whether two words differ by one slip: a letter too many, too few, wrong, or two swapped. */
export function isOneSlip(a: string, b: string): boolean {
  const [short, long] = a.length <= b.length ? [a, b] : [b, a];
  if (long.length - short.length > 1) return false;
  let i = 0;
  while (i < short.length && short[i] === long[i]) i++;
  if (short.length < long.length) return short.slice(i) === long.slice(i + 1);
  if (short.slice(i + 1) === long.slice(i + 1)) return true;
  return short[i] === long[i + 1] && short[i + 1] === long[i] && short.slice(i + 2) === long.slice(i + 2);
}

/** Whether a word is another with two neighbours swapped or a letter typed twice: slips that hardly make another word. */
export function isSureSlip(word: string, meant: string): boolean {
  let i = 0;
  while (i < meant.length && word[i] === meant[i]) i++;
  if (word.length === meant.length + 1)
    return word[i] === word[i - 1] && word.slice(i + 1) === meant.slice(i);
  return (
    word.length === meant.length &&
    word[i] === meant[i + 1] &&
    word[i + 1] === meant[i] &&
    word.slice(i + 2) === meant.slice(i + 2)
  );
}

/** Which letters a word has, as bits: a slip changes two of them at most. */
function lettersOf(word: string): number {
  let bits = 0;
  for (let i = 0; i < word.length; i++) bits |= 1 << (word.charCodeAt(i) & 31);
  return bits;
}

/** Whether two sets of letters differ in two at most. */
function areNear(a: number, b: number): boolean {
  const two = a ^ b;
  const one = two & (two - 1);
  return (one & (one - 1)) === 0;
}

interface Alike {
  readonly words: string[];
  readonly letters: number[];
}

const without = (word: string, at: number): string => word.slice(0, at) + word.slice(at + 1);

/** The first letter that may be taken out of a word so that it is the other, or the other without one of its letters. */
function firstSlip(word: string, known: string): number {
  for (let i = 0; i < word.length; i++) {
    const left = without(word, i);
    if (left === known) return i;
    for (let j = 0; j < known.length; j++) if (left === without(known, j)) return i;
  }
  return word.length;
}

/**
 * "Did you mean": finds the known word that a misspelt one stands for, among those of its first letter and length. A
 * word shorter than `least` letters is meant only where the slip is a sure one.
 */
export class Near {
  readonly #alike = new Map<string, Alike>();
  readonly #least: number;

  constructor(words: Iterable<string>, least = 0) {
    this.#least = least;
    for (const word of words) {
      const shape = `${word[0]}${word.length}`;
      const alike = this.#alike.get(shape) ?? { words: [], letters: [] };
      alike.words.push(word);
      alike.letters.push(lettersOf(word));
      this.#alike.set(shape, alike);
    }
  }

  /** The known word one slip away that starts alike, or undefined; the longest where there are several, then the earliest slip. */
  find(word: string): string | undefined {
    const letters = lettersOf(word);
    for (const length of [word.length, word.length - 1]) {
      const sure = this.#alike.get(`${word[0]}${length}`)?.words.find(known => isSureSlip(word, known));
      if (sure !== undefined) return sure;
    }
    if (word.length < this.#least) return undefined;
    for (const length of [word.length + 1, word.length, word.length - 1]) {
      const alike = this.#alike.get(`${word[0]}${length}`);
      if (!alike) continue;
      const found = alike.words.filter(
        (known, k) =>
          known.length >= this.#least && areNear(letters, alike.letters[k]!) && isOneSlip(word, known),
      );
      if (found.length < 2 || length > word.length) {
        if (found.length > 0) return found[0];
        continue;
      }
      const slips = found.map(known => firstSlip(word, known));
      return found[slips.indexOf(Math.min(...slips))];
    }
    return undefined;
  }
}
