import { chargeRow } from '#engine/battery/charge-table.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { decimals } from '#quantity/round.ts';
import type { Chemistry } from '#rig/rig.ts';
import type { Aside } from './asides.ts';
import { chemistryName } from './words.ts';

/** Volts of one 12 V block that fill a battery and no longer keep it full. Common practice. */
const filling = { least: 14, most: 15 } as const;
const blocksOf = (volts: number): number => (volts > 24 ? 2 : 1);

/** Volts told that are right for the hours of a charge only; a bare number counts with its tenths: "14.4 all week". */
const heldV = (mentions: readonly Mention[]): number | undefined =>
  mentions.find(({ kind, dimension, value }) => {
    const one = value / blocksOf(value);
    const isVolts =
      kind === 'amount' ? dimension === 'voltage' : kind === 'number' && !Number.isInteger(value);
    return isVolts && one >= filling.least && one <= filling.most;
  })?.value;

const kindIn = (mentions: readonly Mention[]): Chemistry =>
  (mentions.find(({ kind }) => kind === 'chemistry')?.key as Chemistry | undefined) ?? 'lead-acid';

const days =
  'days|weeks|week|all_week|for_weeks|fortnight|month|months|since_monday|since_tuesday|since_wednesday|since_thursday|since_friday|since_saturday|since_sunday';
/** What it means with days is a run, a rest or another fault. */
const others =
  '-last -run -runs -lasts -lasted -how_long -how_many -trip -ago -every_few -of_rain -flat -dead -fridge* -rest -rested -resting -unplugged -disconnected -off_charge -off_the_charger';

/** Volts of absorption that never fall. Makers’ sheets that agree: hours, and then float. */
export const heldHigh: readonly Aside[] = [
  {
    name: 'held-at-absorption',
    isAsked: 'for-sure',
    hasAnyFigures: true,
    spots: [
      `stuck|stays|stay|staying|sits|sitting|sat|still|been|never|wont|constantly|held|holds|holding|left|hasnt|doesnt|should_it_drop ${days} ${others}`,
    ],
    when: (_, { recognised: { mentions } }) => heldV(mentions) !== undefined,
    says: (_, mentions) => {
      const volts = heldV(mentions) ?? filling.least;
      const kind = kindIn(mentions);
      const float = `${decimals(chargeRow(kind).floatV * blocksOf(volts), 1)} V`;
      const read = `${decimals(volts, 1)} V`;
      return kind === 'lfp'
        ? `Not right for days on end: once full, lithium wants no more than about ${float}; ${read} ages it.`
        : `Not right for days on end: ${read} dries ${kind === 'flooded' ? 'a wet battery' : chemistryName(kind)} out. Once full it floats at about ${float}.`;
    },
    lines: (_, mentions) => [
      'Take it off charge and let it rest. Hot, swollen or smelly: leave it off, keep away and have it looked at.',
      kindIn(mentions) === 'lfp'
        ? 'Then its settings: the lithium type, and no float or a low one.'
        : 'Then its settings: the battery’s type, float on, no supply or equalise mode. A load that runs all the time holds it up too.',
      'Amps that stay high for a day with nothing on: the battery is worn out.',
    ],
    cautions: ['battery-gas'],
    next: ['what is float?', 'what is absorption?'],
  },
];
