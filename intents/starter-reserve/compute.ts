import { present } from '#basics/present.ts';
import type { Assumption } from '#engine/assumption.ts';
import { type Bank, bankOf } from '#engine/battery/bank.ts';
import { chargeAtRest } from '#engine/battery/rest.ts';
import { starterReserve } from '#engine/battery/tables.ts';
import { bankAssumptions } from '#engine/battery/usable.ts';
import type { Explored } from '#engine/explore.ts';
import { exploreRunTime } from '#engine/loads/lasting.ts';
import type { Battery, Facts } from '#rig/rig.ts';
import { batteryAir } from '../battery-air.ts';
import type { RequestContext } from '../intent.ts';
import { useOf } from '../use.ts';

export interface StarterTime {
  readonly explored: Explored<'runTime' | 'usableCapacity' | 'dailyUse'>;
  readonly bank: Bank;
  /** Nobody said its size: a usual one was taken. */
  readonly isSizeAssumed: boolean;
}

/** The starter battery of a question: the one named so, else the one told with it; a remembered house battery isn't. */
function starterOf(facts: Facts, setting: RequestContext): Battery | undefined {
  const named = facts.batteries?.find(b => b.role === 'starter');
  if (named || setting.recalled.has('batteries')) return named;
  return facts.batteries?.find(b => b.role === undefined);
}

/** The share that may go; where the size is a guess as well, its span comes on top. */
function reserve(isSizeAssumed: boolean): Assumption {
  const [value, low, high] = starterReserve.share;
  const [sizeAh, smallAh, largeAh] = starterReserve.capacityAh;
  return {
    name: 'depthOfDischarge',
    value,
    low: isSizeAssumed ? (low * smallAh) / sizeAh : low,
    high: isSizeAssumed ? (high * largeAh) / sizeAh : high,
    unit: '',
    why: isSizeAssumed
      ? `of a usual ${sizeAh} Ah starter battery; the rest is for cranking`
      : 'down to about 12.4 V at rest; the rest is for cranking, common practice',
  };
}

/** How long (h) loads may run before starting is at risk: only a small share of a starter battery is to spare. */
export function computeStarterReserve(facts: Facts, setting: RequestContext): StarterTime {
  const told = starterOf(facts, setting);
  const isSizeAssumed = !told?.capacityAh;
  const battery: Battery = {
    ...told,
    count: told?.count ?? 1,
    capacityAh: told?.capacityAh || starterReserve.capacityAh[0],
    chemistry: told?.chemistry ?? 'flooded',
    role: 'starter',
  };
  const bank = present(bankOf([battery]));
  const explored = exploreRunTime({
    bank,
    use: { ...useOf(facts, bank.voltageV, setting.mainsV, setting.at), doAllRunOn: true },
    temperatureC: facts.ambientC,
    assumptions: bankAssumptions(bank, undefined, batteryAir(facts, setting.at)).map(a =>
      a.name === 'depthOfDischarge' ? reserve(isSizeAssumed) : a,
    ),
  });
  return { explored, bank, isSizeAssumed };
}

/** How full (%) a starter battery is by its volts at rest. */
export const starterPercent = (volts: number): number => chargeAtRest(volts, 'flooded').value;
