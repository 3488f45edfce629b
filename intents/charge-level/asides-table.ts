import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { settingAsides } from './settings-asides-table.ts';

const isLithium = ({ batteries }: Facts): boolean | undefined => {
  const kind = batteries?.find(({ chemistry }) => chemistry !== undefined)?.chemistry;
  return kind === undefined ? undefined : kind === 'lfp';
};

/** One line for each kind of battery, and one for where nobody said which. */
const byKind = (lead: string, lithium: string, either: string) => (facts: Facts) => {
  const known = isLithium(facts);
  return known === undefined ? either : known ? lithium : lead;
};

const linesByKind =
  (lead: string, lithium: string) =>
  (facts: Facts): string[] => {
    const known = isLithium(facts);
    return known === undefined ? [lead, lithium] : [known ? lithium : lead];
  };

/** What is asked of volts and of monitors beside how full it is. Common practice; volts as in the tables of the engine. */
export const levelAsides: readonly Aside[] = [
  {
    name: 'load-or-rest',
    spots: [
      'under_load|under_a_load|while_running|while_fridge_runs|with_the_fridge_on|running different|same_as|differ|difference rest|resting|rested|off',
    ],
    hasAnyFigures: true,
    says: 'Yes: under a load it reads about 0.1 to 0.3 V low, so the same volts mean it is fuller.',
    lines: [
      'The more it draws, the lower it reads. Rested an hour with nothing on, lead-acid tells its level fairly.',
      'Tell me the volts, and whether something was running.',
    ],
    next: ['12.5V agm at rest, how full?'],
  },
  {
    name: 'rest-time',
    spots: [
      'how_long|how_many_hours|how_much_time|how_many_minutes rest|resting|wait|settle|before_i_measure|before_i_read|before_i_test|is_some -charger -full_charge -to_charge -solar',
      'wait before|until measure*|read|reading|test* -rain',
    ],
    hasAnyFigures: true,
    says: 'An hour at least after a load, a few hours after charging, with nothing on; overnight is best.',
    lines: [
      'Just off a charger it reads high, just after a load low. Solar counts as charging: read it at dawn.',
    ],
    next: ['12.5V agm at rest, how full?'],
  },
  {
    name: 'just-off-the-charger',
    spots: [
      'came_off|come_off|taken_off|took_off|unplugged|off_the_charger|stopped_charging just|now|minute* -how_long',
    ],
    says: 'Too soon to tell: just off the charger it reads high. Let it rest a few hours, then read it.',
    lines: [
      'Or switch a light on for ten minutes, off again, and read it after half an hour: that is a fair guess.',
    ],
    next: ['12.5V agm at rest, how full?'],
  },
  {
    name: 'set-the-monitor',
    spots: [
      'how|when reset|sync|resync|synchronise|synchronize|calibrate|recalibrate|zero monitor|shunt|meter|gauge|app|it',
      'reset|sync|calibrate monitor|shunt|gauge|meter',
    ],
    says: 'Charge it right up, wait till it takes only a few amps, then set the monitor to 100 %.',
    lines: [
      'Its menu calls that “synchronise” or “set to 100 %”; many do it by themselves once capacity and charge volts are set.',
      'Do it again every few weeks: each one drifts a little.',
    ],
    next: ['what is a shunt?'],
  },
  {
    name: 'whom-to-trust',
    spots: [
      'trust|believe|lie|lying|lies|which_one_is_right|which_is_right|disagree|dont_match|dont_agree percent*|shunt|monitor|meter|reading|app|one|ones|which|it|volts|the',
      'cold|heat|frost percent*|reading hurt|affect|change|wrong|off',
    ],
    says: 'Neither blindly: a shunt drifts until it is set at full, and volts tell little on lithium.',
    lines: [
      'Where they differ much, it is mostly the shunt: charge right up and set it to 100 %, and check the Ah it was told.',
      'Lithium under 12.8 V at rest, or AGM under 12 V, is nearly empty whatever the screen says: charge it.',
    ],
    next: ['what is a shunt?'],
  },
  {
    name: 'what-the-percent-is',
    spots: [
      'what mean|means percent|it screen|display|app|monitor|gauge -volts -v -how_full -fridge -amps',
      'half_of_what|percent_of_what|of_what',
    ],
    says: facts => {
      const told = facts.batteries?.find(b => b.stateOfChargePercent !== undefined)?.stateOfChargePercent;
      return told === undefined
        ? 'It is how much of the full battery is left in it, not how much you may use.'
        : `It is what is left of the full battery: ${told} % of a 100 Ah one is ${told} Ah.`;
    },
    lines: [
      'Not all of it is for use: stop at about 50 % with AGM or lead-acid, at about 20 % with lithium.',
    ],
    next: ['what is depth of discharge?'],
  },
  {
    name: 'store-at',
    spots: [
      'store|stored|storing|storage|winter|parked|shed|put_away|laid_up|unused|not_using|leave_it_at full|half|percent|charge|what_do_i_do|best|before|until|till|from|months|enough|ok|okay|right -lights -how_long -how_full -drive -left_after',
      'full or half -is_it -reads -reading -how_full -volt*',
    ],
    hasAnyFigures: true,
    when: ({ volts }) => volts === undefined,
    says: byKind(
      'Store lead-acid full, and charge it right up again every two or three months.',
      'Store lithium about half full, 40 to 60 %, and look at it every few months.',
      'AGM and lead-acid: store it full. Lithium, drone packs and phones: about half full.',
    ),
    lines: linesByKind(
      'Standing partly charged ruins lead-acid within months. A charged one doesn’t freeze.',
      'Full for months ages lithium a little; empty ruins it. Cold does it no harm if it isn’t charged below 0 °C.',
    ),
    next: ['what is float?'],
  },
  {
    name: 'left-on-charge',
    spots: [
      'float|on_charge|on_the_charger|plugged_in|trickle ok|okay|safe|all_week|all_the_time|never|always|leave|away|weeks|months -volt* -reads -reading -screen',
    ],
    says: byKind(
      'Yes, if the charger changes to float by itself (about 13.5 V): that harms no lead-acid battery.',
      'Better not for weeks: lithium needs no float. Charge it, then take the charger off.',
      'On a charger that floats by itself, yes for lead-acid; lithium is better taken off once full.',
    ),
    lines: [
      'A plain charger that never changes over boils lead-acid dry: take that one off when it’s full.',
      'Charge where there’s air about it, and look at it now and then: warm, swollen or smelling, switch it off.',
    ],
    next: ['what is float?'],
  },
  {
    name: 'fridge-cut-out',
    spots: [
      'fridge|freezer|second_battery|protection cutoff|cut_off|cut_out|cutout|protection|protect low|lo|med|medium|high|hi',
      'low|med|medium|high fridge|freezer set|setting|on|which second|house|starter|lithium|agm|battery',
    ],
    hasAnyFigures: true,
    when: ({ volts }) => volts === undefined,
    says: byKind(
      'Medium on a lead-acid second battery, high on the one that starts the engine.',
      'Low or medium on lithium: its BMS protects it. High is for the battery that starts the engine.',
      'Medium on a lead-acid second battery, low on lithium, high on the one that starts the engine.',
    ),
    lines: [
      'It is where the fridge switches off: low about 10.5 V, medium about 11 V, high about 11.8 V on most; see its sheet.',
      'Stops it with the battery nearly full? Thin cable loses volts on the way.',
    ],
    next: ['what is voltage drop?'],
  },
  {
    name: 'flat-volts',
    spots: [
      'volt*|volts|v|reading|number flat|empty|dead what|whats|which|when|counts -reads -stop -my -mine',
    ],
    says: byKind(
      'Flat at rest is about 11.6 to 11.8 V on lead-acid; stop at half, 12.2 V.',
      'Flat is under about 12 V at rest on lithium; stop at about 20 %, 12.9 V.',
      'Flat at rest is about 11.6 to 11.8 V on lead-acid, under about 12 V on lithium.',
    ),
    lines: [
      'Stop well before that: 12.2 V on lead-acid, 12.9 V on lithium, both at rest.',
      'Left flat for days lead-acid is ruined: charge it at once.',
    ],
    next: ['12.5V agm at rest, how full?'],
  },
  {
    name: 'half-volts',
    spots: [
      'know|tell|see its_half|is_half|when_half|half_full|half_empty|half_way|half -left -how_long -how_many -how_much -used',
      'what|whats|which volt*|volts|v|number half -left -is_it -reads -reading',
    ],
    says: byKind(
      'Half at rest is about 12.2 V on lead-acid, a few hours after charging with nothing on.',
      'Half at rest is about 13.1 V on lithium, but that is only a hint: a shunt monitor tells.',
      'Half at rest is about 12.2 V on lead-acid and 13.1 V on lithium.',
    ),
    lines: ['With a fridge running it reads 0.1 to 0.3 V lower.'],
    next: ['what is a shunt?'],
  },
  {
    name: 'dots',
    spots: ['dots|bars|leds|lights power_bank*|powerbank*|dots of|left|show*|says'],
    hasAnyFigures: true,
    when: ({ volts }) => volts === undefined,
    says: 'Each dot of four is about a quarter: three lit is somewhere from 50 to 75 %.',
    lines: ['They go by volts, so read them with nothing plugged in.'],
  },
  {
    name: 'always-the-same',
    spots: [
      'stuck|never_moves|never_changes|doesnt_move|doesnt_change|all_the_time|always_says|hardly_moves lithium|lifepo*|lfp volt*|v|reads|says|meter|it',
    ],
    hasAnyFigures: true,
    when: facts => isLithium(facts) === true && (facts.volts ?? 13.2) > 12.9 && (facts.volts ?? 13.2) < 13.5,
    says: 'No, that’s lithium: it reads 13.1 to 13.3 V at rest for most of its charge.',
    lines: ['So volts tell little of how full it is: a shunt monitor, which counts amp hours, really tells.'],
    next: ['what is a shunt?'],
  },
  {
    name: 'stop-at',
    spots: [
      'how_low|how_far_down|lowest|how_deep -temp* -cold -degrees -am_i -am -gone',
      'volt*|volts|number|percent|v|where|point stop|stopping|cut_it|cut_them what|whats|which|at|when|safe',
      'volt*|volts|number|percent|v|point turn|switch off what|whats|which|at|when',
      'cutoff|cut_off|low_med|low_or_high|med_or_high what|whats|which|set|where|for|should|so -low_volt* -low_cut -alarm',
      'you_said stop|limit',
      'stop or|percent -start -driv*',
      'is_that_ok_on|is_it_ok_on|same_for|same_on|same_with agm|lithium|lead|gel',
      'which for power_bank|battery_box|car_battery|lithium|agm -better',
    ],
    says: byKind(
      'Stop at half: about 12.2 V at rest on AGM, gel or lead-acid, or 12 V with a fridge running.',
      'Stop at about 20 % with lithium, near 12.9 V at rest; a monitor tells that better than volts.',
      'Stop at half with AGM or lead-acid (12.2 V at rest), at about 20 % with lithium (12.9 V).',
    ),
    lines: linesByKind(
      'Lower now and then does little harm if you charge it soon; often, it wears lead-acid out fast.',
      'Running it flat only makes the BMS switch off; charge it within days then.',
    ),
    next: ['what is depth of discharge?', '12.5V agm at rest, how full?'],
  },
  {
    name: 'full-volts',
    spots: [
      'full|fully_charged|hundred_percent|charged volt*|v|volts|read|reading|resting|number what|whats|which|should -how_full -half -empty -mine -percent -left_after -thirds',
      'how|when know|tell|sure really|actually|properly|truly full|charged -how_full -from_volts',
    ],
    says: byKind(
      'Full at rest is about 12.7 to 12.9 V on AGM, gel or lead-acid.',
      'Full at rest is about 13.3 to 13.5 V on lithium.',
      'At rest, full is about 12.7 to 12.9 V for AGM or lead-acid, and 13.3 to 13.5 V for lithium.',
    ),
    lines: linesByKind(
      'Read it a few hours after charging, with nothing on. On the charger: full when it takes only a few amps at 14.2 to 14.7 V.',
      'Lithium sits near that for most of its charge: it is really full when it takes only a few amps at 14.2 to 14.6 V.',
    ),
    next: ['12.5V agm at rest, how full?', 'what is float?'],
  },
  ...settingAsides,
];
