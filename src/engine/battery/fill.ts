import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import {
  allChargeIn,
  chargeToPutIn,
  fillTime,
  kneeMissing,
  missingInTail,
  missingInTop,
  missingInTopTail,
  steadyTime,
  tailTime,
  topChargeIn,
  topTailTime,
} from './charge-rules.ts';
import type { Charging } from './charging.ts';

/**
 * Charge (Ah) that has to go in at the terminals until, of `fromAh` missing, only `toAh` is: the first part at its
 * steady efficiency, the last part with losses that grow towards full. Whatever the current.
 */
export function putInAh(c: Charging, fromAh: number, toAh: number, trace?: Trace): number {
  if (fromAh <= toAh) return 0;
  const { efficiency: eta_c, topEfficiency: eta_f, topAh: m_t } = c;
  const turnAh = Math.max(toAh, Math.min(fromAh, m_t));
  const low = fromAh > turnAh ? run(chargeToPutIn, { Q_m: fromAh - turnAh, eta_c }, trace) : 0;
  if (turnAh <= toAh) return low;
  const top = run(topChargeIn, { m_t, eta_c, eta_f, m_0: turnAh, m_1: toAh }, trace);
  return low > 0 ? run(allChargeIn, { Q_in: low, Q_top: top }, trace) : top;
}

/** The same to the brim, for loops. */
export function putInToFullAh(c: Charging, fromAh: number): number {
  const topAh = Math.min(fromAh, c.topAh);
  const low = (fromAh - topAh) / c.efficiency;
  if (topAh <= 0) return low;
  return low + topChargeIn.direct()(c.topAh, c.efficiency, c.topEfficiency, topAh, 0);
}

/**
 * Time (h) on a steady offer of `offeredA` until, of `fromAh` missing, only `toAh` (above nought) is: the closed
 * form of the ampere-hour law. Nought where that is so already; infinite without a current.
 */
export function fillTimeH(
  c: Charging,
  fromAh: number,
  toAh: number,
  offeredA: number,
  trace?: Trace,
): number {
  if (fromAh <= toAh) return 0;
  const I = Math.min(offeredA, c.limitA);
  if (!(I > 0)) return Number.POSITIVE_INFINITY;
  const { efficiency: eta_c, topEfficiency: eta_f, topAh: m_t, timeConstantH: tau } = c;
  const m_k = run(kneeMissing, { m_0: fromAh, m_e: toAh, I, tau }, trace);
  const t_1 = fromAh > m_k ? run(steadyTime, { Q_in: putInAh(c, fromAh, m_k), I }, trace) : 0;
  const m_1 = Math.max(toAh, Math.min(m_k, m_t));
  const t_2 = m_k > m_1 ? run(tailTime, { tau, eta_c, m_k, m_e: m_1 }, trace) : 0;
  const t_3 = m_1 > toAh ? run(topTailTime, { tau, eta_f, m_0: m_1, eta_c, m_1: toAh, m_t }, trace) : 0;
  return run(fillTime, { t_1, t_2, t_3 }, trace);
}

/** Charge (Ah) still missing after some hours on a steady offer: the same law read the other way, for loops too. */
export function missingAfterH(c: Charging, fromAh: number, offeredA: number, hours: number): number {
  const I = Math.min(offeredA, c.limitA);
  if (!(I > 0) || hours <= 0 || fromAh <= 0) return Math.max(0, fromAh);
  const { efficiency, topEfficiency, topAh, timeConstantH } = c;
  const kneeAh = I * timeConstantH;
  let missing = fromAh;
  let left = hours;
  if (missing > kneeAh && missing > topAh) {
    const endAh = Math.max(kneeAh, topAh);
    const takesH = (missing - endAh) / (efficiency * I);
    if (left <= takesH) return missing - efficiency * I * left;
    left -= takesH;
    missing = endAh;
  }
  if (missing > kneeAh) {
    const after = missingInTop.direct()(topAh, efficiency, topEfficiency, missing, I * left);
    if (after >= kneeAh) return after;
    left -= topChargeIn.direct()(topAh, efficiency, topEfficiency, missing, kneeAh) / I;
    missing = kneeAh;
  }
  if (missing > topAh) {
    const after = missingInTail.direct()(missing, efficiency, left, timeConstantH);
    if (after >= topAh) return after;
    left -= tailTime.direct()(timeConstantH, efficiency, missing, topAh);
    missing = topAh;
  }
  return missingInTopTail.direct()(missing, topEfficiency, efficiency, topAh, left, timeConstantH);
}
