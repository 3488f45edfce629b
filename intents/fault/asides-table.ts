import type { Mention } from '#language/recognise/mention.ts';
import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { amountsOf } from '../figures-told.ts';
import { isSpotted } from '../spotting.ts';

/** "E3", as displays show what is wrong. */
const errorCode = /^e\d*$/;

const isLithium = ({ batteries = [] }: Facts): boolean =>
  batteries.some(({ chemistry }) => chemistry === 'lfp');
/** It reads as good as nothing: a BMS has cut out. */
const isAtNothing = ({ volts }: Facts): boolean => volts !== undefined && volts < 1;
const drawnA = ({ loads = [] }: Facts): number | undefined =>
  loads.find(({ currentA }) => currentA !== undefined)?.currentA;

/** A camping fridge draws no more than this while it runs, a big one at its start no more than that, A. Common practice. */
const fridgeA = { usual: 6, most: 9 } as const;
const drawSaid = (amps = 0): string =>
  amps > fridgeA.most ? 'Too much:' : amps > fridgeA.usual ? 'A lot:' : 'That is normal:';

/** Of "set to 100 but mine is 200 Ah": the monitor is set to less than there is. */
const isSetLow = (mentions: readonly Mention[]): boolean => {
  const [set = 1, own = 0] = amountsOf(mentions, 'charge').map(({ value }) => value);
  return set < own;
};

