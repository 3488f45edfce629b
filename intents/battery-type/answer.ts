import type { Reply } from '#answer/reply.ts';
import { span } from '#answer/say.ts';
import { decimals, significant } from '#quantity/round.ts';
import { figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { chemistryName } from '../words.ts';
import type { BatteryType, Side } from './compute.ts';

const label = ({ bank }: Side): string =>
  `${significant(bank.capacityAh)} Ah ${chemistryName(bank.chemistry)}`;
const usable = ({ explored }: Side) => explored.figures.usableCapacity;
const kg = (value: number): string => `${decimals(value, 0)} kg`;

/** Why not all of the label is for use. */
function why({ lead, lithium, isLithium }: BatteryType): readonly [string, ...string[]] {
  const [half, most] = [usable(lead), usable(lithium)];
  if (isLithium)
    return [
      `Of a ${label(lithium)} about 80 % is for use, ${significant(most.value)} Ah; all of it where you must, at the cost of cycles.`,
      `At 80 % depth of discharge it stands about ${decimals(lithium.cycles, 0)} cycles; the BMS cuts off before the cells are hurt.`,
      `Of lead-acid only half is for use: ${significant(half.value)} Ah of ${significant(lead.bank.capacityAh)}.`,
    ];
  return [
    `Of a ${label(lead)} about half is for use, ${significant(half.value)} Ah: going deeper wears lead-acid out fast.`,
    `At 50 % depth of discharge it stands about ${decimals(lead.cycles, 0)} cycles, near empty less than half of that; fast draws, cold and age take more.`,
    `Lithium lets you use about 80 %: ${significant(most.value)} Ah of ${significant(lithium.bank.capacityAh)}.`,
  ];
}

function compared(result: BatteryType): readonly [string, ...string[]] {
  const { lead, lithium } = result;
  const [a, b] = [usable(lead), usable(lithium)];
  const more = b.value >= a.value ? label(lithium) : label(lead);
  const ratio = Math.max(a.value, b.value) / Math.min(a.value, b.value);
  const [most, least] = b.value >= a.value ? [b, a] : [a, b];
  return [
    ratio < 1.05
      ? `About the same: ${significant(a.value)} Ah to use from the ${label(lead)}, ${significant(b.value)} Ah from the lithium.`
      : `The ${more} gives more: about ${significant(most.value)} Ah to use, against ${significant(least.value)} Ah.`,
    `To use: ${span(a.low, a.high, 'Ah')} of ${label(lead)}, ${span(b.low, b.high, 'Ah')} of ${label(lithium)}.`,
    `Weight: about ${kg(lead.weightKg)} against ${kg(lithium.weightKg)}. Life: about ${decimals(lead.cycles, 0)} cycles against ${decimals(lithium.cycles, 0)}.`,
    `At freezing lead still gives about ${decimals(lead.atFreezing * 100, 0)} % of its label, lithium ${decimals(lithium.atFreezing * 100, 0)} %.${heat(result)}`,
    'Lithium charges faster and holds its volts; AGM costs less to buy and suits an old charger or alternator as it is.',
  ];
}

const heat = ({ lifeInHeat }: BatteryType): string =>
  lifeInHeat === undefined
    ? ''
    : ` In that heat lead-acid lasts about ${decimals(lifeInHeat * 100, 0)} % as long.`;

/** Words for AGM against lithium. */
export function answerBatteryType(result: BatteryType, setting: RequestContext): Reply {
  const isWhy = setting.parsed.cues.has('ask-why') && result.isOneSize;
  const [headline, ...lines] = isWhy ? why(result) : compared(result);
  const lead = reasons(result.lead.explored);
  const lithium = reasons(result.lithium.explored);
  const size = {
    name: 'batteryCapacity',
    value: result.lead.bank.capacityAh,
    unit: 'Ah',
    why: 'for the comparison, as you named no size',
  };
  return {
    headline,
    lines,
    verdict: null,
    figures: {
      usableCapacityAgm: figure(usable(result.lead), 'Ah'),
      usableCapacityLfp: figure(usable(result.lithium), 'Ah'),
    },
    assumed: [
      ...(result.isSizeAssumed ? [size] : []),
      ...lead.assumed.slice(0, 1),
      ...lithium.assumed.slice(0, 1),
    ],
    working: () => [...(lead.working?.() ?? []), ...(lithium.working?.() ?? [])],
    cautions: ['lithium-cold'],
    next: [
      `how long will ${significant(result.lithium.bank.capacityAh)}Ah lithium run a 1A fridge`,
      'isolator or dcdc?',
      'show the working',
    ],
  };
}
