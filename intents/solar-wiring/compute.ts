import { bankOf } from '#engine/battery/bank.ts';
import { type Explored, explore } from '#engine/explore.ts';
import {
  countOf,
  inSeriesOf,
  judgeWiring,
  type PanelCase,
  type WiringReason,
  wire,
  wiringAssumptions,
} from '#engine/solar/wiring.ts';
import type { Facts } from '#rig/rig.ts';

export type WiringFacts = Facts & { readonly solar: NonNullable<Facts['solar']> };

export interface SolarWiring extends Explored<'stringVoltage' | 'coldVoltage' | 'chargeCurrent'> {
  readonly count: number;
  readonly inSeries: number;
  readonly controller?: 'mppt' | 'pwm';
  readonly fit: 'yes' | 'tight' | 'no';
  readonly reason: WiringReason;
  /** The battery, V: 12, 24. */
  readonly systemV: number;
  readonly isShaded: boolean;
  /** How they may be wired instead where this way is wrong: as many in series. */
  readonly instead?: number;
}

/** Panels in series or parallel against the controller and the battery (V, A). */
export function computeSolarWiring(facts: WiringFacts): SolarWiring {
  const { solar } = facts;
  const bank = bankOf(facts.batteries ?? [], undefined, facts.systemVoltageV);
  const told =
    facts.systemVoltageV ?? facts.batteries?.find(b => b.voltageV)?.voltageV ?? bank?.voltageV ?? 12;
  const about: PanelCase = {
    panels: solar,
    controller: solar.find(panel => panel.controller)?.controller,
    arrangement: facts.arrangement,
    blocks: Math.max(1, Math.round(told / 12.4)),
    isShaded: facts.shade !== undefined && facts.shade !== 'none',
  };
  const assumptions = wiringAssumptions(about);
  const likely = Object.fromEntries(assumptions.map(a => [a.name, a.value]));
  const inSeries = inSeriesOf(about, likely);
  const explored = explore<'stringVoltage' | 'coldVoltage' | 'chargeCurrent'>(
    assumptions,
    'stringVoltage',
    (values, trace) => ({ ...wire(about, inSeries, values, trace) }),
  );
  const judged = judgeWiring(about, inSeries, wire(about, inSeries, likely));
  const other = inSeriesOf({ ...about, arrangement: undefined }, likely);
  const doesOther = judgeWiring(about, other, wire(about, other, likely)).fit !== 'no';
  return {
    ...explored,
    ...judged,
    count: countOf(solar),
    inSeries,
    controller: about.controller,
    systemV: about.blocks * 12,
    isShaded: about.isShaded,
    instead: judged.fit !== 'yes' && other !== inSeries && doesOther ? other : undefined,
  };
}
