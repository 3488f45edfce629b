import type { Assumption as NamedFreely } from '#quantity/range.ts';

/** What may be taken for granted of a rig as a whole, by name. One that is misspelled does not compile. */
type PlainName =
  // Battery
  | 'age'
  | 'batteryCapacity'
  | 'batteryTemperature'
  | 'chargeEfficiency'
  | 'depthOfDischarge'
  | 'fullAt'
  | 'loadedVoltage'
  | 'peukertExponent'
  | 'slowPart'
  | 'stateOfCharge'
  | 'timeConstant'
  | 'topEfficiency'
  | 'voltageSag'
  // Loads and inverter
  | 'idleShare'
  | 'inverterEfficiency'
  | 'learnedDraw'
  // Chargers, generator, vehicle
  | 'alternatorShare'
  | 'altitudeShare'
  | 'continuousShare'
  | 'chargeVoltage'
  | 'chargerCurrent'
  | 'chargerEfficiency'
  | 'chargerOutput'
  | 'dcdcEfficiency'
  | 'powerFactor'
  | 'startFactor'
  | 'vehicleVoltage'
  // Sun and panels
  | 'airTemperature'
  | 'ambientC'
  | 'chargingVoltage'
  | 'clearness'
  | 'coldestC'
  | 'controllerEfficiency'
  | 'dayTemperature'
  | 'dirtLoss'
  | 'fullPowerShare'
  | 'learnedSun'
  | 'mismatchLoss'
  | 'mountHeating'
  | 'openCircuitVoltage'
  | 'overcastClearness'
  | 'overcastPeakSunHours'
  | 'overcastShare'
  | 'panelAzimuth'
  | 'panelTilt'
  | 'panelVoltage'
  | 'peakSunHours'
  | 'powerCoefficient'
  | 'reflectionLoss'
  | 'shadeShare'
  | 'sunnyClearness'
  | 'sunnyPeakSunHours'
  | 'voltageCoefficient'
  | 'wiringLoss'
  // Cables
  | 'bundleShare'
  | 'cableAirC'
  | 'conductorC'
  | 'dropLimit'
  | 'strandFactor';

/** What is taken of one load: its name first, as a chat shows it. */
type NameOfLoad = `${string} ${'power' | 'input factor' | 'hours a day' | 'volume' | 'walls' | 'openings'}`;

/** What a name ends in that holds for some days or one source of a trip alone. */
export type NameTail = ' on the last days' | ` on ${'sunny' | 'mixed' | 'overcast'} days` | ' plugged in';

export type AssumptionName = PlainName | NameOfLoad | `${PlainName}${NameTail}`;

/** Something taken for granted in a calculation of the engine, under one of the names above. */
export interface Assumption extends NamedFreely {
  readonly name: AssumptionName;
}

/** The name of an assumption that holds for some days or one source of a trip alone. */
export const nameWith = (name: AssumptionName, tail: NameTail | ''): AssumptionName =>
  // No name gets a second tail: what is of one sky alone is not of what is plugged in.
  `${name}${tail}` as AssumptionName;

/** The value of each assumption by its name; one that a calculation goes without is not there. */
export type Values = { readonly [Name in AssumptionName]?: number };

/** The same while they are put together. */
export type ValuesToSet = { -readonly [Name in keyof Values]: Values[Name] };
