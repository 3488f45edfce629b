import { present } from '#basics/present.ts';
import type { Solar } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, Values } from '../assumption.ts';
import { taken } from '../explore.ts';
import { countOf, leastRatio } from '../solar/module.ts';
import { openVoltsOf, wiringAssumptions } from '../solar/wiring.ts';
import { panelContinuous, panelShortCircuit } from './pair-rules.ts';
import { brightSunFactor, shortAgainstFull } from './tables.ts';

const wanted = new Set(['openCircuitVoltage', 'fullPowerShare']);

/** What is taken for granted of panels' labels: volts, where nobody told them. */
export const panelLeadAssumptions = (panels: readonly Solar[]): Assumption[] =>
  wiringAssumptions({ panels, controller: 'pwm', blocks: 1, isShaded: false }).filter(a =>
    wanted.has(a.name),
  );

/** Currents on the lead that all panels share, A. */
export interface PanelCurrents {
  /** At full power. */
  readonly fullA: number;
  /** A quarter above the current into a short, which cable and fuse must stand for long. */
  readonly continuousA: number;
}

/**
 * Currents of panels on one lead, side by side as far as a battery's volts allow (which makes the most of them).
 * Takes the assumptions of `panelLeadAssumptions`.
 * @param inSeries panels in each string, where that is settled
 */
export function panelCurrents(
  panels: readonly Solar[],
  voltageV: number,
  values: Values,
  trace?: Trace,
  inSeries?: number,
): PanelCurrents {
  const told = panels.filter(panel => panel.powerW !== undefined);
  const P = told.reduce((sum, panel) => sum + panel.count * present(panel.powerW), 0);
  const V_oc = Math.min(...told.map(panel => openVoltsOf(panel, values)));
  const n_s =
    inSeries ?? Math.min(countOf(told), Math.max(1, Math.ceil(((voltageV / 12) * leastRatio) / V_oc)));
  const I_sc = run(
    panelShortCircuit,
    { k_sc: shortAgainstFull, P, n_s, k_mp: taken(values, 'fullPowerShare'), V_oc },
    trace,
  );
  return {
    fullA: I_sc / shortAgainstFull,
    continuousA: run(panelContinuous, { k_i: brightSunFactor, I_sc }, trace),
  };
}
