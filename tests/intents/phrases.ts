import { z } from 'zod';
import { batterySchema, chargerSchema, factsSchema, loadSchema, rigSchema, solarSchema } from '#rig/rig.ts';
import { read } from '../house/source.ts';

const span = z
  .strictObject({
    min: z.number().optional(),
    max: z.number().optional(),
    value: z.union([z.string(), z.array(z.string())]).optional(),
  })
  .refine(
    s => s.min !== undefined || s.max !== undefined || s.value !== undefined,
    'needs min, max or value',
  );

const claim = z.strictObject({ who: z.string(), value: z.number(), unit: z.string() });

const gear = {
  loads: z.array(loadSchema.partial()).optional(),
  batteries: z.array(batterySchema.partial()).optional(),
  solar: z.array(solarSchema.partial()).optional(),
  chargers: z.array(chargerSchema.partial()).optional(),
};

/** What a message means, as far as a row cares to say: any of the keys, and any of the keys within. */
export const meansSchema = factsSchema
  .extend({
    ...gear,
    claims: z.array(claim.partial()),
    rig: rigSchema.extend(gear),
  })
  .partial();

/** A row of an intent's phrases.json: one way that people ask the question. */
export const phraseSchema = z
  .strictObject({
    say: z.string().min(1).max(4096),
    /** What the same person wrote in the same chat before. */
    before: z.array(z.string().min(1)).min(1).max(5).optional(),
    /** What must be understood. Of what a key names, nothing may be missing and nothing extra be there. */
    means: meansSchema.optional(),
    figures: z.record(z.string(), span).optional(),
    verdict: z.enum(['yes', 'tight', 'no']).optional(),
    /** Shown by /help, in the list of commands and in docs/questions.md. */
    show: z.literal('help').optional(),
    /** A near miss: looks alike, must go to another question. */
    not: z.literal(true).optional(),
  })
  .refine(row => !(row.not && (row.means || row.figures || row.verdict || row.show)), {
    message: 'a near miss ("not") has nothing but "say" and "before"',
  });
export type Phrase = z.infer<typeof phraseSchema>;

/** The phrases of an intent, checked. */
export const readPhrases = (folder: string): Phrase[] =>
  z.array(phraseSchema).parse(JSON.parse(read(`intents/${folder}/phrases.json`)));

/** Phrases that the reader doesn't read yet, as "question: phrase". It may only shrink; `ratchet.ts` takes out what works. */
export const missesPath = 'tests/intents/misses.json';
export const readMisses = (): string[] => z.array(z.string()).parse(JSON.parse(read(missesPath)));
