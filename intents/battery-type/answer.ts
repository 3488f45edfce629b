import type { Reply } from '#answer/reply.ts';
import { rounded, span } from '#answer/say.ts';
import type { Range } from '#quantity/range.ts';
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

/** "80 Ah (71–100 Ah)". */
const ofRange = ({ value, low, high }: Range): string => `${rounded(value)} Ah (${span(low, high, 'Ah')})`;

function compared(result: BatteryType, airC?: number): readonly [string, ...string[]] {
  const { lead, lithium } = result;
  const [a, b] = [usable(lead), usable(lithium)];
  const [better, other] = b.value >= a.value ? [lithium, lead] : [lead, lithium];
  const more = result.isSizeAssumed
    ? `Of ${significant(better.bank.capacityAh)} Ah, ${chemistryName(better.bank.chemistry)}`
    : `The ${label(better)}`;
  const ratio = Math.max(a.value, b.value) / Math.min(a.value, b.value);
  const [most, least] = b.value >= a.value ? [b, a] : [a, b];
  return [
    ratio < 1.05
      ? `About the same: ${significant(a.value)} Ah to use from the ${label(lead)}, ${significant(b.value)} Ah from the lithium.`
      : `${more} gives more: about ${ofRange(most)} to use, against ${ofRange(least)}.`,
    // In the order of the line above.
    `Weight: about ${kg(better.weightKg)} against ${kg(other.weightKg)}. Life: about ${decimals(better.cycles, 0)} cycles against ${decimals(other.cycles, 0)}.`,
    weather(result, airC),
    'Lithium charges faster and holds its volts. AGM costs less and suits an old charger or alternator.',
  ];
}

/** From here down the cold takes a share that is worth a word, °C. */
const coldC = 10;

/** What heat or cold that was told does to them; "" in mild weather. */
function weather({ lifeInHeat, lead, lithium }: BatteryType, airC = 20): string {
  if (lifeInHeat !== undefined)
    return `In that heat lead-acid lasts about ${decimals(lifeInHeat * 100, 0)} % as long.`;
  return airC > coldC
    ? ''
    : `At freezing lead still gives about ${decimals(lead.atFreezing * 100, 0)} % of its label, lithium ${decimals(lithium.atFreezing * 100, 0)} %.`;
}

/** Words for AGM against lithium. */
export function answerBatteryType(result: BatteryType, setting: RequestContext): Reply {
  // "So my 100 is really a 50?" asks why as much.
  const isWhy = (setting.parsed.cues.has('ask-why') || setting.claims.length > 0) && result.isOneSize;
  const [headline, ...lines] = isWhy ? why(result) : compared(result, setting.parsed.facts.ambientC);
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
    lines: lines.filter(Boolean),
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
