import { decimals } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { fuelLh, litres } from './fuel.ts';

/** A usual generator and a usual night of it. Common practice. */
const usual = { powerW: 2000, hours: 8 } as const;
/** Longer than this is a stay and no time that it runs, h. */
const stayH = 24;

const drinks = ({ chargers = [], durationH }: Facts): string => {
  const powerW = chargers.find(({ kind }) => kind === 'generator')?.powerW ?? usual.powerW;
  const hours = durationH !== undefined && durationH < stayH ? durationH : usual.hours;
  const each = fuelLh(powerW);
  const all = litres({ low: each.low * hours, high: each.high * hours });
  return `A ${decimals(powerW / 1000, powerW % 1000 === 0 ? 0 : 1)} kW one drinks ${litres(each)} an hour: ${all} in ${decimals(hours, hours % 1 === 0 ? 0 : 1)} hours.`;
};

/** How long a litre lasts in the one told, or in a usual one. */
const eachLitre = ({ chargers = [] }: Facts): string => {
  const powerW = chargers.find(({ kind }) => kind === 'generator')?.powerW ?? usual.powerW;
  const { low, high } = fuelLh(powerW);
  return `A litre lasts about ${decimals(1 / high, 1)} to ${decimals(1 / low, 1)} hours in a ${decimals(powerW / 1000, powerW % 1000 === 0 ? 0 : 1)} kW one, by its load.`;
};

/** How far off makers and fire services have a generator stand at least, m. */
const leastM = 6;
/** Places that are never right, however far. */
const near = 'window|under|awning|annex*|inside|porch|doorway|tent_door|vent';

