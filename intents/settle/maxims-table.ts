import type { CautionCode } from '#answer/words/en.ts';

/** Something that people say of the trade, and whether it is so. */
export interface Maxim {
  /** One of the bot's own words, by which a chat keeps who said it. */
  readonly name: string;
  /** What it is about, whichever way somebody says it: patterns of `spotting.ts`. */
  readonly about: readonly string[];
  /** Who says it, and who says that it isn't so; the latter is looked for first. */
  readonly claims: readonly string[];
  readonly denies: readonly string[];
  /** The claim says what is not, or can't be: "it does" is against it. */
  readonly isNegative?: true;
  readonly isSo: 'yes' | 'no' | 'depends';
  /** Where it depends: of what each side is right, to follow "Wal is right". */
  readonly holdsOf?: { readonly yes: string; readonly no: string };
  /** The answer by itself, in one sentence; or the row of `asides-table.ts` that has it. */
  readonly says?: string;
  /** Why, in one line. */
  readonly why?: string;
  readonly aside?: string;
  readonly cautions?: readonly CautionCode[];
  readonly next?: readonly string[];
}

/** Words that deny what stands beside them. */
const not =
  'not|isnt|arent|doesnt|dont|didnt|cant|cannot|wont|mustnt|shouldnt|never|no|nah|nope|nothing|neither|without|rubbish|hardly|barely';
/** A claim, where nothing denies it; and its denial. */
const plainly = (...spots: readonly string[]): readonly string[] => spots.map(spot => `${spot} -${not}`);
const denied = (...spots: readonly string[]): readonly string[] => spots.map(spot => `${spot} ${not}`);

const battery = 'batter*|lithium|lithiums|lifepo*|lfp|agm|agms|gel|lead|lead_acid|leisure|bank';
const lithium = 'lithium|lithiums|lifepo*|lfp';
const panel = 'panel|panels|solar';
const fridge = 'fridge|fridges|freezer|freezers|esky';
const cable = 'cable|cables|wire|wires|wiring|lead|leads';

/**
 * Claims of the trade that people argue about without a figure, special ones before general ones. Common practice of the
 * trade where no source stands beside it; volts and shares as the engine's tables have them.
 */
