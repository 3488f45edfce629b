import type { ParsedMessage } from '#language/reading.ts';
import { spotted } from '../../spotting.ts';
import { charging } from './charging-table.ts';
import { gear } from './gear-table.ts';
import type { PlainQuestion } from './plain-question.ts';
import { readings } from './readings-table.ts';
import { solarAndField } from './solar-table.ts';
import { upkeep } from './upkeep-table.ts';

/** Special ones before general ones. Common practice throughout; volts as in the tables of the engine. */
export const plainQuestions: readonly PlainQuestion[] = [
  ...readings,
  ...solarAndField,
  ...charging,
  ...upkeep,
  ...gear,
];

/** Volts that go without saying ("12V fridge"), and counts ("2 phones"): no figures of a question. */
const nominalV: ReadonlySet<number> = new Set([12, 24, 240, 230]);
const mostCounted = 10;

const hasFigures = ({ recognised: { mentions } }: Pick<ParsedMessage, 'recognised'>): boolean =>
  mentions.some(
    ({ kind, dimension, value }) =>
      (kind === 'number' && value > mostCounted) ||
      (kind === 'amount' && !(dimension === 'voltage' && nominalV.has(value))),
  );

/** The plain question that a message asks, if any: of one that tells figures, only where they change nothing. */
export function plainQuestionIn(parsed: Pick<ParsedMessage, 'recognised'>): PlainQuestion | undefined {
  const asked = spotted(parsed.recognised.words, plainQuestions, ({ spots }) => spots);
  return asked && (asked.hasAnyFigures || !hasFigures(parsed)) ? asked : undefined;
}
