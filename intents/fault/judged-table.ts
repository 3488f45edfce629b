import { decimals } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { amountsOf } from '../figures-told.ts';

/** On the road an alternator gives at least so much, V; under the other it fills nothing. Common practice. */
const alternator = { right: 13.8, little: 13.4 } as const;
/** Over this a battery is too hot to be charged, °C: makers' sheets of lithium. */
const hotC = 45;
/** From here on air is cold enough for a charger to raise its volts much, °C. */
const coldC = 10;

const isLithium = ({ batteries = [] }: Facts): boolean =>
  batteries.some(({ chemistry }) => chemistry === 'lfp');
const hasPercent = ({ batteries = [] }: Facts): boolean =>
  batteries.some(({ stateOfChargePercent }) => stateOfChargePercent !== undefined);
const isFull = ({ batteries = [] }: Facts): boolean =>
  batteries.some(({ stateOfChargePercent = 0 }) => stateOfChargePercent >= 98);
const isOnCharge = ({ volts, voltsTaken }: Facts): boolean =>
  volts !== undefined && voltsTaken === 'charging';
const holdsMoreThanLabel = ({ batteries = [], chargeUsedAh = 0 }: Facts): boolean =>
  batteries.some(({ capacityAh }) => capacityAh !== undefined && chargeUsedAh > capacityAh);

