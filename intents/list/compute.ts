import { present } from '#basics/present.ts';
import type { Assumption } from '#engine/assumption.ts';
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
import { type Explored, explore, likelyOf } from '#engine/explore.ts';
import { batteryCurrentA, inverterFor, loadedVoltage } from '#engine/inverter/check.ts';
import { inverterEfficiency } from '#engine/inverter/efficiency.ts';
import { startingW, throughWatts, wattsAssumptions } from '#engine/inverter/watts.ts';
import { dailyUseAh, dayOf, useAssumptions } from '#engine/loads/model.ts';
import { chargeOver } from '#engine/loads/over.ts';
import { isDrawTold, isWhole } from '#engine/loads/reading.ts';
import { currentOfPower } from '#engine/loads/rules.ts';
import { panelPowerFor, type SolarCase, solarAssumptions } from '#engine/solar/model.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import { batteryAir } from '../battery-air.ts';
import type { RequestContext } from '../intent.ts';
import { sunOf } from '../sun.ts';
import { useOf } from '../use.ts';
import { type Owned, ownedIn } from './owned.ts';
import { type Run, usualRuns } from './runs/runs.ts';
import { withUsualHours } from './usual-hours.ts';

type ListKey =
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
  /** Those of which the draw was told, and no hours. */
  readonly timed: readonly string[];
  /** The loads that take most a day, with their Ah, the biggest first. */
  readonly biggest: readonly { readonly name: string; readonly chargeAh: number }[];
  /** The same in the other chemistry: lithium where AGM was taken, and the other way about. */
  readonly other: { readonly chemistry: Chemistry; readonly count: number; readonly sizeAh: number };
  /** Gear that is there already, and whether it does. */
  readonly owned: Owned;
  readonly controllerA?: number;
  readonly runs: readonly Run[];
}

/** A day of less than this needs no charger of its own on the drive, Ah. Common practice. */
const smallAh = 10;

/** Solar controllers as sold, A. Common practice. */
const controllerSizesA = [10, 15, 20, 30, 40, 50, 60, 80, 100] as const;

const without = (facts: Facts, ...names: readonly string[]): boolean =>
  names.some(name => facts.without?.includes(name));

/** Hours driven a day where nobody said. Common practice. */
const usualDrivingH = 2;

/** A DC-DC charger that puts a day's use back in the hours driven a day, no larger than the bank stands, A. */
function chargerFor(dailyAh: number, eta: number, hours: number, most: number): number {
  const wanted = dailyAh / (eta * hours);
  return Math.min(most, dcdcSizesA.find(size => size >= wanted) ?? present(dcdcSizesA.at(-1)));
}

/** A controller for the panels, with the sun of a bright cold noon in hand, A. */
function controllerFor(panelW: number, voltageV: number): number | undefined {
  if (!Number.isFinite(panelW)) return undefined;
  const wantedA = run(currentOfPower, { P: panelW, V: voltageV });
  return controllerSizesA.find(size => size >= wantedA) ?? Math.ceil(wantedA / 20) * 20;
}

/** Sizes of everything that these loads ask for: Ah, W of panel, A of charger, W of inverter, mm² and A of fuse. */
export function computeList(told: Facts, setting: Pick<RequestContext, 'at' | 'mainsV'>): ShoppingList {
  const { facts, timed } = withUsualHours(told);
  const named = facts.batteries?.find(b => b.role !== 'starter' && b.chemistry)?.chemistry;
  const chemistry = named ?? 'agm';
  const isChemistryAssumed = named === undefined;
  const voltageV = nominalVoltage((facts.systemVoltageV ?? 12) > 18 ? 24 : 12, chemistry);
  const sun = sunOf(facts, setting.at);
  const use = useOf(facts, voltageV, setting.mainsV, setting.at);
  const outlet = {
    loads: use.loads.filter(load => load.supply === 'ac' && !isWhole(load)),
    mainsV: setting.mainsV,
  };
  const { lengthM, currentA, isRoundTrip } = facts.cable ?? {};
  const isSmall = dailyUseAh(use, likelyOf(useAssumptions(use))) < smallAh;
  const has = {
    panel: !without(facts, 'solar', 'charging'),
    charger:
      !without(facts, 'driving', 'charging', 'dcdc') &&
      facts.drivingHoursPerDay !== 0 &&
      !(isSmall && facts.drivingHoursPerDay === undefined),
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
  const likely = likelyOf(assumptions);
  const day = dayOf(use, likely);
  const another: Chemistry = chemistry === 'lfp' ? 'agm' : 'lfp';
  const otherAh = requiredCapacityAh(
    {
      needAh: chargeOver(day, aloneH),
      chemistry: another,
      currentA: day.currentA,
      temperatureC: facts.ambientC,
    },
    likelyOf(bankAssumptions({ chemistry: another, isChemistryAssumed: false })),
  );
  const fusedA = has.cable ? present(currentA) : has.inverter ? inverterCurrent.value : undefined;
  const fuseA = fusedA === undefined ? undefined : fuseFor(fusedA).ratingA;
  const kindOfFuse = (ratingA: number): string =>
    fuseTypeFor(ratingA, fuseSource(voltageV, listed)).kind.name;
  return {
    ...explored,
    chemistry,
    isChemistryAssumed,
    aloneH,
    battery,
    sun,
    has,
    fuseA,
    fuseKind: fuseA === undefined ? undefined : kindOfFuse(fuseA),
    biggest: day.parts
      .map(({ load, chargeAh }) => ({ name: load.name, chargeAh }))
      .sort((a, b) => b.chargeAh - a.chargeAh),
    other: { chemistry: another, ...nextUsualSize(otherAh, another) },
    owned: ownedIn(facts, explored.figures),
    ...(has.panel && { controllerA: controllerFor(explored.figures.panelPower.value, voltageV) }),
    runs: usualRuns(facts, setting.mainsV, voltageV, {
      dcdcA: has.charger ? explored.figures.chargerCurrent.value : undefined,
      inverterW: has.inverter ? explored.figures.inverterPower.value : undefined,
    }).map(one => (one.to === 'inverter' ? { ...one, fuseKind: kindOfFuse(one.fuseA) } : one)),
    typical: use.loads
      .filter(load => (!isDrawTold(load) && !isWhole(load)) || timed.includes(load.name))
      .map(load => load.name),
    timed,
  };
}
