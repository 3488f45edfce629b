import type { Mention } from '#language/recognise/mention.ts';
import { plain, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { amountsOf, isOverBattery, offPanel, takingV } from '../figures-told.ts';

/** What an MPPT controller passes on of what comes in. Makers' sheets that agree. */
const passed = 0.95;

/** The controller's kind where it is told. */
const kindOf = ({ solar = [] }: Facts, mentions: readonly Mention[]): string | undefined =>
  solar.find(({ controller }) => controller !== undefined)?.controller ??
  mentions.find(({ kind }) => kind === 'controller')?.key;

/** "No, more: 103 W come in, and an MPPT makes about 7.2 A of that at 13.6 V." */
function intoBattery(facts: Facts, mentions: readonly Mention[]): string {
  const { panel, battery = takingV, amps = 0 } = offPanel(mentions);
  const through = `${significant(amps)} A`;
  if (kindOf(facts, mentions) === 'pwm')
    return `About that: a PWM passes the panel’s ${through} on as they are, and loses its spare volts.`;
  const watts = panel * amps;
  return `No, more: ${significant(panel)} V × ${through} is ${plain(watts)} W, about ${plain((passed * watts) / battery)} A at ${significant(battery)} V.`;
}

const lines = (facts: Facts, mentions: readonly Mention[]): readonly string[] => {
  const { isBatteryTold } = offPanel(mentions);
  const kind = kindOf(facts, mentions);
  return [
    ...(kind === 'pwm'
      ? []
      : [
          `That is an MPPT’s work, less about 5 % that it keeps for itself.${kind === undefined ? ' A PWM would pass on the same amps.' : ''}`,
        ]),
    ...(isBatteryTold || kind === 'pwm' ? [] : [`I took the battery as at ${takingV} V.`]),
    'What runs meanwhile comes off that before the battery gets it.',
  ];
};

const shown =
  'panel_side|pv_side|solar_side|pv|panel|panels|array shows|show|says|say|reads|read|reading|showing|display|app|side|have';
const goes = 'going|goes|go|gets|get|getting|into|in|charging battery|it|in';
const others =
  '-series -parallel -ah -day -fuse -cable -wire -rated -limit -max -open_circuit -voc -cuts -cold -nothing -not -no -isnt';

/** Volts and amps off the panel's side of a controller, and what of them the battery gets. */
export const panelReadings: readonly Aside[] = [
  {
    name: 'panel-side-into-battery',
    hasAnyFigures: true,
    isAsked: 'if-unsure',
    spots: [`${shown} ${goes} ${others}`],
    when: (_, { recognised: { mentions } }) =>
      isOverBattery(mentions) && amountsOf(mentions, 'current').length > 0,
    says: intoBattery,
    lines,
  },
  {
    name: 'panel-volts-into-battery',
    hasAnyFigures: true,
    spots: [`${shown} ${goes} -how_many_amps ${others}`],
    when: (_, { recognised: { mentions } }) => isOverBattery(mentions),
    verdict: 'no',
    says: 'No: those are the panel’s volts. The battery gets its own, about 13 to 14.5 V in the sun.',
    lines: ['An MPPT turns the spare volts into amps; a PWM lets them go.'],
  },
];
