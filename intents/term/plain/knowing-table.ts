import type { PlainQuestion } from './plain-question.ts';

/** Is it true, are the two the same, what does the figure stand for. Common practice, and makers' sheets that agree. */
export const knowingQuestions: readonly PlainQuestion[] = [
  {
    name: 'lithium-and-fire',
    isBeforeSums: true,
    spots: [
      'lithium|lifepo*|lfp catch_fire|catches_fire|explode|explodes|blow_up|burn_down|burst_into is|does|do|can|the_one|will|true|says -smok* -swol* -hot -smell* -charge_it -short* -hiss* -charger -screen -shock',
    ],
    says: 'LiFePO4 is the calm lithium: it hardly burns. Phone, e-bike and tool packs are the ones that do.',
    lines: [
      'It may be under a bed, tied down, fused, and with its own BMS and charger.',
      'Any battery that gets hot, swells, hisses or smells: out, and keep away.',
    ],
    next: ['what is a BMS?'],
  },
  {
    name: 'need-a-dcdc',
    isBeforeSums: true,
    spots: [
      'dcdc|dc_dc|dc_to_dc|b2b do_i_need_one|need_one|want_one|do_i_need_it|do_i_need_a what|is|whats -isolator -relay -fuse -split_charge -size -amp* -panel*',
    ],
    says: 'With a second battery and a newer car, yes: it makes the right charge off any alternator.',
    lines: [
      'It lifts what a smart alternator or a long cable leaves too low, in the stages that the battery wants.',
      'With no second battery, or lithium that only sees mains and sun, no.',
    ],
    next: ['isolator or dcdc?'],
  },
  {
    name: 'need-an-isolator',
    isBeforeSums: true,
    spots: [
      'isolator|vsr|split_charge do_i_need|need_one|want_one|do_we_need battery|what|is|it -dcdc -dc_dc -dc -size -amp* -mains -switch -wont',
    ],
    says: 'Only with a second battery: it joins the two while the engine charges, and parts them at rest.',
    lines: ['On a car since about 2010, or with lithium, a DC-DC charger does that better.'],
    next: ['isolator or dcdc?'],
  },
  {
    name: 'memory-effect',
    isBeforeSums: true,
    spots: [
      'memory batter*|lead|agm|lithium|effect -card -shed -chip -my_memory -heater -pump -panel -keep -rig',
    ],
    says: 'A myth for lead and lithium: neither has a memory. Lead likes to be full, lithium doesn’t mind.',
    lines: [
      'What looks like it in lead-acid is sulphation, from standing half empty. Old NiCd cells had a memory.',
    ],
  },
  {
    name: 'lithium-kinds',
    isBeforeSums: true,
    spots: ['lifepo* lithium_ion|li_ion|liion same|vs|versus|difference|or|like'],
    says: 'Not the same: LiFePO4 is the calm kind at 12.8 V; “lithium-ion” mostly means phone and bike cells.',
    lines: [
      'LiFePO4 weighs more for its Wh, lasts three times the cycles and hardly burns. Chargers differ: don’t swap them.',
    ],
  },
  {
    name: 'rcd-for-12',
    isBeforeSums: true,
    spots: ['rcd|safety_switch v|volt|volts only|just need|have_to|must|do_i|does -inverter -trip*'],
    says: 'Not for 12 V alone, which fuses guard: an RCD is for mains, an inlet or a fixed inverter.',
    lines: ['A licensed electrician fits it, to your local code.'],
  },
  {
    name: 'health-or-charge',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: ['charge health or|mean*|which app|percent|soc|soh|it|does -charger', 'soh|state_of_health'],
    says: 'Charge (SoC) is how full it is just now; health (SoH) is what it still holds of its label.',
    lines: [
      'A big percentage that moves in a day is charge. Health moves by a few per cent a year; under 80 % it is worn.',
    ],
  },
  {
    name: 'use-store-switch',
    isBeforeSums: true,
    spots: ['use_store|store_use|use_or_store|store_switch'],
    says: '“Store” takes the battery off nearly everything so that it doesn’t run flat; “use” joins it again.',
    lines: [
      'Many still charge only in “use”, and gas alarms or the clock stay on in both: it may be flat in months.',
    ],
  },
  {
    name: 'converter-or-inverter',
    isBeforeSums: true,
    spots: ['converter|convertor inverter difference|vs|versus|or|mix|same|confus*'],
    says: 'A converter makes 12 V out of mains and charges; an inverter makes mains out of 12 V.',
    lines: ['So never run the converter off the inverter: the two go round in a circle and only lose power.'],
  },
  {
    name: 'cca-or-ah',
    isBeforeSums: true,
    spots: ['cca|cranking_amps ah|amp_hours|deep_cycle|camp* vs|or|when|shopping|which|matter*|look'],
    says: 'Ah: how much it holds counts at camp. CCA is how hard it cranks an engine.',
    lines: ['A battery with a big CCA for its size has thin plates and dies of deep use.'],
    next: ['what is an amp hour?'],
  },
  {
    name: 'many-cycles',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: ['cycles a_lot|is_that_many|is_that_much|is_that_bad|is_that_old|too_many|is_it_old'],
    says: 'Hold it against what it stands: lithium 3000 or more to 80 %, AGM about 600 to half.',
    lines: ['Age and heat end most of them first: lead-acid at 4 to 7 years, lithium at 10 or more.'],
  },
  {
    name: 'too-old',
    isBeforeSums: true,
    spots: [
      'how_old too_old|is_old',
      'time_to_replace|time_for_a_new_one|due_for_replac*|time_to_renew yr|year|years|old|batter*|agm|ours|it -lithium_or -fuse -cable -pump',
    ],
    says: 'What it holds counts, not its age: under 80 % of its label it is worn, under half it’s done.',
    lines: [
      'Full, rested, then 5 A on 100 Ah: good for about 10 hours down to 12.2 V at rest.',
      'Lead-acid mostly lasts 4 to 7 years, lithium 10 or more.',
    ],
    next: ['how do I test a battery?'],
  },
  {
    name: 'stands-unused',
    isBeforeSums: true,
    spots: [
      'how_long stand|sit|stay|left|unused|unplugged batter*|agm|lead ruined|unused|unplugged|damage*|dead|idle|stood -fridge -run -charge -on_charge -heater -rain -all_night -left_it_on',
    ],
    says: 'Full and unhooked: lead-acid about three months, lithium half a year. Flat, lead dies in weeks.',
    lines: ['Then charge it again. Cold slows its loss, heat doubles it.'],
    next: ['how do I store a battery?'],
  },
  {
    name: 'below-half-true',
    isBeforeSums: true,
    spots: [
      'agm|lead|gel|leisure half_way|halfway|only_be_used_half|go_under_half|below_half|under_half right|true|really|yarn|myth|must|should -cold -freez* -what_happens -why',
      'true|yarn|myth|rubbish go_under|go_below|take_it_below agm|lead|gel|leisure',
    ],
    hasAnyFigures: true,
    says: 'True as a rule of thumb for lead-acid: below half it wears faster. Once in a while won’t kill it.',
    lines: [
      'To half an AGM stands about 600 cycles, near empty less than half of that. Lithium gives 80 % and more.',
    ],
    next: ['agm or lithium?'],
  },
  {
    name: 'fridge-label-watts',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'sticker|label|plate|badge fridge|freezer all_the_time|constantly|only_while|just_while|while_the_compressor|when_the_compressor|while_running|when_it_runs|all_day -measured -ah -hours -averag* -night',
    ],
    says: 'Only while its compressor runs, about a third of the time: a 45 W fridge averages about 15 W.',
    lines: ['That is about 30 Ah a day at 12 V; in heat the compressor runs half of the time and more.'],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'diesel-heater-kw',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'heater kw|kilowatt* battery|draw*|takes|power|electric* -electric_heater -inverter -ah -last -run -fan -electric -reel',
    ],
    says: 'No: its kilowatts are heat from the fuel. The battery gives 1 to 3 A, and 8 to 10 A as it starts.',
    lines: ['A night of ten hours takes about 10 to 20 Ah.'],
  },
  {
    name: 'station-figure',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'power_station|powerstation watts watt_hours|wh|watthours or|is_that|which -last -run -laptop -how_many -tonight -panel -wants -can_it',
    ],
    says: 'See the unit: Wh is what it holds, W is the most it gives at once. A model number may be either.',
    lines: ['500 Wh runs a 45 W fridge about a day; 500 W won’t boil a kettle.'],
  },
  {
    name: 'kw-or-kwh',
    isBeforeSums: true,
    spots: ['kw_or_kwh|kwh_or_kw|kilowatts_or|kw_vs_kwh'],
    says: 'Sites charge kWh, what you used: 1 kW for an hour. kW is how fast you use it.',
    lines: ['1 kWh is about 80 Ah at 12 V. A fan heater of 2 kW takes two of them an hour.'],
  },
  {
    name: 'minus-amp-hours',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'minus|negative|ah|amp_hours used_or_left|left_or_used|overnight_or_left|is_that_used|is_that_gone|is_that_left|are_those_used',
    ],
    says: 'Used: it has counted so many Ah out since the battery was last full.',
    lines: ['What is left is the battery’s Ah less those. It goes back to 0 once charged right up.'],
  },
  {
    name: 'dod-left',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: ['dod|depth_of_discharge half_left|left|gone|remaining -years -cycles -hours'],
    says: 'DoD is what is gone: at 50 % DoD half is left, at 80 % a fifth.',
    lines: ['State of charge is the rest of it: the two add up to 100 %.'],
  },
  {
    name: 'calcium',
    isBeforeSums: true,
    spots: ['calcium -charge -charger -volts -setting -limescale'],
    says: 'Mostly a starter battery: no deep-cycle one, unless its label says so. Use a third of it.',
    lines: ['It wants up to 14.8 V to fill, so plain AGM settings leave it a bit short.'],
  },
  {
    name: 'supply-mode',
    isBeforeSums: true,
    spots: ['supply_mode|power_supply_mode|supply_setting'],
    says: 'It gives a steady 13 to 14 V without looking for a battery: to run gear, or while you swap one.',
    lines: ['It isn’t for charging: no stages, and most switch reverse protection off in it.'],
  },
  {
    name: 'peak-watts',
    isBeforeSums: true,
    spots: [
      'peak|surge what|whats|mean* inverter|power_station -peak_sun -volts -alternator -size -how_many',
    ],
    says: 'Peak is what it gives for a moment as a motor starts; the continuous watts are what counts.',
    lines: [
      'A 1000 W inverter with 2000 W peak runs 1000 W for long, and starts a fridge that jolts to 1500.',
    ],
  },
  {
    name: 'inverter-warns-at',
    isBeforeSums: true,
    spots: ['inverter beep*|alarm*|warn* what_volts|what_volt*|which_volt*|at_what|volts_is'],
    says: 'Usually it beeps at about 11 V and switches off at about 10.5 V, under load.',
    lines: ['On lead-acid that is far too low to go to each night: stop at 12.2 V at rest.'],
  },
  {
    name: 'which-way-round',
    isBeforeSums: true,
    spots: ['matter which_way_round|which_way_around red|black|leads|wires|battery|it -panel* -bulb'],
    says: 'Yes, very much: red to plus, black to minus. Swapped, it blows fuses and kills electronics.',
    lines: ['Look for + and − on the case, or use a meter. Plus goes on first, minus last.'],
  },
  {
    name: 'cold-shrinks',
    isBeforeSums: true,
    spots: [
      'cold|frost|freezing batter* smaller|shrink*|lose_half|lose_power|less_capacity|lose_capacity -swol* -cable',
    ],
    says: 'For as long as it’s cold: at 0 °C lead-acid gives about a quarter less, lithium a seventh.',
    lines: ['Warm again it gives all of it. Slow loads lose least.'],
    caution: 'lithium-cold',
  },
  {
    name: 'lithium-on-float',
    isBeforeSums: true,
    spots: [
      'lithium|lifepo* float need|needs|kept|have_to|must|should|ok|bad -volts -volt* -boat -dead -wont -never',
    ],
    says: 'It needs none: lithium holds its charge. A float of 13.4 to 13.5 V does no harm.',
    lines: ['For months away leave it half full and unhooked.'],
  },
  {
    name: 'bms-built-in',
    isBeforeSums: true,
    spots: [
      'lithium*|lifepo* bms all|every|always|built_in|come_with|come_with_one|have_one -reset -cut* -trip* -off -amps -amp -a',
    ],
    says: 'Nearly every 12 V LiFePO4 battery has one inside; bare cells have none. Its label says so.',
    lines: ['Never use a lithium battery without. Lead-acid, AGM and gel have none and need none.'],
  },
  {
    name: 'equalise-sealed',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'equalis*|equaliz* agm|gel|sealed|lithium yes_or_no|should|once_a|monthly|says|ok|can|do_i|need -mistake -accident* -wrecked -ruined',
    ],
    says: 'No: equalising is for wet batteries only. It dries sealed ones out and can make lithium cut off.',
    lines: ['Switch it off in the charger’s and the controller’s setting.'],
  },
];
