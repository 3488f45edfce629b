import { writeFileSync } from 'node:fs';
import { writeModel } from '#language/decide/weights.ts';
import { readGroups } from './train/groups.ts';
import { curve, measure, totals } from './train/measure.ts';
import { train } from './train/train.ts';

// `npm run train`: fits the reader's weights to the labelled messages of the project.
const groups = readGroups('tests/messages');
const model = train(groups);
const bytes = writeModel(model, 'unsigned');
writeFileSync(new URL('../language/decide/weights.bin', import.meta.url), bytes);
console.log(`${groups.length} groups, ${bytes.length} bytes of weights`);
void measure;
void totals;
void curve;
