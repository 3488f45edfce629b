import type { Facts } from '#rig/rig.ts';
import { agmOrLithium } from '../../agm-or-lithium.ts';
import { spotted } from '../../spotting.ts';
import { hasUse } from '../../use.ts';
import type { PairCase, Weighed } from '../../weighed.ts';
import { oneOrTwo } from './batteries.ts';
import { batteryOrPanel, dcdcOrIsolator, panelOrGenerator, pwmOrMppt } from './sources.ts';
import { gasOrTwelve, twelveOrTwentyFour } from './systems.ts';

/** Two ways to the same end that campers weigh by name. */
interface Pair {
  readonly name: string;
  /** Patterns of `spotting.ts`. */
  readonly spots: readonly string[];
  /** A number that must stand in the text too, as words hold none. */
  readonly number?: string;
  /** It goes before two things told with their sizes. */
  readonly isFirst: (told: Facts, facts: Facts) => boolean;
  /** What is used a day must be told. */
  readonly isOfUse?: true;
  readonly weigh: (about: PairCase) => Weighed;
}

/** Batteries told that come to the same: one big one, and several that make as much. */
function areAlike({ batteries = [] }: Facts): boolean {
  const totals = batteries.map(({ count, capacityAh = 0 }) => count * capacityAh);
  const [first] = totals;
  const isSame = totals.every(total => total === first) && (first ?? 0) > 0;
  return (
    isSame &&
    new Set(batteries.map(b => b.count)).size > 1 &&
    new Set(batteries.map(b => b.chemistry)).size === 1
  );
}

const pairs: readonly Pair[] = [
  { name: 'pwm-mppt', spots: ['pwm mppt'], isFirst: () => true, weigh: pwmOrMppt },
  {
    name: 'twelve-24',
    spots: [
      'v_or_v',
      'v_vs_v',
      'v_versus_v',
      'v_against_v',
      'volt*_or_v|volts_or_volts|volt_or_volt',
      'or_v inverter|system',
    ],
    number: '24',
    isFirst: () => true,
    weigh: twelveOrTwentyFour,
  },
  {
    name: 'gas-12v',
    spots: [
      'gas|propane|lpg|three_way|way|absorption fridge*|freezer* or|vs|versus|better|against',
      'compressor three_way|way or|vs|versus|better',
    ],
    isFirst: () => true,
    weigh: gasOrTwelve,
  },
  {
    name: 'dcdc-isolator',
    spots: ['dcdc|dc_dc|dc_to_dc|b2b isolator|vsr|relay|split_charge'],
    isFirst: () => true,
    weigh: dcdcOrIsolator,
  },
  {
    name: 'agm-lithium',
    spots: ['agm|gel|lead|flooded|wet lithium|lfp|lifepo*'],
    isFirst: () => false,
    weigh: agmOrLithium,
  },
  {
    name: 'panel-generator',
    spots: ['panel*|solar generator|genny|genset|gennie'],
    isFirst: () => false,
    isOfUse: true,
    weigh: panelOrGenerator,
  },
  {
    // What is told is the rig as it stands, to be made larger.
    name: 'grow',
    spots: ['battery|batteries|agm|lithium|ah panel*|solar|watts double|bigger|larger|first|upgrade'],
    isFirst: (_told, facts) => hasUse(facts),
    isOfUse: true,
    weigh: batteryOrPanel,
  },
  {
    name: 'battery-panel',
    spots: ['battery|batteries|agm|lithium|ah panel*|solar|watts or|vs|versus|first|rather|better'],
    isFirst: () => false,
    isOfUse: true,
    weigh: batteryOrPanel,
  },
  {
    name: 'one-two',
    spots: ['one|single|big two|pair|couple|small|smaller -panel* -lithium'],
    isFirst: areAlike,
    weigh: oneOrTwo,
  },
];

/** The pair that a message names. */
export const pairIn = (words: readonly string[], text: string): string | undefined =>
  spotted(
    words,
    pairs,
    ({ spots }) => spots,
    ({ number }) => number === undefined || text.includes(number),
  )?.name;

export const pairNamed = (name: string | undefined): Pair | undefined =>
  pairs.find(pair => pair.name === name);
