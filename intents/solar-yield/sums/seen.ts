import type { Reply } from '#answer/reply.ts';
import { rounded } from '#answer/say.ts';
import type { SolarCase } from '#engine/solar/model.ts';
import { plain } from '#quantity/round.ts';
import { figure } from '../../figures.ts';
import type { RequestContext } from '../../intent.ts';
import { bestWOf, chargingV, fineShare, ofPanelAmps } from '../../panel-amps.ts';
import { isSpotted } from '../../spotting.ts';
import { blocksOf, panelsW, sunOf } from '../../sun.ts';
import { computeSolarYield, type SolarYieldFacts } from '../compute.ts';

/** What a controller or monitor shows of panels at a moment. */
export interface PanelReading {
  readonly value: number;
  readonly unit: 'A' | 'W';
  /** The most that they give in full sun, in the same unit. */
  readonly best: number;
  readonly powerW: number;
}

/** Words that ask whether a reading is as it should be. */
const asksRight = [
  'right|normal|broken|wrong|dudded|ripped|ok|okay|low|faulty|bad|only|dodgy|thats_it|is_that_it|poor|good|fair|why -will -how_many -how_much',
] as const;

/** Words that ask for the most it gives, at a moment and not over a day. */
const asksBest = [
  'amps|amp|watts|current midday|mid_day|noon|lunchtime|lunch|full_sun|peak|at_best|at_most|maximum|max -a_day -per_day -ah -day -how_long -fuse -cable -controller',
  'most amps|amp|watts|current puts|put|give|gives|make|makes|see|get|show -a_day -per_day -ah -day -how_long -fuse -cable -controller',
  'how_many|what amps|amp|watts|current should|would|supposed|expect see|seeing|show|showing|read|reading|be_getting|getting -a_day -per_day -ah -day -how_long -fuse -cable -winter',
] as const;
/** A controller that reads full sun. */
const asksReading = [
  'what|how_many|how_much controller|monitor|meter|display read|show|say full_sun|midday|noon|lunchtime|lunch -a_day -per_day -ah -day',
] as const;

/** Words beside which amps are those of a day, of another sky or of other gear. */
const notAmps =
  '-a_day -per_day -daily -ah -amp_hours -day -days -today -hour -hours -week -back -need -needs -how_long -fuse -cable -wire -controller -winter -cloud* -overcast -shade* -rain -draw -pull -use -left';
/** Words that ask what amps it makes, at no moment told. */
const asksAmps = [
  `how_many|what|how_much|wot amps|amp|current make|makes|making|produce|produces|put_out|puts_out|putting_out|give|gives|giving|pump|pumps|generate|generates|push|pushes|deliver|delivers|supply|get|come|comes ${notAmps}`,
  `amps|amp|current from|out_of|off|of panel|panels|solar|blanket ${notAmps}`,
] as const;

const asksNoon = [...asksBest, ...asksReading];

/** The subject of words that ask for amps, not for Ah a day. */
export const panelAmpsIn = (words: readonly string[]): string | undefined =>
  isSpotted(words, [...asksNoon, ...asksAmps]) ? ofPanelAmps : undefined;

/** Whether it is amps that are asked for: of a place, a month or a sky those of noon alone tell less than a day's. */
const isBestAsked = (
  { place, latitudeDeg, month, sky, shade, loads, netCurrentA }: SolarYieldFacts,
  words: readonly string[],
): boolean =>
  isSpotted(words, asksNoon) ||
  (isSpotted(words, asksAmps) &&
    (place ?? latitudeDeg ?? month ?? sky ?? shade ?? loads ?? netCurrentA) === undefined);

/** What a panel gives about clear noon, where that is asked; undefined: it isn't. */
export function bestOf(facts: SolarYieldFacts, setting: RequestContext): Reply | undefined {
  const { parsed, at } = setting;
  const powerW = panelsW(facts);
  if (powerW === undefined || !isBestAsked(facts, parsed.recognised.words)) return undefined;
  const sun = sunOf(facts, at);
  const { figures, tooLowV } = computeSolarYield(facts, setting);
  if (tooLowV !== undefined) return undefined;
  const bestW = bestWOf(powerW, sun);
  const amps = bestW / (chargingV * blocksOf(facts));
  return {
    headline: `About ${plain(share.fine * amps)} to ${plain(amps)} A about clear noon${sun.controller ? ` on ${sun.controller === 'pwm' ? 'a PWM' : 'an MPPT'} controller` : ''}: ${plain(powerW)} W give some ${plain(bestW)} W at best.`,
    lines: [
      ...(sun.controller === undefined ? [onPwm(powerW, sun, blocksOf(facts))] : []),
      `Over a day it comes to about ${rounded(figures.dailyYield.value)} Ah.`,
      'Less in winter, in haze, or with the panel flat or hot. A nearly full battery takes less, too.',
    ],
    verdict: null,
    figures: {
      best: figure({ value: amps, low: amps * share.fine, high: amps }, 'A'),
      dailyYield: figure(figures.dailyYield, 'Ah'),
    },
    next: [`what does a ${plain(powerW)}W panel make a day?`],
  };
}

