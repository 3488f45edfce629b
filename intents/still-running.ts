import { coolingReading } from '#engine/loads/reading.ts';
import { isSameName } from '#rig/merge.ts';
import type { Stated, StatedLoad } from '#rig/rig.ts';
import { factsOf } from './facts.ts';

const readingOf = (load: StatedLoad): ReturnType<typeof coolingReading> => {
  const [whole] = factsOf({ loads: [load] }).loads ?? [];
  return whole && coolingReading(whole);
};

/** Less than this of the draw before, it is told of something else: an average after all. */
const leastOfBefore = 0.6;

/**
 * "More like 2.5 A" after 3 A that were taken for what a fridge draws while it runs: it is that draw still, though so few
 * amps alone would be taken for an average.
 */
export function stillRunning(before: Stated, now: Stated): Stated {
  if (!now.loads || !before.loads) return now;
  const loads = now.loads.map(load => {
    const old = before.loads?.find(one => isSameName(one.name, load.name));
    const [was = 0, is = 0] = [old?.currentA, load.currentA];
    const isNear = is !== was && is > 0 && is >= leastOfBefore * was;
    const isRunning = old && isNear && readingOf(old) === 'running' && readingOf(load) === 'average';
    return isRunning ? { ...load, isAverage: false } : load;
  });
  return { ...now, loads };
}
