import { emergencies, type HazardCode, hazardCodes } from '#rig/hazard-codes.ts';
import { hasEvidence } from './evidence.ts';

/**
 * From which probability on a danger is named: of all dangers together, of the likeliest that the words can show, and of
 * a further one beside it; of an emergency more, as it takes the whole answer. From `sure` on a danger is
 * named although no word of the lexicon shows it: what was learned knows more words than the lexicon does. Chosen on
 * messages that no weights had seen, so that hardly any danger is missed.
 */
export const alarm = {
  least: 0.09,
  first: { emergency: 0.12, other: 0.065 },
  further: { emergency: 0.15, other: 0.065 },
  sure: 0.65,
} as const;

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
    .map(code => ({
      code,
      p: hazards.get(code) ?? 0,
      kind: emergencies.has(code) ? ('emergency' as const) : ('other' as const),
    }))
    .filter(({ code, p }) => p >= alarm.sure || hasEvidence(code, concepts))
    .sort((a, b) => b.p - a.p)
    .slice(0, 2)
    .filter(({ p, kind }, k) => p >= (k === 0 ? alarm.first : alarm.further)[kind])
    .map(({ code }) => code);
}
