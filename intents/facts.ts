import { supplyOf } from '#catalog/appliances.ts';
import { complete } from '#rig/complete.ts';
import type { Facts, Stated } from '#rig/rig.ts';

/** What was told, ready for the engine: counts of one and the usual supply of each load filled in. */
export const factsOf = (stated: Stated): Facts => complete(stated, supplyOf);
