import { type HazardCode, hazardCodes } from '#rig/hazard-codes.ts';
import stored from './weights.json' with { type: 'json' };

/** What is decided: whether there is any danger at all, then which. */
export const decisions = ['any', ...hazardCodes] as const;

/** One decision's bias and the weight of each feature, in log-odds. */
export interface Weights {
  readonly bias: number;
  readonly features: Readonly<Record<string, number>>;
}

export type Model = Readonly<Record<(typeof decisions)[number], Weights>>;

/** Log-odds above which there is some danger, and above which a further code is named beside the likeliest. */
const thresholds = { any: 0, further: 0 } as const;

/** A model laid out for reading: the weights of each feature for every decision in one row. */
export interface Decider {
  readonly bias: readonly number[];
  readonly rows: ReadonlyMap<string, readonly number[]>;
}

/** Lays a model out for reading. */
export function deciderOf(model: Model): Decider {
  const rows = new Map<string, number[]>();
  for (const [k, decision] of decisions.entries())
    for (const [feature, weight] of Object.entries(model[decision].features)) {
      const row = rows.get(feature) ?? new Array<number>(decisions.length).fill(0);
      row[k] = weight;
      rows.set(feature, row);
    }
  return { bias: decisions.map(decision => model[decision].bias), rows };
}

/** The log-odds of each decision. */
export function logOdds(features: ReadonlySet<string>, { bias, rows }: Decider): readonly number[] {
  const odds = [...bias];
  for (const feature of features) {
    const row = rows.get(feature);
    if (row) for (let k = 0; k < row.length; k += 1) odds[k]! += row[k]!;
  }
  return odds;
}

/** The codes that the log-odds say, in the order of the table. */
export function decided(odds: readonly number[]): readonly HazardCode[] {
  if (odds[0]! <= thresholds.any) return [];
  const best = odds.slice(1).reduce((top, value, k, all) => (value > all[top]! ? k : top), 0);
  return hazardCodes.filter((_, k) => k === best || odds[k + 1]! > thresholds.further);
}

const shipped = deciderOf(stored as Model);

/** The dangers that features show, by the weights that the project ships. */
export const decide = (features: ReadonlySet<string>): readonly HazardCode[] =>
  decided(logOdds(features, shipped));
