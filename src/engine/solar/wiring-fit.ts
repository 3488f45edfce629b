import { present } from '#basics/present.ts';
import type { Range } from '#quantity/range.ts';
import type { Solar } from '#rig/rig.ts';
import type { Values } from '../assumption.ts';
import { countOf, isNamed, leastRatio } from './module.ts';
import { inTheCold, openVoltsOf, type PanelCase } from './wiring.ts';

/** Input limits that MPPT controllers are sold with, V: any stands the first, few more than the last. Common practice. */
export const usualLimitsV = [50, 100, 150] as const;

/** A PWM controller wants no more open-circuit volts than this for each 12 V of battery. Common practice. */
const mostForPwm = 27;
/** From here on unlike panels drag one another down. Common practice. */
const unlikeShare = 0.1;
/** Room left below a told limit when a wiring is proposed, for a colder morning than the likely one. Common practice. */
const roomBelowLimit = 1.05;
/** Cloud edges and cold lift panels above their rating; a PWM controller has to carry it. Common practice (NEC 690.8, from memory). */
export const overAmps = 1.25;

/** How many 12 V batteries a panel's volts are made for: 36 cells one, 60 to 72 two. Common practice. */
const blocksOfPanel = (openV: number): number => Math.max(1, Math.round(openV / 22));

/**
 * How many to put in series: as told, else for PWM as many as make up the battery's volts, for MPPT as many alike
 * panels as its limit, or that of a usual one, allows in the cold; shade and unlike panels speak for parallel.
 */
export function inSeriesOf(about: PanelCase, values: Values): number {
  const { panels, arrangement, controller, blocks, plate } = about;
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
  const limitV = plate?.limitV === undefined ? usualLimitsV[1] : plate.limitV / roomBelowLimit;
  const most = isAlike && !about.isShaded ? Math.floor(limitV / inTheCold(about, openV, values)) : least;
  const fits = Array.from({ length: count }, (_, i) => count - i).filter(divides);
  return fits.find(n => n <= Math.max(1, most)) ?? 1;
}

/** Why a wiring does or doesn't, as a code; the answer has the sentence. */
export type WiringReason =
  | 'too-low'
  | 'over-limit'
  | 'near-limit'
  | 'over-rating'
  | 'near-rating'
  | 'held-to-rating'
  | 'pwm-too-high'
  | 'pwm-wastes'
  | 'above-usual'
  | 'needs-limit'
  | 'unlike-currents'
  | 'unlike-volts'
  | 'within-limit'
  | 'fits';

export interface Fit {
  readonly fit: 'yes' | 'tight' | 'no';
  readonly reason: WiringReason;
}

/** What a wiring comes to: the cold with its span, for that decides. */
export interface WiredSpan {
  readonly stringVoltage: number;
  readonly coldVoltage: Range;
  readonly chargeCurrent: number;
}

const differs = (values: readonly (number | undefined)[]): boolean => {
  const told = values.filter(value => value !== undefined);
  return told.length > 1 && Math.max(...told) - Math.min(...told) > unlikeShare * Math.max(...told);
};

/** Volts of a label that was read out. */
const labelV = (panel: Solar): number | undefined => (isNamed(panel) ? undefined : panel.openCircuitV);

const ampsLike = (panel: Solar): number | undefined =>
  panel.powerW && panel.powerW / (isNamed(panel) ? 22 : present(panel.openCircuitV));

const no = (reason: WiringReason): Fit => ({ fit: 'no', reason });
const tight = (reason: WiringReason): Fit => ({ fit: 'tight', reason });

/** The volts against what the controller stands: its told limit, or for an MPPT the usual ones. */
function judgeVolts({ controller, plate }: PanelCase, { coldVoltage: cold }: WiredSpan): Fit | undefined {
  const limitV = plate?.limitV;
  if (limitV !== undefined) {
    if (cold.value > limitV) return no('over-limit');
    return cold.high > limitV ? tight('near-limit') : undefined;
  }
  if (controller === 'pwm') return undefined;
  if (cold.value > usualLimitsV[2]) return no('above-usual');
  // What the controller at hand stands isn't known: no plain yes.
  return cold.value > usualLimitsV[0] ? tight('needs-limit') : undefined;
}

/** The amps against the controller's rating: an MPPT holds them to it, a PWM has to carry what comes. */
function judgeAmps({ controller, plate }: PanelCase, { chargeCurrent }: WiredSpan): Fit | undefined {
  const ratedA = plate?.ratedA;
  if (ratedA === undefined) return undefined;
  if (controller !== 'pwm') return chargeCurrent > ratedA ? tight('held-to-rating') : undefined;
  if (chargeCurrent > ratedA) return no('over-rating');
  return overAmps * chargeCurrent > ratedA ? tight('near-rating') : undefined;
}

/** Whether the panels, wired so, suit the controller and the battery. What speaks against it comes before what speaks for care. */
export function judgeWiring(about: PanelCase, inSeries: number, wired: WiredSpan): Fit {
  const { panels, controller, blocks, plate } = about;
  const volts = wired.stringVoltage;
  if (volts < leastRatio * blocks) return no('too-low');
  const isTooHighForPwm = controller === 'pwm' && volts > mostForPwm * blocks;
  const found = [
    judgeVolts(about, wired),
    judgeAmps(about, wired),
    isTooHighForPwm ? (inSeries > 1 ? no('pwm-too-high') : tight('pwm-wastes')) : undefined,
    inSeries > 1 && differs(panels.map(ampsLike)) ? no('unlike-currents') : undefined,
    inSeries === 1 && differs(panels.map(labelV)) ? tight('unlike-volts') : undefined,
  ].filter(fit => fit !== undefined);
  return (
    found.find(({ fit }) => fit === 'no') ??
    found[0] ?? { fit: 'yes', reason: plate?.limitV === undefined ? 'fits' : 'within-limit' }
  );
}