export const maxims: readonly Maxim[] = [
  {
    name: 'lithium-by-volts',
    about: [
      `${lithium}|lithiums volts|voltage|voltmeter|multimeter tell|know|how_full|show|shows|read|check|judge|gauge|going_by|goes_by|by|full|left|charge|percent -charger -charging -fault -setting -drop*`,
    ],
    claims: plainly('volts|voltage|voltmeter|tell|know|how_full|read|check|easy|works|by'),
    denies: [
      ...denied('volts|voltage|voltmeter|tell|know|read|works|by|can|cant|good'),
      'flat_all|flat_the|stays|same|barely|hardly|useless|monitor|shunt|coulomb*',
    ],
    isSo: 'no',
    // `engine/battery/rest-table.ts`: 13.13 V at 50 %, 13.26 V at 80 %.
    says: 'A lithium’s volts hardly move from 90 to 30 %: they tell full from flat, and little between.',
    why: 'Only 0.1 V or so lies between half and four fifths. A monitor that counts amp hours tells.',
    next: ['do I need a battery monitor?'],
  },
  {
    name: 'half-of-a-battery',
    about: [
      `${battery} half|fifty|percent|lot|whole|all|everything|every_bit use|uses|used|usable|get|gets|take|out_of|give|gives|only -charg* -panel* -cold -degrees -mix* -runs -hours -series -parallel -volts -voltage -time -inverter`,
    ],
    claims: ['half|fifty only|ever|just|never|dont|cant|use|get|out|usable|max -lithium -lifepo* -lfp -more'],
    denies: [
      'lot|whole|all|everything|every_bit|more_than_half|eighty|ninety|full_capacity',
      'lithium|lifepo*|lfp -only_half -only_get_half',
    ],
    isSo: 'depends',
    holdsOf: { yes: 'of lead-acid and AGM', no: 'of lithium' },
    says: 'Lead-acid and AGM give about half of their Ah, lithium 80 to 90 %.',
    why: 'Below half lead-acid wears out early; lithium’s BMS only cuts off at the very end.',
    next: ['AGM or lithium?'],
  },
  {
    name: 'agm-run-flat',
    about: [
      'agm|agms|lead|lead_acid|gel|batter*|deep_cycle run|running|drain|draining|discharge|empty|take|cycle|flatten flat|flatten*|empty|right_down|all_the_way|zero|dead now_and_then|now_and_again|once_a|once_in|every_so_often|occasionally|sometimes|regularly|must|have_to|has_to|need*|should|exercise|memory',
    ],
    claims: plainly('must|have_to|has_to|need*|should|good|exercise|memory|now_and|once|occasionally'),
    denies: [
      ...denied('must|have_to|has_to|need*|should|good|flat|run'),
      'ruin*|kill*|worst|hurts|harms|wreck*',
    ],
    isSo: 'no',
    says: 'Running flat does no camper’s battery good: lead-acid and AGM lose life by it each time.',
    why: 'That was for old nickel cells. Charge lead full and often; lithium doesn’t mind either way.',
  },
  {
    name: 'memory-effect',
    about: [`${battery} memory`],
    claims: plainly('memory'),
    denies: [...denied('memory'), 'nicad*|nickel|old'],
    isSo: 'no',
    says: 'Neither lead-acid nor LiFePO4 has a memory: charge either from wherever it stands.',
    why: 'Memory belongs to old nickel cells. What does wear lead is standing half empty.',
  },
  {
    name: 'series-adds-ah',
    about: ['series batter*|amp_hours|ah|amps|capacity|volts -panel* -solar -shade*'],
    claims: plainly(
      'twice|double*|adds|add|more|both|together amp_hours|ah|amps|capacity|storage -only -just',
    ),
    denies: [
      ...denied('amp_hours|ah|amps|capacity|twice|double*'),
      'only|just volts|voltage',
      'volts|voltage double*|twice|adds|add|goes_up',
      'amp_hours|ah|amps|capacity same|stays|stay',
    ],
    isSo: 'no',
    aside: 'series-or-parallel',
  },
  {
    name: 'parallel-adds-volts',
    about: ['parallel batter*|bank volts|voltage|twenty_four -panel* -solar -shade*'],
    claims: plainly('volts|voltage double*|twice|adds|add|more|goes_up'),
    denies: [
      ...denied('volts|voltage|double*'),
      'volts|voltage same|stays|stay',
      'amp_hours|ah|capacity double*|twice|adds|add -volts',
    ],
    isSo: 'no',
    aside: 'series-or-parallel',
  },
  {
    name: 'car-charger-on-lithium',
    about: [
      `${lithium} car_battery_charger|car_charger|lead_charger|lead_acid_charger|agm_charger|ordinary_charger|normal_charger|old_charger|any_charger|any_old_charger|standard_charger|regular_charger|workshop_charger`,
    ],
    claims: plainly('charge|charges|use|fine|ok|works|work|do|does|with|on'),
    denies: [
      ...denied('charge|charges|use|fine|work|works|do|does|on'),
      'need|needs|kill*|ruin*|wreck*|own|special',
    ],
    isSo: 'depends',
    holdsOf: { yes: 'of one with a lithium setting', no: 'of the old kind' },
    says: 'It needs a lithium setting: an ordinary charger may not fill it, and some of its modes do harm.',
    why: 'Never its repair, desulphate or equalise mode: over about 14.6 V lithium cuts out or is hurt.',
    cautions: ['lithium-cold'],
  },
  {
    name: 'lithium-off-an-isolator',
    about: [`${lithium} isolator|vsr|relay|solenoid -dcdc`],
    claims: plainly('fine|ok|works|work|enough|do|does|use|just|can|charge|charges'),
    denies: [...denied('isolator|vsr|relay|solenoid'), 'need|needs|dcdc|cook*|kill*|burn*|bad'],
    isSo: 'no',
    aside: 'isolator-on-lithium',
  },
  {
    name: 'alternator-and-lithium',
    about: [
      `${lithium} alternator|alternators|driving|engine|cranking charge|charged|charges|charging|off|from`,
    ],
    claims: denied('charge|charged|charges|charging|alternator'),
    denies: plainly('can|charge|charged|charges|charging|dcdc|fine|works|easy|will'),
    isNegative: true,
    isSo: 'no',
    says: 'It can, through a DC-DC charger, which gives lithium its volts and holds the amps.',
    why: 'Straight off the alternator lithium may pull all it has, which overheats that at idle.',
    cautions: ['fuse-at-battery'],
    next: ['isolator or dcdc?'],
  },
  {
    name: 'lithium-in-the-cold',
    about: [
      `${lithium} charg* freezing|frost|below_zero|sub_zero|minus|under_zero|zero|cold|snow|winter -storage -store -discharg*`,
    ],
    claims: plainly('fine|ok|okay|can|charge|charges|safe|works|dont_mind|doesnt_mind'),
    denies: denied('charge|charges|charging|safe|fine|ok|can|cant'),
    isSo: 'no',
    says: 'Never charge lithium at or below 0 °C: it plates metal in the cells and ruins them for good.',
    why: 'Using it in the cold is fine down to what its label says; warm the battery itself before it is charged.',
    cautions: ['lithium-cold'],
  },
  {
    name: 'lithium-burns',
    about: [`${lithium} fire|fires|burn|burns|explode|explodes|blow_up|blows_up|catch|bomb`],
    claims: plainly('fire|fires|burn|burns|explode|explodes|blow_up|blows_up|bomb'),
    denies: [...denied('fire|fires|burn|burns|explode|explodes|blow_up|bomb'), 'safe|safer|safest'],
    isSo: 'no',
    aside: 'lithium-burns',
    cautions: ['bypass-bms'],
  },
  {
    name: 'big-charger-ruins',
    about: [
      'charger|chargers|charging_amps|charge_current big|bigger|large|larger|too_big|biggest|high_amp|more_amps|faster|fast|powerful|stronger -controller -inverter -series',
      `charger|chargers ruin*|cook*|kill*|boil*|fry|fries|hurt*|wreck*|damage* small*|little|tiny|${battery}`,
    ],
    claims: plainly('ruin*|cook*|kill*|boil*|fry|fries|hurt*|wreck*|damage*|bad|harm*|too_big'),
    denies: [
      ...denied('ruin*|cook*|kill*|boil*|fry|hurt*|wreck*|damage*|bad|harm*'),
      'takes|take only|just|what wants|needs|it',
      'fine|faster|quicker|no_harm|smart',
    ],
    isSo: 'depends',
    holdsOf: { yes: 'of a charger too big for it', no: 'of one within its limit' },
    aside: 'big-charger-on-a-small-one',
  },
  {
    name: 'unplug-when-full',
    about: [
      `${battery}|charger disconnect|disconnected|unplug|unplugged|unhook|take_it_off|turn_off|switch_off|take_off|leave|left|leaving|overcharge|overcharges|pull full|charged|topped|trickle|float|on_charge|plugged_in|on_the_charger -flat -panel* -inverter -winter -month* -concrete -lights`,
    ],
    claims: [
      'disconnect|disconnected|unplug|unplugged|unhook|take_it_off|take_off|turn_off|switch_off|pull -dont -not -no_need -never',
      'overcharge*|boil*|cook*|ruin* -dont -wont -not',
      ...denied('leave|left|leaving'),
    ],
    denies: [
      'disconnect|disconnected|unplug|unplugged|unhook|overcharge* dont|not|no_need|never|wont|neednt',
      ...plainly('leave|left|leaving|stays|float|floats|smart'),
    ],
    isSo: 'no',
    says: 'A smart charger or controller may stay on: once it is full it only holds it there.',
    why: 'One without electronics comes off when it is full, or it boils lead dry and overfills lithium.',
    cautions: ['battery-gas'],
  },
  {
    name: 'overcharging-agm',
    about: ['agm|gel|lead|lead_acid|sealed overcharge|overcharged|overcharging|over_charge'],
    claims: denied('overcharge|overcharged|overcharging|over_charge'),
    denies: ['overcharge|overcharged|overcharging|over_charge'],
    isNegative: true,
    isSo: 'no',
    aside: 'overcharging',
  },
  {
    name: 'concrete-drains',
    about: ['concrete|cement'],
    claims: plainly(
      'drain*|flat|flatten*|kill*|discharge*|suck*|ruin*|lose*|dead|die|dies|bad|wreck*|leak*|death|harm*|hurt*|no_good',
    ),
    denies: [
      ...denied('drain*|flat|flatten*|kill*|discharge*|suck*|ruin*|lose*|dead|bad|difference|wreck*|leak*'),
      'fine|ok|okay|myth|wives_tale|harmless|old_days',
    ],
    isSo: 'no',
    aside: 'concrete',
  },
  {
    name: 'idling-charges',
    about: [
      'idle|idles|idling|ticking_over|running_the_engine|parked_up driving|drive|road|charge|charges|charging|alternator -inverter -standby',
    ],
    claims: plainly('as_good|just_as|as_well|same|good|well|fine|equal*|charges|enough|works|no_different'),
    denies: [
      ...denied('good|well|same|charge|charges|charging|enough|driving|idling|full'),
      'waste|poor|slow|less|worse|useless|third|hardly|barely',
    ],
    isSo: 'no',
    says: 'Idling gives perhaps a third of what driving does: the alternator turns slowly and runs hot.',
    why: 'An hour at idle puts in some 10 to 20 Ah for about a litre of fuel.',
    cautions: ['carbon-monoxide'],
  },
  {
    name: 'start-empties',
    about: [
      'start|starting|starts|cranking|crank engine|car|van|truck|motor battery|amp_hours|ah|charge|flat|power takes|uses|drains|lot|heaps|hour|hours|driving -house -fridge -cant -wont_start',
    ],
    claims: plainly('takes|uses|drains|lot|heaps|hour|hours|half'),
    denies: [...denied('much|lot|takes|uses|drains'), 'little|minutes|next_to_nothing|barely|hardly|seconds'],
    isSo: 'no',
    says: 'One start takes little, under 1 Ah: many amps, but for a second or two.',
    why: 'Some minutes of driving put it back. Lights and radio left on are what empties it.',
  },
  {
    name: 'mppt-wasted',
    about: [
      'mppt waste|worth|money|pointless|rip_off|ripoff|gimmick|overpriced|better|dearer|expensive|overkill|pays -lithium -wire -fuse',
    ],
    claims: [
      'waste|pointless|rip_off|ripoff|gimmick|overpriced|overkill -not -isnt -never',
      'worth not|isnt|never|hardly',
    ],
    denies: [
      'worth|better|pays -not -isnt -never -hardly',
      'waste|pointless|gimmick|overkill not|isnt|never',
    ],
    isSo: 'depends',
    holdsOf: { yes: 'of one small 12 V panel', no: 'of 150 W and more, or house panels' },
    says: 'For one small 12 V panel a PWM does; from about 150 W, or with house panels, an MPPT pays.',
    why: 'From a 12 V panel it brings some 10 to 20 % more, most in the cold; from a house panel about twice.',
    next: ['pwm or mppt?'],
  },
  {
    name: 'pwm-panel-volts',
    about: [
      'pwm panel|panels|volt|volts|house_panel|domestic twelve|volt|volts|v|any_panel|house_panel|residential|match|matches|domestic -mppt_or -battery_volts',
    ],
    claims: plainly('need|needs|want|wants|only|must|has_to|have_to|match|matches|suits|waste|wastes'),
    denies: [
      'any|house_panel|residential|domestic|doesnt_matter|fine|anything -only -waste*',
      ...denied('need|needs|matter|matters|have_to|has_to'),
    ],
    isSo: 'yes',
    says: 'A PWM wants a 12 V panel: it pulls the panel down to the battery’s volts and the rest is lost.',
    why: 'Of a house panel of 30 V and more that is over half of its watts; an MPPT turns them into amps.',
    next: ['pwm or mppt?'],
  },
  {
    name: 'bigger-controller',
    about: ['bigger|larger|oversized controller|regulator|mppt'],
    claims: plainly('more|extra|better|faster|boost*'),
    denies: [...denied('more|extra|better|difference|faster'), 'same'],
    isSo: 'no',
    aside: 'bigger-controller',
  },
  {
    name: 'no-controller',
    about: [
      `${panel} controller|regulator|reg need|needs|without|straight|direct|directly small|little|tiny|trickle|battery|any|no`,
    ],
    claims: [
      'without|straight|direct|directly|dont_need|doesnt_need|no_need|not_need',
      'no controller|regulator|reg',
    ],
    denies: plainly('need|needs|must|always|has_to|have_to|overcharge*|cook*'),
    isNegative: true,
    isSo: 'no',
    says: 'Any panel over about 5 W needs a controller: without one it overcharges the battery.',
    why: 'Many folding panels carry one on the back. Lithium always wants one with its own setting.',
    cautions: ['battery-gas'],
  },
  {
    name: 'parallel-in-shade',
    about: ['parallel|series shade|shady|shaded|shadow|shadows|trees|tree -batter*'],
    claims: [
      'parallel better|best|beats|wins|good|win -series_is -series_beats -not -worse',
      'series worse|bad|useless|drops|kills|loses|lose|stops -not -isnt',
    ],
    denies: [
      'series better|best|beats|wins|good -not -worse -parallel_is',
      'parallel worse|bad|not|isnt|makes_no',
    ],
    isSo: 'yes',
    says: 'In part shade parallel is better: one shaded panel hardly holds the others back.',
    why: 'In series the amps of all go by the worst. Three and more in parallel each want their own fuse.',
    next: ['two panels: series or parallel?'],
  },
  {
    name: 'panels-under-cloud',
    about: [`${panel} cloud|clouds|cloudy|overcast|rain|raining|grey|gray|gloomy -all_day`],
    claims: [
      'nothing|zero|useless|nil|stops|stop|dead|bugger_all|no_power|wont|dont|doesnt|cant|waste|only_work|only_works|not',
    ],
    denies: [
      'still|some|quarter|less|half|bit|something|plenty|fine -only_work -only_works',
      ...plainly('do|does|make|makes|work|works|charge|charges -zero -nil -only_work -only_works -stop*'),
    ],
    isNegative: true,
    isSo: 'no',
    aside: 'sun-through-cloud',
  },
  {
    name: 'panels-by-moonlight',
    about: [`${panel} moon|moonlight|street_light|streetlight|headlights|torch|led_light`],
    claims: plainly('charge|charges|make|makes|work|works|power|some|bit|trickle'),
    denies: denied('charge|charges|make|makes|work|works|power|enough|anything'),
    isSo: 'no',
    says: 'Moon and street lamps give a panel nothing to speak of: the full moon is 1/400000 of the sun.',
    why: 'A controller wakes up with some daylight, and takes a few milliamps until then.',
  },
  {
    name: 'panels-behind-glass',
    about: [`${panel} glass|window|windscreen|windshield|skylight|perspex`],
    claims: plainly('same|just_as|fine|as_good|works|work|no_difference|well|ok'),
    denies: [...denied('work|works|same|good|make|makes'), 'less|half|lose*|worse|waste|useless|hardly'],
    isSo: 'no',
    says: 'Behind glass a panel makes about half at best, and behind tinted glass a tenth.',
    why: 'Angle and the shade of the frame cost most. Outside in full sun is worth the cable.',
  },
  {
    name: 'hot-panels',
    about: [`${panel} hot|hotter|heat|heats|hottest|cool|cooler|cold`],
    claims: plainly('hot|hotter|heat|hottest more|better|best|loves|love|extra -less -worse'),
    denies: [
      'hot|hotter|heat|hottest less|worse|lose*|drop*|hate*|bad|hurts|not|doesnt|dont|light',
      'cool|cooler|cold better|best|more',
    ],
    isSo: 'no',
    aside: 'hot-panels',
  },
  {
    name: 'label-watts',
    about: [
      `${panel} rating|rated|label|sticker|plate|advertised|what_it_says|full_watts -batter* -fuse -charg* -inverter`,
    ],
    claims: plainly('get|gets|give|gives|make|makes|full|always|all_day|really'),
    denies: [...denied('get|gets|give|gives|make|makes|see|full|ever'), 'less|lab|most|seventy|never'],
    isSo: 'no',
    says: 'A panel seldom gives its label: flat and warm it makes some 70 to 80 % of that about noon.',
    why: 'The label is measured in a laboratory at 25 °C under 1000 W of sun for each square metre.',
    next: ['what does a 200W panel make?'],
  },
  {
    name: 'flat-panels',
    about: [
      `${panel} flat|roof|tilt|tilted|tilting|angle half|less|lose*|nothing|worth|waste|better|more|difference|matter|matters|same`,
    ],
    claims: [
      'flat half|less|lose*|nothing|waste|worse -not -doesnt',
      'tilt|tilted|tilting|angle worth|better|more|matter|matters -not -isnt -doesnt -no',
    ],
    denies: ['flat fine|same|nearly', 'tilt|tilted|tilting|angle not|isnt|doesnt|no|same|waste'],
    isSo: 'depends',
    holdsOf: { yes: 'of winter', no: 'of summer' },
    aside: 'flat-panels',
  },
  {
    name: 'thick-cable-uses',
    about: [
      `thick|thicker|fat|fatter|heavier|heavy|bigger ${cable}|gauge use|uses|draw|draws|more_power|more_current|more_amps|waste|wastes|drain|drains|pull|pulls|suck|sucks|lose|loses -fuse -fit -crimp`,
    ],
    claims: plainly('use|uses|draw|draws|more|waste|wastes|drain|drains|pull|pulls|suck|sucks -less'),
    denies: [
      ...denied('use|uses|draw|draws|more|waste|wastes|drain|drains|pull|pulls'),
      'less|saves|better|opposite|fewer',
    ],
    isSo: 'no',
    says: 'Thicker cable uses less, not more: it loses fewer volts on the way, and runs cooler.',
    why: 'What runs on it sets the amps. The cable only has to carry them; its fuse goes by the cable.',
    next: ['what cable for 10A over 5 m?'],
  },
  {
    name: 'wire-at-low-volts',
    about: [
      `${cable} thickness|size|gauge|thick|thin low_voltage|volt|volts|v|matter|matters|difference -fuse -uses -draws -batter*`,
    ],
    claims: denied('matter|matters|difference|care|important'),
    denies: plainly('matter|matters|counts|important|difference'),
    isNegative: true,
    isSo: 'no',
    aside: 'wire-at-low-volts',
  },
  {
    name: 'fuse-protects',
    about: [
      'fuse|fuses|breaker|breakers protect*|there_for|is_for|its_for|theyre_for|saves|guards|looks_after appliance*|fridge|gear|equipment|device*|load|cable*|wire*|wiring|battery|inverter',
    ],
    claims: [
      'appliance*|fridge|gear|equipment|device*|load|inverter protect*|there_for|is_for|its_for|theyre_for|saves|guards|looks_after -cable* -wire* -wiring -not',
      'not|isnt cable*|wire*|wiring -gear -fridge -appliance* -device*',
    ],
    denies: [
      'cable*|wire*|wiring -not_the_cable -not_the_wire -not_the_wiring -not_cable',
      'not|isnt|doesnt|never appliance*|fridge|gear|equipment|device*|load',
    ],
    isSo: 'no',
    says: 'The fuse protects the cable: it has to blow before the wire gets hot enough to burn.',
    why: 'So it sits at the battery end and goes by the cable. Gear has its own smaller fuse where it needs one.',
    cautions: ['fuse-at-battery'],
    next: ['what fuse for 6mm2 cable?'],
  },
  {
    name: 'short-needs-no-fuse',
    about: [
      `fuse|fuses short|little_bit|half_a_metre|only_a_metre ${cable}|run -circuit -blow* -blew -protect*`,
    ],
    claims: denied('fuse|fuses'),
    denies: plainly('need|needs|always|must|still'),
    isNegative: true,
    isSo: 'no',
    says: 'However short the wire, it needs a fuse at the battery end: else a short burns it.',
    why: 'Fit it within a hand’s width of the post, not above what the cable carries.',
    cautions: ['no-fuse'],
  },
  {
    name: 'harmless-at-12',
    about: [
      'volt|volts|v|low_voltage harmless|dangerous|hurt|hurts|kill|kills|safe|shock|shocks|electrocute* -batter* -inverter -lithium -charg* -fridge -panel* -solar',
    ],
    claims: [
      'harmless|safe -not -isnt',
      'hurt|hurts|kill|kills|shock|shocks|dangerous cant|not|isnt|wont|doesnt|never -burn* -fire*',
    ],
    denies: [
      'burn*|fire*|not_harmless|isnt_harmless|not_safe|isnt_safe',
      'dangerous|hurt|hurts|kill|kills -not -isnt -cant -wont',
    ],
    isSo: 'no',
    says: '12 V seldom gives a shock, but its amps burn: a spanner across the posts glows in seconds.',
    why: 'Fuse every cable at the battery, take rings off, and minus first when a battery comes out.',
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'minus-first',
    about: [
      'negative|minus|earth|black|positive|plus|red first disconnect|disconnecting|remove|take_off|off|undo|unbolt|disconnected -wire_colour -fuse -solar -panel*',
    ],
    claims: plainly('negative|minus|earth|black -positive_first -plus_first -red_first'),
    denies: ['positive|plus|red -negative_first -minus_first -black_first'],
    isSo: 'yes',
    says: 'Minus comes off first and goes on last: then a slipped spanner on plus finds no earth.',
    why: 'With plus first, a spanner from its post to the body is a dead short.',
  },
  {
    name: 'full-fridge',
    about: [
      `${fridge} full|packed|loaded|stocked|empty|half_empty less|more|thrifty|thriftier|efficient|efficiently|better|cheaper|saves|same|harder`,
    ],
    claims: [
      'full|packed|loaded|stocked less|thrift*|efficient*|better|cheaper|saves -not -doesnt -empty',
      'empty more|harder|worse -not -doesnt -full -packed',
      'than_a_full|than_full|than_a_packed more|harder -not -doesnt',
      'than_an_empty|than_empty|than_when_empty less|better -not -doesnt',
    ],
    denies: [
      'full|packed|loaded|stocked more|harder|not|doesnt|same -empty',
      'empty less|thrift*|efficient*|better|cheaper -full -packed',
      'than_a_full|than_full|than_a_packed less|better',
      'than_an_empty|than_empty|than_when_empty more|harder',
      'no_difference',
    ],
    isSo: 'yes',
    says: 'Full of cold things it uses a little less: less cold air falls out each time it is opened.',
    why: 'It is only a few per cent. What goes in warm costs far more, so cool it at home first.',
  },
  {
    name: 'fridge-off-at-night',
    about: [`${fridge} off|switch|switching|turn|turning night|nights|overnight`],
    claims: plainly('save|saves|saving|less|worth|good'),
    denies: [...denied('save|saves|worth|good|difference|off'), 'waste|more|harder|same|warm|spoil*'],
    isSo: 'depends',
    holdsOf: { yes: 'that it saves a little', no: 'that it isn’t worth it' },
    aside: 'fridge-off-at-night',
  },
  {
    name: 'twelve-volt-fridge',
    about: [
      `${fridge} inverter|household|bar_fridge|mains volt|v|compressor|camping|cheaper|same|less|more|thrift*|efficient* -idle -trip* -alarm -last* -start*`,
    ],
    claims: [
      'inverter|household|bar_fridge|mains more|worse|waste|wastes|extra -no -not -same',
      'volt|v|compressor less|thrift*|efficient*|better -not -isnt',
    ],
    denies: [
      'inverter|household|bar_fridge|mains same|cheaper|better|less|no_difference',
      'not|isnt|no more|worse|less',
    ],
    isSo: 'yes',
    says: 'A 12 V compressor fridge takes less: a household one adds its inverter, some 15 % and an amp all day.',
    why: 'A household fridge also wants several times its watts to start.',
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'idle-inverter',
    about: [
      'inverter|inverters idle|idling|nothing|standby|sitting|switched_on|just_on|left_on|no_load|not_in_use|unused draw*|use|uses|take|takes|pull|pulls|drain|drains|power|current|nothing -flat -bigger -trip*',
    ],
    claims: [
      'draws_nothing|uses_nothing|takes_nothing|pulls_nothing|draw_nothing|use_nothing|no_power|no_current|zero|nil',
      'doesnt|dont|wont draw|use|take|pull|drain',
    ],
    denies: [
      'always|still|something|amp|bit|drains|half|all_the_time|flatten*|does|eats',
      'draws|uses|takes|pulls -nothing -no -not -zero',
    ],
    isNegative: true,
    isSo: 'no',
    says: 'An inverter that is on takes about ½ to 1½ A for itself: 5 to 15 Ah a night with nothing on it.',
    why: 'Big ones take the most. Switch it off when you’re done; “eco” mode saves part of it.',
    next: ['what is idle draw?'],
  },
  {
    name: 'bigger-inverter-uses',
    about: [
      'bigger|big|larger|oversized inverter|inverters use|uses|draw|draws|waste|wastes|more|power|same -charger -fuse',
    ],
    claims: plainly('more|waste|wastes|extra'),
    denies: [...denied('more|waste|wastes|matter|difference'), 'same|only|just -more'],
    isSo: 'yes',
    says: 'A bigger inverter uses a little more: it takes more for itself, all the time that it is on.',
    why: 'At work the load counts: the same kettle takes the same off either. Off when nothing needs it.',
  },
  {
    name: 'modified-sine',
    about: ['modified|pure|square sine|wave|inverter'],
    claims: plainly('ruin*|kill*|damage*|hurt*|bad|cook*|wreck*|harm*|fry|fries|need'),
    denies: [...denied('ruin*|kill*|damage*|hurt*|bad|harm*|need|matter|difference'), 'fine|ok|waste|same'],
    isSo: 'depends',
    holdsOf: {
      yes: 'of motors, medical gear and some chargers',
      no: 'of plain heaters and most phone chargers',
    },
    says: 'It hangs on what runs: motors, medical gear and some chargers want pure sine.',
    why: 'On a modified one they hum, run hot or don’t start; a kettle or an old lamp doesn’t mind.',
    cautions: ['plate-first'],
  },
  {
    name: 'twenty-four-volts',
    about: [
      'volt|volts|v|system|twenty_four efficient|efficiency|thrift*|waste|better|less_loss -panel* -fridge* -batter* -inverter* -cable_size -pwm -mppt',
      'volt|volts|v more_efficient|less_efficient|more_efficiency -pwm -mppt -panel*',
    ],
    claims: plainly('efficient|efficiency|thrift*|better|less'),
    denies: [...denied('efficient|difference|better|matter|change'), 'same'],
    isSo: 'depends',
    holdsOf: { yes: 'of the cables', no: 'of the gear' },
    says: 'Only in the cables: at 24 V the same watts take half the amps, and lose a quarter as much.',
    why: 'The gear takes the same watts. Under about 2000 W, with short cables, 12 V is simpler.',
    next: ['12V or 24V?'],
  },
  {
    name: 'starter-as-house',
    about: [
      'starter|cranking|car_battery|start_battery|crank house|leisure|camp|fridge|deep_cycle|auxiliary|second_battery|aux|dual -charger -isolator -reserve -left -enough -flat -last* -hours -start_the',
    ],
    claims: plainly('use|can|fine|works|do|does|same|good|ok|as'),
    denies: [
      ...denied('use|can|cant|fine|works|do|good|made|as'),
      'ruin*|kill*|dies|die|dead|wreck*|stuffed|only_for',
    ],
    isSo: 'no',
    says: 'Only at a pinch: it is made for starting, and run down each night it soon dies.',
    why: 'Use a third of its label at most. A deep-cycle one stands it for years.',
    cautions: ['starter-reserve'],
  },
  {
    name: 'marine-is-deep-cycle',
    about: ['marine|dual_purpose deep_cycle|same|proper|house|real'],
    claims: plainly('same|deep_cycle|proper|real|good'),
    denies: [...denied('same|deep_cycle|proper|real'), 'half|starter'],
    isSo: 'no',
    aside: 'marine',
  },
  {
    name: 'mixing-batteries',
    about: [
      'mix|mixing|mixed|different_sizes|old_and_new|new_and_old|old_one_with|new_one_with batter*|lead|agm|agms|lithium|both|old|new|parallel',
    ],
    claims: plainly('fine|ok|can|works|work|no_problem|good|harm'),
    denies: [...denied('mix|mixing|mixed|good|work|should'), 'drag*|pulls|pull|kill*|ruin*|bad|same'],
    isSo: 'no',
    aside: 'mixing',
  },
  {
    name: 'additives',
    about: [
      'salt|salts|epsom|aspirin|additive|additives|vinegar|baking_soda batter*|lead|agm|revive*|fix*|bring*|back|cells',
    ],
    claims: plainly('revive*|fix*|bring*|works|work|save*|back|good'),
    denies: [...denied('revive*|fix*|bring*|works|work|save*|back'), 'myth|snake_oil'],
    isSo: 'no',
    aside: 'additives',
  },
  {
    name: 'better-without-bms',
    about: ['bms'],
    claims: [
      'without|bypass*|pointless|waste|dont_need|doesnt_need|rip_off|better_off|no_need -never -not_without -dont_bypass',
    ],
    denies: ['need|needs|never|must|always|protect*|saves|dont_bypass -dont_need -no_need'],
    isNegative: true,
    isSo: 'no',
    aside: 'no-bms',
  },
  {
    name: 'lithium-kept-full',
    about: [
      `${lithium} full|eighty|percent keep|keeping|kept|store|stored|sitting|leave|leaving|harm*|hurt*|ruin*|bad|damage* -cold -charger -panel* -use -usable -out_of -volts`,
    ],
    claims: plainly('harm*|hurt*|ruin*|bad|damage*|kill*|shorten*'),
    denies: [
      ...denied('harm*|hurt*|ruin*|bad|damage*|kill*|matter|problem'),
      'fine|ok|rubbish',
      'wants|must|should|always|needs|best -not -dont -never -bad',
    ],
    isSo: 'depends',
    holdsOf: { yes: 'of months unused', no: 'of daily use' },
    aside: 'lithium-full',
  },
  {
    name: 'left-flat',
    about: [
      'agm|lead|lead_acid|gel|batter* left|leave|leaving|sit|sits|sitting|standing|stood flat|empty|discharged -concrete -lithium -lights -overnight',
    ],
    claims: plainly('ruin*|kill*|kills|sulphat*|sulfat*|bad|wreck*|damage*|harm*|dead|stuffed'),
    denies: [...denied('ruin*|kill*|bad|damage*|harm*|matter'), 'fine|comes_back|ok'],
    isSo: 'yes',
    says: 'Left flat a lead-acid battery sulphates within days to weeks, and some of that stays.',
    why: 'Charge it full the same day. A flat one also freezes, a full one hardly.',
    cautions: ['battery-gas'],
  },
  {
    name: 'cold-lead',
    about: [
      'agm|lead|lead_acid|gel|batter* cold|freezing|winter|frost lose*|less|weaker|weak|capacity|ah|power -lithium -charg* -lifepo* -panel* -fridge',
    ],
    claims: plainly('lose*|less|weaker|weak'),
    denies: [...denied('lose*|less|matter|difference|weaker'), 'same|better'],
    isSo: 'yes',
    says: 'Cold takes capacity: at 0 °C a lead-acid battery gives about a fifth less, and it comes back warm.',
    why: 'It also charges slower then. A full one stands frost, a flat one freezes and bursts.',
  },
  {
    name: 'bigger-bank-charges-slower',
    about: [
      'bigger|larger|two|second|more|extra battery|batteries|bank charge|charges|charging|fill|fills|recharge slower|longer|ages|slow|same_time|faster|as_fast -charger -series',
    ],
    claims: plainly('slower|longer|ages|slow'),
    denies: [...denied('slower|longer|ages|slow|matter'), 'same|as_fast|faster|just_as'],
    isSo: 'depends',
    holdsOf: { yes: 'of filling it from flat', no: 'of putting back a day’s use' },
    says: 'From flat it takes longer, but a day’s use goes back in the same time, whatever its size.',
    why: 'What counts is the Ah that are missing and the charger’s amps. A bigger one can also take more amps.',
  },
  {
    name: 'sealed-needs-no-vent',
    about: [
      'agm|gel|sealed|batter* vent|vents|vented|venting|ventilation|ventilated|gasses|gassing|fumes -lithium -fridge -heater -smell*',
    ],
    claims: denied('vent|vents|vented|venting|ventilation|ventilated|gasses|gassing|fumes'),
    denies: plainly('need|needs|must|should|still|vent|gas|gases|always'),
    isNegative: true,
    isSo: 'no',
    says: 'A sealed one gasses little, but overcharged it does: its box wants a vent all the same.',
    why: 'Wet lead-acid gasses at each full charge, and belongs in a box vented to the outside.',
    cautions: ['battery-gas'],
  },
];