/** What is read or felt, and asked whether it is right: normal warmth, readings that differ, counters that jump. Common practice. */
export const judgedAsides: readonly Aside[] = [
  {
    name: 'one-battery-warm',
    spots: [
      'one|one_of warm*|hot batteries|other|two cold|cool|other',
      'one_battery|one_of_the_batteries|one_of_them|battery_of_the_two warmer|hotter',
    ],
    says: 'They don’t share the work: the warm one takes most of the charge. Stop it and measure each.',
    lines: [
      'Apart and rested, both should read within 0.1 V; the odd one is worn. Alike, clean their joints.',
      'Take plus from one and minus from the other. Too hot to hold, swollen or smelling: leave it off.',
    ],
    cautions: ['battery-gas'],
  },
  {
    name: 'battery-warm',
    unless: { hotFromC: 46 },
    spots: [
      'batter*|agm|lithium warm|hand_warm|lukewarm -smell* -cool_box -lead -plug -cable -lead_gets -wire -charger_gets -socket -inverter_gets -cold -wont -bms -fridge',
      'just_hand_warm|only_hand_warm|hand_warm_only',
    ],
    verdict: 'yes',
    says: 'Hand-warm on charge or in the sun is normal; too hot to hold is not: then stop the charge.',
    lines: [
      'On charge up to about 10 °C over the air is common. In the sun give it shade: heat ages it.',
      'Swollen, hissing or smelling: off, and keep away.',
    ],
  },
  {
    name: 'how-hot-may-it-be',
    spots: [
      'batter*|lithium|bms|app temp*|too_hot|left_in_the_sun -float -fridge -start* -engine -controller -inverter -cold -minus',
      'battery|lithium|agm box|car too_hot|in_the_sun',
      'batter*|lithium|agm|gel warm|hot normal|ok|okay|right|bad|worry|safe -fridge -start* -engine -controller -inverter -cold -lead -plug -cable -wire -charger_gets -socket -cool_box',
    ],
    says: ({ ambientC }) =>
      ambientC !== undefined && ambientC > hotC
        ? `${decimals(ambientC, 0)} °C is too hot to charge: stop, shade and air until it is under ${hotC} °C.`
        : `Up to ${hotC} °C it may be charged; over that let it rest in the shade. Over 60 °C keep away.`,
    lines: [
      'Once does little harm, but each 10 °C more about halves a lead-acid battery’s life.',
      'Hotter by itself, with nothing on and no sun, is a fault: leave it off.',
    ],
  },
  {
    name: 'charger-warm',
    unless: { hotFromC: 75 },
    spots: [
      'charger|inverter|controller|power_station warm|fan -wire -cable -hours -still -plug -too_hot -hot_to -cuts -cut_out -shuts -trips -smell* -heater -dims -flicker*',
    ],
    verdict: 'yes',
    says: 'Warm with its fan on is normal under load; too hot to hold, or a smell, is not.',
    lines: [
      'Give it a hand’s width of air all round, and nothing stuffed over it. Fans that come and go are by heat.',
    ],
  },
  {
    name: 'charger-hums',
    spots: [
      'charger|converter|inverter|controller hum|hums|humming|buzz*|whir* normal|ok|bad|is_that|worry -radio -no_output -but -light*',
    ],
    verdict: 'yes',
    says: 'A soft hum under load is normal; a loud buzz, a crackle or a smell is not: switch it off.',
    lines: ['Screwed to thin ply it sounds louder: rubber under its feet helps.'],
  },
  {
    name: 'stuck-at-full',
    spots: [
      'monitor|shunt|meter|percent* all_the_time|even_after|stuck|for_a_week|for_days|always -never -red -light* -bulk',
    ],
    when: ({ volts }) => volts === undefined,
    says: 'It isn’t counting: loads go round its shunt, or its Ah and its mark for full are set wrong.',
    lines: [
      'Switch a light on: amps that stay at 0 mean the wiring, so put every other minus on the load side.',
      'Amps right? Set the true Ah, and full at 14.2 V with the amps under 2 %.',
    ],
  },
  {
    name: 'no-air',
    spots: [
      'over_temp*|overtemp*|overheat*|over_heat* controller|inverter|charger|mppt|error|regulator -fridge -smell*',
      'inverter|controller|charger|dcdc cupboard|stuffed|sleeping_bags|blanket|blankets|clothes|no_air|covered cuts|off|stops|error|hot',
    ],
    says: 'It’s too hot and saves itself: give it air and shade, and it starts again once it’s cool.',
    lines: [
      'A hand’s width free all round, on metal or wood, never under bedding. Still too hot: less load, or a larger one.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'barely-warm',
    spots: [
      'slightly_warm|bit_warm|little_warm|lukewarm|barely_warm|not_hot|just_warm cable|lead|plug|socket|wire*|it|mug -battery',
    ],
    says: 'Barely warm is common after hours; warm at one spot, or hand-warm and more, is a bad contact.',
    lines: [
      'Feel along it: warm all over means thin for the amps, warm at the plug means loose: clean or renew it.',
      'Hot, soft or brown: switch off.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'warm-joint',
    spots: [
      'plug|plugs|socket|sockets|anderson|connector|lug|lugs|terminal|terminals|joint|crimp|fuse_holder|holder warm|hot|warms|heats|gets_hot|heating|toasty -barely -slightly -bit_warm -little_warm -melt* -brown -smell* -burn* -scorch* -mains -post -powerpoint -generator -alternator -heater -battery_gets -batteries -works -wiggl* -inside -laptop -cable_gets -too_small -need',
    ],
    verdict: 'no',
    says: 'No: heat means a loose, dirty or badly crimped joint. Switch off, and use it again once remade.',
    lines: [
      'Cool, pull it apart: brown, green or loose contacts go. Crimp on a new one rated for the amps.',
      'Warm all along the cable instead? Then that is too thin: thicker cable or a smaller load.',
      'A fridge’s 3 to 5 A should warm no sound joint at all.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'heater-draws-on',
    spots: [
      'heater still|after_an_hour|hours_later|all_the_time|keeps|constantly|all_night|whole_time draws|draw|drawing|pulls|pulling|takes|taking|uses|using|amps|a -wont -error -code',
    ],
    unless: { ampsUnder: 5 },
    when: ({ loads = [] }, { recognised: { mentions } }) =>
      amountsOf(mentions, 'current').length > 0 && loads.some(({ name }) => name.includes('heater')),
    verdict: 'no',
    says: 'No: after the first minutes a fuel heater takes 1 to 3 A. Its glow plug seems to stay on.',
    lines: ['It may not light well: look for a code, then fuel, air and exhaust, and have it serviced.'],
    cautions: ['fuel-heater'],
  },
  {
    name: 'heater-draw',
    unless: { ampsFrom: 16, hoursFrom: 0.5 },
    spots: [
      'heater start* normal|ok|right|too_much|amps|pulls|draws -wont -error -code -fault* -stops -cuts -volts',
    ],
    when: ({ loads = [] }) =>
      loads.some(({ name, currentA }) => name.includes('heater') && currentA !== undefined),
    verdict: 'yes',
    says: 'Yes: 8 to 12 A for the first minutes is its glow plug. Then it takes 1 to 3 A.',
    lines: ['Its plug must keep over 11.5 V while it glows: else thicker cable.'],
  },
  {
    name: 'fridge-sounds',
    spots: [
      'fridge|freezer|compressor hiss*|gurgl*|tick*|bubbl*|humm* stops|stop|normal|off|starts -error -warm -wont -smell*',
    ],
    verdict: 'yes',
    says: 'Normal: as it stops, gas and oil even out in its pipes, with a hiss or a gurgle.',
    lines: ['Hissing without end and getting warm: a leak, a job for a refrigeration mechanic.'],
  },
  {
    name: 'alternator-volts',
    spots: [
      'alternator|engine|idle|driving idle|gives|puts|only|shows|driving|normal|right -dcdc -isolator -wont_start',
    ],
    when: facts => isOnCharge(facts) && (facts.volts ?? 0) < 14.9 && !facts.chargers?.length,
    says: ({ volts = 0 }) =>
      volts >= alternator.right
        ? `Yes, ${decimals(volts, 1)} V is right: on the road 13.8 to 14.5 V, at idle somewhat less.`
        : volts < alternator.little
          ? `No, ${decimals(volts, 1)} V is too little to fill it: a thin cable, an isolator or a smart alternator.`
          : `It charges at ${decimals(volts, 1)} V, but slowly, and not full: 14 V and more is wanted.`,
    lines: [
      'Measure both batteries with the engine on: over 0.3 V apart is cable or isolator; both low is the alternator.',
      'A DC-DC charger puts either right.',
    ],
  },
  {
    name: 'high-in-the-cold',
    spots: ['too_high|high|much|wrong|normal|ok|worry'],
    when: facts =>
      isOnCharge(facts) &&
      !isLithium(facts) &&
      (facts.ambientC ?? coldC) < coldC &&
      (facts.volts ?? 0) > 14.4 &&
      (facts.volts ?? 0) <= 15.2,
    verdict: 'yes',
    says: ({ volts = 0 }) =>
      `No: in the cold ${decimals(volts, 1)} V is right for lead-acid; a good controller raises it.`,
    lines: [
      'About 0.02 to 0.03 V more for each °C under 25. Over 15 V look at its setting and where its sensor is.',
    ],
  },
  {
    name: 'fell-to-float',
    spots: [
      'then|and falls_to|drops_to|fell_to|goes_to|dropped_to|goes_down_to -night -dark -load -fridge -pump -kettle -inverter -back -percent',
    ],
    when: (_, { recognised }) => {
      const values = recognised.mentions.map(({ value }) => value);
      return values.some(v => v >= 14 && v <= 14.8) && values.some(v => v >= 13.2 && v <= 13.9);
    },
    verdict: 'yes',
    says: 'That is right: it is full, so the charger went over from absorption to float.',
    lines: ['Float holds it full at 13.4 to 13.8 V. It goes back up by itself once you have used some.'],
  },
  {
    name: 'settles-after-charge',
    spots: [
      'sunset|sundown|charger_off|engine_off|dark|unplugged|took_it_off after|minutes|says|down|drops|fell',
    ],
    when: ({ volts }, { recognised }) =>
      volts !== undefined &&
      volts >= 12.6 &&
      recognised.mentions.some(({ value }) => value >= 13.3 && value <= 14.8),
    verdict: 'yes',
    says: 'No fault: charging volts fall once charging ends. It has settled to what it holds.',
    lines: ['Lead-acid that rests at 12.7 V or more is full; lithium settles at about 13.3 to 13.4 V.'],
  },
  {
    name: 'full-so-idle',
    spots: [
      'solar|panel*|sun|controller|mppt dropped|drops|fell|zero|nothing|only|broken|stopped -night -fridge',
    ],
    when: facts => isFull(facts),
    verdict: 'yes',
    says: 'No, nothing is broken: the battery is full, so the panel is held back.',
    lines: ['Switch a load on: the amps rise at once. If they don’t, look at the panel’s plug.'],
  },
  {
    name: 'percent-or-volts',
    spots: [
      'monitor|soc|percent*|shunt|app|display|screen|says|shows believe|trust|agree|right|wrong|yet|but|though|or -fridge -inverter -light* -night',
    ],
    when: facts => facts.volts !== undefined && hasPercent(facts),
    says: facts =>
      isLithium(facts) || (facts.volts ?? 0) >= 13
        ? 'On lithium believe the counter, if it was set at full: its volts hardly move between.'
        : 'Believe the volts, if all was off for half an hour: the counter has drifted.',
    lines: ['Charge it right up, then set the monitor to 100 % and its true Ah: from there both agree.'],
  },
  {
    name: 'meters-differ',
    spots: [
      'two_meters|two_multimeters|two_monitors|both_meters',
      'one_says other says|reads|battery|same -percent',
    ],
    says: 'Trust the one right at the posts: the other shows its wire’s loss, or is off by a little.',
    lines: [
      'With all off both should agree within 0.1 V. A known full charger or a third meter tells which is off.',
    ],
  },
  {
    name: 'percent-jumps',
    spots: [
      'percent*|percentage|soc jump*|drops|dropped|fell|leap*|skips',
      'bedtime|hour_later|minutes_later percent|it_said|said -fridge -off',
      'monitor jump*|jumps fridge|pump|starts|percent',
    ],
    when: ({ volts }) => volts === undefined,
    says: 'A percentage that jumps is guessed from volts, or has drifted: the battery may well be fine.',
    lines: [
      'Read the volts with all off for half an hour: 12.2 V is half of lead-acid, 13.1 V of lithium.',
      'A shunt that counts, set to 100 % at full, doesn’t jump.',
    ],
  },
  {
    name: 'reading-dances',
    spots: [
      'number*|reading|display|meter|volts|amps jump*|dance*|flicker*|bounce* pump|motor|compressor -percent* -light* -led*',
    ],
    verdict: 'yes',
    says: 'Normal: a pump draws in pulses. Read it again with the pump off.',
    lines: ['Jumps of over 0.5 V at the battery’s posts mean a poor joint or a weak battery.'],
  },
  {
    name: 'hours-to-go',
    spots: [
      'time_to_go|time_remaining|hours_left|time_left|to_go -how_long -battery_has',
      'app|monitor hours left|remaining|still_going wrong|broke|broken',
    ],
    hasAnyFigures: true,
    says: 'Nothing is wrong: it goes by the draw of that moment, and that changes all day.',
    lines: ['999 or infinite means that nothing goes out, or it is charging. Judge it over a whole night.'],
  },
  {
    name: 'more-than-its-label',
    spots: ['counted|used|took|out_of|shunt|free|more_than|over|says'],
    when: holdsMoreThanLabel,
    says: 'No magic: new lithium often holds 5 to 10 % over its label, and a counter drifts a little.',
    lines: ['Charge it right up, set the shunt to 100 % and measure once more.'],
  },
  {
    name: 'plus-yet-falling',
    spots: ['plus|charging percent*|percentage|soc down|falls|falling|drops|dropping|less -night -dcdc'],
    says: 'Then its plus may mean out: switch a light on. If the plus grows, the shunt sits turned round.',
    lines: ['Turn it in its setting, or swap its two big cables. Then charge to full and set 100 %.'],
  },
  {
    name: 'never-quite-full',
    unless: { percentUnder: 85 },
    spots: [
      'never|doesnt|not|wont gets_to|gets_back_to|get_back_to|get_to|reach*|quite|past shunt|monitor|app|screen -charger -volts',
    ],
    when: ({ volts }) => volts === undefined,
    verdict: 'yes',
    says: 'No worry: it hasn’t met its mark for full, or counts a little off. Set it to 100 % once full.',
    lines: [
      'Full is 14.2 V or more with the amps down to about 2 % of its Ah. Set that, and its charge efficiency, to suit.',
    ],
  },
  {
    name: 'counts-nothing',
    spots: [
      'monitor|shunt|meter zero|nothing|a even|with|though kettle|fridge|heater|inverter|load|light* -everything_off -nothing_on -blank -panel* -solar',
    ],
    when: ({ netCurrentA }) => netCurrentA === 0,
    says: 'Its minus goes round the shunt: only the shunt’s own cable may sit on the battery’s minus.',
    lines: [
      'Move every other minus to the load side. Still 0? The thin data lead, or the small fuse in its plus.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'monitor-blank',
    spots: [
      'monitor*|display|screen|shunt blank|gone_blank|dead|dark|nothing_else|dashes -inverter -fridge -panel*',
    ],
    says: 'Its own feed is gone: first the small fuse in its thin plus wire, then the plug of its data lead.',
    lines: [
      'Read the battery with a meter: under 10.5 V it’s flat and the monitor is fine; 0 V is a tripped BMS.',
    ],
    cautions: ['fault-finding'],
  },
];
