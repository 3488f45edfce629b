import { applianceOf, supplyOf } from '#catalog/appliances.ts';
import { buildNamed } from '#engine/loads/build.ts';
import { complete } from '#rig/complete.ts';
import type { Facts, Stated } from '#rig/rig.ts';

/** What was told, ready for the engine: counts of one and the usual supply of each load filled in. */
export const factsOf = (stated: Stated): Facts =>
  complete(stated, name => (buildNamed(name) === 'household' ? 'ac' : supplyOf(name)));

/** Whether a thing of a name cools by a compressor, so far as its name tells. */
export const cools = (name: string): boolean => applianceOf(name)?.setPointC !== undefined;

/** Whether what a thing of a name usually draws is known. */
export const hasTypical = (name: string): boolean => applianceOf(name) !== undefined;

/** Whether somebody's health hangs on a thing of a name. */
export const isMedicalNamed = (name: string): boolean => applianceOf(name)?.isMedical === true;

/** Whether the plate of a thing of a name gives what comes out of it, as a microwave's does. */
export const isPlateOutput = (name: string): boolean => applianceOf(name)?.inputFactor !== undefined;
