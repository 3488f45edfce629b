import { type HazardCode, hazardCodes } from '#rig/hazard-codes.ts';

/**
 * From which probability on a danger is named: of all dangers together, and of a further one beside the likeliest.
 * Chosen on open messages, so that hardly any danger is missed and hardly a harmless message alarms.
 */
export const alarm = { least: 0.15, further: 0.1 } as const;

/** The dangers that probabilities are enough for, the likeliest first; none where the message seems harmless. */
export function alarmed(hazards: ReadonlyMap<string, number>): readonly HazardCode[] {
  const likely = hazardCodes.map(code => ({ code, p: hazards.get(code) ?? 0 })).sort((a, b) => b.p - a.p);
  if (likely.reduce((sum, { p }) => sum + p, 0) < alarm.least) return [];
  return likely.filter(({ p }, k) => k === 0 || (k === 1 && p >= alarm.further)).map(({ code }) => code);
}
