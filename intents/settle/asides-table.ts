import { plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { isSpotted } from '../spotting.ts';

/** Hours' worth of full sun that a flat panel has on a fair day, after its losses. As the engine comes to without a place. */
const fairDayH = 4;
/** Share of its label that a panel puts into a 12 V battery at noon, A for each W. */
const noonShare = 1 / 18;

const panelW = ({ solar = [] }: Facts): number | undefined => {
  const watts = solar.reduce((sum, { count, powerW = 0 }) => sum + count * powerW, 0);
  return watts > 0 ? watts : undefined;
};

const allDay = (facts: Facts): string => {
  const watts = panelW(facts);
  return watts === undefined
    ? 'Not all day: a panel gives its watts about noon only, over a fair day some 4 hours’ worth.'
    : `Not all day: ${plain(watts)} W gives about ${plain(fairDayH * watts)} Wh on a fair day, some ${fairDayH} hours’ worth.`;
};

const inAnHour = (facts: Facts): string => {
  const watts = panelW(facts) ?? 100;
  return `No: ${plain(watts)} W gives about ${plain(noonShare * watts)} A at noon, so an hour puts in about ${plain(noonShare * watts)} Ah.`;
};

const drawnAllDay = ({ loads: [load] = [] }: Facts): string => {
  if (load?.powerW === undefined)
    return 'Little draws add up: each 1 A that runs day and night is 24 Ah a day.';
  const hours = load.hoursPerDay ?? 24;
  return `It adds up: ${plain(load.powerW)} W for ${plain(hours)} hours is about ${plain((load.powerW * hours) / 12)} Ah a day.`;
};

const storedOnce = ({ batteries: [battery] = [] }: Facts): string => {
  const ah = battery?.capacityAh ?? 100;
  return `Not each hour: ${plain(ah)} Ah at 12 V stores ${plain(ah * 12)} Wh, once. That is ${plain(ah * 12)} W for one hour.`;
};

/** Nominal volts down to which somebody may claim that a lead battery can go. */
const isOfVolts = ({ claims = [] }: { readonly claims?: readonly { readonly value: number }[] }): boolean =>
  claims.some(({ value }) => value > 9 && value < 12.3);

/** Volts that batteries joined make. */
const systemVolts: ReadonlySet<number> = new Set([6, 12, 24, 36, 48]);

const lead = 'agm|gel|lead|lead_acid|wet|flooded|deep_cycle|batter*';

/**
 * What people argue about that no sum settles: what is common practice of it, whoever said what. It is told only where
 * neither figures nor claims settle it, special rows before general ones; no yes or no where either side may be the asker's.
 */
export const settleAsides: readonly Aside[] = [
  {
    name: 'charged-by-itself',
    spots: ['charger inverter same|itself|free|tops|itself|own -hook* -mains -generator'],
    says: 'It only goes flat sooner: each round through inverter and charger loses a quarter or so.',
    lines: ['No battery can charge itself. What comes in must come from sun, engine or mains.'],
  },
  {
    name: 'lost-in-the-inverter',
    spots: ['inverter lose|loses|losing|lost|waste|wastes|loss|losses|efficien* -fridge -panel*'],
    says: 'About 10 to 15 % at work, as a rule; far more of a tiny load, as it takes ½ to 1½ A for itself.',
    lines: ['So a phone by inverter may well lose half, a kettle a tenth. Off when nothing needs it.'],
    next: ['what is idle draw?'],
  },
  {
    name: 'half-or-all',
    spots: [
      'half|fifty|percent use|uses|used|usable|get|gets|take|out_of|only|gives all|lot|whole|everything|every|any|full|lithium -charg* -panel* -cold -degrees -mix* -runs -hours -left',
      'out_of|usable any|every|all|lithium batter*|lithium|agm gives|get|gets|give -charg* -panel* -cold -degrees -mix* -runs -hours -left -amps -inverter',
    ],
    when: (_, { recognised: { words } }) => isSpotted(words, ['batter*|leisure|lithium|agm|bank|lead|gel']),
    says: 'By its kind: lead-acid and AGM give about half of their Ah, lithium 80 to 90 %, not the lot.',
    lines: ['So “half” is right of a usual leisure battery, and too little for lithium.'],
    next: ['AGM or lithium?'],
  },
  {
    name: 'agm-to-the-last',
    spots: [
      'agm|gel|lead|lead_acid use|take|drain|run|get all|hundred|whole|percent|every_bit -charg*',
      'agm|gel|lead|lead_acid of_an|of_a|of_the use|drain|take',
    ],
    when: (_, { claims }) =>
      claims.some(({ value, unit }) => value === 100 && (unit === '%' || unit === undefined)),
    says: 'Once in a while it stands that; as a habit it wears out early. Half of an AGM is the rule.',
    lines: ['Emptied each time it lasts perhaps a third as long. Lithium may be used to about 80 or 90 %.'],
    next: ['AGM or lithium?'],
  },
  {
    name: 'lithium-to-half',
    spots: [
      'lithium|lifepo*|lfp never|cant|dont|shouldnt|not_below|below|under drain|below|under|past|half -charg* -cold -degrees -freez* -zero -keep -over -above -full',
    ],
    when: ({ ambientC }) => ambientC === undefined,
    says: 'Half is the floor of lead-acid: lithium may go down to about 20 % day by day, now and then to 10.',
    lines: ['Its BMS cuts off at the very end; then it wants charging soon.'],
    next: ['AGM or lithium?'],
  },
  {
    name: 'half-as-the-floor',
    spots: [
      'below|under|past|beyond half|fifty|percent cant|never|dont|true|shouldnt|not -charg* -panel* -fridge -cold',
    ],
    says: 'For lead-acid about half is the floor, day by day. Lithium may go down to about 20 %.',
    lines: ['Lower once in a while does little harm, if it is charged full right after.'],
    next: ['AGM or lithium?'],
  },
  {
    name: 'full-volts',
    spots: ['full_battery|battery_full|fully_charged|full_agm|full_one is|reads|shows|volts|v'],
    when: (_, { claims }) =>
      claims.length > 0 &&
      claims.every(({ value, unit }) => value > 11.5 && value < 13.8 && (!unit || unit === 'V')),
    says: 'At rest a full AGM or gel shows about 12.8 V, a wet one 12.6 to 12.7; 12.0 V is nearly flat.',
    lines: [
      'Rested means an hour or more with nothing in or out. A full lithium rests at about 13.3 to 13.4 V.',
    ],
    next: ['how full is 12.4V'],
  },
  {
    name: 'fridge-day-or-night',
    spots: [
      'fridge|fridges|freezer|esky more|less night|nights|day|daytime -off -turn* -last* -panel* -kettle -ah',
    ],
    says: 'By day, as a rule: the warmer it is around it and the more it is opened, the longer it runs.',
    lines: ['In a shut hot van the evening can be the worst. Shade, air behind it and a full box help most.'],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'colder-setting',
    spots: ['fridge|freezer|esky set|setting|degrees|thermostat|colder twice|double|half|more|saves'],
    says: 'Colder takes more, though not double: each degree some 5 %, so 4 °C instead of 8 about a fifth.',
    lines: ['What counts is how far it is below the air. Food keeps safely at 5 °C or less.'],
  },
  {
    name: 'panel-for-each-battery',
    spots: [
      'one|a panel|panels|watt|watts|solar matches|match|one_to_one|per_battery|each_battery|rule|suits -series -parallel',
    ],
    says: 'The panel goes by what you use in a day: 40 Ah wants some 160 to 200 W, whatever the battery.',
    lines: ['For a rough start one to two watts for each Ah of battery is common.'],
    next: ['40Ah a day, what panel?'],
  },
  {
    name: 'colour-of-a-wire',
    spots: [
      'black|red|brown|blue|white wire|wires|cable always|live|hot|minus|plus|neutral|earth|positive|negative',
    ],
    says: 'Never go by colour alone: black is mostly minus on 12 V, but live in some countries’ mains.',
    lines: ['Test it with a meter first. Mains wiring is for a licensed electrician, to local code.'],
  },
  {
    name: 'lithium-on-a-boat',
    spots: ['lithium|lifepo*|lfp boat|boats|yacht|tinny|sea -cost* -agm -parallel'],
    says: 'It may: LiFePO4 with a BMS, strapped down, dry and fused at its plus, suits a boat.',
    lines: [
      'Your insurer and local codes may ask for more, and some for a licensed installer. Never charge it below 0 °C.',
    ],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'big-charger-on-a-small-one',
    spots: [
      'charger cook|cooks|boil|boils|fry|fries|ruin|ruins|kill|kills|hurt|hurts small|little|tiny|batts|battery|batteries',
    ],
    says: 'Over about 30 A for each 100 Ah it is too much for lead; lithium mostly takes half of its Ah.',
    lines: ['So 10 A suits a lead battery of 35 Ah or more, a lithium of 20. Its own sheet comes first.'],
    cautions: ['battery-gas'],
  },
  {
    name: 'wire-at-low-volts',
    spots: [
      'wire|wires|cable|cables thickness|thick|thin|size|gauge matter|matters|doesnt|low_voltage|no_difference',
    ],
    says: 'It counts all the more: at 12 V the same watts take some twenty times the amps of mains.',
    lines: [
      'Amps heat a wire and lose volts. Too thin stops a fridge first, and with too big a fuse it burns.',
    ],
    cautions: ['fuse-at-battery'],
    next: ['what cable for 10A over 5 m?'],
  },
  {
    name: 'bigger-controller',
    spots: ['bigger|larger controller|regulator|mppt more|extra|better -panel_size'],
    says: 'The panels set what comes in; a controller only has to carry it. A bigger one brings nothing more.',
    lines: ['An MPPT instead of a PWM does: some 10 to 20 % from a 12 V panel.'],
  },
  {
    name: 'series-or-parallel',
    spots: ['parallel|series volt|volts|v|gives|twenty_four|bet|makes -panel* -solar -shade*'],
    when: (_, { claims }) =>
      claims.length === 0 ||
      claims.every(({ value, unit }) => (!unit || unit === 'V') && systemVolts.has(value)),
    says: 'In parallel the volts stay at 12 and the Ah add up; in series the volts add up, the Ah stay.',
    lines: ['Only two of the same kind, size and age, each with its fuse.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'alternator-or-mains',
    spots: ['alternator|dcdc|driving mains|charger|wall|hook* faster|quicker|sooner'],
    says: 'The amps decide: a 30 A mains charger beats a 25 A DC-DC, and a 40 A DC-DC beats both.',
    lines: [
      'Straight off an alternator lithium may pull far more than is good for it: a DC-DC holds it to its amps.',
    ],
    next: ['isolator or dcdc?'],
  },
  {
    name: 'sun-through-cloud',
    spots: ['panel|panels|solar cloud|clouds|cloudy|overcast|rain|grey|gray -all_day'],
    says: 'They do work, only less: full cloud all day leaves about a quarter of a fair day’s.',
    lines: ['From a tenth under thick rain cloud to half under bright thin cloud.'],
    next: ['200W panel when overcast'],
  },
  {
    name: 'no-bms',
    spots: ['bms no|without|cut_off|cuts_out|disable|better'],
    says: 'Not better: without a BMS one cell over- or undercharged is how lithium catches fire.',
    lines: ['One that cuts out does its work: find out which limit it is, amps, volts or cold.'],
    cautions: ['bypass-bms'],
  },
  {
    name: 'additives',
    spots: ['salt|salts|epsom|aspirin|additive|additives|vinegar|baking_soda|whisky'],
    says: 'No: salt or additives revive nothing for long, and opening it is acid in your eyes.',
    lines: [
      'A long slow charge may bring back a little of a sulphated one. If not, it is due for recycling.',
    ],
    cautions: ['battery-gas'],
  },
  {
    name: 'concrete',
    spots: ['concrete|cement floor|leav*|put|drain*|flat|on', 'concrete'],
    says: 'Concrete doesn’t drain a battery of today: its case insulates. It goes flat by itself, slowly.',
    lines: ['Cool and dry suits one that is charged. Only a flat lead-acid one freezes.'],
  },
  {
    name: 'hot-panels',
    spots: ['panel|panels|solar hot|hotter|heat|heats|hottest'],
    says: 'Light does it, not heat: a hot panel makes 10 to 20 % less. Cool and sunny is best.',
    lines: ['So leave a finger of air under it.'],
  },
  {
    name: 'flat-panels',
    spots: ['panel|panels|solar flat|roof half|less|lose|loses|nothing'],
    says: 'In summer flat loses about a tenth; in winter a third to a half against one that is tilted.',
    lines: ['It is the low sun that counts. Near the equator flat is nearly as good all year.'],
  },
  {
    name: 'filled-in-an-hour',
    spots: ['panel|panels|solar|watt charge|charges|fill|fills hour|hours -every -all_day'],
    says: inAnHour,
    lines: ['A fair day has some 4 hours’ worth of that.'],
  },
  {
    name: 'watts-all-day',
    spots: [
      'panel|panels|solar all_day|whole_day|all_the_day|every_hour|amps_a_day|watts_a_day|round_the_clock',
    ],
    says: allDay,
    lines: [
      'Two to three in winter in the south, six at best. Heat, a flat roof and haze take a third of its label.',
    ],
    next: ['what does a 200W panel make in july in melbourne?'],
  },
  {
    name: 'fridge-off-at-night',
    spots: ['fridge|freezer|esky off|switching|turning night|nights|overnight'],
    says: 'Off at night saves a little, as a warmer box lets less heat in; but what is in it warms up.',
    lines: [
      'Most of what is saved goes into cooling it again. A degree or two warmer at night saves as much, safely.',
    ],
  },
  {
    name: 'isolator-on-lithium',
    spots: ['isolator|relay|vsr lithium|lifepo*|lfp'],
    says: 'Better not: lithium pulls all that the alternator has. A DC-DC charger holds it to its amps.',
    lines: ['It also gives the volts that lithium wants, on any alternator.'],
    cautions: ['fuse-at-battery'],
    next: ['isolator or dcdc?'],
  },
  {
    name: 'lithium-burns',
    spots: ['lithium|lifepo*|lfp burn|burns|fire|explode|explodes|catch'],
    says: 'LiFePO4 burns far less readily than a phone’s lithium, but it isn’t proof against misuse.',
    lines: [
      'Never charge it at or below 0 °C, and never without its BMS. Ten years or more is fair, forty isn’t.',
    ],
    cautions: ['lithium-cold'],
  },
  {
    name: 'lithium-against-lead',
    spots: [
      'lithium|lifepo*|lfp agm|lead|gel|lead_acid same|equal|equals|like|worth|twice|double|fair',
      'same_as|equals|equal_to|worth lead|agm',
    ],
    says: 'Nearly: lithium gives four fifths of its Ah, lead half. So 100 Ah of it match 160 Ah of lead.',
    lines: ['With big loads the gap grows: lead’s volts sag. It is also half the weight or less.'],
    next: ['AGM or lithium?'],
  },
  {
    name: 'lithium-life',
    spots: ['lithium|lifepo*|lfp years|year|decade|lifetime|forever -full -winter'],
    says: 'Ten years is fair for lithium: 2000 rounds or more, kept cool and never charged in frost.',
    lines: ['Its warranty is what the maker stands by. Heat and standing full for months shorten it.'],
  },
  {
    name: 'lithium-full',
    spots: ['lithium|lifepo*|lfp full|percent|under|over|above|keep|kept|winter -charge_it -fast'],
    says: 'In daily use full does it no harm. For months unused, leave lithium about half full.',
    lines: [
      'Staying at 20 to 80 % makes it last a little longer, but there’s no need. Fill it now and then.',
    ],
  },
  {
    name: 'overcharging',
    spots: ['overcharge|overcharged|overcharging|over_charge'],
    says: 'Any lead battery can be overcharged: over about 14.7 V, or for weeks over 13.8 V, it dries out.',
    lines: ['An AGM can’t be topped up again. A smart charger on its AGM setting holds back by itself.'],
    cautions: ['battery-gas'],
  },
  {
    name: 'marine',
    spots: ['marine|dual_purpose|leisure|truck deep_cycle|same|proper'],
    says: 'Not quite: most “marine” ones are half starter battery. True deep-cycle stands more deep use.',
    lines: ['Its label tells: cold cranking amps alone mean a starter, Ah at 20 hours a deep-cycle one.'],
  },
  {
    name: 'shared-charge',
    spots: ['parallel charge|charges|charging half|slow|slower|fast|long|longer'],
    says: 'Each gets half the amps, yes; but a day’s use goes back just as fast, and they hold twice as much.',
    lines: ['Two can also take more amps, so a bigger charger fills both in the time of one.'],
  },
  {
    name: 'mixing',
    spots: ['mix|mixing|mixed|unlike|different_sizes batter*|lead|agm|ah|both|old|new'],
    says: 'Better only the same kind, size and age: an unlike one pulls the other down.',
    lines: ['Else keep them apart: each with its own loads, or a DC-DC charger from one to the other.'],
    cautions: ['mixed-batteries'],
  },
  {
    name: 'volts-or-amps',
    spots: ['volts|voltage matter|matters|count|counts|important amps|current|only'],
    says: 'Both count: the volts must suit the gear and tell how full it is; amps times hours empty it.',
  },
  {
    name: 'watts-each-hour',
    spots: ['watts_an_hour|watts_per_hour|every_hour|each_hour|watt_hours_an_hour'],
    says: storedOnce,
    lines: ['About half of that is for use in a lead battery, four fifths in lithium.'],
  },
  {
    name: 'phones',
    spots: ['phone|phones nothing|kill|kills|drain|drains|flatten|flattens|hardly'],
    says: 'It’s little: a phone’s full charge takes about 1½ Ah, four a day about 6 Ah.',
    lines: ['Off an inverter it’s more: the inverter itself takes ½ to 1½ A all the time that it is on.'],
  },
  {
    name: 'small-draws',
    spots: [
      'nothing|hardly_anything|next_to_nothing|no_power take|takes|use|uses|draw|draws|cost|costs|pull -battery -batteries -agm -lead -gel -down',
    ],
    says: drawnAllDay,
    lines: ['A 100 Ah AGM has about 50 Ah to use, lithium about 80 Ah.'],
  },
  {
    name: 'down-to-volts',
    spots: ['agm|gel|lead|lead_acid|battery go|down|run|take|drain harm|hurt|fine|ok|okay'],
    when: (_, parsed) => isOfVolts(parsed),
    says: 'Under load for a moment, yes; at rest that is flat, and it wears. Plan to stop at 12.1 V.',
    lines: ['Low volts while something big runs recover when it stops. Charge it full the same day.'],
  },
  {
    name: 'emptied',
    spots: [
      `${lead} flat|zero|nothing|empty|right_down|all_the_way|completely take|run|go|use|drain|down|discharge -lithium -lifepo* -inverter -floor`,
      `${lead} use|get|take whole|all|everything|full -lithium -lifepo* -charg* -all_day -inverter`,
      'agm|gel|lead|lead_acid take|go|goes|use down_to|go_to|may_go|percent|every_day|every_night|daily|out -charg*',
    ],
    says: 'Not as a habit: below about half, lead-acid and AGM wear out early. Once in a while it stands it.',
    lines: [
      'Emptied each night it lasts perhaps a third as long. Charging soon after helps, but doesn’t undo it.',
    ],
    next: ['how low can I go with lithium?'],
  },
];
