import { applianceOf } from '#catalog/appliances.ts';
import { plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';

/** Hours of a night that an inverter is left on for nothing. Common practice. */
const nightH = 10;

const idle = ({ loads = [] }: Facts): string => {
  const told = loads.find(({ name, currentA }) => name === 'inverter' && currentA !== undefined)?.currentA;
  return told === undefined
    ? 'An inverter that is on takes about ½ to 1½ A by itself: 5 to 15 Ah a night with nothing on it.'
    : `Yes, switch it off: ${plain(told)} A all night long is about ${plain(told * nightH)} Ah for nothing.`;
};

/** Things on 12 V beside an inverter that is big for them. */
const needless = ({ loads = [] }: Facts): string => {
  const [only, other] = loads;
  if (!only) return 'What is made for 12 V needs no inverter: it runs straight off the battery.';
  const runs = !other ? `the ${only.name} runs` : 'those run';
  return `You need no inverter for that: ${runs} straight off 12 V.`;
};

/** What a thing makes of a modified wave, by the catalogue; of what it doesn't tell, pure sine is the safe one. */
const wave = ({ loads: [load, other] = [] }: Facts): string => {
  const row = load && !other ? applianceOf(load.name) : undefined;
  if (load === undefined || row === undefined)
    return 'Get pure sine: it runs everything. Modified sine is only for plain heaters and lamps.';
  if (row.isMedical) return `Pure sine for the ${load.name}: on modified sine it can run hot, fail or stop.`;
  if (row.needsSine) return `Pure sine for the ${load.name}: on modified sine it hums, runs hot or fails.`;
  return isPlainHeater(load.name)
    ? `Modified sine will do for the ${load.name}: it only makes heat. Pure sine runs everything.`
    : `Pure sine for the ${load.name}: its maker may not allow modified sine, and it can run hot.`;
};

/** Things that only make heat, with no motor and no electronics worth naming. Common practice. */
const heaters: ReadonlySet<string> = new Set(['kettle', 'toaster', 'iron', 'sandwich press']);
const isPlainHeater = (name: string): boolean => heaters.has(applianceOf(name)?.id ?? '');

/** What is asked of inverters beside what they run and take. Common practice. */
export const inverterAsides: readonly Aside[] = [
  {
    name: 'first-spark',
    spots: [
      'spark|sparks|sparked|sparking inverter|connect|connected|hook|terminal|first|post -smell* -smok* -hot -melt*',
    ],
    hasAnyFigures: true,
    says: 'Normal at the first touch: the inverter’s capacitors fill in a blink and draw a spark.',
    lines: [
      'Join it switched off, with the battery’s gas aired out, and the last bolt where none collects.',
      'Sparks later, a crackle or heat are a loose joint: isolate it and tighten that.',
    ],
    cautions: ['battery-gas'],
  },
  {
    name: 'asleep-beside-it',
    spots: [
      'sleep|asleep|bed|bedside|bunk inverter|it next|beside|near|by|with|under|on -generator -genny -engine -smell* -hot -cpap -size -truck_bed -what',
    ],
    hasAnyFigures: true,
    says: 'It gives off no fumes: mind only its fan, its warmth and free air, with a smoke alarm near.',
    lines: ['Off is better where nothing needs it: on, it takes ½ to 1½ A all night for itself.'],
  },
  {
    name: 'why-above-its-label',
    spots: ['why|whys|how_come|where more_than|take_more|draw_more|takes_more|draws_more|rest_of_it'],
    when: ({ loads = [] }) => loads.some(({ name }) => applianceOf(name)?.inputFactor !== undefined),
    hasAnyFigures: true,
    says: 'Its watts are what it cooks with: at the plug a microwave draws about one and a half times that.',
    lines: [
      'The rest turns to heat in the works. The plate at the back tells the input, and that is what counts here.',
    ],
  },
  {
    name: 'start-of-electronics',
    spots: [
      'surge|start_up|startup|inrush laptop|tv|telly|phone|charger|lamp|light|led|console is_there|even|does|have|has|any|need',
    ],
    says: 'Next to none: electronics and heaters start at their watts. Motors take several times theirs.',
    lines: ['So go by the watts on its brick, with a quarter to spare.'],
    next: ['what inverter for a 900W microwave?'],
  },
  {
    name: 'needs-none',
    spots: ['overkill|need_an_inverter|without_an_inverter|without_inverter'],
    when: ({ loads = [] }) => loads.length > 0 && loads.every(({ supply }) => supply === 'dc'),
    hasAnyFigures: true,
    says: needless,
    lines: [
      'Through one it would take more: some 10 to 15 % is lost, and the inverter takes ½ to 1½ A for itself.',
    ],
    next: ['what fuse for a 10A fridge?'],
  },
  {
    name: 'idle-draw',
    spots: [
      'nothing_plugged|nothings_plugged|nothing_on|nothing_in|no_load|doing_nothing|standby|stand_by|by_itself|nothing_running use|uses|draw|draws|suck*|take|takes|eat|eats|consum*|pull|pulls|power|turn|switch',
      'inverter standby|idle|idling take|takes|use|uses|draw|draws|off|leave',
      'inverter how_much|much it_eat|eat_itself|itself',
      'inverter idle|idling how_much|amps|what|many',
    ],
    hasAnyFigures: true,
    says: idle,
    lines: [
      'Big ones take the most. Switch it off when you’re done; “eco” or “search” mode saves part of it.',
    ],
    next: ['what is idle draw?'],
  },
  {
    name: 'low-volts',
    spots: [
      'alarm|beep|beeps|beeping|cut_out|cuts_out|cut_off|cuts_off|low_voltage|shut_down|shuts_down at|when|set|setting|what|volts -start* -kettle -microwave -keeps -bms',
    ],
    hasAnyFigures: true,
    says: 'Most inverters warn at about 11 V and cut out at 10.5 V, both while they draw.',
    lines: ['That guards the inverter, not a lead battery: for its sake stop at about 12.1 V at rest.'],
  },
  {
    name: 'where',
    spots: [
      'inverter near|next_to|close_to|beside|where battery|mount|put|fit|go|goes|tv|plug|gear -drop -near_its -near_the_limit',
      'inverter near_the|nearer or',
    ],
    hasAnyFigures: true,
    says: 'Near the battery: its 12 V cables must be short and thick, and a mains lead may be long.',
    lines: ['Not in the box with a wet battery, and with air around it: within 1 to 1½ m is usual.'],
    cautions: ['fuse-at-battery'],
    next: ['what cable for a 1000W inverter, 1 m?'],
  },
  {
    name: 'room-around-it',
    spots: ['inverter room|space|clearance|gap|breathe|ventilat* around|need|needs|much|leave'],
    hasAnyFigures: true,
    says: 'A hand’s width all round, more at the fan’s ends: the hot air must be able to get away.',
    lines: ['Not shut up in a cupboard, and not in the box with a wet battery.'],
  },
  {
    name: 'wave',
    spots: [
      'pure|modified|mod|sine|sinewave|sine_wave|quasi|square_wave or|need|needed|for|ok|okay|care|fine|use|really|matter',
    ],
    when: (_, { facts }) =>
      facts.inverter?.powerW === undefined &&
      !facts.loads?.some(({ powerW, currentA }) => (powerW ?? currentA) !== undefined),
    hasAnyFigures: true,
    says: wave,
    lines: [
      'Motors, microwaves, laptop bricks, battery chargers and anything medical can run hot or fail on modified sine.',
      'Its label or leaflet tells which it is; if neither says pure, take it that it isn’t.',
    ],
  },
  {
    name: 'on-site-too',
    spots: [
      'hookup|hook_up|shore_power|mains|powered_site same_time|as_well|at_once|alongside|both inverter',
    ],
    hasAnyFigures: true,
    says: 'Yes, for what is plugged straight into the inverter: never join its output to the site’s mains.',
    lines: [
      'On hook-up the mains does it for less: leave the inverter off. A licensed electrician fits a changeover switch.',
    ],
  },
  {
    name: 'whose-volts',
    spots: [
      'inverter appliance|appliances|abroad|country|countries|overseas which|what volts|v|for|or -size -watts -big',
    ],
    hasAnyFigures: true,
    says: 'The volts that your appliances are marked for: 110–127 V, or 220–240 V. Never mix them.',
    lines: ['Chargers marked “100–240 V” run on either. The hertz matter to motors and clocks: 50 or 60.'],
  },
];
