import { hazardTable } from '#language/hazards/hazard-table.ts';
import { decisions, type Model, type Weights } from '#language/hazards/model.ts';
import { wayNames } from '#language/hazards/ways.ts';
import { isKin, type Labelled } from './labelled.ts';

/** How the weights are fitted; chosen by what held under cross-validation. */
export interface Fitting {
  /** How strongly a way of the table is held to its weight, and a meaning by itself to none. */
  readonly l2: number;
  readonly l2Meaning: number;
  /** What a way of the table weighs before anything is learned. */
  readonly wayWeight: number;
  readonly bias: number;
  readonly steps: number;
  /** A feature of fewer meanings than this is no evidence. */
  readonly leastGroups: number;
  /** What a message of another danger counts against a code: naming one more is no great fault. */
  readonly otherDanger: number;
}

export const fitting: Fitting = {
  l2: 3,
  l2Meaning: 10,
  wayWeight: 8,
  bias: -4,
  steps: 80,
  leastGroups: 3,
  otherDanger: 0.3,
};

type Decision = (typeof decisions)[number];

const target = (row: Labelled, decision: Decision): boolean =>
  decision === 'any' ? row.danger !== null : row.danger === decision;

function importance(row: Labelled, decision: Decision, otherDanger: number): number {
  if (decision === 'any' || row.danger === null || row.danger === decision) return 1;
  return isKin(decision, row.danger) ? 0 : otherDanger;
}

const startOf = (feature: string, decision: Decision, weight: number): number =>
  feature.includes('/') && (decision === 'any' || feature.slice(1).startsWith(`${decision}/`)) ? weight : 0;

/** The features worth a weight: every way of the table, and what enough meanings show. */
function chosen(rows: readonly Labelled[], leastGroups: number): readonly string[] {
  const groups = new Map<string, Set<string>>();
  for (const row of rows)
    for (const feature of row.features) {
      const seen = groups.get(feature);
      if (seen) seen.add(row.group);
      else groups.set(feature, new Set([row.group]));
    }
  const enough = [...groups].filter(([, seen]) => seen.size >= leastGroups).map(([feature]) => feature);
  return [...new Set([...wayNames(hazardTable), ...enough])].sort();
}

function fitOne(
  rows: readonly Labelled[],
  indexes: readonly Int32Array[],
  names: readonly string[],
  decision: Decision,
  how: Fitting,
): Weights {
  const start = Float64Array.from(names, name => startOf(name, decision, how.wayWeight));
  const weights = Float64Array.from(start);
  const steepness = new Float64Array(names.length).fill(1e-8);
  let bias = how.bias;
  let biasSteepness = 1e-8;
  const hold = names.map(name => (name.includes('/') ? how.l2 : how.l2Meaning));
  const counts = rows.map(row => importance(row, decision, how.otherDanger));
  const truth = rows.map(row => (target(row, decision) ? 1 : 0));
  const rate = 0.3;
  for (let step = 0; step < how.steps; step += 1) {
    const slope = new Float64Array(names.length);
    let biasSlope = 0;
    for (let i = 0; i < rows.length; i += 1) {
      if (counts[i] === 0) continue;
      let odds = bias;
      for (const j of indexes[i]!) odds += weights[j]!;
      const error = counts[i]! * (1 / (1 + Math.exp(-odds)) - truth[i]!);
      biasSlope += error;
      for (const j of indexes[i]!) slope[j]! += error;
    }
    for (let j = 0; j < names.length; j += 1) {
      const g = slope[j]! + hold[j]! * (weights[j]! - start[j]!);
      steepness[j]! += g * g;
      weights[j]! -= (rate * g) / Math.sqrt(steepness[j]!);
    }
    biasSteepness += biasSlope * biasSlope;
    bias -= (rate * biasSlope) / Math.sqrt(biasSteepness);
  }
  const features: Record<string, number> = {};
  for (const [j, name] of names.entries()) {
    const weight = Math.round(weights[j]! * 100) / 100;
    if (Math.abs(weight) >= 0.1) features[name] = weight;
  }
  return { bias: Math.round(bias * 100) / 100, features };
}

/** Fits the weights to labelled messages; the same messages always give the same weights. */
export function fitWeights(rows: readonly Labelled[], how: Fitting = fitting): Model {
  const names = chosen(rows, how.leastGroups);
  const places = new Map(names.map((name, j) => [name, j]));
  const indexes = rows.map(row =>
    Int32Array.from(row.features.flatMap(feature => places.get(feature) ?? [])),
  );
  return Object.fromEntries(
    decisions.map(decision => [decision, fitOne(rows, indexes, names, decision, how)]),
  ) as Record<Decision, Weights>;
}
