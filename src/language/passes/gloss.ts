import { compound, type English, folded, type Glosses, glossesOf } from '../glosses.ts';
import type { State } from '../state.ts';
import { type Token, token } from '../token.ts';

/** What a phrase of the message stands for: the English, the numbers in it, and where it ends. */
interface Match {
  readonly english: English;
  readonly numbers: readonly Token[];
  readonly end: number;
}

const isHyphen = (one: Token | undefined): boolean => one?.text === '-' && one.isGlued;

/**
 * Puts English in the place of the words of another language, so that all passes behind read one language. What
 * has no entry stays as it is: numbers, units, names. Each token keeps its place in the message.
 */
export function gloss(state: State, code: string): void {
  const glosses = glossesOf(code);
  const tokens = state.tokens.flatMap(one => parts(one, glosses));
  const out: Token[] = [];
  for (let i = 0; i < tokens.length; ) {
    const match = matchAt(tokens, i, glosses) ?? compoundAt(tokens[i]!, i, glosses);
    if (match) {
      put(out, tokens, i, match);
      i = match.end;
    } else {
      // "LiFePO4-Akku": two words, whatever joins them.
      const isJoint = isHyphen(tokens[i]) && tokens[i - 1]?.kind === 'word' && tokens[i + 1]?.kind === 'word';
      if (!isJoint) out.push(tokens[i]!);
      i++;
    }
  }
  state.tokens = out;
}

/** "l'onduleur", which the scan made one word of: the part that means something. */
function parts(one: Token, { elided }: Glosses): Token[] {
  if (!one.hasApostrophe || elided.size === 0) return [one];
  const cut = one.raw.search(/['’‘ʼ`´]/);
  if (cut < 1 || !elided.has(one.raw.slice(0, cut).toLowerCase())) return [one];
  const rest = one.raw.slice(cut + 1);
  const head = one.raw.slice(0, cut);
  const at = one.from + cut + 1;
  const tail = token('word', rest.toLowerCase(), rest, 0, at, one.to, false);
  const isQuiet = head.toLowerCase() !== 'j';
  return isQuiet ? [tail] : [token('word', 'j', head, 0, one.from, at, one.isGlued), tail];
}

/** The longest phrase that starts at `at`. Linear: no phrase is longer than a handful of words. */
function matchAt(tokens: readonly Token[], at: number, { first }: Glosses): Match | undefined {
  if (tokens[at]!.kind === 'sign' && tokens[at]!.text !== '/') return undefined;
  let node: Glosses['first'] | undefined = first;
  let best: Match | undefined;
  const numbers: Token[] = [];
  for (let i = at; i < tokens.length; i++) {
    const one = tokens[i]!;
    if (i > at && isHyphen(one) && !node.next.has('-')) continue;
    const key = one.kind === 'number' ? '#' : one.kind === 'word' ? folded(one.text) : one.text;
    node = node.next.get(key);
    if (!node) break;
    if (one.kind === 'number') numbers.push(one);
    if (node.english) best = { english: node.english, numbers: [...numbers], end: i + 1 };
  }
  return best;
}

function compoundAt(one: Token, at: number, glosses: Glosses): Match | undefined {
  const english = one.kind === 'word' ? compound(glosses, folded(one.text)) : undefined;
  return english && { english, numbers: [], end: at + 1 };
}

/** Writes the English: its words stand where the phrase stood, its numbers where they were. */
function put(out: Token[], tokens: readonly Token[], at: number, { english, numbers, end }: Match): void {
  const [from, to] = [tokens[at]!.from, tokens[end - 1]!.to];
  let next = 0;
  for (const [i, word] of english.entries()) {
    const isFirst = i === 0;
    if (word === '#') {
      out.push(numbers[next++]!);
      continue;
    }
    const kind = /^[a-z%]/.test(word) ? 'word' : 'sign';
    const isGlued = word === '%' ? true : isFirst && tokens[at]!.isGlued && tokens[at - 1]?.kind === 'number';
    out.push(token(kind, word, word, 0, from, to, isGlued));
  }
}
