/** Clusters of words packed small: what `clusters.json` holds. */
export interface PackedClusters {
  /** All words in order, each as the length of what it shares with the one before (A is none) and its other letters. */
  readonly words: string;
  /** One number a word, two bytes, the low one first, in base 64. */
  readonly numbers: string;
}

const firstLength = 65; // "A"
const firstLetter = 97; // "a"

/** Packs words of small letters, each with a number below 65,536. */
export function packClusters(clusters: ReadonlyMap<string, number>): PackedClusters {
  const sorted = [...clusters.keys()].sort();
  const numbers = Buffer.alloc(sorted.length * 2);
  let words = '';
  let before = '';
  sorted.forEach((word, i) => {
    let shared = 0;
    while (shared < 25 && shared < before.length && word[shared] === before[shared]) shared++;
    words += String.fromCharCode(firstLength + shared) + word.slice(shared);
    before = word;
    numbers.writeUInt16LE(clusters.get(word)!, i * 2);
  });
  return { words, numbers: numbers.toString('base64') };
}

/** The words and their numbers again. */
export function unpackClusters({ words, numbers }: PackedClusters): ReadonlyMap<string, number> {
  const bytes = Buffer.from(numbers, 'base64');
  const out = new Map<string, number>();
  let word = '';
  let at = 0;
  while (at < words.length) {
    const shared = words.charCodeAt(at) - firstLength;
    let end = at + 1;
    while (end < words.length && words.charCodeAt(end) >= firstLetter) end++;
    word = word.slice(0, shared) + words.slice(at + 1, end);
    out.set(word, bytes.readUInt16LE(out.size * 2));
    at = end;
  }
  return out;
}
