import { z } from 'zod';

/**
 * The shape of what people say of their gear and their trip, shared by reading, memory and engine.
 * Units stand in the names: A, Ah, W, Wh, V, h, m, mm², °C, percent.
 *
 * `Stated` is the literal reading, and what memory keeps: a thing named without figures is `{ name }`, and nothing
 * is defaulted. `Facts` is the same ready for the engine: how many there are and what a load runs on filled in
 * (`engine/loads/complete.ts`, applied by every question's `needs`).
 */

export const chemistries = ['agm', 'gel', 'flooded', 'lfp', 'lead-acid'] as const;
export type Chemistry = (typeof chemistries)[number];

/** With these keys there for certain. */
type With<T, K extends keyof T> = T & { [P in K]-?: NonNullable<T[P]> };

const amount = z.number().positive().max(1e7);

export const loadSchema = z.strictObject({
  /** As the table of appliances names it ("fridge"), else as the person did. */
  name: z.string().max(60),
  count: z.number().int().min(1).max(1000).optional(),
  currentA: amount.optional(),
  powerW: amount.optional(),
  /** powerW is what it takes in (amps × volts off its plate, "input"), not what it cooks with. */
  isInput: z.boolean().optional(),
  /** An energy or charge a day that the person gave instead of a draw. */
  energyWhPerDay: amount.optional(),
  chargeAhPerDay: amount.optional(),
  hoursPerDay: z.number().min(0).max(24).optional(),
  minutesPerDay: z.number().min(0).max(1440).optional(),
  /** Hours that one single use takes, among other loads ("the kettle once for 4 minutes"). */
  hoursOnce: z.number().positive().max(1000).optional(),
  supply: z.enum(['dc', 'ac']).optional(),
  /** "averages", "measured over a day", "nonstop": no duty cycle goes on top. */
  isAverage: z.boolean().optional(),
  /** The share of the time a thing that cycles really runs, where the person says so. */
  dutyPercent: z.number().min(0).max(100).optional(),
  /** What it takes for a moment when it starts. */
  startsPowerW: amount.optional(),
  /** Inside, L, of a thing that cools. */
  volumeL: z.number().min(2).max(2000).optional(),
  /** How a thing that cools is built, where the words tell it. */
  build: z.enum(['household', 'three-way', 'thermoelectric']).optional(),
});
export type StatedLoad = z.infer<typeof loadSchema>;
/** A load ready for the engine. */
export type Load = With<StatedLoad, 'count' | 'supply'>;

export const batterySchema = z.strictObject({
  count: z.number().int().min(1).max(100).optional(),
  capacityAh: z.number().min(0).max(1e6).optional(),
  energyWh: amount.optional(),
  chemistry: z.enum(chemistries).optional(),
  voltageV: amount.optional(),
  /** Its Ah are at the volts of one lithium cell, as a power bank's mAh are. */
  isOfCell: z.boolean().optional(),
  /** A power station: its own per cent runs to nothing, and its electronics take a part. */
  isStation: z.boolean().optional(),
  stateOfChargePercent: z.number().min(0).max(100).optional(),
  role: z.enum(['house', 'starter']).optional(),
  ageYears: z.number().min(0).max(60).optional(),
  /** How it fares, where the words tell it and no years. */
  wear: z.enum(['old', 'tired']).optional(),
  /** The most it may give: a limit of its BMS or maker. */
  maxCurrentA: amount.optional(),
});
export type StatedBattery = z.infer<typeof batterySchema>;
export type Battery = With<StatedBattery, 'count'>;

export const solarSchema = z.strictObject({
  count: z.number().int().min(1).max(200).optional(),
  powerW: amount.optional(),
  controller: z.enum(['mppt', 'pwm']).optional(),
  /** Open-circuit voltage of one panel, V, as its label has it (at 25 °C). */
  openCircuitV: amount.optional(),
});
export type StatedSolar = z.infer<typeof solarSchema>;
export type Solar = With<StatedSolar, 'count'>;

export const chargerSchema = z.strictObject({
  kind: z.enum(['dcdc', 'isolator', 'mains', 'generator']),
  currentA: amount.optional(),
  powerW: amount.optional(),
});
export type Charger = z.infer<typeof chargerSchema>;

export const inverterSchema = z.strictObject({
  powerW: amount.optional(),
  surgeW: amount.optional(),
  wave: z.enum(['pure-sine', 'modified-sine']).optional(),
  /** It stays on day and night, whether something runs on it or not. */
  isLeftOn: z.boolean().optional(),
});

export const cableSchema = z.strictObject({
  /** One way unless isRoundTrip. */
  lengthM: amount.optional(),
  isRoundTrip: z.boolean().optional(),
  areaMm2: amount.optional(),
  /** American wire gauge = B&S; 0, -1, -2, -3 stand for 1/0, 2/0, 3/0, 4/0. */
  awg: z.number().int().min(-3).max(40).optional(),
  /** Trade size of Australian auto cable: the outside of the insulation, in mm. */
  autoCableMm: amount.optional(),
  currentA: amount.optional(),
  dropLimitPercent: z.number().positive().max(50).optional(),
});
export type Cable = z.infer<typeof cableSchema>;

