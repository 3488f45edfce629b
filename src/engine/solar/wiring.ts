import { present } from '#basics/present.ts';
import type { Facts, Solar } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, Values } from '../assumption.ts';
import { meanChargeV } from '../battery/round-trip.ts';
import { taken } from '../explore.ts';
import type { Where } from './air.ts';
import { coldestMorning, labelC, voltageCoefficient } from './cold.ts';
import { countOf, fullPowerShare, isLarge, isNamed, leastRatio } from './module.ts';
import {
  coldVoltage,
  fullPowerCurrent,
  stringVoltage,
  switchedCurrent,
  trackedCurrent,
} from './wiring-rules.ts';

/** What a controller's plate says, where it was told. */
export interface ControllerPlate {
  /** The most volts its input stands. */
  readonly limitV?: number;
  /** The most amps it gives the battery. */
  readonly ratedA?: number;
}

/** Panels on one controller, and the battery behind it. */
export interface PanelCase {
  readonly panels: readonly Solar[];
  readonly controller?: 'mppt' | 'pwm';
  readonly plate?: ControllerPlate;
  readonly arrangement?: Facts['arrangement'];
  /** Blocks of 12 V that the battery is made of. */
  readonly blocks: number;
  readonly isShaded: boolean;
  /** The coldest morning, °C, where it was told; else by where they are. */
  readonly coldestC?: number;
  readonly where?: Where;
  /** A panel's current at full power off its label, A. */
  readonly fullPowerA?: number;
  /** How much of its volts a panel gains with each degree off its data sheet, 1/K. */
  readonly voltageCoefficient?: number | undefined;
}

/** What is taken for granted: the volts on labels nobody read out, the cold, and what stands behind the controller. */
export function wiringAssumptions(about: PanelCase): Assumption[] {
  const { panels, blocks } = about;
  const name = 'openCircuitVoltage';
  const label: Assumption = isLarge(panels)
    ? { name, value: 40, low: 36, high: 50, unit: 'V', why: 'usual for a large panel; read the label' }
    : { name, value: 22, low: 20, high: 25, unit: 'V', why: 'usual for a panel for 12 V; read the label' };
  const [value, low, high] = meanChargeV('agm', 'sun');
  return [
    ...(panels.every(panel => !isNamed(panel)) ? [] : [label]),
    ...(about.coldestC === undefined ? [coldestMorning(about.where ?? {})] : []),
    ...(about.voltageCoefficient === undefined ? [voltageCoefficient] : []),
    fullPowerShare,
    {
      name: 'controllerEfficiency',
      value: 0.95,
      low: 0.92,
      high: 0.98,
      unit: '',
      why: 'MPPT, common practice',
    },
    {
      name: 'chargingVoltage',
      value: value * blocks,
      low: low * blocks,
      high: high * blocks,
      unit: 'V',
      why: 'battery on charge, half full to nearly full',
    },
  ];
}

/** A panel's open-circuit volts: as told, else the usual ones. */
export const openVoltsOf = (panel: Solar, values: Values): number =>
  isNamed(panel) ? taken(values, 'openCircuitVoltage') : present(panel.openCircuitV);

/** Volts of a string in the cold, from those of its labels, V. */
export const inTheCold = (about: PanelCase, V_s: number, values: Values, trace?: Trace): number =>
  run(
    coldVoltage,
    {
      V_s,
      beta: about.voltageCoefficient ?? taken(values, 'voltageCoefficient'),
      T: about.coldestC ?? taken(values, 'coldestC'),
      T_0: labelC,
    },
    trace,
  );

export interface Wired {
  readonly stringVoltage: number;
  readonly coldVoltage: number;
  /** What the controller gives the battery in full sun, A: 0 where no watts are told, or too few volts to charge. */
  readonly chargeCurrent: number;
}

/** Amps at full power that the panels bring together, A: in series the weakest panel's, in parallel all of them. */
function panelAmps(about: PanelCase, inSeries: number, values: Values, trace?: Trace): number {
  const amps = about.panels.map(panel => {
    const P = panel.powerW ?? 0;
    if (about.fullPowerA !== undefined) return about.fullPowerA;
    return P === 0
      ? 0
      : run(
          fullPowerCurrent,
          { P, k_mp: taken(values, 'fullPowerShare'), V_oc: openVoltsOf(panel, values) },
          trace,
        );
  });
  if (inSeries > 1)
    return run(switchedCurrent, { n_p: countOf(about.panels) / inSeries, I_mp: Math.min(...amps) }, trace);
  return about.panels.reduce(
    (sum, { count }, i) => sum + run(switchedCurrent, { n_p: count, I_mp: present(amps[i]) }, trace),
    0,
  );
}

/** Amps into the battery in full sun: an MPPT turns all watts into them; a PWM passes the panels' own, never more than those. */
function chargeAmps(about: PanelCase, inSeries: number, values: Values, trace?: Trace): number {
  const P = about.panels.reduce((sum, panel) => sum + panel.count * (panel.powerW ?? 0), 0);
  const by = {
    P,
    eta: taken(values, 'controllerEfficiency'),
    V: taken(values, 'chargingVoltage'),
  };
  if (about.controller !== 'pwm') return P === 0 ? 0 : run(trackedCurrent, by, trace);
  const passed = panelAmps(about, inSeries, values);
  if (P > 0 && passed > run(trackedCurrent, by)) return run(trackedCurrent, by, trace);
  return passed === 0 ? 0 : panelAmps(about, inSeries, values, trace);
}

/** What the panels come to, wired `inSeries` to a string: V at 25 °C and in the cold, A into the battery. */
export function wire(about: PanelCase, inSeries: number, values: Values, trace?: Trace): Wired {
  const { panels } = about;
  const volts = panels.map(panel => openVoltsOf(panel, values));
  const mean = panels.reduce((sum, p, i) => sum + p.count * present(volts[i]), 0) / countOf(panels);
  const V_oc = inSeries > 1 ? mean : Math.max(...volts);
  const V_s = run(stringVoltage, { n_s: inSeries, V_oc }, trace);
  return {
    stringVoltage: V_s,
    coldVoltage: inTheCold(about, V_s, values, trace),
    chargeCurrent: V_s < leastRatio * about.blocks ? 0 : chargeAmps(about, inSeries, values, trace),
  };
}
