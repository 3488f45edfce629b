import { present } from '#basics/present.ts';
import type { RequestContext } from '../intent.ts';
import { bankFor } from '../learned.ts';
import { levelByVolts, readBlocks } from '../level.ts';
import { isSpotted } from '../spotting.ts';
import type { RunTimeFacts } from './compute.ts';

/** Volts that are told as those to stop at, not as read. */
const stops: readonly string[] = [
  'if|and|when|we|i stop|stopped|stopping|cut_off|cutoff|cut_out at -now -reads -it_stopped -fridge_stops',
];

/** The facts with volts to stop at as how far it may go; as they are where the volts were read. */
export function stoppingAt(facts: RunTimeFacts, { parsed }: Pick<RequestContext, 'parsed'>): RunTimeFacts {
  const { volts, depthOfDischargePercent } = facts;
  const isTold = parsed.facts.volts !== undefined && isSpotted(parsed.recognised.words, stops);
  if (!isTold || volts === undefined || depthOfDischargePercent !== undefined) return facts;
  const bank = present(bankFor(facts));
  const level = levelByVolts(volts, bank.chemistry, readBlocks(facts, volts), false);
  return { ...facts, volts: undefined, depthOfDischargePercent: Math.round(100 - level.value) };
}
