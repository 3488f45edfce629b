import type { Cue, Said } from '#language/said.ts';

/** Whether one word comes before the other in a message: cues stand in the order in which they were heard. */
export function isFirst({ cues }: Said, first: Cue, second: Cue): boolean {
  if (!cues.has(first)) return false;
  for (const cue of cues) if (cue === first || cue === second) return cue === first;
  return false;
}
