import { present } from '#basics/present.ts';
import type { Chemistry } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Values } from '../assumption.ts';
import { type Bank, bankOfOne } from './bank.ts';
import { roundTripEnergy } from './charge-rules.ts';
import { chargeRow, usualRateC } from './charge-table.ts';
import { restVoltsOf, voltsOnCharge } from './charge-volts.ts';
import { type Charging, chargingOf } from './charging.ts';
import { putInAh } from './fill.ts';

/** A charge between two levels (0–1) at a steady current, and giving it back at another; C is per hour of capacity. */
export interface Cycle {
  readonly from: number;
  readonly to: number;
  readonly rateC: number;
  readonly backC?: number;
}

export interface RoundTrip {
  /** Ah back of Ah put in, and Wh back of Wh put in. */
  readonly chargeShare: number;
  readonly energyShare: number;
  /** Mean volts while it charges, by the charge put in, and while it gives. */
  readonly inV: number;
  readonly outV: number;
}

/** Steps that a cycle is summed over; sixty-four come within 0.1 % of it. */
const steps = 16;

/** What comes back of a charge, and the volts in and out. */
export function roundTrip(c: Charging, { from, to, rateC, backC = 0.05 }: Cycle, trace?: Trace): RoundTrip {
  const { capacityAh: C } = c;
  const eachAh = ((to - from) * C) / steps;
  let inAh = 0;
  let inWh = 0;
  let outWh = 0;
  for (let i = 0; i < steps; i++) {
    const above = (1 - from) * C - i * eachAh;
    const middle = above - eachAh / 2;
    const putAh = putInAh(c, above, above - eachAh);
    const currentA = Math.min(rateC * C, c.limitA, middle / c.timeConstantH);
    inAh += putAh;
    inWh += putAh * voltsOnCharge(c, middle, currentA);
    outWh += eachAh * (restVoltsOf(c, middle) - backC * C * c.resistanceOhm);
  }
  const chargeShare = ((to - from) * C) / inAh;
  const [inV, outV] = [inWh / inAh, outWh / ((to - from) * C)];
  const energyShare = run(roundTripEnergy, { eta_c: chargeShare, V_out: outV, V_in: inV }, trace);
  return { chargeShare, energyShare, inV, outV };
}

/** What charges: a panel, or a charger on mains, a generator or an engine. */
export type Charger = keyof typeof usualRateC;

/** A usual cycle of a kind: from as deep as it is usually taken to where chargers call it full. */
const usualCycle = (chemistry: Chemistry, rateC: number): Cycle => {
  const { usualStart, fullAt } = chargeRow(chemistry);
  return { from: usualStart[0] / 100, to: fullAt[0], rateC };
};

const blocks = new Map<Chemistry, Bank>();

/** A 12 V block of a kind, of 100 Ah. */
function blockOf(chemistry: Chemistry): Bank {
  const known = blocks.get(chemistry) ?? bankOfOne({ capacityAh: 100, chemistry });
  blocks.set(chemistry, known);
  return known;
}

/** What a kind makes of a usual charge, by the 12 V block: for sizing, where nothing is told of the battery but its kind. */
export const usualTrip = (
  chemistry: Chemistry,
  values: Values = {},
  rateC: number = usualRateC.sun[0],
  trace?: Trace,
): RoundTrip => roundTrip(chargingOf(blockOf(chemistry), {}, values), usualCycle(chemistry, rateC), trace);

type Span = readonly [value: number, low: number, high: number];
const means = new Map<string, Span>();

/** Mean volts of a 12 V block over a usual charge: likely, on a small current, on a big one. */
export function meanChargeV(chemistry: Chemistry, charger: Charger = 'charger'): Span {
  const key = `${chemistry} ${charger}`;
  const known = means.get(key);
  if (known) return known;
  const [likely, small, big] = usualRateC[charger].map(rateC => usualTrip(chemistry, {}, rateC).inV);
  const made = [present(likely), present(small), present(big)] as const;
  means.set(key, made);
  return made;
}
