import type { PlainQuestion } from './plain-question.ts';

/**
 * What people ask of keeping a battery, of water and gas, of buying a used one, and of small jobs: no sum, and words that
 * few other questions have. Common practice, and makers' sheets that agree.
 */
export const careQuestions: readonly PlainQuestion[] = [
  {
    name: 'lithium-used-in-frost',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'lithium|lifepo* not_charg*|no_charg*|arent_charg*|isnt_charg*|without_charg*|only_us*|only_discharg*|just_running|to_use cold|minus|frost|freez*|snow|below_zero|subzero -start* -why -wont -how_long -how_many -hours -hour -enough -days -who',
    ],
    says: 'Yes: lithium may be used in frost, to about −20 °C. It is charging below 0 °C that ruins it.',
    lines: [
      'It gives some tenths less in the cold, and gives it back once warm.',
      'Mind what charges by itself: a panel or the alternator in the morning.',
    ],
    caution: 'lithium-cold',
    next: ['how do I store a battery?'],
  },
  {
    name: 'plugged-in-for-months',
    hasAnyFigures: true,
    spots: [
      'plugged_in|plugged_into|on_charge|on_the_charger|on_hook_up|on_hookup|on_mains leave|left|keep|stay all_winter|over_winter|winter|for_months|all_the_time|permanently -solar -panel* -inverter -how_long -fridge',
    ],
    says: 'On a smart charger set to your battery, yes: it eases off by itself. Off an old one without stages.',
    lines: [
      'Lithium is happier not kept full for months: about half full, and everything off.',
      'Look in now and then: too hot to touch, swollen or smelling, and it comes off.',
    ],
  },
  {
    name: 'home-for-winter',
    isBeforeSums: true,
    spots: [
      'take|bring|go|goes|stay|stays|left|leave|keep home|inside|indoors|house|shed|on_the_tongue|in_the_van|in_the_caravan|in_the_trailer winter|frost|freezes|freezing|lay_up batter*|agm|it -run -heater -lithium -panel* -plugged -charger -charging -idling -fridge -how_long',
    ],
    says: 'It may stay, full and unhooked: full lead stands hard frost. At home it’s easier to top up.',
    lines: [
      'A flat lead-acid one freezes and splits from about −10 °C: charge it first, then every two or three months.',
      'Lithium likes it dry and above freezing, about half full, and takes no charge below 0 °C.',
    ],
    next: ['how do I store a battery?'],
  },
  {
    name: 'store-half-or-full',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'lithium|lifepo* full|hundred|percent|half storage|store|storing|winter|stored bad|leave|keep|or|harm -gel -run -how_long -how_many -hours -socket -panel* -agm',
    ],
    says: 'Lithium stores best about half full: months at 100 % age it a little, flat ones may die.',
    lines: [
      'A few weeks full do no harm. Unhook it, keep it dry and not hot, and look at it twice a year.',
      'Lead-acid is the other way round: always full.',
    ],
    next: ['how do I store a battery?'],
  },
  {
    name: 'tap-water-in-it',
    isBeforeSums: true,
    spots: [
      'tap_water|rain_water|rainwater|creek_water|river_water|bore_water|bottled_water|spring_water|boiled_water top*|batter*|cells|it|put -pump -tank -kettle -drink*',
    ],
    says: 'No, distilled only: other water leaves salts that shorten its life, though once won’t kill it.',
    lines: [
      'Fill to just over the plates, after charging. Goggles and gloves: it is acid.',
      'Sealed, AGM, gel and lithium never get any.',
    ],
    caution: 'battery-gas',
  },
  {
    name: 'top-up-water',
    isBeforeSums: true,
    spots: [
      'distilled|deionised|demineralised how_often|when|how_much|what|which|need|have_to',
      'how_often|when top_up|add|check water|cells|electrolyte|wet -tank -pump',
    ],
    says: 'Distilled water only, every month or two of use: just over the plates, after charging.',
    lines: [
      'Tap, rain or creek water leaves salts behind that shorten its life. Once won’t kill it.',
      'Goggles and gloves: it is acid. Sealed, AGM, gel and lithium never get any.',
    ],
    caution: 'battery-gas',
  },
  {
    name: 'gas-apart',
    isBeforeSums: true,
    spots: [
      'gas_bottle|gas_bottles|propane|lpg|gas_cylinder|gas_locker batter* own_locker|own_box|separate|outside_locker -smell* -leak* -heater -hiss*',
    ],
    says: 'Yes, that is how it should be: gas in its own locker, vented low to the outside, battery apart.',
    lines: ['Its locker must be tight to the inside, with nothing electric in it.'],
  },
  {
    name: 'gas-and-battery',
    isBeforeSums: true,
    spots: [
      'gas_bottle|gas_bottles|propane|lpg|gas_cylinder|butane batter* same|together|next_to|beside|share|one_locker -smell* -leak* -heater -hiss* -own',
    ],
    says: 'No, not in one locker: gas that leaks sinks and stays, and a spark at a post lights it.',
    lines: ['The gas gets its own locker, vented low to the outside; the battery goes in another.'],
  },
  {
    name: 'sealed-tub',
    isBeforeSums: true,
    spots: [
      'lead|wet|flooded sealed_tub|sealed_box|closed_box|airtight|air_tight|plastic_tub|lid_shut|lid_closed charg*|ok|safe|reason|vent* -hours -how_long -how_many',
    ],
    says: 'Don’t: on charge it gives off gas, which collects in a closed tub. Lid off, or vent it outside.',
    lines: ['Not where people sleep, and no spark or flame near it. AGM, gel and lithium need no vent.'],
    caution: 'battery-gas',
  },
  {
    name: 'used-lithium',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'used|second_hand|secondhand|nd_hand|ex_demo lithium|lifepo* look|check|fair|worth|buy|buying|deal|cycles|trust|wants|test -fridge -days -hours -heater -inverter -new -how_long -parallel -mix -replace',
    ],
    says: 'Ask for its app: health, cycles, and cells within 0.05 V. Then run a known load from full.',
    lines: [
      '80 % health and some 1000 cycles are fair at up to half of the new price.',
      'No app, a swollen or opened case, or no maker’s name on it: leave it.',
    ],
    next: ['how do I test a battery?'],
  },
  {
    name: 'used-panel',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'used|second_hand|secondhand|nd_hand panel|panels look|check|fair|worth|buy|buying|deal|test -amps_used -how_long -battery',
    ],
    says: 'In full sun measure it alone: volts and short-circuit amps near those of its label.',
    lines: [
      'Within a tenth is good. Brown spots, cracked glass or water behind it: leave it.',
      'Up to half of a new one’s price a watt is fair; new ones are cheap.',
    ],
  },
  {
    name: 'used-lead',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'used|second_hand|secondhand|nd_hand|year_old|years_old|his_old battery|batteries|agm|leisure|deep_cycle good_buy|quid|dollars|bucks|pounds|euro*|check|worth|daft|any_good|buy|good_deal|offered -my -our -mine -ours -ive -weve -how_long -how_many -parallel -mix -new -dies -dead -lithium -panel* -fridge -hours -heater -caravan -campervan -camper -box -what_size',
    ],
    says: 'Only if it passes a test: full, a night’s rest, then 5 A for hours. Past 5 years leave it.',
    lines: [
      'After that night 12.7 V is good, under 12.5 V is tired. 100 Ah should run 5 A for about 10 hours to half.',
      'A third of the new price is plenty; its date is stamped on the case or a post.',
    ],
    next: ['how long do batteries last?'],
  },
  {
    name: 'too-good',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'too_good|genuine|is_it_real|fake|can_i_trust|legit|scam batter*|lithium|agm|ah -monitor -meter -reading -volts -days -hours -nights -fridge -heater',
      'weighs|weight kilos|kilo|kg batter*|lithium|ah dies|only|impossible|too_light -roof -trailer -van -axle -vs -nights -against',
    ],
    says: 'Weigh it: 100 Ah of lithium is 10 to 13 kg, of AGM about 30. Much lighter is not what it says.',
    lines: [
      'The same goes for a price far under all others. Prove it: full, then a known load till it stops.',
      'Under 80 % of its label on the first test, send it back.',
    ],
  },
  {
    name: 'on-a-ferry',
    isBeforeSums: true,
    spots: [
      'ferry|ferries batter*|lithium unhook|disconnect*|take|bring|allowed|carry -hours -how_long -days -charg* -fridge -driving -start* -left -ah',
    ],
    says: 'Fixed in the vehicle it mostly goes aboard as it is: switch all off, and ask the ferry line.',
    lines: ['A loose one: posts covered, upright and strapped down. Gas bottles shut.'],
  },
  {
    name: 'which-post',
    isBeforeSums: true,
    spots: [
      'how|which tell|know|find|which|work_out terminal|post|pole plus|positive minus|negative|rubbed|paint|worn|unmarked|marking*|is|faded -first -shunt -fuse -switch -read* -reads -holder',
    ],
    says: 'Put a meter on it: no minus sign before the volts means the red probe is on plus.',
    lines: ['On a car battery the plus post is the thicker one. Never try by touching leads.'],
  },
  {
    name: 'which-spanner',
    isBeforeSums: true,
    spots: ['spanner|wrench|what_socket size|what|which|need terminal*|post*|lug* -across -dropped -fell'],
    says: 'Mostly 10 mm for clamps and M6 bolts, 13 mm for M8; wrap its handle in tape.',
    lines: ['Minus comes off first: then a slip on the plus makes no short.'],
  },
  {
    name: 'torque',
    isBeforeSums: true,
    spots: [
      'torque|nm|newton lug|lugs|bolt*|terminal*|post|posts',
      'how_tight lug|lugs|bolt*|terminal*|post|posts',
    ],
    says: 'Usual is 8 to 10 Nm on M8 and 4 to 6 Nm on M6; the figure on the battery’s sheet goes first.',
    lines: ['Lug flat on the post, washers on top. Check it again after the first trip.'],
  },
  {
    name: 'post-covers',
    isBeforeSums: true,
    spots: [
      'cover|covers|boot|boots|cover_em terminal*|posts|poles kids|little_ones|need|what|which|have_to -crust -corro* -wet -water -wire -pitch',
    ],
    says: 'Rubber boots on both posts, or a box with its lid held down: a dropped spoon is a short.',
    lines: ['12 V shocks nobody, but a short across the posts burns at once. A fuse belongs at the battery.'],
  },
  {
    name: 'wet-hands',
    isBeforeSums: true,
    spots: ['wet_hands|wet_feet|wet_fingers|sweaty_hands -inverter -mains -plug_in -hookup -socket_outlet'],
    says: 'At 12 V wet hands feel a tingle at most. Mains and an inverter’s sockets can kill.',
    lines: ['The danger of 12 V is a short: rings and tools across the posts burn at once.'],
  },
  {
    name: 'label-gone',
    isBeforeSums: true,
    spots: [
      'no_sticker|no_label|label_is_gone|label_fell|sticker_is_gone|label_has_gone|cant_read_the_label|faded_label|label_worn ah|amp_hours|capacity|size|big|what -fridge -panel* -watts',
    ],
    says: 'Weigh it: about 3 kg for each 10 Ah is lead-acid, about 1.2 kg lithium. A run-down test is surer.',
    lines: [
      'Full, rested, then 5 A: each hour to 12.2 V at rest is 5 Ah, and that is half of a lead-acid one.',
    ],
  },
  {
    name: 'e-bike-pack',
    isBeforeSums: true,
    spots: [
      'ebike|e_bike|scooter|power_tool|tool_batter*|drill_batter* fridge|run|instead|for_camp -charge* -charging -panel* -how_long -hours -how_many -days',
    ],
    says: 'Not straight: it has 18 to 48 V. Behind a 12 V converter of 10 A it runs a small fridge.',
    lines: [
      'A 500 Wh pack is about 35 Ah at 12 V, one day of a fridge. Stop well before it is flat: it may not guard itself.',
    ],
  },
  {
    name: 'fridge-on-the-drive',
    isBeforeSums: true,
    spots: [
      'fridge|freezer leave|keep|on|run while_driving|when_driving|while_we_drive|while_i_drive|during_the_drive ok|okay|can|should|safe|may|alright -gas -way -how_long -ah -charge -hours -fuse -mm',
      'switch|turn|off fridge|freezer before_i_drive|before_driving|when_i_drive|before_we_drive -how_long -hours -gas -way',
      'leave|keep|on|run|running|off|turn|switch fridge|freezer driving|travelling|traveling|we_drive|i_drive|on_the_move|on_the_road|the_drive ok|okay|can|should|safe|may|alright|do_you|do_i|do_we|does|need_to|have_to -gas -way -how_long -how_much -how_many -ah -amp* -charg* -hours -fuse -mm -night* -overnight -flat* -stop* -park* -last* -enough -keep_up -solar -panel* -inverter -dcdc -after*',
    ],
    says: 'Leave it on: while you drive the alternator carries it.',
    lines: [
      'Off a dash socket it goes off with the key in most cars. A three-way fridge then runs on 12 V, never on gas.',
    ],
  },
  {
    name: 'tie-it-down',
    isBeforeSums: true,
    spots: [
      'strap*|strapped_down|tied_down|tie_it_down|fixed_down|bolted_down|held_down batter* have_to|need|needs|does|should|must|really -side',
    ],
    says: 'Yes: fix it with a strap or a frame. Loose, it flies in a crash, and its posts can short.',
    lines: ['An AGM of 100 Ah weighs 30 kg: bolt the strap through the floor or to a beam, not to thin ply.'],
  },
  {
    name: 'rings-off',
    isBeforeSums: true,
    spots: [
      'ring|rings|watch|bracelet|jewellery wear*|take_off|on terminal*|battery|posts matter|ok|should|safe|have_to -ring_terminal* -watch_tv -film',
    ],
    says: 'Yes, take it off: a ring between plus and metal gets red-hot at once.',
    lines: ['Wrap the spanner’s handle in tape, and take the minus off first.'],
  },
  {
    name: 'needs-a-vent',
    isBeforeSums: true,
    spots: [
      'do_i_vent|need_a_vent|needs_a_vent|need_venting|needs_venting|have_to_vent|vent_the|ventilate batter*|agm|gel|lithium|box -smell* -inverter -heater -hiss* -charging_now -flooded -wet -lead',
    ],
    says: 'AGM and gel want a little air, lithium none; only a wet one must vent to the outside.',
    lines: [
      'For a wet one: a tight box, a hole low for air in, a hose from its top to the outside, nothing that sparks in it.',
    ],
    caution: 'battery-gas',
  },
  {
    name: 'sealed-gets-none',
    isBeforeSums: true,
    spots: [
      'agm|agms|gel|sealed|lithium topping_up|top_up|top_them_up|distilled|add_water|need_water|water_in_a need|needs|do|does|should|can -wet_cell -boil* -under_water -rain -creek -tank -pump -percent',
    ],
    says: 'No: AGM, gel and lithium are sealed for life. Only wet ones, with caps, get distilled water.',
    lines: ['Don’t pry a sealed one open: it vents by its own valve.'],
  },
];
