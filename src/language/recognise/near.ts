/** Words that come out of one word by one slip: a letter left out. Both sides leave one out, so any slip is found. */
function* deletions(word: string): Generator<string> {
  for (let i = 0; i < word.length; i++) yield word.slice(0, i) + word.slice(i + 1);
}

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

/** "Did you mean": finds the known word that a misspelt one stands for, in time that doesn't depend on how many are known. */
export class Near {
  readonly #byDeletion = new Map<string, string[]>();
  #longest = 0;

  constructor(words: Iterable<string>) {
    for (const word of words) {
      this.#longest = Math.max(this.#longest, word.length);
      this.#add(word, word);
      for (const shorter of deletions(word)) this.#add(shorter, word);
    }
  }

  #add(key: string, word: string): void {
    const list = this.#byDeletion.get(key);
    if (!list) this.#byDeletion.set(key, [word]);
    else if (list.length < 12 && !list.includes(word)) list.push(word);
  }

  /** The known word one slip away that starts alike, or undefined; the longest where there are several. */
  find(word: string): string | undefined {
    // What is longer is no slip of any, and to try its letters one by one would take long.
    if (word.length > this.#longest + 1) return undefined;
    let best: string | undefined;
    const look = (key: string): void => {
      for (const known of this.#byDeletion.get(key) ?? [])
        if (known[0] === word[0] && known.length > (best?.length ?? 0) && isOneSlip(word, known))
          best = known;
    };
    look(word);
    for (const shorter of deletions(word)) look(shorter);
    return best;
  }
}
