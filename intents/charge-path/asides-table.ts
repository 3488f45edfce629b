import type { Aside } from '../asides.ts';

const onSite = 'On site, solar or a mains charger does it; on the road, a DC-DC charger on fused cable.';

/** What people ask beside isolator or DC-DC charger, special rows before general ones. */
export const chargePathAsides: readonly Aside[] = [
  {
    name: 'relay-or-charger',
    hasAnyFigures: true,
    spots: ['relay|isolator|vsr same|difference|different|identical dcdc|dc|b2b'],
    verdict: 'no',
    says: 'No: a relay only joins the two batteries; a DC-DC charger lifts the volts and caps the amps.',
    lines: ['A relay does for an old fixed-voltage alternator and two lead batteries of one type.'],
    next: ['isolator or dcdc?'],
  },
  {
    name: 'powered-sites-only',
    spots: ['powered_site*|powered_camp*|on_hookup|hook_up|hookup|on_mains only|ever|always|just'],
    verdict: 'no',
    says: 'No: on powered sites a mains charger does it. A DC-DC only charges while you drive.',
    lines: ['It is worth it from the first nights without power on.'],
  },
  {
    name: 'solar-input',
    hasAnyFigures: true,
    spots: [
      'solar_input|solar_in|built_in_solar|solar_built_in|mppt_input need|still|other|another|controller|regulator',
    ],
    verdict: 'no',
    says: 'No: a DC-DC with a solar input is the controller as well; the panel goes straight to it.',
    lines: ['Stay under its solar volts, and take the old controller out: two in a row don’t work.'],
  },
  {
    name: 'sun-for-the-starter',
    hasAnyFigures: true,
    spots: [
      'solar|panel starter|start_battery|starting_battery|cranking charge|charges|keep|top',
      'solar|panel both car|van|starter|start house|camp|leisure|second|aux',
    ],
    verdict: 'yes',
    says: 'Yes, by a controller with a second output, or a small trickle link from the house battery.',
    lines: ['Some DC-DC chargers do it too. Never two leads straight off the panel.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'lithium-settings',
    hasAnyFigures: true,
    spots: ['set|setting|settings|program|profile controller|regulator|mppt lithium|lifepo*|lfp -know*'],
    says: 'Its lithium (LiFePO4) profile: 14.2 to 14.6 V to fill, float 13.4 to 13.6 V or off.',
    lines: ['No equalising and no temperature compensation. The battery’s own sheet comes first.'],
    cautions: ['lithium-cold'],
  },
  {
    name: 'new-charger-for-lithium',
    hasAnyFigures: true,
    spots: [
      'need|new charger|chargers lithium|lifepo*|lfp go_over|change|changing|switch|switching|swap|upgrade|going_to -dcdc -dc',
    ],
    says: 'Only where yours has no lithium setting: look for LiFePO4, or 14.4 V and no equalising.',
    lines: ['That goes for mains, solar and car alike. From the alternator lithium wants a DC-DC charger.'],
    cautions: ['lithium-cold'],
    next: ['can I use an agm charger on lithium?'],
  },
  {
    name: 'bigger-isolator',
    hasAnyFigures: true,
    spots: ['bigger|larger|another isolator|relay|vsr'],
    says: 'Only if more amps can flow: its rating must be above the alternator’s share, 100 A or more.',
    lines: ['Cable and fuses set the limit as well: a bigger isolator on the old ones gains nothing.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'socket-always-on',
    spots: ['stays_on|stay_on|always_on|permanently_on|live_all make|how|get|wire|want|need'],
    says: 'Run a new fused lead from the battery to a socket of its own; the dash one stays switched.',
    lines: ['Left on it can flatten the starter battery: a cut-out at about 12.2 V guards that.'],
    cautions: ['fuse-at-battery'],
    next: ['what cable for 10A over 5 m?'],
  },
  {
    name: 'all-of-the-alternator',
    hasAnyFigures: true,
    spots: ['give_all|gives_all|give_it_all|all_that|all_of_it|all_goes|does_that_mean -solar -panel'],
    verdict: 'no',
    says: 'No: a DC-DC passes on its own amps, 20 to 50 A; a bare relay only what the battery pulls.',
    lines: ['Half an alternator’s rating for long is fair, less at idle in the heat.'],
  },
  {
    name: 'jumper-leads-driving',
    hasAnyFigures: true,
    spots: ['jumper*|jump_lead*|booster_cable* driv*|road|tow|towing|moving|motorway|highway'],
    verdict: 'no',
    says: 'No, not on the road: jumper leads have no fuse, and a clamp that slips off shorts.',
    lines: ['A DC-DC charger on cable fused at both batteries does the same, safely.'],
    cautions: ['fuse-at-battery'],
    next: ['what fuse for a 25A dcdc?'],
  },
  {
    name: 'jumper-leads',
    hasAnyFigures: true,
    spots: ['jumper*|jump_lead*|booster_cable* charg*|put|batter*'],
    says: 'Only in a pinch, parked and watched: jumper leads have no fuse and put in little.',
    lines: [
      'Lead-acid only, same volts, engine running: half an hour gives perhaps 10 Ah. Never onto lithium.',
      onSite,
    ],
    cautions: ['battery-gas'],
  },
  {
    name: 'wind',
    hasAnyFigures: true,
    spots: ['wind|turbine|windmill'],
    verdict: 'yes',
    says: 'Yes, on a controller of its own made for wind: it must brake or dump what isn’t taken.',
    lines: [
      'Solar controller and wind controller both go to the battery, each with its own fuse there.',
      'Never run a turbine through the solar controller: with no load it speeds up and its volts climb.',
    ],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'float-of-lithium',
    spots: ['float'],
    when: ({ batteries }) => batteries?.some(({ chemistry }) => chemistry === 'lfp') === true,
    says: 'Lithium needs no float: 13.4 to 13.6 V does no harm, higher for weeks wears it.',
    lines: ['Can’t set it? Take the charger off when the battery is full.'],
  },
  {
    name: 'lead-charger-on-lithium',
    hasAnyFigures: true,
    spots: [
      'charger lithium|lifepo*|lfp lead|old|normal|plain|ordinary|standard|agm|car|caravan|desulph*|elderly -dcdc -dc',
    ],
    says: 'Only if it stays at 14.6 V or less and has no equalise or desulphate mode, or it harms it.',
    lines: [
      'Its leaflet tells both; a lithium setting is best. Without one it mostly gets to about 95 %: take it off then.',
      'Some lead chargers don’t wake a lithium battery whose BMS has cut out.',
    ],
    cautions: ['lithium-cold'],
  },
  {
    name: 'truck-of-24-volts',
    hasAnyFigures: true,
    spots: ['volt*|v|how truck*|lorry|coach|bus|vehicle|tractor'],
    when: (_, { recognised: { mentions } }) =>
      mentions.some(one => one.kind === 'amount' && one.dimension === 'voltage' && one.value === 24),
    says: 'With a 24-to-12 V DC-DC charger: 24 V in from the truck, a 12 V battery charged right.',
    lines: [
      'An isolator can’t: 24 V would wreck a 12 V battery.',
      'Never tap 12 V off one of the truck’s two batteries: that unbalances both.',
    ],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'trailer-plug',
    hasAnyFigures: true,
    spots: [
      'pin|pins|trailer_plug|trailer_socket|grey_plug|gray_plug|towing_plug plug|socket|amps|current|charg*|useless|fill*|through|give*|enough -drill',
    ],
    says: 'Little: 5 to 10 A at best through its thin wire, so it tops up slowly and rarely fills one.',
    lines: [
      'Its volts sag on the way: many see under 13 V at the van with the engine on, and then nothing goes in.',
      'To charge well, run 16 mm² on a heavy two-pole plug of its own, fused at both ends, to a DC-DC charger in the van.',
    ],
    cautions: ['fuse-at-battery'],
    next: ['what cable for a 25A dcdc, 6 m?'],
  },
  {
    name: 'loads-while-driving',
    spots: [
      'fridge|freezer|cool_box|coolbox|cooker|kettle|run|running|leave|tv driv*|road|motorway|highway -cable -charg* -fill* -isolator -dcdc -dc',
    ],
    verdict: 'yes',
    says: 'Yes, with the engine running: the alternator carries it and the battery only buffers.',
    lines: [
      'On a dash socket stay under about 8 A (100 W), the plug tight and cool; more goes on a fused cable of its own.',
      'Stop for hours and it’s the battery’s: off the starter battery, switch it off.',
    ],
  },
  {
    name: 'cold-lead',
    spots: ['agm|gel|lead_acid|flooded|wet minus|cold|freez*|frost|sees|snow -lithium'],
    says: 'Lead-acid takes charge in the cold, only slower; just never one that is frozen solid.',
    lines: ['A flat one freezes from about −10 °C, a full one not above −50 °C: keep it charged.'],
  },
  {
    name: 'both-at-once',
    spots: [
      'solar|panel|mains|hookup|hook_up disconnect*|unplug*|same_time|at_once|both|together -series -parallel -starter',
    ],
    verdict: 'yes',
    says: 'No need to unplug: solar, mains and DC-DC may all charge at once, each gives what it can.',
    lines: [
      'The one with the higher volts does more of the work near the end. Each goes through its own controller.',
    ],
  },
  {
    name: 'cold-cut-off',
    spots: ['solar|panel|controller|bms know*|stop*|tell*|protect* -alternator -smart'],
    when: ({ batteries }) => batteries?.some(({ chemistry }) => chemistry === 'lfp') === true,
    verdict: 'no',
    says: 'Not by itself: the battery’s BMS must block it in the cold, or a controller with a sensor.',
    lines: [
      'Look in its leaflet for “low-temperature cut-off”. None? Unplug the panel until the cells are above 5 °C.',
    ],
    cautions: ['lithium-cold'],
  },
  {
    name: 'alternator-asked-too-much',
    hasAnyFigures: true,
    spots: [
      'alternator cook*|burn*|cope*|too_big|handle*|overheat*|hurt|kill*|strain*|manage|overload*|damage*|up_to|suffer',
    ],
    says: 'Straight on, yes: lithium takes all it gives, for long. A DC-DC charger holds it to its amps.',
    lines: [
      'About half of an alternator’s rating for long is fair: 50 A off 100 A. At idle in the heat it gives a third.',
      'A 25 A DC-DC draws about 30 A from it, a 40 A one about 50 A.',
    ],
    cautions: ['fuse-at-battery'],
    when: ({ alternatorA, chargers }) =>
      alternatorA === undefined && !chargers?.some(({ currentA }) => currentA !== undefined),
  },
  {
    name: 'smart-or-not',
    spots: [
      'how|way tell|know|knowing|check smart|mine|one|alternator|got -desulph* -equal*',
      'how|way tell|know|knowing|find whether|if alternator|mine|vehicle|car',
    ],
    says: 'Measure the starter battery after 15 minutes’ drive: well under 13.5 V at times means smart.',
    lines: [
      'Steady 13.8 to 14.4 V, lights on or off, is a fixed one. Most built since about 2010 are smart.',
    ],
  },
  {
    name: 'none-there',
    spots: [
      'dont|nothing|havent|not|no one_of_those|one_of_them|like_that -do_i -need -buy -isolator -dcdc -dc -know -smart',
    ],
    says: 'Then nothing may charge it as you drive: it takes a DC-DC charger, or an isolator on an old car.',
    lines: ['Look for a thick cable from the starter battery to the back, and a box or relay in it.'],
    cautions: ['fuse-at-battery'],
    next: ['isolator or dcdc?'],
  },
  {
    name: 'do-without',
    spots: [
      'skip|go_without|leave_out|at_first|for_now dcdc|dc|b2b|dc_charger -straight -isolator -alternator',
    ],
    verdict: 'yes',
    says: 'Yes, for now: solar or a mains charger does it; only driving then charges nothing.',
    lines: ['Leave the starter battery unjoined meanwhile: no bare cable between the two.'],
  },
  {
    name: 'what-it-is',
    spots: [
      'whats_a|what_is_a|what_does_a|what_are|why_would|explain|dont_know_what dcdc|dc_dc|dc_to_dc|b2b -size -better -best -suits -isolator',
    ],
    says: 'A DC-DC charger lifts the alternator’s volts to what the second battery needs, and caps the amps.',
    lines: [
      'A relay (isolator) only joins the two: fine with an old fixed-voltage alternator and two lead batteries.',
      'You need one for lithium, for a smart alternator (most since about 2010) or for a long cable.',
    ],
    next: ['isolator or dcdc?', 'what fuse for a 25A dcdc?'],
  },
  {
    name: 'why-not-joined',
    spots: ['why|wrong|matter together|joined|joining|parallel|straight|direct*|those_two'],
    when: ({ batteries = [] }) =>
      batteries.every(({ chemistry }) => chemistry === undefined || chemistry === 'lfp'),
    says: 'Their volts differ: lithium rests at 13.3 V, lead at 12.7 V, so one pushes amps into the other.',
    lines: [
      'Charging, lithium pulls all the alternator has, for hours; engine off, it drains into the lead one.',
    ],
    cautions: ['mixed-batteries'],
  },
  {
    name: 'low-at-the-plug',
    spots: ['is_that_enough|that_enough charg*|fill*', 'charge on_that|off_that|with_that'],
    when: ({ chargers }) => !chargers?.some(({ currentA }) => currentA !== undefined),
    verdict: 'no',
    says: 'Under about 13.2 V at the battery nothing goes in: it takes 13.8 V or more to charge.',
    lines: [
      'A long thin wire or a smart alternator loses it; a DC-DC charger beside the battery lifts it again.',
    ],
    next: ['isolator or dcdc?'],
  },
  {
    name: 'left-on-charge',
    spots: [
      'leave|left|stay*|keep on|plugged|connected week*|month*|all|time|winter|night|permanent* -isolator -relay -dcdc -dc',
    ],
    says: 'A smart charger set to your battery may stay on: once full it only holds it there.',
    lines: [
      'An old charger without stages comes off when the battery is full: it boils a lead one dry.',
      'Lithium is happier not held full for months: about half to store it.',
    ],
  },
  {
    name: 'power-station-in-car',
    spots: [
      'power_station|powerstation|power_pack|solar_generator car|drive|driving|lighter|dash|socket|road',
    ],
    verdict: 'yes',
    says: 'Yes, slowly: a dash socket gives about 100 W, so each 500 Wh takes 5 to 6 hours of driving.',
    lines: ['Set its car input to 8 A or less if it asks; many dash sockets are dead with the key off.'],
  },
  {
    name: 'can-the-car',
    spots: [
      'can|could|does|is_there|how|what_do car|vehicle|ute|towing|tow|alternator|driv* charg*|fill* -isolator -dcdc -dc -lithium -how_many -how_much -how_long -enough',
    ],
    when: ({ batteries, alternator, cable, volts }) => !(batteries?.length || alternator || cable || volts),
    verdict: 'yes',
    says: 'Yes: through a DC-DC charger between the starter battery and yours. A 25 A one gives 20 Ah an hour.',
    lines: [
      'Fused cable at both ends, 16 mm² as a rule, the charger close to the camp battery.',
      'With an old fixed-voltage alternator and the same type of battery, an isolator would do.',
    ],
    cautions: ['fuse-at-battery'],
    next: ['what fuse for a 25A dcdc?', 'what cable for a 25A dcdc, 5 m?'],
  },
];
