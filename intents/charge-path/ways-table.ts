import { decimals } from '#quantity/round.ts';
import type { Aside } from '../asides.ts';
import { chargersTogether, together } from '../chargers-together.ts';

/** Ways in other than isolator or DC-DC, and what the engine's turns, cold and several chargers do. Common practice, amps by the engine's tables. */
export const wayAsides: readonly Aside[] = [
  {
    name: 'most-amps',
    hasAnyFigures: true,
    spots: ['max|maximum|most|highest|biggest current|amps|amp|ampere|charge -alternator -fuse -solar -dcdc'],
    when: facts => together(facts) !== undefined && !facts.chargers?.length,
    says: facts => {
      const { label = '', takesA = 0 } = together(facts) ?? {};
      return `About ${decimals(takesA, 0)} A for ${label}; its own sheet goes first.`;
    },
    lines: [
      'That is 0.3 of its Ah for AGM, 0.2 for gel, 0.13 for wet and 0.5 for lithium. Less only takes longer.',
    ],
  },
  ...chargersTogether,
  {
    name: 'two-chargers',
    hasAnyFigures: true,
    spots: [
      'both|two|all chargers|charge at_once|same_time|together|bad -cars -batteries',
      'controller|solar|mppt dcdc|dc both|at_once|same_time|together -anderson',
    ],
    says: 'Yes, both at once: each gives what it can through its own controller, and nothing is hurt.',
    lines: ['Set both to the same kind of battery. Near full the one with the higher volts does more.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'pwm-or-mppt',
    hasAnyFigures: true,
    spots: ['mppt pwm', 'pwm|mppt panel|off_a_roof|need|worth|mine|one -dcdc -alternator'],
    says: 'One small 12 V panel: PWM will do. MPPT gains 10 to 30 %, and a 24 V or house panel needs it.',
    lines: ['On a PWM a house panel of 30 to 40 V loses more than half of its watts.'],
    next: ['pwm or mppt for 200W of panels?'],
  },
  {
    name: 'small-panel-bare',
    hasAnyFigures: true,
    spots: ['no|without regulator|controller|reg panel|trickle'],
    when: ({ solar = [] }) => solar.every(({ powerW = 99 }) => powerW <= 10),
    says: 'Up to about 5 W on a big lead battery, yes: that can’t overcharge it. Never on lithium.',
    lines: ['Its lead needs a diode, or it drains the battery at night, and a fuse at the battery.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'panel-of-more-volts',
    hasAnyFigures: true,
    spots: [
      'panel|panels|house_one direct*|straight|anything_between|meet_in_the_middle|need -dcdc -alternator',
    ],
    when: ({ solar = [] }) => solar.length > 0,
    verdict: 'no',
    says: 'Not straight on: an MPPT controller between, as a panel’s bare volts overcharge the battery.',
    lines: [
      'A house panel gives 30 to 45 V: the controller must stand its Voc with a tenth to spare for frost.',
    ],
    cautions: ['fuse-at-battery'],
    next: ['what controller for a 200W panel?'],
  },
  {
    name: 'by-revs',
    hasAnyFigures: true,
    spots: [
      'highway|motorway|rpm|revs|low_range|slow_track*|slowly|off_road|crawling charg*|better|still|same -volts -isolator_clicks',
    ],
    says: 'It charges from about 1200 to 1500 rpm on; faster adds little. Idling gives a third, less hot.',
    lines: [
      'A DC-DC holds its own amps as long as the alternator has them. A smart one may rest on long flats.',
    ],
  },
  {
    name: 'is-it-charging',
    spots: [
      'how know|tell|see|check charges|charging trailer|van|at_all|second|house|back -smart',
      'what see|read meter|multimeter|volts engine|isolator|running',
    ],
    says: 'Read the second battery engine off, then running: 12.6 V should rise to 13.5 V or more.',
    lines: [
      'With an isolator closed both batteries read within 0.2 V, at 13.8 to 14.4 V.',
      'No rise: a fuse, the plug, the ignition wire of the DC-DC, or a smart alternator.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'joined-for-good',
    spots: ['vsr|isolator|relay permanent*|always|all_the_time|tape* -dcdc'],
    verdict: 'no',
    says: 'No: joined for good, the fridge empties the starter battery too, and you don’t get home.',
    lines: [
      'A smart alternator wants a DC-DC charger with an ignition wire; an old one needs the isolator to open.',
    ],
    cautions: ['starter-reserve'],
  },
  {
    name: 'charger-in-the-cold',
    spots: ['dcdc|dc_dc|dc_to_dc|charger cold|frost|freezing|minus|winter work|warm_up|need -battery_is'],
    says: 'It works in the cold at once. But nothing may charge lithium at or below 0 °C.',
    lines: ['Its BMS should block that; if it can’t, leave the charger off till the battery is above 5 °C.'],
    cautions: ['lithium-cold'],
  },
  {
    name: 'larger-alternator',
    hasAnyFigures: true,
    spots: ['bigger|larger|upgrade alternator'],
    says: 'Seldom: take DC-DC chargers that draw no more than half of what the alternator is rated for.',
    lines: ['They hold each battery to its amps. Two at once only take longer, and share.'],
  },
  {
    name: 'converter-size',
    hasAnyFigures: true,
    spots: ['how_many|how_big|what_size|amps converter|reducer|one|two fridge|fridges -dcdc -how_long'],
    when: ({ alternator, alternatorA, batteries }) => !(alternator || alternatorA || batteries?.length),
    says: 'Add what runs at once and half as much again: two fridges of 5 A need a 15 to 20 A one.',
    lines: ['A fridge takes up to twice its amps as it starts. Fuse its lead at the battery.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'better-plug',
    hasAnyFigures: true,
    spots: ['grey_plug|gray_plug|big_plug|anderson|two_pole better|instead|more|rather -fridge'],
    verdict: 'yes',
    says: 'Yes: on 16 mm² with a fuse at each end it carries 30 to 50 A, where a trailer pin has 5 to 10.',
    lines: ['Put a DC-DC charger at its far end, beside the battery: the plug alone doesn’t lift the volts.'],
    cautions: ['fuse-at-battery'],
    next: ['what cable for a 25A dcdc, 6 m?'],
  },
  {
    name: 'two-cars',
    spots: ['two|second car|cars|vehicles|engines charge|charging'],
    says: 'Yes, each through its own DC-DC charger. Two alternators straight on one battery fight.',
    lines: ['One car’s DC-DC gives 20 to 40 A: an hour of driving is worth a sunny day of 100 W.'],
  },
];
