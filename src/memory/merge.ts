import { framesKept, type Memory } from '#conversation/memory.ts';

/**
 * One memory from two, when a group became a supergroup and people talked in the new one before the news
 * came. Part by part the new chat's wins and the old one fills the gaps: rigs and lessons by owner, settings
 * by name; questions in order; things said in passing and claims as a whole each.
 */
export const merge = (newer: Memory, older: Memory): Memory => ({
  version: newer.version,
  rigs: { ...older.rigs, ...newer.rigs },
  shared: newer.shared || older.shared ? { ...older.shared, ...newer.shared } : undefined,
  learned: newer.learned || older.learned ? { ...older.learned, ...newer.learned } : undefined,
  passing: newer.passing ?? older.passing,
  frames: [...older.frames, ...newer.frames].slice(-framesKept),
  talk: newer.talk ?? older.talk,
  claims: newer.claims.length > 0 ? newer.claims : older.claims,
  lessons: { ...older.lessons, ...newer.lessons },
  settings: { ...older.settings, ...newer.settings },
  people: peopleOf(newer, older),
});

/** Names held in both: each person's newer one, and of two people of one name only the newer chat's. */
function peopleOf({ people: newer }: Memory, { people: older }: Memory): Memory['people'] {
  if (!newer || !older) return newer ?? older;
  const taken = new Set(Object.values(newer).map(name => name.toLowerCase()));
  const free = Object.entries(older).filter(([, name]) => !taken.has(name.toLowerCase()));
  return { ...Object.fromEntries(free), ...newer };
}
