import type { PlainQuestion } from './plain-question.ts';

/** What to buy of one thing, where no list of a rig is wanted: sorts and sizes, never makers or prices. Common practice. */
export const buyingQuestions: readonly PlainQuestion[] = [
  {
    name: 'which-fridge-to-buy',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'what_fridge|which_fridge|best_fridge|good_fridge|fridge_is_best|fridge_to_buy|fridge_to_get|fridge_should_i -battery -setting -how_long -run -uses -draws -takes -mine -cuts -noise -least -quiet* -place -socket',
    ],
    says: 'A 12 V compressor chest fridge: about 20 L a person, 35 to 45 L for two, 60 L for four.',
    lines: [
      'Chest types lose little cold by the lid. A 40 L one takes about 31 Ah a day in mild weather; thermo boxes take three times that.',
      'Look for a low-volts cut-off that you can set, and keep its vents clear.',
    ],
    next: ['40L fridge, 100Ah AGM, how long?'],
  },
  {
    name: 'which-multimeter',
    isBeforeSums: true,
    spots: [
      'good_multimeter|best_multimeter|which_multimeter|what_multimeter|multimeter_to_buy|buy_a_multimeter|good_clamp_meter|which_clamp_meter',
    ],
    says: 'One that reads DC volts to 0.01 V; a clamp meter for DC amps too is the handiest for a camp.',
    lines: [
      '“DC” on the clamp matters: many measure AC only. A buzzer for continuity finds bad earths and blown fuses.',
      'Never put a meter set to amps across a battery: it shorts it.',
    ],
    next: ['how do I test a battery?'],
  },
  {
    name: 'where-to-buy',
    isBeforeSums: true,
    spots: [
      'where_do_i|where_do_you|where_do_we|where_can_i|where_can_one|where_to buy cable|cables|battery|batteries|panels|panel|lugs|fuses -tickets',
    ],
    says: 'I name no shops: auto electrical, marine and solar suppliers sell by the metre and crimp lugs.',
    lines: [
      'Ask for tinned copper in mm², not “6 mm auto”, which is its outside. Copper-clad aluminium carries less: leave it.',
      'Batteries: from a place that takes it back if it fails a load test.',
    ],
    next: ['what cable do I need?'],
  },
  {
    name: 'used-vehicle',
    isBeforeSums: true,
    spots: [
      'buying|used|second_hand|secondhand dual_battery|dual_batteries|dual_batt|solar_setup look|check|ask|watch',
    ],
    says: 'Look for a fuse at each battery, the battery’s age, and volts on its posts with the engine on.',
    lines: [
      'Engine on, the second battery should read 13.8 V or more within minutes; rested overnight 12.6 V or more.',
      'Warm or brown plugs, bare twists and no fuses: have an auto electrician go over it before you load it.',
    ],
    next: ['how do I test a battery?'],
  },
  {
    name: 'smallest-kettle',
    isBeforeSums: true,
    spots: ['smallest_kettle|smallest_jug|kettle_can_i_run|which_kettle -how_long'],
    says: 'A 12 V kettle of 120 to 150 W, half a litre: 20 minutes to the boil, 5 Ah, and a 15 A fuse.',
    lines: [
      'Gas does it in three minutes, outside. A mains kettle of 700 W or more wants a 1000 W inverter and a big battery.',
    ],
    next: ['150W kettle, how many Ah?'],
  },
  {
    name: 'battery-for-a-panel',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: ['how_big|what_size|how_many battery|batteries|ah can charge|keep_up with|off panel|w|a'],
    says: 'About 1 to 2 W of panel a battery Ah: a 60 W panel suits 30 to 60 Ah, 100 W up to 100 Ah.',
    lines: [
      'In a camp a panel gives about a third of an Ah a watt on a fair day: 60 W about 20 Ah, 100 W about 33 Ah.',
    ],
    next: ['what does a 100W panel make?'],
  },
  {
    name: 'prices-of-one',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'do_i_pay|do_you_pay|would_i_pay|should_i_pay what|whats',
      'price_of battery|lithium|self_heated what|roughly|rough|whats -worth -half -saw',
      'that_lot|lot_cost|all_that_cost how_much|howd|muchd|cost -ah -amp*',
    ],
    says: 'I keep no prices, as they change too fast: I tell you the sizes, and a shop or two prices them.',
    lines: [
      'Compare by what you can use: a 100 Ah lithium gives about 80 Ah for some ten years, a 100 Ah AGM about 50 Ah for some five.',
    ],
    next: ['agm or lithium?', 'what do I need to buy?'],
  },
  {
    name: 'battery-on-a-budget',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'good|best|cheap|cheapest battery under|for_under|up_to|less_than bucks|dollars|quid|money|euro|euros -how_long',
    ],
    says: 'For least money a deep-cycle AGM: of 100 Ah about 50 are for use, for some four to seven years.',
    lines: [
      'By what you can use over its years lithium mostly comes out cheaper. I keep no prices: compare two shops.',
      'Not a starter battery: deep use wears it out in weeks.',
    ],
    next: ['agm or lithium?'],
  },
];
