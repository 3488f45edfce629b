import { parentPort, workerData } from 'node:worker_threads';
import { writeModel } from '#language/decide/weights.ts';
import type { Group } from './groups.ts';
import { type TrainOptions, train } from './train.ts';

// Fits the reader to some of the groups, in a thread: the parts of a training don't wait for each other.
const { groups, options } = workerData as { groups: readonly Group[]; options: TrainOptions };
parentPort!.postMessage(writeModel(train(groups, options), 'a part'));
