import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import { bulkTime, fillTime, kneeMissing, missingInTail, tailTime } from './rules.ts';

/** A battery being filled: a constant current until it takes less, then an exponential tail. */
export interface Filling {
  /** Charge missing to 100 % at the start, Ah. */
  readonly missingAh: number;
  /** The lesser of what the source gives and the chemistry stands, A. */
  readonly currentA: number;
  readonly timeConstantH: number;
  /** Share of the charge put in that stays. */
  readonly efficiency: number;
}

/**
 * Time (h) until only `endMissingAh` (above nought) is missing: the closed form of the ampere-hour law.
 * Nought where that is so already; infinite without a current.
 */
export function fillTimeH(filling: Filling, endMissingAh: number, trace?: Trace): number {
  const { missingAh: m_0, currentA: I, timeConstantH: tau, efficiency: eta_c } = filling;
  if (m_0 <= endMissingAh) return 0;
  if (I <= 0) return Number.POSITIVE_INFINITY;
  const m_k = run(kneeMissing, { m_0, m_e: endMissingAh, I, tau }, trace);
  const t_1 = run(bulkTime, { m_0, m_k, eta_c, I }, trace);
  const t_2 = run(tailTime, { tau, eta_c, m_k, m_e: endMissingAh }, trace);
  return run(fillTime, { t_1, t_2 }, trace);
}

/** Charge (Ah) still missing after some hours: the same law read the other way. */
export function missingAfterH(filling: Filling, hours: number, trace?: Trace): number {
  const { missingAh: m_0, currentA: I, timeConstantH: tau, efficiency: eta_c } = filling;
  if (I <= 0 || hours <= 0 || m_0 <= 0) return Math.max(0, m_0);
  const m_k = run(kneeMissing, { m_0, m_e: 0, I, tau });
  const t_1 = run(bulkTime, { m_0, m_k, eta_c, I });
  if (hours <= t_1) return m_0 - eta_c * I * hours;
  return run(missingInTail, { m_k, eta_c, t: hours - t_1, tau }, trace);
}
