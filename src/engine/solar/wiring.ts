import type { Assumption } from '#quantity/range.ts';
import type { Facts, Solar } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import { taken, type Values } from '../explore.ts';
import { coldVoltage, stringVoltage, switchedCurrent, trackedCurrent } from './wiring-rules.ts';

/** Panels on one controller, and the battery behind it. */
export interface PanelCase {
  readonly panels: readonly Solar[];
  readonly controller?: 'mppt' | 'pwm';
  readonly arrangement?: Facts['arrangement'];
  /** Blocks of 12 V that the battery is made of. */
  readonly blocks: number;
  readonly isShaded: boolean;
}

/** Panels above this rating are made for roofs, with more cells and more volts, W. Common practice. */
const largePanelW = 220;

const assumed = (
  name: string,
  [value, low, high]: readonly [number, number, number],
  unit: string,
  why: string,
): Assumption => ({ name, value, low, high, unit, why });

/** What is taken for granted: the volts on labels nobody read out, the cold, and what stands behind the controller. */
export function wiringAssumptions({ panels, controller, blocks }: PanelCase): Assumption[] {
  const isTold = panels.every(panel => panel.openCircuitV !== undefined);
  const isLarge = panels.some(panel => (panel.powerW ?? 0) > largePanelW);
  const label = isLarge
    ? assumed('openCircuitVoltage', [40, 36, 50], 'V', 'usual for a large panel; read the label')
    : assumed('openCircuitVoltage', [22, 20, 25], 'V', 'usual for a panel for 12 V; read the label');
  return [
    ...(isTold ? [] : [label]),
    assumed('coldRise', [1.13, 1.1, 1.15], '', 'a frosty morning, crystalline silicon, common practice'),
    ...(controller === 'pwm'
      ? [assumed('fullPowerShare', [0.82, 0.78, 0.85], '', 'crystalline silicon, common practice')]
      : [
          assumed('controllerEfficiency', [0.95, 0.92, 0.98], '', 'MPPT, common practice'),
          assumed(
            'chargingVoltage',
            [13.2 * blocks, 12.5 * blocks, 14.4 * blocks],
            'V',
            'battery on charge, half full to nearly full',
          ),
        ]),
  ];
}

/** Panels in all. */
export const countOf = (panels: readonly Solar[]): number =>
  panels.reduce((sum, { count }) => sum + count, 0);

/** A panel's open-circuit volts: as told, else the usual ones. */
export const openVoltsOf = (panel: Solar, values: Values): number =>
  panel.openCircuitV ?? taken(values, 'openCircuitVoltage');

/** Input limits that MPPT controllers are sold with, V: any stands the first, few more than the last. Common practice. */
export const usualLimitsV = [50, 100, 150] as const;

/** How many 12 V batteries a panel's volts are made for: 36 cells one, 60 to 72 two. Common practice. */
const blocksOfPanel = (openV: number): number => Math.max(1, Math.round(openV / 22));

/**
 * How many to put in series: as told, else for PWM as many as make up the battery's volts, for MPPT as many alike
 * panels as a usual controller stands in the cold; shade and unlike panels speak for parallel.
 */
export function inSeriesOf(about: PanelCase, values: Values): number {
  const { panels, arrangement, controller, blocks } = about;
  const count = countOf(panels);
  if (arrangement) return arrangement === 'series' ? count : 1;
  const openV = Math.max(...panels.map(panel => openVoltsOf(panel, values)));
  const divides = (n: number): boolean => count % n === 0;
  if (controller === 'pwm') {
    const wanted = Math.max(1, Math.round(blocks / blocksOfPanel(openV)));
    return divides(wanted) ? wanted : 1;
  }
  const isAlike = panels.length === 1;
  const least = Math.ceil((blocks * leastRatio) / openV);
  const most =
    isAlike && !about.isShaded ? Math.floor(usualLimitsV[1] / (openV * taken(values, 'coldRise'))) : least;
  const fits = Array.from({ length: count }, (_, i) => count - i).filter(divides);
  return fits.find(n => n <= Math.max(1, most)) ?? 1;
}

