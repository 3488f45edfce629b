const intent = (
  name: string,
  variable: string,
): string => `import { defineIntent } from '../define-intent.ts';
import { needBattery } from '../needs.ts';
import { answer } from './answer.ts';
import { compute } from './compute.ts';

/** What people ask with it, in a sentence. */
export const ${variable} = defineIntent({
  name: '${name}',
  title: 'TODO ${name}?',
  // Memory fills in only these facts.
  takes: ['batteries'],
  needs: [needBattery],
  reply: (facts, setting) => answer(facts, compute(facts), setting),
});
`;

const compute = `import type { Facts } from '#rig/rig.ts';

export interface Computed {
  /** What it is, with its unit in the name. */
  readonly capacityAh: number;
}

/** Facts in, figures out, through the rules of the engine; what it gives, in which units. */
export function compute(facts: Facts): Computed {
  return { capacityAh: facts.batteries?.[0]?.capacityAh ?? 0 };
}
`;

const answer = `import type { Reply } from '#answer/reply.ts';
import type { Facts } from '#rig/rig.ts';
import type { RequestContext } from '../intent.ts';
import type { Computed } from './compute.ts';

/** The figures in words, the number first. */
export function answer(_facts: Facts, computed: Computed, _setting: RequestContext): Reply {
  return { headline: \`TODO: \${computed.capacityAh} Ah.\` };
}
`;

const phrases = (name: string): string => {
  const rows = [
    ...[1, 2].map(n => ({ say: `TODO ${name} way ${n} to ask`, show: 'help' })),
    ...[3, 4, 5, 6, 7, 8].map(n => ({ say: `TODO ${name} way ${n} to ask` })),
    { say: 'fridge 1A, 100Ah, how long?', not: true },
    { say: 'help', not: true },
  ];
  return `[\n${rows.map(row => `  ${JSON.stringify(row)}`).join(',\n')}\n]\n`;
};

/** The files of a new question's folder, by name. They pass the type check and fail the phrases test. */
export const templates = (name: string, variable: string): Readonly<Record<string, string>> => ({
  'intent.ts': intent(name, variable),
  'compute.ts': compute,
  'answer.ts': answer,
  'phrases.json': phrases(name),
});
