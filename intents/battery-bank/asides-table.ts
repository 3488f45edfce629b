import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';

const isUnsized = ({ batteries = [] }: Facts): boolean =>
  !batteries.some(({ capacityAh, energyWh }) => (capacityAh ?? energyWh) !== undefined);
const voltsOf = ({ batteries = [] }: Facts): readonly number[] => [
  ...new Set(batteries.flatMap(({ voltageV }) => (voltageV === undefined ? [] : [voltageV]))),
];

/** What is asked of joining batteries beside what they come to. Common practice, and makers' sheets that agree. */
export const bankAsides: readonly Aside[] = [
  {
    name: 'unlike-volts',
    spots: ['join|connect|wire|put|add make|get|have v|volts -more -hours'],
    when: facts => voltsOf(facts).length > 1,
    hasAnyFigures: true,
    verdict: 'no',
    says: 'No: in series the smaller one runs flat first and is driven backwards. Never unlike volts.',
    lines: ['In parallel the higher one boils the lower. For other volts a DC-DC converter is made.'],
    cautions: ['mixed-batteries'],
  },
  {
    name: 'tapping-one',
    spots: [
      'tap|tapping one|single|batt*|middle|half -tap_water',
      'one_battery|one_batt|one_of_them|just_one|from_one converter|truck|lorry|coach|instead -new -old -dies',
    ],
    hasAnyFigures: true,
    verdict: 'no',
    says: 'No: 12 V off one of two in series leaves the pair uneven and ruins both. Take a converter.',
    lines: [
      'A 24-to-12 V converter of 10 A runs a fridge; fuse its lead at the battery. It feeds off both alike.',
    ],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'wrong-way-round',
    spots: ['backward*|wrong_way|revers*|polarity|get_it_wrong|mixed_up|crossed -solar -panel'],
    hasAnyFigures: true,
    says: 'That is a dead short: sparks, molten lugs, even a burst battery. Measure before the last link.',
    lines: [
      'The meter must read the volts you want over the gap’s far ends. Goggles on, rings off, fuse out until then.',
    ],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'what-with-the-old',
    spots: [
      'what_do|what_can|do_with|what_about|use_for|throw|bin old_one|old_battery|old_batteries|the_old -join -parallel -series',
    ],
    hasAnyFigures: true,
    says: 'Keep it apart: for the lights alone or as a spare, charged now and then. Else recycle it.',
    lines: ['Scrap yards and many auto shops take lead batteries, and some pay for them.'],
  },
  {
    name: 'unlike-anyway',
    spots: ['anyway|regardless|what_happens|happens_if|all_the_same -series'],
    when: isUnsized,
    hasAnyFigures: true,
    says: 'The weaker one sets the pace: the pair soon holds little more than twice what that one does.',
    lines: ['It is overcharged and goes flat first, day by day, and takes the better one with it.'],
    cautions: ['mixed-batteries'],
  },
  {
    name: 'sharing-evenly',
    spots: ['share|evenly|even|equally connect|wire|join|hook -use', 'where positive|plus negative|minus'],
    hasAnyFigures: true,
    says: 'Take the plus off one battery and the minus off the other, so that both work alike.',
    lines: ['Link plus to plus and minus to minus with thick cables of the same length and size.'],
    cautions: ['fuse-at-battery', 'mixed-batteries'],
  },
  {
    name: 'one-or-two',
    spots: ['one_big|one_large|one_bigger|single two|small|smaller|pair'],
    hasAnyFigures: true,
    says: 'One big one: nothing to share or match. Two small ones lift easier, and one may fail.',
    lines: ['Same Ah, same life. Two want the same kind, size and age, and thick equal links.'],
  },
  {
    name: 'gear-on-twenty-four',
    spots: ['cope|survive|take_it|handle_it lights|lamps|fridge|gear|pump|radio'],
    hasAnyFigures: true,
    says: 'Not on 24 V: 12 V gear burns out there. It needs a 24-to-12 V converter.',
    lines: ['Its label tells: “12/24 V” runs on either, as most camp fridges do.'],
  },
  {
    name: 'is-twenty-four-better',
    spots: [
      'better|mad|worth|thinking|pays|advantage|sense|crazy camper|bus|van|caravan|truck|v|volts|boat -series -parallel -batter*',
    ],
    when: facts => facts.systemVoltageV === 24 && facts.batteries === undefined,
    hasAnyFigures: true,
    says: '24 V pays from about 2000 W of inverter on; under that stay at 12 V, as camp gear does.',
    lines: ['At 24 V the current halves, so cables are thinner. A 24-to-12 V converter then runs the rest.'],
    next: ['12V or 24V for a 3000W inverter?'],
  },
  {
    name: 'longer',
    spots: ['series parallel longer|last|more_time|lasts|more_hours -double* -amp_hours'],
    when: isUnsized,
    hasAnyFigures: true,
    says: 'Parallel: it stays 12 V and the amp hours add up, so two last twice as long.',
    lines: ['Series would make 24 V, which wrecks 12 V gear. Same kind, size and age in either.'],
    cautions: ['fuse-at-battery', 'mixed-batteries'],
  },
  {
    name: 'what-doubles',
    spots: ['series|parallel double|doubles|doubled|adds|add_up'],
    when: isUnsized,
    hasAnyFigures: true,
    says: 'Parallel doubles the amp hours, series doubles the volts; the energy is the same in both.',
    lines: ['Two of 12 V and 100 Ah: 12 V and 200 Ah in parallel, 24 V and 100 Ah in series.'],
  },
  {
    name: 'still-twelve',
    spots: ['still|stay|stays|remain* v|volt|volts|voltage'],
    when: facts => isUnsized(facts) && facts.arrangement === 'parallel',
    hasAnyFigures: true,
    verdict: 'yes',
    says: 'Yes: plus to plus and minus to minus is parallel, with the volts of one and the Ah added up.',
    lines: ['Series is plus of one to minus of the other: two of 12 V make 24 V.'],
  },
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
    spots: [
      'positive|plus|red one|first negative|minus|black|neg other|second|last',
      'plus_to_plus|positive_to_positive|red_to_red -or -still -series',
    ],
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
      'months|month old|new adding|add|second|another lithium|agm|lead|battery|same -how_much -total',
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
