import { factsOf } from '#intents/facts.ts';
import { hasUse } from '#intents/use.ts';
import type { Stated } from '#rig/rig.ts';
import type { Lean } from './lean.ts';

// What of a question before goes into the next.

/** What one asks for anew each time: a span, a goal, a reading. */
const goals: ReadonlySet<string> = new Set([
  'durationH',
  'until',
  'days',
  'targetChargePercent',
  'chargeNeededAh',
  'volts',
  'voltsTaken',
]);
export const circumstances: ReadonlySet<string> = new Set([
  'place',
  'latitudeDeg',
  'longitudeDeg',
  'month',
  'sky',
  'skyLastDays',
  'ambientC',
  'altitudeM',
]);
/** With other gear the same question: how long, to where, when. */
const asked: ReadonlySet<string> = new Set([
  ...goals,
  ...circumstances,
  'drivingHoursPerDay',
  'drivingPlanH',
  'without',
]);

const only = (facts: Stated, holds: (key: string) => boolean): Stated =>
  Object.fromEntries(Object.entries(facts).filter(([key]) => holds(key))) as Stated;

/** What was said in passing, for somebody: of another's words only where and when they are. */
export const heardBy = (
  passing: Stated | undefined,
  from: string | undefined,
  person: string,
): Stated | undefined =>
  !passing || from === undefined || from === person ? passing : only(passing, key => circumstances.has(key));

const use: ReadonlySet<string> = new Set(['loads', 'dailyUseAh', 'dailyUseWh']);

/**
 * The facts of the question leant on that go into this one.
 * @param rig the gear of the owner that is spoken of, where there is one: where it has nothing that draws, the same
 *   things run on it ("and mine?")
 * @param rest volts at rest that tell how full it is still
 */
export function lentBy(
  { frame, extent }: Lean,
  owner: string | undefined,
  rig?: Stated,
  rest: Stated = {},
): Stated | undefined {
  if (!frame || extent === 'none') return undefined;
  if (extent === 'all') return frame.facts;
  if (extent === 'gear') return { ...only(frame.facts, key => !goals.has(key)), ...rest };
  const isIdle = rig !== undefined && !hasUse(factsOf(rig));
  if (extent === 'circumstances' && owner === undefined)
    return only(frame.facts, key => circumstances.has(key));
  return only(frame.facts, key => asked.has(key) || (isIdle && use.has(key)));
}
