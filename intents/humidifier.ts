import { hasDraw } from '#rig/merge.ts';
import type { Aside } from './asides.ts';

/** The heat of a breathing machine's air. Common practice; the plate on the machine or its supply tells for sure. */
export const humidified: readonly Aside[] = [
  {
    name: 'with-humidifier',
    spots: [
      'humidifier|humidified|heated_hose|heated_tube with|on|and|add|as_well|plus -without -off -no_humidifier',
      'with_the_heat|with_heat -electric -weather',
    ],
    // Of one whose draw is told with it there is a sum.
    when: (_, { facts: { loads = [] } }) => loads.every(load => !hasDraw(load)),
    says: 'A heated humidifier about doubles it or more: about 55 Ah a night in place of 20.',
    lines: [
      'That is 80 W in place of 30 W for 8 hours. Its plate or its supply tells: say its watts, and I’ll count.',
      'Ask whoever prescribed it whether the humidifier may stay off.',
    ],
    next: ['CPAP 80W 8 hours, what battery?'],
  },
];
