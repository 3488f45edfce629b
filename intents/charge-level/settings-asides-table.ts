import { significant } from '#quantity/round.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { chargeRow } from './compute.ts';

const kindOf = ({ batteries }: Facts): Chemistry | undefined =>
  batteries?.find(({ chemistry }) => chemistry !== undefined)?.chemistry;

const isUnread = ({ volts }: Facts): boolean => volts === undefined;

/** One line for each kind of battery, and one for where nobody said which. */
const byKind = (lead: string, lithium: string, either: string) => (facts: Facts) => {
  const kind = kindOf(facts);
  return kind === undefined ? either : kind === 'lfp' ? lithium : lead;
};

/** Lower than this a cut-off leaves lead-acid nearly flat, V. Common practice. */
const lowCutV = 11.8;

const cutOff = (facts: Facts): string => {
  const { volts } = facts;
  const setTo = byKind(
    'about 12 V on lead-acid',
    'about 12.5 V on lithium',
    'about 12 V on lead-acid, 12.5 V on lithium',
  )(facts);
  if (volts === undefined) return `Set it to ${setTo}: a load makes it read low.`;
  return volts < lowCutV
    ? `Yes, low: at ${significant(volts, 4)} V it is nearly flat. Set it to ${setTo}.`
    : `${significant(volts, 4)} V is fine to cut off at: ${setTo} is usual.`;
};

const floats = (facts: Facts): string => {
  const kind = kindOf(facts);
  const at = (chemistry: Chemistry): string => `${significant(chargeRow(chemistry).floatV, 3)} V`;
  if (kind === 'lfp')
    return `Lithium needs no float; a charger that has one may hold it at ${at('lfp')} or less.`;
  return `Float is about ${at(kind ?? 'agm')} for ${kind === undefined ? 'AGM or lead-acid' : kind === 'gel' ? 'gel' : kind === 'agm' ? 'AGM' : 'lead-acid'} at 25 °C; the label counts.`;
};

