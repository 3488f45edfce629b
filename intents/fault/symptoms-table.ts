import { specialSymptoms } from './special-symptoms-table.ts';
import type { Symptom } from './symptom.ts';

/**
 * Faults as people meet them, special ones before general ones. Common practice throughout: volts by the resting and
 * loaded readings of the trade, limits by usual cut-outs (fridges 10.4–11.8 V, inverters 10.5–11 V, isolators on at
 * 13.3 V and off at 12.8 V). Volts in braces are of a 12 V system, and told for the system at hand; {full}, {half}
 * and {low} are the resting volts of the battery at hand at 100, 50 and 20 %.
 */
export const symptoms: readonly Symptom[] = [
  ...specialSymptoms,
  {
    name: 'hot-joint',
    spots: [
      'plug|socket|holder|lug|terminal|connector|wire|wires|cables|leads|cable|lead|joint|post hot|warm|melt*|brown|smell*|burnt|scorch* -fridge -batter* -blow* -pop*',
      'plug|socket|holder|pin gets_warm|gets_hot|hot|melt*|burnt|scorch*|black -blow* -pop* -fuse -warm_inside',
    ],
    when: [],
    causes: [
      {
        likely: 'Heat means a bad contact or too thin a cable: switch it off before you look.',
        check:
          'Joint: if you measure over {0.1 V} across it while it runs, it’s bad. Clean, crimp and tighten it, or renew it.',
      },
      {
        by: 'cable',
        likely: 'It carries more than it should: the whole cable warms up.',
        check: 'Cable: if it’s warm all along, it’s too thin. Lay thicker cable or run a smaller load.',
      },
    ],
    asks: ['What runs on it, and how thick is the cable?', 'cable'],
  },
  {
    name: 'engine-clicks',
    spots: [
      'click* start*|engine|crank* -isolator -fridge -charger -charge -split',
      'wont_start|wont_crank|not_start|doesnt_start|dead|flat car|van|truck|ute|engine|lorry -fridge -charg* -inverter -heater -overnight -parked -morning',
      'car|van|truck|ute|engine clicks|clicking|wont_turn|turn_over|turns_over wont|but|only -inverter -heater -charger',
      'jump_start|jump_lead*|jump_pack|jumper',
    ],
    when: ['starter'],
    causes: [
      {
        unless: { voltsFrom: 12.4 },
        likely: 'The starter battery is flat: jump it from a pack or another vehicle, then drive an hour.',
        check:
          'Flat: it reads under {12 V} at rest. Join plus to plus, then minus to bare engine metal, away from the battery.',
      },
      {
        likely: 'The starter battery is worn out.',
        check: 'Worn: it falls under {9.6 V} while it cranks, though charged. Renew it.',
      },
      {
        likely: 'A loose or dirty clamp on the starter battery.',
        check: 'Clamp: the engine clicks and the volts stay up. Clean and tighten both ends.',
      },
    ],
    asks: ['What does the starter battery read at rest?', 'volts'],
  },
  {
    name: 'fuse-blows',
    spots: [
      'fuse|fuses|breaker blow*|blew|blown|pop*|melt*|trip*|gone|went|burn*|goes|lets_go|again -post -site -pole -hookup -hook_up',
      'keeps_blowing|keeps_popping|blew_again|blown_again -speaker',
      'fuse keeps_going|keep_going|goes_every',
      'it_blew|they_blew straight|again|twice|once',
      'bigger_one|larger_one went|blew|popped|blows',
    ],
    when: ['fuse'],
    isFuse: true,
    weighs: ['fuse'],
    causes: [
      {
        likely: 'No bigger fuse: it guards the cable. Find what draws too much or touches metal first.',
        check:
          'Short: it blows at once, even with the load off. Look for chafed wire, then check the load’s own plug.',
      },
      {
        by: 'fuse',
        likely: 'No bigger fuse on that cable: the load alone is too much for it.',
        check:
          'Overload: it blows after a while. Measure the load with a clamp meter: over 4/5 of the fuse for long is too much.',
      },
      {
        likely: 'No bigger fuse: a motor that starts stiffly asks for too much.',
        check:
          'Motor: it blows as the motor starts, which is jammed, worn or short of volts. Free it, and measure at its plug.',
      },
    ],
    asks: ['Does it blow at once, at the start, or after a while?', 'words'],
  },
  {
    name: 'fridge-never-stops',
    spots: [
      'fridge*|freezer*|frige*|esky|compressor never_stop*|never_switch*|non_stop|nonstop|all_the_time|wont_stop|never_off|doesnt_stop|constantly|runs_on|runs_all_day|run_all_day|running_all_day|always_running|always_runs -fuse -light* -lights -dim*',
    ],
    when: ['cooler', 'hot-day'],
    weighs: ['duty'],
    causes: [
      {
        unless: { ambientUnderC: 25 },
        likely: 'In heat a sound fridge may run almost without a break: shade and air for it first.',
        check:
          'Heat: give it an hour in the shade with a hand’s width of air behind it. If it rests then, it’s sound.',
      },
      {
        likely: 'A leaking door seal lets the cold out.',
        check:
          'Seal: shut the door on a slip of paper: it must stick all round. If not, clean or renew the seal.',
      },
      {
        likely: 'Out of gas: a job for a refrigeration mechanic.',
        check: 'Gas: it’s still not cold by a cool dawn. Take it to a licensed refrigeration mechanic.',
      },
    ],
    asks: ['What does it draw while it runs, and how hot is it?', 'ambientC'],
  },
  {
    name: 'lithium-cold',
    spots: [
      'lithium|lfp|lifepo charg* frost|freez*|cold|snow|minus|ice|frozen|below_zero',
      'lithium|lfp|lifepo refuse*',
    ],
    when: [],
    causes: [
      {
        unless: { ambientFromC: 8 },
        likely: 'Under 0 °C a lithium battery must take no charge: its BMS refuses, and it is sound.',
        check:
          'Cold: it charges again once its cells are at 5–10 °C. Warm the box slowly, let loads run, and wait.',
      },
      {
        likely: 'Or its BMS has cut it off as empty.',
        check:
          'Empty: it’s warm, under {11.5 V} and takes no charge. Use a charger with a wake-up mode, and watch it.',
      },
    ],
    asks: ['How cold is the battery itself?', 'ambientC'],
    caution: 'lithium-cold',
  },
  {
    name: 'bms-cut',
    spots: [
      'bms cut*|trip*|off|protect*|shut*|kick*|dropp*|tripp*|stopp*',
      'lithium|lfp|lifepo off|dead|dark|cut*|shut*|zero -charg* -wont',
      'everything_went|everything_goes|everything_dark|goes_dark|went_dark|all_dark|everything_dies|switches_itself_off -morning -night -am',
    ],
    when: ['lithium'],
    weighs: ['limit', 'level'],
    causes: [
      {
        by: 'level',
        unless: { voltsFrom: 13 },
        likely: 'Its BMS cut it off, most likely because it was empty.',
        check:
          'Empty: it read under {12 V} just before. Wake it with a charger, then charge more or use less.',
      },
      {
        by: 'load',
        likely: 'Its BMS cut it off because too many amps were asked of it.',
        check: 'Too many amps: it goes as something big starts. Stay under the limit on its label.',
      },
      {
        likely: 'Its BMS cut it off because it was too cold or too hot.',
        check: 'Cold: it gives power but takes no charge under 0 °C. Warm it to 5–10 °C first.',
      },
    ],
    asks: ['What was running, and what did it read just before?', 'volts'],
    caution: 'bypass-bms',
  },
  {
    name: 'mains-trips',
    spots: [
      'trip*|breaker|rcd|goes_off post|site|pole|hookup|hook_up|pedestal|shore',
      'rcd|earth_leakage|safety_switch',
    ],
    when: ['high-mains-load'],
    weighs: ['post'],
    causes: [
      {
        by: 'load',
        unless: { mainsUnderW: 1000 },
        likely: 'The site’s breaker is smaller than what you run: one thing at a time.',
        check:
          'Load: add the watts and divide by the mains volts. A post gives 6, 10, 15 or 16 A: stay under that.',
      },
      {
        likely: 'Something leaks to earth: damp in a lead or an appliance.',
        check: 'Leak: unplug everything, then plug in one by one. Leave out the one that trips it.',
      },
      {
        likely: 'It trips with nothing on: the van’s own wiring is at fault.',
        check: 'Wiring: it trips with nothing plugged in. Leave it off and call a licensed electrician.',
      },
    ],
    asks: ['How many amps does the post give, and what was on?', 'words'],
    caution: 'mains-wiring',
  },
  {
    name: 'inverter-trips',
    spots: [
      'inverter trip*|shut*|beep*|cut*|alarm*|off|error|fault*|quit*|stops|squeal*|scream*|die*|wont|red',
      'kettle|microwave|toaster|hair_dryer|coffee* inverter wont|trip*|off|stops|click*|beep*',
    ],
    when: ['inverter'],
    weighs: ['load', 'sag', 'drop', 'limit'],
    reads: {
      volts: 11,
      low: ['is too low for an inverter: battery or cable, not the load', 'battery'],
      fine: ['is enough for an inverter, so it’s the load', 'load'],
    },
    causes: [
      {
        by: 'battery',
        likely: 'It runs out of volts: a small or low battery, or a thin cable to the inverter.',
        check:
          'Low volts: its terminals read under {11 V} as it beeps (it quits near {10.5 V}). Charge, or fit a bigger battery.',
      },
      {
        by: 'load',
        likely: 'The load is above what the inverter gives, or starts with a jolt.',
        check:
          'Overload: it reads over {11 V} as it beeps. Run fewer things at a time, or fit a larger inverter.',
      },
      {
        by: 'cable',
        likely: 'The cable to the inverter loses too much.',
        check:
          'Cable: if the inverter reads over {0.3 V} less than the battery, go shorter or thicker, with clean tight lugs.',
      },
    ],
    asks: ['What do its terminals read as it beeps?', 'volts'],
    caution: 'big-current',
  },
  {
    name: 'starts-pull-down',
    spots: [
      'off|resets|reset*|drops_out|cuts_out|reboots fridge|pump|compressor starts|kicks|comes_on|joins tv|telly|router|radio|heater|laptop',
    ],
    when: ['screen', 'cooler'],
    weighs: ['drop'],
    causes: [
      {
        by: 'cable',
        likely: 'A motor that starts on the same cable pulls the volts down for the other thing.',
        check:
          'Shared cable: as it starts the plug reads over {0.5 V} less than the battery. Give each its own cable and fuse.',
      },
      {
        by: 'battery',
        likely: 'The battery gives way as the motor starts: low, or worn.',
        check: 'Battery: it falls under {11.8 V} itself as the motor starts. Charge it, then test it.',
      },
    ],
    asks: ['How long and how thick is the cable they share?', 'cable'],
  },
  {
    name: 'lights-dim',
    spots: [
      'light*|lights|lamp*|led|leds dim*|flicker*|fade*|pulse*|blink*|flash*|faint|weak',
      'dim*|flicker* when|whenever|every_time|each_time',
    ],
    when: ['lamp', 'pump'],
    weighs: ['drop', 'level'],
    causes: [
      {
        by: 'cable',
        likely: 'The cable they share is thin or has a poor joint: a motor’s start pulls all down.',
        check:
          'Cable: as the motor starts the lights get over {0.5 V} less than the battery. Give the motor its own cable.',
      },
      {
        by: 'battery',
        likely: 'The battery itself gives way: low or worn.',
        check:
          'Battery: it falls as much as the lights do. If it’s under {half} at rest it’s low: charge it, then test it.',
      },
      {
        likely: 'A loose earth or fuse holder.',
        check: 'Joint: wriggle fuse holder and earth with the lights on. If they blink, mend that one.',
      },
    ],
    asks: ['How long and how thick is the cable to the lights?', 'cable'],
  },
  {
    name: 'heater-faults',
    spots: [
      'heater|furnace|glow fault*|error*|wont|start*|quit*|stops|cuts|code|dies|lock* -inverter -smoke -charg*',
    ],
    when: ['heater'],
    weighs: ['drop'],
    reads: {
      volts: 11.5,
      low: ['is too low for a heater as it starts', 'cable'],
      fine: ['is enough for a heater: look at fuel and air'],
    },
    causes: [
      {
        by: 'cable',
        unless: { voltsFrom: 11.8, taken: 'load' },
        likely: 'As it starts, glow plug and fan draw most, and its volts fall under its limit.',
        check:
          'Volts: while it glows its plug needs over {11.5 V}, at most {0.5 V} under the battery. If not, lay thicker cable.',
      },
      {
        likely: 'Fuel or air: it glows and doesn’t catch.',
        check:
          'Fuel and air: check tank, filter, exhaust and inlet. If they’re clear, ask its maker’s dealer.',
      },
    ],
    asks: ['What do the volts read at its plug as it starts?', 'volts'],
    caution: 'fuel-heater',
  },
  {
    name: 'pump-runs-on',
    spots: [
      'pump keep*|pulse*|cycle*|pulsing|never_stops|by_itself|on_its_own|taps_shut|tap_shut|taps_off|taps_closed|stops_and_starts|hiccup*',
    ],
    when: ['pump'],
    causes: [
      {
        likely: 'A pump that pulses with all taps shut loses pressure: a drip, or its own valve.',
        check:
          'Leak: pinch the hose behind it. If it goes quiet, the drip is beyond; if not, it’s the pump’s own valve.',
      },
      {
        likely: 'Air gets in on its suction side.',
        check: 'Air: it sputters. Check the strainer, the hose clips and the level in the tank.',
      },
    ],
    asks: ['Does it stop when you pinch the hose behind it?', 'words'],
  },
  {
    name: 'motor-slow',
    spots: [
      'slow*|weak|sluggish|barely|lazy|wont_lift pump|fan|winch|motor|slide|slider|jack|awning|mover|thruster|windlass|step',
      'pump|fan|winch|motor wont|not_work*|dead|click*|no_spin*|dont_spin',
    ],
    when: [],
    weighs: ['drop'],
    reads: {
      volts: 11.5,
      low: ['is low for a motor: where the battery reads {0.5 V} more it’s the cable', 'cable'],
      fine: ['is enough for a motor, so look at the motor'],
    },
    causes: [
      {
        by: 'cable',
        unless: { voltsFrom: 11.9, taken: 'load' },
        likely: 'Too few volts reach it: thin or long cable, or a bad joint.',
        check:
          'Cable: if the running motor reads over {0.5 V} less than the battery, lay thicker cable and clean the joints.',
      },
      {
        likely: 'Full volts and it still won’t turn: the motor is stuck or worn.',
        check:
          'Motor: it gets {12 V} and doesn’t turn. Pull the fuse and free it by hand; if that fails, renew it.',
      },
      {
        likely: 'A fuse, switch or earth lets nothing through.',
        check: 'Feed: it reads 0 V with the switch on. Follow fuse, switch and earth with the meter.',
      },
    ],
    asks: ['What do the volts read at it while it should run?', 'volts'],
  },
  {
    name: 'fridge-off-by-night',
    spots: [
      'fridge*|freezer*|frige*|coolbox|cool_box|cooler cut*|stop*|off|die*|dead|quit*|error*|fault*|shut*|trip*|drops_out|gives_up night|nights|overnight|dark|evening|evenings|sunset|sundown|dusk day|days|daytime|daylight|sun|sunny|sunshine|morning|mornings|charging|engine fine|ok|okay|good|works|working|runs|running|run|again|perfect|well|happy|alright -turn_it_off|turn_off|switch_it_off|switch_off|save|flat_in_the_morning',
    ],
    when: [],
    weighs: ['day', 'age', 'level', 'drop'],
    causes: [
      {
        by: 'battery',
        unless: { voltsFrom: 12.4, taken: 'load' },
        likely: 'Most likely the battery runs low: by day the sun or a charger props its volts up.',
        check:
          'Battery: it reads under {half} at rest when that happens (30 minutes all off). Charge more, use less, or fit a bigger one.',
      },
      {
        by: 'cable',
        likely: 'Its cable or plug loses too many volts, which shows once nothing props them up.',
        check:
          'Cable or plug: if the running fridge reads over {0.5 V} less than the battery, fit thicker cable and a screw-in plug.',
      },
      {
        unless: { voltsFrom: 12.4, taken: 'load' },
        likely: 'Most likely the battery never got full or has lost capacity.',
        check:
          'Weak battery: full at dusk and still low by dawn, it’s worn: renew it. Never full at dusk, charge longer.',
      },
    ],
    asks: ['What does the battery read at night, just before it stops?', 'volts'],
  },
  {
    name: 'fridge-cuts-out',
    spots: [
      'fridge*|freezer*|frige*|coolbox|cool_box|cooler cut*|stop*|off|die*|dead|quit*|error*|fault*|warm|low_volt*|beep*|flash*|code|shut*|wont|trip*|click*|defrost*|not_cool*|alarm*',
      'low_volt* error|alarm|warning|cut*',
    ],
    when: ['cooler'],
    weighs: ['drop', 'age', 'day', 'level'],
    reads: {
      volts: 11.8,
      low: [
        'is low for a fridge: where the battery reads {0.5 V} more just then it’s the cable or plug, else the battery',
      ],
      fine: ['is enough for a fridge: look at its setting, then at the fridge'],
    },
    causes: [
      {
        by: 'cable',
        unless: { voltsFrom: 12.4, taken: 'load' },
        likely: 'Most likely its volts sag as it runs: thin or long cable, or a loose 12 V socket.',
        check:
          'Cable or plug: if the running fridge reads over {0.5 V} less than the battery, fit thicker cable and a screw-in plug.',
      },
      {
        by: 'battery',
        unless: { voltsFrom: 12.4, taken: 'load' },
        likely: 'Most likely the battery is low by then, and the fridge guards it.',
        check:
          'Battery: it reads under {half} at rest (30 minutes all off). Charge more, use less, or fit a bigger one.',
      },
      {
        unless: { voltsFrom: 12.4, taken: 'load' },
        likely: 'Most likely the battery never got full or has lost capacity.',
        check:
          'Weak battery: if it’s under {full} an hour after charging, charge longer. Full and still low by dawn, it’s worn: renew it.',
      },
      {
        likely: 'Its own cut-out is set too high.',
        check:
          'Setting: its cut-out is on high. Set it to low on a second battery, never on the starter battery.',
      },
    ],
    asks: ['What does it read at the fridge plug while it runs?', 'volts'],
  },
  {
    name: 'flat-parked',
    spots: [
      'flat|dead|drain*|empty|discharg* parked|storage|stood|standing|nothing_on|everything_off|all_off|switched_off|week|weeks|unused',
      'spark|draws|hidden_draw|parasitic|phantom off|something|still -heater -fridge -freezer',
    ],
    when: [],
    weighs: ['level'],
    causes: [
      {
        likely: 'Something draws with all switched off: alarm, radio, inverter or a charger left on.',
        check:
          'Hidden draw: with all off, measure amps in the minus lead. If it’s over 0.05 A, pull fuses until it falls.',
      },
      {
        by: 'battery',
        likely: 'A worn battery empties by itself.',
        check: 'Battery: full and disconnected, it falls under {half} within a week. Renew it.',
      },
    ],
    asks: ['How old is the battery, and what does it read now?', 'volts'],
  },
  {
    name: 'battery-worn',
    spots: [
      'green|full|done|charged minutes too_fast|too_quick*|already|was_flat|only|fast -never -wont -panel* -solar -dcdc',
      'full then flat|dead|gone|drop*|empty',
      'says_full|reads_full|shows_full',
      'wont|not|doesnt hold*',
      'old|years|year battery|agm|gel|flooded|sealed flat|dead|dies|dead|full|hold*|sag*|drop*|shot|finished|done|worn|knackered|tired',
    ],
    when: ['old-battery'],
    weighs: ['age', 'day'],
    causes: [
      {
        by: 'battery',
        likely: 'Most likely it is worn: it fills quickly, shows full, and has little in it.',
        check:
          'Worn: run a known load from full. Under 80 % of its label’s Ah it’s worn, under half it’s finished.',
      },
      {
        likely: 'Or it never gets full: charger or joints.',
        check:
          'Never full: it’s under {full} a day after charging. Clean its terminals and check the charger’s setting.',
      },
    ],
    asks: ['How old is it, and what does it read a day after charging?', 'age'],
  },
  {
    name: 'flat-overnight',
    spots: [
      'flat|dead|empty|drain*|low|gone|dies|die|finished overnight|morning|midnight|night|dawn|sunrise|breakfast|evening',
      'goes_flat|keeps_dying|keeps_going_flat|runs_down|runs_flat|flat_again',
      'cut*_out|conk*|dies|dead|quits|quit|off|drops_out|stops|trips|alarm night|nightly|nights|midnight|morning|mornings',
    ],
    when: ['battery', 'lamp'],
    weighs: ['age', 'day', 'level'],
    causes: [
      {
        by: 'battery',
        likely: 'Either more is drawn than you think, or the battery holds far less than its label.',
        check:
          'Battery: switch all off at dusk. Over {0.1 V} less by dawn, it’s a hidden draw or a dying battery; if not, the loads.',
      },
      {
        likely: 'Most likely it was never full when the night began.',
        check:
          'Never full: an hour after sunset it reads under {full}. Charge longer, then look at the charger.',
      },
      {
        by: 'load',
        likely: 'Your use is larger than the battery.',
        check:
          'Use: add up each thing’s amps × hours. If that’s over half of a lead battery’s Ah, it’s too much.',
      },
    ],
    asks: ['What does it read at dusk and at dawn, all off?', 'volts'],
  },
  {
    name: 'battery-very-low',
    spots: [
      'refuse* charg* -lithium -lfp',
      'charger blinks|flashes|blinking|flashing nothing|flat|dead',
      'charger wont_start|wont_see|ignores|not_recogn*|wont_turn',
      'stone_dead',
    ],
    when: ['volts-very-low'],
    unless: { voltsFrom: 11.5 },
    weighs: ['level'],
    causes: [
      {
        likely: 'So low a battery has been run right down, and most chargers won’t begin on it.',
        check:
          'Lead: under {10.5 V} at rest a cell is likely dead. If it isn’t at {12.4 V} a day after charging, it’s finished.',
      },
      {
        likely: 'A lithium battery’s BMS has cut it off.',
        check:
          'Lithium: try a charger with a wake-up mode, and watch it. Don’t force it: let its dealer look at it.',
      },
    ],
    asks: ['Lead or lithium, and how old?', 'age'],
    caution: 'battery-gas',
  },
  {
    name: 'panel-rests',
    spots: [
      'float|floating|is_full|full_battery|battery_full|topped_up panel*|solar|array|sun|sunny|controller|regulator|mppt|pwm amp|amps|watts|current|nothing|zero|only|less|dropped|why|wrong|normal -never|not|isnt|wont|doesnt|half|inverter|night',
    ],
    when: [],
    weighs: ['noon', 'charge'],
    causes: [
      {
        likely:
          'Most likely nothing is wrong: in float, or when it is full, a battery takes next to nothing.',
        check: 'Load: switch something big on in the sun. If the panel’s amps rise with it, all is well.',
      },
      {
        likely: 'Or the battery is worn and only looks full.',
        check:
          'Battery: it falls under {12.6 V} within an hour of the sun going, with little on: have it load-tested.',
      },
    ],
    asks: ['What do the amps do when something big is switched on?', 'words'],
  },
  {
    name: 'drawn-with-all-off',
    spots: [
      'draw*|pulls|pulling|using|going_out|out|minus|amps|amp|shows|says|reads|drain* nothing_on|all_off|everything_off|everythings_off|switched_off|nothing_running|nothing_is_on|nothings_on|literally_nothing|all_switched_off|turned_off -parked|storage|week|weeks',
    ],
    when: [],
    causes: [
      {
        unless: { ampsUnder: 0.8 },
        likely:
          'Something still draws: an inverter on standby (1–2 A), a fridge, heater or charger in the dark.',
        otherwise:
          'Something small still draws: a gas alarm, radio, tracker, USB sockets, the monitor itself.',
        check:
          'Fuses: watch the monitor and pull one fuse at a time. The one that brings it near 0 is the circuit; then go through what is on it.',
      },
      {
        likely: 'Or the monitor’s zero is off.',
        check:
          'Zero: take every minus but the monitor’s own off the load side. If it still shows amps, set its zero.',
      },
    ],
    asks: ['What is on that is never switched off: inverter, fridge, alarm, tracker?', 'words'],
  },
  {
    name: 'panel-no-amps',
    spots: [
      'controller|panel*|solar|mppt|pwm|regulator volt*|v no|zero|nothing|nil|without charg*|amp*|current|watts',
      'controller|regulator|mppt|pwm show*|read*|say*|display*|volt* not_charg*|no_charg*|no_amp*|zero|nothing|wont_charg*|isnt_charg*',
    ],
    when: [],
    unless: { ampsFrom: 0.5 },
    weighs: ['noon', 'level'],
    causes: [
      {
        unless: { voltsUnder: 13.2, percentUnder: 90 },
        likely: 'Volts but no amps: most likely the battery is full, and takes nothing.',
        check:
          'Full: the battery reads {13.8 V} or more and it says “float”. Switch a load on: the amps must rise.',
      },
      {
        likely: 'Volts but no amps: the way from controller to battery is open.',
        check:
          'Open way: the controller’s battery side reads other than the battery. Check fuse, lugs and breaker between.',
      },
      {
        likely: 'The panel’s plug or joint carries volts but no amps.',
        check:
          'Panel: unplug it and measure its amps (10 A range) in full sun: near its label’s Isc is good, near 0 is a bad plug.',
      },
    ],
    asks: ['What do the volts read at the battery itself, in the sun?', 'volts'],
  },
  {
    name: 'panel-little',
    spots: [
      'panel*|solar|array less|little|hardly|barely|half|drop*|only|poor|weak|low|shade|shadow|used_to|before -night',
      'making|makes|make less|little|hardly|barely -inverter',
      'noon|midday|full_sun|sunny|sun a|amps|amp|w|watts -night -nothing -zero -no',
    ],
    when: ['two-panels'],
    weighs: ['noon', 'charge'],
    causes: [
      {
        likely: 'Most likely shade, dirt or a flat angle: a shaded corner can cost most of a panel.',
        check: 'Shade: clean it and turn it square to a full noon sun. If the amps come back, that was it.',
      },
      {
        likely: 'Or the battery is nearly full and takes little.',
        check: 'Full: the battery reads {13.8 V} or more. Switch a load on: the amps must rise.',
      },
      {
        likely: 'Or one of the panels or its plug is at fault.',
        check:
          'Panel: in full sun each alone must be within a tenth of its label’s open-circuit volts. Then check plugs and fuse.',
      },
    ],
    asks: ['How many amps at noon in full sun, and at what battery volts?', 'current'],
  },
  {
    name: 'panel-nothing',
    spots: [
      'controller|regulator|mppt blank|black|dark|dead|error|red',
      'panel*|solar|array|mppt|pwm|controller nothing|zero|not_charg*|isnt_charg*|wont_charg*|doesnt_charg*|dead|no_charge|no_output|stopped',
      'no_solar|no_sun_power',
    ],
    when: ['panel'],
    unless: { ampsFrom: 1 },
    weighs: ['noon', 'level'],
    causes: [
      {
        unless: { voltsUnder: 13.2, percentUnder: 90 },
        likely: 'Is the battery full? Then it takes nothing. Else most likely a plug, fuse or controller.',
        otherwise: 'A plug, fuse or the controller: the battery isn’t full, so it should take what comes.',
        check:
          'Panel: unplug it in full sun. Near its label’s open-circuit volts (20–23 V for 12 V) it’s good; near 0 it’s the plug.',
      },
      {
        likely: 'The fuse or cable behind the controller.',
        check:
          'Behind it: controller and battery must read the same volts. If not, mend the fuse or lug between.',
      },
      {
        likely: 'The controller itself.',
        check:
          'Controller: if volts in and at the battery are good but no amps flow into a load, it’s this or its battery setting.',
      },
    ],
    asks: ['What do the battery and the unplugged panel read in the sun?', 'volts'],
  },
  {
    name: 'two-batteries-apart',
    spots: [
      'aux|auxiliary|second_battery|back_battery|rear_battery|house|leisure starter|cranking|main_battery engine|driving|charging|running|volt*|v -click* -crank -dim* -dcdc -smart -jump*',
      'main aux -fuse',
      'charg* second|back|rear|house|leisure|aux|van_battery wont|not|doesnt|isnt|never drive|driving|engine -dcdc -dc_dc -smart -alternator -isolator -relay',
    ],
    when: [],
    weighs: ['drive'],
    causes: [
      {
        by: 'isolator',
        likely:
          'The link between the two doesn’t carry: a fuse, an isolator that stays open, or a thin cable.',
        check:
          'Link: engine on, both should read within {0.3 V}. If not, measure on from the front: the fuse or box where it drops is it.',
      },
      {
        likely: 'A smart alternator lets an isolator drop out.',
        check:
          'Smart: the starter battery itself sinks under {13.2 V} on the road. A DC-DC charger cures it.',
      },
      {
        likely: 'A DC-DC charger without its ignition wire stays off.',
        check:
          'DC-DC box: if there is one, no light with the engine on means no ignition wire or a blown fuse.',
      },
    ],
    asks: ['What do both batteries read with the engine running, and what joins them?', 'words'],
  },
  {
    name: 'smart-alternator',
    spots: ['smart|euro|variable alternator', 'alternator wont|not|doesnt|isnt|never -dcdc -dc charg*|fill*'],
    when: ['any-charger', 'smart-alternator'],
    weighs: ['drive'],
    reads: {
      volts: 13.2,
      low: ['with the engine running is a smart or tired alternator', 'isolator'],
      fine: ['with the engine running is right: look behind it, at fuse and cable', 'cable'],
    },
    causes: [
      {
        by: 'isolator',
        likely: 'Most likely a smart alternator: it drops its volts, and an isolator then lets go.',
        check:
          'Smart: after 10 minutes’ drive the starter battery reads {12.6–13.2 V}. A DC-DC charger with ignition wire cures it.',
      },
      {
        by: 'cable',
        likely: 'Most likely a fuse or the cable to the second battery.',
        check:
          'Cable: engine on, the second battery reads over {0.5 V} less. Check the fuses at both ends, or lay thicker cable.',
      },
      {
        likely: 'The alternator itself gives too little.',
        check: 'Alternator: the volts are no higher with the engine on than off. See an auto electrician.',
      },
    ],
    asks: ['What do both batteries read with the engine running?', 'volts'],
  },
  {
    name: 'isolator-wont-engage',
    spots: ['isolator|vsr|split_charge|relay wont|not|stays|click*|never|engage*|stuck|isnt|doesnt'],
    when: ['isolator'],
    weighs: ['drive', 'level'],
    reads: {
      volts: 13.3,
      low: ['is too low for an isolator to close', 'isolator'],
      fine: ['is enough to close it: look at its earth and fuses'],
    },
    causes: [
      {
        by: 'isolator',
        unless: { voltsFrom: 13.4 },
        likely: 'An isolator joins near {13.3 V}: the alternator gives less, or its earth is off.',
        check:
          'Alternator: if the isolator gets under {13.3 V} with the engine on, it’s a smart one and needs a DC-DC charger.',
      },
      {
        likely: 'The isolator’s sensing or earth wire is off.',
        check:
          'Isolator: it gets over {13.3 V} and stays open. Check its earth wire, then the isolator itself.',
      },
      {
        likely: 'A fuse at one of its ends has gone.',
        check:
          'Fuses: it joins but the second battery’s volts don’t rise. Check fuses and lugs at both ends.',
      },
    ],
    asks: ['What does its starter side read with the engine running?', 'volts'],
  },
  {
    name: 'dcdc-little',
    spots: [
      'dcdc|dc_dc|dc_to_dc|b2b only|instead|meant|supposed|less_than|half amps|amp|a|gives|does|shows|puts -nothing -wont -zero -isnt -not_charg* -no_amps',
      'dcdc|dc_dc|dc_to_dc|b2b does|gives|shows|makes amps not -not_charg* -working',
    ],
    when: [],
    weighs: ['drive'],
    causes: [
      {
        by: 'cable',
        unless: { voltsFrom: 13.5 },
        likely:
          'Most likely low volts at its input, so it holds back: thin or long cable, or the engine at idle.',
        check:
          'Feed: on the road its input should read within {0.5 V} of the starter battery. If not, thicker cable and clean lugs.',
      },
      {
        unless: { percentUnder: 85 },
        likely: 'Or the battery is nearly full and takes less.',
        check: 'Full: its output reads {14 V} or more. Run the battery down a third and look again.',
      },
      {
        likely: 'Or it is hot and turns itself down.',
        check: 'Heat: too hot to hold? Give it air and metal behind it.',
      },
    ],
    asks: ['What do its input and output read on the road?', 'volts'],
  },
  {
    name: 'dcdc-wont-charge',
    spots: [
      'dcdc|dc_dc|dc_to_dc|b2b|b_to_b wont|not|never|isnt|doesnt|dont|no|nothing|stuck|off|error|fault*|stop*|low|only|light|green',
      'charg* drive|driving|engine wont|not|doesnt|isnt|never|no',
    ],
    when: ['dcdc'],
    weighs: ['drive'],
    reads: {
      volts: 13.2,
      low: ['is little for its input: it waits for an ignition wire, or the feed is thin'],
      fine: ['is enough for its input: look at its setting and output'],
    },
    causes: [
      {
        likely: 'Most likely it can’t tell that the engine runs: it lacks its ignition wire.',
        check:
          'Signal: with under {13.2 V} at its input, engine on, it stays off without an ignition wire. Fit one.',
      },
      {
        by: 'cable',
        likely: 'Its feed is open or too thin: a fuse, or the long run from the front.',
        check:
          'Feed: its input reads over {0.5 V} less than the starter battery. Check the fuses at both ends, lay thicker cable.',
      },
      {
        likely: 'It works, but is set for another battery.',
        check:
          'Setting: its output must rise above {13.5 V}. If not, check its setting and its earth, then ask its maker.',
      },
    ],
    asks: ['What do its input and output read with the engine running?', 'volts'],
  },
  {
    name: 'never-full',
    spots: [
      'never|wont|not|doesnt|cant|isnt full|past|over|above|green|100',
      'stuck|stays|still percent|red|bulk|float|absorption',
      'float|bulk after|never|leaves|too_soon|early',
      'bulk|charging all_day|long|for_hours|for_days|all_night|still_says',
      'charger|converter red|green|amber|all_night|still|days',
    ],
    when: ['mains-charger'],
    weighs: ['charge', 'level'],
    causes: [
      {
        by: 'charge',
        likely: 'Most likely less goes in than out: a small charger or panel, or loads that eat it.',
        check:
          'Loads: switch all off for a day. If it fills now, less goes in than out: add panel or hours, or use less.',
      },
      {
        likely: 'The charger stops short: wrong setting or thin leads.',
        check:
          'Charger: it must reach {14.2 V} at the battery and hold it. If not, check its setting, leads and size.',
      },
      {
        by: 'battery',
        likely: 'The battery no longer fills.',
        check: 'Battery: if amps don’t fall after 8 hours at {14.2 V}, or it gets hot, unplug it: it’s done.',
      },
    ],
    asks: ['What charges it, and what volts does it reach?', 'volts'],
    caution: 'battery-gas',
  },
  {
    name: 'monitor-odd',
    spots: [
      'monitor|shunt|meter|gauge|app wrong|odd|lie*|lying|jump*|drift*|always|different|mismatch|trust',
      'monitor|gauge|shunt says|reads|shows|reading full|hundred|percent|half',
    ],
    when: ['current'],
    weighs: ['level'],
    causes: [
      {
        likely: 'A monitor counts, and drifts when it never sees full or has the wrong size set.',
        check:
          'Reset: charge until the amps stay under 2 % of its Ah at {14.2 V}, then set 100 % and its true Ah.',
      },
      {
        likely: 'Something bypasses its shunt.',
        check:
          'Shunt: it must show 0.0 A with all off, and each load. Put every minus but its own on the load side.',
      },
    ],
    asks: ['What do the volts read after half an hour with all off?', 'volts'],
  },
  {
    name: 'phone-slow',
    spots: ['phone*|tablet*|ipad|usb slow*|barely|hardly|wont|not_charg*'],
    when: ['phone'],
    causes: [
      {
        likely: 'Most likely a worn lead or a plain 1 A socket: 5 V × 1 A is only 5 W.',
        check: 'Lead: try another, short one. A quick charger gives 18 W and more.',
      },
      {
        likely: 'Low volts behind the socket.',
        check: 'Socket: measure behind it: under {12 V} many drop out. Lay thicker cable to it.',
      },
    ],
    asks: ['What does the socket say, amps or watts?', 'words'],
  },
  {
    name: 'radio-noise',
    spots: [
      'whine|hum|buzz*|hiss|crackl*|interference stereo|radio|speaker*|amp|tv|engine|inverter|controller',
    ],
    when: [],
    causes: [
      {
        likely: 'A whine that follows the engine comes in by the earth or the supply.',
        check:
          'Earth: feed the radio straight from the battery. If the whine goes, give it its own earth there.',
      },
      {
        likely: 'A cheap charger or inverter radiates.',
        check:
          'Source: switch controller, DC-DC and USB plugs off one by one. Give the noisy one a filter or move it away.',
      },
    ],
    asks: ['Does it change with the engine’s speed?', 'words'],
  },
  {
    name: 'sags-under-load',
    spots: [
      'volt*|v|battery drop*|sag*|fall*|dip*|dives|plunge* load|when|under|as|inverter|running|starts|with|on',
    ],
    when: ['volts-under-load'],
    weighs: ['sag', 'drop', 'level'],
    causes: [
      {
        by: 'battery',
        likely: 'Volts fall under load, and that alone is no fault: how far tells the battery’s state.',
        check:
          'Battery: switch all off for half an hour. If it’s back above {half} it was the load; if not, it’s low or worn.',
      },
      {
        by: 'cable',
        likely: 'Most of it is lost in the cable.',
        check:
          'Cable: if the running load reads over {0.5 V} less than the battery, fit thicker cable or tighten the lugs.',
      },
    ],
    asks: ['What does it read with all off for half an hour?', 'volts'],
  },
  {
    name: 'nothing-works',
    spots: [
      'nothing_works|nothing_comes_on|no_power|all_dead|totally_dead|everything_dead|everything_is_dead|nothing_on_at_all -site',
      'everythings_dead|everything_died|everythings_off|it_all_died|powers_dead|power_is_dead|power_has_gone|whole_van_dead|lost_all_power|powers_gone',
    ],
    when: [],
    weighs: ['level'],
    causes: [
      {
        likely: 'All at once means one thing they share: main fuse, master switch, earth, or the battery.',
        check:
          'Battery: under {10.5 V} it’s flat, so charge it; at 0 V its BMS has cut out or a terminal is loose.',
      },
      {
        likely: 'The main fuse or switch.',
        check:
          'Main fuse: it has volts before it and none behind (it can look whole). Find the cause before you fit a new one.',
      },
      {
        likely: 'The common earth.',
        check:
          'Earth: you read volts to the battery’s minus and none to the chassis. Clean and tighten its lug.',
      },
    ],
    asks: ['What does the battery itself read?', 'volts'],
  },
  {
    name: 'charging-odd',
    spots: ['charg* wont|not|isnt|doesnt|dont|no|stop*|cant|refuse*|slow*|never'],
    when: ['any-charger'],
    weighs: ['charge', 'level'],
    causes: [
      {
        likely: 'Most likely a fuse, a loose lug, or a charger that doesn’t know it should start.',
        check:
          'Fuse or cable: the charger’s output reads {13.5 V} or more and the battery doesn’t. Check the fuse and lugs between.',
      },
      {
        likely: 'The charger gets nothing in.',
        check: 'Input: check that mains is on, the engine gives {13.2 V} as it runs, or sun is on the panel.',
      },
      {
        likely: 'The battery is full, or a BMS refuses it.',
        check: 'Battery: at {full} or more it is full; lithium takes none under 0 °C.',
      },
    ],
    asks: ['What charges it, and what do the battery’s volts read meanwhile?', 'volts'],
  },
  {
    name: 'general',
    spots: [],
    when: [],
    weighs: ['drop', 'level', 'day'],
    causes: [
      {
        by: 'cable',
        likely: 'Start where most faults are: a fuse, a loose or dirty joint, a low battery.',
        check:
          'Joint or cable: if the running thing reads over {0.5 V} less than the battery, clean the joint or thicken the cable.',
      },
      {
        by: 'battery',
        likely: 'The battery is low or worn.',
        check: 'Battery: after half an hour with all off it reads under {half}. Charge it, then test it.',
      },
    ],
    asks: ['What stops, when, and what do the volts read then?', 'words'],
  },
];
