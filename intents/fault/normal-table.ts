import type { Mention } from '#language/recognise/mention.ts';
import { decimals } from '#quantity/round.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { stageSaid } from '../charge-stage.ts';
import { amountsOf, isOverBattery } from '../figures-told.ts';
import { chemistryName } from '../words.ts';
import { chargeRow } from './compute.ts';

/** A starter battery should hold so much while it cranks, V: the load test of the trade. */
const crankingV = 9.6;

const kindOf = ({ batteries = [] }: Facts): Chemistry =>
  batteries.find(({ chemistry }) => chemistry !== undefined)?.chemistry ?? 'agm';

/** Under this nothing charges a 12 V battery as it should, V. Common practice. */
const leastChargingV = 13.2;
/** The lowest volts told, of those that are no battery's name. */
const lowestV = (mentions: readonly Mention[]): number =>
  Math.min(
    ...amountsOf(mentions, 'voltage')
      .map(({ value }) => value)
      .filter(v => v !== 12 && v > 9),
  );

/** Blocks of 12 V in series, by volts read on charge. */
const blocksAt = (volts: number): number => (volts > 24 && volts < 31 ? 2 : 1);

/** The share of its rating (%) that a fuse or breaker carries, where both are told. */
function loadedPercent({ fuseA, cable, loads = [] }: Facts): number | undefined {
  const drawnA = cable?.currentA ?? loads.find(({ currentA }) => currentA !== undefined)?.currentA;
  return fuseA === undefined || drawnA === undefined ? undefined : (100 * drawnA) / fuseA;
}

/** Over this share of its rating a breaker trips in time, %. Makers' sheets that agree. */
const longPercent = 80;

/** A parked car's alarm and radio take no more than this, A. Common practice. */
const parkedA = 0.05;

/** Whether so much is too much for a parked car. */
const drainSaid = (amps: number | undefined): string => {
  if (amps === undefined) return 'Over 50 mA is too much for a parked car: that alone is about 8 Ah a week.';
  const told = `${decimals(amps * 1000, 0)} mA`;
  const weekly = `about ${decimals(amps * 24 * 7, 0)} Ah a week`;
  return amps > parkedA
    ? `Too much: ${told} is ${weekly}; a parked car should take 50 mA at most.`
    : `Fine: ${told} is ${weekly}; up to 50 mA is normal for a parked car.`;
};

