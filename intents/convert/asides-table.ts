import type { Aside } from '../asides.ts';

/** What is asked beside turning one unit into another. */
export const convertAsides: readonly Aside[] = [
  {
    name: 'how-it-is-done',
    spots: [
      'watts_to_amps|amps_to_watts|watts_into_amps|amps_into_watts|watts_and_amps how|do|does|work|way',
      'watts same_as|same amps',
    ],
    hasAnyFigures: true,
    says: 'Amps are watts divided by volts, watts are amps times volts: 60 W at 12 V is 5 A.',
    lines: ['Off an inverter divide by 10 in place of 12: that counts in what it loses.'],
    next: ['60W in amps', '100Ah in Wh'],
  },
  {
    name: 'laptop-on-twelve-volts',
    spots: [
      'laptop|notebook without|adapter|adaptor|straight|direct|car_charger|step_up -how_many -how_much -watts -amps',
    ],
    when: (_, { conversion }) => conversion === undefined,
    hasAnyFigures: true,
    verdict: 'yes',
    says: 'Yes, with a 12 V laptop adapter for its volts and plug, or USB-C: it takes some 4 to 6 A.',
    lines: ['Never straight on 12 V without one. It wastes less than an inverter does.'],
    next: ['65W in amps'],
  },
  {
    name: 'reducer-or-booster',
    spots: ['buck|boost|reducer|dropper|step_down|step_up|converter|voltage_converter -dcdc -inverter'],
    hasAnyFigures: true,
    says: 'It does if it is rated a quarter above what the thing draws, at its start too, and fused.',
    lines: [
      'Motors, compressors and glow plugs start at several times their amps: many converters trip then.',
    ],
    cautions: ['fuse-at-battery'],
  },
];
