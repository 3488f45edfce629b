import type { PlainQuestion } from './plain-question.ts';

/** What a battery stands, and which to take up: common practice, and makers' sheets that agree. */
export const batteryQuestions: readonly PlainQuestion[] = [
  {
    name: 'on-its-side',
    isBeforeSums: true,
    spots: [
      'on_its_side|on_their_side|on_their_sides|laid_on|upside_down|sideways|tipped_on batter*|agm|lithium|lifepo*|gel|they -panel* -fridge -jump* -swol* -leak* -fell -says -liquid -acid',
      'which_way_up agm|batter*|gel|lithium',
      'be_laid_down|lie_on_its_side|laid_flat|be_laid_on agm|batter*|gel|lithium',
    ],
    says: 'On its side, yes for AGM, gel and lithium; upside down none of them, and a wet one stays upright.',
    lines: [
      'Tie it down so that it can’t shift, cover the posts, and look whether its sheet rules a side out.',
      'A wet battery spills acid when it tips.',
    ],
  },
  {
    name: 'engine-bay',
    isBeforeSums: true,
    spots: [
      'lithium|lifepo* engine_bay|bonnet|under_the_hood|engine_compartment|next_to_the_engine can|go|put|fit|ok|okay|safe|mount|live|why|how_come -dcdc -start*',
    ],
    says: 'No: lithium doesn’t belong in the engine bay, it gets too hot there.',
    lines: [
      'Most stop charging at about 45 to 55 °C, and heat ages them fast: put it in the cabin or the tub.',
      'If it must be under the bonnet, take a lead-acid battery made for it, away from the exhaust.',
    ],
    next: ['agm or lithium?'],
  },
  {
    name: 'agm-under-the-bonnet',
    isBeforeSums: true,
    spots: [
      'agm|gel|lead_acid|it|battery bonnet|under_the_hood|engine_bay|engine_compartment can|go|put|fit|ok|okay|safe|mount|live -dcdc -start* -inverter -hot_to -starter -isolator -fridge -panel* -hours -second -linked',
    ],
    says: 'AGM may, well away from the exhaust, but heat halves its life for each 10 °C. Lithium must not.',
    lines: [
      'In the cabin, the tub or a box outside it lasts longer. Use a short thick cable with a fuse at each end.',
    ],
  },
  {
    name: 'self-discharge',
    isBeforeSums: true,
    spots: [
      'lose|loses|losing|go|goes|drain|drains flat|power|charge|themselves|itself just_sitting|by_itself|by_themselves|on_its_own|on_their_own|sitting_in|sitting_around|sitting_unused batter*|agm|lithium|they|it -panel* -shade -how_long -coals',
      'self_discharge how|much|fast|does|do|rate',
    ],
    says: 'Yes, slowly: AGM and lithium lose about 2 to 3 % a month, a wet battery 5 % or more.',
    lines: [
      'Warmth makes it faster. What is left connected, a radio’s memory or an alarm, takes far more.',
      'Top lead-acid up every two or three months, lithium twice a year.',
    ],
    next: ['how do I store a battery?'],
  },
  {
    name: 'concrete-floor',
    isBeforeSums: true,
    spots: ['concrete|cement floor|slab|on_concrete|on_the_concrete -panel* -tent -drill*'],
    says: 'Yes, a concrete floor is fine: it doesn’t drain the cases of today.',
    lines: ['Cool and dry suits a battery that is charged; only a flat lead-acid one freezes.'],
    next: ['how do I store a battery?'],
  },
  {
    name: 'lead-carbon',
    isBeforeSums: true,
    spots: ['lead_carbon|carbon_battery|carbon_lead -monoxide'],
    hasAnyFigures: true,
    says: 'Lead carbon is an AGM that stands being left half full: better than AGM, still heavy.',
    lines: [
      'It takes some 1000 to 2000 cycles to half by makers’ sheets, where a common AGM stands about 600.',
      'It charges as AGM does, and only about half to two thirds of the label is for use.',
    ],
    next: ['agm or lithium?'],
  },
  {
    name: 'dual-purpose',
    isBeforeSums: true,
    spots: [
      'dual_purpose -sine -inverter',
      'marine_battery|marine_batteries any_good|worth|good|better|ok -how_long -cable',
    ],
    says: 'A dual-purpose one does, but less well: it starts an engine and stands some deep use.',
    lines: [
      'It wears out sooner than a true deep-cycle battery. Use a third to a half of its label.',
      'For camp alone a deep-cycle AGM or a lithium one is better for the money.',
    ],
    next: ['agm or lithium?'],
  },
  {
    name: 'used-battery',
    isBeforeSums: true,
    spots: [
      'ups_battery|ups_batteries|telecom|second_hand_batter*|secondhand_batter*|a_used_batter*|ex_solar|used_ups -new -into -in_parallel -mix -swap -how_long',
    ],
    says: 'Only if it passes a test: charge it full, rest it overnight, then run a known load on it.',
    lines: [
      'A good 100 Ah runs 5 A for about 10 hours to half (12.2 V at rest on lead-acid). Half the time is half the battery.',
      'Under 12.5 V after that night, hot on charge or swollen: leave it. Many are swapped out at five years as a rule.',
    ],
    next: ['how long do batteries last?'],
  },
  {
    name: 'car-battery-for-camp',
    isBeforeSums: true,
    spots: [
      'car_battery|car_batteries|starter_battery|lorry_battery|truck_battery|cranking_battery as_house|as_a_house|as_my_house|for_camping|as_the_second|as_a_second|as_my_second|as_second|as_a_leisure|as_a_deep -jump* -flat -dead -dcdc -isolator -charge -new -and',
    ],
    hasAnyFigures: true,
    says: 'At a pinch: use a third of its label at most, as a battery made for starting dies of deep use.',
    lines: [
      'A 100 Ah one is good for about 30 Ah a time. A few dozen times down to half, and it is worn out.',
      'To buy, get a deep-cycle battery: AGM gives half of its label, lithium about 80 %.',
    ],
    next: ['agm or lithium?'],
  },
  {
    name: 'rc-lipo',
    isBeforeSums: true,
    spots: ['lipo|lipos -charger -chgr -lifepo* -smok* -fire -swol* -puff*'],
    hasAnyFigures: true,
    says: 'No: bare LiPo packs catch fire when they are run flat, knocked or charged wrong.',
    lines: [
      'They have no BMS, and their volts suit no 12 V gear: three cells swing from 12.6 down to 9 V.',
      'Take a LiFePO4 battery with a BMS, or a USB power bank for lights.',
    ],
    next: ['what is a BMS?'],
  },
];
