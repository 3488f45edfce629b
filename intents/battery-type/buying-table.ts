import { significant } from '#quantity/round.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { chemistryRow } from './compute.ts';

const told = ({ batteries = [] }: Facts) => batteries.find(({ capacityAh }) => capacityAh !== undefined);
const kg = (chemistry: Chemistry, capacityAh: number): string =>
  `${significant(chemistryRow(chemistry).weightKgPerAh * capacityAh, 2)} kg`;

/** What a battery of the size told should weigh: the test that a shop’s counter allows. */
function weighed(facts: Facts): string {
  const { capacityAh = 100, chemistry } = told(facts) ?? {};
  const ah = `${significant(capacityAh)} Ah`;
  return chemistry === 'lfp' || chemistry === undefined
    ? `Weigh it: a true ${ah} of lithium is about ${kg('lfp', capacityAh)}${chemistry ? '' : `, of AGM ${kg('agm', capacityAh)}`}. Lighter holds less.`
    : `Weigh it: a true ${ah} of lead is about ${kg(chemistry, capacityAh)}. Much lighter holds less.`;
}

/** What is asked before a battery is bought: used, cheap, which sort, is it worth it. Weights are the engine’s; the rest is common practice. */
export const buyingAsides: readonly Aside[] = [
  {
    name: 'out-of-a-car',
    hasAnyFigures: true,
    spots: ['ev|evs|electric_car* wreck*|off|out_of|cells|second_hand|nd_hand|pack|used -charge'],
    says: 'Leave EV packs alone: no 12 V LiFePO4, no BMS that suits, and they burn far more fiercely.',
    lines: [
      'A sound used one is a 12 V LiFePO4 with its own BMS, an app that shows its health, and a receipt.',
    ],
  },
  {
    name: 'used-one',
    hasAnyFigures: true,
    spots: [
      'used|second_hand|secondhand|nd_hand|pre_owned any_good|worth|good|buy*|bought|price|dodgy|ok|okay -can_i_use -amp*_used -wh_used',
    ],
    says: 'Only if it passes a test: full, a night’s rest, then 5 A for hours. Past 5 years leave it.',
    lines: [
      'Lead should rest at 12.6 V or more and run 5 A for about 10 hours to half per 100 Ah.',
      'Lithium: its app’s health and cycles, and cells within 0.05 V of each other.',
    ],
  },
  {
    name: 'is-it-real',
    hasAnyFigures: true,
    spots: [
      'catch|believe|real_ones|is_it_a_real|fake|seller|scam|too_good -charge -how_much -watts -cycles',
    ],
    when: facts => !facts.loads?.length && told(facts) !== undefined,
    says: weighed,
    lines: [
      'Cheap ones often hold less than they say, or have a BMS that gives few amps: look for its continuous amps.',
      'At home run 5 A from full and count the hours: 100 Ah of lithium gives about 19.',
    ],
  },
  {
    name: 'too-cheap',
    hasAnyFigures: true,
    spots: ['dollar|dollars|bucks|quid|price any_good|good|should_i|real -years -weekends'],
    when: ({ loads }) => !loads?.length,
    says: weighed,
    lines: [
      'Cheap ones often hold less than they say, or have a BMS that gives few amps: look for its continuous amps.',
      'At home run 5 A from full and count the hours: 100 Ah of lithium gives about 19.',
    ],
  },
  {
    name: 'worth-replacing',
    spots: ['should|worth|time_to replace|swap|switch|upgrade|change agm|lead lithium|lifepo*'],
    when: ({ loads }) => !loads?.length,
    says: 'If the AGM still does you, keep it till it dies; then lithium, if you camp often or lift it.',
    lines: ['Each charger then needs a lithium setting, and the alternator a DC-DC charger: count these in.'],
    next: ['how heavy is 100Ah agm against lithium?'],
  },
  {
    name: 'starting-or-deep',
    hasAnyFigures: true,
    spots: [
      'deep_cycle|leisure|special car_battery|starter|cranker|cranking|battery_is_a_battery|normal_battery -jump* -flat -wont_start -agm',
      'cca leisure|deep_cycle|camping|claims|fridge -crank*',
      'car_battery does_the_job|will_do|will_a|instead|half_the_price|for_camping',
    ],
    when: ({ batteries = [] }) => !batteries.some(({ chemistry }) => chemistry === 'lfp'),
    says: 'A car battery is made to start engines: run low a few dozen times, it is done.',
    lines: [
      'CCA on its label is the sign of one; cycles at 50 % on the sheet are the sign of a deep-cycle one.',
      'At a pinch use no more than a third of its label.',
    ],
    next: ['agm or lithium?'],
  },
  {
    name: 'lead-crystal',
    hasAnyFigures: true,
    spots: ['lead_crystal|crystal'],
    says: 'Not as good as lithium: it is lead, as heavy as AGM. Plan on half to two thirds of its label.',
    lines: ['It stands cold and standing half full better than AGM. Charge it as its sheet says.'],
  },
  {
    name: 'with-bluetooth',
    spots: ['bluetooth|with_an_app|an_app worth|need|more|good|paying|bother -wont -connect*'],
    says: 'Worth a little: it shows cells, amps and why it cut out. A shunt tells more of the rig.',
    lines: ['It draws next to nothing. Without it a cut-out is guesswork.'],
  },
  {
    name: 'slim',
    spots: ['slim|slimline|slim_line|thin lithium|batter*|lifepo* -cable -panel'],
    says: 'The same Ah if the label is honest. Slim ones shed heat worse: mind their continuous amps.',
    lines: ['About 12 kg for each 100 Ah, slim or square: much lighter holds less.'],
  },
  {
    name: 'told-by-its-volts',
    hasAnyFigures: true,
    spots: ['label|says|lithium|mean|make|sticker'],
    when: ({ batteries = [] }) =>
      batteries.some(({ voltageV = 0, chemistry }) => [12.8, 25.6].includes(voltageV) && !chemistry),
    verdict: 'yes',
    says: 'Yes: 12.8 V on a label means LiFePO4, four cells of 3.2 V. Lead says 12 V.',
    lines: ['Lithium is also light: about 1.2 kg for each 10 Ah, where lead is near 3 kg.'],
  },
  {
    name: 'told-by-its-weight',
    spots: ['heavy|weighs mean*|must|thinks|guess|so_it lead|agm|lithium'],
    says: 'Most likely lead, if it is heavy: about 3 kg for each 10 Ah, where lithium is near 1.2 kg.',
    lines: [
      'Caps to unscrew mean a wet one. Not sure? Use and charge it as AGM: down to half, 14.4 V at most.',
    ],
  },
  {
    name: 'told-by-looking',
    spots: ['how tell|know wet|flooded|gel|agm from|by_looking|apart|if|whether -full -charged -good'],
    says: 'Caps to unscrew mean wet; a sealed lid means AGM or gel. Its label says which.',
    lines: ['About 3 kg for each 10 Ah is lead of any sort, near 1.2 kg is lithium.'],
  },
  {
    name: 'why-so-light',
    spots: ['why|whys|how_come lighter|light|heavier|heavy -lights -lighter_socket'],
    says: 'Lithium holds about twice as much in each kilo as lead, and you may use more of it.',
    lines: ['For the same use it weighs about a quarter.'],
  },
  {
    name: 'dearer-or-cheaper',
    hasAnyFigures: true,
    spots: [
      'cheaper|price|cost|costs|dearer|money|dollars|for_hundred|hundred_and -worth -how_much_is -fast* -half_the_price',
    ],
    when: ({ loads, batteries = [] }) => !loads?.length && batteries.length !== 1,
    says: 'Over ten years lithium: it outlasts two AGM. For a few trips a year AGM costs less.',
    lines: [
      'AGM lasts 4 to 7 years however little it is used, lithium 10 or more, and gives nearly twice per Ah.',
      'I keep no prices, as they change too fast.',
    ],
  },
];
