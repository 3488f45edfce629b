import { z } from 'zod';
import { bankOf } from '#engine/battery/bank.ts';
import { type Facts, factsSchema, type Stated } from '#rig/rig.ts';
import { factsOf } from './facts.ts';
import { hasUse } from './use.ts';

/** Something a question can't do without: any one of these facts, and how the bot asks for it. */
export interface Need {
  readonly anyOf: readonly (keyof Facts)[];
  /** Follows "To work that out I need": "the battery's size in Ah". */
  readonly ask: string;
  /** The key of that sentence: "need-battery". */
  readonly key?: string;
  /** A finer test than "is there"; gets the facts. */
  readonly holds?: (facts: Facts) => boolean;
}

/**
 * The needs of a question as a zod schema: the keys it takes, and an issue for each need that is not met. What was
 * told goes in, and what comes out is ready for the engine (`facts.ts`).
 * It is built at the first question of its kind: twenty of them at start would cost 40 ms.
 */
export function needs(takes: readonly (keyof Facts)[], list: readonly Need[]): z.ZodType<Facts, Stated> {
  return z.lazy(() => build(takes, list));
}

function build(takes: readonly (keyof Facts)[], list: readonly Need[]): z.ZodType<Facts, Stated> {
  const mask = Object.fromEntries(takes.map(key => [key, true])) as Record<keyof Facts, true>;
  return factsSchema
    .pick(mask)
    .transform(stated => factsOf(stated))
    .superRefine((facts, context) => {
      for (const need of list) {
        const isMet = need.anyOf.some(key => facts[key] !== undefined) && (need.holds?.(facts) ?? true);
        if (!isMet)
          context.addIssue({
            code: 'custom',
            message: need.ask,
            path: [need.anyOf[0]!],
            params: { key: need.key },
          });
      }
    });
}

/** Whether the batteries told make a bank: the house battery has a size, or the starter where it is the only one. */
export const hasCapacity = (facts: Facts): boolean =>
  bankOf(facts.batteries ?? [], facts.arrangement, facts.systemVoltageV) !== undefined;

/** Needs that many questions share. */
export const needBattery: Need = {
  anyOf: ['batteries'],
  ask: "the battery's size (say “100Ah AGM”)",
  key: 'need-battery',
  holds: hasCapacity,
};
export const needLoads: Need = {
  anyOf: ['loads', 'dailyUseAh', 'dailyUseWh', 'inverter'],
  ask: 'what runs on it (say “fridge 1.2A” or “40Ah a day”)',
  key: 'need-loads',
  holds: hasUse,
};
