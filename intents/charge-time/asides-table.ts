import { decimals, plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { chargeRow } from './compute.ts';
import { chargerSizeSpots, chargerSizeWords, mostChargeA } from './sums/charger-size.ts';

const isLithium = ({ batteries = [] }: Facts): boolean =>
  batteries.some(({ chemistry }) => chemistry === 'lfp');
const isLead = ({ batteries = [] }: Facts): boolean =>
  batteries.some(({ chemistry }) => chemistry !== undefined && chemistry !== 'lfp');
/** Nothing of a size or a charger: what is asked is no time. */
const isBare = ({ batteries = [], chargers, solar }: Facts): boolean =>
  !chargers?.length &&
  !solar?.length &&
  !batteries.some(({ capacityAh, energyWh }) => capacityAh ?? energyWh);

/** How hard a battery of the kind told may be charged, in words. */
const fastest = ({ batteries = [] }: Facts): string => {
  const chemistry = batteries.find(one => one.chemistry)?.chemistry;
  const mostA = (kind: Parameters<typeof mostChargeA>[0]): string => plain(mostChargeA(kind));
  if (chemistry === undefined || chemistry === 'lead-acid')
    return `Not within its limit: for each 100 Ah about ${mostA('agm')} A for AGM, ${mostA('lfp')} A for lithium.`;
  return `Not within its limit: about ${mostA(chemistry)} A for each 100 Ah. Slower is a little kinder, no more.`;
};

const namesOf = { agm: 'AGM', gel: 'gel', flooded: 'wet' } as const;
/** The setting of a charger for the kind told, with its volts. */
const settingFor = ({ batteries = [] }: Facts): string => {
  const chemistry = batteries.find(one => one.chemistry)?.chemistry;
  if (chemistry === undefined || chemistry === 'lead-acid')
    return 'The one with your battery’s name: AGM, gel, wet or lithium. Its label tells the kind.';
  if (chemistry === 'lfp') {
    const [, low, high] = chargeRow('lfp').absorptionV;
    return `The lithium setting: it should go to about ${decimals(low, 1)} to ${decimals(high, 1)} V, with no equalising.`;
  }
  const kind = chemistry === 'gel' || chemistry === 'flooded' ? chemistry : 'agm';
  const [, low, high] = chargeRow(kind).absorptionV;
  return `The ${namesOf[kind]} setting: it should go to about ${decimals(low, 1)} to ${decimals(high, 1)} V, and no higher.`;
};

/** Volts for each degree off 25 °C, of a 12 V lead battery: 4 mV a cell. Makers' sheets agree. */
const compensationV = 0.024;
const compensated = ({ ambientC }: Facts): string => {
  if (ambientC === undefined || Math.abs(25 - ambientC) < 3)
    return 'For lead-acid yes: about 0.24 V more for each 10 °C under 25 °C, and less above it.';
  const off = decimals(Math.abs(25 - ambientC) * compensationV, 1);
  return `Yes for lead-acid: at ${plain(ambientC)} °C about ${off} V ${ambientC < 25 ? 'more' : 'less'} than at 25 °C.`;
};

const nearFreezing = ({ ambientC = 0 }: Facts): string =>
  `At ${plain(ambientC)} °C lithium may be charged, but gently: 10 A into each 100 Ah until it’s over 5 °C.`;

/** What people ask beside how long a charge takes, special rows before general ones. */
export const chargeTimeAsides: readonly Aside[] = [
  {
    name: 'which-setting',
    spots: [
      'set_to|setting|settings|picture|pictures|knob|dial|which_mode|what_mode|which_profile|set_the_charger -how_long -fridge -repair*',
    ],
    when: facts => isBare(facts) && !isLithium(facts),
    hasAnyFigures: true,
    says: settingFor,
    lines: [
      'No equalise, repair or boost mode unless its sheet asks for it. The battery’s own label comes first.',
    ],
    cautions: ['battery-gas'],
  },
  {
    name: 'warmer-or-colder-volts',
    spots: ['compensat*|per_degree|temperature_sensor|temp_sensor|temp_probe'],
    hasAnyFigures: true,
    says: compensated,
    lines: [
      'A charger with a sensor on the battery does it by itself. Lithium wants none: switch it off there.',
    ],
  },
  {
    name: 'left-connected',
    spots: [
      'disconnect|unhook|take_it_off|take_it_out|take_off|undo|remove battery|it|terminal|leads charg* have_to|need|must|should|before|first|to -solar -panel* -cold -frost -store -stor* -winter',
    ],
    says: 'No, it may stay connected: clamp or plug the charger on first, then switch its mains on.',
    lines: [
      'What runs meanwhile takes its part and slows it. Air round a wet battery, and no flame or spark near.',
    ],
    cautions: ['battery-gas'],
  },
  {
    name: 'site-or-drive',
    spots: ['powered_site|hookup|hook_up|mains|site before|leav* drive|driving|road|engine better|or|enough'],
    says: 'At the powered site: mains fills it right up overnight, a drive seldom gets past 80 to 90 %.',
    lines: ['The drive then only has to hold it there. Lithium fills well on either with a DC-DC charger.'],
    next: ['10A charger, 100Ah AGM from 50 %, how long?'],
  },
  {
    name: 'big-generator',
    spots: [
      'quicker|faster|sooner|speed* big|bigger|such_a_big|huge|powerful genny|generator*|gennie|genset',
    ],
    hasAnyFigures: true,
    verdict: 'no',
    says: 'No: the charger’s amps set the pace, however big the generator. A bigger charger is quicker.',
    lines: [
      'It may be as big as the battery takes: about a third of a lead battery’s Ah, half of a lithium’s.',
    ],
    cautions: ['carbon-monoxide'],
    next: ['what charger for a 100Ah AGM?'],
  },
  {
    name: 'trickle-and-fridge',
    spots: [
      'trickle|maintainer|tender|small_charger|little_charger fridge|freezer|run|running|keep_up|lights',
    ],
    when: (_, { facts }) => !facts.chargers?.some(({ currentA }) => currentA !== undefined),
    says: 'Only one of 3 A or more: a fridge takes about 1 to 2 A day and night, and a trickle gives 1 A or so.',
    lines: [
      'A mains charger of a tenth to a fifth of the battery’s Ah runs the fridge and fills it besides.',
    ],
    next: ['what charger for a 100Ah AGM?'],
  },
  {
    name: 'trickle-to-store',
    spots: [
      'trickle|maintainer|tender|float_charger do|ok|okay|enough|work|fine|store|storage|winter|good|leave -fridge -how_long -slow -hurt -sunny -cold -frost',
    ],
    when: ({ ambientC }, { facts }) =>
      ambientC === undefined &&
      !facts.loads &&
      !facts.chargers?.some(({ currentA }) => currentA !== undefined),
    verdict: 'yes',
    says: 'Yes, to hold a full one: a smart maintainer of 1 A or so, with the setting for your battery.',
    lines: [
      'To fill an empty one it takes days. One without electronics comes off once it is full: it boils it dry.',
    ],
    cautions: ['battery-gas'],
  },
  {
    name: 'wrapped-warm',
    spots: [
      'wrap|wrapped|electric_blanket|duvet|sleeping_bag|hot_water_bottle|heat_pad|heating_pad warm|battery|it|charg*|while -how_long -cpap -ah -use* -draw*',
    ],
    hasAnyFigures: true,
    says: 'A hot water bottle or a warm room, yes; no electric blanket shut in round it: that can overheat.',
    lines: [
      'Charge once the cells are above 5 °C. Leave the vents of a lead battery free: it gives off gas.',
    ],
    cautions: ['lithium-cold', 'battery-gas'],
  },
  {
    name: 'back-after-a-cut-out',
    spots: [
      'lvd|low_voltage_disconnect|battery_protect|cut_off|cut_out|cutoff come*|reconnect*|back|again|switch_on -why',
    ],
    hasAnyFigures: true,
    says: 'Most come back at about 12.6 to 13 V: that takes minutes on a charger, and 10 to 20 Ah to be of use.',
    lines: ['It would drop out again soon if only the volts are back: give it an hour or two first.'],
  },
  {
    name: 'slower-harmless',
    spots: ['too_slow|slow|slowly|small|weak hurt|harm|bad|damage|matter|ruin -fast* -quick* -big*'],
    hasAnyFigures: true,
    says: 'No harm: slow is gentle, it only takes long. To fill it overnight it wants a tenth of its Ah.',
    lines: [
      'A lead battery that is never quite filled wears out early: give it its hours once a week or two.',
    ],
    next: ['what charger for a 100Ah AGM?'],
  },
  {
    name: 'near-freezing',
    spots: ['that_count|it_count|that_counts|degrees_count|inside_count'],
    when: facts =>
      !isLead(facts) &&
      isBare(facts) &&
      (facts.ambientC ?? 0) > 0 &&
      (facts.ambientC ?? 9) < 5 &&
      !isLithium(facts),
    hasAnyFigures: true,
    says: nearFreezing,
    lines: [
      'It’s the battery’s own temperature that counts. Lead-acid takes charge in the cold, only slower.',
    ],
    cautions: ['lithium-cold'],
  },
  {
    name: 'flat-with-food',
    spots: ['flat|dead|empty|died fridge|freezer|food|meat what_do|what_now|what_can|what_should|help'],
    when: ({ chargers, solar }) => !chargers?.length && !solar?.length,
    says: 'Keep its lid shut: it stays cold some 4 hours. Meanwhile drive, plug in, or get ice.',
    lines: [
      'Half an hour on the road gives it about 10 Ah, enough for some hours of fridge. Off the starter battery only with the engine on.',
    ],
  },
  {
    name: 'repair-mode',
    spots: ['desulf*|desulph*|recondition*|recond|equalis*|equaliz*|repair_mode|boost_mode|pulse_mode'],
    hasAnyFigures: true,
    says: 'Never on lithium or gel, and on AGM only if its sheet allows: that mode goes to 15 V and more.',
    lines: ['On a wet lead one an hour now and then helps: in the open, caps right, nothing else connected.'],
    cautions: ['battery-gas'],
  },
  {
    name: 'charger-size',
    spots: chargerSizeSpots,
    when: (_, { facts }) => !facts.chargers?.some(({ currentA }) => currentA !== undefined),
    hasAnyFigures: true,
    says: chargerSizeWords,
    lines: [
      'The bigger end is quicker, the smaller is gentler and cheaper; its own sheet’s limit comes first.',
    ],
    next: ['20A charger, 100Ah AGM from 50 %, how long?'],
  },
  {
    name: 'alternator-rating',
    spots: ['alternator goes_in|go_in|all_go|all_goes -how_long -dcdc', 'does_that_mean goes_in|go_in'],
    hasAnyFigures: true,
    verdict: 'no',
    says: 'No: that is all it can give. What goes in is the charger’s amps, 20 to 50 A as a rule.',
    lines: ['Through a bare relay it is what the battery pulls: much at first, little as it fills.'],
  },
  {
    name: 'after-a-jump',
    spots: [
      'jumped|jump_start*|jump_started|boosted|got_it_started|it_started|flat_starter|starter_battery drive|driving|run -fridge -camp* -cpap -isolator -dcdc',
    ],
    says: 'Half an hour to an hour on the road puts back what a start took. A flat one needs a charger.',
    lines: ['From flat it takes a day on a mains charger; an alternator alone only gets it part of the way.'],
    next: ['the starter battery keeps going flat'],
  },
  {
    name: 'short-trips',
    spots: [
      'short_trip*|short_drive*|short_run*|to_the_shop*|the_shops|to_town|round_town|around_town|school_run charg*|fill*|enough|full|top*',
    ],
    says: 'A little: at best 20 Ah an hour with a DC-DC charger, so 20 minutes is about 7 Ah.',
    lines: [
      'Short trips alone rarely fill one. Through the thin wire of a trailer plug it is a third of that.',
    ],
    next: ['25A DC-DC, 1 hour driving a day'],
  },
  {
    name: 'first-charge',
    spots: [
      'first_use|first_time|first_charge|before_first|before_i_use|before_using|brand_new charg*|leave|how_long',
    ],
    says: 'Until its charger says full: a new one comes half to three quarters full, so some hours.',
    lines: [
      'With 10 A into 100 Ah that is 4 to 6 hours. No 24 hours are needed; lithium counts right after one full charge.',
    ],
  },
  {
    name: 'full-before-leaving',
    spots: ['full|fully|right_up before|start trip|leave|leaving|go|going|set_off|head -how_long -how_full'],
    hasAnyFigures: true,
    says: 'Full is best to set off with. At 80 % you only start with a fifth less to use.',
    lines: ['Lead-acid wants filling right up every week or two. Lithium doesn’t mind.'],
  },
  {
    name: 'every-night',
    spots: [
      'every_night|every_day|each_night|each_day|daily|at_half when|should|better|or charger|charge|charging|top -how_long',
    ],
    hasAnyFigures: true,
    says: 'Whenever you can: lead-acid lives longest near full. Lithium may wait till about 20 %.',
    lines: ['In the morning it takes most. A little each day beats one long charge a week.'],
  },
  {
    name: 'faster-harmful',
    spots: [
      'faster|quicker|fast|slow|slower bad|harm|hurt|better|worse|damage|kinder|ruin -how_long -generator* -genny',
    ],
    says: fastest,
    lines: ['Heat is what harms: a case that gets warm wants fewer amps. Its own sheet’s limit comes first.'],
  },
  {
    name: 'speeding-up',
    spots: ['speed*|quicker|faster|sooner what|how|would|can|could|make|way -generator* -genny -bigger'],
    says: 'A bigger charger, up to the battery’s limit: twice the amps halve the time to about 80 %.',
    lines: [
      'The last fifth of a lead battery takes its hours whatever you do. Switch off what runs meanwhile.',
    ],
    next: ['what charger for a 100Ah AGM?'],
  },
  {
    name: 'last-part',
    spots: ['why extra|last_part|last_bit|slows|slow_down|tails'],
    says: 'A lead battery takes less and less from about 80 % on; lithium only near the very end.',
    lines: ['The last fifth takes 2 to 4 hours on any charger; about a tenth is lost on the way.'],
  },
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
    spots: ['stor*|shelf|put_away|put_it_away|over_winter -how_long -how_many -charger -plugged -trickle'],
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
    name: 'lead-charger-on-lithium',
    hasAnyFigures: true,
    spots: [
      'charger lithium|lifepo*|lfp lead|old|normal|plain|ordinary|lead_acid -dcdc -dc -how_long -how_many -smart',
    ],
    says: 'Only if it stays at 14.6 V or less, with no equalise or repair mode; and off it when full.',
    lines: ['Don’t leave an old lead charger on lithium alone: look for a charger with a lithium setting.'],
    cautions: ['lithium-cold'],
    next: ['can I use an agm charger on lithium?'],
  },
  {
    name: 'left-on',
    spots: [
      'leave|left|stay*|keep on|plugged|connected|run night|overnight|bed|week*|month*|all_the_time|always|permanent*|winter|all_year -generator -solar -engine -how_long -how_much -fridge -full -fill* -enough -charged -idl*',
    ],
    says: 'A smart charger set to your battery may stay on: once full it only holds it there.',
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
      'pin|pins|trailer_plug|trailer_socket|grey_plug|gray_plug|towing_plug amps|current|charg*|fill*|through|give* -drill',
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
