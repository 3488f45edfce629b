import type { Reply } from '#answer/reply.ts';
import { quarters } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import { applianceOf } from '#catalog/appliances.ts';
import { decimals, significant } from '#quantity/round.ts';
import { powerBankCellV, powerBankShare } from '#rig/cell.ts';
import { reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { isSpotted } from '../spotting.ts';
import { describeBank } from '../words.ts';
import type { RunTime, RunTimeFacts } from './compute.ts';

/**
 * What a full charge takes from the battery, Wh: likely, low, high. Phones hold 15 to 19 Wh (4000 to 5000 mAh at
 * 3.85 V), tablets 28 to 40, laptops 45 to 75, drones 30 to 60; a fifth is lost on the way. Makers' sheets, from memory.
 */
const perCharge: Readonly<Record<string, readonly [likelyWh: number, lowWh: number, highWh: number]>> = {
  phone: [20, 15, 25],
  tablet: [40, 30, 50],
  laptop: [75, 55, 95],
  drone: [55, 40, 80],
};

const asksCharges: readonly string[] = [
  'how_many|how_often|how_much times|charges|recharges|fills|top_ups',
  'how_many phones|phone|tablets|laptops|drones',
];
const asksFills: readonly string[] = [
  'how_many fill|charge|charges|recharge|times|top_up -days -nights -hours',
];
const powerBank: readonly string[] = ['power_bank*|powerbank*|powerbrick|mah'];

const asksBrews: readonly string[] = [
  'how_many brew*|boil*|cuppa*|cup|cups|kettle|kettles|coffee*|tea|teas|jug|jugs|litre*|times',
];

/** What a litre from 15 °C to the boil takes from the battery, Wh: 99 in the water, a tenth lost each in kettle and inverter. */
const boilWh = 122;
const cupL = 0.25;

/** How many cups a battery boils. */
function answerBrews({ figures, bank }: RunTime, setting: RequestContext): Reply {
  const litres = (figures.usableCapacity.value * bank.voltageV) / boilWh;
  return {
    headline: `About ${significant(litres / cupL, 2)} cups, ${significant(litres, 2)} litres boiled in all.`,
    lines: [
      `${describeBank(bank, setting)} gives you about ${decimals(figures.usableCapacity.value * bank.voltageV, 0)} Wh to use; a litre takes about ${boilWh} Wh, losses and all.`,
      'Boil only what you drink; gas does it for nothing from the battery.',
    ],
    verdict: null,
    next: ['show the working'],
  };
}

/** How many times it fills a thing whose own Wh are told. */
function answerFills({ figures }: RunTime, name: string): Reply {
  const { value, low, high } = figures.runTime;
  const times = (hours: number): string => quarters(Math.floor(hours / 12) / 2);
  return {
    headline: `About ${times(value)} in all${times(low) === times(high) ? '' : ` (${times(low)}–${times(high)})`}, losses counted.`,
    lines: [`A ${name} that isn’t empty takes less.`],
    verdict: null,
    next: ['show the working'],
  };
}

/** Words for how many times a battery fills a phone or the like, where that is asked; undefined for all else. */
export function answerCharges(
  facts: RunTimeFacts,
  result: RunTime,
  setting: RequestContext,
): Reply | undefined {
  const { words } = setting.parsed.recognised;
  const [load, other] = facts.loads ?? [];
  const id = load && applianceOf(load.name)?.id;
  const charge = id === undefined ? undefined : perCharge[id];
  if (load && !other && /kettle|jug/i.test(load.name) && isSpotted(words, asksBrews))
    return { ...answerBrews(result, setting), ...reasons(result) };
  if (load && !other && load.energyWhPerDay !== undefined && load.count === 1 && isSpotted(words, asksFills))
    return { ...answerFills(result, load.name), ...reasons(result) };
  const isAsked = isSpotted(words, asksCharges);
  if (!load || other || id === undefined || !charge || !isAsked) return undefined;
  const [battery] = facts.batteries;
  const isBank =
    battery?.capacityAh !== undefined && (battery.isOfCell === true || isSpotted(words, powerBank));
  const givesWh = isBank
    ? present(battery?.capacityAh) * powerBankCellV * powerBankShare
    : result.figures.usableCapacity.value * result.bank.voltageV;
  const [likelyWh, lowWh, highWh] = charge;
  const n = (eachWh: number): string => {
    const times = givesWh / eachWh;
    return times < 10 ? quarters(Math.floor(2 * times) / 2) : significant(times, 2);
  };
  const [least, most] = [n(highWh), n(lowWh)];
  const gives = isBank
    ? `Its mAh are told at a 3.7 V cell: it gives about ${decimals(givesWh, 0)} Wh.`
    : `${describeBank(result.bank, setting)} gives you about ${decimals(givesWh, 0)} Wh to use.`;
  return {
    headline: `About ${n(likelyWh)} full ${id} charges (${least}–${most}).`,
    lines: [gives, `A ${id} takes about ${decimals(likelyWh, 0)} Wh from empty to full, losses and all.`],
    verdict: null,
    ...(isBank ? {} : reasons(result)),
    next: ['what is a watt hour?', 'show the working'],
  };
}
