import type { Reply } from '#answer/reply.ts';
import { rounded, sentence, span } from '#answer/say.ts';
import { plain, significant } from '#quantity/round.ts';
import { loadCautions } from '../cautions.ts';
import { enough, figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { isSpotted } from '../spotting.ts';
import { describeSun, saidOfSun, sunHint, whereAndWhen, whosePanels } from '../sun.ts';
import { monthsChart } from './chart.ts';
import type { SolarYield, SolarYieldFacts } from './compute.ts';

/** Tilting is worth a word from this gain on. */
const worthTilting = 1.12;

function headline(facts: SolarYieldFacts, result: SolarYield, setting: RequestContext): string {
  const { dailyYield: ah } = result.figures;
  const panels = `${whosePanels(setting)}${significant(result.powerW)} W`;
  if (result.tooLowV !== undefined)
    return `Nothing: ${plain(result.tooLowV)} V open circuit is too little to charge a ${12 * (result.sun.blocks ?? 1)} V battery.`;
  if (ah.high < 0.05) return `Nothing: the sun doesn't rise${whereAndWhen(facts, result.sun)}.`;
  return sentence(
    `${panels} makes about ${rounded(ah.value)} Ah a day (${span(ah.low, ah.high, 'Ah')})${whereAndWhen(facts, result.sun)}.`,
  );
}

/** Words that ask whether it is enough for what runs, not what it makes. */
const ofEnough: readonly string[] = [
  'will|can|could|would|does|do|is|enough keep|keeps|run|runs|power|cope|cover|carry|manage|enough|keep_up|up_with|handle|feed -how_much -how_many -what',
];

/** How the first line opens where it is asked whether it is enough. */
const opens = { yes: 'Yes', tight: 'Only just', short: 'Hardly', no: 'No' } as const;

/** Characters of a first line. */
const firstLine = 100;

/** The first line with yes or no, where that is asked; where that makes it too long, without its range. */
function opened(
  said: string,
  result: SolarYield,
  verdict: 'yes' | 'tight' | 'no' | null,
  { parsed }: RequestContext,
): string {
  if (!verdict || parsed.cues.has('ask-how-much') || !isSpotted(parsed.recognised.words, ofEnough))
    return said;
  const isShort = verdict === 'tight' && result.figures.surplus.value < 0;
  const whole = `${opens[isShort ? 'short' : verdict]}: ${said}`;
  const { low, high } = result.figures.dailyYield;
  return whole.length > firstLine ? whole.replace(` (${span(low, high, 'Ah')})`, '') : whole;
}

/** Whether it covers the use, in words. */
function balance({ figures }: SolarYield, verdict: 'yes' | 'tight' | 'no'): string {
  const use = `${plain(figures.dailyUse.value)} Ah a day`;
  if (verdict === 'yes') return `Yes, that covers your ${use}, losses in the battery counted.`;
  if (verdict === 'tight') return `That is close to your ${use}: a run of cloud leaves you short.`;
  const storedAh = figures.dailyUse.value + figures.surplus.value;
  return `That doesn't cover your ${use}: what charging loses taken off, it puts back about ${plain(storedAh)} Ah, ${plain(-figures.surplus.value)} Ah a day short.`;
}

/** Below this share of its watts a panel is wasted on a PWM controller. */
const wastedBelow = 0.62;

/** Where a PWM controller leaves much of the panel lying. */
function pwmHint({ sun, fullPowerV, batteryV, isMaybeRoofPanel }: SolarYield): string | undefined {
  if (sun.controller !== 'pwm') return undefined;
  if (fullPowerV !== undefined && batteryV / fullPowerV < wastedBelow)
    return `At about ${plain(fullPowerV)} V a PWM loses ${plain(100 * (1 - batteryV / fullPowerV))} % of the panel: an MPPT suits it.`;
  return isMaybeRoofPanel
    ? 'If that is one panel for a roof (30 V and more), a PWM gives hardly half of this; its label tells the volts.'
    : undefined;
}

/** What helps, most useful first. */
function hints(facts: SolarYieldFacts, result: SolarYield): string[] {
  const { figures, sun, tiltedAh, capacityAh } = result;
  const gain = tiltedAh === undefined ? 1 : tiltedAh / figures.dailyYield.value;
  return [
    sun.shade && sun.shade !== 'none'
      ? 'Shade is a guess: even a little on one corner can halve a panel.'
      : undefined,
    result.tooLowV === undefined
      ? pwmHint(result)
      : 'It takes more panels in series, or ones with more volts.',
    sunHint(facts, sun),
    gain > worthTilting
      ? `Angled at the sun, it would make about ${plain(100 * (gain - 1))} % more.`
      : undefined,
    capacityAh !== undefined && figures.dailyYield.value > capacityAh / 2
      ? 'A battery that is nearly full takes less than that.'
      : undefined,
  ].filter(hint => hint !== undefined);
}

/** What of it can be used, as a battery gives back less than goes in. */
const stored = ({ storedAh, storedIn }: SolarYield): string =>
  `Plan on about ${rounded(storedAh)} Ah a day with ${storedIn === 'lfp' ? 'a lithium battery' : 'an AGM or wet battery'}: the rest is lost in charging.`;

/** Words for a day's yield. */
export function answerSolarYield(facts: SolarYieldFacts, result: SolarYield, setting: RequestContext): Reply {
  const { figures, sun } = result;
  const { parsed } = setting;
  const hasUse = figures.dailyUse.value > 0;
  const isAsked =
    hasUse && (parsed.cues.has('ask-can-it') || !!parsed.facts.loads || !!parsed.facts.dailyUseAh);
  const verdict = isAsked ? enough(figures.surplus, 0) : null;
  const lines = [
    ...(verdict ? [balance(result, verdict)] : []),
    ...(figures.peakSunHours.value > 0 ? [describeSun(facts, sun, figures.peakSunHours.value)] : []),
    ...(verdict || figures.dailyYield.value < 1 ? [] : [stored(result)]),
    ...hints(facts, result),
  ];
  return {
    headline: opened(headline(facts, result, setting), result, verdict, setting),
    lines: lines.slice(0, 4),
    verdict,
    figures: {
      dailyYield: figure(figures.dailyYield, 'Ah'),
      dailyYieldEnergy: figure(figures.dailyYieldEnergy, 'Wh'),
      peakSunHours: figure(figures.peakSunHours, 'h'),
      ...(isAsked && { dailyUse: figure(figures.dailyUse, 'Ah') }),
    },
    ...reasons(result),
    ...(figures.peakSunHours.value > 0 && { assumedInLines: saidOfSun }),
    chart: monthsChart(facts, result, setting),
    cautions: isAsked ? loadCautions(facts) : [],
    next: [
      sun.sky === 'overcast' ? 'what if it is sunny?' : 'what if it is overcast?',
      sun.mount === 'tilted' ? 'and flat?' : 'and tilted?',
      'show the working',
    ],
  };
}