/** What people ask beside what generator they need. */
export const generatorAsides: readonly Aside[] = [
  {
    name: 'noise-and-neighbours',
    spots: [
      'neighbour*|neighbor*|annoy*|disturb*|complain* far|away|distance|close|near',
      'noise|loud|noisy|quiet|hear far|away|distance',
    ],
    when: ({ loads, chargers = [] }) =>
      loads === undefined && chargers.every(({ kind }) => kind === 'generator'),
    hasAnyFigures: true,
    says: 'As far as your lead allows, 6 m at the least: each doubling of the distance takes off about 6 dB.',
    lines: [
      '60 dB at 7 m is about 48 dB at 28 m, as loud as a quiet talk. Turn its exhaust away from people.',
    ],
    cautions: ['carbon-monoxide', 'park-rules'],
  },
  {
    name: 'how-loud',
    spots: [
      'how_loud|how_louds|how_noisy|how_quiet|much_noise|many_db|many_decibels -how_far -how_long -hours',
    ],
    says: 'A small inverter one is about 50 to 60 dB at 7 m, much like talking; an open-frame one 65 to 75.',
    lines: ['Most parks want 60 dB or less at 15 m. At half load it runs quieter: “eco” mode does that.'],
    cautions: ['carbon-monoxide', 'park-rules'],
  },
  {
    name: 'allowed',
    spots: ['forbidden|banned|illegal|against_the_rules|allowed_to|is_it_allowed|are_they_allowed'],
    when: ({ loads, chargers = [] }) =>
      loads === undefined && chargers.every(({ kind }) => kind === 'generator'),
    says: 'The site decides: most set quiet hours, often from 9 or 10 pm to 7 or 8 am, and some ban them.',
    lines: ['Ask the host or the ranger. A friendly word with the neighbour comes first.'],
    cautions: ['park-rules'],
  },
  {
    name: 'height',
    spots: [
      'altitude|high_up|up_high|height|elevation|above_sea|mountain|mountains cut|cuts|lose|loses|less|derate|affect|affects|power|weaker|matter|does',
    ],
    when: ({ loads, chargers = [] }) =>
      loads === undefined && chargers.every(({ kind }) => kind === 'generator'),
    hasAnyFigures: true,
    verdict: 'yes',
    says: 'Yes, about 1 % for each 100 m: a tenth is gone at 1000 m, nearly a fifth at 1800 m.',
    lines: ['Thin air, less petrol burnt. Tell me what it runs and how high, and I count it in.'],
    cautions: ['carbon-monoxide'],
  },
  {
    name: 'when-to-start-it',
    spots: [
      'what_point|what_percent|what_level|how_low|when_do_i|when_should_i turn_the|turn_on|turn_it_on|start|run|switch generator|genny|gennie',
    ],
    hasAnyFigures: true,
    says: 'At about 50 % for lead-acid, 20 to 30 % for lithium: an emptier battery takes the full amps longest.',
    lines: ['Stop at 80 to 90 %: the last part is slow, and wastes petrol. Solar or mains can finish it.'],
    cautions: ['carbon-monoxide', 'park-rules'],
  },
  {
    name: 'second-hand',
    spots: [
      'second_hand|secondhand|used_generator|used_genny|hours_on_it check|look|what|worth|buy|good -petrol -fuel -battery',
    ],
    hasAnyFigures: true,
    says: 'Start it cold, then load it to three quarters for ten minutes: steady, no smoke, no leaks.',
    lines: [
      'Its volts should stay within a tenth of the label. A few hundred hours with oil changes are no harm.',
    ],
    cautions: ['carbon-monoxide'],
  },
  {
    name: 'two-together',
    spots: [
      'two_generators|two_gennies|two_gennys|second_generator|both_generators|both_gennies parallel|linked|link|together|join|kit',
    ],
    hasAnyFigures: true,
    says: 'Only two inverter ones made for it, with their own maker’s parallel kit; never any other two.',
    lines: ['Out of step, one feeds the other and both may be wrecked. Or give each its own things to run.'],
    cautions: ['carbon-monoxide'],
  },
  {
    name: 'bigger-charger',
    spots: ['bigger_charger|larger_charger|bigger_chgr generator|genny|gennie|not|right'],
    verdict: 'yes',
    says: 'Yes: the charger’s amps set the pace. The generator only has to carry it, about 20 W for each amp.',
    lines: ['As big as the battery takes: about a third of a lead battery’s Ah, half of a lithium’s.'],
    cautions: ['carbon-monoxide'],
    next: ['what generator for a 40A charger?'],
  },
  {
    name: 'hours-on-a-tank',
    spots: ['how_long|last|lasts|hours|run litre*|liter*|l|tank|tankful|gallon|petrol_last -charger -size'],
    when: (_, { facts: { durationH, batteries, loads } }) => (durationH ?? batteries ?? loads) === undefined,
    hasAnyFigures: true,
    says: eachLitre,
    lines: [
      'Half load takes about half as much as full load. Its sheet tells yours; cool it before you refill.',
    ],
    cautions: ['carbon-monoxide', 'park-rules'],
  },
  {
    name: 'earth-stake',
    hasAnyFigures: true,
    spots: [
      'earth|earthed|earthing|grounded|grounding|earth_stake|earth_rod -cut* -pin -adaptor -on_the_ground -background -underground',
    ],
    says: 'Usually not, with things plugged straight into a small one: it needs no earth stake.',
    lines: [
      'Feeding a van’s own sockets is another matter: its safety switch may not work then. A licensed electrician decides on the link, to local code.',
      'Keep it and the plugs dry, and use a lead with its earth pin.',
    ],
    cautions: ['carbon-monoxide'],
  },
  {
    name: 'refuelling',
    spots: [
      'refuel*|fill_up|fill_it|fill_the|filling|petrol_in|fuel_in|top_it_up generator|genny|gennie|genset|it when|before|running|hot|while|bed|safe|safely -battery -batteries -charge -how_much -how_long -how_many',
    ],
    hasAnyFigures: true,
    says: 'In daylight, with it off and cool: never refuel one that is hot or running.',
    lines: [
      'Petrol on a hot exhaust flares up. Wipe up spills, and keep the can well away from tents and flames.',
    ],
    cautions: ['carbon-monoxide'],
  },
  {
    name: 'bigger-no-faster',
    spots: [
      'bigger|larger|stronger|more_powerful generator|genny|gennie|genset faster|quicker|sooner|speed*',
    ],
    hasAnyFigures: true,
    verdict: 'no',
    says: 'No: the charger’s amps set the pace, so a bigger generator charges no faster.',
    lines: [
      'It only has to carry the charger: about 20 W of generator for each amp. A bigger charger is quicker.',
    ],
    cautions: ['carbon-monoxide'],
    next: ['what generator for a 40A charger?'],
  },
  {
    name: 'fuel',
    spots: [
      'petrol|fuel|litre*|diesel how_much|how_many|per_hour|an_hour|a_night|drink|drinks|burn|burns -size -which',
    ],
    says: drinks,
    lines: [
      'Half load about ½ litre, full load a good litre. Its sheet tells yours; cool it before you refill.',
    ],
    cautions: ['carbon-monoxide', 'park-rules'],
  },
  {
    name: 'far-enough',
    spots: [
      `metre|metres|meters|m|yards|feet|ft|paces downwind|down_wind|away|off|open|hedge|grass -${near} -charger -run -upwind -how_much -how_long`,
    ],
    when: ({ loads }, { recognised: { mentions } }) => {
      const far = mentions.filter(({ dimension }) => dimension === 'length').map(({ value }) => value);
      return loads === undefined && far.length > 0 && far.every(metres => metres >= leastM);
    },
    says: 'Six metres or more is far enough, if it’s in the open and downwind, its exhaust pointing off.',
    lines: ['Check again when the wind turns, and have a carbon monoxide alarm where you sleep.'],
    cautions: ['carbon-monoxide'],
  },
  {
    name: 'too-near',
    spots: [
      'chain*|lock*|far|close|distance|near|metre*|metres -how_big -up_at -altitude -height -high -microwave -charger -run -how_much -how_long',
    ],
    when: ({ loads }) => loads === undefined,
    says: 'It must stand 6 m or more away, downwind, its exhaust pointing off, out in the open.',
    lines: [
      'A longer outdoor lead and a longer chain cost less than a night of its fumes. Have a carbon monoxide alarm.',
    ],
    cautions: ['carbon-monoxide'],
  },
  {
    name: 'backup',
    spots: [
      'make_up_the|make_up|shortfall|backup|back_up|bad_days|those_days|or_take_a|generator_instead|genny_instead',
    ],
    when: ({ chargers = [], loads }) => !loads?.length && chargers.every(({ kind }) => kind === 'generator'),
    verdict: 'yes',
    says: 'Yes: an hour with a 20 A charger on it puts in about 20 Ah, so two hours cover a grey day.',
    lines: ['An 800 W one runs such a charger. Use it in the morning, when the battery takes most.'],
    cautions: ['carbon-monoxide', 'park-rules'],
  },
];
