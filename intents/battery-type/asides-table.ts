import type { Aside } from '../asides.ts';

/** What is asked of a kind of battery beside how much it gives. Common practice; makers' sheets that agree. */
export const typeAsides: readonly Aside[] = [
  {
    name: 'for-few-or-many-nights',
    spots: ['times_a_year|nights_a_year|weekends_a_year|trips_a_year|days_a_year|a_year -how_many -cost*'],
    says: 'Up to some 20 nights a year AGM will do; from about 40 on lithium pays for itself.',
    lines: [
      'AGM stands about 600 cycles to half, but dies of age at 4 to 7 years: twenty nights a year never wear it out.',
      'Lithium lasts 10 years or more and weighs a quarter for the same use: where weight counts it is worth it sooner.',
    ],
    next: ['agm or lithium for a fridge?', 'how heavy is 100Ah agm against lithium?'],
  },
  {
    name: 'self-heating',
    spots: [
      'self_heat*|built_in_heat*|heated|heating|heater batter*|lithium worth|need|odd|trip|snow|pay*|have_to -diesel -gas -run -last -hours',
    ],
    hasAnyFigures: true,
    says: 'Only if you must charge below 0 °C often: for the odd trip, warm the box or charge by day.',
    lines: [
      'It takes about 50 W until its cells are at 5 °C, from the charger first. Using lithium in frost needs no heating.',
      'In the heated van an ordinary one does.',
    ],
    cautions: ['lithium-cold'],
  },
  {
    name: 'which-in-the-heat',
    spots: ['agm|gel|lead lithium|lifepo* hot|heat|canopy|boot|bonnet -hotplate -hot_water -weigh*'],
    says: 'Lithium in a hot canopy, AGM by the engine: heat halves a lead-acid life for each 10 °C.',
    lines: [
      'Lithium may be charged up to about 45 °C: give its box shade and air. Gel and AGM suffer alike.',
      'Cooler still is a spot inside, low and out of the sun.',
    ],
  },
  {
    name: 'lorry-battery',
    spots: [
      'lorry_battery|truck_battery|tractor_battery|car_battery|starter_battery|cranking_battery can|could|ok|okay|any_good|use|work -jump* -isolator -flat',
    ],
    says: 'At a pinch: it is made for starting, so use a third of its label at most, or it soon dies.',
    lines: [
      'A 150 Ah one gives about 50 Ah a time, and weighs 40 kg. A deep-cycle one of 100 Ah gives as much for years.',
    ],
    next: ['agm or lithium?'],
  },
  {
    name: 'sodium',
    spots: ['sodium worth|wait*|good|better|buy|do_they|campers|yet|any_good'],
    hasAnyFigures: true,
    says: 'Don’t wait: 12 V sodium ones exist, but few, and their volts swing more than most gear likes.',
    lines: [
      'They stand frost on charge, but weigh more than LiFePO4 for the same Wh. I size AGM, gel, wet and lithium.',
    ],
  },
  {
    name: 'year-of-cycles',
    spots: ['how_many_years that|is_that|cycles|it -lithium -agm -last*'],
    says: 'Divide by how often you empty it: 500 cycles at 40 nights a year is 12 years, so age ends it first.',
    lines: [
      'Lead-acid mostly dies of age at 4 to 7 years, lithium at 10 or more. Lived in every day, 500 cycles are under 2 years.',
    ],
  },
  {
    name: 'worth-it',
    spots: [
      'lithium|lifepo*|it worth|pay|pays|overkill|justify|extra money weekend*|times|trips|nights|year|money|only|occasional*|few -cells -how_many -how_long',
      'is lithium|lifepo* worth -how_many -how_long',
      'lithium|lifepo* worth_the|worth_it|worth_the_money|being_had|bein_had|pay_off|just_another -how_many -how_long -kg',
    ],
    says: 'For a few weekends a year AGM will do; lithium pays if you camp often or weight counts.',
    lines: [
      'AGM stands about 600 cycles to half, but dies of age at 4 to 7 years: twenty nights a year never wear it out.',
      'Lithium lasts 10 years or more, weighs a quarter for the same use, and stands half full between trips without harm.',
    ],
    next: ['agm or lithium for a fridge?', 'how heavy is 100Ah agm against lithium?'],
  },
  {
    name: 'which-kind-is-it',
    spots: [
      'how tell|know|see|find|work_out what|which|type|sort|kind -how_full -full -charged -good -bad -dead',
      'it_says|says_on_it|label_says maintenance_free|deep_cycle|sealed|calcium',
    ],
    says: 'Look on its label for AGM, VRLA, gel or LiFePO4; caps to unscrew mean wet lead-acid.',
    lines: [
      '“Deep cycle” and “maintenance free” name no kind. Sealed and about 3 kg for each 10 Ah is AGM or gel, near 1.2 kg is lithium.',
      'Not sure? Use and charge it as AGM: down to half, and no more than 14.4 V.',
    ],
    next: ['agm or lithium?'],
  },
  {
    name: 'sleeping-near',
    spots: [
      'bed|sleep|sleeps|sleeping|indoors|cabin|cupboard|under_the_seat|kids|children safe|safest|ok|okay|worries|worry|can|may|gas|burn|fire|vent -how_long -run -last -degrees -hot -heat -exhaust -winter -cold',
    ],
    hasAnyFigures: true,
    says: 'AGM, gel and LiFePO4 may be inside, tied down and fused; a wet one needs a box vented outside.',
    lines: [
      'LiFePO4 is the calmest of the lithiums; keep e-bike and tool packs out of where you sleep while they charge.',
      'Its posts covered, nothing stacked on it, and air round the charger.',
    ],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'change-the-charger',
    spots: [
      'charger|controller|dcdc|alternator change|replace|new|different|swap|special|same|need|have_to lithium|lifepo* -better -worth -how_long',
    ],
    says: 'Only those without a lithium setting: each thing that charges it needs one.',
    lines: [
      'Solar controller and mains charger: about 14.2 to 14.6 V, no equalising or repair mode.',
      'From the alternator go through a DC-DC charger.',
    ],
    cautions: ['lithium-cold'],
    next: ['isolator or dcdc?'],
  },
  {
    name: 'in-its-place',
    spots: [
      'instead|in_its_place|there_instead|replace_it|drop_in|swap lithium|lifepo* can|could|would|just|put',
    ],
    says: 'Yes, lithium may take its place: check that each charger has a lithium setting.',
    lines: [
      'From the alternator go through a DC-DC charger. Fuse it at the battery, and tie it down.',
      'Lithium needs no vent, where a wet one does.',
    ],
    cautions: ['lithium-cold'],
    next: ['isolator or dcdc?'],
  },
];
