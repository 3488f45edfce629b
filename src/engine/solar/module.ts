import { present } from '#basics/present.ts';
import type { Solar } from '#rig/rig.ts';
import type { Assumption, Values } from '../assumption.ts';
import { taken } from '../explore.ts';
import type { SolarCase } from './case.ts';

/** Panels above this rating are made for roofs, with more cells and more volts, W. Common practice. */
export const largePanelW = 220;

/** Open-circuit volts that each 12 V of battery asks for at least, so that a hot panel still charges it. Common practice. */
export const leastRatio = 17;

/** Volts of a label below this are no open-circuit ones but the name of a panel ("a 12 V panel"). Common practice. */
const namedV = 16;

/** Share of the open-circuit voltage at which a panel gives its full power. Data sheets of crystalline panels, from memory. */
export const fullPowerShare: Assumption = {
  name: 'fullPowerShare',
  value: 0.82,
  low: 0.78,
  high: 0.85,
  unit: '',
  why: 'crystalline silicon, common practice',
};

/** Panels in all. */
export const countOf = (panels: readonly Solar[]): number =>
  panels.reduce((sum, { count }) => sum + count, 0);

export const isLarge = (panels: readonly Solar[]): boolean =>
  panels.some(panel => (panel.powerW ?? 0) > largePanelW);

/** Whether a panel's open-circuit volts weren't told: not at all, or by a name that is no label. */
export const isNamed = (panel: Solar): boolean => (panel.openCircuitV ?? 0) < namedV;

/** Open-circuit volts of the panels, a mean, where the label of each was told. */
export function toldOpenV(panels: readonly Solar[] = []): number | undefined {
  if (panels.length === 0 || panels.some(isNamed)) return undefined;
  return panels.reduce((sum, p) => sum + p.count * present(p.openCircuitV), 0) / countOf(panels);
}

/** The fewest in series whose volts charge a battery of so many 12 V blocks; undefined where no equal strings do. */
export function fewestInSeries(count: number, openV: number, blocks: number): number | undefined {
  for (let n = 1; n <= count; n++) if (count % n === 0 && n * openV >= leastRatio * blocks) return n;
  return undefined;
}

/**
 * Volts at full power of what feeds a PWM controller: by the label where it was told, else those of panels for 12 V,
 * as many in series as make up the battery. Large ratings may be one panel for a roof, of 60 cells or more.
 */
export function fullPowerVolts({ panels = [], blocks = 1 }: SolarCase): Assumption {
  if (toldOpenV(panels) !== undefined) return fullPowerShare;
  const usual = {
    name: 'panelVoltage' as const,
    value: 18.1 * blocks,
    low: 17 * blocks,
    high: 19 * blocks,
    unit: 'V',
  };
  if (blocks > 1) return { ...usual, why: `panels for ${12 * blocks} V, or as many for 12 V in series` };
  if (isLarge(panels))
    return { ...usual, high: 33, why: 'panels for 12 V, 36 cells; one for a roof has up to twice the volts' };
  return { ...usual, why: 'panel for 12 V, 36 cells' };
}

/** Volts at full power of a string on a PWM controller, V. */
export function stringFullPowerV({ panels = [], blocks = 1 }: SolarCase, values: Values): number {
  const openV = toldOpenV(panels);
  if (openV === undefined) return taken(values, 'panelVoltage');
  const inSeries = fewestInSeries(countOf(panels), openV, blocks) ?? countOf(panels);
  return inSeries * openV * taken(values, 'fullPowerShare');
}
