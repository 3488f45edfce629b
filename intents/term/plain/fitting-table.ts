import type { PlainQuestion } from './plain-question.ts';

/** How a thing is fitted or set, and what a plug, a setting or a figure on it means. Common practice throughout. */
export const fittingQuestions: readonly PlainQuestion[] = [
  {
    name: 'lithium-on-which-setting',
    isBeforeSums: true,
    spots: [
      'controller|regulator|charger gel sealed|flooded|agm lithium which|use',
      'no_lithium_setting|no_lithium_mode|without_a_lithium -dcdc -alternator',
    ],
    says: '“Sealed” or AGM, if that stays near 14.4 V and never equalises; never “flooded”.',
    lines: [
      'Gel’s 14.1 V fills it to about 95 %, which is fine too. If it has a float, 13.5 V or so is right.',
    ],
    caution: 'lithium-cold',
  },
  {
    name: 'off-in-the-sun',
    isBeforeSums: true,
    spots: [
      'unplug|disconnect|take_off|remove|pull battery controller|regulator sun|panel|panels|solar ok|okay|alright|can|while|harm|first -error -code -flash* -reset',
    ],
    says: 'No: take the panel off first, then the battery. Back on, the battery goes first.',
    lines: ['Without a battery the panel’s 20 V and more can kill some controllers, and what hangs on them.'],
  },
  {
    name: 'two-pole-colours',
    isBeforeSums: true,
    spots: [
      'anderson|andersons grey|gray|red|blue|yellow|black|colour|color mate|fit|fits|join|together|plug|other|differ*|mean* -wire -cable -lead -pin_by_pin -hot -warm -melt*',
    ],
    says: 'Each colour is keyed: grey mates only with grey. Fit one colour on both ends.',
    lines: ['Plus to plus as marked on it; check with a meter before the first use.'],
  },
  {
    name: 'two-pole-rating',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'anderson|andersons rated|rating|ratings|how_many_amps|what_amps|figures|vs|versus|max -which_cable -what_cable -mm -cig* -how_long',
    ],
    says: 'The number is its amps: 50, 120 or 175 A for long, where cable and fuse suit too.',
    lines: [
      'For 50 A take 10 mm² or more, for 120 A about 25 to 35, for 175 A about 50. Crimp, don’t screw.',
    ],
  },
  {
    name: 'trailer-plug-pins',
    isBeforeSums: true,
    spots: ['pin_by_pin|which_pin|what_pin|pinout|pin_out plug|socket|wired|trailer|grey|gray|black|pin'],
    says: 'It hangs on the plug and country: take the diagram of its maker, and meter each pin.',
    lines: [
      'On most 13 and 12 pin plugs one pair is always live and one only with the engine on, each with its own earth.',
    ],
  },
  {
    name: 'master-switch-side',
    isBeforeSums: true,
    spots: [
      'master_switch|battery_switch|isolator_switch|isolating_switch|kill_switch|cut_off_switch which_side|where|plus|positive|minus|negative|goes|put -inverter -wont -keeps',
    ],
    says: 'In the plus, right behind the battery’s main fuse, rated for all the amps at DC.',
    lines: ['A shunt, a BMS or a bilge pump that must stay on goes before it, each with a fuse of its own.'],
  },
  {
    name: 'battery-selector',
    isBeforeSums: true,
    spots: [
      'selector_switch|battery_selector|changeover_switch|both_switch|or_both_switch battery|batteries|boat|both -inverter',
    ],
    says: 'It joins battery 1, 2 or both to the loads by hand: fine on a boat, if you remember it.',
    lines: [
      'Left on both, the camp gear empties the starter battery too. A VSR or DC-DC does the job by itself.',
      'Never turn it through off with the engine running: that can kill the alternator.',
    ],
    next: ['isolator or dcdc?'],
  },
  {
    name: 'battery-protect',
    isBeforeSums: true,
    spots: [
      'battery_protect*|low_voltage_cut*|low_voltage_disconnect|protect_thing need|needed|worth|should|do_i|bms_does -why -tripp* -kick* -light* -set -low_or_high -believe',
    ],
    says: 'Not for lithium behind a fridge: fridge and BMS both cut out. For lead-acid, yes.',
    lines: ['Set it to about 12 V for AGM. Never run an inverter through one: its current is too big.'],
  },
  {
    name: 'start-off-leisure',
    isBeforeSums: true,
    spots: [
      'start|jump car|engine|van|ute leisure|house_battery|aux|camp_battery|deep_cycle|second_battery|agm|lithium jump_lead*|jumper|leads|from|off|with can|may|ok|possible -wont -flat -dead -dcdc -click* -fridge -as -start_battery -run -charg*',
    ],
    says: 'Lead-acid yes: leads on, ten minutes’ wait, then crank. Lithium only if its label allows it.',
    lines: [
      'Plus to plus, then minus to bare engine metal, away from the battery. Take them off the other way round.',
      'A BMS mostly cuts off at 100 A or so, and an engine asks for more.',
    ],
  },
  {
    name: 'socket-always-on',
    isBeforeSums: true,
    spots: [
      'socket*|plug|outlet key|ignition|ignitions die|dies|live|always|no_power|dead|permanent* -dcdc -charger -start* -fridge_cuts -blow* -blew',
    ],
    says: 'Give it its own fused cable from the battery: most car sockets go off with the key.',
    lines: [
      'From the starter battery only with a cut-off, or it won’t start next morning; better from a second battery.',
      'An auto electrician can also move its fuse to a feed that is always live.',
    ],
    caution: 'fuse-at-battery',
  },
  {
    name: 'earth-on-the-body',
    isBeforeSums: true,
    spots: [
      'where|wheres earth|ground|chassis go|goes|put|connect|attach|on_the_van|bolt -inverter -mains -shunt -loop -fault -crackl* -panel* -twin',
    ],
    says: 'On bare, clean chassis metal near the battery, or straight back to its minus, which is surest.',
    lines: ['Scrape the paint off, star washer, grease over it. The earth cable is as thick as the plus.'],
  },
  {
    name: 'add-a-usb-socket',
    isBeforeSums: true,
    spots: [
      'how add|fit|install|wire|put usb* second|extra|another|by|in|near -inverter -mains -solar -dead -battery_to',
    ],
    says: 'Run plus and minus from the fuse box to it: a 5 A fuse, 1.5 mm² cable, crimped ends.',
    lines: [
      'A USB-C quick charger takes up to 6 A: then a 7.5 or 10 A fuse and 2.5 mm². Switch it if it has a lamp.',
    ],
    caution: 'fuse-at-battery',
  },
  {
    name: 'off-while-charging',
    isBeforeSums: true,
    spots: [
      'need|have_to|should turn|switch anything_off|everything_off|all_off|things_off|it_off charge*|charging|panels -inverter -volts -read -measure -fridge_cuts',
    ],
    says: 'No, leave it: panels and chargers feed what runs first and charge with the rest.',
    lines: ['Off saves what it draws: the inverter is worth it, at 1 to 2 A with nothing plugged in.'],
  },
  {
    name: 'is-it-charging',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'how know|tell|see|check|sure if|whether|its|that charging|charges car|alternator|driving|engine|panel|solar|charger|working -how_long -full -how_much -why',
    ],
    says: 'Read the volts at the battery: with the source on they rise over 13.2 V within minutes.',
    lines: [
      'Still 12.8 V or less, nothing arrives: look at fuse, plug and isolator or DC-DC, in that order.',
    ],
    next: ['what should a full AGM read?'],
  },
  {
    name: 'twelve-volt-heat',
    isBeforeSums: true,
    spots: [
      'heater|heating v|volt|twelve is_there|such_a_thing|any_good|that_works|worth|exist -water* -diesel -gas -dew -fan -blanket -battery_with -pad -how_long -wont -hours',
    ],
    says: 'Hardly: a 12 V electric heater of 150 W warms hands, not a van, and draws 12 A.',
    lines: ['For air: a diesel or gas heater that vents outside. For bed: a 12 V blanket, about 4 A.'],
    caution: 'carbon-monoxide',
  },
  {
    name: 'usb-c-from-12',
    isBeforeSums: true,
    spots: [
      'usb_c straight|direct*|from|such_a_thing|exist v|twelve|battery such_a_thing|exist|is_there|get -laptop_on -inverter_or',
    ],
    says: 'Yes: 12 V USB-C sockets give 20 to 100 W, for phones and most laptops, with no inverter.',
    lines: ['Look for “PD” and the watts on it. 65 W takes about 6 A, so its own 10 A fuse.'],
  },
  {
    name: 'clamp-meter',
    isBeforeSums: true,
    spots: ['clamp_meter|clampmeter|amp_clamp what_clamp|which|need|buy|sort -says -averages -put'],
    says: 'One that says DC amps, to 100 A or more: many cheap clamps measure AC only.',
    lines: [
      'Zero it first, round one wire only, never both. It reads to about 0.1 A, so not for tiny drains.',
    ],
  },
];
