import { bankIn } from '#engine/battery/bank.ts';
import { type Fits, fits } from '#rig/fits.ts';
import { type Facts, factsSchema, type Stated } from '#rig/rig.ts';
import { factsOf } from './facts.ts';
import type { Needs, Unmet } from './intent.ts';
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
 * The needs of a question: the keys it takes, and an issue for each need that is not met. What was told goes in, and
 * what comes out is ready for the engine.
 */
export function needs(takes: readonly (keyof Facts)[], list: readonly Need[]): Needs {
  // Made at the first question of its kind: twenty of them at the start would be felt.
  let isOurs: Fits | undefined;
  const safeParse: Needs['safeParse'] = stated => {
    isOurs ??= onlyOf(takes);
    if (!isOurs(stated))
      return { success: false, error: { issues: [{ message: 'facts of another shape' }] } };
    const facts = factsOf(stated);
    const issues = list
      .filter(need => !isMet(need, facts))
      .map(({ ask, key }): Unmet => ({ message: ask, key }));
    return issues.length > 0 ? { success: false, error: { issues } } : { success: true, data: facts };
  };
  const parse = (stated: Stated): Facts => {
    const { data, error } = safeParse(stated);
    if (error) throw new Error(error.issues.map(({ message }) => message).join('; '));
    return data;
  };
  return { safeParse, parse };
}

const isMet = ({ anyOf, holds }: Need, facts: Facts): boolean =>
  anyOf.some(key => facts[key] !== undefined) && (holds?.(facts) ?? true);

/** Whether facts are of our shape and hold nothing but these keys. */
function onlyOf(takes: readonly (keyof Facts)[]): Fits {
  const taken = new Set<string>(takes);
  const isOfFacts = fits(factsSchema);
  return stated => isOfFacts(stated) && Object.keys(stated as Stated).every(key => taken.has(key));
}

/** Whether the batteries told make a bank: the house battery has a size, or the starter where it is the only one. */
export const hasCapacity = (facts: Facts): boolean => bankIn(facts) !== undefined;

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

/** Whether what is told is a use and a battery for it: it stands for itself then. */
export function isSetup(told: Stated): boolean {
  const facts = factsOf(told);
  return hasUse(facts) && hasCapacity(facts);
}
