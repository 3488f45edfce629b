import type { Aside } from '../asides.ts';

/** What is asked of a kind of battery beside how much it gives. Common practice; makers' sheets that agree. */
export const typeAsides: readonly Aside[] = [
  {
    name: 'worth-it',
    spots: [
      'lithium|lifepo*|it worth|pay|pays|overkill|justify|extra money weekend*|times|trips|nights|year|money|only|occasional*|few -cells -how_many -how_long',
      'is lithium|lifepo* worth -how_many -how_long',
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
