import { applianceOf } from '#catalog/appliances.ts';
import { hasHours, isWhole } from '#engine/loads/reading.ts';
import type { Facts, Load } from '#rig/rig.ts';

/** Whether a thing runs through the day by itself. */
export const isCooler = ({ name }: Load): boolean => applianceOf(name)?.setPointC !== undefined;

const isFree = (load: Load): boolean => !isCooler(load) && !hasHours(load) && !isWhole(load);

/** Loads without hours of their own are on for the hours told, but for what cools. */
const onFor = (load: Load, hours: number): Load => (isFree(load) ? { ...load, hoursPerDay: hours } : load);

/** What runs, each thing for the hours told. */
export const overHours = (facts: Facts, hours: number): Facts =>
  facts.loads ? { ...facts, loads: facts.loads.map(load => onFor(load, hours)) } : facts;
