import type { PlainQuestion } from './plain-question.ts';

/** Charging: what goes together, what has to wait, what harms. */
export const charging: readonly PlainQuestion[] = [
  {
    name: 'charge-in-the-cold',
    spots: [
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
    spots: [
      'solar|panel|panels driv*|engine|alternator|dcdc|dc_dc|isolator both|same_time|together|connected|plugged|on|leave|disconnect|unplug|while|when -how_long -how_much -hours -better -worth -enough -or_a -make* -what_size -what_solar -should_i_get',
      'solar|panel|panels alternator|dcdc|dc_dc|charger|mains same_time|together|both|at_once|fight -how_long -how_much -better -worth -hours',
    ],
    says: 'Yes, solar and another charger can both be on: each gives what it can, and nothing is hurt.',
    lines: [
      'The one with the higher volts does more of the work while the battery is nearly full; the other eases off.',
      'The panel must go through its controller. Take loose panels in before you drive off.',
    ],
    next: ['isolator or dcdc?', 'what is float?'],
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
    says: 'With a controller or a smart charger set to your battery you can leave it on: it eases off by itself.',
    lines: [
      'An old charger without stages is taken off when the battery is full.',
      'Lithium is happier not kept full for months: charge it to about half to three quarters and switch all off.',
      'Too hot to touch, swollen or smelling? Stop charging, and keep away from it.',
    ],
    next: ['what is float?', 'how do I store a battery?'],
  },
  {
    name: 'use-while-charging',
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
    name: 'new-battery-first',
    spots: [
      'new|brand_new|first batter*|agm|lithium charge first|before|straight_away|out_of_the_box -how_long -old -mix -worth',
    ],
    says: 'Yes, charge a new battery right up once before the first trip.',
    lines: [
      'AGM comes at about three quarters and loses a little on the shelf; lithium is often sent half full.',
      'A monitor is set to 100 % after that first full charge.',
    ],
  },
  {
    name: 'ways-to-charge',
    spots: [
      'how|ways|way charge|recharge|topped_up|power camp|camping|bush|off_grid|beach|no_power without|no|not|different|best|options|all driv*|mains|power|engine|ways -how_long -how_much -phone* -what_size -hours',
      'ways_to_charge|options_for_charging|how_can_i_charge|how_else_can_i_charge',
    ],
    says: 'Three ways: the sun (a panel and controller), driving (a DC-DC charger), or mains and a charger.',
    lines: [
      'Staying put, solar does it: 160 to 200 W keep a fridge and lights going in fair weather.',
      'On the road, a 25 A DC-DC puts in about 20 Ah for each hour’s drive.',
      'A small generator with a mains charger is the backup for grey weeks.',
    ],
    next: ['what solar do I need?', 'isolator or dcdc?', 'what generator do I need?'],
  },
];
