import { without } from '#basics/without.ts';
import { applianceOf, supplyOf } from '#catalog/appliances.ts';
import { buildNamed } from '#engine/loads/build.ts';
import { complete } from '#rig/complete.ts';
import type { Facts, Stated, StatedLoad } from '#rig/rig.ts';

/** From here on the watts told of a heater that burns fuel are its heat, W: its fan and glow plug take far less. */
const leastHeatW = 800;

/** "The 2 kW one" of a diesel heater: its heat, of which the battery gives nothing. */
function withoutHeat({ loads, ...rest }: Stated): Stated {
  const isHeat = ({ name, powerW = 0 }: StatedLoad): boolean =>
    powerW >= leastHeatW && applianceOf(name)?.id === 'diesel heater';
  if (!loads?.some(isHeat)) return loads ? { ...rest, loads } : rest;
  return {
    ...rest,
    loads: loads.map(load => (isHeat(load) ? without(load, 'powerW', 'supply', 'isInput') : load)),
  };
}

/** What was told, ready for the engine: counts of one and the usual supply of each load filled in. */
export const factsOf = (stated: Stated): Facts =>
  complete(withoutHeat(stated), name => (buildNamed(name) === 'household' ? 'ac' : supplyOf(name)));

/** Whether a thing of a name cools by a compressor, so far as its name tells. */
export const cools = (name: string): boolean => applianceOf(name)?.setPointC !== undefined;

/** Whether what a thing of a name usually draws is known. */
export const hasTypical = (name: string): boolean => applianceOf(name) !== undefined;

/** Whether somebody's health hangs on a thing of a name. */
export const isMedicalNamed = (name: string): boolean => applianceOf(name)?.isMedical === true;

/** Whether the plate of a thing of a name gives what comes out of it, as a microwave's does. */
export const isPlateOutput = (name: string): boolean => applianceOf(name)?.inputFactor !== undefined;
