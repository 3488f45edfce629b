import type { Verdict } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { lasting, span } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import { decimals, plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { figure, reasons } from '../figures.ts';
import { siteOf } from '../sun.ts';
import type { Generator } from './compute.ts';

const watts = (value: number): string => `${decimals(value, value < 1000 ? -1 : 0)} W`;
const round = (value: number): number => Number(value.toPrecision(2));

/** What hangs on it, in words. */
function what({ figures, hasCharger, isChargerAssumed }: Generator, facts: Facts): string {
  const rated = facts.chargers?.find(c => c.kind !== 'generator') ?? facts.chargers?.find(c => c.currentA);
  const size =
    rated?.currentA !== undefined
      ? `${plain(rated.currentA)} A `
      : rated?.powerW !== undefined
        ? `${watts(rated.powerW)} `
        : '';
  const charger = hasCharger ? (isChargerAssumed ? 'a usual charger' : `the ${size}charger`) : '';
  const loads = figures.loadPower.value > 0 ? `${watts(round(figures.loadPower.value))} of loads` : '';
  const parts = [charger, loads].filter(Boolean);
  return `${parts.join(' and ')} ${parts.length > 1 || loads ? 'need' : 'needs'}`;
}

function headline(facts: Facts, result: Generator, verdict: Verdict): string {
  const { generatorPower, chargeTime } = result.figures;
  const [low, high] = [round(generatorPower.low), round(generatorPower.high)];
  const range = low === high ? '' : ` (${span(low, high, 'W')})`;
  const needed = `about ${watts(round(generatorPower.value))}${range}`;
  if (generatorPower.value <= 0) return `Run it ${lasting(chargeTime)}.`;
  if (verdict === null)
    return `A ${decimals(result.sizeW, 0)} W generator: ${what(result, facts)} ${needed}.`;
  const rated = `${decimals(present(result.ratingW), 0)} W`;
  if (verdict === 'yes') return `Yes, ${rated} is enough: ${what(result, facts)} ${needed}.`;
  return verdict === 'tight'
    ? `Tight: ${what(result, facts)} ${needed} of its ${rated}.`
    : `No: ${what(result, facts)} ${needed}, more than ${rated}.`;
}

/** What the one told gives hour after hour, where it is not plainly enough. */
const steadyLine = ({ ratingW, steadyW }: Generator): string =>
  `A ${decimals(present(ratingW), 0)} W one can keep up about ${watts(round(present(steadyW)))}.`;

/** Another charger, where one hangs on it: the usual 20 A, or half of that. */
function otherCharger({ hasCharger }: Generator, facts: Facts): string[] {
  if (!hasCharger) return [];
  const ratedA = facts.chargers?.find(c => c.kind !== 'generator')?.currentA ?? 0;
  return [`what if a ${ratedA > 0 && ratedA <= 20 ? 10 : 20}A charger?`];
}

/**
 * The charging current that the generator told carries without a break, where turning it down helps: with the poorest
 * power factor and efficiency that a charger is taken to have.
 */
function turnDown(facts: Facts, { figures, hasCharger, steadyW }: Generator): string {
  if (!hasCharger) return '';
  const ratedA = facts.chargers?.find(c => c.kind !== 'generator')?.currentA;
  const shareOfIt =
    (present(steadyW) - figures.loadPower.value) / (figures.generatorPower.high - figures.loadPower.value);
  return ratedA === undefined || !(shareOfIt > 0.1 && shareOfIt < 1)
    ? ", or turn the charger's current down"
    : `, or turn the charger down to ${decimals(Math.floor(ratedA * shareOfIt), 0)} A`;
}

/** What the figure of a charger is: volt-amperes, which its poor power factor makes more than its watts. */
function vaNote({ hasCharger, figures, hasMotor, ranked }: Generator): string | undefined {
  const factor = ranked.find(({ name }) => name === 'powerFactor')?.value;
  if (!hasCharger || hasMotor || factor === undefined || figures.loadPower.value > 0) return undefined;
  return `The charger itself takes about ${watts(round(figures.generatorPower.value * factor))}, but loads a generator more than that (its power factor).`;
}

/** Words for a generator. */
export function answerGenerator(facts: Facts, result: Generator, isNoiseAsked = false): Reply {
  const { generatorPower, chargeTime, chargeNeeded, chargeCurrent } = result.figures;
  const hasPower = generatorPower.value > 0;
  const fits = result.ratingW === undefined || !hasPower ? null : enoughFor(result);
  const isTime = chargeTime.value > 0 && Number.isFinite(chargeTime.value);
  const lines = [
    isTime
      ? `${hasPower ? `Run it ${lasting(chargeTime)}: about` : 'About'} ${plain(chargeNeeded.value)} Ah ${result.isDailyUse ? 'a day ' : ''}goes in, at about ${plain(chargeCurrent.value)} A to start with.`
      : undefined,
    result.hasMotor
      ? 'Some things pull far more than their watts as they start: that sets the size here.'
      : undefined,
    fits === null || fits === 'yes'
      ? undefined
      : `${steadyLine(result)} A ${decimals(result.sizeW, 0)} W one handles it easily${turnDown(facts, result)}.`,
    vaNote(result),
    (siteOf(facts).altitudeM ?? 0) > 300
      ? 'Height takes power from the engine; that is counted in.'
      : undefined,
    isNoiseAsked
      ? `A park's 60 dB at 15 m is about ${decimals(result.noiseDb, 0)} dB at the 7 m of makers' sheets.`
      : undefined,
  ].filter(line => line !== undefined);
  return {
    headline: headline(facts, result, fits),
    lines: lines.slice(0, 3),
    verdict: fits,
    figures: {
      ...(hasPower && { generatorPower: figure(generatorPower, 'W') }),
      ...(isTime && { chargeTime: figure(chargeTime, 'h'), chargeNeeded: figure(chargeNeeded, 'Ah') }),
    },
    ...reasons(result),
    cautions: ['carbon-monoxide', 'park-rules'],
    next: [...otherCharger(result, facts), 'show the working'],
  };
}

/** Whether it is enough: no where even the watts it goes by are too few, tight where what it gives without a break may be. */
function enoughFor({ figures: { generatorPower, loadShare }, ratingW }: Generator): Exclude<Verdict, null> {
  if (generatorPower.value > present(ratingW)) return 'no';
  return loadShare.high > 1 + 1e-9 ? 'tight' : 'yes';
}
