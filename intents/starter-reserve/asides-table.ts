import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';

/** Whether a house battery may start the engine hangs on its kind. */
const jump = ({ batteries = [] }: Facts): string => {
  const kind = batteries.find(b => b.role !== 'starter' && b.chemistry !== undefined)?.chemistry;
  if (kind === 'lfp')
    return 'No: most lithium camp batteries can’t give a starting current; their BMS cuts out.';
  return kind === undefined
    ? 'Yes off a lead-acid house battery, with jump leads; not off lithium: its BMS cuts out.'
    : 'Yes, a lead-acid house battery can start it with jump leads, if it is well charged.';
};

/** What is asked of the starter battery beside how long it can spare. Common practice. */
export const starterAsides: readonly Aside[] = [
  {
    name: 'start-off-the-house',
    spots: [
      'jump|start|crank engine|truck|car|it|him|her|van|ute|landcruiser|main|mains off|from|with|using|use house|second|lithium|leisure|camper|camping|auxiliary -how_long -run -before_it -still_start -fridge_on',
      'smallest battery start',
    ],
    hasAnyFigures: true,
    says: jump,
    lines: [
      'Red to the flat plus, red to the good plus, black to the good minus, black last to bare metal of the dead engine.',
      'Not a frozen, swollen or leaking one, and never 24 V on 12 V. A jump pack made for it is the simplest.',
    ],
    cautions: ['starter-reserve'],
  },
  {
    name: 'parked',
    spots: [
      'stand|stands|standing|parked|sits|sit|sitting|stood|left|leave month|months|weeks|week -fridge -lights -stereo',
    ],
    hasAnyFigures: true,
    says: 'A sound one starts after about a month parked; alarms and trackers shorten that to weeks.',
    lines: [
      'They take about 0.02 to 0.05 A all day: ½ to 1 Ah a day of the 20 Ah or so that it has to spare.',
      'For longer take the minus off, or keep it up with a small panel or charger.',
    ],
    next: ['how do I store a battery?'],
  },
  {
    name: 'how-to-prevent',
    spots: [
      'how stop|prevent|avoid|keep_it_from again|happening|flat|flattening',
      'stop_it_happening|stop_that_happening',
    ],
    hasAnyFigures: true,
    says: 'Give the fridge a second battery behind a DC-DC charger or isolator, so the engine’s stays full.',
    lines: [
      'Till then set the fridge’s cut-out to high, or use a socket that goes off with the key.',
      'Charge the flat one right up soon: standing flat ruins it.',
    ],
    cautions: ['starter-reserve'],
    next: ['isolator or dcdc?', 'what second battery do I need?'],
  },
  {
    name: 'one-or-two',
    spots: [
      'need two|second|another|separate|leisure batter*|one -series -parallel -how_long',
      'from_factory|two_batteries|both_batteries camp|gear|camping|one_for',
    ],
    says: 'One does for lights and phones of an evening; for a fridge overnight have a second battery.',
    lines: [
      'A starter battery has only about a quarter of its label to spare if it’s to start.',
      'Two from the factory work as one for the engine: splitting them is a job for an auto electrician.',
    ],
    cautions: ['starter-reserve'],
    next: ['isolator or dcdc?', 'what second battery do I need?'],
  },
];
