import type { Aside } from './asides.ts';

/** Where a switch goes, asked of a cable or of a fuse. */
export const switchWiring: Aside = {
  name: 'switch-wiring',
  spots: [
    'wire|wiring|connect|hook a_switch|the_switch|switch how|which_wire|where|which_side -size -mains -ac',
  ],
  hasAnyFigures: true,
  says: 'In the plus wire, after the fuse: battery, fuse, switch, the thing, and its minus straight back.',
  lines: ['Take one marked for DC at a quarter more amps than what it switches; big loads go by a relay.'],
  cautions: ['fuse-at-battery'],
};
