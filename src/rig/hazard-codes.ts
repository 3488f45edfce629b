/** The dangers that a message may hold. */
export const hazardCodes = [
  'carbon-monoxide',
  'battery-fire',
  'gas',
  'mains-wiring',
  'mains-lead',
  'backfeed',
  'bigger-fuse',
  'no-fuse',
  'over-current',
  'cold-charge',
  'generator-inside',
  'mixed-parallel',
  'medical',
  'jump-start',
  'starter-flat',
] as const;

export type HazardCode = (typeof hazardCodes)[number];

/** Those in which somebody may be hurt now. */
export const emergencies: ReadonlySet<HazardCode> = new Set(['carbon-monoxide', 'battery-fire', 'gas']);