/** Whether what is seen is a fault at all: lamps that blink, volts that move, things that start and stop. Common practice, volts as in the engine. */
export const normalAsides: readonly Aside[] = [
  {
    name: 'what-blinks',
    hasAnyFigures: true,
    spots: [
      'charger|controller|dcdc|regulator|mppt|bms|display light|led|lights flash*|blink* -dim* -flicker* -pump -wake -dash -burn* -smell*',
      'fridge light flash*|blink* -lights -dim* -pump -lamp*',
      'what_does|what_do|whats|meaning light red|green|amber|orange|yellow|blue -dash -engine -lights -dim*',
      'flashing|flashes|blinking|blinks green|red|twice|times|three -pump -lights',
      'it_blinks|it_flashes -lights',
    ],
    when: ({ loads = [] }) => !loads.some(({ name }) => /\blight|\blamp|\bled\b/.test(name)),
    says: 'Each maker has its own blinks: count them, then look on its label, in its leaflet or app.',
    lines: [
      'Mostly steady green is full, slow green is charging, and red or a count of blinks is a fault code.',
      'What tells for sure: volts at the battery. Over 13.2 V it’s being charged; under 12 V it’s low.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'shunt-turned',
    hasAnyFigures: true,
    spots: [
      'shunt|monitor|meter backwards|reads_backwards|reversed|wrong_sign|as_negative|shows_minus charg*|in|wire|wired|reads|new -everything_off -drain',
      'shunt reads_backwards|in_backwards|on_backwards|wrong_way_round',
    ],
    says: 'Most likely its two thick sides are swapped: turn them round, or flip the sign in its settings.',
    lines: [
      'Minus means out on most. Its battery side goes to the battery’s minus, nothing else on that post.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'shunt-side',
    hasAnyFigures: true,
    spots: [
      'shunt positive|pos|plus|negative|neg|minus where|side|matter|or|direct*|connect -everything_off -shows -says_minus -reads',
    ],
    says: 'The shunt goes in the minus, right at the battery; each other minus goes on its load side.',
    lines: [
      'So the inverter’s minus goes to the shunt’s load side too, not to the post: else it isn’t counted.',
      'In the plus only one that is made for it, as its electronics sit at the other pole.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'breaker-near-its-rating',
    hasAnyFigures: true,
    spots: ['breaker|it trips|trip|tripping|tripped'],
    when: facts => {
      const percent = loadedPercent(facts);
      return percent !== undefined && percent >= longPercent && percent <= 130;
    },
    says: facts =>
      `No dud: it carries ${decimals(loadedPercent(facts) ?? 0, 0)} % of its rating; over ${longPercent} % for long it trips by warmth.`,
    lines: [
      'Less load, or a larger one only if the cable is made for more. A loose post on it warms it as well.',
    ],
    cautions: ['no-fuse'],
  },
  {
    name: 'breaker-in-the-heat',
    spots: ['breaker|fuse hot|heat|summer|warm days|day|weather|only|noon|lunch'],
    says: 'Heat trips it early: in 40 °C it carries a tenth or two less. Give it shade and air.',
    lines: [
      'Still trips when cool? Then the load is too near its rating, or a post on it is loose and warms it.',
    ],
    cautions: ['no-fuse'],
  },
  {
    name: 'cranking-volts',
    hasAnyFigures: true,
    spots: ['crank*|turning_over|starting_it pass|fail|cold|drops|dip*|way_out|ok|right|good'],
    when: ({ volts }) => volts !== undefined && volts < 13,
    says: ({ volts = 0 }) =>
      volts >= crankingV
        ? `Pass: ${decimals(volts, 1)} V while cranking. At ${crankingV} V or more it is good, in frost a little less.`
        : `Weak: ${decimals(volts, 1)} V while cranking, where ${crankingV} V or more is good. Charge it, test it again.`,
    lines: [
      'Full and still under that: it’s worn, or its clamps are dirty. Many shops load-test it for you.',
    ],
  },
  {
    name: 'cca-tested',
    hasAnyFigures: true,
    spots: ['cca -whats -what_is -mean*'],
    says: 'A starter that tests under about 70 to 80 % of the CCA on its label is worn: plan a new one.',
    lines: ['Test it full and rested. For camp its amp hours count: run 5 A from full and take the hours.'],
  },
  {
    name: 'high-by-itself',
    hasAnyFigures: true,
    spots: [
      'nothing_charging|not_charging|isnt_charging|no_charger|charger_off|nothing_plugged|no_sun|night|dark|midnight|unplugged right|normal|stuffed|wrong|broken|faulty|how|why|ok|okay|good|possible -panel* -solar -dropped -drops -fell -after -until',
    ],
    when: ({ volts = 0 }) => volts / blocksAt(volts) >= 13.9 && volts / blocksAt(volts) <= 16,
    says: ({ volts = 0 }) =>
      `Not right: no battery holds ${decimals(volts, 1)} V by itself. Something charges it, or the meter is off.`,
    lines: [
      'Look for a charger, DC-DC or panel that is still on, then read it with another meter at the posts.',
      'Just off a charger it may read high for an hour; it sinks by itself.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'volts-on-charge',
    hasAnyFigures: true,
    spots: [
      'high|too_much|ok|okay|right|normal|fine|good|bad|wrong|stuffed|broken|faulty|fault|problem|worry|worried|odd|weird|strange -label -max -maximum -sheet -stop* -then -cuts -cutting -light* -switches -error -full -not_charg* -wont -doesnt -inverter',
    ],
    when: ({ volts = 0, voltsTaken, ambientC = 20 }, { recognised: { mentions } }) => {
      const one = volts / blocksAt(volts);
      const least = voltsTaken === 'charging' ? 13.2 : 13.6;
      const isOnCharge = voltsTaken !== 'rest' && voltsTaken !== 'load' && one >= least && one <= 14.8;
      return isOnCharge && ambientC > 10 && lowestV(mentions) >= leastChargingV;
    },
    says: facts => {
      const { volts = 0 } = facts;
      const kind = kindOf(facts);
      const blocks = blocksAt(volts);
      const [, low, high] = chargeRow(kind).absorptionV;
      const fine = stageSaid(volts, kind, blocks);
      const range = `${decimals(low * blocks, 1)} to ${decimals(high * blocks, 1)} V`;
      return (
        fine ??
        `A bit high: ${decimals(volts, 1)} V, where ${chemistryName(kind)} charges at ${range}. Turn it down if you can.`
      );
    },
    lines: ['The battery’s own label goes before that. How full it is, it tells after some hours at rest.'],
  },
  {
    name: 'over-its-label',
    hasAnyFigures: true,
    spots: ['label|max|maximum|sheet battery|charger|ok|okay'],
    when: ({ volts = 0, voltsTaken }) => voltsTaken === 'charging' && volts >= 13.8 && volts <= 15,
    says: 'The battery’s label goes first: set the charger to a type that stays at its volts or under.',
    lines: ['A tenth or two over for an hour does little; each day it dries out lead-acid, and trips a BMS.'],
    cautions: ['battery-gas'],
  },
  {
    name: 'never-to-float',
    hasAnyFigures: true,
    spots: ['never_drops|never_falls|never_goes_down|days_in_a_row|for_days|in_a_row'],
    when: ({ volts = 0 }) => volts >= 14,
    says: 'Not right for days on end: once full it should fall to about 13.5 V. Look at its settings.',
    lines: [
      'By night it must fall, sun or no sun. Held at 14 V for days a lead battery dries out.',
      'With a big load on all day it may never get to float: that is harmless.',
    ],
  },
  {
    name: 'panel-side-volts',
    hasAnyFigures: true,
    spots: ['panel_side|pv_side|pv|panel_volts|solar_side bad|ok|normal|high|right|mean*'],
    when: ({ volts }, { recognised: { mentions } }) =>
      isOverBattery(mentions) || (volts === undefined && amountsOf(mentions, 'voltage').length === 0),
    says: 'Fine: a 12 V panel shows 17 to 22 V. The controller brings that down to the battery’s volts.',
    lines: [
      'At the battery it should be 13 to 14.5 V in the sun. Stay under the controller’s own volts limit.',
    ],
  },
  {
    name: 'less-when-low',
    hasAnyFigures: true,
    spots: ['noon|midday|lunch pm|afternoon|later|evening|oclock wrong|normal|right|drop* -fridge'],
    says: 'Normal: early and late the sun strikes a flat panel at a slant, for a third of noon’s amps.',
    lines: ['Turned to the sun it holds much longer. A battery that is nearly full takes less as well.'],
  },
  {
    name: 'float-early',
    unless: { voltsUnder: 13 },
    hasAnyFigures: true,
    spots: ['float wasted|early|morning|am|rest_of|at_nine|already'],
    says: 'Float means full, as it sees it. The panel isn’t wasted: it still runs what you use by day.',
    lines: [
      'Full that early after a hungry night? Then it is worn, or the controller is set wrong.',
      'Big jobs, such as charging laptops, do best from then on.',
    ],
  },
  {
    name: 'fridge-cycles',
    spots: [
      'fridge|compressor|freezer on_and_off|off_and_on|hum_and_stop|stop_and|every_ten|every_few|comes_and_goes|cycl* normal|ok|bad|right|should -shows -error',
    ],
    verdict: 'yes',
    says: 'Yes, that is normal: a compressor runs, rests and runs again, about a third of the time.',
    lines: ['On more than off? Heat, a warm load, a bad seal, or no air behind it.'],
  },
  {
    name: 'heater-start',
    unless: { ampsFrom: 16, hoursFrom: 0.5 },
    spots: ['heater draws|pulls|uses|takes start|starts|starting normal|then|ok -wont -error -code -volts'],
    verdict: 'yes',
    says: 'Yes: 8 to 12 A for the first minutes is its glow plug. Then it takes 1 to 3 A.',
    lines: ['It draws as much for its shut-down: let it run on, and never cut its power.'],
  },
  {
    name: 'brighter-with-engine',
    unless: { voltsFrom: 15.1 },
    spots: ['brighter -sun -phone -screen'],
    verdict: 'yes',
    says: 'Yes, normal: with the engine on the volts rise from about 12.5 to 14, and lamps glow brighter.',
    lines: ['Flicker or lamps that burn out early is not: measure, and stay under 15 V.'],
  },
  {
    name: 'alternator-warm',
    when: (_, { recognised: { mentions } }) => lowestV(mentions) >= leastChargingV,
    spots: ['alternator hot|warm cold temp*|normal|dud|fault'],
    says: 'Normal: hot, its regulator lowers the volts. 13.4 V barely charges a second battery, though.',
    lines: ['A DC-DC charger lifts it again. Under 13.2 V with lights off, have it looked at.'],
  },
  {
    name: 'controller-by-night',
    unless: { ampsFrom: 0.1 },
    spots: ['reg|regulator|controller drain*|draw*|use|eat* sun|night|dark|leaving|off'],
    says: 'Hardly: most controllers take 0.01 to 0.03 A, under 1 Ah a day.',
    lines: ['For months without sun take the fuse between it and the battery out, panel off first.'],
  },
  {
    name: 'parked-drain',
    spots: [
      'milliamp*|ma|parasitic|drain how_many|how_much|too_many|too_much|normal parked|car|van|off -which -usb',
    ],
    says: (_, mentions) => drainSaid(amountsOf(mentions, 'current')[0]?.value),
    lines: ['Wait half an hour for it to sleep before you read. Then pull fuses one by one till it falls.'],
  },
  {
    name: 'keyed-sockets',
    spots: [
      'key|ignition turn_off|go_off|goes_off|go_dead|dead|off plug|plugs|socket|sockets|lighter -start -crank',
    ],
    says: 'The key switches those sockets: run a fused lead from the battery to a socket of its own.',
    lines: ['Left on, that can flatten a starter battery: a cut-out at about 12.2 V guards it.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'plug-in-meters',
    spots: [
      'readers|reader|voltmeter|meters|meter ciggy|cig*|lighter|plug lie|lies|trust|accurate|right|good',
    ],
    says: 'They read low by what the wire loses, mostly 0.1 to 0.5 V: check one against the posts.',
    lines: ['With all off they come close. For a battery’s charge read at its posts, rested.'],
  },
];
