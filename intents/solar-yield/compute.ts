import { present } from '#basics/present.ts';
import { bankIn } from '#engine/battery/bank.ts';
import { storageAssumptions } from '#engine/battery/charging.ts';
import { meanChargeV } from '#engine/battery/round-trip.ts';
import { type Explored, explore, likelyOf } from '#engine/explore.ts';
import { dailyUseAh, useAssumptions } from '#engine/loads/model.ts';
import { dailyYield, type SolarCase, solarAssumptions, storedOf } from '#engine/solar/model.ts';
import {
  countOf,
  fewestInSeries,
  fullPowerShare,
  isLarge,
  stringFullPowerV,
  toldOpenV,
} from '#engine/solar/module.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import { batteryOnCharge } from '../battery-air.ts';
import type { RequestContext } from '../intent.ts';
import { nominalVOf, panelsW, sunOf } from '../sun.ts';
import { hasUse as hasAnyUse, useOf } from '../use.ts';

type SunSetting = Pick<RequestContext, 'at' | 'mainsV'>;

export type SolarYieldFacts = Facts & { readonly solar: NonNullable<Facts['solar']> };

type YieldKey = 'dailyYield' | 'dailyYieldEnergy' | 'peakSunHours' | 'dailyUse' | 'surplus';

export interface SolarYield extends Explored<YieldKey> {
  readonly sun: SolarCase;
  readonly powerW: number;
  readonly capacityAh?: number;
  /** It may be one panel for a roof on a PWM controller at 12 V, its volts not told. */
  readonly isMaybeRoofPanel: boolean;
  /** Volts of the battery while the sun charges it. */
  readonly batteryV: number;
  /** Volts at full power of a string on a PWM controller, where a label told them. */
  readonly fullPowerV?: number;
  /** The same panel angled at the sun, Ah a day, where it lies flat at a known place. */
  readonly tiltedAh?: number;
  /** What of a day's yield comes back out of the battery, Ah. */
  readonly storedAh: number;
  readonly storedIn: Chemistry;
  /** Open-circuit volts of all panels in one string, V, where not even those charge the battery: nothing comes in. */
  readonly tooLowV?: number;
}

/** What panels bring on a day (Ah at nominal volts, Wh), and what is left of it after the loads, where there are any. */
export function computeSolarYield(facts: SolarYieldFacts, setting: SunSetting): SolarYield {
  const bank = bankIn(facts);
  const powerW = present(panelsW(facts));
  const sun = sunOf(facts, setting.at);
  const nominalVoltageV = nominalVOf(facts, bank, sun);
  const panel = { ...sun, powerW, nominalVoltageV };
  const use = useOf(facts, nominalVoltageV, setting.mainsV, setting.at);
  const chemistry = bank?.chemistry ?? sun.chemistry ?? 'agm';
  const hasUse = hasAnyUse(facts);
  const openV = toldOpenV(facts.solar);
  const count = countOf(facts.solar);
  const isTooLow = openV !== undefined && fewestInSeries(count, openV, sun.blocks ?? 1) === undefined;
  const share = isTooLow ? 0 : 1;
  const onCharge = batteryOnCharge(facts, bank, setting.at);
  const assumptions = [
    ...solarAssumptions(sun),
    ...(hasUse
      ? [
          ...storageAssumptions(chemistry, bank?.isChemistryAssumed ?? sun.chemistry === undefined),
          ...onCharge,
          ...useAssumptions(use),
        ]
      : []),
  ];
  const explored = explore<YieldKey>(
    assumptions,
    hasUse ? 'surplus' : 'dailyYieldEnergy',
    (values, trace) => {
      const made = dailyYield(panel, values, trace);
      const dailyYieldAh = share * made.dailyYieldAh;
      const dailyUse = hasUse ? dailyUseAh(use, values, trace) : 0;
      return {
        dailyYield: dailyYieldAh,
        dailyYieldEnergy: share * made.dailyYieldEnergyWh,
        peakSunHours: made.peakSunHours,
        dailyUse,
        surplus: hasUse
          ? storedOf(dailyYieldAh, { ...panel, chemistry }, values, trace) - dailyUse
          : dailyYieldAh,
      };
    },
  );
  const isFlatSomewhere =
    sun.mount !== 'tilted' && sun.latitudeDeg !== undefined && !sun.peakSunHours && sun.sky !== 'overcast';
  return {
    ...explored,
    sun,
    powerW,
    storedAh: storedOf(
      explored.figures.dailyYield.value,
      { ...panel, chemistry },
      likelyOf([...solarAssumptions(sun), ...storageAssumptions(chemistry, false), ...onCharge]),
    ),
    storedIn: chemistry,
    capacityAh: bank?.capacityAh,
    batteryV: meanChargeV(chemistry, 'sun')[0] * (sun.blocks ?? 1),
    isMaybeRoofPanel:
      sun.controller === 'pwm' && openV === undefined && sun.blocks === 1 && isLarge(facts.solar),
    fullPowerV:
      sun.controller === 'pwm' && openV !== undefined
        ? stringFullPowerV(sun, { fullPowerShare: fullPowerShare.value })
        : undefined,
    tooLowV: isTooLow ? openV * count : undefined,
    tiltedAh:
      isFlatSomewhere && !isTooLow ? dailyYield({ ...panel, mount: 'tilted' }).dailyYieldAh : undefined,
  };
}
