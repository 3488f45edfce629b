import { plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { switchWiring } from '../switch-wiring.ts';
import { fuseFactor } from './compute.ts';

/** What a dash socket gives for long, A: its thin wire and its fuse of 10 to 15 A. Common practice. */
const socketA = 8;

const nominalV = 12;

/** What is to run by the figures told, A. */
const drawnA = ({ loads = [] }: Facts): number | undefined => {
  const each = loads.map(({ currentA, powerW, count }) => count * (currentA ?? (powerW ?? 0) / nominalV));
  const total = each.reduce((sum, amps) => sum + amps, 0);
  return total > 0 ? total : undefined;
};

const socket = (facts: Facts): string => {
  const amps = drawnA(facts);
  if (amps === undefined)
    return 'About 8 A for long, some 100 W: a dash socket’s wire and fuse stop at 10 to 15 A.';
  if (amps > socketA && amps <= 1.1 * socketA)
    return `Just: ${plain(amps)} A is all that a dash socket gives for long, so check that it stays cool.`;
  return amps > socketA
    ? `No: ${plain(amps)} A is too much for a dash socket for long; it is good for about ${socketA} A.`
    : `Yes: ${plain(amps)} A is within the ${socketA} A or so that a dash socket gives for long.`;
};

/** What a fuse carries for long: four fifths of its rating, as the fuse is chosen a quarter above its load. */
const carried = ({ fuseA }: Facts): string =>
  fuseA === undefined
    ? 'About four fifths of its rating for long: 12 A on a 15 A fuse.'
    : `About ${plain(fuseA / fuseFactor)} A for long: a ${plain(fuseA)} A fuse wants a quarter to spare.`;

const switchFor = (facts: Facts): string => {
  const amps = drawnA(facts);
  return amps === undefined
    ? 'Take a switch for DC, rated a quarter above what runs for long: motors start harder.'
    : `A switch for DC of ${plain(Math.ceil(1.25 * amps))} A or more: ${plain(amps)} A and a quarter to spare.`;
};

/** What is asked of fuses beside their rating. Common practice. */
export const fuseAsides: readonly Aside[] = [
  {
    name: 'wrong-way-round',
    spots: [
      'batter*|lead|leads|terminal*|wires|cables|clamps|clips|it backward*|back_to_front|wrong_way_round|wrong_way_around|revers*|polarity -fuse_in -fuse_backward* -shunt -monitor -camera -light -lights -sensor -hitch',
      'swap*|mixed_up|crossed|muddled red_and_black|black_and_red|plus_and_minus|the_leads|positive_and_negative|the_terminals|polarity',
      'plus|positive|red on_the_minus|on_minus|on_the_negative|on_negative|on_the_black|to_the_minus|to_negative|to_black -should -goes',
    ],
    hasAnyFigures: true,
    says: 'Not yet: take the battery off. A battery in backwards may have killed more than the fuse.',
    lines: [
      'The same rating as was in it: it stands on the blown fuse, in the gear’s leaflet or by its plug. Never more than the cable allows.',
      'Put plus on plus, measure it, then try one thing at a time. A fuse that blows again is no bad luck: that thing is dead.',
      'Fridge, controller, charger and inverter often don’t survive it: have what stays dead, hot or smelly looked at.',
    ],
    cautions: ['fault-finding', 'fuse-at-battery'],
  },
  {
    name: 'which-way-round',
    spots: ['which_way_round|what_way_round|way_round|which_direction fuse|fuses|it|they|breaker -battery'],
    hasAnyFigures: true,
    verdict: 'no',
    says: 'No: a fuse has no plus and minus side, so either way round is right.',
    lines: ['Some DC breakers do: where theirs are marked line and load, or +, line goes to the battery.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'one-each',
    spots: [
      'one_each|each_battery|one_per_battery|per_battery|one_for_the_lot|each_of_them fuse|fuses -which -what_size -load -loads',
      'two_fuses|two_fuse two_batteries|both_batteries',
    ],
    hasAnyFigures: true,
    says: 'Best one at each battery’s plus: side by side, the good ones feed a short inside a bad one.',
    lines: ['What leaves the bank has its own as well: one main fuse, then one for each cable.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'made-for-mains',
    spots: [
      'house|household|mains_fuse|mains_fuses|mains_breaker|ac|domestic|plug_fuse|plug_fuses fuse|fuses|breaker|breakers|ones same|use|ok|okay|work|works|fine|box_of|do -house_battery -inverter -dcdc -charger',
    ],
    hasAnyFigures: true,
    verdict: 'no',
    says: 'No: those are made for AC, and may go on arcing where a battery’s DC has to be broken.',
    lines: ['Take ones marked for DC, 32 V or more for 12 V and 24 V gear: blade ones cost next to nothing.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'rubbed-through',
    spots: [
      'rub|rubs|rubbed|rubbing|chafe|chafes|chafed|worn_through|pinched wire|wires|cable|it what_happens|happens|what_would|what_if -new -found -fixed',
    ],
    hasAnyFigures: true,
    says: 'It shorts to the body: a fuse at the battery blows then; without one the cable burns.',
    lines: ['Grommets where it passes metal, conduit over edges, and a clip every 20 to 30 cm.'],
    cautions: ['no-fuse'],
  },
  {
    name: 'slow-blow',
    spots: [
      'slow_one|slow_blow|time_delay|delayed_fuse|fast_blow|fast_one|quick_blow better|which|or|need|should|ok|okay|what|does -keeps',
    ],
    hasAnyFigures: true,
    says: 'Slow for motors and inverters: it rides out the jolt as they start, with the same rating.',
    lines: ['Blowing while it runs is another matter: too much on it, or a wire that shorts now and then.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'in-the-lead',
    spots: [
      'in_line|inline|built_in|built_into|in_the_lead|fused_lead|fused_plug fuse|fused|fuses|holder|it|ones do_they|are_there|can|sell|ok|okay|good|come|use -size -bigger -without -no',
    ],
    hasAnyFigures: true,
    verdict: 'yes',
    says: 'Yes: a lead with a fuse in it, or an in-line holder, does if the fuse is at the battery end.',
    lines: ['One in the plug at the far end guards the gear alone: the battery end needs its own then.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'bms-instead',
    spots: [
      'bms fuse|fusing|fused|fuses need|needs|doesnt|without|instead|enough|why|because|right -cable -size',
    ],
    hasAnyFigures: true,
    says: 'It needs one all the same: a BMS guards the cells, and can fail shut. The fuse guards the cable.',
    lines: [
      'A lithium drives thousands of amps into a short: a high-breaking fuse, class T style, at its plus.',
    ],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'what-it-carries',
    spots: [
      'what|how_much|how_many can_i|could_i|can_you|can_it run|put|have|pull|draw|hang|carry on|through|that|it',
    ],
    when: (_, { facts: { fuseA, cable, loads, inverter, chargers } }) =>
      fuseA !== undefined && (cable ?? loads ?? inverter ?? chargers) === undefined,
    hasAnyFigures: true,
    says: carried,
    lines: ['Above that it blows sooner or later. Its cable must carry what the fuse says, too.'],
    cautions: ['fuse-at-battery'],
    next: ['what cable for 15A over 5 m?'],
  },
  {
    name: 'fuse-block',
    spots: [
      'no_fuse_box|no_fuse_block|fuse_box|fuse_block|fuse_panel|fuse_board need|worth|why|without|instead|how_many_things -blow* -blew -hot -melt* -at_the_battery',
    ],
    says: 'Yes, from three or four circuits on: a main fuse at the battery, then a small one for each wire.',
    lines: ['Wires stacked on the battery’s bolt each need their own fuse, and work loose in time.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'colours',
    spots: ['colour|color|colours|colors fuse|fuses|blade|they|it matter|matters|important|mean|means'],
    says: 'Yes, each colour is one rating: 5 A tan, 10 A red, 15 A blue, 20 A yellow, 30 A green.',
    lines: ['So it is for blade fuses; the number on top is what counts.'],
    cautions: ['fuse-at-battery'],
  },
  switchWiring,
  {
    name: 'without-one',
    hasAnyFigures: true,
    spots: ['what_happens|what_could_happen|happens_if dont|without|no|leave_it_out -bigger -blow*'],
    says: 'A short then burns the cable and what is around it: a battery gives a thousand amps and more.',
    lines: ['A chafed wire is enough. The fuse at the battery is what stops that within a second.'],
    cautions: ['no-fuse'],
    next: ['what fuse for a 10A fridge?'],
  },
  {
    name: 'switch-side',
    spots: ['side|before|after switch fuse|fuses'],
    hasAnyFigures: true,
    says: 'Fuse first, at the battery, then the switch: so the cable is guarded, on or off.',
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'switch-size',
    spots: ['switch -fuse -fuses -side -changeover -isolator -battery_switch'],
    hasAnyFigures: true,
    says: switchFor,
    lines: ['A mains switch breaks far fewer amps at 12 V DC. A relay takes a big load off a small switch.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'what-the-number-means',
    spots: ['blows_at|blow_at|it_blows|number_mean|rating_mean|the_number|stands_for'],
    hasAnyFigures: true,
    says: 'It is what the fuse carries for long: a third more blows it in minutes, twice in a second or so.',
    lines: ['So it goes by the load and a quarter, and never above what the cable carries.'],
    next: ['what fuse for a 10A fridge?'],
  },
  {
    name: 'where-to-buy',
    spots: ['where buy|get|find|sell|sells fuse|fuses|holder|them|those|that'],
    hasAnyFigures: true,
    says: 'Auto parts, marine and camping shops have them; the bolt-down ones auto electricians or online.',
    lines: ['Carry a few of each size that you have. Marked for 32 V DC or more they suit 12 V and 24 V.'],
  },
  {
    name: 'both-ends',
    spots: [
      'both_ends|other_end|each_end -where -which -goes -go -fridge_end -load_end -battery_end -size -sort -what_fuse -which_fuse',
    ],
    hasAnyFigures: true,
    says: 'At both ends only where both are sources: two batteries, or a charger and a battery.',
    lines: ['Towards a load one at the battery does. A DC-DC charger’s cable has one at each battery.'],
    cautions: ['fuse-at-battery'],
    next: ['what fuse for a 25A dcdc?'],
  },
  {
    name: 'at-the-wrong-end',
    spots: [
      'fridge_end|by_the_fridge|at_the_fridge|load_end|far_end|inverter_end|wrong_end -battery -where -which -or -size',
    ],
    hasAnyFigures: true,
    verdict: 'no',
    says: 'There it guards the gear, not the cable: fit one at the battery as well, within 20 cm.',
    lines: [
      'A short along the way would burn the cable before that one ever blows. The one at the far end may stay.',
    ],
    cautions: ['fuse-at-battery'],
    next: ['what fuse for a 10A fridge?'],
  },
  {
    name: 'why-so-close',
    spots: [
      'why|how_come close|near|within|distance|battery_end|right_at|right_next',
      'how_close|how_far|how_near battery|terminal|post fuse|it',
    ],
    hasAnyFigures: true,
    says: 'Because nothing guards the cable between battery and fuse: the shorter it is, the less can burn.',
    lines: ['Within about 20 cm of the post, and where that bit of cable can’t chafe.'],
    cautions: ['no-fuse'],
  },
  {
    name: 'two-fuses',
    spots: [
      'two|both|second|another|each_end|both_ends fuse|fuses why|how_come|what_for',
      'two_fuses|fuse_at_both_ends|fuse_both_ends',
    ],
    hasAnyFigures: true,
    says: 'A cable between two batteries, or a charger and a battery, is fed from both ends: a fuse at each.',
    lines: ['A short in the middle would be fed by both. Towards a load one fuse does, at the battery.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'in-the-minus',
    spots: [
      'negative|minus|neg|earth fuse|fused|fuses|one|breaker',
      'so_take_it_out|take_it_out|take_that_out|remove_it',
    ],
    hasAnyFigures: true,
    says: 'No, fuse the plus only: with a blown fuse in the minus everything stays live.',
    lines: [
      'One that sits in the minus already does no good in a vehicle: join the minus without it, and fuse the plus at the battery.',
    ],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'where',
    spots: [
      'where|which_end fuse|fuses|breaker go|goes|put|fit|sit|mount|place|belong|install -size -rating -which_fuse -what_fuse',
      'fuse|fuses|breaker goes|go|put|sit|belong near|by|at|next_to or -size -rating',
      'where fuse exactly|near|precisely|then -size -rating -which_fuse -what_fuse -buy -get',
      'near_battery|near_the_battery|near_the_batt|next_to_the_battery|close_to_the_battery or fridge|load|charger|inverter|gear|pump|heater -size -rating -what_fuse -which_fuse',
      'battery_end|at_the_battery|battery_side fridge_end|at_the_fridge|load_end|other_end|fridge_side|charger_end|at_the_charger|both|each_end -size -rating -what_fuse -which_fuse',
    ],
    hasAnyFigures: true,
    says: 'At the battery, within about 20 cm of its plus: the fuse guards the cable from there on.',
    lines: [
      'A short anywhere along the cable then blows it. At the far end it would guard nothing but the gear.',
      'A cable between two batteries, or from a charger to a battery, gets one at each battery end.',
    ],
    cautions: ['no-fuse'],
  },
  {
    name: 'breaker-or-fuse',
    spots: ['breaker|breakers|circuit_breaker fuse|fuses or|instead|better|will|vs|rather|than'],
    hasAnyFigures: true,
    says: 'Either does: a DC breaker is a switch as well and resets; a fuse is cheaper and breaks more.',
    lines: [
      'Take one marked for DC and for the volts, of the same rating. On a lithium bank the main one is a high-breaking fuse.',
    ],
    cautions: ['fuse-at-battery'],
    next: ['what fuse for a 20A charger?'],
  },
  {
    name: 'which-sort',
    spots: [
      'which|what sort|kind|type|style -size -amp -rating -how_big',
      'glass|blade|bolt_down|midi|mega or|matter|vs|better -size -rating',
    ],
    hasAnyFigures: true,
    says: 'Blade up to about 40 A, bolt-down above; the main one on lithium a high-breaking class T style.',
    lines: [
      'Glass fuses make poor contact in a vehicle: blade ones hold better.',
      'What counts is the rating, and that it is marked for the volts: 32 V suits 12 V and 24 V gear, not a string of panels.',
    ],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'sharing',
    spots: [
      'can|could|may|would|ok share|sharing|one_fuse|same_fuse fuse -size -splitter -socket -which -what',
    ],
    says: 'Yes, if the fuse carries both together and the thinnest cable behind it carries the fuse.',
    lines: [
      'Add their amps and a quarter. A wire too thin for that fuse gets a smaller one of its own, in a fuse block.',
      'Apart is handier: one blown fuse then leaves the rest on.',
    ],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'needed',
    spots: [
      'need_one|needs_one|need_a_fuse|needs_a_fuse|need_another|need_fuse|need_fuses|need_fusing|no_fuse|without_a_fuse|without_fuse|no_fuses|skip_the_fuse|leave_the_fuse -what_size -what_amp -what_fuse -which_fuse -fuse_size -bigger',
    ],
    // With the load and its cable told, the size says more.
    when: (_, { facts: { cable, loads, inverter, chargers } }) =>
      (cable?.areaMm2 ?? cable?.awg ?? cable?.autoCableMm) === undefined ||
      (!loads?.length && !chargers?.length && (inverter?.powerW ?? cable?.currentA) === undefined),
    hasAnyFigures: true,
    says: 'Yes: each cable from the battery needs its fuse, at the battery, however short or thin it is.',
    lines: [
      'From a solar controller or charger too: it sits at the battery end, as the battery is what can burn the cable.',
      'Jumper leads have none: for starting only, never to run gear.',
    ],
    cautions: ['fuse-at-battery'],
    next: ['what fuse for a 10A fridge?'],
  },
  {
    name: 'dash-socket',
    spots: [
      'cig|cigarette|ciggy|lighter|accessory|dash|socket ok|okay|biggest|max|most|can|will|works|work|run|may|plug -need -new -wire -put -whack -bigger -instead -pulled -mains -caravan -splitter -screw -burnt -joined -keeps -blow* -blew -point',
      'one|same cigarette_socket|cig_socket|ciggy_socket|lighter_socket|dash_socket|cigarette_lighter -fuse -splitter',
    ],
    // A socket on a cable of its own is no dash socket.
    when: (_, { facts: { cable } }) => (cable?.areaMm2 ?? cable?.awg ?? cable?.autoCableMm) === undefined,
    hasAnyFigures: true,
    says: socket,
    lines: [
      'For more run a cable of its own from the battery, with its fuse at the battery end, to a heavy plug.',
    ],
    cautions: ['no-fuse'],
    next: ['what cable for 15A over 5 m?'],
  },
];
