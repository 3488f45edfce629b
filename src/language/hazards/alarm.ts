import { emergencies, type HazardCode, hazardCodes } from '#rig/hazard-codes.ts';
import { hasEvidence } from './evidence.ts';

/**
 * From which probability on a danger is named: of all dangers together, of the likeliest that the words can show,
 * and of a further one beside it; of a further one that
 * is an emergency more, as it takes the whole answer. Chosen on open messages, so that hardly any danger is missed and hardly a
 * harmless message alarms.
 */
export const alarm = { least: 0.15, first: 0.05, further: 0.1, emergency: 0.25 } as const;

const leastOf = (code: HazardCode, isFirst: boolean): number =>
  isFirst ? alarm.first : emergencies.has(code) ? alarm.emergency : alarm.further;

/**
 * The dangers that probabilities are enough for, the likeliest first; none where the message seems harmless.
 * @param spoken gives what the words of the message mean, as `meaningOf` finds it; asked only where they alarm
 */
export function alarmed(
  hazards: ReadonlyMap<string, number>,
  spoken: () => ReadonlySet<string>,
): readonly HazardCode[] {
  let sum = 0;
  for (const code of hazardCodes) sum += hazards.get(code) ?? 0;
  if (sum < alarm.least) return [];
  const concepts = spoken();
  return hazardCodes
    .map(code => ({ code, p: hazards.get(code) ?? 0 }))
    .filter(({ code }) => hasEvidence(code, concepts))
    .sort((a, b) => b.p - a.p)
    .slice(0, 2)
    .filter(({ code, p }, k) => p >= leastOf(code, k === 0))
    .map(({ code }) => code);
}