/** What people ask of a fault beside what causes it: is it normal, is it ruined, may I go on, how do I test. Special rows before general ones. */
export const faultAsides: readonly Aside[] = [
  {
    name: 'wrong-way-round',
    spots: [
      'revers*|backward*|wrong_way|back_to_front|polarity|swapped_plus|swap_plus|plus_and_minus|positive_and_negative|red_and_black|mix_up|mixed_up lead*|red|black|wire*|connect*|hook*|batter*|polarity|terminal*|plus|minus|positive|negative|pv -shunt -monitor',
    ],
    says: 'At best it blows the main fuse; at worst inverter, controller or charger die at once.',
    lines: [
      'Take both leads off. Check the main fuse, then each thing’s own fuse, then try them one by one.',
      'A battery that was wired so for long, or is hot or swollen, is done: leave it outside.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'which-fuse',
    spots: ['which_fuse|where_is_the_fuse|wheres_the_fuse'],
    says: 'First the main one near the battery’s plus, then the one of the thing itself.',
    lines: [
      'A blade fuse can look whole: with all connected, volts before it and none behind means it’s gone.',
    ],
    cautions: ['no-fuse'],
  },
  {
    name: 'snap-on-connecting',
    spots: [
      'spark*|snap connect*|join*|hook*|plug*|last_lead|clip* -smoke -burn* -isolator -cut -loose -gas -petrol -caps -bang -harder',
    ],
    says: 'A short snap is normal, as capacitors fill; a big one means something is on, or wires are swapped.',
    lines: [
      'Switch everything off first, inverter too, and join the minus last.',
      'Not over a battery that was just charged: its gas can go off. Let it air first.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'tap-water',
    spots: ['tap_water|rain_water|rainwater|bore_water'],
    says: 'Likely not ruined by once, but it shortens its life. From now on distilled water only.',
    lines: ['Fill to just over the plates, after charging. Goggles and gloves: it is acid.'],
    cautions: ['battery-gas'],
  },
  {
    name: 'got-wet',
    spots: [
      'creek_got|river_got|river_crossing|crossing|salt_water|soaked|dunked|submerged|under_water|underwater|in_the_water|rain_got|got_wet|got_soaked|was_flooded|got_flooded',
      'water|cordial|beer|coffee|drink|juice spilt|spilled|spill|got_in|got_wet|is_wet -pump -distilled -tap',
    ],
    verdict: 'no',
    says: 'Leave it off until it’s dry: take the minus off, rinse salt, mud or sugar away with clean water.',
    lines: [
      'Dry it for a day or two, lids open, clean every green or furry joint, then try one thing at a time.',
      'An inverter or anything on mains that got wet stays off until its maker or an electrician has seen it.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'white-crust',
    spots: [
      'crust|furry|fuzzy|corro*|green_stuff|white_stuff|white_powder post|posts|terminal*|lug|lugs|pole|poles|clamp*',
    ],
    says: 'That is corrosion: take the leads off, minus first, and wash it away with baking soda in water.',
    lines: [
      'Goggles and gloves, as it is acid. Rinse, dry, join plus first, tighten, and grease them.',
      'If the case itself is wet or cracked, the battery is done.',
    ],
    cautions: ['battery-gas'],
  },
  {
    name: 'box-vent',
    spots: ['vent|vents|vented|venting|ventilat*|air_hole box|batter*|it -inverter'],
    says: 'A wet battery’s box needs a vent to the outside; AGM and gel want some air, lithium none.',
    lines: [
      'The hole sits high, as the gas is lighter than air, and away from anything that sparks or burns.',
    ],
    cautions: ['battery-gas'],
  },
  {
    name: 'switch-in-the-minus',
    spots: [
      'switch|isolator|breaker in_the_minus|in_the_negative|on_the_minus|on_the_negative|minus_side|negative_side|in_the_earth|minus_lead|negative_lead -reads -shows',
    ],
    says: 'You may, but the plus is better: with the minus off, the plus stays live to the chassis.',
    lines: [
      'In the minus it only works if every minus goes through it. It must be rated for the amps and for DC.',
    ],
    cautions: ['no-fuse'],
  },
  {
    name: 'heater-cut-short',
    spots: ['pull_the_plug|unplug|cut_power|cut_the_power when|done|finished|after'],
    when: (facts, { recognised }) =>
      isSpotted(recognised.words, ['heater*']) ||
      (facts.loads ?? []).some(({ name }) => name.includes('heater')),
    verdict: 'no',
    says: 'No: switch it off at its own control and let it run on. Cut short, it overheats and soots up.',
    lines: ['Its fan cools the burner for some minutes after it stops; leave its power on till then.'],
    cautions: ['fuel-heater'],
  },
  {
    name: 'cracked-panel',
    spots: ['crack*|shattered|smashed|broken_glass panel*|solar|glass -not_cracked -nothing -no_amps'],
    verdict: 'tight',
    says: 'For now you can use it, kept dry: water gets in, and its power fades over months.',
    lines: ['Don’t touch it wet, look for brown spots that get hot, and replace it before long.'],
  },
  {
    name: 'heat-by-the-engine',
    spots: [
      'by_the_engine|next_to_the_engine|beside_the_engine|engine_bay|under_the_bonnet|under_bonnet|under_the_hood',
    ],
    says: 'Not a good spot: each 10 °C more about halves a battery’s life, and lithium isn’t made for it.',
    lines: [
      'Move it into the cabin, the tub or a box outside. If it must be there, use a flooded or AGM made for it.',
    ],
  },
  {
    name: 'find-the-drain',
    spots: [
      'drain|drains|parasitic|phantom|hidden_draw find|test|trace|locate|track|hunt',
      'how find_it|find_out_which|find_which|trace_it|track_it',
    ],
    says: 'All off, a meter in the minus lead: over 0.05 A is too much. Pull fuses till it falls.',
    lines: [
      'The fuse that brings it down is the circuit; then go through what is on it: inverter, radio, alarm, charger.',
      'Nothing found? Full and disconnected, a good battery loses under 0.1 V in a week; a tired one falls.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'test-the-battery',
    spots: [
      'how know|check|tell any_good|its_good|really|its_dead|its_stuffed|if_its -tell_me -panel -alternator -dcdc -fuse -lead',
      'how|way test|check|tell batter*|it|agm|capacity|stuffed -tell_me -why -which_one -charger -drain -parasitic -phantom -fuse -panel -alternator -dcdc -charging',
    ],
    says: 'Charge it full, rest it an hour, run a known load: 5 A on 100 Ah takes about 10 hours to half.',
    lines: [
      'Half is 12.2 V at rest (lithium: count the Ah until it cuts out). Half the hours means half the battery.',
      'Under 12.5 V after that first rest, a lead one is tired already. Many shops load-test it for you.',
    ],
    next: ['what should a full AGM read?'],
  },
  {
    name: 'half-its-label',
    spots: ['finished|done|worn|shot|stuffed|dead|ok|okay out_of|of_a|left|only'],
    when: ({ batteries = [], volts }, { recognised }) =>
      volts === undefined &&
      batteries.some(({ capacityAh }) => capacityAh !== undefined) &&
      isSpotted(recognised.words, ['out_of|got|measured|tested']),
    says: 'Under 80 % of its label a battery is worn, under about half it is finished.',
    lines: ['Charge it right up, twice over if it’s lead, and measure once more before you buy.'],
  },
  {
    name: 'wake-it',
    spots: [
      'wake_it|wake_up_the|wake_the_bms|wake_the_battery|wake_the_lithium|wake_up_my|wake_my_battery -motor -fridge',
      'which_charger|what_charger does_that|blinks|wont_see',
      'how mine_wont|wont_see_it|doesnt_see_it',
    ],
    says: 'All loads off, then a charger with a lithium wake-up mode: a few volts rouse the BMS.',
    lines: [
      'Plain chargers that look for volts first stay blind to it. Some packs have a reset button, or wake with their app.',
      'Warm it above 5 °C first, and watch it: it must climb past 12 V within the hour. If not, its dealer.',
    ],
    cautions: ['bypass-bms'],
  },
  {
    name: 'lithium-emptied',
    spots: [
      'what_happens zero|empty|flat|once|take|dead',
      'switches_off|turns_off|shuts_off doesnt_it|just_switches|just_turns',
      'is_it_dead|is_it_ruined|is_it_stuffed|dead_for_good|can_it_be_saved|be_saved|come_back',
    ],
    when: facts => (isLithium(facts) || isAtNothing(facts)) && facts.ambientC === undefined,
    says: 'Once does no harm as a rule: its BMS switches off before the cells are hurt.',
    lines: [
      'Charge it within days: left empty for weeks the cells sink too low, and then it’s for its dealer.',
      'It reads 0 V then; a charger with a wake-up mode rouses it.',
    ],
    cautions: ['bypass-bms'],
  },
  {
    name: 'lead-left-flat',
    spots: [
      'be_saved|save_it|rescue*|revive*|bring_it_back|bring_back|brought_back|it_come_back|dead_for_good|is_it_dead|is_it_ruined|is_it_done -fuse -bms',
    ],
    when: facts => !isLithium(facts) && !isAtNothing(facts),
    says: 'Perhaps in part: a slow charge at a few amps for a day or two tells. Flat for weeks costs much.',
    lines: [
      'Under 10.5 V at rest a cell may be dead. Rest it a day after charging: 12.6 V is a chance, 12.4 V or less isn’t.',
      'Outside or well aired, and watch it: hot, hissing or swelling, stop and leave it.',
    ],
    cautions: ['battery-gas'],
  },
  {
    name: 'overcharged-once',
    spots: [
      'wrecked|ruined|harmed|damaged|cooked already|twice|once|did|charg* -alternator -controller -panel -water -wet -drop* -fell',
    ],
    when: isLithium,
    says: 'Likely not: its BMS cuts off before a cell gets too high. But change the setting first.',
    lines: ['All is well if it charges to 14.2–14.6 V, doesn’t warm up and gives its Ah.'],
    cautions: ['bypass-bms'],
  },
  {
    name: 'panel-before-battery',
    spots: ['panel before|first hooked|connected|plugged|joined|cooked|killed|fried|wired'],
    says: 'Likely not, though some die of it. Take both off, join the battery first, then the panel.',
    lines: [
      'It shows the battery’s volts and takes amps in the sun? Then it’s fine. Dark or an error: it’s done.',
    ],
  },
  {
    name: 'no-setting',
    spots: ['no_setting|no_settings|cant_set|cant_change|no_lithium_setting|isnt_adjustable|not_adjustable'],
    verdict: 'no',
    says: 'Then it doesn’t suit the battery: get a controller or charger whose type or volts can be set.',
    lines: ['Until then take it off by hand once the battery is full.'],
  },
  {
    name: 'dcdc-hot',
    spots: [
      'dcdc|dc_dc|b2b|dc_to_dc|it|its hot|fan|scream*|carpet|warm -cable -cables -plug -wire -lead -leads -battery -alternator -fuse -breaker -heater -lithium',
    ],
    when: ({ chargers }, { recognised }) =>
      isSpotted(recognised.words, ['dcdc|dc_dc|dc_to_dc|b2b|carpet']) ||
      chargers?.some(({ kind }) => kind === 'dcdc') === true,
    says: 'Warm is normal, too hot to hold is not: give it air all round, metal behind it, no carpet.',
    lines: [
      'Hot, it turns its own amps down. Check that its lugs are tight and its cables aren’t the hot part.',
      'Any smell or brown plastic: switch it off and have it looked at.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'only-at-idle',
    unless: { voltsUnder: 12.4 },
    spots: ['only_when_idling|only_at_idle|only_idling -light* -flicker* -isolator'],
    says: 'That is normal: at idle the alternator gives little, so the charger turns itself down.',
    lines: ['Judge it on the road: there it should give its rating until the battery is nearly full.'],
  },
  {
    name: 'charge-lamp',
    spots: [
      'alternator_light|alternator_lamp|charge_light|charge_lamp|charging_light|charging_lamp -not_charg* -wont -inverter',
      'battery_light|battery_lamp|battery_symbol|warning_light dash|dashboard|engine|car|driving -inverter',
    ],
    says: 'Stop soon and look: the belt, then a wire at the alternator or starter battery moved by the work.',
    lines: [
      'Undo the new thing: light gone, it loads or senses wrong. Still on, have an auto electrician look before a long drive.',
      'With the engine on the starter battery should read 13.5 V or more.',
    ],
  },
  {
    name: 'alternator-hot',
    spots: ['alternator|it hot|overheat*|smell* -dcdc -plug -battery'],
    when: (_, { recognised }) => isSpotted(recognised.words, ['alternator*']),
    verdict: 'no',
    says: 'Stop charging off it and let it cool: it is asked for too much, or is failing.',
    lines: [
      'A DC-DC of less than half its rating, and not at idle. A burnt smell: an auto electrician first.',
    ],
  },
  {
    name: 'loads-cut-off',
    spots: ['lvd|low_voltage_disconnect'],
    says: 'LVD means low-voltage disconnect: the battery is low, and the controller cut the loads to save it.',
    lines: [
      'Charge it; the loads come back by themselves at about 12.6 V. Only what is wired straight to it still works.',
    ],
  },
  {
    name: 'thermoelectric',
    unless: { ampsFrom: 7.5, ampsUnder: 3 },
    spots: [
      'cool_box|coolbox|cooler|thermo*|peltier|esky draw*|pulls|amps|right|normal -lithium -gas -panel -solar',
    ],
    when: facts => (drawnA(facts) ?? 5) <= 7,
    verdict: 'yes',
    says: 'Yes, 4 to 5 A is normal for a thermoelectric box, and it draws that without a break.',
    lines: [
      'That is about 100 Ah a day: pre-cool it on mains and run it while you drive. A compressor fridge takes a third.',
    ],
  },
  {
    name: 'fridge-draws-much',
    spots: ['fridge|freezer draw*|pulls|uses stuffed|normal|right|too_much|much|ok|wrong|faulty'],
    when: facts => drawnA(facts) !== undefined,
    says: facts =>
      `${drawSaid(drawnA(facts))} a camping fridge draws 3 to 5 A while it runs, a big one or at its start up to 8 A.`,
    lines: [
      'What counts is how often it runs: about a third of the time in mild weather. Hardly ever off, it’s the seal, the air behind it or its gas.',
    ],
  },
  {
    name: 'two-meters',
    spots: ['voltmeter|cheap|display|plug_in|gauge|built_in multimeter -amps'],
    says: 'Trust the multimeter at the posts: the other shows the wire’s loss too, and cheap ones are off.',
    lines: [
      'All loads off, both should agree within 0.2 V. With loads on, more than 0.5 V apart means thin wire or a bad joint.',
    ],
  },
  {
    name: 'rough-sine',
    spots: [
      'died|dead|killed|fried|broke|broken|burnt_out toothbrush|shaver|modified*|square_wave -beep* -buzz* -hum*',
    ],
    when: (_, { recognised }) => isSpotted(recognised.words, ['toothbrush*|shaver*|charger*|modified*']),
    says: 'A modified sine kills some small chargers: toothbrushes, shavers and tool chargers want pure sine.',
    lines: [
      'Laptop and phone supplies mostly stand it, only warmer. See whether the rest still works before you use it again.',
    ],
  },
  {
    name: 'monitor-set-wrong',
    spots: ['its_set_to|set_to|set_at ive_got|i_have|ive_only|only|but|mine'],
    says: (_, mentions) =>
      `That is it: it shows too ${isSetLow(mentions) ? 'little' : 'much'}. Set the true Ah, then 100 % once it’s full.`,
    lines: ['Full means 14.2 V or more with the amps fallen to about 2 % of its Ah.'],
  },
  {
    name: 'error-code',
    spots: ['error_code|error|code|codes|flashes_e|flashing_e|shows_e|says_e what|mean|means|e'],
    when: ({ volts, loads }, { recognised }) =>
      volts === undefined && !loads?.length && recognised.words.some(word => errorCode.test(word)),
    says: 'Codes differ by maker: its leaflet, or the label inside, tells this one.',
    lines: [
      'Mostly it is volts out of range at battery or panel, heat, or no battery seen: read the volts at its terminals.',
      'Take the panel off, then the battery; wait a minute, battery on first, then the panel. Back again? Ask its dealer.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'slow-kettle',
    unless: { hoursFrom: 1.2 },
    spots: ['kettle slow*|hour|long|minutes|forever|supposed -inverter -trip* -fuse -blew -blow*'],
    verdict: 'yes',
    says: 'Yes: 12 V kettles have only 120 to 170 W, so half a litre takes 20 to 30 minutes.',
    lines: [
      'It draws 10 to 14 A: a dash socket gets hot at that. Fit it a fused socket of its own, or boil on gas.',
    ],
  },
  {
    name: 'go-on-using',
    spots: ['keep_using|still_use|use_it|turn_it_all|leave_it_on til|till|until|home|tonight|weekend|back'],
    verdict: 'no',
    says: 'No: what got hot, melted or wet once gets worse. Leave it off until it’s mended.',
    lines: [
      'Renew the plug or joint with one rated for the amps, and look for what made it hot: loose or thin.',
    ],
    cautions: ['fault-finding'],
  },
];
