import type { Verdict } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import type { CautionCode } from '#answer/words/en.ts';
import { gaugeName } from '#quantity/gauge.ts';
import { plain, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { figure, reasons } from '../figures.ts';
import type { Setting } from '../intent.ts';
import type { CableSize } from './compute.ts';

/** From here on the current can start a fire in a poor joint, A. */
const bigA = 60;

const square = (areaMm2: number): string => `${significant(areaMm2, areaMm2 < 10 ? 2 : 3)} mm²`;
const both = (gauge: number): string => gaugeName(gauge).replace(' AWG', ' B&S (AWG)');

/** "16 mm² (4 B&S or AWG)", "10 B&S (AWG), 5.3 mm²". */
function name({ conductor, gauge, isGiven }: CableSize): string {
  if (conductor.as === 'gauge') return `${both(conductor.size)}, ${square(conductor.areaMm2)}`;
  if (conductor.as === 'auto')
    return `${significant(conductor.size)} mm auto cable, which is ${square(conductor.areaMm2)} of copper`;
  return `${square(conductor.areaMm2)} (${isGiven ? 'about ' : ''}${gaugeName(gauge).replace(' AWG', ' B&S or AWG')})`;
}

function drops({ figures, lengthM, voltageV }: CableSize): string {
  const { voltageDrop, voltageDropPercent, current } = figures;
  return `${significant(voltageDrop.value, 2)} V (${significant(voltageDropPercent.value, 2)} % of ${voltageV} V) at ${plain(current.value)} A over ${significant(lengthM)} m`;
}

/** Does the cable that was told do? */
function judge({ figures, limitPercent, carriesA }: CableSize): Exclude<Verdict, null> {
  const { low, high, value } = figures.voltageDropPercent;
  if (figures.continuous.value > carriesA || low > limitPercent) return 'no';
  // A limit is no knife: within a tenth of it is tight.
  return high > limitPercent * 1.1 || value > limitPercent ? 'tight' : 'yes';
}

function headline(result: CableSize, verdict: Verdict, isAutoAsked: boolean): string {
  if (isAutoAsked && result.square)
    return `No: ${significant(result.conductor.size)} mm auto cable is measured over its insulation and holds about ${square(result.conductor.areaMm2)} of copper.`;
  if (!result.isGiven)
    return result.isTooMuch
      ? `No single cable sold does it: even ${name(result)} loses ${drops(result)}.`
      : `${name(result)}: it loses ${drops(result)}.`;
  const lost = `${drops(result)} on ${name(result)}`;
  if (verdict === null) return `The drop is about ${lost}.`;
  if (verdict === 'yes') return `Yes: it loses ${lost}.`;
  return verdict === 'tight' ? `Tight: it loses ${lost}.` : `No: it loses ${lost}.`;
}

/** Why this size, or what is wrong with the one told. */
function why(result: CableSize, verdict: Verdict): string {
  const { limitPercent, isLimitTold, isRoundTrip, isByCurrent, isGiven, figures, fuseA, carriesA } = result;
  const limit = `${significant(limitPercent)} %`;
  if (isGiven) {
    if (figures.continuous.value > carriesA)
      return `It carries about ${plain(carriesA)} A for long, less than what flows: it gets hot. Go thicker.`;
    return verdict === 'yes'
      ? `That is within the ${limit} ${isLimitTold ? 'you want' : 'usual for such a circuit'}.`
      : `The limit ${isLimitTold ? 'you want' : 'usual for such a circuit'} is ${limit}; 3 % for charging and what cuts out early, 5 % for the rest.`;
  }
  if (isByCurrent)
    return `The current asks for that size, not the drop: it must carry its ${plain(fuseA)} A fuse.`;
  return `It keeps the drop within ${limit} and carries its ${plain(fuseA)} A fuse. ${isRoundTrip ? 'The length told was there and back.' : 'I took the length as one way; there and back is counted.'}`;
}

/** The trap of the auto shop. */
function trap({ conductor, square: real, autoAreaMm2 }: CableSize): string | undefined {
  if (real)
    return `On real ${square(real.areaMm2)} it would be ${significant(real.dropV, 2)} V (${significant(real.percent, 2)} %).`;
  if (conductor.as === 'gauge' || conductor.areaMm2 > 6 || conductor.areaMm2 < 2) return undefined;
  return `Mind Australian auto cable: its mm is the outside. “${significant(conductor.areaMm2)} mm” auto holds only about ${square(autoAreaMm2)}.`;
}

function cautionsOf(facts: Facts, result: CableSize): CautionCode[] {
  const found: CautionCode[] = ['fuse-at-battery'];
  if (result.figures.continuous.value >= bigA) found.unshift('big-current');
  if (facts.loads?.some(load => load.supply === 'ac')) found.push('mains-wiring');
  return found;
}

/** Words for a cable. */
export function answerCableSize(facts: Facts, result: CableSize, setting: Setting): Reply {
  const { cues } = setting.parsed;
  const isAutoAsked =
    result.square !== undefined && (cues.has('ask-compare') || facts.cable?.areaMm2 !== undefined);
  const canIt = cues.has('ask-can-it') || cues.has('last');
  const isAsked = result.isGiven && !cues.has('ask-drop') && canIt;
  const verdict: Verdict = isAutoAsked ? 'no' : isAsked ? judge(result) : null;
  const isDcdc =
    result.kind === 'dcdc' ||
    (result.kind === 'told' && result.figures.continuous.value > result.figures.current.value);
  const lines = [
    isAutoAsked ? `On it: ${drops(result)}.` : why(result, verdict ?? judge(result)),
    trap(result),
    isDcdc
      ? `A DC-DC charger takes up to about ${plain(result.figures.continuous.value)} A in while it gives ${plain(result.figures.current.value)} A; cable and fuse stand that.`
      : undefined,
  ].filter(line => line !== undefined);
  const { conductorArea, voltageDrop, voltageDropPercent } = result.figures;
  return {
    headline: headline(result, verdict, isAutoAsked),
    lines,
    verdict,
    figures: {
      conductorArea: figure(conductorArea, 'mm²'),
      voltageDrop: figure(voltageDrop, 'V'),
      voltageDropPercent: figure(voltageDropPercent, '%'),
    },
    ...reasons(result),
    cautions: cautionsOf(facts, result),
    next: [
      `what fuse for ${plain(result.figures.current.value)}A on ${significant(conductorArea.value)}mm2?`,
      result.isGiven ? 'and what size for 3%?' : 'and if I use the next size up?',
      'show the working',
    ],
  };
}
