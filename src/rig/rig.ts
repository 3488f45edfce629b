import { z } from 'zod';

/**
 * The shape of what people say of their gear and their trip, shared by reading, memory and engine.
 * Units stand in the names: A, Ah, W, Wh, V, h, m, mm², °C, percent.
 */

export const chemistries = ['agm', 'gel', 'flooded', 'lfp', 'lead-acid'] as const;
export type Chemistry = (typeof chemistries)[number];

const amount = z.number().positive().max(1e7);

export const loadSchema = z.strictObject({
  /** As the table of appliances names it ("fridge"), else as the person did. */
  name: z.string().max(60),
  count: z.number().int().min(1).max(1000),
  currentA: amount.optional(),
  powerW: amount.optional(),
  /** powerW is what it takes in (amps × volts off its plate, "input"), not what it cooks with. */
  isInput: z.boolean().optional(),
  /** An energy or charge a day that the person gave instead of a draw. */
  energyWhPerDay: amount.optional(),
  chargeAhPerDay: amount.optional(),
  hoursPerDay: z.number().min(0).max(24).optional(),
  minutesPerDay: z.number().min(0).max(1440).optional(),
  /** Hours that one single use takes, where the question is about one use and no day ("for 20 mins"). */
  supply: z.enum(['dc', 'ac']),
  /** "averages", "measured over a day", "nonstop": no duty cycle goes on top. */
  isAverage: z.boolean().optional(),
  /** The share of the time a thing that cycles really runs, where the person says so. */
  dutyPercent: z.number().min(0).max(100).optional(),
});
export type Load = z.infer<typeof loadSchema>;

export const batterySchema = z.strictObject({
  count: z.number().int().min(1).max(100),
  capacityAh: z.number().min(0).max(1e6).optional(),
  energyWh: amount.optional(),
  chemistry: z.enum(chemistries).optional(),
  voltageV: amount.optional(),
  stateOfChargePercent: z.number().min(0).max(100).optional(),
  role: z.enum(['house', 'starter']).optional(),
});
export type Battery = z.infer<typeof batterySchema>;

export const solarSchema = z.strictObject({
  count: z.number().int().min(1).max(200),
  powerW: amount.optional(),
  controller: z.enum(['mppt', 'pwm']).optional(),
});
export type Solar = z.infer<typeof solarSchema>;

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
});
export type Inverter = z.infer<typeof inverterSchema>;

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
export type Rig = z.infer<typeof rigSchema>;

/** Everything a message can state; a key is absent where it says nothing of it. */
export const factsSchema = z.strictObject({
  ...gear,
  durationH: z.number().positive().max(1e5).optional(),
  drivingHoursPerDay: z.number().min(0).max(24).optional(),
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
  shade: z.enum(['none', 'half', 'heavy']).optional(),
  peakSunHours: z.number().positive().max(14).optional(),
  /** What the panels make a day, where the person says it. */
  solarAhPerDay: amount.optional(),
  solarWhPerDay: amount.optional(),
  ambientC: z.number().min(-60).max(70).optional(),
  /** A voltage read off a battery. */
  volts: z.number().min(0).max(1000).optional(),
  voltsTaken: z.enum(['rest', 'load', 'charging']).optional(),
  targetChargePercent: z.number().min(0).max(100).optional(),
  /** Ah (or Wh) missing that have to be put back, where said. */
  chargeNeededAh: amount.optional(),
  /** How far down the person will take the battery: the share used, 0–100 %. */
  depthOfDischargePercent: z.number().positive().max(100).optional(),
  altitudeM: z.number().min(-500).max(9000).optional(),
  /** "no charging", "no sun", "parked": sources ruled out in so many words. */
  without: z.array(z.enum(['solar', 'driving', 'charging', 'battery'])).optional(),
});
export type Facts = z.infer<typeof factsSchema>;

export interface Claim {
  /** As written: "sam", "he", "me". */
  readonly who: string;
  readonly value: number;
  /** As written, in its short form: "days", "h", "Ah", "Wh", "A", "W", "V", "mm²", "%". */
  readonly unit: string;
}
