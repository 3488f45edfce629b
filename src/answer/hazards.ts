import { present } from '#basics/present.ts';
import { emergencies, type HazardCode } from '#rig/hazard-codes.ts';
import type { HazardAnswer } from './hazard-answer.ts';
import { hazardAnswers } from './hazard-answers-table.ts';

const byCode: ReadonlyMap<HazardCode, HazardAnswer> = new Map(
  hazardAnswers.map(answer => [answer.code, answer]),
);

const nothing: ReadonlySet<string> = new Set();

/**
 * What is said of a danger.
 * @param concepts what the message speaks of: some ways to show a danger want other words
 */
export function hazardAnswer(code: HazardCode, concepts = nothing): HazardAnswer {
  const answer = present(byCode.get(code));
  const closer = answer.closer?.find(
    ({ of, not }) =>
      of.every(some => some.some(one => concepts.has(one))) && !not.some(one => concepts.has(one)),
  );
  return closer ? { ...answer, call: undefined, ...closer.says } : answer;
}

/** The whole answer of an emergency, where one of the dangers is one: what to do now, whom to call, no figures. */
export function emergencyText(codes: readonly HazardCode[], concepts = nothing): string | undefined {
  const code = codes.find(one => emergencies.has(one));
  const answer = code && hazardAnswer(code, concepts);
  return answer && [answer.first, answer.call, answer.instead, answer.defers].filter(Boolean).join('\n');
}

/** The lines that stand before anything else where a danger is seen: one a danger, three at most. */
export const warningLines = (
  codes: readonly HazardCode[],
  concepts = nothing,
  known: readonly HazardCode[] = [],
): readonly string[] =>
  codes.slice(0, 3).map(code => {
    const { first, shortly = first } = hazardAnswer(code, concepts);
    return known.includes(code) ? shortly : first;
  });

/** What of a text the rows of its dangers forbid; empty where it is as it should be. */
export function forbidden(text: string, codes: readonly HazardCode[]): readonly string[] {
  return codes.flatMap(code => hazardAnswer(code).never.flatMap(pattern => pattern.exec(text)?.[0] ?? []));
}
