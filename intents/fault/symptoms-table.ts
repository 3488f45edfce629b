/** What a message may show of a fault, from its facts alone; `signs.ts` tells which are there. */
export type Sign =
  | 'cooler'
  | 'lamp'
  | 'pump'
  | 'phone'
  | 'heater'
  | 'screen'
  | 'high-mains-load'
  | 'fuse'
  | 'inverter'
  | 'dcdc'
  | 'isolator'
  | 'mains-charger'
  | 'any-charger'
  | 'panel'
  | 'two-panels'
  | 'shade'
  | 'lithium'
  | 'battery'
  | 'old-battery'
  | 'starter'
  | 'volts-very-low'
  | 'volts-under-load'
  | 'volts'
  | 'current'
  | 'hot-day';

/** A fault as people meet it: what to check, likeliest first, and the reading that tells. */
export interface Symptom {
  readonly name: string;
  /** How people say it, for the reader's lexicon: small letters, no apostrophes. */
  readonly says: readonly string[];
  /** All of these point at it where the words don't. */
  readonly when: readonly Sign[];
  /** The likeliest cause, as the first line. */
  readonly likely: string;
  /** The reading that tells, with its number. */
  readonly tells: string;
  /** What comes next, in order. */
  readonly next: readonly string[];
  /** Which sum of what was told bears on it: a day's use against the battery, or the load against the inverter. */
  readonly weighs?: 'day' | 'load';
  /** Never answered by a larger fuse, and that is said first. */
  readonly isFuse?: true;
}

/**
 * Common practice throughout: volts by the resting and loaded readings of the trade, limits by usual low-voltage
 * cut-outs (fridges 10.4–11.8 V, inverters 10.5–11 V, isolators on at 13.3 V and off at 12.8 V).
 */
