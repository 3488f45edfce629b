import type { IntentName } from '#answer/answer.ts';
import type { Chart } from '#answer/chart/chart.ts';
import { unhandled as allHandled } from '#basics/unhandled.ts';
import type { AssumptionName, Values } from '#engine/assumption.ts';
import { likelyOf, taken } from '#engine/explore.ts';
import { averageCurrent } from '#engine/loads/rules.ts';
import { remembered } from '#engine/remembered.ts';
import type { Intent, RequestContext } from '#intents/intent.ts';
import { run } from '#rule/rule.ts';
import type { Job } from '#telegram/updates/arriving/sort.ts';

// Mistakes that must not compile. `tsc` of `npm run check` fails where one of them does: an expected error that isn't
// there is an error. Nothing runs this.

/** A kind of job that nobody handles. */
export function unhandled(job: Job): string {
  switch (job.kind) {
    case 'question':
    case 'press':
      return job.kind;
    default:
      // @ts-expect-error other kinds are left
      return job satisfies never;
  }
}

// @ts-expect-error a question that isn't there
export const misspelled: IntentName = 'run-tme';

// @ts-expect-error a fact that isn't there
export const takes: Intent['takes'] = ['batterys'];

// @ts-expect-error a trait that isn't there
export const traits: Partial<Intent> = { isPicturd: true };

// @ts-expect-error a fact that can't be recalled
export const recalled: RequestContext['recalled'] = new Set(['capacityAhh'] as const);

// @ts-expect-error an assumption that isn't there
export const assumption: AssumptionName = 'dephtOfDischarge';

// @ts-expect-error an assumption of a load that isn't there
export const ofLoad: AssumptionName = 'fridge hours';

/** Values that no assumption has: none of them is `undefined` in silence. */
export function misspelledValues(values: Values): unknown[] {
  return [
    // @ts-expect-error an assumption that isn't there
    values.batteryTemprature,
    // @ts-expect-error an assumption that isn't there
    taken(values, 'peukertExponnent'),
    // @ts-expect-error an assumption that isn't there
    likelyOf([{ name: 'idelShare', value: 0.01 }]),
    // @ts-expect-error an assumption that isn't there
    remembered(['age', 'fulAt'], () => 0),
  ];
}

/** Formulas: a symbol that is left out, and one that isn't there. */
export const misspelledSymbols = [
  // @ts-expect-error t_day is left out
  () => run(averageCurrent, { Q: 10 }),
  // @ts-expect-error a symbol that isn't there
  () => run(averageCurrent, { Q: 10, t_dya: 24 }),
  // @ts-expect-error a symbol that isn't there
  () => run(averageCurrent, { Q: 10, t_day: 24, t_night: 12 }),
];

/** A kind of picture that nothing draws. */
export function undrawn(chart: Chart): string {
  switch (chart.kind) {
    case 'bars':
    case 'wiring':
      return chart.kind;
    default:
      // @ts-expect-error other kinds are left
      return allHandled(chart);
  }
}
