import type { Symptom } from './symptom.ts';

/**
 * Faults whose words are special, so that they stand before the general ones. Common practice, in the manner of
 * `symptoms-table.ts`.
 */
export const specialSymptoms: readonly Symptom[] = [
  {
    name: 'says-low-though-full',
    spots: [
      'fridge|inverter|heater|it low|low_battery|low_volt*|low_voltage|lo but|though|tho|although|yet|when battery|full -smart -dcdc -lithium_wont -old -night -overnight',
      'runs|works|fine shop|home|house|hookup|mains|wall_plug|in_the_car camp|battery|not|dies|but|wont fridge|heater|it|pump -code -lights',
    ],
    when: [],
    unless: { percentUnder: 50 },
    weighs: ['drop'],
    causes: [
      {
        by: 'cable',
        likely: 'It reads its own plug, not the battery: thin cable or a loose plug loses volts on the way.',
        check:
          'Cable or plug: as it starts, the plug reads over {0.5 V} less than the battery. Thicker cable, a screw-in plug.',
      },
      {
        by: 'battery',
        likely: 'The battery gives way under the load: low, or worn.',
        check: 'Battery: it falls under {11.8 V} itself as the thing starts. Charge it, then test it.',
      },
    ],
    asks: ['What does it read at the plug while it starts?', 'volts'],
  },
  {
    name: 'loose-contact',
    spots: [
      'wiggl*|jiggl*|wriggl*|waggle|waggl* works|comes_on|plug|lead|cable|socket|goes -melt* -brown -fizz*',
    ],
    when: [],
    causes: [
      {
        likely: 'A loose contact, right there: it sparks and gets hot, so mend it before you use it.',
        check:
          'Plug: pull it, look for brown or loose springs. Renew it; for a fridge take a screw-in plug or a 50 A two-pole one.',
      },
      {
        likely: 'A broken strand or a dry crimp just behind the plug.',
        check: 'Cable: bend it along its length. Where it cuts out, cut it back and crimp a new end.',
      },
    ],
    asks: ['What plug is it, and what runs on it?', 'words'],
  },
  {
    name: 'only-one-of-them',
    spots: [
      'one light|lights|lamp|led|leds|them out_of|other|others|rest|same dim*|flicker*|out|dead|blink* -all -agm -batteries',
      'one_light|one_lamp|one_led dim*|flicker*|out|dead|blink* -when -whenever',
    ],
    when: [],
    causes: [
      {
        likely: 'Only one: its own joint, switch or lamp. Swap it with a good one.',
        check:
          'Lamp: if the fault moves with it, renew it. If it stays, clean and crimp that place’s joints, earth first.',
      },
      {
        by: 'cable',
        likely: 'It hangs at the end of a thin run.',
        check: 'Run: it reads over {0.5 V} less than at the first lamp. Feed the far end with thicker cable.',
      },
    ],
    asks: ['Does the fault move with the lamp?', 'words'],
  },
  {
    name: 'flicker-on-charge',
    spots: [
      'flicker*|pulse* solar|solars|dcdc|dc_dc|charger|charging|sun light*|led|leds|lamp*|on -error -fault',
    ],
    when: [],
    causes: [
      {
        likely: 'Only while it charges: cheap LEDs dislike its pulses, or a joint at the battery is poor.',
        check:
          'Joint: its output and the battery’s posts must read within {0.2 V}. If not, clean and tighten the lugs between.',
      },
      {
        likely: 'The LEDs want steadier volts.',
        check:
          'LEDs: the joints are good and they still flicker. Put a 12 V regulator before them, or better lamps.',
      },
    ],
    asks: ['What do the battery’s posts read while they flicker?', 'volts'],
  },
  {
    name: 'radio-hash',
    spots: [
      'noise|static|interference|hash mppt|controller|solar|fridge|am|fm|hf|shortwave|ham|dcdc|inverter|leds|radio -fan_noise -pump -engine -whine -alternator -loud -how_much_noise',
    ],
    when: [],
    causes: [
      {
        likely: 'Its switching gets out by the cables: clip ferrites on each lead, close to the box.',
        check:
          'Source: switch things off one by one. The one that ends it gets ferrites, in and out, some turns each.',
      },
      {
        likely: 'Long leads act as an aerial.',
        check:
          'Leads: run plus and minus close together or twisted, and keep them off the aerial and its cable.',
      },
    ],
    asks: ['Which thing ends it when you switch it off?', 'words'],
  },
  {
    name: 'pump-dry',
    spots: ['pump runs|running|hums|spins|going no_water|nothing_comes|no_flow|nothing_out|dry'],
    when: [],
    causes: [
      {
        likely: 'It sucks air: an empty tank, a loose hose before the pump, or a blocked strainer.',
        check:
          'Suction: fill the tank, tighten the hose clips before the pump, clean the strainer, open a tap.',
      },
      {
        likely: 'Its membrane or valve is worn.',
        check: 'Pump: with its inlet in a bucket it still lifts nothing. New head or new pump.',
      },
    ],
    asks: ['Does it lift water out of a bucket?', 'words'],
  },
  {
    name: 'fridge-dead',
    spots: [
      'fridge*|freezer*|coolbox|cool_box no_light*|no_lights|nothing_at_all|totally_dead|completely_dead|no_display|no_sign_of_life',
      'fridge* tripped_over|pulled_the|yanked|kicked_the -fuse',
    ],
    when: [],
    causes: [
      {
        likely: 'No light at all: nothing reaches it. The fuse in its plug, the socket, or a pulled wire.',
        check:
          'Plug: unscrew its tip, the glass fuse sits there. Then measure the socket: 0 V is its own fuse or a wire.',
      },
      {
        likely: 'The lead is torn at one end.',
        check: 'Lead: try its mains lead or another one. Runs on that? Renew the lead.',
      },
    ],
    asks: ['What does the socket read?', 'volts'],
  },
  {
    name: 'overload',
    spots: [
      'overload*|over_load power_station|powerstation|inverter|pan|kettle|beep*|shows|says -fuse -site -post',
    ],
    when: [],
    weighs: ['load', 'limit'],
    causes: [
      {
        by: 'load',
        likely: 'It says so: what you plug in takes more than it gives. See the watts on both labels.',
        check:
          'Overload: add the watts on the labels; motors ask three times theirs as they start. Stay under its continuous watts.',
      },
      {
        by: 'battery',
        likely: 'Or its battery is too low for that load.',
        check: 'Low: it happens only when nearly empty. Charge it, then try again.',
      },
    ],
    asks: ['How many watts has the thing, and the inverter?', 'words'],
  },
  {
    name: 'bms-overload',
    spots: [
      'bms|lithium cut*|trip*|off|shut*|kick* kettle|inverter|microwave|coffee*|toaster|hair*|induction|winch|compressor -charg* -cold -freez* -noon -solar -nothing_plugged -overnight -morning -fridge',
    ],
    when: [],
    weighs: ['limit', 'load', 'level'],
    causes: [
      {
        by: 'load',
        likely: 'Its BMS cut it off because too many amps were asked of it.',
        check:
          'Too many amps: watts divided by 10 is about what it asks. Stay under the amps on the battery’s label.',
      },
      {
        by: 'level',
        unless: { voltsFrom: 12.8 },
        likely: 'Its BMS cut it off, most likely because it was empty.',
        check:
          'Empty: it read under {12 V} just before. Wake it with a charger, then charge more or use less.',
      },
    ],
    asks: ['How many amps does its label allow, and how many watts was it?', 'words'],
    caution: 'bypass-bms',
  },
  {
    name: 'bms-on-charge',
    spots: [
      'bms|lithium off|cut*|trip*|disconnect* noon|midday|full_sun|on_charge|when_charging|while_charging -cold -freez* -frost -minus -wont',
    ],
    when: [],
    weighs: ['level'],
    causes: [
      {
        likely: 'One cell gets too high before the rest is full, so its BMS stops the charge.',
        check:
          'Balance: charge it at {14.2 V} and few amps for some hours, a few days running; then it lasts longer.',
      },
      {
        likely: 'The charger goes too high.',
        check: 'Charger: over {14.6 V} at the battery, or an equalise stage. Set it to lithium, {14.2 V}.',
      },
    ],
    asks: ['What volts does it read just before?', 'volts'],
    caution: 'bypass-bms',
  },
  {
    name: 'thin-tow-feed',
    spots: [
      'towing|trailer_plug|pin|tow_plug|car_plug never|only|wont|not|barely|gets|thin full|charg*|volt*|v|thin -water -wet -hot -melt* -overnight',
    ],
    when: [],
    weighs: ['drive'],
    causes: [
      {
        by: 'cable',
        likely: 'The car’s thin wiring loses it: a DC-DC charger near the battery, on thick cable.',
        check:
          'Feed: engine on, it reads {0.5 V} or more under the starter battery. Lay 10 mm² or thicker, fused at both ends.',
      },
      {
        by: 'isolator',
        likely: 'A smart alternator gives too little.',
        check:
          'Smart: the starter battery itself sinks under {13.2 V} on the road. Only a DC-DC charger cures that.',
      },
    ],
    asks: ['What do both batteries read with the engine running?', 'volts'],
  },
  {
    name: 'inverter-idle',
    spots: [
      'inverter nothing_plugged|nothing_plugged_in|nothing_on_it|no_load|idle|standby amps|a|draw*|out|takes -trip* -beep* -how_much -shore -outlet -fuse -scream* -humming',
    ],
    when: [],
    causes: [
      {
        likely: 'An idle inverter takes 0.5 to 2 A: much more, and something on it runs, or it is faulty.',
        check:
          'Sockets: pull all plugs, fixed sockets and chargers too. Still over 2 A: it is faulty, leave it off.',
      },
      {
        likely: 'A charger runs off its own inverter.',
        check:
          'Circle: the mains charger hangs on the inverter and feeds the battery that feeds it. Unplug it.',
      },
    ],
    asks: ['What hangs on its sockets, fixed ones too?', 'words'],
    caution: 'big-current',
  },
  {
    name: 'panel-at-battery-volts',
    spots: [
      'controller|regulator|mppt battery panel shows|says|reads -amps -nothing -charg* -night -blink* -red -broken -noon -sun -watts -absorb*',
    ],
    when: [],
    unless: { hasPanelVolts: true },
    causes: [
      {
        likely: 'Panel volts as low as the battery’s: no sun reaches it, or a plug on the way is out.',
        check: 'Panel: unplug it in the sun. 18 V or more there, and the fault is in its lead or plug.',
      },
      {
        likely: 'A PWM controller that charges shows just that, and then all is well.',
        check: 'PWM: the battery’s volts rise while it is in the sun. Then it works as it should.',
      },
    ],
    asks: ['What does the unplugged panel read in the sun?', 'volts'],
  },
];
