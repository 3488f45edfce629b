import type { PlainQuestion } from './plain-question.ts';

/** How batteries and gear are looked after, and what harms them. */
export const upkeepQuestions: readonly PlainQuestion[] = [
  {
    name: 'inverter-left-on',
    isBeforeSums: true,
    spots: [
      'inverter leave|left|leaving|keep|stay|turn_off|switch_off|off on|night|overnight|time|when_not|every -trip* -cuts -keeps -beep* -my_fridge -run_my',
    ],
    says: 'Switch it off: an inverter left on takes about 5 to 15 Ah a night with nothing plugged in.',
    lines: [
      'That is as much as charging five phones or more. Switch it off when you’re done; it does no harm otherwise.',
      'If something must run all night, look for a 12 V version of it.',
    ],
    next: ['what is idle draw?'],
  },
  {
    name: 'cold-weather',
    spots: [
      'cold|freez*|frost|snow|winter batter*|agm|lithium hurt|harm|damage|affect|bad|kill|less|worse|matter|ok|last|work -charg* -how_long -how_many -solar -panel* -hours',
    ],
    says: 'Cold doesn’t harm a charged battery, but it gives less: lead-acid about a fifth less at 0 °C.',
    lines: [
      'A flat lead-acid battery can freeze and split, so keep it full in the frost.',
      'Lithium may be used in the cold, but never charged below 0 °C.',
    ],
    next: ['how cold is too cold to charge lithium?'],
  },
  {
    name: 'hot-weather',
    spots: [
      'heat|hot_weather|hot_day*|bonnet|under_bonnet|engine_bay|summer batter*|agm|lithium hurt|harm|damage|affect|bad|kill|ok|safe|put|fit|mount|live|go -fridge -how_long -how_many -solar -panel* -smell* -swell*',
    ],
    says: 'Heat ages batteries: 10 °C more halves a lead-acid battery’s life, and lithium dislikes it too.',
    lines: [
      'Keep it out of the sun. A starter-type AGM may live in the engine bay if its maker says so; lithium may not.',
      'Warm to the hand after hard charging is normal. Too hot to touch is not: stop and keep away.',
    ],
  },
  {
    name: 'worn-out',
    spots: [
      'how know|tell|check|test stuffed|bad|dead|dying|had_it|worn|good|shot|cooked|rooted|knackered|healthy|faulty|any_good batter*',
      'how test batter*|agm|lithium -fuse -volt_drop',
      'when replace|renew batter* -or -better -lithium',
    ],
    says: 'Charge it full, leave it an hour with nothing on, then read the volts and run a known load.',
    lines: [
      'AGM or lead-acid under 12.5 V after that rest is tired; so is one that falls fast with a small load.',
      'Test it: a 5 A load on a good 100 Ah should take about 10 hours to get to 12.2 V at rest. Half the time means half the battery.',
      'Many battery shops load-test it for you.',
    ],
    next: ['how long do batteries last?', '12.5V agm at rest, how full?'],
  },
  {
    name: 'years',
    spots: [
      'how_many_years|how_many_cycles|life_expectancy|lifespan|life_span batter*|agm|lithium|it|they',
      'how_long|how_old batter*|agm|lithium|lifepo* last|live|lasts|years|before_they|before_i_replace years|replace|life|before_they|before_it_needs|wear -hours -days -run -fridge',
      'how_long_do|how_long_does|how_long_will batteries|agm_batter*|lithium_batter*|an_agm|a_lithium last -run -fridge -on -with -charge -camp*',
    ],
    says: 'Looked after, AGM lasts about 4 to 7 years, lithium about 10 or more.',
    lines: [
      'In full use that is some 500 cycles to half for AGM, and 2000 or more for lithium.',
      'AGM dies early from standing half empty and from going below half; lithium from heat, and from charging when frozen.',
    ],
    next: ['agm or lithium?', 'how do I store a battery?'],
  },
  {
    name: 'half-cycles',
    spots: [
      'halfway|half_way|to_half|half_flat|every_night|each_time|each_night|cycling wear*|age|ages|shorten*|hurt|bad_for|kill|harm -fridge -inverter',
    ],
    says: 'A little each time: AGM is good for some 500 such rounds, lithium for 2000 or more.',
    lines: [
      'Shallower is kinder to AGM, and so is a full charge straight after. Lithium hardly minds how deep.',
    ],
    next: ['how long do batteries last?', 'how low can I take an AGM?'],
  },
  {
    name: 'flat-once',
    spots: [
      'dead_flat|completely_flat|totally_flat|stone_dead happens run|go|goes -car -truck -starter -crank*',
      'flat|empty|dead|all_the_way_down once|one_time|bad|hurt|ruin*|damage*|kill agm|lithium|batter*|deep_cycle run|running|go|going|goes|let|gone|drain*|flatten* -car -truck -night -long -starter -crank*',
    ],
    says: 'Once won’t kill it, but AGM loses a little each time: charge it right up straight away.',
    lines: [
      'Days or weeks standing flat do the real harm to lead-acid.',
      'Lithium just switches off when empty: charge it within days, as it goes on draining slowly.',
    ],
    next: ['how low can I take an AGM?', 'what is sulphation?'],
  },
  {
    name: 'below-the-line',
    isBeforeSums: true,
    spots: [
      'what_happens|what_if|is_it_bad|does_it_hurt|does_it_matter below|under|past|lower_than batter*|agm|lithium|it -volt* -how_long -how_much -start* -zero -freez* -degrees -bonnet -seat -bed',
    ],
    hasAnyFigures: true,
    says: 'AGM and other lead-acid wear faster each time they go below half; lithium doesn’t mind.',
    lines: [
      'Once or twice is no disaster: charge it right up straight away, as standing low does the harm.',
      'Lithium is fine down to about 20 %; quite empty, its BMS switches everything off.',
    ],
    next: ['what is depth of discharge?', 'agm or lithium?'],
  },
  {
    name: 'save-power',
    spots: [
      'how|ways|tips make|stop|keep|get|stretch batter* last_longer|going_flat|go_further|from_dying|lasts_longer -overnight_why -fault -health*',
      'how|ways|tips save|use_less|cut_down power|energy|battery|amps -how_much -how_many',
      'what|which uses|use|takes|draws|drains most|biggest power|battery|energy|camping -panel* -how_many',
    ],
    says: 'Mind the fridge first: it takes most of the power. Keep it shaded, full, and opened seldom.',
    lines: [
      'Freeze or chill everything at home, and set it to 4 °C, not colder.',
      'Switch the inverter off when you’re done; anything that heats (kettle, toaster, hair dryer) goes on gas or waits.',
      'What goes out must come back: a panel in the sun, or a drive each day or two.',
    ],
    next: ['what does a fridge use a day?', 'how many solar panels to run a fridge?'],
  },
  {
    name: 'monitor-astray',
    spots: [
      'monitor|app|bms|shunt says|shows|reads|showing|reading but|yet|though|wrong volt*|v|percent*|% -how_long -why_is_my_solar',
    ],
    hasAnyFigures: true,
    says: 'The monitor has most likely lost count: charge right up, then set it to 100 % again.',
    lines: [
      'Counting drifts over the weeks without a full charge, and with a wrong battery size in its settings.',
      'Until then trust the volts at their ends: lithium under 12.9 V or AGM under 12.2 V at rest is low, whatever it counts.',
      'All minus wires must run through the shunt, or what goes past it is never counted.',
    ],
    next: ['what is a shunt?', '12.5V agm at rest, how full?'],
  },
  {
    name: 'on-a-plane',
    spots: ['batter*|power_bank|power_station|lithium plane|flight|fly|airline|aeroplane|airport'],
    says: 'Power banks up to 100 Wh go in the cabin; a camping battery is far over that and stays at home.',
    lines: [
      '100 to 160 Wh needs the airline’s leave. Nothing lithium goes in checked bags loose. Ask the airline: its rules count.',
    ],
  },
  {
    name: 'fridge-when-low',
    spots: ['what_happens|what_does|what_will fridge|freezer low|flat|dies|runs_out|empty|drops'],
    isBeforeSums: true,
    says: 'It switches itself off at its cut-off volts, and starts again once the battery is charged.',
    lines: [
      'Its setting says when: low about 10.5 V, medium about 11 V, high about 11.8 V.',
      'Kept shut, a full fridge stays cold for some hours; check the food if it was off longer.',
    ],
    next: ['what is cut-off voltage?'],
  },
  {
    name: 'small-drains',
    spots: [
      'usb|charger|socket|dash_cam|radio|stereo|clock drain*|flatten|kill|use|uses batter*|power plugged|nothing|standby|off|left|idle -how_long -how_many',
    ],
    says: 'A little: an empty USB socket with a light takes about ½ Ah a day.',
    lines: [
      'That is nothing on a trip, but a starter battery standing for weeks goes flat by it: unplug it then.',
    ],
    next: ['what is idle draw?'],
  },
  {
    name: 'storing',
    spots: [
      'charge|full|full_up before storing|storage|store|winter|putting_it_away -how_long -how_much',
      'store|storing|storage|put_away|not_using|lay_up|laid_up|between_trips batter*|agm|lithium -dead -clamp*',
      'disconnect|unhook|remove batter*|terminal* store|storing|storage|winter|parked|away -dead -flat',
      'leave|left|sit|sitting batter*|agm|lithium months|winter|weeks|all_winter|off_season|between_trips -charger -solar -panel* -running',
    ],
    says: 'AGM: store it full and top it up every two or three months. Lithium: store it about half full.',
    lines: [
      'Take the leads or the main switch off, so that nothing small drains it: a radio’s memory flattens one in weeks.',
      'Cool and dry is best. Never leave lead-acid standing flat: it is ruined within weeks.',
    ],
  },
  {
    name: 'battery-indoors',
    spots: [
      'batter*|agm|lithium|flooded|wet_cell inside|indoors|cabin|cab|bed|tent|sleep|under_the_seat|behind_the_seat|in_the_car|in_the_van safe|ok|okay|can|allowed|should -charg* -smell* -engine -generator -heater -last -run -swol* -warm -hot -beep* -lights -fridge -save -use',
    ],
    says: 'AGM, gel and lithium may be inside, fixed down and fused; a battery you top up with water may not.',
    lines: [
      'Wet batteries give off explosive gas on charge: they need a sealed box vented to the outside.',
      'Cover the posts, tie it down for a crash, and keep bedding and tins off it.',
    ],
    caution: 'fuse-at-battery',
  },
  {
    name: 'wet-gear',
    spots: [
      'get_wet|gets_wet|getting_wet|in_the_rain|rain_proof|waterproof|rain_on|rained_on|wet_grass panel|panels|solar|batter*|inverter|controller|connector* -make* -how_much -how_long -pump -extension -runs -lead -leads -smok*',
    ],
    says: 'Panels may get wet; batteries, controllers, inverters and open plugs stay dry.',
    lines: [
      'Lift plugs off the ground. A wet inverter is left off until it has dried out: it makes mains power.',
      'Cheap folding panels are often only splash proof: look for IP65 or better on the box at the back.',
    ],
    next: ['what is an IP rating?'],
  },
  {
    name: 'touching',
    spots: [
      'shock|electrocut*|zap* batter*|terminal*|twelve_volt*|v|volt|volts|dc can|will|could|does|dangerous -inverter -mains -hook* -body -pole -water -caravan -got',
      'drop|dropped|fell|falls|touch* spanner|wrench|screwdriver -smok* -flash* -burn* -melt*',
      'dangerous|safe touch|touching -inverter -mains -hot -warm -swol* -swell* -smell* -water -wet',
      'touch terminal*|posts|batter* can|safe|ok|okay|dangerous -hot -swol* -swell* -warm -smell*',
    ],
    hasAnyFigures: true,
    says: '12 V won’t shock you through dry skin, but a short across the posts burns skin and cable at once.',
    lines: [
      'Take rings and watches off, keep spanners off the two posts, and undo the minus first.',
      'What comes out of an inverter is mains and can kill, and so can a string of panels over 60 V.',
    ],
  },
  {
    name: 'reversed',
    spots: [
      'backwards|wrong_way_round|wrong_way_around|reversed|reverse_polarity|back_to_front panel|panels|controller|charger|fridge|inverter|wires|red_and_black|battery_leads -jump* -clamp* -pole -power_station -socket -plug* -run -runs',
    ],
    says: 'Disconnect it now. Nothing is switched on again until you’ve checked the fuses.',
    lines: [
      'A fuse may have saved it: put in the same size once red is on plus and black on minus.',
      'Chargers, controllers and inverters often don’t survive it. If one smells, stays dead or blows its fuse again, leave it off.',
      'Measure plus and minus with a meter before you join anything.',
    ],
  },
];
