import { type Bank, nominalVoltage } from '#engine/battery/bank.ts';
import { storageAssumptions } from '#engine/battery/charging.ts';
import { nextUsualSize, requiredCapacityAh } from '#engine/battery/required.ts';
import { usualTrip } from '#engine/battery/round-trip.ts';
import { autonomyDays } from '#engine/battery/tables.ts';
import { bankAssumptions } from '#engine/battery/usable.ts';
import { fuseSource, fuseTypeFor } from '#engine/cable/breaking.ts';
import { choosePair } from '#engine/cable/choose.ts';
import { conductorAssumptions } from '#engine/cable/conductor.ts';
import { fuseFor } from '#engine/cable/fuse.ts';
import { dropLimits } from '#engine/cable/tables.ts';
import { dcdcSizeFor } from '#engine/charging/path.ts';
import { dcdcSizesA } from '#engine/charging/tables.ts';
import { type Explored, explore } from '#engine/explore.ts';
import { batteryCurrentA, inverterFor, loadedVoltage } from '#engine/inverter/check.ts';
import { inverterEfficiency } from '#engine/inverter/efficiency.ts';
import { startingW, throughWatts, wattsAssumptions } from '#engine/inverter/watts.ts';
import { dayOf, useAssumptions } from '#engine/loads/model.ts';
import { chargeOver } from '#engine/loads/over.ts';
import { isDrawTold, isWhole } from '#engine/loads/reading.ts';
import { panelPowerFor, type SolarCase, solarAssumptions } from '#engine/solar/model.ts';
import type { Assumption } from '#quantity/range.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import { batteryAir } from '../battery-air.ts';
import type { Setting } from '../intent.ts';
import { sunOf } from '../sun.ts';
import { useOf } from '../use.ts';

export type ListKey =
  | 'dailyUse'
  | 'batteryCapacity'
  | 'panelPower'
  | 'chargerCurrent'
  | 'acLoad'
  | 'inverterPower'
  | 'inverterCurrent'
  | 'conductorArea';

export interface ShoppingList extends Explored<ListKey> {
  readonly chemistry: Chemistry;
  readonly isChemistryAssumed: boolean;
  /** How long the battery lasts by itself: the time told where nothing charges it on the way, else the usual spare. */
  readonly aloneH: number;
  readonly battery: { readonly count: number; readonly sizeAh: number };
  readonly sun: SolarCase;
  /** What of the list applies. */
  readonly has: {
    readonly panel: boolean;
    readonly charger: boolean;
    readonly inverter: boolean;
    readonly cable: boolean;
  };
  /** For the cable told, else for the inverter's. */
  readonly fuseA?: number;
  /** Its kind, by the battery of the list: "blade". */
  readonly fuseKind?: string;
  /** Loads reckoned with typical figures. */
  readonly typical: readonly string[];
}

const without = (facts: Facts, ...names: readonly string[]): boolean =>
  names.some(name => facts.without?.includes(name));

/** Hours driven a day where nobody said. Common practice. */
const usualDrivingH = 2;

/** A DC-DC charger that puts a day's use back in the hours driven a day, no larger than the bank stands, A. */
function chargerFor(dailyAh: number, eta: number, hours: number, most: number): number {
  const wanted = dailyAh / (eta * hours);
  return Math.min(most, dcdcSizesA.find(size => size >= wanted) ?? dcdcSizesA.at(-1)!);
}

