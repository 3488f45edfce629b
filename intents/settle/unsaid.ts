import type { IntentName } from '#answer/answer.ts';
import { unitOf } from '#quantity/quantity.ts';
import type { Claim } from '#rig/rig.ts';
import { ofPanelAmps } from '../panel-amps.ts';

/** The units that people leave out when they guess at the answer of a question. */
const units: Partial<Record<IntentName, readonly string[]>> = {
  'run-time': ['h', 'days'],
  'charge-time': ['h', 'days'],
  'starter-reserve': ['h'],
  'energy-budget': ['Ah', 'Wh'],
  'battery-size': ['Ah'],
  'battery-bank': ['Ah'],
  'battery-type': ['Ah'],
  'solar-yield': ['Ah', 'Wh', 'kWh'],
  'solar-size': ['W'],
  'inverter-check': ['A', 'W'],
  'cable-size': ['mm²'],
  'fuse-size': ['A'],
  'charge-level': ['%'],
  generator: ['W', 'h'],
  convert: ['A', 'W', 'Ah'],
  trip: ['%'],
};

/** Of a panel's amps no Ah are guessed. */
const panelAmps: readonly string[] = ['A'];

/** The units in which people tell the answer of a question, where it has a subject of that. */
export const unitsOf = (intent: IntentName, subject?: string): readonly string[] =>
  intent === 'solar-yield' && subject === ofPanelAmps ? panelAmps : (units[intent] ?? []);

/**
 * The ways to take claims of which nobody said the unit, by the question they answer: "2", "4" after "how many days?".
 * The claims alone where a unit was said, or where no question tells one.
 */
export function waysToTake(
  claims: readonly Claim[],
  argued: IntentName | undefined,
): readonly (readonly Claim[])[] {
  const isUnsaid = claims.length > 0 && claims.every(({ unit }) => !unitOf(unit));
  const usual = argued === undefined ? undefined : units[argued];
  if (!isUnsaid || !usual) return [claims];
  return usual.map(unit => claims.map(claim => ({ ...claim, unit })));
}
