import type { HazardCode } from '#rig/hazard-codes.ts';

/**
 * What at least one word or figure of a message must mean for a danger to be named in it at all: without any cold
 * nothing is charged in the cold, whatever else a message is like. Concepts of the lexicon and of the figures.
 */
const evidence: Readonly<Record<HazardCode, string>> = {
  'carbon-monoxide':
    'symptom fuel-heater flued-heater coals generator exhaust heater cooker engine gas-word co alarm detector ppm-word warmth car',
  'battery-fire':
    'smoke swollen fat hiss hot warm unbearable smell burnt-smell cut-open broken-cell bypass short-circuit flames melt exploded damaged reuse',
  gas: 'wet-lead gas-word smell leak eggs acid caps ignite gas-alarm closed battery-box body hiss bottle',
  'mains-wiring':
    'mains inlet switchboard socket wire-up myself which-wire tingle tingle-metal mains-thing electrician no-earth trip-word plug supply',
  'mains-lead':
    'both-ends cord earth-pin cut-off join tape coiled plug-change rolled exposed thin plug chained flex socket twist',
  backfeed: 'mains inlet socket plug both-ends feed house all-live both-on power-cut cord',
  'bigger-fuse':
    'fuse switchboard blow bigger foil fuse-like fuse-foil-2 swap-word put-in #two-ratings #two-currents',
  'no-fuse': 'fuse no-fuse direct hooked bypass-fuse nothing-else omit',
  'over-current':
    'warm hot melt burnt-smell bms limit limit-word ciggy small-plug alternator isolator socket plug supply big-load direct no-dcdc fuse wire-word insulation inverter #over-limit #over-charge-limit #over-cable #over-socket #over-fuse #over-supply #two-currents #bank-over-alternator',
  'cold-charge': 'frost cold-word #below-zero #near-zero',
  'generator-inside': 'generator engine bit-open inside',
  'mixed-parallel':
    'old different age-word year-word second-battery car-battery one-of-them mixing #two-capacities #two-kinds #years',
  medical: 'medical',
  'jump-start':
    'no-start clamps clamp-order will-start start-engine help-word starter second-battery #two-voltages car engine car-battery battery lithium lead-acid house',
  'starter-flat':
    'starter no-start will-start car-battery ciggy clicks dead-car battery-dead car engine slow',
};

const needed = new Map(
  Object.entries(evidence).map(([code, concepts]) => [code, new Set(concepts.split(' '))] as const),
);

/** Whether a message with these meanings holds anything that a danger could show by. */
export const hasEvidence = (code: HazardCode, concepts: Iterable<string>): boolean => {
  const wanted = needed.get(code)!;
  for (const concept of concepts) if (wanted.has(concept)) return true;
  return false;
};
