import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';

/** Two ways to the same amp hours are told: one big battery, and several that make as much. */
function areAlternatives({ batteries = [] }: Facts): boolean {
  const totals = new Set(batteries.map(({ count, capacityAh = 0 }) => count * capacityAh));
  return batteries.length === 2 && totals.size === 1 && new Set(batteries.map(b => b.count)).size === 2;
}
const voltsOf = ({ batteries = [] }: Facts): readonly number[] =>
  batteries.map(({ voltageV }) => voltageV).filter(one => one !== undefined);

/** Joining batteries: which is better, before they are joined, and what doesn't go together. Common practice. */
export const joiningAsides: readonly Aside[] = [
  {
    name: 'one-big-or-two',
    hasAnyFigures: true,
    spots: ['better|or|instead|rather|than|which'],
    when: areAlternatives,
    says: 'The same amp hours: one big one has fewer joints to go bad, two lift easier.',
    lines: [
      'Two must be alike in kind, size and age, joined plus to plus; if one dies you still have half.',
      'Lithium: two BMS share the amps, so two often give more current.',
    ],
    cautions: ['mixed-batteries'],
  },
  {
    name: 'two-in-place-of-one',
    hasAnyFigures: true,
    spots: ['can|could|have two|pair instead -old -one_is'],
    when: ({ batteries = [] }) => batteries.length === 1 && batteries[0]?.count === 2,
    verdict: 'yes',
    says: 'Yes, joined plus to plus and minus to minus: two alike ones give their Ah added up, at 12 V.',
    lines: ['Buy both on one day, same kind and size. Take plus off one and minus off the other.'],
    cautions: ['mixed-batteries', 'fuse-at-battery'],
  },
  {
    name: 'alike-anything-to-know',
    hasAnyFigures: true,
    spots: [
      'same model|make|age|brand|day|size|year -different -not_the_same -not_same -have_to_be -need_to_be -must_be',
    ],
    when: facts => facts.arrangement !== 'series' && new Set(voltsOf(facts)).size < 2,
    verdict: 'yes',
    says: 'Yes, alike ones may: charge each full first, then plus to plus and minus to minus.',
    lines: [
      'Take plus off one and minus off the other so that they share the work, with links of one length.',
      'Join them when they read within 0.1 V. A lithium’s sheet says how many may go in parallel.',
    ],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'level-them-first',
    hasAnyFigures: true,
    spots: [
      'balance|balancing|level|pct|percent|charge_them|full_first join*|parallel*|before|just|both -old -agm',
    ],
    says: 'Charge each one full by itself, let both rest, and join them when within 0.1 V.',
    lines: ['A full one on a half-empty one drives a big current across: sparks, or a BMS that cuts out.'],
    cautions: ['mixed-batteries'],
  },
  {
    name: 'busbar-or-chain',
    hasAnyFigures: true,
    spots: ['busbar*|bus_bar* daisy|chain|or|for|links -how_many'],
    says: 'Busbars from three or four batteries on, each on leads of one length, so that all work alike.',
    lines: ['Two may be chained, plus off one and minus off the other. Fuse each lithium at its own plus.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'twelve-with-six',
    hasAnyFigures: true,
    spots: ['together|join|mix|put|combine|add'],
    when: facts => new Set(voltsOf(facts)).size > 1,
    verdict: 'no',
    says: 'No: side by side the higher one pours into the lower; in series the smaller runs flat first.',
    lines: ['Two alike 6 V in series make 12 V.'],
    cautions: ['mixed-batteries'],
  },
  {
    name: 'truck-battery-given',
    hasAnyFigures: true,
    spots: ['any_use|use|useful|good|what_can caravan|van|camp*|trailer|in_my'],
    when: ({ batteries = [] }) => batteries.length === 1 && batteries[0]?.voltageV === 24,
    says: 'Not on 12 V gear: 24 V burns it out. Only with a 24-to-12 V converter, and a 24 V charger.',
    lines: [
      'Truck batteries are mostly made for starting: count on a third of the label. Mostly not worth it.',
    ],
  },
  {
    name: 'stepping-up',
    spots: ['run|use stuff|gear|thing|things off|on v|volt|twelve -two -series -batteries'],
    when: ({ systemVoltageV, batteries }) => systemVoltageV === 12 && batteries === undefined,
    verdict: 'yes',
    says: 'Yes, through a 12-to-24 V step-up converter of its watts: it takes twice the amps from 12 V.',
    lines: [
      'Or two alike 12 V batteries in series for 24 V gear only. Many things are 12/24 V: see the plate.',
    ],
  },
  {
    name: 'why-not-lead-with-lithium',
    hasAnyFigures: true,
    spots: ['why why_not|not|cant|same_voltage -series -more_amp'],
    when: facts => facts.arrangement === undefined,
    says: 'They rest at 13.3 and 12.7 V and fill at different volts: one keeps pouring into the other.',
    lines: [
      'An old one beside a new pulls it down likewise. Keep unlike ones apart, each with its own loads.',
    ],
    cautions: ['mixed-batteries'],
  },
  {
    name: 'series-unsized',
    spots: ['series -double* -add* -twice -parallel -longer -last* -inverter -gear -fridge'],
    when: ({ batteries = [] }) => !batteries.length,
    says: 'In series the volts add up and the amp hours stay: two 12 V make 24 V, for 24 V gear only.',
    lines: ['For more hours at 12 V join them in parallel. What is stored is the same either way.'],
  },
  {
    name: 'went-under-water',
    spots: ['flood|flooded|under_water|underwater|went_under|got_wet|soaked pair|join|still|use'],
    says: 'No: a lithium that was under water may fail weeks later. Leave it outside, and ask its dealer.',
    lines: ['Water in its BMS corrodes on after it looks dry. Swollen, warm or smelling: keep away.'],
  },
];
