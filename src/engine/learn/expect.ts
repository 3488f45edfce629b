import { applianceOf } from '#catalog/appliances.ts';
import type { Bank } from '../battery/bank.ts';
import { likelyOf } from '../explore.ts';
import { dayOf, type Use, useAssumptions } from '../loads/model.ts';
import { hourlyShares } from '../solar/hourly.ts';
import { useByHour } from '../trip/profile.ts';
import type { Expected } from './state.ts';

/** A rig as the engine knows it. */
export interface RigModel {
  readonly bank: Bank;
  readonly use: Use;
  /** Ah that the panel puts into the battery on an average day; absent or 0: none. */
  readonly sunAhPerDay?: number;
  readonly latitudeDeg?: number;
  readonly longitudeDeg?: number;
  /** 1 to 12, for the length of the day; default March. */
  readonly month?: number;
}

/** Mean air where nobody told it, °C: mild camping weather, as for a fridge. */
const mildC = 25;

/** What the engine expects of a rig by the hour, at the likely value of all that is assumed. */
export function expectedOf({ bank, use, ...sun }: RigModel): Expected {
  const values = likelyOf(useAssumptions(use));
  const day = dayOf(use, values);
  const meanC = use.ambientC ?? values.ambientC ?? mildC;
  const shares = hourlyShares(sun.latitudeDeg ?? 0, sun.month ?? 3);
  const daily = sun.sunAhPerDay ?? 0;
  return {
    capacityAh: bank.capacityAh,
    useAh: useByHour(day, meanC),
    sunAh: shares.map(share => share * daily),
    isSteady: use.loads.every(load => applianceOf(load.name)?.setPointC === undefined),
    longitudeDeg: sun.longitudeDeg,
  };
}