/** What stays with a chat between questions: the gear, and the habits told with it. */
const gear = {
  loads: z.array(loadSchema).max(60).optional(),
  batteries: z.array(batterySchema).max(20).optional(),
  arrangement: z.enum(['parallel', 'series']).optional(),
  solar: z.array(solarSchema).max(20).optional(),
  mount: z.enum(['flat', 'tilted']).optional(),
  chargers: z.array(chargerSchema).max(10).optional(),
  alternator: z.enum(['smart', 'fixed']).optional(),
  /** What the alternator is rated for. */
  alternatorA: amount.optional(),
  inverter: inverterSchema.optional(),
  cable: cableSchema.optional(),
  /** A day's use told as one number. */
  dailyUseAh: amount.optional(),
  dailyUseWh: amount.optional(),
  systemVoltageV: amount.optional(),
  place: z.string().max(80).optional(),
  latitudeDeg: z.number().min(-90).max(90).optional(),
  longitudeDeg: z.number().min(-180).max(180).optional(),
};

export const rigSchema = z.strictObject(gear);
/** A rig as told and kept. */
export type Rig = z.infer<typeof rigSchema>;

/** Rigs kept of one chat, and things in one rig: more than any group of campers has, and a chat's memory stays small. */
export const mostKept = { rigs: 50, loads: 30 } as const;

/** One day of a plan told day by day. */
const daySchema = z.strictObject({
  drivingH: z.number().min(0).max(24).optional(),
  sky: z.enum(['sunny', 'mixed', 'overcast']).optional(),
  generatorH: z.number().min(0).max(24).optional(),
  /** Hours on mains (hook-up, powered site), from the evening on; true: the night, and nobody said how many hours. */
  mainsH: z.union([z.number().min(0).max(24), z.literal(true)]).optional(),
});
export type PlannedDay = z.infer<typeof daySchema>;

/** Everything a message can state; a key is absent where it says nothing of it. */
export const factsSchema = z.strictObject({
  ...gear,
  durationH: z.number().positive().max(1e5).optional(),
  /** When it shall last to, as told and small: "7am", "sunday lunch". */
  until: z.string().max(40).optional(),
  drivingHoursPerDay: z.number().min(0).max(24).optional(),
  /** A plan told day by day, first day first. */
  days: z.array(daySchema).max(60).optional(),
  /** Hours driven on each day of a trip, first day first ("thu 4h, fri none"). */
  drivingPlanH: z.array(z.number().min(0).max(24)).max(60).optional(),
  /** Hour of the day (0–24) a trip starts at, where said ("friday 6pm"). */
  startHour: z.number().min(0).max(24).optional(),
  /** Weekday a trip starts on, where said: 0 is Sunday. */
  startWeekday: z.number().int().min(0).max(6).optional(),
  month: z.number().int().min(1).max(12).optional(),
  sky: z.enum(['sunny', 'mixed', 'overcast']).optional(),
  /** How many days, from the end of the trip, the sky word is for; absent: all of them. */
  skyLastDays: z.number().int().positive().max(60).optional(),
  /** How much of the panels lies in shade; true: some, and nobody said how much. */
  shade: z.union([z.enum(['none', 'half', 'heavy']), z.literal(true)]).optional(),
  peakSunHours: z.number().positive().max(14).optional(),
  /** What the panels make a day, where the person says it. */
  solarAhPerDay: amount.optional(),
  solarWhPerDay: amount.optional(),
  ambientC: z.number().min(-60).max(70).optional(),
  /** A voltage read off a battery. */
  volts: z.number().min(0).max(1000).optional(),
  voltsTaken: z.enum(['rest', 'load', 'charging']).optional(),
  /** What a monitor shows; minus is out of the battery. */
  netCurrentA: z.number().min(-1e5).max(1e5).optional(),
  /** Ah used since full, and Ah left, as a monitor counts them. */
  chargeUsedAh: z.number().min(0).max(1e6).optional(),
  chargeLeftAh: z.number().min(0).max(1e6).optional(),
  /** The rating of a fuse or breaker spoken of. */
  fuseA: amount.optional(),
  targetChargePercent: z.number().min(0).max(100).optional(),
  /** Ah (or Wh) missing that have to be put back, where said. */
  chargeNeededAh: amount.optional(),
  /** How far down the person will take the battery: the share used, 0–100 %. */
  depthOfDischargePercent: z.number().positive().max(100).optional(),
  altitudeM: z.number().min(-500).max(9000).optional(),
  /** "no charging", "no sun", "parked": sources ruled out in so many words. */
  without: z.array(z.string().max(30)).max(10).optional(),
});
/** What was told, literally. */
export type Stated = z.infer<typeof factsSchema>;
/** A factor on what was told, with the span that nine in ten lie in. */
export interface LearnedFactor {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}
/** What readings have taught of a rig; a part that they don't tell yet is absent. */
export interface LearnedOfRig {
  readonly readings: number;
  readonly draw?: LearnedFactor;
  readonly capacity?: LearnedFactor;
  readonly sun?: LearnedFactor;
  /** How much more it draws by day than by night, beyond what was expected: half the logarithm of day over night. */
  readonly byDay?: number;
}
/** What was told, ready for the engine. */
export type Facts = Omit<Stated, 'loads' | 'batteries' | 'solar' | 'shade'> & {
  loads?: Load[] | undefined;
  batteries?: Battery[] | undefined;
  solar?: Solar[] | undefined;
  shade?: Exclude<Stated['shade'], true>;
};

export interface Claim {
  /** As written: "sam", "he", "me". */
  readonly who: string;
  readonly value: number;
  /** As written, in its short form: "days", "h", "Ah", "Wh", "A", "W", "V", "mm²", "%". */
  readonly unit: string;
}
