import { rounded } from '#answer/say.ts';
import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { panelsW } from '../sun.ts';

const isUnsized = ({ solar = [] }: Facts): boolean => !solar.some(({ powerW }) => powerW !== undefined);
const isNowhere = ({ place, latitudeDeg }: Facts): boolean => (place ?? latitudeDeg) === undefined;

/** What a flat panel makes on a day of average sun, Ah for each W, as the engine comes to where no place is told. */
const averageAh = 0.31;
/** Winter's share of that where people camp: Sydney and Melbourne in June and July, Britain in December and January. */
const winter = { south: [0.35, 0.55], britain: 0.1 } as const;

const inWinter = (facts: Facts): string => {
  const watts = panelsW(facts);
  if (watts === undefined)
    return 'Much less: a third to a half of summer’s in southern Australia, a tenth in Britain.';
  const ah = (share: number): string => rounded(averageAh * watts * share);
  return `Less: about ${ah(winter.south[0])} to ${ah(winter.south[1])} Ah a day in southern Australia, ${ah(winter.britain)} or so in Britain.`;
};

/** Of a panel's watts for each °C, and how much hotter than the air it is in the sun. Makers' sheets, common practice. */
const heat = { sharePerC: 0.004, aboveAirC: 28, ratedC: 25 } as const;
const hotLoss = ({ ambientC }: Facts): string => {
  if (ambientC === undefined || ambientC < 15)
    return 'Yes: each 10 °C takes about 4 %, so a panel in hot sun makes some 10 to 15 % less than cold.';
  const lost = 100 * heat.sharePerC * (ambientC + heat.aboveAirC - heat.ratedC);
  return `About ${rounded(lost)} % less than its label at ${rounded(ambientC)} °C: a panel gets 25 to 30 °C hotter than the air.`;
};

