import type { Reply } from '#answer/reply.ts';
import { sentence } from '#answer/say.ts';
import { likelyOf } from '#engine/explore.ts';
import { isLarge } from '#engine/solar/module.ts';
import { wire, wiringAssumptions } from '#engine/solar/wiring.ts';
import type { ParsedMessage } from '#language/reading.ts';
import { plain } from '#quantity/round.ts';
import { figure } from '../../figures.ts';
import { spotted } from '../../spotting.ts';
import { blocksOf } from '../../sun.ts';
import type { SolarWiring, WiringFacts } from '../compute.ts';

/** Solar controllers as sold, A. Common practice. */
const sizesA = [10, 15, 20, 30, 40, 50, 60, 80, 100] as const;
/** Cold clear noons and cloud edges pass a label by so much. Common practice. */
const room = 1.1;
/** An MPPT is worth its price from here on, W of panel, or where it brings so many times a PWM's amps. Common practice. */
const worth = { powerW: 150, share: 1.35 } as const;

const asked = {
  size: [
    'size|big|amp|amps|rating|which|what controller|regulator|mppt|pwm -series -parallel -pwm_or_mppt -mppt_or_pwm -want',
  ],
  kind: ['pwm mppt', 'mppt worth|better', 'is_it_worth|worth_it -tilt* -series'],
  together: ['together|both|same|one|add|second|mix* controller|regulator|it -series -size'],
} as const;

const isAsked = (what: keyof typeof asked, { recognised }: Pick<ParsedMessage, 'recognised'>): boolean =>
  spotted(recognised.words, asked[what], pattern => [pattern]) !== undefined;

const upTo = (amps: number): number => sizesA.find(size => size >= room * amps) ?? Math.ceil(amps / 20) * 20;

/** What a PWM and an MPPT bring of the panels, A in full sun. */
function ofBoth(facts: WiringFacts, inSeries: number) {
  const about = {
    panels: facts.solar,
    blocks: blocksOf({ ...facts, arrangement: undefined }),
    isShaded: false,
    coldestC: 20,
  };
  const likely = likelyOf(wiringAssumptions(about));
  const amps = (controller: 'pwm' | 'mppt', strings: number): number =>
    wire({ ...about, controller }, strings, likely).chargeCurrent;
  return { pwmA: amps('pwm', 1), mpptA: amps('mppt', inSeries) };
}

/** The answer with what was asked of the controller in its first line: its amps, its kind, whether all go on one. */
export function controllerAsked(
  facts: WiringFacts,
  result: SolarWiring,
  parsed: Pick<ParsedMessage, 'recognised'>,
  reply: Reply,
): Reply {
  const { figures, plate, fit, inSeries, count } = result;
  const amps = figures.chargeCurrent.value;
  const powerW = facts.solar.reduce((sum, panel) => sum + panel.count * (panel.powerW ?? 0), 0);
  const own = sentence(reply.headline.replace(/^Yes, /, ''));
  const below = { ...reply, lines: [own, ...(reply.lines ?? [])].slice(0, 4) };
  if (fit === 'no' || powerW <= 0 || amps <= 0) return reply;
  if (isAsked('kind', parsed)) {
    const { pwmA, mpptA } = ofBoth(facts, inSeries);
    const isWorth = powerW >= worth.powerW || mpptA > worth.share * pwmA || isLarge(facts.solar);
    return {
      ...below,
      headline: isWorth
        ? `MPPT: about ${plain(mpptA)} A at best from ${plain(powerW)} W, against ${plain(pwmA)} A with a PWM.`
        : `A PWM will do for ${plain(powerW)} W: about ${plain(pwmA)} A at best, an MPPT ${plain(mpptA)} A for more money.`,
      lines: [
        'An MPPT turns spare volts into amps, most in the cold; it also takes panels of more volts, or in series.',
        ...(reply.lines ?? []).slice(0, 2),
      ],
      verdict: null,
      figures: { ...reply.figures, ...figuresOf(pwmA, mpptA) },
    };
  }
  if (plate.ratedA === undefined && isAsked('size', parsed))
    return {
      ...below,
      headline: `A ${upTo(amps)} A controller: ${plain(powerW)} W gives up to ${plain(amps)} A into a ${result.systemV} V battery.`,
      verdict: null,
    };
  if (
    plate.ratedA === undefined &&
    count > 1 &&
    facts.arrangement === undefined &&
    isAsked('together', parsed)
  )
    return {
      ...below,
      headline: `Yes, if it is rated for ${upTo(amps)} A or more: together they give up to ${plain(amps)} A.`,
      lines: below.lines.filter(line => !line.startsWith('About ')),
      verdict: 'yes',
    };
  return reply;
}

const figuresOf = (pwmA: number, mpptA: number) => ({
  pwmCurrent: figure({ value: pwmA, low: pwmA, high: pwmA }, 'A'),
  mpptCurrent: figure({ value: mpptA, low: mpptA, high: mpptA }, 'A'),
});
