import { applianceOf } from '#catalog/appliances.ts';
import type { Bank } from '../battery/bank.ts';
import { bankAssumptions, usableCapacityAh } from '../battery/usable.ts';
import { likelyOf } from '../explore.ts';
import { meanAirC } from '../loads/by-clock.ts';
import { dayOf, type Use, useAssumptions } from '../loads/model.ts';
import { hourlyShares } from '../solar/hourly.ts';
import { useByHour } from '../trip/profile.ts';
import type { Expected } from './state.ts';

/** A rig as the engine knows it. */
export interface RigModel {
  readonly bank: Bank;
  readonly use: Use;
  /** Of the battery, °C; default 25. */
  readonly batteryC?: number;
  /** Ah that the panel puts into the battery on an average day; absent or 0: none. */
  readonly sunAhPerDay?: number;
  readonly latitudeDeg?: number;
  readonly longitudeDeg?: number;
  /** 1 to 12, for the length of the day; default March. */
  readonly month?: number;
}

/** What the engine expects of a rig by the hour, at the likely value of all that is assumed. */
export function expectedOf({ bank, use, batteryC, ...sun }: RigModel): Expected {
  const values = likelyOf(useAssumptions(use));
  const day = dayOf(use, values);
  const shares = hourlyShares(sun.latitudeDeg ?? 0, sun.month ?? 3);
  const daily = sun.sunAhPerDay ?? 0;
  const about = { bank, currentA: day.currentA, temperatureC: batteryC ?? 25, share: 1 };
  return {
    labelAh: bank.capacityAh,
    capacityAh: usableCapacityAh(about, { ...likelyOf(bankAssumptions(bank)), age: 1 }),
    useAh: useByHour(day, meanAirC(use, values)),
    sunAh: shares.map(share => share * daily),
    isSteady: use.loads.every(load => applianceOf(load.name)?.setPointC === undefined),
    longitudeDeg: sun.longitudeDeg,
  };
}