/** Sizes of everything that these loads ask for: Ah, W of panel, A of charger, W of inverter, mm² and A of fuse. */
export function computeList(facts: Facts, setting: Pick<Setting, 'at' | 'mainsV'>): ShoppingList {
  const told = facts.batteries?.find(b => b.role !== 'starter' && b.chemistry)?.chemistry;
  const chemistry = told ?? 'agm';
  const isChemistryAssumed = told === undefined;
  const voltageV = nominalVoltage((facts.systemVoltageV ?? 12) > 18 ? 24 : 12, chemistry);
  const sun = sunOf(facts, setting.at);
  const use = useOf(facts, voltageV, setting.mainsV, setting.at);
  const outlet = {
    loads: use.loads.filter(load => load.supply === 'ac' && !isWhole(load)),
    mainsV: setting.mainsV,
  };
  const { lengthM, currentA, isRoundTrip } = facts.cable ?? {};
  const has = {
    panel: !without(facts, 'solar', 'charging'),
    charger: !without(facts, 'driving', 'charging', 'dcdc') && facts.drivingHoursPerDay !== 0,
    inverter: outlet.loads.length > 0,
    cable: lengthM !== undefined && currentA !== undefined,
  };
  const spareH = autonomyDays * 24;
  const aloneH = has.panel ? Math.min(facts.durationH ?? spareH, spareH) : (facts.durationH ?? spareH);
  const dropLimit: Assumption = { name: 'dropLimit', ...dropLimits.general, unit: '%' };
  const assumptions: Assumption[] = [
    ...bankAssumptions(
      { chemistry, isChemistryAssumed },
      facts.depthOfDischargePercent,
      batteryAir(facts, setting.at),
    ),
    ...useAssumptions(use),
    ...(has.panel ? solarAssumptions(sun) : []),
    ...storageAssumptions(chemistry, isChemistryAssumed),
    ...(has.inverter
      ? [...wattsAssumptions(outlet), inverterEfficiency, loadedVoltage(voltageV, undefined)]
      : []),
    ...(has.cable ? [...conductorAssumptions(undefined), dropLimit] : []),
  ].filter((a, i, all) => all.findIndex(b => b.name === a.name) === i);
  const explored = explore<ListKey>(assumptions, 'batteryCapacity', (values, trace) => {
    const day = dayOf(use, values, trace);
    const needAh = chargeOver(day, aloneH, trace);
    const batteryCapacity = requiredCapacityAh(
      { needAh, chemistry, currentA: day.currentA, temperatureC: facts.ambientC },
      values,
      trace,
    );
    const acLoad = has.inverter ? throughWatts(outlet, values, trace) : 0;
    const inverterPower = has.inverter ? inverterFor(acLoad, startingW(outlet, values)) : 0;
    const bank = {
      capacityAh: batteryCapacity,
      voltageV,
      chemistry,
      isChemistryAssumed,
      isMixed: false,
      count: 1,
    };
    const about = {
      lengthM: (lengthM ?? 0) / (isRoundTrip ? 2 : 1),
      currentA: currentA ?? 0,
      continuousA: currentA ?? 0,
      voltageV: voltageV > 18 ? 24 : 12,
    };
    return {
      dailyUse: day.dailyUse,
      batteryCapacity,
      panelPower: has.panel
        ? panelPowerFor(day.dailyUse, { ...sun, nominalVoltageV: voltageV, chemistry }, values, trace)
            .panelPowerW
        : 0,
      chargerCurrent: has.charger
        ? chargerFor(
            day.dailyUse,
            usualTrip(chemistry, values).chargeShare,
            facts.drivingHoursPerDay ?? usualDrivingH,
            dcdcSizeFor(bank),
          )
        : 0,
      acLoad,
      inverterPower,
      inverterCurrent: has.inverter ? batteryCurrentA(acLoad, inverterPower, values, trace) : 0,
      conductorArea: has.cable ? choosePair(about, 'metric', values, trace).conductor.areaMm2 : 0,
    };
  });
  const { batteryCapacity, inverterCurrent } = explored.figures;
  const battery = nextUsualSize(batteryCapacity.value, chemistry);
  const listed: Bank = {
    capacityAh: battery.count * battery.sizeAh,
    voltageV,
    chemistry,
    isChemistryAssumed,
    isMixed: false,
    count: battery.count,
  };
  const fusedA = has.cable ? currentA! : has.inverter ? inverterCurrent.value : undefined;
  const fuseA = fusedA === undefined ? undefined : fuseFor(fusedA).ratingA;
  return {
    ...explored,
    chemistry,
    isChemistryAssumed,
    aloneH,
    battery,
    sun,
    has,
    fuseA,
    fuseKind: fuseA === undefined ? undefined : fuseTypeFor(fuseA, fuseSource(voltageV, listed)).kind.name,
    typical: use.loads.filter(load => !isDrawTold(load) && !isWhole(load)).map(load => load.name),
  };
}
