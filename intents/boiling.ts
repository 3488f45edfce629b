import type { Mention } from '#language/recognise/mention.ts';
import { decimals, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import type { Aside } from './asides.ts';
import { amountsOf } from './figures-told.ts';
import { isSpotted } from './spotting.ts';

/** A litre from 15 °C to the boil: 4.19 kJ a kelvin and litre, and a tenth lost by the kettle (physics; common practice). */
const boilWh = 110;
/** What an inverter makes of its battery's power. Makers' sheets that agree. */
const inverterShare = 0.9;
/** A 12 V battery that is drawn on, V. */
const drawnV = 12.5;
/** Up to so many watts a kettle is one for 12 V, and a usual one has so many. Common practice. */
const small = { mostW: 350, usualW: 150 } as const;

/** The watts of a kettle, where they are told; a usual one for 12 V else. */
function kettleIn({ loads = [] }: Facts, mentions: readonly Mention[]): number {
  const told = loads.find(({ name }) => /kettle|jug/i.test(name));
  return (
    told?.powerW ?? amountsOf(mentions, 'power')[0]?.value ?? ((told?.currentA ?? 0) * drawnV || small.usualW)
  );
}

/** Other measures of water, as they follow a number: litres of each. */
const measures: ReadonlyMap<string, number> = new Map([
  ['ml', 0.001],
  ['mls', 0.001],
  ['cup', 0.25],
  ['cups', 0.25],
  ['mug', 0.3],
  ['mugs', 0.3],
]);

/** Litres told; undefined where none are. */
function toldLitres(mentions: readonly Mention[]): number | undefined {
  const amount = amountsOf(mentions, 'other').find(({ unit }) => unit === 'L');
  if (amount) return amount.value;
  const at = mentions.findIndex(
    ({ kind }, i) => kind === 'number' && measures.has(mentions[i + 1]?.key ?? ''),
  );
  const [number, measure] = mentions.slice(at, at + 2);
  return at < 0 || !number || !measure ? undefined : number.value * (measures.get(measure.key) ?? 1);
}

/** Minutes as they are said: to five from twelve on. */
const minutesOf = (minutes: number): string =>
  decimals(minutes < 12 ? minutes : 5 * Math.round(minutes / 5), 0);

/** "About 45 minutes and 9 Ah for 1 L at 150 W." */
function boils(facts: Facts, mentions: readonly Mention[]): string {
  const powerW = kettleIn(facts, mentions);
  const litres = toldLitres(mentions) ?? 1;
  const energyWh = boilWh * litres;
  const isMains = powerW > small.mostW;
  const usedAh = energyWh / (isMains ? inverterShare : 1) / drawnV;
  const through = isMains ? ' by inverter' : '';
  return `About ${minutesOf((60 * energyWh) / powerW)} minutes and ${significant(usedAh, usedAh < 10 ? 1 : 2)} Ah of 12 V${through}, for ${significant(litres)} L at ${decimals(powerW, 0)} W.`;
}

/** How long water takes to boil, and what of the battery: by the water, whatever boils it. */
export const boiling: readonly Aside[] = [
  {
    name: 'time-to-boil',
    isAsked: 'for-sure',
    spots: [
      'boil|boils|boiling how_long|how_many_minutes|how_many_mins|how_many_amp|how_many_ah|how_much_battery|time|take|takes|amp_hours|ah -egg* -rice -pasta -eggs -dry -last -panel* -charge',
      'kettle|jug how_long|how_many_minutes|time|litre boil|take|takes -last',
    ],
    hasAnyFigures: true,
    // What runs so many minutes is reckoned by those.
    when: (facts, { recognised: { mentions, words } }) =>
      amountsOf(mentions, 'time').length === 0 &&
      !isSpotted(words, ['gas_stove|on_gas|a_day|per_day|every_day|each_day|twice|times']) &&
      (toldLitres(mentions) !== undefined ||
        facts.loads?.some(({ name, powerW }) => /kettle|jug/i.test(name) && powerW !== undefined) === true ||
        isSpotted(words, ['boil|boils|boiling litre*|water|cup|cups'])),
    says: boils,
    lines: [
      'Half the water takes half of it. A lid helps; gas does it in a few minutes.',
      'Reckoned from 15 °C, with a tenth lost by the kettle.',
    ],
  },
];

/** The same for a question that watts and volts alone are read as. */
export const boilingBeside: readonly Aside[] = boiling.map(({ isAsked: _, ...row }) => row);
