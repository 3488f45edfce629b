import { bankIn } from '#engine/battery/bank.ts';
import { storageAssumptions } from '#engine/battery/charging.ts';
import { type Explored, explore, likelyOf } from '#engine/explore.ts';
import { dailyUseAh, runningCurrentA, useAssumptions } from '#engine/loads/model.ts';
import { bestPowerOf, panelPowerFor, type SolarCase, solarAssumptions } from '#engine/solar/model.ts';
import type { Facts } from '#rig/rig.ts';
import { batteryOnCharge } from '../battery-air.ts';
import type { RequestContext } from '../intent.ts';
import { nominalVOf, panelsW, sunOf } from '../sun.ts';
import { useOf } from '../use.ts';

type SunSetting = Pick<RequestContext, 'at' | 'mainsV'>;

export type SolarSizeFacts = Facts;

export interface SolarSize extends Explored<'panelPower' | 'dailyUse' | 'peakSunHours'> {
  readonly sun: SolarCase;
  readonly voltageV: number;
  /** What the loads take while all of them run, W at the battery. */
  readonly drawW: number;
  /** Rating of the panels that are there already, W. */
  readonly presentW?: number;
  /** What those bring at best, in full sun, W. */
  readonly bestW?: number;
  /** The rating that does it angled at the sun, W, where panels lie flat at a known place. */
  readonly tiltedW?: number;
}

/** Panel rating (W) that puts back a day's use on an average day of the month. */
export function computeSolarSize(facts: SolarSizeFacts, setting: SunSetting): SolarSize {
  const bank = bankIn(facts);
  const sun = sunOf(facts, setting.at);
  const voltageV = nominalVOf(facts, bank, sun);
  const use = { ...useOf(facts, voltageV, setting.mainsV, setting.at), isOfDay: true };
  const told = facts.batteries?.find(b => b.chemistry)?.chemistry;
  const chemistry = bank?.chemistry ?? told ?? 'agm';
  const panel = { ...sun, nominalVoltageV: voltageV, chemistry };
  const assumptions = [
    ...solarAssumptions(sun),
    ...storageAssumptions(chemistry, bank?.isChemistryAssumed ?? told === undefined),
    ...batteryOnCharge(facts, bank, setting.at),
    ...useAssumptions(use),
  ];
  const explored = explore<'panelPower' | 'dailyUse' | 'peakSunHours'>(
    assumptions,
    'panelPower',
    (values, trace) => {
      const dailyUse = dailyUseAh(use, values, trace);
      const { panelPowerW, peakSunHours } = panelPowerFor(dailyUse, panel, values, trace);
      return { panelPower: panelPowerW, dailyUse, peakSunHours };
    },
  );
  const likely = likelyOf(assumptions);
  const presentW = panelsW(facts);
  const isFlatSomewhere =
    sun.mount !== 'tilted' && sun.latitudeDeg !== undefined && !sun.peakSunHours && sun.sky !== 'overcast';
  return {
    ...explored,
    sun,
    tiltedW: isFlatSomewhere
      ? panelPowerFor(
          explored.figures.dailyUse.value,
          { ...panel, mount: 'tilted' },
          // The air and the sky are those of the same month.
          likely,
        ).panelPowerW
      : undefined,
    voltageV,
    drawW: use.loads.reduce(
      (sum, load) => sum + load.count * runningCurrentA(load, use, likely) * voltageV,
      0,
    ),
    presentW,
    bestW: presentW === undefined ? undefined : bestPowerOf(presentW, sun, likely),
  };
}
