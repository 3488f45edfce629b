import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { boiling } from '../boiling.ts';
import { coldByNight } from '../cold-by-night.ts';
import { coldThrift } from '../cold-thrift.ts';
import { cools } from '../facts.ts';
import { humidified } from '../humidifier.ts';

const hasCooler = ({ loads = [] }: Facts): boolean =>
  loads.length === 0 || loads.some(({ name }) => cools(name));

/** What is asked of a day's use beside the sum. Common practice. */
export const useAsides: readonly Aside[] = [
  ...coldByNight,
  ...humidified,
  {
    name: 'gas-fridge-on-gas',
    spots: [
      'on_gas|on_the_gas|gas_setting|gas_mode use|uses|any|need|needs|draw|take|still|does -only_lights -so_only',
    ],
    hasAnyFigures: true,
    says: 'On gas hardly any: nothing on old ones, about ¼ A for the board of newer ones, 6 Ah a day.',
    lines: [
      'Frame heaters and fans of some take more: look for a switch, and see its sheet.',
      'Gas burns outside air and is vented outside, by its maker’s and local rules.',
    ],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'cooled-at-home',
    spots: [
      'at_home|before_we_go|before_we_leave|before_i_leave|on_mains|before_we_set_off cool|chill|cold|cools|freeze|frozen -how_long',
    ],
    hasAnyFigures: true,
    says: 'Yes: cool the fridge and all that goes in it on mains; that saves about 10 to 20 Ah.',
    lines: ['Warm food or drink takes about 1½ Ah a kilo to cool: a slab of 24 cans about 15 Ah.'],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'fridge-warmer',
    spots: [
      'warmer|colder|notch|turned_it_down|turn_it_down|setting|temp* save|saves|worth|more|less|better|should|most|best -how_long -hot -outside -cut* -inverter',
      'fridge|freezer set or save|saves|better|most',
    ],
    hasAnyFigures: true,
    when: facts => hasCooler(facts) && facts.ambientC === undefined,
    says: 'Each degree warmer saves about a twentieth, each degree colder takes a twentieth more.',
    lines: [
      '4 to 7 °C saves about a seventh; but milk and meat keep safely only at 5 °C or below.',
      'A freezer at −12 °C in place of −18 °C takes about a seventh less: fine for some days.',
    ],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'what-takes-most',
    spots: [
      'what|which|whats|biggest uses|takes|draws|eats|biggest|using most|biggest_bit|biggest_part|biggest_user|the_lion* -percent -panel*',
      'where_is_it_going|wheres_it_going|where_does_it_go|where_it_goes',
    ],
    // Of things that are told the sum says which.
    when: ({ loads = [] }) => loads.length < 2,
    says: 'Mostly the fridge: half or more of a day. Then heat and inverters, fans, screens, lights last.',
    lines: [
      'A fridge about 31 Ah a day in mild weather; a kettle or toaster 8 to 10 Ah each time; an idle inverter 5 to 15 Ah a night.',
      'Tell me what runs and for how long, and I’ll say which takes most.',
    ],
    next: ['fridge, lights and laptop, what do I use a day?'],
  },
  {
    name: 'monitor-itself',
    spots: [
      'monitor|shunt|meter|display itself|flatten|drain|use_any|use_much|draw|draws -says -shows -reads -tell -fridge -how_do -with',
    ],
    says: 'Hardly: a monitor takes about 0.01 A, some ¼ Ah a day; with Bluetooth or a lit screen more.',
    lines: ['On 100 Ah that is a month’s 7 %: for storage charge it full first, or pull its fuse.'],
    next: ['what is a shunt?'],
  },
  {
    name: 'dimmed',
    spots: ['dim|dimmed|dimming|dimmer light|lights|leds|led|lamps|they|it less|save|saves|use|uses|help'],
    hasAnyFigures: true,
    says: 'LEDs yes, nearly in step: at half the light about half the amps. Old globes save less.',
    lines: ['LED strips of a metre take ¼ to ¾ A at full: dimmed, an evening is an amp hour or two.'],
    next: ['what do lights use a day?'],
  },
  {
    name: 'led-for-globes',
    spots: [
      'swap|swapped|swapping|change|changed|changing|replace|replaced led|leds worth|save|saves|better|difference',
    ],
    hasAnyFigures: true,
    says: 'Yes: an LED gives the same light for about a seventh: 3 W in place of 20 W.',
    lines: ['Four globes of 20 W for 4 hours take about 27 Ah an evening, LEDs about 4 Ah.'],
    next: ['what do lights use a day?'],
  },
  {
    name: 'how-to-cut',
    spots: [
      'how cut_it_down|cut_down|use_less|reduce|bring_it_down|get_it_down|save|saving power|it|use|down|battery|less -panel* -money',
    ],
    hasAnyFigures: true,
    says: 'Start with the fridge: shade, air around it, packed cold, 4 °C and kept shut save most.',
    lines: [
      'Then the inverter: off when not in use, and 12 V chargers in place of mains ones. Kettle and toast on gas, outside.',
      'Lights to LED; fans on low take a quarter of what they take on high.',
    ],
    next: ['what do I use a day?'],
  },
  {
    name: 'no-label',
    spots: [
      'how|what|where find|find_out|work_out|measure|ask|tell|know watts|amps|draws|draw|it_draws|sticker|label -add -per_day -a_day -last',
      'no_sticker|no_label|labels_gone|label_gone|no_plate|sticker_is_gone -roughly -use -uses -need -needs',
    ],
    hasAnyFigures: true,
    says: 'Measure it: a monitor or a clamp meter for DC on its lead, with only that thing running.',
    lines: [
      'Mains things: a plug-in meter tells the watts, and over a day the watt hours. The fuse tells only the most it takes.',
      'Till then: a 40 L fridge about 45 W while it runs and 31 Ah a day, by its size and the heat.',
    ],
    next: ['what does a fridge use a day?'],
  },
  ...boiling,
  {
    name: 'off-first',
    spots: ['what|which turn|switch|unplug|cut|drop off_first|first -how_long -panel* -solar -volt*'],
    hasAnyFigures: true,
    says: 'First what makes heat or runs through an inverter, then fans and lights; the fridge last.',
    lines: [
      'The fridge takes most, but what’s in it spoils: shut, shaded and two degrees warmer it takes less.',
    ],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'inverter-idle',
    spots: [
      'inverter on_its_own|by_itself|itself|standby|idle|idling|nothing how_much|what|eat|eats|take|takes|draw|use|uses|bad -amp -volt*',
    ],
    says: 'About ½ to 1½ A while it’s on, 5 to 15 Ah a night; big ones take the most.',
    lines: ['Switch it off when you’re done. Tell me its amps, and I’ll say what that is a day.'],
    next: ['what is idle draw?'],
  },
  ...coldThrift,
];
