import { decimals, significant } from '#quantity/round.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { chemistryName } from '../words.ts';
import { chargeRow, restVoltsAt } from './compute.ts';

const kindOf = ({ batteries = [] }: Facts): Chemistry | undefined =>
  batteries.find(({ chemistry }) => chemistry !== undefined)?.chemistry;
const isLithium = (facts: Facts): boolean => kindOf(facts) === 'lfp';
const isLead = (facts: Facts): boolean => kindOf(facts) !== undefined && !isLithium(facts);

const volts = (value: number): string => `${decimals(value, 1)} V`;
/** "14.2 to 14.7 V". */
const fillsAt = (chemistry: Chemistry): string => {
  const [, low, high] = chargeRow(chemistry).absorptionV;
  return `${decimals(low, 1)} to ${volts(high)}`;
};

/** How a battery wants to be treated, by its kind: how deep, how charged, how kept. Volts and weights are the engine's; the rest is common practice. */
export const livingAsides: readonly Aside[] = [
  {
    name: 'how-deep',
    hasAnyFigures: true,
    spots: [
      'how_deep|how_flat|how_low|how_far|how_empty can|may|take|go|run|empty|should -cost -cold -cable -long_last',
      'to_what_percent|down_to_what|what_percent_can',
    ],
    says: facts =>
      isLithium(facts)
        ? 'Lithium: down to 10 or 20 %. Now and then right to its BMS’s cut-off does no harm.'
        : `Lead-acid to about half, ${volts(restVoltsAt(50, 'lead-acid'))} at rest; lithium to 10 or 20 %.`,
    lines: [
      'A lead-acid one taken to 20 % each time lives about half as many cycles as one taken to 50 %.',
      'Whatever the depth, charge lead-acid again the same day.',
    ],
  },
  {
    name: 'flat-once',
    spots: [
      'die|dies|dead|ruined|wreck*|kill*|hurt|hurts|damage* flat|empty once|one_time|a_single -how_flat',
    ],
    says: facts =>
      isLithium(facts)
        ? 'Once flat, lithium’s BMS cuts off before the cells are hurt: charge it within days.'
        : 'Once flat seldom kills it if you charge it the same day; each deep run costs some life.',
    lines: [
      'Left flat for weeks, lead sulphates for good and a lithium’s cells sink too low: that is what kills them.',
    ],
  },
  {
    name: 'its-charging-volts',
    hasAnyFigures: true,
    spots: ['charg*|absorption voltage|voltages|volts|volt -why -what_volts_is -how_full -empty -resting'],
    when: facts => kindOf(facts) !== undefined,
    says: facts => {
      const kind = kindOf(facts) ?? 'agm';
      return `Charge ${chemistryName(kind)} at ${fillsAt(kind)}${kind === 'lfp' ? '; it needs no float, 13.5 V at most' : `, then float at ${volts(chargeRow(kind).floatV)}`}.`;
    },
    lines: ['For a 12 V one at 25 °C. The battery’s own sheet comes first.'],
    cautions: ['lithium-cold'],
  },
  {
    name: 'which-charges-faster',
    spots: ['charge|charges|charging quicker|quickest|faster|fastest|sooner -panel -drive'],
    says: 'Lithium: it takes up to half its Ah in amps, almost to the end. AGM takes a third, then tapers.',
    lines: ['An AGM’s last fifth takes hours whatever the charger. Only a big charger shows the difference.'],
  },
  {
    name: 'left-on-a-charger',
    hasAnyFigures: true,
    spots: [
      'trickle|maintainer|maintenance_charger|float_charger|float winter|all|months|time|storing|always',
      'on_the_charger|plugged_in winter|months|storing|always|all_the_time|till|until',
    ],
    says: facts =>
      isLithium(facts)
        ? 'Off: lithium is stored at about half with nothing on it, and never charged below 0 °C.'
        : 'With a smart charger set to it, yes: it holds 13.5 V. A plain trickle charger dries it out.',
    lines: facts =>
      isLithium(facts)
        ? ['Look at it every three months, and top it up if it is under a third.']
        : ['No power there? Full and unhooked it keeps two or three months between top-ups.'],
    cautions: ['lithium-cold'],
  },
  {
    name: 'worse-to-leave',
    spots: ['worse lead|agm lithium|lifepo* leave|leaving|left|stand*|month*'],
    says: 'Lead half empty, by far: it hardens within weeks. Lithium full for a month ages a little.',
    lines: ['So store lead full and lithium at about half.'],
    next: ['how do I store a battery?'],
  },
  {
    name: 'standing-idle',
    spots: [
      'sits|stands|standing|parked|unused yard|shed|months|most_of_the_year|storage|garage better|agm|which -drain* -flat',
    ],
    when: facts => (facts.batteries?.length ?? 0) > 1,
    says: 'Lithium: it may stand half full for months, where a forgotten AGM hardens and dies.',
    lines: [
      'Both lose about 2 to 3 % a month. With a small panel or a smart charger on it AGM does well too, for less money.',
    ],
  },
  {
    name: 'stored-by-kind',
    spots: ['stor*|winter|lay_up|layup|laid_up charger|off|full|half|leave|keep -below -minus -cold -heated'],
    says: facts =>
      isLithium(facts)
        ? 'Store lithium at about half, off the charger and unhooked; look at it every three months.'
        : isLead(facts)
          ? 'Store it full and unhooked, and top it up every two or three months.'
          : 'AGM: store it full and top it up every two or three months. Lithium: about half full.',
    lines: ['Cool and dry; a full lead-acid one stands hard frost, a flat one freezes and splits.'],
  },
  {
    name: 'full-every-day',
    hasAnyFigures: true,
    spots: ['every|each|daily|day|always|sit|stay|past|never|bad|all_year'],
    when: ({ targetChargePercent, batteries = [] }) =>
      targetChargePercent !== undefined ||
      batteries.some(
        ({ chemistry, stateOfChargePercent = 0 }) => chemistry === 'lfp' && stateOfChargePercent > 94,
      ),
    says: facts =>
      facts.targetChargePercent === undefined
        ? 'It may, but ages a little faster so: for months about half is better, and cool.'
        : facts.targetChargePercent > 94
          ? 'Fine while you use it: what ages lithium is standing full for months, in heat above all.'
          : isLead(facts)
            ? 'Bad for lead-acid: it must be filled right up every week or two, or it hardens.'
            : 'Fine for lithium; fill it once a month so that its cells level. Lead-acid must be filled right up.',
    lines: ['A monitor also needs the odd full charge to find its 100 % again.'],
  },
  {
    name: 'too-hot-for-it',
    hasAnyFigures: true,
    spots: ['canopy|today|alright|all_right|in_there|in_the_sun|boot|tub'],
    when: facts => (facts.ambientC ?? 0) >= 45 && !isLead(facts),
    says: ({ ambientC = 0 }) =>
      `No charging at ${significant(ambientC)} °C: lithium stops at about 45 °C. Give it shade and air.`,
    lines: [
      'Using it up to 60 °C is allowed but ages it. Swollen, smelling or hotter than the air: keep away.',
    ],
  },
  {
    name: 'freezes-or-not',
    hasAnyFigures: true,
    spots: ['too_cold|freeze|freezes|frozen_solid -lithium -charge_lithium'],
    when: isLead,
    says: 'A flat one freezes from about -10 °C, a full one not above -50 °C: keep it charged.',
    lines: ['Lead-acid may be charged in frost, only slower and never once it’s frozen.'],
    cautions: ['battery-gas'],
  },
  {
    name: 'used-in-frost',
    spots: [
      'discharg* ok|okay|fine|yes|safe|right|allowed|it -bms',
      'just_using|only_using|just_use|use_it|run_it cold|frost|freez*|minus|winter',
    ],
    when: facts => !isLead(facts),
    says: 'Yes, lithium may be used down to about -20 °C. Only charging it below 0 °C ruins it.',
    lines: ['It gives about a seventh less at 0 °C, and all of it again once it is warm.'],
    cautions: ['lithium-cold'],
  },
];
