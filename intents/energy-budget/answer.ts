import type { Reply } from '#answer/reply.ts';
import { rounded, sentence, span } from '#answer/say.ts';
import { decimals, plain, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { readingNote } from '../use.ts';
import { describeBank } from '../words.ts';
import { askedHeadline } from './asked.ts';
import type { EnergyBudget } from './compute.ts';

const shown = 6;

/** "Fridge 45.6 Ah, laptop 10 Ah, 2 × light 1.3 Ah." */
function breakdown({ parts }: EnergyBudget): string | undefined {
  if (parts.length < 2) return undefined;
  const told = parts.slice(0, shown).map(({ load, chargeAh }) => {
    const many = load.count > 1 ? `${load.count}${load.name.endsWith('s') ? '' : ' ×'} ` : '';
    return `${many}${load.name} ${plain(chargeAh)} Ah`;
  });
  const restAh = parts.slice(shown).reduce((sum, part) => sum + part.chargeAh, 0);
  return sentence(`${[...told, ...(restAh > 0 ? [`the rest ${plain(restAh)} Ah`] : [])].join(', ')}.`);
}

/** Which load to look at first, where one outweighs the others. */
function biggest({ parts, explored }: EnergyBudget): string | undefined {
  const [first] = parts;
  if (!first || parts.length < 3) return undefined;
  const share = first.chargeAh / explored.figures.dailyUse.value;
  if (share < 0.4) return undefined;
  return `The ${first.load.name} alone takes ${decimals(share * 100, 0)} % of it.`;
}

/** Words for a day's use. */
export function answerEnergyBudget(facts: Facts, result: EnergyBudget, setting: RequestContext): Reply {
  const { dailyUse, dailyEnergy } = result.explored.figures;
  const range = dailyUse.high - dailyUse.low > 0.05 * dailyUse.value;
  const spread = range ? ` (${span(dailyUse.low, dailyUse.high, 'Ah')})` : '';
  const { bank, days, dayIn } = result;
  const note = readingNote(facts);
  const lines = [
    breakdown(result),
    note ?? biggest(result),
    bank && days
      ? `${describeBank(bank, setting)} carries that for about ${decimals(days, 1)} days with nothing coming in.`
      : `For each day without charging you need about ${rounded(dayIn.agmAh)} Ah of AGM or ${rounded(dayIn.lfpAh)} Ah of lithium.`,
  ];
  return {
    headline: askedHeadline(result, setting) ?? `About ${rounded(dailyUse.value)} Ah a day${spread}.`,
    lines: lines.filter(line => line !== undefined).slice(0, 3),
    verdict: null,
    figures: { dailyUse: figure(dailyUse, 'Ah'), dailyEnergy: figure(dailyEnergy, 'Wh') },
    ...reasons(result.explored),
    chart:
      result.parts.length > 1
        ? () => ({
            kind: 'bars',
            title: `A day: about ${significant(dailyUse.value)} Ah`,
            note: `${decimals(dailyEnergy.value, 0)} Wh at ${decimals(result.voltageV, 1)} V; biggest first`,
            unit: 'Ah',
            bars: result.parts.map(({ load, chargeAh }) => ({
              name: load.count > 1 ? `${load.count} × ${load.name}` : load.name,
              value: chargeAh,
            })),
          })
        : undefined,
    cautions: loadCautions(facts, bank),
    next: [
      bank ? 'how long will it last?' : 'what battery do I need?',
      'what solar do I need?',
      'show the working',
    ],
  };
}
