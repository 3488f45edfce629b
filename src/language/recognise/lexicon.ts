/** The words of a message as the lexicons see them: text at an index, '' where there is no word. */
export interface Words {
  readonly length: number;
  wordAt(index: number): string;
}

interface Node<T> {
  value: T | undefined;
  next: Map<string, Node<T>> | undefined;
}

/** A phrase found: what it means and how many tokens it takes. */
export interface Found<T> {
  readonly value: T;
  readonly length: number;
}

/** Phrases of one or more words, looked up longest first, in time proportional to the phrase; "*" is any one word. */
export class Lexicon<T> {
  readonly #first = new Map<string, Node<T>>();

  /** Adds a phrase: words apart by one space. A later phrase of the same words wins. */
  add(phrase: string, value: T): void {
    let level = this.#first;
    let node: Node<T> | undefined;
    for (const word of phrase.split(' ')) {
      node = level.get(word);
      if (!node) {
        node = { value: undefined, next: undefined };
        level.set(word, node);
      }
      if (!node.next) node.next = new Map();
      level = node.next;
    }
    if (node) node.value = value;
  }

  /** The longest phrase that starts at `index`, or undefined. */
  find(words: Words, index: number): Found<T> | undefined {
    let node = this.#first.get(words.wordAt(index));
    if (!node) return undefined;
    let best: Found<T> | undefined;
    let length = 1;
    while (node) {
      if (node.value !== undefined) best = { value: node.value, length };
      if (!node.next || node.next.size === 0 || index + length >= words.length) break;
      const word = words.wordAt(index + length);
      node = node.next.get(word) ?? (word ? node.next.get('*') : undefined);
      length++;
    }
    return best;
  }

  /** Every single word that occurs in a phrase. */
  vocabulary(into: Set<string>): void {
    const walk = (level: Map<string, Node<T>>): void => {
      for (const [word, node] of level) {
        into.add(word);
        if (node.next) walk(node.next);
      }
    };
    walk(this.#first);
  }
}
