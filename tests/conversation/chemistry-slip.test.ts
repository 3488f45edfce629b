import { describe, expect, test } from 'vitest';
import { talk } from './talk.ts';

const asked = 'ann: 45W fridge averages 45W, 120Ah lithium, how long?' as const;
const onAgm = talk([asked, 'ann: what if it was agm?']).last.figures;

describe('another kind of battery put right', () => {
  test.each(['oops its agm not lithium', 'sorry, agm', 'i meant agm', 'not lithium, agm'])('%s', said => {
    const { last } = talk([asked, `ann: ${said}`]);
    expect(last.intent).toBe('run-time');
    expect(last.figures.usableCapacity).toEqual(onAgm.usableCapacity);
  });

  test.each(['agm or lithium?', 'is agm not better than lithium?', 'sorry, its a 100Ah agm'])(
    'not where it is asked, or more is told: %s',
    said => {
      const { last } = talk([asked, `ann: ${said}`]);
      expect(last.figures.usableCapacity).not.toEqual(onAgm.usableCapacity);
    },
  );
});
