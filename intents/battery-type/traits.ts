import type { Reply } from '#answer/reply.ts';
import { rounded, sentence } from '#answer/say.ts';
import { decimals, significant } from '#quantity/round.ts';
import type { Chemistry, Facts } from '#rig/rig.ts';
import type { RequestContext } from '../intent.ts';
import { spotted } from '../spotting.ts';
import { chemistryName } from '../words.ts';
import { type BatteryType, lifeInHeat, lifeOf, type Side } from './compute.ts';

type Trait = 'life' | 'weight' | 'in-cold' | 'heat';

/** What of a kind is asked after, by the words. */
const traits: readonly { readonly name: Trait; readonly spots: readonly string[] }[] = [
  {
    name: 'life',
    spots: [
      'how_many_years|how_many_cycles|cycles|lifespan|life_span|life_expectancy',
      'last|lasts|live|lives|survive years|longer|longest -hours -days -run -fridge',
    ],
  },
  {
    name: 'weight',
    spots: ['heavy|heavier|weigh|weighs|weight|kg|kilos|lighter|lightest|kilo'],
  },
  { name: 'in-cold', spots: ['cold|freez*|frost|winter|minus|snow|below_zero -charge_it_in'] },
  { name: 'heat', spots: ['heat|hot|summer|warm -hotplate -hot_water'] },
];

const traitIn = (words: readonly string[]): Trait | undefined =>
  spotted(words, traits, ({ spots }) => spots)?.name;

/** Years that most last at a camper's use, whatever their cycles: common practice. */
const years = (chemistry: Chemistry): string => (chemistry === 'lfp' ? '10 years or more' : '4 to 7 years');

/** Kinds that are spoken of, each once. */
const kindsTold = ({ batteries = [] }: Facts): Chemistry[] => [
  ...new Set(batteries.map(({ chemistry }) => chemistry).filter(kind => kind !== undefined)),
];

function life(facts: Facts, { lead, lithium }: BatteryType): readonly [string, ...string[]] {
  const kinds = kindsTold(facts);
  const told = facts.depthOfDischargePercent;
  const cycles = (kind: Chemistry): string => decimals(Number(lifeOf(kind, told).cycles.toPrecision(2)), 0);
  const depth = (kind: Chemistry): string => decimals(lifeOf(kind, told).percent, 0);
  const [a, b] = [lead.bank.chemistry, lithium.bank.chemistry];
  const ofTime =
    'Age and heat end most of them before the cycles do; left standing empty, lead-acid dies early.';
  const [only] = kinds;
  if (kinds.length === 1 && only !== undefined) {
    const other = only === 'lfp' ? a : b;
    return [
      `${sentence(chemistryName(only))} lasts about ${years(only)}, or ${cycles(only)} cycles of ${depth(only)} % of its label.`,
      `${sentence(chemistryName(other))}: about ${years(other)}, ${cycles(other)} cycles.`,
      ofTime,
    ];
  }
  return [
    `Lithium, by far: about ${years(b)} (${cycles(b)} cycles), against ${years(a)} (${cycles(a)}).`,
    `That is at ${depth(b)} % of its label a time for lithium, ${depth(a)} % for ${chemistryName(a)}.`,
    ofTime,
  ];
}

const kg = (value: number): string => `${decimals(value, 0)} kg`;
const label = ({ bank }: Side): string => `${significant(bank.capacityAh)} Ah`;

function weight({ lead, lithium }: BatteryType): readonly [string, ...string[]] {
  const perAh = ({ weightKg, explored }: Side) => weightKg / explored.figures.usableCapacity.value;
  return [
    `${label(lithium)} of lithium weighs about ${kg(lithium.weightKg)}, ${label(lead)} of ${chemistryName(lead.bank.chemistry)} about ${kg(lead.weightKg)}.`,
    `For each Ah that you can use: about ${significant(perAh(lithium), 2)} kg against ${significant(perAh(lead), 2)} kg.`,
    'Makers differ by a fifth or so: look at its sheet.',
  ];
}

function cold({ lead, lithium }: BatteryType, facts: Facts): readonly [string, ...string[]] {
  const [a, b] = [lead, lithium].map(side => decimals(side.atFreezing * 100, 0));
  const { ambientC } = facts;
  const gives = `At 0 °C lithium gives about ${b} % of its label, ${chemistryName(lead.bank.chemistry)} about ${a} %.`;
  return ambientC !== undefined && ambientC < 0
    ? ['Yes, lithium may be used down to about -20 °C. Only charging it below 0 °C ruins it.', gives]
    : [
        gives,
        'It is no loss for good: warm again, it gives all of it. A flat lead-acid battery can freeze and split.',
      ];
}

/** From here on heat is hard on lead-acid, and lithium's BMS may stop charging, °C: makers' sheets. */
const hotC = 27;

function heat(facts: Facts): readonly [string, ...string[]] {
  const { ambientC } = facts;
  const lines = [
    'Lithium’s BMS stops charging at about 45 to 55 °C. Give the box shade and air, and keep it out of the engine bay.',
    'Too hot to touch, swollen or smelling is a fault: stop, and keep away.',
  ];
  return ambientC === undefined || ambientC <= hotC
    ? ['Yes, heat ages them: 10 °C more about halves a lead-acid battery’s life.', ...lines]
    : [
        `Usable, but hard on it: kept at ${significant(ambientC)} °C, lead-acid lives about ${rounded(lifeInHeat(ambientC) * 100)} % as long.`,
        ...lines,
      ];
}

/** Words for one trait of the kinds of battery: life, weight, cold, heat. Undefined where the words ask after none. */
export function answerTrait(
  facts: Facts,
  result: BatteryType,
  { parsed }: Pick<RequestContext, 'parsed'>,
): Reply | undefined {
  const trait = traitIn(parsed.recognised.words);
  // Two kinds held against each other for cold or hot weather are weighed.
  const isWeather = trait === 'in-cold' || trait === 'heat';
  if (!trait || (isWeather && (kindsTold(facts).length > 1 || parsed.cues.has('ask-compare'))))
    return undefined;
  const [headline, ...lines] =
    trait === 'life'
      ? life(facts, result)
      : trait === 'weight'
        ? weight(result)
        : trait === 'in-cold'
          ? cold(result, facts)
          : heat(facts);
  return {
    headline,
    lines,
    verdict: null,
    cautions: trait === 'in-cold' ? ['lithium-cold'] : [],
    next: ['agm or lithium?', 'how do I store a battery?'],
  };
}
