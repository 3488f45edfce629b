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

/** How far off makers and fire services have a generator stand at least, m. */
const leastM = 6;
/** Places that are never right, however far. */
const near = 'window|under|awning|annex*|inside|porch|doorway|tent_door|vent';

/** What people ask beside what generator they need. */
export const generatorAsides: readonly Aside[] = [
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
      'refuel*|fill_up|fill_it|fill_the|filling|petrol_in|fuel_in|top_it_up generator|genny|gennie|genset|it when|before|running|hot|while|bed|safe -battery -batteries -charge -how_much -how_long -how_many',
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
