import { bankOf } from '#engine/battery/bank.ts';
import { type Explored, explore } from '#engine/explore.ts';
import { dailyUseAh, useAssumptions } from '#engine/loads/model.ts';
import { chargeAssumption, dailyYield, type SolarCase, solarAssumptions } from '#engine/solar/model.ts';
import type { Facts } from '#rig/rig.ts';
import type { Setting } from '../intent.ts';
import { panelsW, sunOf } from '../sun.ts';
import { hasUse as hasAnyUse, useOf } from '../use.ts';

type SunSetting = Pick<Setting, 'at' | 'mainsV'>;

export type SolarYieldFacts = Facts & { readonly solar: NonNullable<Facts['solar']> };

export type YieldKey = 'dailyYield' | 'dailyYieldEnergy' | 'peakSunHours' | 'dailyUse' | 'surplus';

export interface SolarYield extends Explored<YieldKey> {
  readonly sun: SolarCase;
  readonly powerW: number;
  readonly capacityAh?: number;
  /** The same panel angled at the sun, Ah a day, where it lies flat at a known place. */
  readonly tiltedAh?: number;
}

/** What panels bring on a day (Ah at nominal volts, Wh), and what is left of it after the loads, where there are any. */
export function computeSolarYield(facts: SolarYieldFacts, setting: SunSetting): SolarYield {
  const bank = bankOf(facts.batteries ?? [], facts.arrangement, facts.systemVoltageV);
  const nominalVoltageV = bank?.voltageV ?? ((facts.systemVoltageV ?? 12) > 18 ? 24 : 12);
  const powerW = panelsW(facts)!;
  const sun = sunOf(facts, setting.at);
  const panel = { ...sun, powerW, nominalVoltageV };
  const use = useOf(facts, nominalVoltageV, setting.mainsV, setting.at);
  const charge = chargeAssumption(bank?.chemistry);
  const hasUse = hasAnyUse(facts);
  const assumptions = [...solarAssumptions(sun), ...(hasUse ? [charge, ...useAssumptions(use)] : [])];
  const explored = explore<YieldKey>(
    assumptions,
    hasUse ? 'surplus' : 'dailyYieldEnergy',
    (values, trace) => {
      const made = dailyYield(panel, values, trace);
      const dailyUse = hasUse ? dailyUseAh(use, values, trace) : 0;
      return {
        dailyYield: made.dailyYieldAh,
        dailyYieldEnergy: made.dailyYieldEnergyWh,
        peakSunHours: made.peakSunHours,
        dailyUse,
        surplus: made.dailyYieldAh * (values[charge.name] ?? 1) - dailyUse,
      };
    },
  );
  const isFlatSomewhere =
    sun.mount !== 'tilted' && sun.latitudeDeg !== undefined && !sun.peakSunHours && sun.sky !== 'overcast';
  return {
    ...explored,
    sun,
    powerW,
    capacityAh: bank?.capacityAh,
    tiltedAh: isFlatSomewhere ? dailyYield({ ...panel, mount: 'tilted' }).dailyYieldAh : undefined,
  };
}
