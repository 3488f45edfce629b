import type { IntentName } from '#answer/answer.ts';
import type { Intent, RequestContext } from '#intents/intent.ts';
import type { Job } from '#telegram/updates/sort.ts';

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