export const symptoms: readonly Symptom[] = [
  {
    name: 'fuse-blows',
    says: [
      'fuse keeps blowing',
      'fuse blew',
      'blows the fuse',
      'fuse pops',
      'fuse keeps popping',
      'fuse melted',
      'breaker trips',
      'breaker keeps tripping',
    ],
    when: ['fuse'],
    isFuse: true,
    likely:
      'Not a bigger fuse: it protects the cable, and something draws too much or touches metal. Find that first.',
    tells:
      'Take the load off: if a new fuse of the same size still blows, the cable chafes somewhere; if it holds, clamp-meter the load: above four fifths of the fuse for long is too much for it.',
    next: [
      'Blows at once: a short. Blows when a motor starts: a stiff or jammed motor, or low volts. Blows after a while: too much load, or a hot loose holder.',
      'A larger fuse only with thicker cable all the way, and checked by an auto electrician.',
    ],
  },
  {
    name: 'fridge-cuts-out',
    says: [
      'fridge cuts out',
      'fridge stops',
      'fridge turns off',
      'fridge shuts off',
      'freezer dies',
      'fridge error',
      'low v',
      'fridge warm in the morning',
    ],
    when: ['cooler'],
    weighs: 'day',
    likely:
      'Most likely its volts sag while it runs: thin or long cable, a loose 12 V socket, or a battery low by then.',
    tells:
      'Measure at the fridge’s plug while it runs, and at the battery in the same minute: over 0.5 V between them is cable or socket; under 12 V at a lead-acid battery (12.9 V lithium) is the battery.',
    next: [
      'Then its own cut-out: set it to low if it hangs on a second battery, never on the starter battery.',
      'Then air around its vents, and a load of warm food.',
    ],
  },
  {
    name: 'fridge-never-stops',
    says: ['fridge never stops', 'fridge runs all the time', 'fridge wont cycle', 'compressor never stops'],
    when: ['cooler', 'hot-day'],
    likely:
      'In that heat a fridge may run almost without a break and be sound: shade it and give its vents air first.',
    tells:
      'Feel the side after an hour in the shade: if it still doesn’t reach its set temperature at night, the seal or the gas is to blame.',
    next: [
      'Then the door seal: a slip of paper must stick.',
      'Then its setting: 4 °C takes far less than 1 °C.',
    ],
  },
  {
    name: 'flat-overnight',
    says: [
      'flat overnight',
      'flat by morning',
      'flat in the morning',
      'dead by morning',
      'battery goes flat',
      'flat by midnight',
      'drains overnight',
    ],
    when: ['battery', 'lamp'],
    weighs: 'day',
    likely: 'Either something draws more than you think, or the battery holds far less than its label.',
    tells:
      'Switch all off at dusk and note the volts two hours later and at dawn: steady means that the loads are to blame; falling by more than 0.1 V means a hidden draw (over 0.1 A) or a dying battery.',
    next: [
      'Was it full? A lead-acid battery that rests under 12.6 V after a day’s rest never was.',
      'Then a capacity test: run a known load from full and count the hours.',
    ],
  },
  {
    name: 'battery-worn',
    says: [
      'full at sundown',
      'says full then flat',
      'old battery',
      'battery wont hold',
      'not holding charge',
    ],
    when: ['old-battery'],
    weighs: 'day',
    likely:
      'At that age the battery has most likely worn out: it fills quickly, shows full, and has little in it.',
    tells: 'Run a known load from full: under 80 % of the label’s amp hours is worn, under half is finished.',
    next: [
      'Before you buy: clean and tighten the terminals, and make sure that the charger really reached full.',
    ],
  },
  {
    name: 'battery-very-low',
    says: ['charger refuses', 'charger wont start', 'charger does not start', 'stone dead battery'],
    when: ['volts-very-low'],
    likely: 'So low a battery has been run right down, and most chargers won’t begin on it.',
    tells:
      'A 12 V lead-acid battery that rests under 10.5 V likely has a dead cell; if it doesn’t hold 12.4 V a day after charging, it is finished.',
    next: [
      'A charger with a recovery setting may bring it back; stay by it, and stop if it gets warm.',
      'Lithium that low: don’t force it. Its maker or a dealer should look at it.',
    ],
  },
  {
    name: 'bms-cut',
    says: [
      'everything dark at once',
      'goes off at once',
      'cuts out suddenly',
      'lithium shuts off',
      'bms cut',
      'all off at once',
    ],
    when: ['lithium'],
    likely:
      'A lithium battery that goes off at once has been cut by its BMS: empty, too much current, or too cold or hot.',
    tells:
      'Under 12 V just before is empty; if it happens as something big starts it is the current; charging refused in the cold is under 0 °C.',
    next: [
      'Put a charger on to wake it, and compare the load with the limit on its label.',
      'Never bypass the BMS.',
    ],
  },
  {
    name: 'lights-dim',
    says: ['lights dim', 'lights flicker', 'goes dim when', 'tv goes off when the fridge starts'],
    when: ['lamp', 'pump'],
    likely:
      'The cable they share is too thin or has a poor joint: the motor’s start pulls the volts down for all.',
    tells:
      'Measure at the lights and at the battery as the motor starts: over 0.5 V between them is the cable, a fuse holder or a joint; both falling together is the battery.',
    next: ['Feel for a warm joint, then give the motor a cable of its own.'],
  },
  {
    name: 'starts-pull-down',
    says: ['turns off when the fridge starts', 'resets when', 'cuts out when the pump runs'],
    when: ['screen', 'cooler'],
    likely: 'A motor that starts on the same cable pulls the volts down, and the other thing drops out.',
    tells:
      'Measure where the two join as it starts: over 0.5 V less than at the battery is that cable or its joints.',
    next: ['Give each its own cable and fuse from the battery.'],
  },
  {
    name: 'pump-runs-on',
    says: ['pump keeps going', 'pump pulses', 'pump cycles', 'pump runs with taps shut'],
    when: ['pump'],
    likely:
      'A pump that pulses with all taps shut loses pressure: a drip, a fitting that sucks air, or its valve.',
    tells:
      'Close the valve behind it or clamp the hose: if it stays quiet, the leak is beyond; if it still pulses, the pump’s own valve or pressure switch is to blame.',
    next: ['Then its strainer, and an accumulator tank if there is none.'],
  },
  {
    name: 'heater-faults',
    says: [
      'heater faults out',
      'heater error',
      'glow plug',
      'heater wont start',
      'furnace quits',
      'heater starts then quits',
    ],
    when: ['heater'],
    likely:
      'As it starts, the glow plug or fan draws most, and the volts at the heater fall under its limit.',
    tells:
      'Measure at the heater’s plug while it glows: it wants more than about 11.5 V there, and no more than 0.5 V less than at the battery.',
    next: ['Then fuel, the exhaust and its air inlet. Keep a carbon monoxide alarm in there.'],
  },
  {
    name: 'phone-slow',
    says: ['barely charges', 'charges slowly', 'phone charges slow'],
    when: ['phone'],
    likely: 'Most likely the socket or its lead only gives 5 W: a worn lead, or a plain 1 A socket.',
    tells: 'Try another lead first: 5 V at 1 A is 5 W, a quick charger gives 18 W and more.',
    next: ['Then the volts behind the socket: under 12 V many drop out.'],
  },
  {
    name: 'inverter-trips',
    says: [
      'inverter trips',
      'inverter shuts down',
      'inverter beeps',
      'inverter cuts out',
      'inverter alarm',
      'low battery alarm',
    ],
    when: ['inverter'],
    weighs: 'load',
    likely:
      'Either the load is above its rating, or its volts fall too low: a small battery or a thin cable.',
    tells:
      'Measure at the inverter’s terminals as it beeps: under about 11 V is battery or cable (it cuts out near 10.5 V); above that it is the load.',
    next: ['Then tight, clean lugs: a warm one is a bad one.', 'Then fewer things at a time.'],
  },
  {
    name: 'mains-trips',
    says: ['trips the post', 'trips the site', 'trips the power pole', 'trips the hookup', 'trips the mains'],
    when: ['high-mains-load'],
    likely: 'The site’s breaker is smaller than what you run: at 230 V, 6 A is 1,380 W and 10 A is 2,300 W.',
    tells:
      'Add up the watts on at that moment and divide by the volts; if it trips with little on, it may be an earth fault.',
    next: ['Ask the site what the post gives. A trip with nothing on is a job for a licensed electrician.'],
  },
  {
    name: 'dcdc-wont-charge',
    says: [
      'dcdc wont charge',
      'dcdc never comes on',
      'b2b not charging',
      'doesnt charge while driving',
      'wont charge driving',
      'battery stuck at',
    ],
    when: ['dcdc'],
    likely:
      'Most likely it can’t tell that the engine runs: on a smart alternator it needs its ignition wire.',
    tells:
      'Engine running, measure its input: under about 13.2 V without an ignition wire it stays off; over 0.5 V less than at the starter battery is the cable or a blown fuse. Its output should rise above 13.5 V.',
    next: ['Then its fuses at both ends, its earth, and its setting for the battery’s type.'],
  },
  {
    name: 'isolator-wont-engage',
    says: ['isolator wont engage', 'isolator stays off', 'vsr not working', 'isolator clicks'],
    when: ['isolator'],
    likely:
      'An isolator joins at about 13.3 V: either its sensing or earth wire is off, or the alternator gives less.',
    tells:
      'Measure on its starter side with the engine running: over 13.3 V and still off means its earth or the isolator; under 13.3 V means a smart alternator, which wants a DC-DC charger.',
    next: [
      'Then the fuses at both ends. If it stays joined all night, it sticks: the house loads then flatten the starter battery.',
    ],
  },
  {
    name: 'mains-wont-charge',
    says: [
      'charger wont turn green',
      'wont go past',
      'never gets full',
      'charger stays red',
      'mains charger not charging',
    ],
    when: ['mains-charger'],
    likely:
      'Either loads take what it gives, or the battery no longer fills: a charger shows full only when the current tails off.',
    tells:
      'Switch all loads off and measure after two hours: 14.2–14.7 V and falling amps is right; stuck under 13.8 V is a charger too small or at fault; hot to the touch is a bad cell: unplug it.',
    next: ['Then its setting for the type of battery, and its own leads.'],
  },
  {
    name: 'panel-less',
    says: ['panels make less', 'less than before', 'makes less', 'drops to nothing', 'solar drops'],
    when: ['two-panels'],
    likely:
      'Unlike panels or a bit of shade: in series the weaker sets the amps, in parallel the lower the volts.',
    tells: 'Measure each alone in full sun: its open-circuit volts should be within a tenth of its label.',
    next: ['Then dirt, a loose plug, and whether the battery is full already: a full one takes nothing.'],
  },
  {
    name: 'panel-shaded',
    says: ['shade on the panel', 'shadow on the panel'],
    when: ['panel', 'shade'],
    likely: 'Shade: a shaded corner can cost most of a panel, as its cells stand in one chain.',
    tells: 'Move it or wait an hour: if the amps come back with the sun, it was the shade.',
    next: ['Panels in parallel lose less to a shadow than panels in series.'],
  },
  {
    name: 'panel-nothing',
    says: [
      'panel makes nothing',
      'solar makes nothing',
      '0w at noon',
      'no solar',
      'panel gives nothing',
      'solar not charging',
      'solar isnt charging',
    ],
    when: ['panel'],
    likely:
      'Is the battery full? A full one takes nothing. Else most likely a plug, a fuse, or the controller.',
    tells:
      'Unplug the panel in full sun and measure it alone: near the open-circuit volts of its label (about 20–23 V for a 12 V panel) the panel is good and the fault lies behind it; near 0 V it is the panel or its plug.',
    next: ['Then the fuse between controller and battery, reversed plugs, and a corner in the shade.'],
  },
  {
    name: 'engine-clicks',
    says: ['only clicks', 'just clicks', 'goes click', 'wont crank', 'wont start'],
    when: ['starter'],
    likely:
      'The starter battery is flat: jump it from a jump pack or another vehicle, then drive for an hour or more.',
    tells: 'Under 12 V at rest it is flat; under 9.6 V while it cranks it is worn.',
    next: [
      'Plus to plus, then minus to bare metal on the engine, away from the battery; nobody leans over it.',
      'Then a second battery for camp loads, so that it doesn’t happen again.',
    ],
  },
  {
    name: 'sags-under-load',
    says: ['volts drop when', 'drops to 11', 'volts sag'],
    when: ['volts-under-load'],
    likely:
      'Volts fall under load, and that alone is no fault: how far tells how full or how worn the battery is.',
    tells:
      'Switch the load off and wait half an hour: back above 12.4 V (lead-acid) it was the load or the cable; still under 12.1 V the battery is low.',
    next: ['Measure at the battery and at the load: over 0.5 V between them is the cable.'],
  },
  {
    name: 'monitor-odd',
    says: [
      'monitor reads wrong',
      'monitor odd',
      'monitor says',
      'meter reads wrong',
      'shunt wrong',
      'percent is wrong',
    ],
    when: ['current'],
    likely:
      'A monitor counts; it drifts when it never sees full, has the wrong battery size set, or something bypasses its shunt.',
    tells:
      'Charge until the amps stay under 2 % of the battery’s Ah at 14.2 V or more, then set it to 100 %; with all off it must show 0.0 A.',
    next: ['Every minus but the shunt’s own must go to the load side of the shunt.'],
  },
  {
    name: 'charging-odd',
    says: ['wont charge', 'not charging', 'isnt charging', 'doesnt charge'],
    when: ['any-charger'],
    likely: 'Most likely a fuse, a loose lug, or a charger that doesn’t know it should start.',
    tells:
      'Measure at the battery with the charger on: it must rise above 13.5 V within minutes. If not, measure the charger’s own output: good there and not at the battery is fuse or cable.',
    next: ['Then its input: mains on, engine running above 13.2 V, or sun on the panel.'],
  },
  {
    name: 'general',
    says: ['whats wrong', 'why wont it', 'stopped working', 'doesnt work', 'not working'],
    when: [],
    likely: 'Start where most faults are: a fuse, a loose or dirty joint, a low battery.',
    tells:
      'Measure at the battery and then at the thing while it is on: over 0.5 V between them is cable, fuse holder or joint; under 12 V at the battery is the battery.',
    next: ['Tell me what stops and when, what the volts read, and what hangs on it: I narrow it down.'],
  },
];
