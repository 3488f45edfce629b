import { type Appliance, applianceOf, isAlwaysOn } from '#catalog/appliances.ts';
import type { Load } from '#rig/rig.ts';
import type { Assumption } from '../assumption.ts';
import { buildOf, builtAs } from './build.ts';
import type { CoolerKind } from './cooler-table.ts';
import { averageCurrentLimitA, threeWayFromW } from './duty.ts';

/** The loads of a question, and what else bears on a day's use. */
export interface Use {
  readonly loads: readonly Load[];
  /** A day's use told as one number. */
  readonly dailyUseAh?: number;
  readonly dailyUseWh?: number;
  /** Nominal battery voltage, V. */
  readonly voltageV: number;
  /** Outside temperature where told, °C. */
  readonly ambientC?: number;
  /** What it is taken to be where only the place is known. */
  readonly air?: Assumption;
  /** Rating of the inverter where told, W. */
  readonly inverterW?: number;
  /** The inverter stays on day and night. */
  readonly isInverterLeftOn?: boolean;
  /** What readings have taught of the draw, as % of what was told. */
  readonly learnedDraw?: Assumption;
  /** Mains voltage, 230 by default, V. */
  readonly mainsV?: number;
  /** A mains load alone without hours runs on and on too ("how long will it run the heater"). */
  readonly doesMainsRunOn?: boolean;
  /** A day's use is asked for: what runs for a part of it has the hours of its kind, alone too. */
  readonly isOfDay?: boolean;
  /** Whatever has no hours runs all the time ("off the starter for 4 hours"). */
  readonly doAllRunOn?: boolean;
}

/** How a load was read: what is taken from the person and what from the table of appliances. */
export interface ReadLoad {
  readonly load: Load;
  /** Tells loads of one name apart: "fan", "fan2". Starts the names of their assumptions. */
  readonly key: string;
  readonly row: Appliance | undefined;
  /** What is usual of a thing that cools by a compressor. */
  readonly kind?: CoolerKind;
  /** A compressor whose running draw is known: a duty cycle goes on top. */
  readonly cycles: boolean;
  /** Hours a day that its compressor runs, where they were told: they are its duty. */
  readonly runsH?: number;
}

/** Whether its draw while running was told. */
export const isDrawTold = (load: Load): boolean => load.currentA !== undefined || load.powerW !== undefined;

const known = new WeakMap<readonly Load[], readonly ReadLoad[]>();

/** The readings of all loads, in their order; made once of a list, however often it is reckoned with. */
export function readLoads({ loads }: Pick<Use, 'loads'>): readonly ReadLoad[] {
  let readings = known.get(loads);
  if (readings === undefined) {
    readings = newlyRead(loads);
    known.set(loads, readings);
  }
  return readings;
}

const newlyRead = (loads: readonly Load[]): readonly ReadLoad[] =>
  loads.map((load, i) => {
    const { row, kind } = builtAs(load);
    const before = loads.slice(0, i).filter(other => other.name === load.name).length;
    return {
      load,
      key: `${load.name}${before === 0 ? '' : before + 1}`,
      row,
      kind,
      cycles: doesCycle(load, row),
      runsH: runningHours(load, row),
    };
  });

/** From so many hours a day on a thing that cools is plugged in all day, and they are not those of its compressor, h. Common practice. */
const allDayFromH = 20;

/** Hours a day that the compressor of a thing whose running draw was told runs, where its hours are such: undefined else. */
export function runningHours(load: Load, row = builtAs(load).row): number | undefined {
  const isOfRunning = isRunningDraw(load) && isDrawTold(load) && !isWhole(load);
  if (row?.setPointC === undefined || load.isAverage || load.dutyPercent !== undefined) return undefined;
  const hours = load.hoursPerDay ?? (load.minutesPerDay ?? Infinity) / 60;
  return isOfRunning && hours < allDayFromH ? hours : undefined;
}

