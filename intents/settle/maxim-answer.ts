import type { Reply } from '#answer/reply.ts';
import { list, sentence } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import type { HeldMaxim, RequestContext, SideTaken } from '../intent.ts';
import { settleAsides } from './asides-table.ts';
import { nameOf } from './claims.ts';
import { maximNamed } from './maxims.ts';
import type { Maxim } from './maxims-table.ts';
import { answerDepth, depthMaxim } from './subjects/depth.ts';

/** What is said of a maxim, here or in the row of what is commonly known. */
function wordsOf({ says, why, cautions, next, aside }: Maxim): Omit<Reply, 'verdict'> {
  const row = settleAsides.find(({ name }) => name === aside);
  const [line] = typeof row?.lines === 'object' ? row.lines : [];
  return {
    headline: says ?? String(row?.says),
    lines: [why ?? line ?? []].flat(),
    cautions: [...new Set([...(cautions ?? []), ...(row?.cautions ?? [])])],
    next: next ?? row?.next ?? [],
  };
}

const isPlural = (names: readonly string[]): boolean =>
  names.length > 1 || ['you', 'they'].includes(names[0] ?? '');

const be = (names: readonly string[]): string => (isPlural(names) ? 'are' : names[0] === 'I' ? 'am' : 'is');

/** Who is right, by name: of two sides who has it, of one whether they have. */
function whoIsRight({ isSo, holdsOf }: Maxim, sides: readonly SideTaken[], from: string): string {
  const names = (says: string): string[] => [
    ...new Set(sides.filter(side => side.says === says).map(({ who }) => nameOf(who, from))),
  ];
  const [yes, no] = [names('yes'), names('no')];
  if (isSo === 'depends') {
    const parts = [
      ...(yes.length > 0 && holdsOf ? [`${list(yes)} ${be(yes)} right ${holdsOf.yes}`] : []),
      ...(no.length > 0 && holdsOf
        ? [`${list(no)} ${yes.length > 0 ? '' : `${be(no)} right `}${holdsOf.no}`]
        : []),
    ];
    return `${sentence(parts.join(', '))}.`;
  }
  const [right, wrong] = isSo === 'yes' ? [yes, no] : [no, yes];
  if (right.length > 0) return `${sentence(list(right))} ${be(right)} right.`;
  return `No, ${list(wrong)} ${be(wrong)}n’t right.`.replace('amn’t', 'am not');
}

/** Words for a maxim: who is right of those who took a side, else whether what was asked about is so. */
export function answerMaxim(held: HeldMaxim, from: string): Reply {
  const { name, sides, asked } = held;
  if (name === depthMaxim) return answerDepth(held, from);
  const maxim = present(maximNamed(name));
  const words = wordsOf(maxim);
  const closest = maxim.isSo === 'depends' ? undefined : sides.find(({ says }) => says === maxim.isSo)?.who;
  const isRight = maxim.isSo === 'depends' || asked === undefined ? undefined : asked === maxim.isSo;
  const verdict = isRight === undefined ? null : isRight ? 'yes' : 'no';
  const opening =
    sides.length > 0
      ? whoIsRight(maxim, sides, from)
      : asked === undefined
        ? ''
        : { yes: 'Yes.', no: 'No.', depends: 'It depends.' }[verdict ?? 'depends'];
  return {
    ...words,
    headline: `${opening} ${words.headline}`.trim(),
    verdict,
    ...(closest !== undefined && { figures: { closest: { value: closest } } }),
  };
}

/** What of the trade is argued about: now, or in the argument that is asked about once more ("why?"). */
export function heldBy({ held, subject, claims, parsed }: RequestContext): HeldMaxim | undefined {
  const isTold = claims.length > 0 || parsed.claims.length > 0 || Object.keys(parsed.facts).length > 0;
  if (held || isTold || subject === undefined) return held;
  const isHeld = subject === depthMaxim || maximNamed(subject) !== undefined;
  return isHeld ? { name: subject, sides: [] } : undefined;
}
