import { decimals, plain, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { switchWiring } from '../switch-wiring.ts';
import { computeAmpacity } from './compute.ts';

/** A plug's rating above what it carries for long: the share that a fuse has too. Common practice. */
const spare = 1.25;
const plug = ({ cable, loads = [] }: Facts): string => {
  const amps = cable?.currentA ?? loads.find(load => load.currentA)?.currentA;
  return amps === undefined
    ? 'Take one rated a quarter above the current that runs for long.'
    : `For ${plain(amps)} A take a plug of ${plain(Math.ceil(amps * spare))} A or more: a quarter to spare.`;
};

/** The longest lead that sites ask for, m; at 2.5 mm², the usual one. Common practice. */
const hookUpM = 30;
/** Ohms of a metre of 1 mm² of warm copper, and of a lead there and back. */
const copperOhmMm2 = 0.0195;
const hookUpLoss = ({ cable }: Facts): string => {
  const metres = cable?.lengthM ?? 25;
  const lostV = (2 * metres * copperOhmMm2 * 10) / 2.5;
  return `Fine: ${plain(metres)} m of 2.5 mm² hook-up lead loses about ${significant(lostV, 2)} V at 10 A, next to nothing of mains.`;
};

const ofAutoCable = (facts: Facts): string => {
  if (facts.cable?.autoCableMm === undefined)
    return 'Auto cable’s mm is its outside: 6 mm of it holds about 4.6 mm² of copper, good for 35 A.';
  const { areaMm2, carries } = computeAmpacity(facts);
  return `Auto cable’s mm is its outside: yours holds about ${significant(areaMm2, 2)} mm² of copper, good for ${decimals(carries.value, 0)} A.`;
};

/** What is asked of wiring beside the size of a cable. Common practice. */
export const cableAsides: readonly Aside[] = [
  {
    name: 'hook-up-lead',
    spots: [
      'hook_up_lead|hookup_lead|hook_up_cable|hookup_cable|shore_lead|site_lead|extension_lead|extension unroll*|uncoil* have_to|need|must|should|fully|why -inverter',
    ],
    verdict: 'yes',
    says: 'Yes, all of it: coiled up a mains lead can’t cool, and at a few kilowatts it melts.',
    lines: ['Lay it where nobody trips or drives over it, its joins off the wet ground.'],
  },
  {
    name: 'hook-up-length',
    spots: [
      'hook_up_lead|hookup_lead|hook_up_cable|hookup_cable|shore_lead|site_lead long|metres|meters|m|lose|loss|far|alright|ok|okay|enough',
    ],
    when: (_, { facts: { cable, loads } }) =>
      loads === undefined && cable?.areaMm2 === undefined && (cable?.lengthM ?? 0) <= hookUpM,
    hasAnyFigures: true,
    says: hookUpLoss,
    lines: [
      'Use one whole outdoor lead of 2.5 mm² with its earth pin, unrolled. Two joined end to end is one too many.',
    ],
  },
  {
    name: 'never-too-thick',
    spots: [
      'thicker|fatter|heavier|bigger_cable ever|problem|harm|hurt|bad|downside -fix -cure -why',
      'cable_too_big|wire_too_big|mm_too_big|too_thick|too_fat|overkill -fuse -breaker -inverter_too',
      'too_big_for_a|too_big_for_an|too_big_for_my|too_big_for_the inverter|fridge|pump|light|lights|heater|charger -fuse -breaker -inverter_too',
    ],
    when: (_, { facts: { cable, fuseA, chargers } }) => (fuseA ?? chargers ?? cable?.currentA) === undefined,
    hasAnyFigures: true,
    verdict: 'no',
    says: 'No, a cable is never too thick: it only loses less. Its lugs and the plug must take it.',
    lines: ['The fuse still goes by what hangs on it, and never above what the thinnest part carries.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'why-so-thick',
    spots: [
      'why thick|fat|heavy|so_big|thicker|so_thick',
      'thickness|thick matter|matters|doesnt twelve|volt|volts|low_voltage|v',
    ],
    when: (_, { facts: { cable } }) => cable?.lengthM === undefined,
    says: 'The same watts at 12 V take some twenty times the amps of mains: 2000 W is about 185 A.',
    lines: [
      'Amps are what heat a wire and lose volts, so the copper goes by them. Short leads keep it affordable.',
    ],
    next: ['what cable for a 2000W inverter, 1 m?'],
  },
  switchWiring,
  {
    name: 'controller-by-the-battery',
    spots: [
      'regulator|controller|mppt|pwm near|next_to|close|closer|by_the|nearer battery|panel|panels should|where|better|or|go|mount',
      'panel_side|panels_side|solar_side|side_of_the_controller|side_of_the_regulator lead|cable|longer|long|run|wire|extension',
    ],
    when: (_, { facts: { cable } }) => cable?.areaMm2 === undefined,
    hasAnyFigures: true,
    says: 'Controller near the battery, in the dry: the long run belongs on the panel’s side.',
    lines: ['There the volts are higher and a loss hurts less; the controller also reads the battery truly.'],
    cautions: ['fuse-at-battery'],
    next: ['what cable for a 200W panel, 10 m?'],
  },
  {
    name: 'charger-by-its-battery',
    spots: ['dcdc|dc_dc|dc_to_dc how_far|where|how_close|which_end -fuse -thick -size -cable -section'],
    when: (_, { facts: { cable } }) => cable?.lengthM === undefined && cable?.areaMm2 === undefined,
    hasAnyFigures: true,
    says: 'Near the battery that it charges, 1 or 2 m of cable at most: there volts count most.',
    lines: [
      'The long run is from the starter battery to it: a fuse at each battery, and cable for the amps it takes in.',
    ],
    cautions: ['fuse-at-battery'],
    next: ['what cable for a 25A dcdc, 6 m?'],
  },
  {
    name: 'thicker-not-longer',
    spots: [
      'longer lead|one|cable or|buy|thicker|should -panel* -hook* -how_much -controller',
      'thicker_lead|thicker_cable or longer',
    ],
    when: (_, { facts: { cable } }) => cable?.lengthM === undefined && cable?.areaMm2 === undefined,
    says: 'Thicker, never longer: length and thin wire are what lose the volts.',
    lines: [
      'For a fridge some 5 m off: 4 mm² of its own from the battery, fused there, to a plug that locks or screws in.',
    ],
    cautions: ['fuse-at-battery'],
    next: ['what cable for a fridge 5 m away?'],
  },
  {
    name: 'warm-or-cold-copper',
    spots: [
      'cold|frost|freezing|stiff|winter|heat|summer drop|resist*|loss|lose change|changes|affect|affects|matter|difference -fridge_stops',
    ],
    hasAnyFigures: true,
    says: 'Hardly: copper loses about 4 % less for each 10 °C that it is colder, and as much more when hot.',
    lines: ['Stiff insulation is no harm by itself; don’t bend it sharply until it has warmed up.'],
  },
  {
    name: 'lug-and-stud',
    spots: ['lug|lugs|ring_terminal|eyelet stud|bolt|post|hole|m_eight|m_ten'],
    hasAnyFigures: true,
    says: 'The lug’s hole goes by the stud, its barrel by the cable: measure the stud you bolt it to.',
    lines: [
      'A hole a size too big makes poor contact and heat. Battery studs are mostly 8 mm, some 6 or 10.',
    ],
    cautions: ['big-current'],
  },
  {
    name: 'soldering',
    spots: ['solder|soldered|soldering'],
    hasAnyFigures: true,
    says: 'Crimp it rather: solder stiffens the strands, and they break where it ends as it shakes.',
    lines: [
      'A good crimp in the right lug, with glue-lined shrink over it, lasts. A big lug wants a hydraulic tool.',
    ],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'connector-blocks',
    spots: [
      'wago|wagos|lever_connector*|choc|choc_block*|chock|connector_block*|terminal_block*|scotch*|twist_them|wire_nut*',
    ],
    hasAnyFigures: true,
    says: 'For lights of a few amps, yes, if tight and held still. A fridge’s lead wants crimped joints.',
    lines: ['Screw blocks work loose as it shakes, and a loose joint runs hot: give the wire ends ferrules.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'welding-cable',
    spots: ['welding'],
    hasAnyFigures: true,
    verdict: 'yes',
    says: 'Yes: it is fine-stranded copper that bends well. Size it in mm² of copper like any other.',
    lines: [
      'Its rubber dislikes oil and sun, so sleeve it, and crimp the lugs. Aluminium welding lead is no good.',
    ],
    cautions: ['fuse-at-battery'],
    next: ['what cable for a 2000W inverter, 1 m?'],
  },
  {
    name: 'copper-clad',
    spots: ['cca|ccaw|copper_clad|aluminium|aluminum|aluminium_ish'],
    hasAnyFigures: true,
    verdict: 'no',
    says: 'Better not: copper-clad aluminium carries about a third less, and its joints work loose.',
    lines: ['For an inverter take fine-stranded copper; the mm² printed on the cheap stuff is often a wish.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'one-way-or-both',
    spots: ['there_and_back|there_n_back or|is|mean|that', 'one_way or', 'each_way or'],
    when: ({ cable }) => cable?.isRoundTrip === undefined,
    hasAnyFigures: true,
    says: 'One way: tell me the metres from end to end, and the wire back is counted in.',
  },
  {
    name: 'is-it-thin',
    spots: ['thin|skinny|thinner really|looks|look|but|says'],
    when: ({ cable }) =>
      cable?.autoCableMm !== undefined && cable.lengthM === undefined && cable.currentA === undefined,
    hasAnyFigures: true,
    says: ofAutoCable,
    lines: ['Buy by mm² of copper, or by B&S. Tell me amps and metres, and I say whether it does.'],
  },
  {
    name: 'does-length-matter',
    spots: ['how_long|length|longer leads|lead|cable|cables|wire|it matter|matters|difference|important'],
    verdict: 'yes',
    says: 'Yes: the longer it is, the more volts are lost, and the thicker it must be.',
    lines: ['An inverter’s battery leads are best under 1½ m. Tell me amps and metres, and I name the size.'],
    next: ['what cable for a 300W inverter, 2 m?'],
  },
  {
    name: 'only-a-light',
    spots: ['only|just light|lights|led|lamp matter|matters|thin|ok|bad'],
    says: 'Hardly: LED lights only get a little dimmer. Its fuse must still suit the thin wire.',
    lines: ['10 % may be lost to lights; a fridge or a charger should lose no more than 3 to 5 %.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'how-far-off',
    spots: ['how_far panel|panels|solar|suitcase|blanket'],
    when: ({ cable }) => cable?.lengthM === undefined,
    says: 'About 10 m on 6 mm² for 100 W, 5 m for 200 W; farther off it wants thicker cable.',
    lines: ['That loses 3 %. Keep the controller by the battery: the long run may be the panel’s side.'],
    next: ['what cable for a 200W panel, 10 m?'],
  },
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
      'speaker_wire|speaker_cable|stereo_wire|stereo_cable|audio_cable|bell_wire|bell_cable|jumper_leads|jump_leads|lamp_cord|lamp_flex -start* -flat -inverter -mains',
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
