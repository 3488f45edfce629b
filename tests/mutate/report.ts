import type { Constant, Kind } from './constants.ts';
import { engineConstants, type Finding, findings } from './published.ts';

const percent = (part: number, whole: number): string =>
  whole === 0 ? 'none' : `${part} of ${whole}, ${Math.round((1000 * part) / whole) / 10} %`;

const isSeen = ({ seenBy }: Finding): boolean => seenBy.every(id => id !== undefined);
const isHalfSeen = (finding: Finding): boolean =>
  !isSeen(finding) && finding.seenBy.some(id => id !== undefined);

const short = (id: string | undefined): string =>
  id?.replace('tests/published/', '').replace('.ts ', ' ') ?? '-';

function line(finding: Finding): string {
  const { constant, seenBy } = finding;
  const verdict = isSeen(finding) ? 'seen  ' : isHalfSeen(finding) ? 'HALF  ' : 'UNSEEN';
  const [more, less] = seenBy;
  const by = more === undefined && less === undefined ? '' : `  more: ${short(more)}, less: ${short(less)}`;
  return `${verdict} ${constant.kind.padEnd(10)} ${constant.path}:${constant.line}  ${constant.text}${by}`;
}

const kinds: Readonly<Record<Kind, string>> = {
  table: 'values declared (tables, assumptions, defaults)',
  formula: "numbers in rules' formulas",
  whole: "rules' results",
  arithmetic: 'other numbers in functions',
  text: 'no facts: roundings in texts',
  grain: 'no facts: grains',
};

/**
 * Prints what published rows see of each constant, and the shares; with words, of the files whose path holds one, or of
 * the kind that is named (`arithmetic`); with two numbers, of as many as the first says, drawn from the second.
 */
export async function report(asked: readonly string[]): Promise<number> {
  const [size, seed = 7] = asked.filter(word => /^\d+$/.test(word)).map(Number);
  const ofKind = asked.filter(word => Object.hasOwn(kinds, word));
  const words = asked.filter(word => !/^\d+$/.test(word) && !ofKind.includes(word));
  const isWanted = (path: string) => words.length === 0 || words.some(word => path.includes(word));
  const all: Finding[] = [];
  const isTried = ({ path, kind }: Constant) =>
    isWanted(path) && (ofKind.length === 0 || ofKind.includes(kind));
  for await (const finding of findings(isTried, size === undefined ? undefined : { size, seed })) {
    all.push(finding);
    console.log(line(finding));
  }
  const { untried, unreached } = engineConstants();
  const left = untried.filter(({ path }) => isWanted(path));
  console.log('\nNot tried:');
  for (const why of new Set(left.map(number => number.why))) {
    const those = left.filter(number => number.why === why);
    const where = new Set(those.map(({ path }) => path.replace('src/engine/', '')));
    console.log(`  ${why}: ${those.length} numbers in ${[...where].join(', ')}`);
  }
  console.log(
    `\nCounted as unseen, as no row loads their file: ${unreached.filter(isWanted).join(', ') || 'none'}`,
  );
  console.log('\nSeen with a fifth more and with a fifth less (in brackets: with one of the two):');
  const tell = (name: string, some: readonly Finding[]) =>
    console.log(
      `  ${name}: ${percent(some.filter(isSeen).length, some.length)} (${some.filter(isHalfSeen).length})`,
    );
  for (const [kind, name] of Object.entries(kinds))
    tell(
      name,
      all.filter(f => f.constant.kind === kind),
    );
  const facts = all.filter(({ constant: { kind } }) => kind !== 'text' && kind !== 'grain');
  tell(
    'tables and formulas',
    facts.filter(f => f.constant.kind !== 'arithmetic'),
  );
  tell('all that are facts', facts);
  return 0;
}
