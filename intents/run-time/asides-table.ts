import type { Aside } from '../asides.ts';
import { coldByNight } from '../cold-by-night.ts';

/** What is asked of a time to run beside the sum. Common practice. */
export const lastingAsides: readonly Aside[] = [
  ...coldByNight,
  {
    name: 'jump-pack',
    spots: [
      'jump_pack|jump_starter|jumper_pack|booster_pack|jump_box run|charge|power|fridge|phone|phones|use -start -jump_it -jump_the',
    ],
    says: 'Phones and a light yes, by its USB; a fridge no: a jump pack holds only about 40 to 75 Wh.',
    lines: [
      'That runs a fridge for two or three hours at best, and most give no steady 12 V for it.',
      'Keep it charged for starting: use a power bank for phones.',
    ],
    next: ['what battery do I need for a fridge?'],
  },
  {
    name: 'engine-battery-for-camp',
    spots: [
      'car_battery|truck_battery|starter_battery|start_battery|starting_battery|tractor_battery|cranking_battery good|ordinary|normal|use|could|can|any|instead -still -start -how_long -will_it -jump',
    ],
    says: 'For an evening, yes; for days no: a starting battery is worn out by a few dozen deep runs.',
    lines: [
      'Take only about a quarter of it each time, so a 70 Ah one gives about 18 Ah: half a day of fridge.',
      'One that starts an engine: keep what the engine needs in it.',
    ],
    cautions: ['starter-reserve'],
    next: ['what second battery do I need?', 'agm or lithium?'],
  },
  {
    name: 'marine-battery',
    spots: ['marine|boat batter* could|can|run|use|fridge|camp -trolling -how_long'],
    says: 'Yes if it says deep cycle or dual purpose; a marine cranking one wears out fast that way.',
    lines: [
      'Use half of its amp hours and charge it right up after. Tell me its Ah, and I’ll say for how long.',
    ],
    next: ['fridge, 100Ah, 3 days?'],
  },
  {
    name: 'time-to-go',
    spots: [
      'time_to_go|time_remaining|time_left|hours_left|tells_me|says trust|believe|right|accurate|real|true -volts',
    ],
    hasAnyFigures: true,
    says: 'As a rough guess: it counts on the draw of the last minutes going on just so.',
    lines: [
      'A fridge that starts or stops makes it jump: look at it over an hour or two.',
      'It is right only if the monitor knows the battery’s Ah and was set at full.',
    ],
    next: ['what is a shunt?'],
  },
  {
    name: 'off-first',
    spots: ['what|which turn|switch|unplug|cut|drop off|first|out -how_long -order -panel* -solar -volt*'],
    says: 'First what makes heat or runs through an inverter, then fans and lights; the fridge last.',
    lines: [
      'Fridge: shut, shaded, two degrees warmer. Kettle, toaster, hair dryer, inverter: off altogether.',
      'Tell me what’s on and its watts, and I’ll say what each one takes.',
    ],
    next: ['what do I use a day?'],
  },
  {
    name: 'standing-unused',
    spots: [
      'how_long sit|stand|parked|stored|left|last everything_off|all_off|nothing_on|no_charge|disconnected|switched_off -fridge -monitor',
    ],
    says: 'Leads off, full AGM stands about six months, lithium a year; left connected, weeks.',
    lines: [
      'By themselves they lose 2 to 3 % a month. Alarms, radios and sensors take ½ to 2 Ah a day.',
      'Top lead-acid up every two or three months.',
    ],
    next: ['how do I store a battery?'],
  },
  {
    name: 'small-drain',
    spots: [
      'usb|socket|blue_light|standby|clock|stereo flatten|drain|kill|flat month|weeks|week|winter|storage -how_many',
    ],
    says: 'A socket with a light takes about ½ Ah a day, 15 Ah a month: unplug it for storage.',
    lines: [
      'On a camp battery of 100 Ah nothing for a week; a starter battery may not start after a month of it.',
    ],
    next: ['what is idle draw?'],
  },
];
