import { readFileSync } from 'node:fs';
import { shippedModel } from '../../src/language/decide/weights.ts';
import type { ChangeName } from '../../src/tools/metamorphic/changes.ts';
import { type Outcome, unchanged } from '../../src/tools/metamorphic/unchanged.ts';
import { readGroups } from '../../src/tools/train/groups.ts';
import { root } from '../house/source.ts';

const sample = 200;
export const floorsPath = 'tests/language/metamorphic-floors.json';

/** How many of a sample's readings stay as they were, by what was changed. */
export const measured = (): Outcome[] =>
  unchanged(readGroups(`${root}tests/messages`), shippedModel(), sample);

/** In per cent, the least that was ever recorded as reached. */
export const readFloors = (): Record<ChangeName, number> =>
  JSON.parse(readFileSync(`${root}${floorsPath}`, 'utf8')) as Record<ChangeName, number>;

export const percentOf = ({ same, tried }: Outcome): number => Math.floor((1000 * same) / tried) / 10;