/** Whether a draw told of a thing that cools is that of its compressor, and no average. */
const isRunningDraw = ({ powerW, currentA, supply, isAverage }: Load): boolean =>
  isAverage === false ||
  powerW !== undefined ||
  supply === 'ac' ||
  (currentA ?? Infinity) > averageCurrentLimitA;

function doesCycle(load: Load, row: Appliance | undefined): boolean {
  if (row?.setPointC === undefined || load.isAverage || load.dutyPercent !== undefined) return false;
  if (runningHours(load, row) !== undefined) return false;
  return isRunningDraw(load) || !isDrawTold(load);
}

/** No household microwave cooks with more than this, W: a higher figure is what it takes in. Common practice. */
const highestOutputW = 1250;

/** The factor between what comes out, as told or typical, and what the thing takes: low, likely, high; undefined where the input was told. */
export const inputFactorOf = (load: Load): Appliance['inputFactor'] => {
  const factor = applianceOf(load.name)?.inputFactor;
  const isInputTold = load.isInput || (load.powerW ?? 0) > highestOutputW;
  return isInputTold ? undefined : factor;
};

/** Whether a day's use was told as one number of energy or charge. */
export const isWhole = (load: Load): boolean =>
  load.energyWhPerDay !== undefined || load.chargeAhPerDay !== undefined;

export const hasHours = (load: Load): boolean =>
  load.hoursPerDay !== undefined || load.minutesPerDay !== undefined || load.hoursOnce !== undefined;

/** Hours that it runs a day as told, h; one single use counts for the day that it is in. */
export const toldHours = ({ hoursPerDay, minutesPerDay, hoursOnce }: Load): number | undefined =>
  hoursPerDay ?? (minutesPerDay === undefined ? hoursOnce && Math.min(24, hoursOnce) : minutesPerDay / 60);

/** What commonly runs no longer than this a day (h), as pumps and tellies do, is on round the clock in nobody's day. */
const partOfDayH = 12;

/** A load alone without hours runs on and on; among others it has the typical hours of its kind. */
export function runsOn({ load, row, cycles }: ReadLoad, use: Use): boolean {
  if (cycles || load.isAverage || !row || use.doAllRunOn || isAlwaysOn(row)) return true;
  if (use.isOfDay && row.hoursPerDay[2] <= partOfDayH) return false;
  const isAlone = use.loads.length === 1 && isDrawTold(load);
  return isAlone && (row.supply === 'dc' || !!use.doesMainsRunOn);
}

/**
 * How the draw of a thing that cools was taken, so that an answer can say so and offer the other:
 * 'running' (a duty cycle went on top), 'hours' (of its compressor), 'average' (neither), or undefined where the person
 * left no doubt.
 */
export function coolingReading(load: Load): 'running' | 'hours' | 'average' | undefined {
  const { row } = builtAs(load);
  if (row?.setPointC === undefined || load.dutyPercent !== undefined || isWhole(load)) return undefined;
  // It was told which it is.
  if (load.isAverage !== undefined) return undefined;
  if (!isDrawTold(load)) return undefined;
  if (runningHours(load, row) !== undefined) return 'hours';
  return doesCycle(load, row) ? 'running' : 'average';
}

/** Whether a fridge is told to be a three-way (absorption) one that runs on the battery. */
export const isThreeWay = (load: Load): boolean =>
  applianceOf(load.name)?.setPointC !== undefined && load.supply === 'dc' && buildOf(load) === 'three-way';

/** Whether a fridge draws so much at low volts (V) that it may be a three-way (absorption) one. Freezers are none. */
export function isPerhapsThreeWay(load: Load, voltageV: number): boolean {
  if (buildOf(load) !== 'camping') return false;
  const isFridge = (applianceOf(load.name)?.setPointC ?? -Infinity) >= 0;
  const drawnW = load.powerW ?? (load.currentA ?? 0) * voltageV;
  return isFridge && load.supply === 'dc' && drawnW >= threeWayFromW;
}
