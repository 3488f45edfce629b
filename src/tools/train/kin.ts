import type { HazardCode } from '#rig/hazard-codes.ts';

const kin: readonly (readonly HazardCode[])[] = [
  ['mains-lead', 'backfeed', 'mains-wiring'],
  ['gas', 'battery-fire', 'carbon-monoxide'],
  ['carbon-monoxide', 'generator-inside'],
  ['no-fuse', 'bigger-fuse', 'over-current'],
  ['jump-start', 'starter-flat'],
];

/** Whether a careful person might have given one code of a danger for the other. */
export const isKin = (a: HazardCode, b: HazardCode): boolean =>
  a === b || kin.some(codes => codes.includes(a) && codes.includes(b));
