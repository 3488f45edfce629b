/** What owns a slot: an entity of that kind that stands at another mention, or nothing. */
export type OwnerKind = 'load' | 'battery' | 'solar' | 'charger' | 'person' | 'counted';

/** One row: a role that a mention may play. */
export interface Slot {
  readonly name: string;
  /** Owners it needs; absent: it stands by itself. */
  readonly owner?: OwnerKind;
  /** May also make its own entity: a load without a name, a battery by its Ah. */
  readonly isMaker?: boolean;
  /** May hold for all entities of its owner's kind. */
  readonly forAll?: boolean;
  /** Rows of one group share what is learned of them: "load", "battery". */
  readonly group: string;
  /** The fact's value from the amount in its base unit (or the number as told, of a bare number). */
  readonly from?: (value: number) => number;
  /** Values that are believable: outside, it is not proposed. */
  readonly range?: readonly [low: number, high: number];
}

const rows: Slot[] = [];
const slot = (name: string, group: string, more: Omit<Slot, 'name' | 'group'> = {}): number =>
  rows.push({ name, group, ...more }) - 1;

export const none = slot('none', 'none');
/** The same thing or amount as one told before. */
export const same = slot('same', 'none');

// things
export const load = slot('load', 'load');
export const removed = slot('removed', 'removed');
// loads
export const loadCurrent = slot('load.currentA', 'load', {
  owner: 'load',
  isMaker: true,
  forAll: true,
  range: [0.01, 400],
});
export const loadPower = slot('load.powerW', 'load', {
  owner: 'load',
  isMaker: true,
  forAll: true,
  range: [0.05, 12000],
});
export const loadStart = slot('load.startsPowerW', 'load', { owner: 'load', range: [5, 30000] });
export const loadCharge = slot('load.chargeAhPerDay', 'load', {
  owner: 'load',
  isMaker: true,
  forAll: true,
  range: [0.05, 900],
});
export const loadEnergy = slot('load.energyWhPerDay', 'load', {
  owner: 'load',
  isMaker: true,
  forAll: true,
  range: [0.5, 20000],
});
export const loadHours = slot('load.hoursPerDay', 'hours', {
  owner: 'load',
  forAll: true,
  range: [0.01, 24],
});
export const loadMinutes = slot('load.minutesPerDay', 'hours', {
  owner: 'load',
  forAll: true,
  from: h => Math.round(h * 60 * 1000) / 1000,
  range: [0.005, 24],
});
export const loadOnce = slot('load.hoursOnce', 'hours', { owner: 'load', forAll: true, range: [0.005, 100] });
export const loadDuty = slot('load.dutyPercent', 'load', { owner: 'load', forAll: true, range: [1, 100] });
export const loadAverage = slot('load.isAverage', 'load', { owner: 'load', forAll: true });
// batteries
export const capacity = slot('battery.capacityAh', 'battery', { isMaker: true, range: [0.5, 5000] });
export const batteryEnergy = slot('battery.energyWh', 'battery', { isMaker: true, range: [5, 60000] });
export const batteryChemistry = slot('battery.chemistry', 'battery', {
  owner: 'battery',
  isMaker: true,
  forAll: true,
});
export const batteryRole = slot('battery.role', 'battery', { owner: 'battery', isMaker: true });
export const batteryVolts = slot('battery.voltageV', 'battery', {
  owner: 'battery',
  isMaker: true,
  forAll: true,
  range: [2, 60],
});
export const batteryLevel = slot('battery.stateOfChargePercent', 'battery', {
  owner: 'battery',
  isMaker: true,
  forAll: true,
  range: [0, 100],
});
export const batteryUsedShare = slot('battery.stateOfChargePercent:used', 'battery', {
  owner: 'battery',
  isMaker: true,
  from: v => 100 - v,
  range: [0, 100],
});
export const batteryAge = slot('battery.ageYears', 'battery', {
  owner: 'battery',
  isMaker: true,
  forAll: true,
  range: [0.1, 30],
});
export const batteryLimit = slot('battery.maxCurrentA', 'battery', {
  owner: 'battery',
  isMaker: true,
  range: [5, 1000],
});
// solar
export const solarPower = slot('solar.powerW', 'solar', { isMaker: true, range: [1, 20000] });
export const solarController = slot('solar.controller', 'solar', {
  owner: 'solar',
  isMaker: true,
  forAll: true,
});
export const solarOpenVolts = slot('solar.openCircuitV', 'solar', {
  owner: 'solar',
  isMaker: true,
  forAll: true,
  range: [5, 200],
});
// chargers
export const chargerDcdc = slot('charger:dcdc', 'charger');
export const chargerIsolator = slot('charger:isolator', 'charger');
export const chargerMains = slot('charger:mains', 'charger');
export const chargerGenerator = slot('charger:generator', 'charger');
export const chargerCurrent = slot('charger.currentA', 'charger', {
  owner: 'charger',
  isMaker: true,
  range: [0.5, 400],
});
export const chargerPower = slot('charger.powerW', 'charger', {
  owner: 'charger',
  isMaker: true,
  range: [10, 20000],
});
export const alternatorSmart = slot('alternator:smart', 'charger');
export const alternatorFixed = slot('alternator:fixed', 'charger');
export const alternatorCurrent = slot('alternatorA', 'charger', { range: [8, 400] });
// inverter
export const inverterPower = slot('inverter.powerW', 'inverter', { range: [30, 12000] });
export const inverterSurge = slot('inverter.surgeW', 'inverter', { range: [50, 24000] });
export const inverterWave = slot('inverter.wave', 'inverter');
// cable and fuse
export const cableLength = slot('cable.lengthM', 'cable', { range: [0.05, 500] });
export const cableRound = slot('cable.lengthM:round', 'cable', { range: [0.05, 500] });
export const cableArea = slot('cable.areaMm2', 'cable', { range: [0.2, 200] });
export const cableAwg = slot('cable.awg', 'cable', { range: [-3, 24] });
export const cableAuto = slot('cable.autoCableMm', 'cable', { from: v => v * 1000, range: [0.0015, 0.012] });
export const cableCurrent = slot('cable.currentA', 'cable', { range: [0.1, 600] });
export const cableDrop = slot('cable.dropLimitPercent', 'cable', { range: [0.5, 20] });
export const fuse = slot('fuseA', 'cable', { range: [0.5, 600] });
// use and system
export const useCharge = slot('dailyUseAh', 'use', { range: [0.1, 2000] });
export const useEnergy = slot('dailyUseWh', 'use', { range: [1, 60000] });
/** What the panels make a day, where somebody tells it, and the sun that they get. */
export const sunCharge = slot('solarAhPerDay', 'use', { range: [0.5, 2000] });
export const sunEnergy = slot('solarWhPerDay', 'use', { range: [5, 60000] });
export const sunHours = slot('peakSunHours', 'weather', { range: [0.3, 14] });
export const systemVolts = slot('systemVoltageV', 'system', { range: [5, 250] });
// readings
export const volts = slot('volts', 'reading', { range: [0, 64] });
export const voltsRest = slot('volts:rest', 'reading', { range: [0, 64] });
export const voltsLoad = slot('volts:load', 'reading', { range: [0, 64] });
export const voltsCharging = slot('volts:charging', 'reading', { range: [0, 64] });
export const currentOut = slot('netCurrentA:out', 'reading', {
  from: v => -Math.abs(v) || 0,
  range: [0, 500],
});
export const currentIn = slot('netCurrentA:in', 'reading', { from: v => Math.abs(v), range: [0, 500] });
export const chargeUsed = slot('chargeUsedAh', 'reading', { range: [0.1, 2000] });
export const chargeLeft = slot('chargeLeftAh', 'reading', { range: [0.1, 2000] });
export const target = slot('targetChargePercent', 'reading', { range: [5, 100] });
export const depth = slot('depthOfDischargePercent', 'reading', { range: [1, 100] });
export const depthFloor = slot('depthOfDischargePercent:floor', 'reading', {
  from: v => 100 - v,
  range: [0, 99],
});
// time, place, weather
export const duration = slot('durationH', 'time', { range: [0.01, 9000] });
export const until = slot('until', 'time');
export const driving = slot('drivingHoursPerDay', 'time', { range: [0.01, 24] });
export const ambient = slot('ambientC', 'weather', { range: [-60, 65] });
export const month = slot('month', 'weather');
export const place = slot('place', 'weather');
export const sky = slot('sky', 'weather');
export const shade = slot('shade', 'weather');
export const mount = slot('mount', 'weather');
export const arrangement = slot('arrangement', 'battery');
export const without = slot('without', 'without');
// people
export const claim = slot('claim', 'claim', { owner: 'person' });
// claims whose unit nobody said
export const claimAh = slot('claim:Ah', 'claim', { owner: 'person', range: [0.1, 2000] });
export const claimDays = slot('claim:days', 'claim', { owner: 'person', range: [0.1, 60] });
export const claimHours = slot('claim:h', 'claim', { owner: 'person', range: [0.1, 300] });
export const claimWatts = slot('claim:W', 'claim', { owner: 'person', range: [1, 6000] });
export const claimAmps = slot('claim:A', 'claim', { owner: 'person', range: [0.1, 500] });
export const claimPercent = slot('claim:%', 'claim', { owner: 'person', range: [0.1, 100] });
export const claimArea = slot('claim:mm²', 'claim', { owner: 'person', range: [0.5, 150] });
export const claimGauge = slot('claim:awg', 'claim', { owner: 'person', range: [0, 24] });
export const claimVolts = slot('claim:V', 'claim', { owner: 'person', range: [0.05, 60] });
export const claimEnergy = slot('claim:Wh', 'claim', { owner: 'person', range: [1, 20000] });
export const claimPanels = slot('claim:panels', 'claim', { owner: 'person', range: [1, 20] });
export const claimBatteries = slot('claim:batteries', 'claim', { owner: 'person', range: [1, 20] });
export const claims: ReadonlySet<number> = new Set([
  claim,
  claimGauge,
  claimVolts,
  claimEnergy,
  claimPanels,
  claimBatteries,
  claimAh,
  claimDays,
  claimHours,
  claimWatts,
  claimAmps,
  claimPercent,
  claimArea,
]);
// counts
export const count = slot('count', 'count', { owner: 'counted', range: [1, 200] });
// how a load runs
/** Of a turn that names no battery and no panel: "and with two of them?". */
export const batteryCount = slot('battery.count', 'count', { isMaker: true, range: [1, 40] });
export const panelCount = slot('solar.count', 'count', { isMaker: true, range: [1, 40] });
// answers in words to what was asked back: how the volts were taken, what the length was
export const takenRest = slot('voltsTaken:rest', 'taken');
export const takenLoad = slot('voltsTaken:load', 'taken');
export const takenCharging = slot('voltsTaken:charging', 'taken');
export const tripOne = slot('cable.isRoundTrip:one', 'taken');
export const tripRound = slot('cable.isRoundTrip:both', 'taken');

export const slots: readonly Slot[] = rows;
/** Days that the plan of a trip tells one by one are proposed whole (`plans.ts`). */

/** Kinds of chargers by the slot that makes one. */
export const chargerKinds: Readonly<Record<number, 'dcdc' | 'isolator' | 'mains' | 'generator'>> = {
  [chargerDcdc]: 'dcdc',
  [chargerIsolator]: 'isolator',
  [chargerMains]: 'mains',
  [chargerGenerator]: 'generator',
};
