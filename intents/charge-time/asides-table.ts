import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';

const isLithium = ({ batteries = [] }: Facts): boolean =>
  batteries.some(({ chemistry }) => chemistry === 'lfp');
const isLead = ({ batteries = [] }: Facts): boolean =>
  batteries.some(({ chemistry }) => chemistry !== undefined && chemistry !== 'lfp');
/** Nothing of a size or a charger: what is asked is no time. */
const isBare = ({ batteries = [], chargers, solar }: Facts): boolean =>
  !chargers?.length &&
  !solar?.length &&
  !batteries.some(({ capacityAh, energyWh }) => capacityAh ?? energyWh);

/** What people ask beside how long a charge takes, special rows before general ones. */
export const chargeTimeAsides: readonly Aside[] = [
  {
    name: 'own-heater',
    spots: ['heater|heated|heating mine|has|built|own|battery|with -diesel -stove -gas -next -beside'],
    when: facts => !isLead(facts) && facts.loads === undefined,
    verdict: 'yes',
    says: 'Yes, if its own heater comes on by itself: it warms the cells to about 5 °C, then charging starts.',
    lines: ['The heater takes its power from the charger, so a small panel may do no more than warm it.'],
    cautions: ['lithium-cold'],
  },
  {
    name: 'kept-warm',
    spots: [
      'inside|in_the_van|in_the_car|in_with_us|indoors|with_us|where_it warm|outside|outdoors|outdoor|where|with_us -generator -genny -engine -idl* -exhaust -sleep*',
    ],
    when: facts => !isLead(facts) && facts.ambientC === undefined && isBare(facts),
    verdict: 'yes',
    says: 'Yes, once its cells are above 5 °C: the battery’s own temperature counts, not the air’s.',
    lines: [
      'By an outer wall or on the floor it can be far colder than the room: look in its app, or feel the case.',
    ],
    cautions: ['lithium-cold'],
  },
  {
    name: 'using-it-cold',
    spots: ['using_it|use_it|take_power|power_out|discharg* ok|fine|still|can|though -long'],
    when: facts => !isLead(facts),
    verdict: 'yes',
    says: 'Yes: using lithium in the cold is fine, mostly down to −20 °C. Only charging has to wait.',
    lines: ['It gives a little less then. Its label says how cold it may be used.'],
    cautions: ['lithium-cold'],
  },
  {
    name: 'lithium-and-cold',
    spots: ['lithium|lifepo*|lfp care*|mind|worry|bothered|suffer*'],
    when: isBare,
    says: 'Only as to charging: none at or below 0 °C, or its cells are ruined. Using it is fine.',
    lines: ['Switch the charging off for the night and the morning until the battery is above 5 °C.'],
    cautions: ['lithium-cold'],
  },
  {
    name: 'charger-setting',
    spots: ['gel|agm|wet|flooded setting*|choose|theres|mode|modes -long'],
    when: isLithium,
    says: 'Gel or AGM, if that stays at 14.6 V or less with no equalising. Never the wet one.',
    lines: ['Its leaflet gives the volts. It mostly gets to about 95 %; take it off then.'],
    cautions: ['lithium-cold'],
    next: ['can I use an agm charger on lithium?'],
  },
  {
    name: 'old-charger',
    spots: ['eighties|seventies|sixties|vintage|ancient|antique|no_stages -how_long'],
    verdict: 'no',
    says: 'Don’t leave that one on: without stages it keeps pushing and boils a lead battery dry.',
    lines: ['Take it off when full, or get a smart charger of about a tenth to a fifth of the battery’s Ah.'],
    cautions: ['battery-gas'],
  },
  {
    name: 'storing',
    spots: ['stor*|shelf|put_away|put_it_away|over_winter -how_long -how_many'],
    says: 'AGM: store it full and top it up every two or three months. Lithium: half full and off.',
    lines: ['A smart charger may stay on an AGM all winter. A flat lead battery freezes and is spoilt.'],
  },
  {
    name: 'charged-where-one-sleeps',
    spots: [
      'sleep|asleep|in_bed caravan|van|camper|indoors|inside charg* -generator -genny -engine -motor -idl* -tent -swag',
    ],
    says: 'A sealed AGM or a lithium with a sound charger, yes. A wet one only boxed and vented outside.',
    lines: [
      'Not if the battery is swollen, hot or smelly. A smoke alarm where you sleep is worth its few dollars.',
    ],
    cautions: ['battery-gas'],
  },
  {
    name: 'left-on',
    spots: [
      'leave|left|stay*|keep on|plugged|connected|run night|overnight|week*|month*|all_the_time|always|permanent*|winter|all_year -generator -solar -engine -how_long -how_much -fridge -full -fill* -enough -charged -idl*',
    ],
    says: 'With a smart charger set to your battery, yes: once full it only holds it there.',
    lines: [
      'An old charger without stages comes off when the battery is full: it boils a lead one dry.',
      'Lithium is happier not held full for months.',
    ],
  },
  {
    name: 'idling',
    spots: [
      'idl*|ticking_over|tick_over|engine_running|engine_run -sleep* -asleep -tent* -shed -garage -annex* -awning -bed',
    ],
    when: ({ durationH, drivingHoursPerDay, batteries = [], volts }) =>
      volts === undefined &&
      !batteries.some(
        ({ capacityAh, stateOfChargePercent }) =>
          stateOfChargePercent !== undefined ||
          (capacityAh !== undefined && (durationH ?? drivingHoursPerDay) !== undefined),
      ),
    says: 'A poor way: at idle an alternator gives perhaps a third of its rating, and it runs hot.',
    lines: [
      'An hour at idle puts in some 10 to 20 Ah for about a litre of fuel; the same on the road gives more.',
      'Only in the open, never with anybody asleep in it. Solar or a mains charger does it better.',
    ],
    cautions: ['carbon-monoxide'],
  },
  {
    name: 'quicker-on-a-generator',
    spots: [
      'generator*|genny|gennie|genset quicker|faster|slower mains|wall|hookup|hook_up',
      'genny|generator* v|vs|versus mains faster|quicker|any_faster',
    ],
    verdict: 'no',
    says: 'No: both feed the same mains charger, and its amps set the pace.',
    lines: [
      'The 12 V outlet on many generators is slower still: some 8 A, with nothing to stop it when full.',
    ],
    cautions: ['carbon-monoxide'],
  },
  {
    name: 'bigger-battery-slower',
    spots: ['bigger|larger batter*|batteries slower|longer|faster -how_much -how_long'],
    verdict: 'yes',
    says: 'From empty, yes: twice the Ah takes twice as long. Putting back what you used takes the same.',
    lines: ['A bigger one can take more amps, so with a bigger charger it needs no longer.'],
  },
  {
    name: 'workshop-charger',
    spots: [
      'car_battery_charger|car_charger|charger shed|garage|ordinary|normal|plain|car -how_long -how_many -driv* -fill* -full',
    ],
    when: facts =>
      !isLithium(facts) &&
      !facts.chargers?.some(({ currentA, kind }) => currentA !== undefined || kind === 'dcdc'),
    verdict: 'yes',
    says: 'Yes for a lead-acid one, only slowly: 4 A takes a day for 100 Ah. Take it off when full.',
    lines: [
      'Gel and AGM want their own setting: no more than about 14.4 V and 14.7 V.',
      'Lithium: only with a lithium setting, and never in its repair or boost mode.',
    ],
    cautions: ['battery-gas'],
  },
  {
    name: 'trailer-plug',
    spots: [
      'pin|pins|trailer_plug|trailer_socket amps|current|charg*|fill*|through|give* -drill',
      'how_many|what amps|current comes_through|that_line|the_line|through_it',
    ],
    says: 'Few: 5 to 10 A at best through its thin wire, so 5 to 10 Ah for each hour of driving.',
    lines: ['For more, run 16 mm² on a plug of its own, fused at both ends, to a DC-DC charger in the van.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'poor-on-the-road',
    spots: ['rubbish|poor|bad|weak|pathetic isnt|is_it|surely|rather|thats|that -too_big'],
    when: ({ drivingHoursPerDay, netCurrentA }) =>
      drivingHoursPerDay !== undefined || netCurrentA !== undefined,
    says: 'It is low, unless the battery was nearly full: a 25 A DC-DC puts in 20 Ah an hour till then.',
    lines: ['Thin wire, a smart alternator behind an isolator or a hot charger holds it back.'],
    next: ['the second battery doesn’t charge while driving'],
  },
  {
    name: 'dash-socket',
    spots: ['lighter|cigarette|dash|ciggy socket|plug|outlet|lighter -fuse -how_long'],
    verdict: 'yes',
    says: 'Yes, slowly: a dash socket gives about 8 A, so 1000 Wh takes about 10 hours of driving.',
    lines: ['Set the pack’s car input to 8 A or less if it asks; many sockets are dead with the key off.'],
  },
];
