import type { Aside } from '../asides.ts';

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
    name: 'fuel',
    spots: [
      'petrol|fuel|litre*|diesel how_much|how_many|per_hour|an_hour|a_night|drink|drinks|burn|burns -size -which',
    ],
    says: 'A 2 kW one drinks ½ to 1 litre an hour: 4 to 8 litres for eight hours.',
    lines: [
      'Half load about ½ litre, full load a good litre. Its sheet tells yours; cool it before you refill.',
    ],
    cautions: ['carbon-monoxide', 'park-rules'],
  },
  {
    name: 'too-near',
    spots: [
      'chain*|lock*|far|close|distance|near|metre*|metres -how_big -up_at -altitude -height -high -microwave -charger -run',
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
