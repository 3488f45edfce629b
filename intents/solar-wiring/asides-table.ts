import type { Aside } from '../asides.ts';

const orderLines = [
  'Keep the panel covered or face down while you join it, and the fuse out until the end.',
  'Then the loads. Check + and − twice: swapped wires kill a controller at once.',
];

/** What people ask beside series or parallel, special rows before general ones. */
export const solarWiringAsides: readonly Aside[] = [
  {
    name: 'usual-panel-volts',
    hasAnyFigures: true,
    spots: [
      'normal|right|should|supposed|correct|meant|ok volt|volts|voltage|v|shows|reads|says|open_circuit -series -parallel -limit -max -fry -blow -hurt -damage',
    ],
    when: ({ solar = [], arrangement }, { recognised: { mentions } }) =>
      arrangement === undefined &&
      solar.every(({ count, powerW }) => count === 1 && powerW === undefined) &&
      solar.some(({ openCircuitV }) => (openCircuitV ?? 0) >= 16 && (openCircuitV ?? 99) < 26) &&
      mentions.filter(({ dimension, value }) => dimension === 'voltage' && value > 14).length < 2,
    verdict: 'yes',
    says: 'Yes, that is normal: with nothing on it a 12 V panel shows 17 to 22 V in the sun.',
    lines: [
      'The controller brings it down to the battery’s 12 to 14.4 V. Working, the panel reads some 13 to 18 V.',
    ],
  },
  {
    name: 'controller-needed',
    hasAnyFigures: true,
    spots: [
      'need|without|necessary|have_to controller|regulator -size -which -what -big -amp -amps -second -other -another -two -fuse -series -parallel -dcdc',
    ],
    when: ({ arrangement, solar = [] }) =>
      arrangement === undefined && !solar.some(({ powerW }) => powerW !== undefined && powerW <= 10),
    verdict: 'yes',
    says: 'Yes: without one any panel over about 5 W overcharges the battery, and can ruin lithium.',
    lines: [
      'Many folding panels carry one on the back: look for a small box with the battery’s types on it.',
    ],
    cautions: ['fuse-at-battery'],
    next: ['what controller for a 200W panel?'],
  },
  {
    name: 'more-panel-than-amps',
    hasAnyFigures: true,
    spots: [
      'what_happens|happens_if|hook_up_more|more_panel|more_panels|too_many_panels|over_panel* controller|regulator|amps|rated|it -straight -without -direct*',
    ],
    when: ({ solar = [] }) => !solar.some(({ powerW }) => powerW !== undefined),
    says: 'An MPPT mostly holds back what is over its amps, a PWM can burn out. Never pass its volts.',
    lines: [
      'Its maker says how much panel it takes: look that up first. The surplus only pays in poor light.',
    ],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'never-full-sun',
    hasAnyFigures: true,
    spots: ['never|rarely|seldom|dont full_sun|sun|sunny controller|do|enough|smaller'],
    when: ({ solar = [] }) => !solar.some(({ powerW }) => powerW !== undefined),
    verdict: 'no',
    says: 'Size it for full sun all the same: at the edge of a cloud a panel passes its label for seconds.',
    lines: ['A bit over an MPPT’s amps its maker may allow: then the rest is simply not taken.'],
  },
  {
    name: 'one-panel-or-two',
    hasAnyFigures: true,
    spots: ['one_big|one_large|single two|several|small|smaller panel*|solar|ones'],
    says: 'One big one is cheaper by the watt; two small ones fit a roof better and mind shade less.',
    lines: ['Loose ones: two are easier to carry. Side by side they take two plugs, or a Y lead.'],
  },
  {
    name: 'clips-or-plug',
    spots: ['clip|clips|croc|crocodile|alligator|clamps plug|connect|socket'],
    hasAnyFigures: true,
    says: 'A plug is the safer way for good; clips do for a day. Either way the controller sits between.',
    lines: ['Plus first, and a fuse within 20 cm of the battery: clips that touch each other short it.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'both-batteries',
    spots: ['both_batteries|two_batteries|each_battery keep|charge|full|top|feed -series -parallel'],
    hasAnyFigures: true,
    says: 'Only the one that its controller is on. A second output or a trickle link serves the other.',
    lines: ['Never two leads straight off the panel: each battery needs a controller or a link of its own.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'trickle-panel',
    hasAnyFigures: true,
    spots: ['tiny|trickle|small|little'],
    when: ({ solar = [] }) => solar.length > 0 && solar.every(({ powerW }) => (powerW ?? Infinity) <= 10),
    verdict: 'tight',
    says: 'Up to about 5 W on a big lead battery, yes: that can’t overcharge it. Never on lithium.',
    lines: ['Its lead needs a diode, or it drains the battery at night, and a fuse at the battery.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'battery-off-first',
    hasAnyFigures: true,
    spots: ['disconnect*|unplug*|take_off|remove battery panel*|controller|solar|regulator'],
    verdict: 'no',
    says: 'No: take the panel off first. With no battery on it, the panel’s volts can kill the controller.',
    lines: ['And back on the other way round: battery first, then the panel.'],
  },
  {
    name: 'order',
    hasAnyFigures: true,
    spots: [
      'order|sequence|which_first|what_first|connect_first|comes_first',
      'first|which_end panel batter* controller|regulator|goes|connect|hook -series',
    ],
    says: 'Battery to the controller first, then the panel. Take them off the other way round.',
    lines: orderLines,
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'straight-on-the-battery',
    hasAnyFigures: true,
    spots: [
      'straight|direct|directly panel*|solar|it batter* -controller -regulator -mppt -pwm -fuse -inverter -series -parallel',
      'without controller|regulator panel*|solar|it -fuse -series -parallel',
      'no_controller|no_regulator panel*|solar|it -fuse -series -parallel',
    ],
    verdict: 'no',
    says: 'No, use a controller: straight on, a panel overcharges the battery and can ruin lithium.',
    lines: ['Panel to controller, controller to battery, with a fuse at the battery.'],
    cautions: ['fuse-at-battery'],
    next: ['what controller for a 200W panel?'],
  },
  {
    name: 'house-panel',
    spots: [
      'house|rooftop|domestic|residential solar_panel*|panel|panels use|van|camper|caravan|work -house_batter* -house_bank',
    ],
    verdict: 'yes',
    says: 'Yes, with an MPPT controller for its volts: house panels give 30 to 50 V open.',
    lines: [
      'A PWM would waste half of it. They are glass, 1.7 × 1 m and 20 kg: fix it well to the roof.',
      'One is near the limit: two in series pass 60 V, which shocks.',
    ],
    cautions: ['fuse-at-battery'],
    next: ['what controller for a 400W panel?'],
  },
  {
    name: 'a-controller-each',
    hasAnyFigures: true,
    spots: [
      'controller_each|regulator_each|own_controller|own_regulator|separate_controller*|separate_regulator*|two_controllers|two_regulators|both_controllers|second_controller',
    ],
    when: ({ arrangement }) => arrangement === undefined,
    verdict: 'yes',
    says: 'Yes, a controller each onto the one battery is fine, and best for unlike or shaded panels.',
    lines: ['Set both to the battery’s type; each has its own fuse at the battery.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'volts-too-high',
    hasAnyFigures: true,
    spots: [
      'fry|cook|hurt|damage|kill|harm|blow_up|blow|too_high|too_much batter*|it -controller -regulator',
    ],
    when: ({ solar = [] }) =>
      solar.some(({ openCircuitV }) => (openCircuitV ?? 0) >= 16 && (openCircuitV ?? 99) < 26),
    verdict: 'no',
    says: 'No: 17 to 22 V is what a 12 V panel gives. The controller brings it down to the battery.',
    lines: ['Only straight on, without a controller, it would overcharge it.'],
  },
  {
    name: 'pwm-or-mppt',
    spots: ['pwm mppt', 'mppt worth|better|matter|matters|point|bother|needed'],
    when: ({ solar = [] }) => !solar.some(({ powerW }) => powerW !== undefined),
    hasAnyFigures: true,
    says: 'PWM for one small 12 V panel, MPPT from about 150 W on, in series, or for house panels.',
    lines: [
      'From a 12 V panel an MPPT brings some 10 to 20 % more, most in the cold; from a house panel about twice.',
    ],
    next: ['what controller for a 200W panel?'],
  },
  {
    name: 'panel-reversed',
    spots: ['swap*|revers*|backward*|wrong_way|mix* plus|minus|polarity|panel|leads -series -parallel'],
    says: 'Most controllers stand a swapped panel for a while, some die; a swapped battery kills many.',
    lines: [
      'Take the panel off, check + and − with a meter, and join it right. No amps in the sun then: the controller is done.',
    ],
  },
  {
    name: 'series-parallel-unsized',
    spots: ['series parallel shade*|shadow|tree*', 'series parallel'],
    says: 'Parallel where shade falls on one, or on a PWM; series for an MPPT on a long cable in full sun.',
    lines: [
      'In series a shaded panel holds the others back, and their volts add up: stay under the controller’s limit in the cold.',
      'In parallel their amps add up: thicker cable, and from three panels a fuse each.',
    ],
    next: ['two 100W panels, series or parallel?'],
  },
  {
    name: 'controller-overloaded',
    spots: ['blow_up|blow|explode|fry|cook|burn -fuse'],
    when: ({ solar = [] }) => !solar.some(({ openCircuitV }) => openCircuitV !== undefined),
    says: 'Only past its plate: its amps must be above the panels’, its volts above theirs in the cold.',
    lines: [
      'A PWM passes all the panels’ amps: 100 W give about 6 A. Many MPPTs just hold back what is over.',
    ],
  },
];
