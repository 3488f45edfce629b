import { z } from 'zod';
import type { Answer } from '#answer/answer.ts';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { files, read } from '../house/source.ts';
import { differences, figureDifferences } from '../intents/match.ts';
import { meansSchema } from '../intents/phrases.ts';

const words = z.array(z.string().min(1)).min(1);
const figure = z.strictObject({
  min: z.number().optional(),
  max: z.number().optional(),
  value: z.union([z.string(), words]).optional(),
});
const caseSchema = z.strictObject({
  id: z.string(),
  turns: z
    .array(z.strictObject({ from: z.string(), text: z.string(), at: z.iso.datetime().optional() }))
    .min(1),
  expect: z.strictObject({
    intent: words,
    understood: meansSchema.optional(),
    figures: z.record(z.string(), figure).optional(),
    verdict: words.optional(),
    mentions: words.optional(),
    never: words.optional(),
    caution: words.optional(),
  }),
  why: z.string().min(4),
});
export type Case = z.infer<typeof caseSchema>;

export const cases: readonly Case[] = files('tests/cases/*.jsonl').flatMap(path =>
  read(path)
    .split('\n')
    .filter(Boolean)
    .map(line => caseSchema.parse(JSON.parse(line))),
);

/** The parts that a case is judged by. */
const parts = ['intent', 'understood', 'figures', 'text'] as const;
type Part = (typeof parts)[number];
/** What is wrong, by part; a part that a case doesn't ask for is absent. */
export type Judged = Partial<Record<Part, string[]>>;

/** The answer to the last turn of a case. */
function play(turns: Case['turns']): Answer {
  let memory = emptyMemory();
  let answer: Answer | undefined;
  for (const { from, text, at = '2026-01-15T09:00:00Z' } of turns)
    ({ memory, answer } = converse(memory, { chat: 'c', from, text, at: new Date(at), kind: 'group' }));
  return present(answer);
}

const answers = new WeakMap<Case, Answer>();

/** The answer to the last turn of a case, played once however often it is asked for. */
export function answerTo(one: Case): Answer {
  const answer = answers.get(one) ?? play(one.turns);
  answers.set(one, answer);
  return answer;
}

/** Holds an answer against what its case expects. */
export function judge({ expect }: Case, answer: Answer): Judged {
  const text = answer.text.toLowerCase();
  const judged: Judged = { intent: [] };
  if (!expect.intent.includes(answer.intent))
    judged.intent = [`${answer.intent} for ${expect.intent.join(' or ')}`];
  // A question back, where one will do, is held to its cautions and to what it must not say.
  const isBack = answer.intent === 'unclear' && expect.intent.includes('unclear');
  if (expect.understood && !isBack) judged.understood = differences(answer.understood, expect.understood);
  if ((expect.figures || expect.verdict) && !isBack) {
    judged.figures = figureDifferences(answer.figures, expect.figures ?? {});
    if (expect.verdict && !expect.verdict.includes(String(answer.verdict)))
      judged.figures.push(`verdict ${answer.verdict} for ${expect.verdict.join(' or ')}`);
  }
  if (expect.mentions || expect.never || expect.caution) {
    judged.text = (expect.never ?? [])
      .filter(word => text.includes(word.toLowerCase()))
      .map(word => `says "${word}"`);
    const said = (list: readonly string[], where: string) =>
      list.some(word => where.includes(word.toLowerCase()));
    if (expect.mentions && !isBack && !said(expect.mentions, text))
      judged.text.push(`says none of ${expect.mentions.join(', ')}`);
    const cautions = answer.cautions.join(' ').toLowerCase();
    if (expect.caution && !said(expect.caution, cautions))
      judged.text.push(`no caution of ${expect.caution.join(', ')}`);
  }
  return judged;
}

export interface Score {
  readonly shares: Readonly<Record<Part | 'whole', number>>;
  readonly failures: readonly string[];
}

/** Plays and judges cases: the share that is right, by part and as a whole, and what was wrong. */
export function scoreOf(list: readonly Case[]): Score {
  const counts = Object.fromEntries(
    [...parts, 'whole'].map(part => [part, { asked: 0, right: 0 }]),
  ) as Record<Part | 'whole', { asked: number; right: number }>;
  const failures: string[] = [];
  for (const one of list) {
    const answer = answerTo(one);
    const judged = judge(one, answer);
    const problems = Object.values(judged).flat();
    for (const part of parts) {
      if (!judged[part]) continue;
      counts[part].asked++;
      if (judged[part].length === 0) counts[part].right++;
    }
    counts.whole.asked++;
    if (problems.length === 0) counts.whole.right++;
    else
      failures.push(
        `${one.id} ${JSON.stringify(present(one.turns.at(-1)).text)}\n    ${problems.join('\n    ')}`,
      );
  }
  const shares = Object.fromEntries(
    Object.entries(counts).map(([part, { asked, right }]) => [part, asked === 0 ? 1 : right / asked]),
  ) as Score['shares'];
  return { shares, failures };
}
