import { terms } from '#catalog/glossary.ts';
import { lex } from '../lex/lex.ts';
import { termAsking } from '../words/en/term-asking.ts';

/** A known word of the trade where it stands in a message, as words from (inclusive) and to (exclusive). */
interface Spot {
  readonly from: number;
  readonly to: number;
  readonly key: string;
}

const spaced = (words: readonly string[]): string => words.join(' ');
/** Every spelling of every term, as the words of a message are: "b & s", "dc dc charger". */
const keys: ReadonlyMap<string, string> = new Map(
  terms
    .flatMap(({ key, aliases }) => [key, ...aliases].map(said => [said, key] as const))
    .map(([said, key]) => [spaced(lex(said).map(token => (token.kind === 'number' ? '' : token.text))), key])
    .filter(([said]) => said!.length > 1 && !said!.includes('  ') && !said!.startsWith(' ')) as [
    string,
    string,
  ][],
);
const longest = Math.max(...[...keys.keys()].map(said => said.split(' ').length));

/** Where known words stand, the longest first where they overlap. */
function spotsIn(words: readonly string[]): Spot[] {
  const out: Spot[] = [];
  let at = 0;
  while (at < words.length) {
    let to = Math.min(words.length, at + longest);
    while (to > at && !keys.has(spaced(words.slice(at, to)))) to--;
    const isIdiom = words[at - 1] === 'on' && words[at] === 'earth';
    if (to > at && !isIdiom) out.push({ from: at, to, key: keys.get(spaced(words.slice(at, to)))! });
    at = Math.max(to, at + 1);
  }
  return out;
}

const { meaning, asking, apart, small, common, idle } = termAsking;

/** How plainly the words beside a spot ask after it: "what does … mean", "what is …", "… ?", or not. */
function plainness(words: readonly string[], { from, to }: Spot): number {
  const next = words.slice(to).find(word => !small.has(word));
  if (next !== undefined && meaning.has(next)) return 3;
  let before = from - 1;
  while (before >= 0 && small.has(words[before]!)) before--;
  if (before >= 0 && asking.has(words[before]!)) return 2;
  const isAlone = from === 0 || words[from - 1] === '"' || words[from - 1] === '.';
  return isAlone ? 1 : 0;
}

/**
 * The word of the trade that a message asks after, as it is written there; two of them where it asks what sets them
 * apart. Undefined where it has none that is known.
 */
export function askedTerm(words: readonly string[]): string | undefined {
  const spots = spotsIn(words);
  if (spots.length === 0) return undefined;
  const said = (from: number, to: number): string =>
    words
      .slice(from, to)
      .filter(word => word !== '')
      .join(' ');
  const isApart = words.some(word => apart.has(word));
  const [first, second] = spots;
  if (isApart && second && second.from - first!.to <= 5) return said(first!.from, second.to);
  // What a label stands on ("on my charger") is rarely what is asked after.
  const rank = (spot: Spot): number => plainness(words, spot) * 2 + (common.has(spot.key) ? 0 : 1);
  const best = spots.reduce((a, b) => (rank(b) > rank(a) ? b : a));
  return said(best.from, best.to);
}

/** The word or phrase asked after: what is left when the asking is taken off. */
export function termOf(words: readonly string[]): string | undefined {
  const spans: string[][] = [];
  let run: string[] = [];
  // After "what is", "explain", "mean by": the first run of words that are no asking.
  let from = 0;
  words.forEach((word, i) => {
    if (/^(?:whats?|wats?|wots?|explain|define|meaning|mean|means|difference)$/.test(word) && from === 0)
      from = i;
  });
  for (let i = 0; i < words.length; i++) {
    const word = words[i]!;
    if (word === '' || idle.has(word) || /^[^\p{L}\p{N}]+$/u.test(word)) {
      const isOf =
        (word === 'of' || word === 'to' || word === 'and') &&
        run.length > 0 &&
        words[i + 1] &&
        !idle.has(words[i + 1]!);
      if (isOf) run.push(word);
      else if (run.length > 0) {
        spans.push(run);
        run = [];
      }
    } else run.push(word);
  }
  if (run.length > 0) spans.push(run);
  const after = spans.find(s => words.indexOf(s[0]!) >= from);
  return (after ?? spans[0])?.slice(0, 5).join(' ');
}
