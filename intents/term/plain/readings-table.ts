import type { PlainQuestion } from './plain-question.ts';

/** What meters and screens show, and what it means. */
export const readingQuestions: readonly PlainQuestion[] = [
  {
    name: 'minus-current',
    spots: [
      'minus|negative mean|means|meaning -pole -post -terminal -lead -cable -wire -earth',
      'is_it|current|amps in_or_out -plug -pull -power_bank',
      'charging_or_discharging|discharging_or_charging|going_in_or_coming|going_in_or_out|coming_in_or_going',
      'negative|minus going_out right|yes|true',
      'minus_sign|negative_number|negative_amps|negative_current|minus_in_front',
      'why|whats|what minus|negative screen|monitor|display|shunt|app -everything_off -all_off -nothing_on -eating -drawing -using -pole -post -terminal -how_long -how_many -lead',
    ],
    hasAnyFigures: true,
    says: 'The minus means that current is going out of the battery: you’re using more than comes in.',
    lines: [
      'No sign, or a plus, means it is charging. With everything off it should be near zero.',
      'A few monitors are set up the other way round: switch on a light and see which way the number moves.',
    ],
    next: ['what is a shunt?'],
  },
  {
    name: 'cut-off',
    spots: [
      'cutoff|cut_off|cutout|cut_out|lvd|low_voltage_disconnect|low_voltage_cut* what|whats|mean*|explain -why -keeps -my',
    ],
    says: 'Cut-off voltage (LVD on some) is where a thing switches itself off to save the battery.',
    lines: [
      'Fridges let you choose, from about 10.5 to 11.8 V; inverters stop at about 10.5 to 11 V, a lithium battery’s BMS at about 10 V.',
      'On a second battery set the fridge to low or medium; on the only starter battery to high, so that the car still starts.',
      'Long thin cable makes it cut off early: the fridge sees fewer volts than the battery has.',
    ],
    next: ['what is voltage drop?', 'my fridge cuts out at night'],
  },
  {
    name: 'full-volts',
    spots: [
      'what|whats volt*|reading|read|v full|fully_charged|hundred_percent|charged_up should|be|when|mean* batter*|agm|lithium|gel',
      'full_charge_voltage|fully_charged_voltage|voltage_of_a_full|volts_when_full',
    ],
    says: 'At rest, full is about 12.7 to 12.9 V for AGM or lead-acid, and 13.3 to 13.5 V for lithium.',
    lines: [
      'At rest means an hour or more with nothing charging and nothing running.',
      'On the charger it reads more, about 14.2 to 14.6 V, and that says nothing of how full it is yet.',
      'Tell me a reading and the kind of battery, and I’ll say how full it is.',
    ],
    next: ['12.5V agm at rest, how full?', 'what is float?'],
  },
  {
    name: 'stop-at',
    spots: [
      'how_low|how_far_down|how_flat|how_deep|lowest can|should|safe|ok|take|let batter*|agm|lithium|gel|lead_acid -temp* -cold -start* -crank* -would -does',
      'when|what_percent*|what_voltage|which_volts|what_volts should stop|turn_off|switch_off|recharge|charge_it batter*|agm|lithium -long -drive',
    ],
    says: 'Stop at half with AGM or lead-acid (12.2 V at rest), at about 20 % with lithium.',
    lines: [
      'Lead-acid wears out fast when it goes lower often; a lithium battery only switches off when it is empty.',
      'Lithium’s volts hardly tell: go by a monitor that counts amp hours, or stop by 12.9 V at rest.',
    ],
    next: ['what is depth of discharge?', 'what is a shunt?'],
  },
  {
    name: 'how-full-at-all',
    spots: [
      'how know|tell|check|measure|find_out|see full|charged|left|charge_level|state_of_charge|percent*|much batter*|it -stuffed -bad -dead -dying -solar -panel*',
    ],
    says: 'Best with a shunt monitor, which counts amp hours; a voltmeter gives a fair guess on lead-acid.',
    lines: [
      'Read the volts after an hour with nothing on and nothing charging: AGM 12.8 V is full, 12.2 V about half, 11.9 V nearly flat.',
      'Lithium sits near 13 to 13.3 V nearly all the way down, so volts tell little there.',
    ],
    next: ['what is a shunt?', '12.5V agm at rest, how full?'],
  },
  {
    name: 'controller-rating',
    spots: [
      'what|whats|mean* amp|a|amps|rating|rated|number controller|regulator|mppt|pwm mean*|stand_for|stands_for|rated|rating -midday -noon -sun -morning -shows -reads -says -screen -now',
    ],
    hasAnyFigures: true,
    says: 'That is the most current it can pass to the battery: 20 A suits about 260 W of panel at 12 V.',
    lines: [
      'More panel than that does no harm by its watts: the controller just holds it back. Panel volts over its limit do harm it.',
      'Rule of thumb: panel watts divided by 13 are the amps it needs.',
    ],
    next: ['what is a PWM controller?', '2x 160W panels, series or parallel?'],
  },
  {
    name: 'drop-ok',
    spots: [
      'drop|loss|lost hurt|harm|matter|affect|ok|okay|fine|alright|bad|acceptable|too_much|allowed|normal|good percent|percentage|volt|volts|voltage|cable|drop -size -mm -gauge -awg -what_cable -long -m -metres -meters -temp* -dying -lithium -agm',
      'how_much|what|whats|max* drop|voltage_drop acceptable|ok|okay|allowed|allowable|too_much|normal -size',
    ],
    hasAnyFigures: true,
    says: 'Up to 3 % is good, up to 5 % will do for lights and a fridge; over that, fit thicker cable.',
    lines: [
      'On 12 V 3 % is about 0.36 V and 5 % about 0.6 V.',
      'For a charger or a big inverter keep it within 3 %: they lose time or cut out with more.',
    ],
    next: ['what is voltage drop?', 'what cable for 10A over 5 m?'],
  },
  {
    name: 'float',
    spots: [
      'float solar|controller|regulator|charger|says|shows|showing|already|morning right|ok|okay|normal|bad|good|why|should|early -volt* -difference',
    ],
    hasAnyFigures: true,
    says: 'Float means the battery is full and is only kept there: that is right, if little was used.',
    lines: [
      'If it was low this morning, float comes too early: set the controller to your kind of battery, and check for thin cable to the battery.',
      'See with a load: switch something on in the sun, and the amps from the panel must rise.',
    ],
    next: ['what is float?', 'what is absorption?'],
  },
  {
    name: 'read-volts',
    spots: [
      'multimeter never_used|how_to_use|how_do_i_use|how_do_i_do_that|dont_know_how -fuse -panel* -solar',
      'how read|measure|check|test voltage|volts|multimeter -how_full -full -drop -panel* -solar -fuse',
    ],
    says: 'Set a multimeter to 20 V DC, put red on the battery’s plus and black on its minus, and read it.',
    lines: [
      'For how full it is, read it with nothing on and nothing charging for an hour.',
      'Then tell me the volts and the kind of battery. A plug-in meter at a socket reads a little low.',
    ],
    next: ['12.5V agm at rest, how full?'],
  },
  {
    name: 'reset-the-monitor',
    spots: ['how|where|when reset|calibrate|zero|synchronise|sync monitor|shunt|battery_meter|percent*'],
    isBeforeSums: true,
    says: 'Charge the battery right up, then set the monitor to 100 % in its menu (“sync” or “reset”).',
    lines: [
      'Enter the amp hours on the battery’s label first, and zero the current with everything off.',
      'Do it again every few weeks: a shunt drifts without a full charge now and then.',
    ],
    next: ['what is a shunt?'],
  },
  {
    name: 'what-it-uses',
    spots: [
      'how work_out|find_out|know|measure|calculate|figure_out|tell uses|use|using|draws|draw|drawing|power|amps -batter* -panel* -solar -full -left -charge* -fuse*',
    ],
    says: 'Look at its label: watts divided by 12 are its amps, and amps times hours are the amp hours used.',
    lines: [
      'A 60 W telly draws about 5 A: three hours take about 15 Ah.',
      'No label? A clamp meter on the plus wire shows it, or watch a battery monitor as you switch the thing on.',
      'Tell me what you’ve got, and I’ll add up the day.',
    ],
    next: ['what does a fridge use a day?', 'what is 60W in amps?'],
  },
];