/** Words that a reading stands beside. */
const shows = [
  'give|show|shows|showing|see|seeing|get|getting|read|reads|says|gives|giving|display|displays|puts|putting|makes|making|peaks',
] as const;

/** Shares of full sun's best: from the first on all is well, under the second something is wrong. Common practice. */
const share = { fine: fineShare, poor: 0.35 } as const;

/** The same on the other kind of controller. */
function onPwm(powerW: number, sun: SolarCase, blocks: number): string {
  const pwm = { ...sun, controller: 'pwm' } as const;
  const amps = bestWOf(powerW, pwm) / (chargingV * blocks);
  return `That’s on an MPPT controller; a PWM gives about ${plain(amps)} A at best.`;
}

/** A reading that was told with the panels' rating, and asked about; undefined: none. */
export function seenOf(
  facts: SolarYieldFacts,
  { parsed, recalled, at, subject }: RequestContext,
): PanelReading | undefined {
  const { words, mentions } = parsed.recognised;
  const powerW = panelsW(facts);
  // Read after what they should give was told.
  const isHeld = subject === 'reading' && parsed.facts.netCurrentA !== undefined;
  if (powerW === undefined || !(isHeld || isSpotted(words, asksRight))) return undefined;
  const sun = sunOf(facts, at);
  const bestW = bestWOf(powerW, sun);
  if (facts.netCurrentA !== undefined && facts.netCurrentA > 0 && !recalled.has('netCurrentA'))
    return { value: facts.netCurrentA, unit: 'A', best: bestW / (chargingV * blocksOf(facts)), powerW };
  const shownA = !isSpotted(words, shows)
    ? undefined
    : mentions.find(({ dimension, value }) => dimension === 'current' && value > 0)?.value;
  if (shownA !== undefined)
    return { value: shownA, unit: 'A', best: bestW / (chargingV * blocksOf(facts)), powerW };
  // "says 160 watts but the controller only shows 90": a second figure under the rating is what it shows.
  const shown = (!isSpotted(words, shows) ? [] : mentions)
    .filter(
      ({ kind, dimension, value }) =>
        (kind === 'number' || (kind === 'amount' && dimension === 'power')) && value >= 10 && value < powerW,
    )
    .at(-1);
  return shown && mentions.some(({ value }) => value === powerW)
    ? { value: shown.value, unit: 'W', best: bestW, powerW }
    : undefined;
}

/** Whether what is seen is as it should be. */
export function answerSeen({ value, unit, best, powerW }: PanelReading): Reply {
  const part = value / best;
  const figures = { best: figure({ value: best, low: best * share.fine, high: best }, unit) };
  const most = `${plain(powerW)} W give about ${plain(best)} ${unit} at best`;
  const causes =
    'Look for shade first, even on a corner, then at dirt, the angle and the plugs; in cloud it is normal.';
  const full = 'A nearly full battery takes less: switch something big on, and the reading must rise.';
  if (part >= share.fine)
    return {
      headline: `Yes, about right: ${plain(value)} ${unit} is fine, as ${most}.`,
      lines: ['The label is a cold laboratory’s: heat, a flat roof and haze take a third of it.'],
      verdict: 'yes',
      figures,
    };
  return part >= share.poor
    ? {
        headline: `A bit low for clear noon: ${plain(value)} ${unit}, as ${most}. Flat, hot or hazy does it.`,
        lines: [full, causes],
        verdict: 'tight',
        figures,
      }
    : {
        headline: `Low for clear noon: ${plain(value)} ${unit}, as ${most}.`,
        lines: [full, causes],
        verdict: 'no',
        figures,
        next: ['my panel makes too little'],
      };
}
