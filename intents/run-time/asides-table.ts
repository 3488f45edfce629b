import type { Aside } from '../asides.ts';
import { coldByNight } from '../cold-by-night.ts';
import { coldThrift } from '../cold-thrift.ts';
import { humidified } from '../humidifier.ts';

/** What is asked of a time to run beside the sum. Common practice. */
export const lastingAsides: readonly Aside[] = [
  ...coldByNight,
  {
    name: 'why-half',
    spots: [
      'why half|only_half|just_half|stop_at_half',
      'really|actually|full|all_of_it usable|use_all|can_be_used|mine_to_use -how_long -fridge',
      'what_happens_if|what_if|can_i|may_i|cant_you|surely|surely_one_can past_half|under_half|below_half|more_than_half',
    ],
    says: facts => {
      const kind = facts.batteries?.find(({ chemistry }) => chemistry !== undefined)?.chemistry;
      return kind === 'lfp'
        ? 'Lithium gives about 80 %: the last fifth is kept so that its BMS doesn’t cut you off.'
        : 'Because taken under half, lead-acid wears out fast; lithium gives about 80 % of its label.';
    },
    lines: [
      'Used to half AGM gives about 600 cycles, used to 80 % far fewer. Once in a pinch does little harm if it’s charged soon.',
    ],
    next: ['what is depth of discharge?', 'agm or lithium?'],
  },
  {
    name: 'in-and-out',
    spots: [
      'charging|charge|plugged_in|pass_through using|running|use|run|drawing same_time|at_once|pass_through|and_running_off',
    ],
    hasAnyFigures: true,
    says: 'Yes, most can: what comes in feeds what runs, and only the difference is drawn or stored.',
    lines: [
      'More out than in: it empties by the difference. 90 W in and 110 W out take 20 W from it.',
      'Power stations warm up doing both: give it air, and see its sheet on “pass-through”.',
    ],
    next: ['500Wh power station, 40W fridge, how long?'],
  },
  {
    name: 'inverter-alone',
    spots: ['how_long inverter run|last|go|be_on|stay_on -fridge -tv -laptop -kettle -aircon -off_a -on_a'],
    when: ({ loads, batteries }) => !loads?.length && !batteries?.some(b => b.capacityAh !== undefined),
    hasAnyFigures: true,
    says: 'As long as what’s plugged in lets it: with nothing on it still takes 5 to 15 Ah a night.',
    lines: [
      'Watts times hours, divided by 10, are the Ah it takes: 1000 W empty a 100 Ah lithium in under an hour.',
      'Tell me what you plug in and your battery, and I’ll say how long.',
    ],
    next: ['1000W for 30 minutes off 100Ah lithium'],
  },
  ...humidified,
  ...coldThrift,
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
      'time_to_go|time_remaining how|what work_out|works_it_out|work_that_out|calculate*|mean*|know',
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