/** Open-circuit volts that a 12 V battery asks for at least, so that a hot panel still charges it. Common practice. */
export const leastRatio = 17;

export interface Wired {
  readonly stringVoltage: number;
  readonly coldVoltage: number;
  /** 0 where no panel's watts are told. */
  readonly chargeCurrent: number;
}

/** What the panels come to, wired `inSeries` to a string: V at 25 °C and in the cold, A into the battery. */
export function wire(about: PanelCase, inSeries: number, values: Values, trace?: Trace): Wired {
  const { panels, controller } = about;
  const count = countOf(panels);
  const mean = panels.reduce((sum, p) => sum + p.count * openVoltsOf(p, values), 0) / count;
  const highest = Math.max(...panels.map(panel => openVoltsOf(panel, values)));
  const V_oc = inSeries > 1 ? mean : highest;
  const V_s = run(stringVoltage, { n_s: inSeries, V_oc }, trace);
  const V_cold = run(coldVoltage, { V_s, k_cold: taken(values, 'coldRise') }, trace);
  const P = panels.reduce((sum, panel) => sum + panel.count * (panel.powerW ?? 0), 0);
  const chargeCurrent =
    P === 0
      ? 0
      : controller === 'pwm'
        ? run(
            switchedCurrent,
            { n_p: count / inSeries, P: P / count, k_mp: taken(values, 'fullPowerShare'), V_oc: mean },
            trace,
          )
        : run(
            trackedCurrent,
            { P, eta: taken(values, 'controllerEfficiency'), V: taken(values, 'chargingVoltage') },
            trace,
          );
  return { stringVoltage: V_s, coldVoltage: V_cold, chargeCurrent };
}

/** Why a wiring does or doesn't, as a code; the answer has the sentence. */
export type WiringReason =
  | 'too-low'
  | 'pwm-too-high'
  | 'pwm-wastes'
  | 'above-usual'
  | 'needs-limit'
  | 'unlike-currents'
  | 'unlike-volts'
  | 'fits';

/** A PWM controller wants no more open-circuit volts than this for each 12 V of battery. Common practice. */
const mostForPwm = 27;
/** From here on unlike panels drag one another down. Common practice. */
const unlikeShare = 0.1;

const differs = (values: readonly (number | undefined)[]): boolean => {
  const told = values.filter(value => value !== undefined);
  return told.length > 1 && Math.max(...told) - Math.min(...told) > unlikeShare * Math.max(...told);
};

/** Whether the panels, wired so, suit the controller and the battery. */
export function judgeWiring(
  about: PanelCase,
  inSeries: number,
  wired: Pick<Wired, 'stringVoltage' | 'coldVoltage'>,
): { readonly fit: 'yes' | 'tight' | 'no'; readonly reason: WiringReason } {
  const { panels, controller, blocks } = about;
  const { stringVoltage: volts, coldVoltage: cold } = wired;
  if (volts < leastRatio * blocks) return { fit: 'no', reason: 'too-low' };
  if (controller === 'pwm' && volts > mostForPwm * blocks)
    return inSeries > 1 ? { fit: 'no', reason: 'pwm-too-high' } : { fit: 'tight', reason: 'pwm-wastes' };
  const amps = panels.map(({ powerW, openCircuitV }) => powerW && powerW / (openCircuitV ?? 22));
  if (inSeries > 1 && differs(amps)) return { fit: 'no', reason: 'unlike-currents' };
  if (inSeries === 1 && differs(panels.map(panel => panel.openCircuitV)))
    return { fit: 'tight', reason: 'unlike-volts' };
  if (controller === 'pwm') return { fit: 'yes', reason: 'fits' };
  if (cold > usualLimitsV[2]) return { fit: 'no', reason: 'above-usual' };
  // What the controller at hand stands isn't known: no plain yes.
  return cold > usualLimitsV[0] ? { fit: 'tight', reason: 'needs-limit' } : { fit: 'yes', reason: 'fits' };
}
