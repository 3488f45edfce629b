import type { Model, Net } from '../../../src/language/decide/model.ts';
import { Table } from '../../../src/language/decide/table.ts';
import { slots } from '../../../src/language/propose/slots.ts';
import { hazardCodes } from '../../../src/rig/hazard-codes.ts';

const units = 2;

/** A net that knows no feature: each outcome weighs what `biases` says. */
export const net = (outcomes: number, biases: Readonly<Record<number, number>> = {}): Net => ({
  features: Table.of(new Map(), new Float32Array(0), units),
  bias: new Float32Array(units),
  out: new Float32Array(outcomes * units),
  members: 1,
  outBias: Float32Array.from({ length: outcomes }, (_, i) => biases[i] ?? 0),
});

export const slotNumber = (name: string): number => {
  const found = slots.findIndex(s => s.name === name);
  if (found < 0) throw new Error(`no slot ${name}`);
  return found;
};

const intentNames = ['battery-size', 'run-time'] as const;

/**
 * A model made by hand.
 * @param roles how much each slot weighs, by its name
 * @param questions how much each question weighs
 */
export function smallModel(
  roles: Readonly<Record<string, number>>,
  questions: Readonly<Partial<Record<(typeof intentNames)[number], number>>> = {},
): Model {
  const n = intentNames.length;
  const message: Record<number, number> = { [2 * n + hazardCodes.length]: 5 };
  intentNames.forEach((name, i) => {
    message[i] = questions[name] ?? 0;
    message[n + i] = questions[name] ?? 0;
  });
  return {
    slots: net(
      slots.length,
      Object.fromEntries(Object.entries(roles).map(([name, weight]) => [slotNumber(name), weight])),
    ),
    owners: Table.of(new Map(), new Float32Array(0), 1),
    supply: net(2, { 0: 3 }),
    plans: net(4, { 0: 5 }),
    message: net(2 * n + hazardCodes.length + 1, message),
    intentNames,
    hazardNames: hazardCodes,
    certainty: [0, 0, 1],
  };
}