/** What is asked of a reading's state, of cut-offs and of age, with no volts to work on. Common practice; volts as in the engine's tables. */
export const settingAsides: readonly Aside[] = [
  {
    name: 'cut-off-setting',
    spots: [
      'low_volt*|low_voltage|low_cut|low_cutoff|lvd|cutoff|cut_off set|setting|at|to|what|too_low|alarm -fridge -freezer -smell -how_much -how_full -left -it_says',
      'set_it_to|set_mine_to|set_them_to agm|lithium|gel|eleven|twelve|lead -float -absorption -charge* -fridge',
    ],
    hasAnyFigures: true,
    says: cutOff,
    lines: [
      'An inverter pulls the volts down hard: there 11.5 V under a big load is usual, so that it doesn’t cut out early.',
    ],
    next: ['what voltage do I stop at?'],
  },
  {
    name: 'read-on-charge',
    spots: [
      'charging|on_charge|charger_on|charger_was|sun_was when|while|it_was change|changes|looked|read|matter|count',
    ],
    when: isUnread,
    says: 'Yes: while it charges the volts are the charger’s. Read it some hours after, with nothing on.',
    lines: ['Solar counts as charging: dawn, before the sun is on the panel, is the best time.'],
    next: ['12.5V agm at rest, how full?'],
  },
  {
    name: 'read-under-load',
    spots: [
      'fridge|freezer|heater|pump|lights|load|inverter|fan running|was_on|is_on|going|under_load when|change|changes|too|still|real|higher|with -how_long -how_full -stop -flat',
      'so|and|but|what_about under_load|fridge_going|fridge_on|fridge_running -how_long -how_full',
      'ran|running|on all_nite|all_night|overnight real|higher|really -how_long',
      'wait everything_off|all_off',
    ],
    when: isUnread,
    says: byKind(
      'Under a load it reads 0.1 to 0.3 V low, so it is fuller than the volts say: 12 V is like 12.2.',
      'Under a load it reads 0.1 to 0.2 V low, so it is fuller than the volts say; rested tells better.',
      'Under a load it reads 0.1 to 0.3 V low, so it is fuller than the volts say: 12 V is like 12.2.',
    ),
    lines: [
      'For a true reading: everything off for an hour, nothing charging, then read it.',
      'Big loads pull it down further; small ones hardly. Lithium sags less.',
    ],
    next: ['12.5V agm at rest, how full?'],
  },
  {
    name: 'other-kind',
    spots: [
      'change|changes|changed|difference gel|agm|lithium|wet that|it|something|anything -fridge -load -running -charging -capacity -how_long',
    ],
    when: isUnread,
    says: byKind(
      'AGM, gel and wet lead-acid read nearly the same: full 12.7 to 12.9 V, half 12.2 V at rest.',
      'Lithium reads higher: 13.3 V and over is full, 12.9 V about 20 %, at rest.',
      'At rest: lead-acid is full at 12.7 to 12.9 V, half at 12.2; lithium full at 13.3 V and over.',
    ),
    lines: ['Tell me the volts it reads at rest, and I’ll say how full it is.'],
    next: ['what voltage do I stop at?'],
  },
  {
    name: 'once-flat',
    spots: [
      'once|dropped_to|went_to|went_down_to|got_down_to ruined|damaged|stuffed|wrecked|killed|harm|hurt|had_it -will -if',
    ],
    hasAnyFigures: true,
    says: byKind(
      'Once needn’t ruin it: charged right up within a day it loses a little life; left flat, much.',
      'Once does lithium little harm: its BMS cuts off first. Charge it within days.',
      'Once needn’t ruin it, if it was charged right up soon after; days left flat do.',
    ),
    lines: [
      'Test it: charge it full, rest it overnight, then run a known load. 12.6 V or more at rest is a good sign on lead-acid.',
    ],
    next: ['how do I test a battery?'],
  },
  {
    name: 'years-old',
    spots: ['old for|too_old|years agm|gel|lithium|battery|lead -how_long -volt* -reads -test'],
    when: isUnread,
    hasAnyFigures: true,
    says: byKind(
      'Looked after, AGM or gel lasts about 4 to 7 years, wet ones 3 to 5: past five, test it.',
      'Looked after, lithium lasts about 10 years or more.',
      'Looked after, lead-acid lasts about 4 to 7 years, lithium 10 or more.',
    ),
    lines: ['What tells is a test: charge it full, run a known load, and see how long it takes to half.'],
    next: ['how do I test a battery?'],
  },
  {
    name: 'sit-at-level',
    spots: [
      'sit|sits|sitting|stay|stays|leave_it|leaving ok|okay|fine|bad|alright all_week|a_week|weeks|for_a_week|days|month|months -volt* -reads -charger -float',
    ],
    when: isUnread,
    hasAnyFigures: true,
    says: byKind(
      'For a week, yes; for longer no: lead-acid left part full loses capacity. Fill it right up soon.',
      'Yes: lithium likes to sit part full, 40 to 60 % best, for months.',
      'Lithium yes, part full suits it; lead-acid for a week at most: it wants to be right up.',
    ),
    lines: ['Full at least every week or two keeps AGM and gel well.'],
    next: ['how do I store a battery?'],
  },
  {
    name: 'float-volts',
    spots: ['float volt*|voltage|v|what|or -how_long -safe -ok -panel*'],
    when: isUnread,
    hasAnyFigures: true,
    says: floats,
    lines: [
      'In heat a little lower: about 0.02 V less for each degree over 25 °C. Chargers with a probe do that by themselves.',
    ],
    next: ['what is float?'],
  },
  {
    name: 'never-go-below',
    spots: [
      'go_below|go_under|not_below|never_below|minimum|the_floor percent*|what|volt*|which|so|level -temp* -degrees -cold -freez* -how_long',
    ],
    when: isUnread,
    says: byKind(
      'Not under half with lead-acid: about 12.2 V at rest.',
      'Not under about 20 % with lithium, near 12.9 V at rest; a monitor tells that better than volts.',
      'Not under half with AGM or lead-acid, not under about 20 % with lithium.',
    ),
    lines: ['Lower now and then does little harm if you charge it soon.'],
    next: ['what is depth of discharge?'],
  },
];
