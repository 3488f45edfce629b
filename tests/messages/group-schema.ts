import { z } from 'zod';
import { intents } from '../../intents/index.ts';
import { hazardCodes } from '../../src/rig/hazard-codes.ts';
import {
  batterySchema,
  cableSchema,
  chargerSchema,
  factsSchema,
  inverterSchema,
  loadSchema,
  rigSchema,
  solarSchema,
} from '../../src/rig/rig.ts';

const told = z.union([z.string().min(1), z.number()]);
const sources = [
  'solar',
  'driving',
  'charging',
  'mains',
  'generator',
  'battery',
  'dcdc',
  'inverter',
] as const;
/** What the words beside a thing tell, taken after reading: no label states it. */
const besideThings = { isInput: true, volumeL: true, build: true } as const;
const gear = {
  loads: z.array(loadSchema.omit(besideThings).partial()).optional(),
  batteries: z.array(batterySchema).optional(),
  solar: z.array(solarSchema).optional(),
  chargers: z.array(chargerSchema.partial()).optional(),
  inverter: inverterSchema.omit({ isLeftOn: true }).partial().optional(),
  cable: cableSchema.partial().optional(),
};
const claim = z.strictObject({ who: z.string().min(1), value: z.number(), unit: z.string() });

/** Facts that are worked out of what is told, or come from a shared place: no message states them so. */
const derived = {
  drivingPlanH: true,
  startHour: true,
  startWeekday: true,
  skyLastDays: true,
  chargeNeededAh: true,
  altitudeM: true,
  latitudeDeg: true,
  longitudeDeg: true,
} as const;

/** What a message states: the facts of a rig, and what reading tells beside them. */
const states = factsSchema.omit(derived).extend({
  ...gear,
  without: z.array(z.enum(sources)).optional(),
  claims: z.array(claim).optional(),
  corrects: z.strictObject({ from: told.optional(), to: told, unit: z.string().optional() }).optional(),
  removed: z.array(z.string().min(1)).optional(),
  owner: z.string().min(1).optional(),
  term: z.string().min(1).optional(),
  /** A quiz's answer: its letter, or the number itself. */
  choice: z
    .string()
    .regex(/^(?:[a-d]|\d+)$/)
    .optional(),
  rig: rigSchema.extend(gear).optional(),
});

const names = new Set([...intents.map(({ name }) => name), 'unclear']);
const group = z.strictObject({
  id: z.string().min(3),
  before: z
    .array(z.strictObject({ from: z.string().min(1), text: z.string().min(1) }))
    .max(4)
    .optional(),
  from: z.string().min(1),
  wordings: z.array(z.string().min(1).max(4096)).min(1),
  intent: z.array(z.string().refine(name => names.has(name), 'no question of ours')).min(1),
  asked: z.array(z.string()).optional(),
  states,
  ignore: z.array(z.number()).optional(),
  danger: z.enum(hazardCodes).nullable(),
});

/** A labelled meaning whose label tells everything that it states. */
export const groupSchema = group.extend({ wordings: group.shape.wordings.min(2) });
/** One whose label tells a part: what it leaves out may be stated too. */
export const partialSchema = group.extend({
  states: factsSchema.extend(states.shape).extend({ claims: z.array(claim.partial()).optional() }),
  isPartial: z.literal(true),
});
