import fc from 'fast-check';
import type {
  BarsChart,
  ChargeChart,
  Chart,
  ClaimsChart,
  MonthsChart,
  PlanChart,
  WiringChart,
} from '#answer/chart/chart.ts';
import { present } from '#basics/present.ts';

/** Names of things and people in the scripts that people write, long ones, and ones that break things. */
const names = [
  'fridge',
  'Αλέξανδρος Παπαδόπουλος-Κωνσταντινίδης',
  'Олександр',
  'สมชาย ใจดี',
  'محمد عبد الله',
  'שרה כהן',
  'दीपक कुमार',
  '王小明さん',
  '김민수',
  'Nguyễn Thị Ánh Tuyết',
  'ஆதி',
  'a very long name of a thing that nobody would ever put into a chat',
  'Donaudampfschifffahrtsgesellschaftskapitänskajüte',
  '🚐',
  '<b>&"',
  '\u202Eevil\u0000',
  '',
] as const;

const name = fc.oneof(
  fc.constantFrom(...names),
  fc.string({ unit: 'grapheme', maxLength: 60 }),
  fc.string({ unit: 'binary', maxLength: 30 }),
);
const amount = fc.oneof(
  fc.double({ min: 0, max: 100, noNaN: true }),
  fc.double({ min: 0, max: 1e5, noNaN: true }),
);
const percent = fc.double({ min: 0, max: 100, noNaN: true });
const head = { title: name, note: name };

const hours = fc.integer({ min: 6, max: 14 * 24 });
const charge: fc.Arbitrary<ChargeChart> = fc
  .record({
    ...head,
    hours,
    startHour: fc.integer({ min: 0, max: 23 }),
    percents: fc.array(percent, { minLength: 1, maxLength: 400 }),
    limitPercent: percent,
    markAt: percent,
    says: fc.constantFrom(
      'lowest 38 %, day 2, 7 am',
      'lowest 0 %, Wednesday midnight',
      'flat, day 12, 10 pm',
    ),
    isClock: fc.boolean(),
    isWeek: fc.boolean(),
    wanted: fc.option(percent, { nil: undefined }),
    before: fc.option(percent, { nil: undefined }),
    isCut: fc.boolean(),
  })
  .map(({ title, note, hours: last, percents, ...of }) => {
    const at = (n: number): number => present(percents[n % percents.length]);
    const points = Array.from({ length: last + 1 }, (_, atH) => ({
      atH,
      percent: at(atH),
      lowPercent: at(atH) * 0.8,
      highPercent: Math.min(100, at(atH) * 1.1),
    }));
    const markH = Math.round((last * of.markAt) / 100);
    const week = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
    const days = Math.ceil((of.startHour + last) / 24);
    return {
      kind: 'charge' as const,
      title,
      note,
      points,
      limitPercent: of.limitPercent,
      mark: { atH: markH, percent: at(markH), says: of.says },
      ...(of.isClock && {
        clock: {
          startHour: of.startHour,
          dayNames: Array.from({ length: days }, (_, i) =>
            of.isWeek ? present(week[i % 7]) : `day ${i + 1}`,
          ),
          nightFrom: 18.5,
          nightTo: 5.5,
        },
      }),
      ...(of.wanted !== undefined && {
        wanted: { atH: (last * of.wanted) / 100, says: 'wanted: about 2¼ days' },
      }),
      ...(of.before !== undefined && {
        before: {
          points: [present(points[0]), present(points[markH])],
          mark: { atH: markH, percent: of.before },
          says: 'lowest 20 %, a long way down from where it is now, and then some more',
        },
      }),
      ...(of.isCut && { cut: 'the first 14 days are drawn' }),
    };
  });

const bars: fc.Arbitrary<BarsChart> = fc.record({
  kind: fc.constant('bars' as const),
  ...head,
  unit: fc.constant('Ah'),
  bars: fc.array(fc.record({ name, value: amount }), { minLength: 1, maxLength: 30 }),
});

const claims: fc.Arbitrary<ClaimsChart> = fc
  .record({
    ...head,
    unit: fc.constantFrom('days', 'Ah', 'mm²'),
    value: amount,
    down: fc.double({ min: 0.3, max: 1, noNaN: true }),
    up: fc.double({ min: 1, max: 3, noNaN: true }),
    claims: fc.array(fc.record({ who: name, value: amount }), { minLength: 1, maxLength: 12 }),
  })
  .map(({ down, up, ...chart }) => ({
    kind: 'claims' as const,
    ...chart,
    low: chart.value * down,
    high: chart.value * up,
  }));

const months: fc.Arbitrary<MonthsChart> = fc.record({
  kind: fc.constant('months' as const),
  ...head,
  unit: fc.constant('Ah'),
  months: fc.array(
    fc
      .double({ min: 0, max: 900, noNaN: true })
      .map(value => ({ value, low: value * 0.7, high: value * 1.3 })),
    { minLength: 12, maxLength: 12 },
  ),
  month: fc.integer({ min: 1, max: 12 }),
  use: fc.option(fc.double({ min: 0.1, max: 2000, noNaN: true }), { nil: undefined }),
});

const ah = fc.double({ min: 0, max: 500, noNaN: true });
const plan: fc.Arbitrary<PlanChart> = fc.record({
  kind: fc.constant('plan' as const),
  ...head,
  unit: fc.constant('Ah'),
  limitPercent: percent,
  days: fc.array(
    fc.record({
      name: fc.constantFrom('Day 1', 'Day 14', 'Wednesday'),
      outAh: ah,
      sunAh: ah,
      drivingAh: ah,
      pluggedAh: ah,
      lowestPercent: percent,
      endPercent: percent,
    }),
    { minLength: 1, maxLength: 14 },
  ),
  cut: fc.option(fc.constant('12 more days not drawn'), { nil: undefined }),
});

const lead = fc.record({
  areaMm2: fc.constantFrom(1, 1.5, 2.5, 16, 95, 150, 240),
  lengthM: fc.constantFrom(0.5, 1.5, 4, 12.5),
  fuseA: fc.option(fc.constantFrom(2, 7.5, 40, 1200), { nil: undefined }),
});
const box = fc.record({ name, lead, also: fc.option(fc.constant('mains not drawn'), { nil: undefined }) });
// What charges may be two things in a row; what runs is one.
const branch = fc.oneof(
  fc.record({ side: fc.constant('in' as const), boxes: fc.array(box, { minLength: 1, maxLength: 2 }) }),
  fc.record({ side: fc.constant('out' as const), boxes: fc.array(box, { minLength: 1, maxLength: 1 }) }),
);
const wiring: fc.Arbitrary<WiringChart> = fc.record({
  kind: fc.constant('wiring' as const),
  ...head,
  battery: name,
  main: fc.option(lead, { nil: undefined }),
  branches: fc.array(branch, { minLength: 1, maxLength: 9 }),
  cut: fc.option(name, { nil: undefined }),
  cautions: fc.array(fc.constant('Fuse the cable at the battery end, as close to the terminal as you can.'), {
    minLength: 1,
    maxLength: 4,
  }),
});

/** Each kind of picture, with anything in it. */
export const kinds: Readonly<Record<Chart['kind'], fc.Arbitrary<Chart>>> = {
  charge,
  bars,
  claims,
  months,
  plan,
  wiring,
};
