import type { PlainQuestion } from './plain-question.ts';

/** Charging: what goes together, what has to wait, what harms. */
export const chargingQuestions: readonly PlainQuestion[] = [
  {
    name: 'charge-in-the-cold',
    isBeforeSums: true,
    spots: [
      'how_cold|too_cold|cold_limit lithium*|lifepo*|lfp -what_size -how_long',
      'charg* lithium*|lifepo*|lfp freez*|frozen|frost|frosty|cold|below_zero|sub_zero|snow|winter -agm -what_size -how_long -how_much',
    ],
    says: 'Not below 0 °C: charging lithium when its cells are frozen ruins them. Using it is fine.',
    lines: [
      'It is the battery’s own temperature that counts. Many stop the charge by themselves when cold: see whether yours says so.',
      'Keep it in the cabin, let it warm up first, or get one with a heater; up to 5 °C charge gently.',
    ],
  },
  {
    name: 'phones-off-the-car',
    spots: [
      'phone|phones|usb|tablet car|starter|cranking|ute|vehicle batter* charg* -power_bank -how_long -how_many -inverter',
      'best|easiest|good way charg* phone|phones|usb|power_bank|tablet|devices',
      'charg* phone|phones|tablet kill|flatten|drain|flat|hurt batter*|car',
    ],
    says: 'Plug them into a 12 V USB socket, best while you drive: a phone takes only about 1½ Ah a charge.',
    lines: [
      'With the engine off a few phone charges won’t stop a healthy car from starting; a night of fridge or lights will.',
      'Pull the plug overnight, as some sockets stay live. Camping for days, a power bank filled on the drive is the easy way.',
      'An inverter for phones only wastes power.',
    ],
    next: ['how long can I run lights off the car battery?', 'what is a power bank?'],
  },
  {
    name: 'solar-while-driving',
    isBeforeSums: true,
    spots: [
      'solar|panel|panels driv*|engine|alternator|dcdc|dc_dc|isolator both|same_time|together|connected|plugged|on|leave|disconnect|unplug|while|when -how_long -how_much -hours -better -worth -enough -or_a -make* -what_size -what_solar -should_i_get',
      'turn_off|disconnect*|unplug*|switch_off|turned_off|leave solar|panel|panels when|while|using|plugged charger|mains|park|hook*|generator -how_long',
      'solar|panel|panels alternator|dcdc|dc_dc|charger|mains same_time|together|both|at_once|fight -how_long -how_much -better -worth -hours',
    ],
    says: 'Both can stay on: solar and another charger each give what they can, and nothing is hurt.',
    lines: [
      'The one with the higher volts does more of the work while the battery is nearly full; the other eases off.',
      'The panel must go through its controller. Take loose panels in before you drive off.',
    ],
    next: ['isolator or dcdc?', 'what is float?'],
  },
  {
    name: 'panel-alone',
    spots: [
      'fridge|lights|pump|inverter|things|gear|stuff|appliances straight|directly|direct|without_a_battery|no_battery panel|panels|solar -how_much -what_size',
      'need batter* solar|panel|panels do|without|if -what_size -how_big -how_much -how_many',
    ],
    says: 'You need a battery: a panel alone drops out with each cloud, and at night there is nothing.',
    lines: [
      'The panel charges the battery through a controller, and the things run off the battery.',
      'Its volts jump between 0 and over 20 V by itself, which fridges and inverters don’t stand.',
    ],
    next: ['how many solar panels to run a fridge?', 'what battery do I need for a fridge?'],
  },
  {
    name: 'panel-volts',
    spots: [
      'panel|panels|solar volts|v|voltage too_much|too_high|hurt|damage|safe|ok|okay|fry batter* -series -parallel -controller_limit -drop',
    ],
    says: 'That’s normal: a panel for 12 V shows 18 to 22 V, and the controller brings it down.',
    lines: [
      'Never put it straight on the battery. Check that the controller’s volt limit is above the panel’s open-circuit volts.',
    ],
    next: ['what is open circuit voltage?', 'what is an MPPT controller?'],
  },
  {
    name: 'power-bank',
    spots: [
      'charge|charging power_bank|powerbank|power_banks solar|panel|panels|car|driving|battery -how_long -how_many -phone*',
    ],
    says: 'Yes: off a panel with a USB outlet, or better off a 12 V USB socket on the battery.',
    lines: [
      'A bare panel without a USB regulator must not go on a power bank.',
      'Straight off a small panel it stops with each cloud, and some power banks don’t start again by themselves.',
    ],
  },
  {
    name: 'idling',
    spots: [
      'idle|idling|engine_running|run_the_engine|running_the_engine|leave_the_engine charge|charges|charging|recharge batter*|it|second -how_long -how_many_hours -inverter -tent',
    ],
    isBeforeSums: true,
    says: 'It does, but poorly: at idle an alternator gives little, and the engine is stressed for it.',
    lines: [
      'An hour on the road does more than two of idling. At camp a panel or a small generator is the better way.',
      'Never idle in or beside a tent, or under an open van: the exhaust kills.',
    ],
    caution: 'carbon-monoxide',
    next: ['how many solar panels to run a fridge?', 'isolator or dcdc?'],
  },
  {
    name: 'charge-asleep',
    spots: [
      'charge|charging|charger safe|ok|okay|leave|dangerous sleep|asleep|overnight|night|unattended -phone* -inverter -how_long -gas -smell* -generator -solar',
    ],
    says: 'With a charger set for that battery, good cable and fuses, yes: it stops by itself when full.',
    lines: [
      'Not with a battery that is swollen, leaking, very hot or smells, and not with a wet lead-acid one inside.',
      'Charger and battery need air round them. A generator never runs while you sleep beside it.',
    ],
    caution: 'carbon-monoxide',
  },
  {
    name: 'dcdc-parked',
    spots: [
      'dcdc|dc_dc|dc_to_dc|isolator|vsr drain*|flatten|flat|draw|kill|pull parked|engine_off|off|camp|night|overnight|stopped|car|starter|main',
    ],
    isBeforeSums: true,
    says: 'No: it switches off with the engine, by its ignition wire or as the volts fall.',
    lines: [
      'Check that yours does: engine off for some minutes, and its light should show no charging.',
      'One wired without ignition sense behind a smart alternator may stay on: then fit that wire.',
    ],
    next: ['isolator or dcdc?'],
  },
  {
    name: 'two-on-one-charger',
    spots: [
      'charge|run two|both|couple batter*|batteries one|single|same dcdc|dc_dc|charger|controller|regulator',
    ],
    says: 'Yes, if the two are of one kind and joined in parallel: to the charger they are one big battery.',
    lines: [
      'Two of different kind or age need a charger each, or a switch so that only one is on at a time.',
    ],
    caution: 'mixed-batteries',
    next: ['what is parallel?'],
  },
  {
    name: 'phone-charge-time',
    spots: ['how_long|how_many_hours charge|charging phone|phones|tablet -off -run -last -power_bank -from'],
    says: 'About 1½ to 2½ hours on a good USB socket, taking about 1½ Ah of the battery.',
    lines: [
      'A weak socket of 1 A or less takes twice as long; a USB-C fast charger on 12 V under an hour and a half.',
    ],
  },
  {
    name: 'solar-no-controller',
    spots: [
      'panel|panels|solar without|no|need|skip|directly|straight|direct controller|regulator -what_size -which -how_big -fuse -two -amp -amps',
      'panel|panels|solar directly|straight|direct batter* -fuse -how_long',
    ],
    says: 'Use a controller: a panel straight on a battery overcharges it, and lithium can be ruined.',
    lines: [
      'The panel goes to the controller, the controller to the battery, with a fuse at the battery.',
      'Only a trickle panel of 5 W or so on a big lead-acid battery does without.',
      'Connect the battery to the controller first, then the panel; take them off the other way round.',
    ],
    next: ['what is an MPPT controller?', 'what controller for a 200W panel?'],
  },
  {
    name: 'solar-fuse',
    isBeforeSums: true,
    spots: [
      'fuse panel|panels|solar controller|regulator|panel|panels need|do_i|between|where -size -what_amp -rating',
    ],
    says: 'One or two panels need none on their side; the wire from the controller to the battery always does.',
    lines: [
      'That fuse sits at the battery end: the battery is what can burn the cable.',
      'From three panels in parallel on, each needs its own, as two could feed a fault in the third.',
      'A switch or breaker between panel and controller is handy all the same, made for DC.',
    ],
    next: ['what fuse for a 20A controller?', 'what cable for a 200W panel, 5 m?'],
  },
  {
    name: 'solar-overcharge',
    spots: [
      'overcharg*|over_charg*|cook|boil|too_much solar|panel|panels|charger batter*|agm|lithium -smell* -hot -hiss*',
      'leave solar|panel|panels|charger connected|on|plugged_in|plugged all|always|overnight|week*|month*|time|winter -inverter -how_long',
    ],
    says: 'With a controller or smart charger set to your battery, leave it on: it eases off by itself.',
    lines: [
      'An old charger without stages is taken off when the battery is full.',
      'Lithium is happier not kept full for months: charge it to about half to three quarters and switch all off.',
      'Too hot to touch, swollen or smelling? Stop charging, and keep away from it.',
    ],
    next: ['what is float?', 'how do I store a battery?'],
  },
  {
    name: 'use-while-charging',
    isBeforeSums: true,
    spots: [
      'use|run|running|using while|when|whilst|same_time|as_its charging|charge|charger|on_charge fridge|batter*|it|stuff|lights|gear|loads -driv* -how_long -how_much -freez* -cold -solar -panel* -alternator -phone*',
    ],
    says: 'Yes, run things while it charges: they take their share first, and the rest fills the battery.',
    lines: [
      'It only takes longer. A 20 A charger with a 5 A fridge on puts about 15 A into the battery.',
      'If more is drawn than comes in, the battery still goes down, just slower.',
    ],
  },
  {
    name: 'lithium-swap',
    spots: [
      'swap|replace|change|upgrade|switch|drop_in|dropin|go lithium|lifepo* charger|controller|dcdc|alternator|everything|else|need|just|straight|same -worth -better -how_long -how_many -what_size -cheaper',
    ],
    says: 'The battery drops in, but check what charges it: each charger needs a lithium setting.',
    lines: [
      'Alternator: go through a DC-DC charger, as lithium can draw more than the alternator stands.',
      'Solar controller and mains charger: set them to lithium (about 14.2 to 14.6 V, no equalising).',
      'Check the battery’s own limit: many 100 Ah ones stop at 100 A. No charging below 0 °C.',
    ],
    next: ['agm or lithium?', 'isolator or dcdc?'],
  },
  {
    name: 'lithium-on-a-plain-charger',
    isBeforeSums: true,
    spots: [
      'charger lithium*|lifepo* can|use|ok|okay|safe|will|does|need|special normal|ordinary|agm|lead_acid|old|standard|regular|car_battery_charger|special -how_long -which -better -or_a',
      'stage_charger|old_charger|agm_charger|lead_acid_charger lithium*|lifepo* nay|yay|ok|keep|can|use|any_use|fine|work|with -how_long -which -never -stalls -dcdc',
    ],
    says: 'Only with a lithium setting: an ordinary charger may not fill it, and some of its modes do harm.',
    lines: [
      'Never its repair, desulphate or equalise mode: over about 14.6 V a lithium battery cuts out or is hurt.',
      'On the AGM setting it mostly gets to about 95 %; take it off then, and never below 0 °C.',
    ],
    next: ['what is a BMS?', 'agm or lithium?'],
  },
  {
    name: 'recharge-often',
    spots: ['how_often charg*|recharg*|top_up|full batter*|agm|lithium|it|them'],
    says: 'AGM: as soon as you can, and right up to full at least once a week. Lithium: when it suits you.',
    lines: [
      'Lead-acid left half empty hardens and loses capacity for good; lithium doesn’t mind.',
      'In storage: AGM every two or three months, lithium twice a year.',
    ],
    next: ['how do I store a battery?', 'what is sulphation?'],
  },
  {
    name: 'mixed-panels',
    spots: [
      'panel|panels different|mix|mixing|mixed|mismatched|unequal|odd size*|watt*|watts|together|join|kinds|types|brands|ones|panels -series_or -how_much -controller',
    ],
    says: 'In parallel, yes, if their volts are much the same; in series the weaker holds back the stronger.',
    lines: [
      'Look at the Vmp on each label: within about half a volt of each other is fine.',
      'Quite different panels do best on a controller each: both controllers may go to one battery.',
    ],
    next: ['parallel or series for 2 panels?'],
  },
  {
    name: 'clouds',
    spots: [
      'cloud*|overcast|grey|no_sun|raining|rains|rain|rainy panel|panels|solar work|works|any_good|do_anything|useless|worth|charge|make_any* -how_much -how_long -enough',
      'how_much_sun|how_many_sun|how_much_light need* panel|panels|solar|work',
    ],
    says: 'They work, but weakly: a grey day gives about a quarter of a sunny one, thick cloud a tenth.',
    lines: [
      'Full sun on the panel is what counts: shade on one corner can take most of it.',
      'So plan the battery for two grey days, or drive a little in between.',
    ],
    next: ['200W panel in June, what will it make?', 'what are peak sun hours?'],
  },
  {
    name: 'facing',
    spots: [
      'direction|face|facing|angle|tilt|point panel|panels|solar best|which|what|should|how|right|way|for -how_much -worth -gain -flat -make -more',
    ],
    says: 'Face them to the midday sun: north in Australia, south in Europe or North America.',
    lines: [
      'Tilt them about as many degrees as your latitude; some 15 more in winter, 15 less in summer.',
      'Near enough will do: 20 degrees off costs only some 5 %. Flat costs little in summer, and a third or more in a southern winter.',
      'Turn loose panels in the morning and the afternoon for about a fifth more.',
    ],
    next: ['200W panel in perth in july, what will it make?'],
  },
  {
    name: 'new-battery-first',
    spots: [
      'new|brand_new|first batter*|agm|lithium charge first|before|straight_away|out_of_the_box -how_long -old -mix -worth',
    ],
    says: 'Charge a new battery right up once before the first trip.',
    lines: [
      'AGM comes at about three quarters and loses a little on the shelf; lithium is often sent half full.',
      'A monitor is set to 100 % after that first full charge.',
    ],
  },
  {
    name: 'ways-to-charge',
    spots: [
      'how|ways|way charge|recharge|topped_up|power camp|camping|bush|off_grid|beach|no_power without|no|not|different|best|options|all driv*|mains|power|engine|ways -how_long -how_much -phone* -what_size -hours',
      'how charg*|recharg* batter*|lithium|agm|it dont_drive|not_driving|without_driving|no_driving|dont_move|staying_put|stay_put|parked_up',
      'ways_to_charge|options_for_charging|how_can_i_charge|how_else_can_i_charge',
    ],
    says: 'Three ways: the sun (a panel and controller), driving (a DC-DC charger), or mains and a charger.',
    lines: [
      'Staying put, solar does it: 160 to 200 W keep a fridge and lights going in fair weather.',
      'On the road, a 25 A DC-DC puts in about 20 Ah for each hour’s drive.',
      'A small generator with a mains charger is the backup for grey weeks.',
    ],
    next: ['how many solar panels to run a fridge?', 'isolator or dcdc?'],
  },
];
