import { plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';

/** A plug's rating above what it carries for long: the share that a fuse has too. Common practice. */
const spare = 1.25;
const plug = ({ cable, loads = [] }: Facts): string => {
  const amps = cable?.currentA ?? loads.find(load => load.currentA)?.currentA;
  return amps === undefined
    ? 'Take one rated a quarter above the current that runs for long.'
    : `For ${plain(amps)} A take a plug of ${plain(Math.ceil(amps * spare))} A or more: a quarter to spare.`;
};

/** What is asked of wiring beside the size of a cable. Common practice. */
export const cableAsides: readonly Aside[] = [
  {
    name: 'through-the-body',
    spots: [
      'chassis|body|frame|metalwork earth|earthed|ground|grounded|negative|minus|return|neg|through -hook* -volts -shock -ring -mains -inlet -socket -sockets',
      'to_the_chassis|through_the_body|to_the_body|use_the_chassis|through_the_chassis -mains -sockets -socket -inlet',
    ],
    hasAnyFigures: true,
    says: 'Small loads, yes, to clean bare metal; over about 20 A, or on a trailer, run a minus wire back.',
    lines: [
      'Paint, rust, hinges and glued panels lose volts: most “thick cable, low volts” faults are a bad earth.',
      'An inverter gets both cables from the battery, the same size. A trailer’s hitch is no earth.',
    ],
    next: ['what cable for 10A over 5 m?'],
  },
  {
    name: 'house-cable',
    spots: [
      'house_cable|household_cable|house_wiring|house_wire|domestic_cable|building_cable|building_wire|twin_and_earth|romex|solid_core|hardware_store -inlet -mains -hook* -powerpoint* -board -extension -shed',
    ],
    says: 'Better not: solid house cable cracks with the shaking. Take stranded auto or marine cable.',
    lines: [
      'Tinned marine cable lasts longest near salt. Same copper, same amps: buy by mm² of copper.',
      'Never mix it up with mains wiring: house cable in a van looks like mains to the next person.',
    ],
    cautions: ['fuse-at-battery'],
    next: ['what cable for 10A over 5 m?'],
  },
  {
    name: 'speaker-wire',
    spots: [
      'speaker_wire|speaker_cable|bell_wire|bell_cable|jumper_leads|jump_leads|lamp_cord|lamp_flex -start* -flat -inverter -mains',
    ],
    says: 'Only for lights of an amp or two, with a 3 A fuse at the battery; not for a fridge or a pump.',
    lines: [
      'Most of it is 0.5 to 1 mm² and loses too many volts. Get real auto cable of 2.5 mm² or more for a fridge.',
    ],
    cautions: ['fuse-at-battery'],
    next: ['what cable for a fridge 5 m away?'],
  },
  {
    name: 'which-sort',
    spots: ['marine|tinned|copper|aluminium|aluminum|stranded or|vs|better|which|ok|need'],
    says: 'Stranded copper auto cable does; tinned marine cable lasts longer in damp and salt.',
    lines: ['No copper-clad aluminium: it carries about a third less and breaks. Buy by mm² of copper.'],
  },
  {
    name: 'why-fridges',
    spots: ['why fridge|fridges|charger|care|three|matter|matters', 'why does_it_matter|so_little'],
    hasAnyFigures: true,
    says: 'Because a fridge stops at its low-volts limit: what the cable loses, it takes for a flat battery.',
    lines: ['It draws more as the volts sink, too. Lights only get a little dimmer, so 5 % does for them.'],
    next: ['what is voltage drop?'],
  },
  {
    name: 'plug',
    spots: [
      'amp_plug|a_plug|amp_connector|amps_plug|plug_is_rated|plug_rated|connector_rated|amp_socket good|enough|ok|okay|handle|right|fine|do -pin -male -wall -kettle -site -mains',
    ],
    hasAnyFigures: true,
    says: plug,
    lines: ['Crimped right and clean, it stays cool. A plug that gets warm is loose, dirty or too small.'],
    next: ['what fuse for a 20A charger?'],
  },
  {
    name: 'losing-less',
    spots: [
      'get_rid|fix|cure|reduce|lose_less|less|improve|stop drop|it|loss|voltage|losing -thicker_ones',
      'how fix|cure|reduce drop|loss',
    ],
    says: 'Thicker or shorter cable, straight from the battery, and clean tight joints at both ends.',
    lines: [
      'Twice the copper loses half. First feel for warm joints: a bad one loses more than the cable.',
      'Tell me the amps and the metres, and I’ll name the size.',
    ],
    next: ['what cable for 10A over 5 m?'],
  },
  {
    name: 'hot-leads',
    spots: ['thicker|bigger|heavier fix|help|cure|cooler|do_it -drop'],
    says: 'Yes if they are warm all along: then they are too thin. Hot at one end it is the joint.',
    lines: [
      'Leave it off till that is settled: a lug too hot to hold can start a fire.',
      'A 1000 W inverter on short leads takes 35 mm² or so, with a 125 A fuse.',
    ],
    cautions: ['big-current'],
    next: ['what cable for a 1000W inverter, 1 m?'],
  },
];
