import { expect, test } from 'vitest';
import { outOf } from '#conversation/answering/ruled-out.ts';
import type { Told } from '#language/hazards/told.ts';
import type { HazardCode } from '#rig/hazard-codes.ts';

const microwave = { loads: [{ name: 'microwave', powerW: 700 }], inverter: { powerW: 1000 } };
const fridge = { loads: [{ name: 'fridge', powerW: 45 }] };
const starter = { capacityAh: 70, role: 'starter' };
const stereo = { batteries: [starter], loads: [{ name: 'stereo', currentA: 5 }], durationH: 2 };

const sideBySide = (capacityAh: number): Told => ({
  arrangement: 'parallel',
  batteries: [capacityAh, 100].map(ah => ({ capacityAh: ah, chemistry: 'agm' })),
});

test.for<[name: string, told: Told, words: string, out: HazardCode[]]>([
  ['a microwave on an inverter that carries it', microwave, 'inverter big-load', ['over-current']],
  ['the same, and its plug is hot', microwave, 'inverter plug hot', []],
  ['the same through the lighter socket', microwave, 'inverter ciggy', []],
  ['the same over a cable of which nobody told the size', microwave, 'inverter wire-word', []],
  [
    'a kettle that is more than the inverter',
    { loads: [{ powerW: 2200 }], inverter: { powerW: 1500 } },
    'big-load',
    [],
  ],
  [
    'kettle and toaster that are more together',
    { loads: [{ powerW: 1200 }, { powerW: 900 }], inverter: { powerW: 2000 } },
    'big-load',
    [],
  ],
  [
    'a load of unknown draw beside it',
    { ...microwave, loads: [...microwave.loads, { name: 'hob' }] },
    '',
    [],
  ],
  ['more than 1 C of the bank', { ...microwave, batteries: [{ capacityAh: 40 }] }, '', []],
  ['a fridge of 45 W on the lighter socket', fridge, 'ciggy', ['over-current']],
  ['as it softens the plug', fridge, 'ciggy melt', []],
  ['three of them on one lighter socket', { loads: [{ powerW: 45, count: 3 }] }, 'ciggy', []],
  ['a fridge on a socket fused at 3 A', { ...fridge, fuseA: 3 }, 'ciggy fuse no-fuse', []],
  ['straight on the post with a fuse of 15 A', { fuseA: 15 }, 'direct post fuse', ['no-fuse']],
  [
    'a fuse that its cable carries',
    { fuseA: 40, cable: { areaMm2: 6 } },
    'fuse wire-word',
    ['over-current', 'no-fuse', 'bigger-fuse'],
  ],
  [
    'the same as it keeps blowing',
    { fuseA: 40, cable: { areaMm2: 6 } },
    'fuse blow',
    ['over-current', 'no-fuse'],
  ],
  [
    'a fuse that is more than its cable carries',
    { fuseA: 60, cable: { areaMm2: 6 } },
    'fuse wire-word',
    ['no-fuse'],
  ],
  ['AGM of 95 and of 100 Ah side by side', sideBySide(95), 'agm parallel', ['mixed-parallel', 'cold-charge']],
  ['AGM of 80 and of 100 Ah side by side', sideBySide(80), 'agm parallel', ['cold-charge']],
  ['a fuse told, and that it was left out', { fuseA: 15 }, 'fuse omit', []],
  ['five amps for two hours off the 70 Ah starter', stereo, 'starter will-start', ['starter-flat']],
  ['the same, and it cranks slowly', stereo, 'starter slow', []],
  ['the same after it was on all night', stereo, 'starter all-night', []],
  ['twice as long', { ...stereo, durationH: 4 }, 'starter will-start', []],
  [
    'with a cool box of unknown hours beside it',
    {
      batteries: [starter],
      loads: [
        { currentA: 5, hoursOnce: 3 },
        { name: 'cool box', currentA: 4 },
      ],
    },
    'starter',
    [],
  ],
])('%s', ([, told, words, out]) => {
  expect(outOf(told, new Set(['medical', ...words.split(' ')]), false)).toEqual(out);
});

test('a limit told by itself is no danger where gear is told, and may be one where something is asked', () => {
  const limited: Told = { batteries: [{ chemistry: 'lfp', maxCurrentA: 50 }] };
  expect(outOf(limited, new Set(['bms', 'medical']), true)).toEqual(['over-current']);
  expect(outOf(limited, new Set(['bms', 'medical']), false)).toEqual([]);
});

test('somebody’s health hangs on a question only where its words or its loads tell of a device', () => {
  expect(outOf({ loads: [{ name: 'fridge' }] }, new Set(), false)).toContain('medical');
  expect(outOf({ loads: [{ name: 'cpap' }] }, new Set(), false)).not.toContain('medical');
  expect(outOf({}, new Set(['medical']), false)).not.toContain('medical');
});
