import type { Reply } from '#answer/reply.ts';
import { listIn, rounded, sentence, span } from '#answer/say.ts';
import { english, type Speech } from '#answer/speech.ts';
import { present } from '#basics/present.ts';
import { loadCautions } from '../cautions.ts';
import { figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { describeSun, saidOfSun, sunHint, whereAndWhen } from '../sun.ts';
import { readingNote } from '../use.ts';
import type { SolarSize, SolarSizeFacts } from './compute.ts';

/** Ratings that panels, and pairs of them, come in, W. Common practice. */
const panelSizesW = [20, 40, 60, 80, 100, 120, 160, 200, 250, 300, 350, 400, 500, 600, 800, 1000];
const nextSize = (watts: number): number =>
  panelSizesW.find(size => size >= watts) ?? Math.ceil(watts / 200) * 200;

/** More than this is asked about, W: nobody carries it. */
const mostW = 2000;

/** Watts as a person says them, to two figures: 177 → 180. */
const watts = (value: number, w: Speech): string => w.significant(Number(value.toPrecision(2)));
const article = (size: number): string => (/^(8|11$|18$)/.test(String(size)) ? 'an' : 'a');

type Verdict = 'yes' | 'tight' | 'no' | null;

/** The figures that a screen can show: none where the sun doesn't rise. */
const figuresOf = ({ figures }: SolarSize) => ({
  ...(Number.isFinite(figures.panelPower.value) && { panelPower: figure(figures.panelPower, 'W') }),
  dailyUse: figure(figures.dailyUse, 'Ah'),
});

/** Why panels alone can't run it, or only by day. */
function reasonAgainst(facts: SolarSizeFacts, result: SolarSize, isAtNight: boolean, w: Speech): string {
  const { drawW, bestW, presentW } = result;
  if (presentW !== undefined && drawW > present(bestW)) {
    const names = listIn(facts.loads?.map(load => load.name) ?? [], w);
    return w.say(
      'panel-too-small',
      '{panel} W of panel gives about {best} W in full sun, and {names} draws about {draw} W.',
      {
        panel: w.significant(presentW),
        best: watts(present(bestW), w),
        names: names || w.say('that', 'that'),
        draw: watts(drawW, w),
      },
    );
  }
  return isAtNight
    ? w.say('no-sun-at-night', 'there is no sun at night, so a battery has to carry it through the dark.')
    : w.say(
        'stops-with-cloud',
        'it stops whenever a cloud or the evening takes the sun; a battery has to sit in between.',
      );
}

/** Panels alone, without a battery between: they run a thing only while the sun gives what it draws. */
function answerStraight(facts: SolarSizeFacts, result: SolarSize, setting: RequestContext): Reply {
  const { drawW, bestW, presentW, figures } = result;
  const w = english;
  const isAtNight = setting.parsed.cues.has('night');
  const falls = presentW !== undefined && drawW > present(bestW);
  const verdict = isAtNight || falls || drawW > 300 ? 'no' : 'tight';
  const reason = reasonAgainst(facts, result, isAtNight, w);
  const { panelPower, dailyUse } = figures;
  const gaps = { ah: rounded(dailyUse.value, w) };
  const sized = Number.isFinite(panelPower.value)
    ? w.say(
        'off-battery-and-panel',
        'To run it off a battery instead takes about {ah} Ah a day, and about {watts} W of panel to put that back.',
        { ...gaps, watts: watts(panelPower.value, w) },
      )
    : w.say('off-battery', 'To run it off a battery instead takes about {ah} Ah a day.', gaps);
  return {
    headline:
      verdict === 'no'
        ? w.say('no-because', 'No: {reason}', { reason })
        : w.say('only-in-sun', 'Only while the sun is on it: {reason}', { reason }),
    lines:
      falls && isAtNight
        ? [w.say('dark', 'At night there is no sun at all: a battery has to carry it.'), sized]
        : [sized],
    verdict,
    figures: figuresOf(result),
    ...reasons(result),
    cautions: loadCautions(facts),
    next: [w.say('next-battery', 'what battery do I need?'), w.say('next-working', 'show the working')],
  };
}

/** Words that ask of panels told whether they do. */
const ofEnough: ReadonlySet<string> = new Set(
  'cover covers enough plenty suffice do carry keep manage can'.split(' '),
);

/** Whether it is asked if the panels told do: "does 250 W cover it". */
const asksWhether = ({ parsed: { cues, facts, recognised } }: RequestContext): boolean =>
  cues.has('ask-can-it') ||
  (facts.solar !== undefined &&
    !cues.has('ask-what-size') &&
    !cues.has('ask-how-much') &&
    recognised.words.some(word => ofEnough.has(word)));

/** Whether the panels at hand do: yes above the range, no below it. */
function judge({ figures, presentW }: SolarSize, setting: RequestContext): Verdict {
  if (presentW === undefined || !asksWhether(setting)) return null;
  if (presentW >= figures.panelPower.high) return 'yes';
  return presentW < figures.panelPower.low ? 'no' : 'tight';
}

/** Characters of a first line. */
const firstLine = 100;

/** The first line; where a place of a long name leaves no room for it, without the range. */
function headline(
  facts: SolarSizeFacts,
  result: SolarSize,
  verdict: Verdict,
  setting: RequestContext,
  w: Speech,
): string {
  const whole = wholeHeadline(facts, result, verdict, setting, w);
  const { low, high } = result.figures.panelPower;
  return whole.length > firstLine ? whole.replace(` (${span(low, high, 'W', w)})`, '') : whole;
}

/** A usual panel of a van's roof, W. Common practice. */
const roofPanelW = 200;

/** "How many more panels". */
const asksHowMany = (words: readonly string[]): boolean => {
  const at = words.findIndex((word, i) => word === 'many' && words[i - 1] === 'how');
  return at >= 0 && words.slice(at, at + 4).includes('panels');
};

/** "Eight of 200 W" where the number was asked for. */
const severalOf = (powerW: number, { parsed }: RequestContext, w: Speech): string =>
  asksHowMany(parsed.recognised.words)
    ? w.say('so-many-panels', '{n} of {each} W', {
        n: `${Math.ceil(powerW / roofPanelW)}`,
        each: `${roofPanelW}`,
      })
    : w.say('several-panels', 'in several panels');

function wholeHeadline(
  facts: SolarSizeFacts,
  result: SolarSize,
  verdict: Verdict,
  setting: RequestContext,
  w: Speech,
): string {
  const { panelPower } = result.figures;
  const where = whereAndWhen(facts, result.sun, w);
  if (!Number.isFinite(panelPower.value))
    return w.say('no-sunrise', "No panel will do: the sun doesn't rise{where}.", { where });
  const size = nextSize(panelPower.value);
  const gaps = {
    watts: watts(panelPower.value, w),
    range: span(panelPower.low, panelPower.high, 'W', w),
    where,
    size: `${size}`,
    Article: sentence(article(size)),
    has: w.significant(result.presentW ?? 0),
  };
  if (verdict === null && panelPower.value > mostW)
    return w.say(
      'panel-past-belief',
      'That would take about {watts} W of solar{where}, more than a camp carries. Are the numbers right?',
      gaps,
    );
  if (verdict === null && size > 400)
    return w.say('panels-size', 'About {watts} W of solar ({range}){where}, {panels}.', {
      ...gaps,
      panels: severalOf(panelPower.value, setting, w),
    });
  if (verdict === null)
    return w.say('panel-size', '{Article} {size} W panel: you need about {watts} W ({range}){where}.', gaps);
  if (verdict === 'yes')
    return w.say('panel-enough', 'Yes, {has} W is enough{where}: you need about {watts} W ({range}).', gaps);
  if (verdict === 'tight' && present(result.presentW) >= panelPower.value)
    return w.say(
      'panel-on-average',
      'Tight: {has} W does on an average day{where} (you need {range}).',
      gaps,
    );
  if (verdict === 'tight')
    return w.say('panel-tight', 'Tight: you need about {watts} W ({range}){where}, and have {has} W.', gaps);
  return w.say('panel-short', 'No, {has} W is not enough{where}: you need about {watts} W ({range}).', gaps);
}

/** Whether the panels told are enough: "Your 200 W falls short of it." */
function ownPanels(watts: string, isEnough: boolean, setting: RequestContext, w: Speech): string {
  const isOwn = setting.recalled.has('solar');
  const owner = isOwn ? setting.owner : undefined;
  const gaps = { watts, owner: owner ? sentence(owner) : '' };
  if (owner)
    return isEnough
      ? w.say('owner-covers', "{owner}'s {watts} W covers it.", gaps)
      : w.say('owner-short', "{owner}'s {watts} W falls short of it.", gaps);
  if (isOwn)
    return isEnough
      ? w.say('your-covers', 'Your {watts} W covers it.', gaps)
      : w.say('your-short', 'Your {watts} W falls short of it.', gaps);
  return isEnough
    ? w.say('covers', '{watts} W covers it.', gaps)
    : w.say('falls-short', '{watts} W falls short of it.', gaps);
}

/** What the panels told, or those named, put back on an average day. */
function putsBack({ figures, presentW = 0 }: SolarSize, verdict: Verdict, w: Speech): string {
  const ah = figures.dailyUse.value;
  if (verdict === null)
    return w.say(
      'puts-back',
      'That puts back your {ah} Ah on an average day; for a few grey days in a row have spare battery.',
      { ah: w.plain(ah) },
    );
  return w.say(
    'own-puts-back',
    'Your {has} W puts back about {made} Ah on an average day; you use {ah} Ah.',
    {
      has: w.significant(presentW),
      made: w.significant((ah * presentW) / figures.panelPower.value, 2),
      ah: w.plain(ah),
    },
  );
}

/** By this much less panel angling is worth a word. */
const worthTilting = 1.12;

/** What angling the panels saves, where they are too few. */
function tilted({ figures, tiltedW }: SolarSize, verdict: Verdict, w: Speech): string | undefined {
  if (tiltedW === undefined || verdict === 'yes' || !(figures.panelPower.value > worthTilting * tiltedW))
    return undefined;
  return w.say('tilted-does', 'Angled at the sun, about {watts} W would do.', { watts: watts(tiltedW, w) });
}

/** Words for a panel size. */
export function answerSolarSize(facts: SolarSizeFacts, result: SolarSize, setting: RequestContext): Reply {
  const isStraight = setting.parsed.cues.has('carry-over') || facts.without?.includes('battery');
  if (isStraight) return answerStraight(facts, result, setting);
  const { figures, sun, presentW } = result;
  const w = english;
  const verdict = judge(result, setting);
  const hasPanels = verdict === null && presentW !== undefined && presentW !== figures.panelPower.value;
  const isDark = !Number.isFinite(figures.panelPower.value);
  const lines = [
    isDark ? undefined : putsBack(result, verdict, w),
    tilted(result, verdict, w),
    hasPanels
      ? ownPanels(w.significant(presentW), presentW >= figures.panelPower.value, setting, w)
      : undefined,
    isDark ? undefined : describeSun(facts, sun, figures.peakSunHours.value, w),
    sunHint(facts, sun, w),
    readingNote(facts, w),
  ].filter(line => line !== undefined);
  return {
    headline: headline(facts, result, verdict, setting, w),
    lines: lines.slice(0, 4),
    verdict,
    figures: figuresOf(result),
    ...reasons(result),
    ...(!isDark && { assumedInLines: saidOfSun }),
    cautions: loadCautions(facts),
    next: [
      sun.controller === 'pwm' ? w.say('next-mppt', 'what if mppt?') : w.say('next-pwm', 'what if pwm?'),
      sun.sky === 'overcast'
        ? w.say('next-sunny', 'what if it is sunny?')
        : w.say('next-overcast', 'what if it is overcast?'),
      w.say('next-working', 'show the working'),
    ],
  };
}
