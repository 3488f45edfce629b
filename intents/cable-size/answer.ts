import type { Verdict } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import type { CautionCode } from '#answer/words/en.ts';
import { gaugeName } from '#quantity/gauge.ts';
import { plain, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { isAskedAgainst } from '../asked-against.ts';
import { figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { cableChart } from './chart.ts';
import { type CableSize, nextThicker } from './compute.ts';

/** From here on the current can start a fire in a poor joint, A. */
const bigA = 60;

const square = (areaMm2: number): string => `${significant(areaMm2, areaMm2 < 10 ? 2 : 3)} mm²`;
/** 4/0, the thickest that shops sell. */
const thickestSold = -3;
const both = (gauge: number): string =>
  gauge < thickestSold
    ? 'several side by side; better put the gear closer, or use 24 V'
    : gaugeName(gauge).replace(' AWG', ' B&S (AWG)');

/** Cable and fuse of a fuel heater are for its start. */
const glowing = 'Its glow plug draws about 10 A for some minutes as it starts: the size is for that.';

/** "16 mm²", "10 B&S (AWG)". */
function name({ conductor }: CableSize): string {
  if (conductor.as === 'gauge') return both(conductor.size);
  if (conductor.as === 'auto') return `${significant(conductor.size)} mm auto cable`;
  return square(conductor.areaMm2);
}

/** The size as one types it: "6mm2", "8 AWG". */
const onCable = ({ conductor }: CableSize): string =>
  conductor.as === 'gauge' ? gaugeName(conductor.size) : `${significant(conductor.areaMm2)}mm2`;

/** The size in the other measure: a line of its own. */
function otherwise({ conductor, gauge, isGiven }: CableSize): string {
  if (conductor.as !== 'metric') return `That is ${square(conductor.areaMm2)} of copper.`;
  return `In the shop: ${isGiven ? 'about ' : ''}${both(gauge)}.`;
}

function drops(result: CableSize): string {
  const { voltageDrop, voltageDropPercent } = result.figures;
  return `${significant(voltageDrop.value, 2)} V (${significant(voltageDropPercent.value, 2)} % of ${significant(result.voltageV)} V) ${run(result)}`;
}

/** "20 A over 4 m". */
const run = ({ figures, lengthM }: CableSize): string =>
  `at ${plain(figures.current.value)} A over ${significant(lengthM)} m`;

/** What is lost, as a first line has room for it: "3.1 % (0.37 V)". */
const lost = ({ figures: { voltageDrop, voltageDropPercent } }: CableSize): string =>
  `${significant(voltageDropPercent.value, 2)} % (${significant(voltageDrop.value, 2)} V)`;

/** Does the cable that was told do? Tight where "6 mm" may be auto cable, and that does otherwise. */
const judge = (result: CableSize): Exclude<Verdict, null> =>
  isAutoDoubt(result) ? 'tight' : judgeAlone(result);

/** Whether it does as real mm² and not, or only just, as auto cable. */
const isAutoDoubt = (result: CableSize): boolean =>
  result.asAuto !== undefined && judgeAlone(result) === 'yes' && judgeAlone(result.asAuto) !== 'yes';

function judgeAlone({ figures, limitPercent, carriesA, doesFuseFit }: CableSize): Exclude<Verdict, null> {
  const { low, high, value } = figures.voltageDropPercent;
  if (figures.continuous.value > carriesA || low > limitPercent) return 'no';
  // A limit is no knife: within a tenth of it is tight.
  return high > limitPercent * 1.1 || value > limitPercent || !doesFuseFit ? 'tight' : 'yes';
}

/** It carries less than runs through it. */
const isTooHot = ({ figures, carriesA }: CableSize): boolean => figures.continuous.value > carriesA;

/** How a verdict opens, where it is asked whether the cable does, and whether it is too thin. */
const openings = {
  for: { yes: 'Yes', tight: 'Tight', no: 'No' },
  against: { yes: 'That’s fine', tight: 'Tight', no: 'No, too thin' },
} as const;

function headline(result: CableSize, verdict: Verdict, isAutoAsked: boolean, isAgainst: boolean): string {
  if (isAutoAsked && result.square)
    return `No: ${significant(result.conductor.size)} mm auto cable is measured outside and holds about ${square(result.conductor.areaMm2)} of copper.`;
  if (!result.isGiven)
    return result.isTooMuch
      ? `No single cable sold does it: even ${name(result)} loses ${drops(result)}.`
      : `${name(result)}: it loses ${lost(result)} ${run(result)}.`;
  if (verdict === null) return `The drop is about ${drops(result)} on ${name(result)}.`;
  if (verdict === 'no' && isTooHot(result))
    return `${openings[isAgainst ? 'against' : 'for'].no}: ${name(result)} gets hot at ${plain(result.figures.continuous.value)} A; it is good for about ${plain(result.carriesA)} A.`;
  const opening = openings[isAgainst ? 'against' : 'for'][verdict];
  return `${opening}: ${name(result)} loses ${lost(result)} ${run(result)}.`;
}

/** "40 A fuse (blade)". */
const fuseName = ({ fuseA, fuseType }: CableSize): string => `${plain(fuseA)} A fuse (${fuseType.kind.name})`;

/** Why this size, or what is wrong with the one told. */
function why(result: CableSize, verdict: Verdict): string {
  const { limitPercent, isLimitTold, isRoundTrip, isByCurrent, isGiven, figures, carriesA } = result;
  const limit = `${significant(limitPercent)} %`;
  if (isGiven) {
    if (figures.continuous.value > carriesA)
      return `${plain(figures.continuous.value)} A would get it hot: it is good for about ${plain(carriesA)} A.`;
    return verdict === 'yes'
      ? `That is within the ${isLimitTold ? `${limit} you want` : `usual ${limit}`}.`
      : isLimitTold
        ? `You want to lose ${limit} at most.`
        : `For this keep it within ${limit}.`;
  }
  if (isByCurrent) return `The current sets that size, not the drop: it must carry its ${fuseName(result)}.`;
  return `That keeps the drop within ${limit} and suits a ${fuseName(result)}. ${isRoundTrip ? 'I took the length as there and back.' : 'The wire back is counted in.'}`;
}

/** The size that does it, where the one told doesn't. */
const insteadOf = ({ instead, isTooMuch }: CableSize, verdict: Verdict): string | undefined =>
  verdict === 'yes' || verdict === null || !instead || isTooMuch
    ? undefined
    : `Get ${square(instead.areaMm2)} or thicker.\nIn the shop: ${both(instead.gauge)} or thicker.`;

/** The same as a first line, with what it is for. */
const insteadFirst = (result: CableSize): string | undefined =>
  !result.isGiven || judgeAlone(result) === 'yes' || !result.instead || result.isTooMuch
    ? undefined
    : `${square(result.instead.areaMm2)} or thicker (${both(result.instead.gauge)} in the shop), ${run(result).replace('at ', 'for ')}.`;

/** A cable told that can't carry the fuse its current asks for. */
const thin = (result: CableSize): string | undefined =>
  result.isGiven && !result.doesFuseFit && result.figures.continuous.value <= result.carriesA
    ? `It carries about ${plain(result.carriesA)} A, less than the ${fuseName(result)} that this current needs.`
    : undefined;

/** What a bundle changes, where it does. */
const bundled = ({ bundledAreaMm2, conductor, figures }: CableSize): string | undefined =>
  bundledAreaMm2 === undefined || bundledAreaMm2 === conductor.areaMm2 || figures.continuous.value >= bigA
    ? undefined
    : `Bundled with three or more other loaded wires, go to ${square(bundledAreaMm2)}.`;

/** The trap of the auto shop. */
function trap(result: CableSize): string | undefined {
  const { conductor, square: real, autoAreaMm2, asAuto } = result;
  if (real)
    return `On real ${square(real.areaMm2)} it would be ${significant(real.dropV, 2)} V (${significant(real.percent, 2)} %).`;
  if (conductor.as === 'gauge' || conductor.areaMm2 > 6 || conductor.areaMm2 < 2) return undefined;
  if (asAuto && isAutoDoubt(result))
    return `If that is Australian auto cable, measured outside, it holds only about ${square(autoAreaMm2)} and loses ${significant(asAuto.figures.voltageDropPercent.value, 2)} %: get real ${square(conductor.areaMm2)}.`;
  return `Don’t get “${significant(conductor.areaMm2)} mm” auto cable: that is its outside, with only about ${square(autoAreaMm2)} of copper.`;
}

function cautionsOf(facts: Facts, result: CableSize): CautionCode[] {
  const found: CautionCode[] = ['fuse-at-battery'];
  if (result.figures.continuous.value >= bigA) found.unshift('big-current');
  if (facts.loads?.some(load => load.supply === 'ac')) found.push('mains-wiring');
  return found;
}

/** The percentage that is better than the usual. */
const betterPercent = 3;

/** The drop on the next size up, or the size for a smaller drop, as questions that stand alone; none where neither changes anything. */
function another(result: CableSize): string[] {
  const { conductor, figures, lengthM, isGiven, isTooMuch, givesA, limitPercent } = result;
  const run = `${plain(givesA ?? figures.current.value)}A over ${significant(lengthM)} m`;
  if (isGiven)
    return figures.voltageDropPercent.value > betterPercent && limitPercent > betterPercent
      ? [`what cable for ${run} with ${betterPercent}% drop?`]
      : [];
  if (isTooMuch || givesA !== undefined) return [];
  const next = nextThicker(conductor);
  return next ? [`voltage drop on ${onCable({ ...result, conductor: next })}, ${run}?`] : [];
}

/** Words that ask what is lost, and no yes or no. */
const ofDrop: ReadonlySet<string> = new Set('drop loss lose loses losing lost'.split(' '));
const ofYesNo: ReadonlySet<string> = new Set('will is can does would do ok okay enough fine'.split(' '));

/** The fuse, where it is asked for beside what a cable told loses. */
const fuseBeside = (result: CableSize, words: readonly string[]): string | undefined =>
  result.isGiven &&
  result.doesFuseFit &&
  words.some(word => word === 'fuse' || word === 'fuses' || word === 'fused')
    ? `It wants a ${fuseName(result)}, at the battery.`
    : undefined;

/** Words for a cable. */
export function answerCableSize(facts: Facts, result: CableSize, setting: RequestContext): Reply {
  const { cues } = setting.parsed;
  const isAutoAsked =
    result.square !== undefined && (cues.has('ask-compare') || facts.cable?.areaMm2 !== undefined);
  const { words } = setting.parsed.recognised;
  // "I've only got 2.5 mm²" asks whether that does, too.
  const canIt =
    cues.has('ask-can-it') ||
    cues.has('last') ||
    words.some(word => ofYesNo.has(word)) ||
    !words.some(word => ofDrop.has(word));
  const isAsked = isAutoAsked || (canIt && !cues.has('ask-drop'));
  const verdict: Verdict = !result.isGiven ? null : isAutoAsked ? 'no' : judge(result);
  const instead = insteadOf(result, result.isGiven ? judgeAlone(result) : null);
  const lines = [
    isAutoAsked
      ? `On it: ${drops(result)}.`
      : verdict === 'no' && isTooHot(result)
        ? `It would lose ${lost(result)} ${run(result)}, too.`
        : why(result, judgeAlone(result)),
    instead,
    thin(result),
    // The size told in the other measure is no help where it won't do.
    isAutoAsked || verdict === 'no' || instead ? undefined : otherwise(result),
    (result.isGiven && verdict === 'no' && !isAutoAsked) || (instead && !result.asAuto)
      ? undefined
      : trap(result),
    result.isForStart ? glowing : undefined,
    fuseBeside(result, words),
    result.givesA === undefined
      ? undefined
      : `A DC-DC charger draws about ${plain(result.figures.continuous.value)} A to give ${plain(result.givesA)} A: drop, cable and fuse are for that.`,
    bundled(result),
  ].filter(line => line !== undefined);
  const { conductorArea, voltageDrop, voltageDropPercent, fuseRating } = result.figures;
  return {
    headline: headline(result, isAsked ? verdict : null, isAutoAsked, isAskedAgainst(words)),
    lines,
    instead: insteadFirst(result),
    verdict,
    figures: {
      conductorArea: figure(conductorArea, 'mm²'),
      voltageDrop: figure(voltageDrop, 'V'),
      voltageDropPercent: figure(voltageDropPercent, '%'),
      fuseRating: figure(fuseRating, 'A'),
    },
    ...reasons(result),
    // A cable that won't do is not drawn.
    chart:
      judge(result) === 'no' || result.isTooMuch || !result.doesFuseFit
        ? undefined
        : () => cableChart(facts, result),
    cautions: cautionsOf(facts, result),
    next: [
      `what fuse for ${plain(result.givesA ?? result.figures.current.value)}A on ${onCable(result)}?`,
      ...another(result),
      'show the working',
    ],
  };
}
