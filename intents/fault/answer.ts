import type { Reply } from '#answer/reply.ts';
import { sentence } from '#answer/say.ts';
import type { CautionCode } from '#answer/words/en.ts';
import type { Facts } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { reasons } from '../figures.ts';
import type { Fault } from './compute.ts';

/** Sums and causes that a phone shows: two causes always, a third where there is room (characters). */
const most = { findings: 2, causes: 3, sure: 2, characters: 470 } as const;

/** As many causes as there is room for below these lines. */
function causesIn({ causes, spoken }: Fault, above: readonly string[]): string[] {
  const all = causes.slice(0, most.causes).map(({ check }, i) => `${i + 1}. ${spoken(check)}`);
  const sure = all.slice(0, most.sure);
  const length = [...above, ...all].join(' ').length;
  return length <= most.characters ? all : sure;
}

/** What to check, likeliest first, with the reading that tells. */
export function answerFault(facts: Facts, fault: Fault): Reply {
  const { symptom, causes, findings, isToldAll, spoken } = fault;
  const sure = symptom.isFuse ? undefined : findings.find(({ isCause, likely }) => isCause && likely);
  const shown = findings.slice(0, most.findings);
  const figures = Object.assign({}, ...[...shown].reverse().map(one => one.figures));
  const explored = shown.find(finding => finding.explored)?.explored;
  const cautions: CautionCode[] = [
    ...(symptom.isFuse ? (['no-fuse'] as const) : []),
    ...loadCautions(facts),
    ...(symptom.caution ? [symptom.caution] : []),
    'fault-finding',
  ];
  const headline = sentence(spoken(sure?.likely ?? causes[0].likely).replace(/^Or /, ''));
  const worked = shown
    .map(finding => spoken(finding === sure ? (finding.mend ?? '') : finding.says))
    .filter(Boolean)
    .map(sentence);
  const question = isToldAll ? '' : symptom.asks[0];
  return {
    headline,
    lines: [...worked, ...causesIn(fault, [headline, ...worked, question]), question].filter(Boolean),
    verdict: symptom.isFuse ? 'no' : null,
    ...(Object.keys(figures).length > 0 && { figures }),
    ...(explored && { working: reasons(explored).working }),
    cautions,
    next: explored ? ['show the working'] : [],
  };
}
