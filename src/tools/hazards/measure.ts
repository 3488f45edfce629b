import { decided, deciderOf, logOdds } from '#language/hazards/model.ts';
import type { HazardCode } from '#rig/hazard-codes.ts';
import { fitWeights } from './fit.ts';
import { isKin, type Labelled } from './labelled.ts';

/** How many dangers were seen and how many harmless messages alarmed, in per cent. */
export interface Score {
  readonly seenPercent: number;
  readonly alarmPercent: number;
  readonly missed: readonly Labelled[];
  readonly alarmed: readonly Labelled[];
}

type Recogniser = (row: Labelled) => readonly HazardCode[];

const percent = (n: number, of: number): number => Math.round((1000 * n) / of) / 10;

/** Scores a recogniser as `score-groups.mjs` does: the right code, or one that a careful person might swap it for. */
export function score(rows: readonly Labelled[], recognise: Recogniser): Score {
  const dangers = rows.filter(row => row.danger !== null);
  const harmless = rows.filter(row => row.danger === null);
  const missed = dangers.filter(row => !recognise(row).some(code => isKin(code, row.danger!)));
  const alarmed = harmless.filter(row => recognise(row).length > 0);
  return {
    seenPercent: percent(dangers.length - missed.length, dangers.length),
    alarmPercent: percent(alarmed.length, harmless.length),
    missed,
    alarmed,
  };
}

/** The table's ways alone, without any weights. */
export const byWays: Recogniser = row => [
  ...new Set(row.features.filter(f => f.includes('/')).map(f => f.slice(1, f.indexOf('/')) as HazardCode)),
];

/** A number from a text, the same on every machine (FNV-1a). */
function hash(text: string): number {
  let h = 2166136261;
  for (const char of text) h = Math.imul(h ^ char.codePointAt(0)!, 16777619);
  return h >>> 0;
}

/** In which of five parts a meaning is held out. */
export const fold = (row: Labelled): string => String(hash(row.group) % 5);

/** Scores messages by weights that were fitted without their part. */
export function crossValidated(rows: readonly Labelled[], part: (row: Labelled) => string): Score {
  const parts = new Map<string, Recogniser>();
  for (const name of new Set(rows.map(part))) {
    const decider = deciderOf(fitWeights(rows.filter(row => part(row) !== name)));
    parts.set(name, row => decided(logOdds(new Set(row.features), decider)));
  }
  return score(rows, row => parts.get(part(row))!(row));
}
