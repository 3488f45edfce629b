import { describe, expect, test } from 'vitest';
import { talk } from './talk.ts';

/** Questions about a limit: where it lies, and how it is asked about. */
const limits: readonly (readonly [name: string, limit: number, say: (asked: string) => string])[] = [
  // A battery gives its amps × 12.8 V × 0.88 through an inverter: 1126.4 W of 100 A.
  ['BMS', 1126.4, w => `200Ah lithium, BMS limit 100A, 3000W inverter, will it run a ${w}W kettle?`],
  ['BMS at 24 V', 2252.8, w => `200Ah 24V lithium with a 100A BMS, 3000W inverter, can it run a ${w}W hob?`],
  [
    'two BMS in parallel',
    2252.8,
    w => `2 x 100Ah lithium in parallel, BMS 100A each, 4000W inverter, can I run a ${w}W kettle?`,
  ],
  [
    'BMS without an inverter',
    50,
    a => `100Ah lithium with a 50A BMS, can it run a ${a}A winch for 10 minutes?`,
  ],
  ['inverter', 1000, w => `will a 1000W inverter run a ${w}W toaster?`],
  ['larger inverter', 2000, w => `will my 2000W inverter run a ${w}W kettle?`],
  ['inverter and two loads', 1000, w => `1500W inverter, ${w}W kettle and 500W toaster at once, ok?`],
  [
    'surge',
    2000,
    w => `1000W inverter with 2000W surge, will it start a 500W pump that takes ${w}W to start?`,
  ],
  [
    'compressor',
    1500,
    w => `800W inverter, surge 1500W, can it run a 150W fridge that needs ${w}W to start?`,
  ],
  ['fuse of a load', 20, a => `is a 20A fuse enough for a ${a}A pump?`],
  // The largest standard fuse on 6 mm², which carries 45.9 A.
  ['fuse on a cable', 40, a => `is a ${a}A fuse ok on 6mm2 cable?`],
  ['fuse on a thick cable', 100, a => `is a ${a}A fuse ok on 16mm2 cable?`],
  ['cable', 45.899, a => `is 6mm2 cable ok for ${a}A over 0.5 m?`],
  ['thick cable', 105.972, a => `is 16mm2 cable ok for ${a}A over 0.5 m?`],
  ['cable over a length', 75.22, a => `is 10mm2 cable ok for ${a}A over 0.5 m?`],
  ['charge limit', 50, a => `100Ah lithium at 50%, its max charge is 50A, can I use a ${a}A charger?`],
  [
    'charge limit of a BMS',
    20,
    a => `100Ah lithium with a 20A BMS charge limit at 50%, ${a}A mains charger, how long to full?`,
  ],
  // 27 % of 70 Ah may go.
  [
    'starter',
    18.9,
    h => `will the car still start after running a 1A light for ${h} hours off the 70Ah starter battery?`,
  ],
  ['generator', 2000, w => `will a 2000W generator run a ${w}W heater?`],
  // For a moment it gives twice its rating.
  [
    'generator and compressor',
    2000,
    w => `1000W generator, can it run a 700W air conditioner that takes ${w}W to start?`,
  ],
];

const isNo = (text: string): boolean => {
  const { last } = talk([`kim: ${text}`]);
  return (
    last.verdict === 'no' ||
    (last.hazards.includes('over-current') && /^No|^(?:About )?[\d.]+ A is more than the/.test(last.text))
  );
};
const near = (limit: number, share: number): string => `${Math.round(limit * share * 100) / 100}`;

test('there are 40 questions', () => expect(limits).toHaveLength(20));

describe.for([...limits])('%s', ([, limit, say]) => {
  test('one per cent under it is no no', () => expect(isNo(say(near(limit, 0.99)))).toBe(false));
  test('one per cent over it is no', () => {
    expect(isNo(say(near(limit, 1.01)))).toBe(true);
    const { last } = talk([`kim: ${say(near(limit, 1.01))}`]);
    expect(last.verdict).not.toBe('yes');
    expect(last.verdict).not.toBe('tight');
  });
});

// A temperature has no per cent: the line is 0 °C.
test.for([
  [-1, true],
  [0, true],
  [4, false],
] as const)('lithium charged at %i °C: %s', ([degrees, isCold]) => {
  const { last } = talk([`kim: 100Ah lithium at 50%, 20A charger, it's ${degrees}°C, how long to full?`]);
  expect(last.hazards.includes('cold-charge')).toBe(isCold);
  expect(last.figures.chargeTime === undefined).toBe(isCold);
});

test.each([
  'my lithium has a 100A bms',
  'the bms on my 200ah lithium is rated 150A',
  'BMS limit on my lithium is 100A',
])('a limit told of a rig is no danger by itself: %s', text => {
  const { last } = talk([`kim: ${text}`]);
  expect(last.hazards).toEqual([]);
});
