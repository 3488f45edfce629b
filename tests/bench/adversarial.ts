import { present } from '#basics/present.ts';
import { read } from '#language/reading.ts';
import { filled, pieces } from './corpus.ts';
import { cpuMs, keep, median, round, type Section, times } from './measure.ts';

const many = 200;
const rounds = 7;
/** One that looks worse than it may be is measured again, so often at most: other work on the machine moves it too. */
const batches = 8;

/** Numbers that come again on every machine (a linear congruence; Numerical Recipes' constants). */
function numbers(seed: number): (below: number) => number {
  let state = seed;
  return below => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

/** Text after text, each of pieces that are hard to read, over and over in its own order: speakers and claims among them. */
export function adversarialTexts(count = many): readonly string[] {
  const next = numbers(16);
  const all = Object.values(pieces).filter(piece => piece.length < 200);
  return Array.from({ length: count }, (_, i) => {
    if (i < all.length) return present(all[i]);
    const parts = Array.from({ length: 2 + next(4) }, () => present(all[next(all.length)]));
    return `${parts.join([' ', ', ', '. ', '', '\n', ' and '][next(6)])}${[' ', ', ', '? ', ''][next(4)]}`;
  });
}

/** Below this the clock says more than the reader, ms. */
const leastMs = 0.1;
/** Twice the text may take so much longer. */
const mostRatio = 2;

const ratioOf = ({ short, long }: { readonly short: number; readonly long: number }): number =>
  long / Math.max(short, leastMs);

/** Reads at both lengths in turn. @returns the least CPU time of each, ms */
function leastOf(piece: string): readonly [short: number, long: number] {
  const [short, long] = [filled(piece, 2048), filled(piece, 4096)];
  const took = { short: Number.POSITIVE_INFINITY, long: Number.POSITIVE_INFINITY };
  const time = (text: string): number => {
    const before = cpuMs();
    keep(read(text, {}));
    return cpuMs() - before;
  };
  for (let batch = 0; batch < batches && (batch === 0 || ratioOf(took) > mostRatio); batch++)
    for (let round = 0; round < rounds; round++) {
      took.short = Math.min(took.short, time(short));
      took.long = Math.min(took.long, time(long));
    }
  return [took.short, took.long];
}

/** Any 4,096 characters against 2,048: CPU time, which other work on the machine moves little. */
export function adversarial(): Section {
  const texts = adversarialTexts();
  const found = texts.map(piece => {
    const [short, long] = leastOf(piece);
    return { piece, long, ratio: ratioOf({ short, long }) };
  });
  const worst = found.reduce((a, b) => (b.ratio > a.ratio ? b : a));
  const slowest = found.reduce((a, b) => (b.long > a.long ? b : a));
  const over = found.filter(({ ratio }) => ratio > mostRatio).length;
  const named = (piece: string): string => JSON.stringify(piece.slice(0, 40));
  return {
    title: `${many} hostile texts of 4,096 characters beside their first 2,048: reading alone`,
    lines: [
      { what: 'twice the text, median', value: times(median(found.map(one => one.ratio))) },
      { what: 'at worst', value: times(worst.ratio), goal: '≤ 2 ×', isMet: worst.ratio <= mostRatio },
      { what: `the worst: ${named(worst.piece)}`, value: `${round(worst.long)} ms` },
      { what: 'texts above 2 ×', value: String(over) },
      { what: 'slowest, ms', value: round(slowest.long), goal: '≤ 5', isMet: slowest.long <= 5 },
      { what: `the slowest: ${named(slowest.piece)}`, value: times(slowest.ratio) },
    ],
  };
}
