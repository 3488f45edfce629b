import type { Answer } from '#answer/answer.ts';
import { issueSentence } from '#answer/issues.ts';
import type { Reply } from '#answer/reply.ts';
import { english, type Speech } from '#answer/speech.ts';
import { print } from '#answer/text.ts';
import { cautions as cautionSentences } from '#answer/words/en.ts';
import type { Intent } from '#intents/intent.ts';
import type { Said } from '#language/said.ts';
import type { Stated } from '#rig/rig.ts';
import { dangers } from './dangers.ts';

/** Notes on how the message was read, where it had to be bent: "I read “100A battery” as 100 Ah". */
const notes = (said: Said, words: Speech): string[] =>
  said.issues
    .filter(
      issue => issue.code === 'unit-mismatch' || issue.code === 'contradiction' || issue.code === 'ambiguous',
    )
    .slice(0, 2)
    .map(issue => issueSentence(issue, words));

/** How a reply becomes an answer. */
export interface Told {
  readonly said: Said;
  /** Another name than the question's: a question back is 'unclear'. */
  readonly name?: Answer['intent'];
  readonly isWorkingShown?: boolean;
  /** The temperature of the talk, °C. */
  readonly ambientC?: number;
  /** What a correction put right of the question before. */
  readonly corrected?: Stated;
  /** Works it out once more. */
  readonly again?: Answer['again'];
  /** Told without notes on how it was read: the question before, told another way. */
  readonly isBare?: boolean;
}

/** Builds the answer as data from a reply; the working is printed only if somebody looks at it. */
export function toAnswer(intent: Intent, reply: Reply, told: Told): Answer {
  const { said, isWorkingShown = false } = told;
  const words = english;
  const codes = [...new Set([...dangers(said, told.ambientC), ...(reply.cautions ?? [])])];
  const full: Reply = told.isBare
    ? reply
    : { ...reply, lines: [...(reply.lines ?? []), ...notes(said, words)], cautions: codes };
  return {
    intent: told.name ?? intent.name,
    text: print(full, { isWorkingShown, words }),
    verdict: reply.verdict ?? null,
    figures: reply.figures ?? {},
    understood: {
      ...told.corrected,
      ...said.facts,
      ...(said.claims.length > 0 ? { claims: said.claims } : {}),
      ...(reply.rig ? { rig: reply.rig } : {}),
    },
    assumed: reply.assumed ?? [],
    get working() {
      return reply.working?.() ?? [];
    },
    cautions: codes.map(code => words.say(`caution-${code}`, cautionSentences[code])),
    next: (reply.next ?? []).slice(0, 3),
    chart: reply.chart,
    hasWorking: () => reply.working !== undefined,
    again: told.again,
  };
}
