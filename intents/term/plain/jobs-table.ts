import type { PlainQuestion } from './plain-question.ts';

/** What is bought first and what it costs; small jobs at the battery; words on labels and screens. */
export const jobQuestions: readonly PlainQuestion[] = [
  {
    name: 'prices',
    hasAnyFigures: true,
    isBeforeSums: true,
    spots: [
      'what|how_much|whats cost|costs -batter* -save -saves -amp -amps -amp_hours -ah -power -cable -longer -campsite',
      'in_money|money_wise -save',
      'price_of|ballpark|rough_price battery|dual|setup|system|rig|doing',
      'second_hand|secondhand panel|panels|battery|solar worth|price',
    ],
    says: 'I keep no prices, as they change too fast: I tell you the sizes, and a shop or two prices them.',
    lines: [
      'Compare by what you can use: a 100 Ah lithium gives about 80 Ah for some ten years, a 100 Ah AGM about 50 Ah for some five.',
      'Second-hand: have a battery load-tested, and measure a panel in full sun, before you pay.',
    ],
    next: ['agm or lithium?', 'what do I need to buy?'],
  },
  {
    name: 'cheaper-rig',
    isBeforeSums: true,
    spots: [
      'cheaper|dear|expensive|afford anything|something|get_this_down|bring_it_down|bit|sounds|too -agm -lithium -gel -gas -or -than -generator -long_run -why',
      'dont_have_that_much|cant_afford|not_that_much_money',
    ],
    says: 'Cheapest is to use less: shade the fridge, fill it cold, and charge while you drive.',
    lines: [
      'Then AGM in place of lithium, one panel in place of two, and a smaller battery with more sun.',
      'Don’t save on fuses and cable. Tell me what you can leave at home, and I’ll size it again.',
    ],
    next: ['agm or lithium?', 'what do I need for a fridge and lights?'],
  },
  {
    name: 'buy-first',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'what buy|get first do|should|to -or -more -charge',
      'battery_first|panel_first|solar_first -thing -volts -bigger -more -another -second -upgrade -have -connect* -plug* -controller -hook* -wire* -take* -flat -charge -straight -does -fridge',
      'where_do_i_start|where_do_we_start|where_to_start buy|budget|bucks|money|gear|fridge|setup|set_up -teach -learn',
    ],
    says: 'First the battery, with its fuse and something to charge it; solar and the rest can follow.',
    lines: [
      'Before you pay, add up what will run: a fridge and lights take about 35 to 40 Ah a day, so 100 Ah of lithium or 150 Ah of AGM.',
      'If you drive most days a DC-DC charger comes next, if you stay put a panel of 160 to 200 W.',
    ],
    next: ['what do I need for a fridge and lights?', 'agm or lithium?'],
  },
  {
    name: 'besides-the-battery',
    isBeforeSums: true,
    spots: [
      'else|besides|apart_from|other_than|on_top_of budget|buy|need besides|apart_from|other_than|on_top_of battery',
    ],
    says: 'Yes: a charger for it, a fuse at the battery, thick enough cable with lugs, and a monitor.',
    lines: [
      'A box or tie-downs, and sockets, come on top. Tell me what runs and for how long, and I’ll size each.',
    ],
    next: ['what do I need for a fridge and lights?'],
  },
  {
    name: 'makes',
    isBeforeSums: true,
    spots: [
      'who_makes|which_brand|what_brand|best_brand|good_brand|whats_a_good_brand|recommend_a_brand|which_make',
    ],
    says: 'I name no makes: tell me what it is for, and I’ll say the size and what to look for.',
    lines: [
      'Look for a full data sheet, a local warranty of some years, and limits in amps and volts on the label.',
    ],
    next: ['what do I need to buy?'],
  },
  {
    name: 'heavy-plug',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'connector|connectors|what_plug|which_plug amps|amp|a|grey|gray which|what -pin -solar -panel* -mains -fuse -size -kettle -charger -inverter -in_what',
    ],
    says: 'For 20 to 40 A the grey two-pole plug rated 50 A; a cigarette-type plug is only for up to 10 A.',
    lines: [
      'Its contacts are crimped, not soldered, to cable of 6 mm² or more, with a fuse at the battery that suits the cable.',
    ],
    caution: 'fuse-at-battery',
    next: ['what cable for 30A over 5 m?'],
  },
  {
    name: 'shunt-place',
    spots: [
      'which negatives|minuses|minus_cables|negative_cables shunt',
      'shunt where|how connect*|hook|wire|go|goes|fit|fitted|mount|put|install -cost',
    ],
    says: 'In the minus cable, right at the battery: battery on one side of it, everything else on the other.',
    lines: [
      'Nothing else stays on the battery’s minus post: loads, chargers and the earth strap all go to the far side.',
      'Its thin plus wire goes to battery plus through its own small fuse. Set its Ah, then charge right up once.',
    ],
    next: ['what is a shunt?'],
  },
  {
    name: 'busbar',
    isBeforeSums: true,
    spots: [
      'bus_bar|busbar|bus_bars|busbars need|do_i|worth|or|stack',
      'stack*|pile* terminal|post|posts|lugs|everything battery',
    ],
    says: 'From about four wires on, fit a busbar: a stack of lugs on a post works loose and runs hot.',
    lines: [
      'One fat cable with the main fuse goes to the plus bar, each circuit leaves it through its own fuse.',
      'The biggest lug goes on the post first, the small ones above it.',
    ],
    caution: 'fuse-at-battery',
    next: ['what is a busbar?'],
  },
  {
    name: 'lugs-and-joins',
    isBeforeSums: true,
    spots: [
      'crimp*|lug|lugs hammer|vice|pliers|without|solder*|proper',
      'join|joining|connect twist*|tape|solder* wire|wires|cable -mains -inlet -powerpoint -brown',
    ],
    says: 'Crimp it with a tool made for that size; never twist and tape, and a hammered lug runs hot.',
    lines: [
      'Thin wire: an insulated butt joiner and a ratchet crimper. From about 10 mm² on: a hydraulic crimper, or have the leads made up.',
      'Heat shrink over it, and pull hard: nothing may move.',
    ],
    next: ['what cable for 10A over 5 m?'],
  },
  {
    name: 'leads-order',
    spots: [
      'which|what order|first|side|comes_off take|taking|takes|remove|removing|disconnect*|off battery|leads|terminal|terminals|post -panel* -solar -controller -regulator -jump* -flat',
      'which|what comes_off|take_off|goes_on|come_off first -panel* -solar -controller -jump*',
    ],
    says: 'Minus comes off first and plus last; going back on, plus first and minus last.',
    lines: [
      'With minus off, a spanner that touches metal does no harm. Rings and watch off; everything switched off first.',
      'A solar panel comes off its controller before the battery does.',
    ],
  },
  {
    name: 'wire-colours',
    isBeforeSums: true,
    spots: [
      'red|black|brown|colour|colours|color|colors positive|plus always|mean|means|which wire|wires|lead|leads|red -jump* -clamp* -mains -volt_plug',
    ],
    says: 'No, don’t trust colours: measure. Red probe on plus, black on minus; a minus sign means swapped.',
    lines: ['Brown and blue can be mains, which is for an electrician. Mark what you’ve measured with tape.'],
    next: ['how do I measure volts with a multimeter?'],
  },
  {
    name: 'trickle-lithium',
    isBeforeSums: true,
    spots: ['trickle|maintainer lithium*|lifepo*|lfp'],
    says: 'Better not: lithium needs no trickle. Store it about half full and disconnected.',
    lines: [
      'Top it up twice a year. Held full for months it ages faster, and a maintainer’s repair mode can harm it.',
    ],
    next: ['how do I store a battery?'],
  },
  {
    name: 'trickle-lead',
    spots: [
      'trickle|maintainer agm|gel|lead_acid|battery|winter|on ok|okay|leave|stays|stay|on|winter -lithium* -lifepo* -solar',
    ],
    says: 'Yes, if it is a smart one with a float stage set to AGM: it may stay on all winter.',
    lines: [
      'An old one without stages goes on for a day each month only. If the battery gets warm or smells, switch it off at the wall.',
    ],
    next: ['what is float?', 'how do I store a battery?'],
  },
  {
    name: 'stored-on-solar',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'disconnect|unhook solar|panel leave|leaving|left weeks|months|off|away|winter|storage -driv* -alternator -how_long -overcharg*',
    ],
    says: 'Leave it on the solar if the panel sees the sun; in a shed charge it full and take the minus off.',
    lines: [
      'The controller keeps AGM full and makes up for what clocks and alarms take.',
      'Lithium is better off at about half, disconnected, with the panel covered or off.',
    ],
    next: ['how do I store a battery?'],
  },
  {
    name: 'agm-in-frost',
    spots: ['how_cold|too_cold|freeze*|frozen agm|gel|lead_acid|lead -lithium* -lifepo* -how_long'],
    says: 'A charged AGM stands −20 °C and colder; a flat one can freeze and split from about −10 °C.',
    lines: [
      'In the cold it gives less, about a fifth less at 0 °C, and charges slower. Never charge one that is frozen: thaw it first.',
    ],
    next: ['can I charge lithium at 0 °C?'],
  },
  {
    name: 'battery-killers',
    isBeforeSums: true,
    spots: [
      'what kills|ruins|wrecks|destroys a_battery|batteries|agm|lithium -usb -socket -could',
      'quickest|fastest|best way kill|ruin|wreck|destroy battery|batteries|agm|lithium',
    ],
    says: 'Standing flat kills lead-acid fastest; heat, and charging below 0 °C, kill lithium.',
    lines: ['Next come too high a charging voltage, and for AGM going below half day after day.'],
    next: ['how low can I take an AGM?', 'how do I store a battery?'],
  },
  {
    name: 'half-for-use',
    isBeforeSums: true,
    spots: [
      'half battery|agm|capacity useless|wasted|cant_use|cannot_use|not_usable|unusable|no_use true|reckon*|says|really|why',
    ],
    says: 'True of AGM and lead-acid: plan on half of it, as going lower wears it out. Of lithium plan on 80 %.',
    lines: ['The lower half is there in need, but each time it costs some of the battery’s life.'],
    next: ['what is depth of discharge?'],
  },
  {
    name: 'hour-rate',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'does_c|whats_c|is_c|s_c mean|on|label -rate -rating -degree* -shed -charger -how_long',
      'whats_c|at_c what|whats|mean|means -rate -rating -degree* -charge -volts -shed -charger -how_long',
    ],
    says: 'The hours it was measured over: 100 Ah at C20 is 5 A for 20 hours.',
    lines: [
      'Drawn faster, lead-acid gives less: an AGM emptied in two hours about a fifth less; lithium hardly any.',
      'C10 means measured over 10 hours. Compare batteries at the same figure.',
    ],
    next: ['what is an amp hour?', 'what is a C-rate?'],
  },
  {
    name: 'load-terminals',
    isBeforeSums: true,
    spots: ['load_terminal*|load_output*|load_side|load_connection* -fuse_size'],
    says: 'For small things like lights: they switch off when the battery is low. A fridge goes to the battery.',
    lines: [
      'They carry 10 to 20 A, as the controller’s label tells. Never an inverter; that goes to the battery, with its own fuse.',
    ],
    next: ['what does a solar controller do?'],
  },
  {
    name: 'ignition-wire',
    isBeforeSums: true,
    spots: [
      'ignition_wire|ignition_signal|ignition_feed|trigger_wire|ignition_lead what|whats|which|where|need',
    ],
    says: 'A thin wire to a fuse live only with the ignition on: it tells the DC-DC that the engine runs.',
    lines: [
      'Smart alternators need it, as their volts can drop on the road. Give it a small fuse of its own where it starts.',
    ],
    next: ['what is a DC-DC charger?'],
  },
  {
    name: 'monitor-synced',
    isBeforeSums: true,
    spots: ['synced|synchronised|synchronized|sync mean*|what|whats|how'],
    says: 'Synced: the monitor has seen the battery full, and counts down from 100 % since then.',
    lines: [
      'Charge right up once and it syncs by itself, or set it to 100 % by hand. It drifts in weeks without a full charge.',
    ],
    next: ['what is a shunt?'],
  },
  {
    name: 'time-to-go',
    isBeforeSums: true,
    spots: ['time_to_go|time_remaining|time_left infinit*|forever|endless'],
    says: 'It means that nothing goes out just now, or more comes in than goes out.',
    lines: ['It only reckons with this minute’s amps: switch the fridge on and it names hours again.'],
    next: ['what is a shunt?'],
  },
  {
    name: 'wind-turbine',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'wind_turbine|wind_generator|windmill|wind_gen|wind_power any_use|worth|good|work|works|better|get|should|coast',
    ],
    says: 'Seldom: it gives its label’s watts only in near gales, and in a camp’s breeze next to nothing.',
    lines: [
      'Half the wind gives an eighth of the power. It is noisy and needs a mast; the same money in panels makes more nearly everywhere.',
    ],
    next: ['what solar do I need?'],
  },
  {
    name: 'greener-battery',
    isBeforeSums: true,
    spots: ['environment|planet|greener|eco_friendly better|best|worse|which|what'],
    says: 'Lithium (LFP) for most: it lasts several times as long; lead-acid is the better recycled of the two.',
    lines: ['Hand either in at a battery recycler; neither goes in the bin.'],
    next: ['agm or lithium?'],
  },
];
