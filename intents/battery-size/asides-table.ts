import type { Aside } from '../asides.ts';
import { coldByNight } from '../cold-by-night.ts';

/** What is asked of a battery's size beside the sum. Common practice. */
export const sizeAsides: readonly Aside[] = [
  {
    name: 'why-double',
    spots: ['why double|twice|lead|agm|more_than_lithium', 'why_is_lead|why_so_much_more'],
    says: 'Because only half of a lead-acid label is for use, against about 80 % of lithium’s.',
    lines: [
      'Taken lower often, lead-acid wears out fast: about 600 cycles to half for AGM, 350 to a fifth left.',
    ],
    next: ['what is depth of discharge?', 'agm or lithium?'],
  },
  {
    name: 'never-full',
    spots: [
      'bigger|larger|more|second|extra battery|one|batteries help|fix|solve|worth|any_good never|not|doesnt|isnt|wont full|charge*',
    ],
    says: 'No: a bigger battery that never gets full only runs out later. Put more in first.',
    lines: [
      'More panel, a DC-DC charger on the drive, or a mains charge before you leave.',
      'AGM that stands half full for weeks loses capacity besides.',
    ],
    next: ['what solar do I need?', 'isolator or dcdc?'],
  },
  {
    name: 'winch',
    spots: ['winch|winching -solar -isolator_for'],
    says: 'No: a winch works off the starter battery with the engine running; a sound one of 70 Ah does.',
    lines: [
      'It pulls up to 400 A for a minute or two: short thick cables, pulls of a minute, and rests between.',
      'Many pulls in a day? Then a second battery of the starting kind, not a camp one.',
    ],
    cautions: ['big-current'],
  },
  {
    name: 'too-big',
    spots: [
      'too_big|too_large|such_a_large|such_a_big|oversize*|overkill|bigger_than_i_need -inverter -panel* -fuse',
    ],
    says: 'Hardly: too big a battery costs money and weight, but does no harm if it gets full.',
    lines: [
      'Lead-acid wants to be charged right up every week or so: have the sun or a charger for that.',
      'Lithium doesn’t mind being left half full.',
    ],
    next: ['what solar do I need?'],
  },
  {
    name: 'how-to-size',
    when: ({ loads }) => loads === undefined,
    spots: [
      'how|where size|sizing|work_out|calculate|figure_out|begin|start battery|batteries|bank|it -engine -car',
    ],
    says: 'Add up the Ah a day of all that runs, times the days without charge; double it for AGM.',
    lines: [
      'Ah a day: watts times hours, divided by 12. For lithium add a quarter in place of doubling.',
      'Tell me what runs and for how many days, and I’ll work it out.',
    ],
    next: ['what battery for a fridge and lights, 3 days?'],
  },
  ...coldByNight,
];
