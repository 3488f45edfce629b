import type { Aside } from '../asides.ts';

/** What is asked of joining batteries beside what they come to. Common practice, and makers' sheets that agree. */
export const bankAsides: readonly Aside[] = [
  {
    name: 'bare-cells',
    spots: ['cells|cell skip|without|no|need|leave_out|save bms -drop'],
    hasAnyFigures: true,
    says: 'Never without a BMS: one cell over- or undercharged is how lithium catches fire.',
    lines: [
      'Four bare cells of 3.2 V in series make 12.8 V, with the amp hours of one.',
      'A BMS must carry the current of all that hangs on it. Building packs is a job for who knows it.',
    ],
    cautions: ['bypass-bms'],
  },
  {
    name: 'different-levels',
    spots: ['balance|balanced|already|connected volts|one_at|other_one|other one|connected|them'],
    hasAnyFigures: true,
    says: 'Take them apart again: the fuller drives a big current into the other until they are level.',
    lines: [
      'Charge each full by itself, let both rest, and join them when they read within 0.1 V.',
      'If a BMS has cut out, charge that one alone first.',
    ],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'one-dies',
    spots: ['one dies|died|dead|fails|failed|failing|goes_bad|is_bad|good_one|had_it|goes_flat -agm_or'],
    says: 'Take the bad one out: it pulls the other down. A sound one of two in parallel goes on alone.',
    lines: [
      'Alone it has half the amp hours. Two 6 V in series are a 12 V battery together: there both must be sound.',
      'Replace both together, so that they age alike.',
    ],
    cautions: ['mixed-batteries'],
  },
  {
    name: 'changeover-switch',
    spots: ['switch|selector|changeover|isolator|combiner instead|between|about|or|rather'],
    hasAnyFigures: true,
    says: 'Yes to a changeover switch that takes one or the other, never both joined.',
    lines: [
      'So unlike batteries can be used in turn, each charged in its own way. Fuse each at its plus.',
      'Don’t close a switch between a full and an empty one: the rush can weld it or burn the cable.',
    ],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'series-on-twelve',
    spots: ['series inverter|gear|fridge power|stronger|plug|more'],
    hasAnyFigures: true,
    says: 'No: in series two 12 V make 24 V, and that wrecks a 12 V inverter. Join them in parallel.',
    lines: [
      'Parallel keeps 12 V and doubles the amp hours; the power is set by the inverter and its cables.',
    ],
    cautions: ['fuse-at-battery', 'mixed-batteries'],
  },
  {
    name: 'plus-from-one',
    spots: ['positive|plus|red one|first negative|minus|black|neg other|second|last'],
    hasAnyFigures: true,
    says: 'Yes: plus off one and minus off the other, so that both in parallel work alike.',
    lines: [
      'Link plus to plus and minus to minus with thick cables of the same length and size.',
      'That is for parallel, which stays 12 V. Plus of one to minus of the other is series, 24 V.',
    ],
    cautions: ['fuse-at-battery', 'mixed-batteries'],
  },
  {
    name: 'lithium-with-lead',
    spots: [
      'lithium|lifepo* next_to_them|with_them|beside_them|in_with|alongside',
      'lithium|lifepo* lead|agm|gel|lead_acid hook|join|together|next_to|with|mix|mixing|parallel -switch',
    ],
    hasAnyFigures: true,
    says: 'No: never lithium straight to lead-acid, one pushes current into the other and neither fills.',
    lines: [
      'Side by side they may sit: each with its own loads, or a DC-DC charger from one to the other.',
      'A sleeping BMS is woken by a charger with a lithium mode, not by another battery.',
    ],
    cautions: ['mixed-batteries'],
    next: ['isolator or dcdc?'],
  },
  {
    name: 'must-they-match',
    spots: [
      'have_to_be|need_to_be|must_be|must_they|should_be|do_they_have same|match|identical',
      'years|year|yrs|age|ages apart|older|newer -how_much -total -amount',
      'old_one|older_one|newer_one|new_one is|years|yrs -how_much -total',
      'old|older|yr new|newer mix|join|parallel|next_to|together|with|add|put -how_much -total -amount -binned -usable',
      'mix|mixing|different batter*|agm|ages|sizes|brands|types -how_much -total -usable',
    ],
    hasAnyFigures: true,
    says: 'Only the same kind, size and age: an old or unlike one pulls the new one down to its own state.',
    lines: [
      'Up to half a year apart is fine. Otherwise keep them apart: each with its own loads, or a DC-DC charger between.',
      'Never lithium straight to lead: they charge at different volts.',
    ],
    cautions: ['mixed-batteries'],
    next: ['isolator or dcdc?'],
  },
  {
    name: 'twelve-or-twenty-four',
    spots: ['big_inverter|large_inverter -parallel -series'],
    says: '24 V pays from about 2000 W of inverter on; under that stay at 12 V, as camp gear does.',
    lines: ['At 24 V the current halves, so cables are thinner. A 24 to 12 V converter then runs the rest.'],
    next: ['12V or 24V for a 3000W inverter?'],
  },
];