/** What people ask beside what a panel makes, special rows before general ones. */
export const solarYieldAsides: readonly Aside[] = [
  {
    name: 'rain-on-it',
    spots: [
      'rain|rains|raining|wet|storm|hail panel|panels|solar|blanket happens|unplug|ok|okay|safe|need|harm|matter|disconnect|out -how_much -how_many -weekend -make -makes',
    ],
    when: isUnsized,
    hasAnyFigures: true,
    says: 'Rain does a panel no harm, so leave it plugged in: it only makes less. Keep plugs off the ground.',
    lines: [
      'Batteries, controllers and inverters stay dry. Lay a loose panel flat or take it in before a storm.',
    ],
  },
  {
    name: 'heat-loss',
    spots: [
      'hot|heat|hotter|heatwave|scorching|warm panel|panels|solar|they less|lose|loses|make|makes|output|drop|normal|worse|matter|affect -how_long',
      'what_if|what_about really_hot|very_hot|its_hot',
    ],
    when: isUnsized,
    hasAnyFigures: true,
    verdict: 'yes',
    says: hotLoss,
    lines: [
      'In the sun it is 25 to 30 °C above the air; air beneath it helps. Cool and bright makes the most.',
    ],
  },
  {
    name: 'gap-beneath',
    spots: [
      'distance|gap|space|clearance|airflow|air_gap roof|under|underneath|beneath|behind|panel|panels between|for|need|how|what -tree* -shade*',
    ],
    when: isUnsized,
    hasAnyFigures: true,
    says: 'Two to five centimetres, open at the ends: it stays some 10 °C cooler and makes about 4 % more.',
    lines: [
      'One glued flat works too, only less on a hot day. Anything that holds must stand 110 km/h of wind.',
    ],
  },
  {
    name: 'east-and-west',
    spots: ['east west one|both|idea|good|split|other'],
    hasAnyFigures: true,
    says: 'Good for amps from early to late: together some 10 to 20 % less than both at the midday sun.',
    lines: [
      'Join those side by side, or give each a controller: in series the dim one holds back the other.',
    ],
  },
  {
    name: 'facing-another-way',
    spots: [
      'facing|face|faces|pointing|points|point west|east|wrong_way lose|loss|losing|how_much|matter|bad|worse',
    ],
    when: isNowhere,
    hasAnyFigures: true,
    says: 'Nearly flat it hardly matters; tilted 30° to the east or west, some 10 to 20 % over the year.',
    lines: [
      'In winter it costs most, as the sun stays low on the midday side. Facing away from it then, over half.',
    ],
  },
  {
    name: 'area-of-its-label',
    spots: ['scam|fake|counterfeit|overrated|dodgy panel|panels|watts|w|blanket'],
    hasAnyFigures: true,
    says: 'Panels give about 200 W for each square metre: one of 1 × 0.5 m is about 100 W, whatever it says.',
    lines: ['Older ones and blankets some 150 W. Less area than that for its label is a wish.'],
  },
  {
    name: 'size-of-a-panel',
    spots: [
      'metre|metres|centimet*|cm|measures|dimension*|how_big panel|it|half|by|roughly|how_many -tree -cable -away -lead -wire -long -altitude',
    ],
    when: facts => isUnsized(facts) && isNowhere(facts),
    says: 'Panels give about 200 W for each square metre: one of 1 × 0.5 m is about 100 W, whatever it says.',
    lines: ['Older ones and blankets some 150 W. Less area than that for its label is a wish.'],
  },
  {
    name: 'why-under-the-label',
    spots: [
      'how_come|why back|label|says|rated|so_little|less|not_more|only -shade* -tree* -cloud* -shows -showing -get -gets -getting -reads -summer -winter',
    ],
    when: facts => isNowhere(facts) && facts.netCurrentA === undefined && facts.shade === undefined,
    hasAnyFigures: true,
    says: 'Its watts are for cold cells square to full sun: flat, warm and hazy it gives 70 to 80 % at noon.',
    lines: [
      'And a whole day of summer light is only about 4 to 6 hours’ worth of full sun, in winter half of that.',
    ],
  },
  {
    name: 'share-of-the-label',
    spots: [
      'third|half|two_thirds|quarter|percent|rule watts|label|rated|rating really|true|get|real|actually -shade* -tree*',
    ],
    when: facts => isUnsized(facts) && facts.shade === undefined,
    hasAnyFigures: true,
    says: 'At noon 70 to 80 % of the label; over a fair day its watts times 4 is what comes in Wh.',
    lines: ['In winter in the south times 2 to 3. So 100 W gives some 400 Wh, about 30 Ah, on a fair day.'],
    next: ['200W panel in july in melbourne'],
  },
  {
    name: 'sun-hours-anywhere',
    spots: ['hours sun|sunshine|daylight how_many|reckon|count|expect|plan|should -how_long -tree -shade*'],
    when: facts => isUnsized(facts) && isNowhere(facts) && facts.peakSunHours === undefined,
    hasAnyFigures: true,
    says: 'Full sun’s worth is about 4 to 6 hours a day in summer and 2 to 4 in winter: tell me the place.',
    lines: ['That is for the south of Australia. With place and month I work it out: “Hobart in June”.'],
    next: ['200W panel in july in melbourne'],
  },
  {
    name: 'where-the-hours-are-from',
    spots: [
      'where|how|which sun_hours|hours|figure|figures|numbers come_from|get_it|get_those|get_that|from -how_many -how_much -amps',
    ],
    when: isUnsized,
    says: 'From monthly climate of the place that you name, by years of weather; without one, a fair day.',
    lines: ['Years differ by 5 % where it is clear and over 20 % where it is dull; single days far more.'],
  },
  {
    name: 'pwm-amps',
    spots: ['pwm same|whatever|constant|normal|regardless|stays -or -vs -better -mppt -cloud* -overcast'],
    hasAnyFigures: true,
    verdict: 'yes',
    says: 'Yes: a PWM passes the panel’s amps on as they are; only an MPPT turns spare volts into amps.',
    next: ['what controller for a 200W panel?'],
  },
  {
    name: 'wind-turbine',
    spots: ['wind_turbine|turbine|windmill|wind_generator'],
    hasAnyFigures: true,
    says: 'Little at camp: at 12 knots about an eighth of its label, as power goes with the wind cubed.',
    lines: [
      'Labels are for 24 to 28 knots. A 400 W one gives some 50 W at 12 knots; a panel is quieter and surer.',
    ],
    next: ['200W panel'],
  },
  {
    name: 'through-cloud',
    spots: [
      'cloud|clouds|cloudy|overcast work|works|at_all|anything|nothing|any_use -how_much -how_many -jump* -up_and_down',
      'cloud|clouds kill|kills|stop|stops|ruin|completely|dead -jump*',
      'what_if|what_about|and_if|even|say|rain cloud|clouds|cloudy|overcast|weekend -how_many -jump* -unplug',
    ],
    when: isUnsized,
    verdict: 'yes',
    says: 'They do work, only less: full cloud all day leaves about a quarter of a fair day’s.',
    lines: ['From a tenth under thick rain cloud to half under bright thin cloud.'],
    next: ['200W panel when overcast'],
  },
  {
    name: 'winter',
    spots: [
      'winter|winters even|in|what_about|and|still|same|over -summer -how_much -how_many -tilt* -angle -flat -lay -which',
    ],
    when: facts => isNowhere(facts) && facts.month === undefined && facts.peakSunHours === undefined,
    says: inWinter,
    lines: [
      'Tell me where and in which month, and I work it out. Tilted at the low sun it’s a third more or better.',
    ],
    next: ['200W panel in july in melbourne'],
  },
  {
    name: 'clouds-come-and-go',
    hasAnyFigures: true,
    spots: ['cloud*|clouds jump*|bounc*|up_and_down|all_over|vari*|swing*|fluctuat*'],
    verdict: 'yes',
    says: 'Yes, normal: broken cloud swings it from a tenth to over full sun and back in seconds.',
    lines: ['What counts is the day’s total in Ah or Wh, which most controllers and apps keep.'],
  },
  {
    name: 'what-is-left-over',
    hasAnyFigures: true,
    spots: [
      'more_than_that|making|really|whole|all_of|or_more|in_total monitor|shunt|display|shows|reads|screen',
    ],
    when: ({ netCurrentA }) => netCurrentA !== undefined && netCurrentA > 0,
    says: 'More: a battery monitor shows what is left over. The solar makes that plus all that runs.',
    lines: ['The controller’s own display tells what the panel gives.'],
  },
  {
    name: 'covered',
    spots: ['towel|bed_sheet|tarp|cloth|covered|cover_it -behind -glass'],
    verdict: 'no',
    says: 'No, covered it makes next to nothing. Stand it where hands can’t reach it instead.',
    lines: [
      'A panel in the sun gets 60 to 70 °C: too hot to hold, and it cools within minutes in the shade.',
    ],
  },
  {
    name: 'dirt-loss',
    spots: [
      'dust|dusty|dirt|dirty|pollen|sap|leaves|bird*|poo|grime lose|loss|how_much|half|cost|costs|matter|on',
    ],
    hasAnyFigures: true,
    says: 'Dust costs some 5 to 20 %. Bird mess or a leaf over a few cells costs up to half: wipe it off.',
    lines: ['Water and a soft cloth in the cool of the morning, nothing that scratches.'],
  },
  {
    name: 'where-on-the-roof',
    hasAnyFigures: true,
    spots: ['where|matter|which_part roof panel|panels|it -tilt* -angle* -facing -flat'],
    says: 'Only shade matters: clear of vents, aerials, bars and boxes. Front or back is all the same.',
    lines: ['Leave a finger of air below it, and let its cable come in through a gland that is sealed.'],
  },
  {
    name: 'tilt-gain',
    hasAnyFigures: true,
    spots: ['flat tilt*|tilted|angled|angle vs|versus|gain|difference|compared|against'],
    when: isNowhere,
    says: 'Tilting is worth a third or more in winter, and next to nothing in summer.',
    lines: [
      'In winter the sun stands low: point it at the midday sun, tilted about as many degrees as your latitude.',
    ],
    next: ['200W panel in july in melbourne, tilted'],
  },
  {
    name: 'cleaning',
    spots: ['clean*|wash*|dust|dusty|dirt|dirty|bird*|hose panel*|solar|them|it|matter -how_much -how_many'],
    says: 'Water and a soft cloth when they look dusty: dirt costs some 5 to 20 %, bird mess more.',
    lines: ['In the cool of the morning, no pressure washer and nothing that scratches.'],
  },
  {
    name: 'frosty-panels',
    spots: ['frost|snow|ice|icy panel*|solar|they -how_much -how_many'],
    says: 'Under frost or snow next to nothing; once clear they make full power, the cold even helps.',
    lines: ['Brush it off softly or tilt them; never pour hot water on the glass.'],
  },
  {
    name: 'behind-glass',
    spots: [
      'window|windscreen|windshield|glass|dashboard|plastic|perspex inside|through|behind|under|on|in -broken -crack*',
    ],
    says: 'Behind glass or clear plastic it makes about half at best, behind tinted glass a tenth.',
    lines: ['The angle and the shade of the frame cost most. Outside in full sun is worth the cable.'],
  },
  {
    name: 'on-a-pole',
    spots: ['pole|mast|tripod'],
    verdict: 'yes',
    says: 'Yes, whatever gets it out of the shade: full sun is worth far more than the perfect angle.',
    lines: ['Guy it well: wind lifts a panel. A longer cable to it wants thicker wire.'],
    next: ['what cable for a 200W panel, 10 m?'],
  },
  {
    name: 'smoke',
    spots: ['smoke|smoky|haze|hazy'],
    says: 'Yes: thin smoke or haze costs some 5 to 20 %, thick smoke as much as cloud.',
    lines: ['A single drift of campfire smoke passes; ash on the glass stays, so wipe it off.'],
  },
  {
    name: 'shade',
    spots: ['shade*|shadow*|tree*|awning|under', 'pointless|cooked|useless|worth'],
    when: facts => isUnsized(facts) && facts.shade !== undefined && facts.shade !== 'none',
    says: 'Shade takes most of it: under trees plan on a tenth to a third, and half for one shaded corner.',
    lines: ['Park for the sun from 10 to 3, or carry a loose panel on a long lead out to it.'],
    next: ['200W panel in the shade half the day'],
  },
  {
    name: 'flat-or-tilted',
    spots: [
      'tilt*|angle|angled|angling|lay*|lie*|lying flat|more|gain|worth|matter|lose|loss|tilting',
      'flat lose|loss|cost|costs',
      'flat roof|is_that_it|matter',
    ],
    when: facts => isNowhere(facts) && (isUnsized(facts) || facts.mount === undefined),
    says: 'Tilting is worth a third or more in winter, and next to nothing in summer.',
    lines: [
      'In winter the sun stands low: point it at the midday sun, tilted about as many degrees as your latitude.',
      'Flat on a roof it also gets hotter and dirtier, some 5 to 10 % less.',
    ],
  },
  {
    name: 'fixed-or-turned',
    spots: [
      'pointing|facing|point|turn*|move*|moving|follow* all_day|whole_day|the_whole|times|midday|south|north -which -what_direction',
    ],
    when: facts => isNowhere(facts) && (isUnsized(facts) || facts.mount === undefined),
    says: 'Fixed at the midday sun it makes about four fifths of what turning it three times would.',
    lines: ['So turning is worth it only where you are short.'],
  },
  {
    name: 'low-sun',
    spots: [
      'early|late morning|evening|afternoon -how_much -how_many',
      'sunrise|sunset|dawn|dusk -to -how_much -how_many',
    ],
    when: isNowhere,
    says: 'Little early and late: a tenth of noon’s amps at first light, a third to a half by mid-morning.',
    lines: ['About two thirds of a day’s sun falls between 10 and 3.'],
  },
  {
    name: 'mppt-gain',
    spots: ['mppt more|gain|better|worth|extra|improve|help'],
    verdict: 'yes',
    says: 'Yes, some 10 to 20 % more than a PWM from a 12 V panel, most in the cold; twice from a house panel.',
    next: ['what controller for a 200W panel?'],
  },
];
