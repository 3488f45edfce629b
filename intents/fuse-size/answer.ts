import type { Reply } from '#answer/reply.ts';
import type { CautionCode } from '#answer/words/en.ts';
import { plain, significant } from '#quantity/round.ts';
import { figure, reasons } from '../figures.ts';
import type { FuseSize } from './compute.ts';

/** From here on the current can start a fire in a poor joint, A. */
const bigA = 60;

const kindOf = ({ found }: FuseSize): string => {
  const { series, colour } = found.fuse;
  return colour ? `${series}, ${colour}` : series;
};

const cableName = ({ conductor }: FuseSize): string => {
  const copper = `${significant(conductor!.areaMm2, 2)} mm²`;
  return conductor!.as === 'auto'
    ? `${significant(conductor!.size)} mm auto cable (${copper} of copper)`
    : copper;
};

/** Whether the fuse spoken of does: it must guard the cable and carry the load. */
function judge({ saidA, mostA, found, kind, figures }: FuseSize): 'yes' | 'no' | null {
  if (kind !== undefined && !found.fits) return 'no';
  if (saidA === undefined) return null;
  if (mostA !== undefined && saidA > mostA) return 'no';
  if (kind !== undefined && saidA < figures.current.value) return 'no';
  return mostA === undefined ? null : 'yes';
}

/** What is said of the fuse that was spoken of. */
function spoken(result: FuseSize): string | undefined {
  const { saidA, mostA, figures, found } = result;
  const verdict = judge(result);
  if (saidA === undefined || verdict === null || !found.fits) return undefined;
  const fuse = `${significant(saidA)} A`;
  if (verdict === 'yes') return `Yes: a ${fuse} fuse guards ${cableName(result)}.`;
  return mostA !== undefined && saidA > mostA
    ? `No: ${cableName(result)} would burn before a ${fuse} fuse blows; it may have ${plain(mostA)} A at most.`
    : `No: a ${fuse} fuse would blow at ${plain(figures.current.value)} A.`;
}

function headline(result: FuseSize): string {
  const { found, kind, figures } = result;
  const told = spoken(result);
  if (told) return told;
  const rating = `${plain(found.fuse.ratingA)} A`;
  if (kind === undefined) return `At most ${rating} on ${cableName(result)} (${kindOf(result)}).`;
  if (!found.fits)
    return `No, that cable is too thin: ${plain(figures.current.value)} A wants a ${plain(found.wanted.ratingA)} A fuse, and ${cableName(result)} may have ${rating} at most.`;
  return `${rating} (${kindOf(result)}).`;
}

function lines(result: FuseSize): string[] {
  const { found, kind, figures, carriesA, ratedA } = result;
  const carries = carriesA === undefined ? '' : `${cableName(result)} carries about ${plain(carriesA)} A`;
  if (kind === undefined)
    return [
      `${carries}; the fuse guards the cable. With what hangs on it known it may be smaller: 125 % of its current.`,
    ];
  const margin = `125 % of ${plain(figures.current.value)} A is ${plain(figures.current.value * 1.25)} A, the next standard size is ${plain(found.wanted.ratingA)} A.`;
  const input =
    ratedA === undefined
      ? undefined
      : `A DC-DC charger takes in more than it gives: about ${plain(figures.current.value)} A for ${plain(ratedA)} A.`;
  const cable = found.fits
    ? carriesA === undefined
      ? `The cable must carry that: ${significant(found.leastAreaMm2)} mm² or more.`
      : `${carries}, so it is protected.`
    : `Go to ${significant(found.leastAreaMm2)} mm² or more, or keep the load down.`;
  const motor =
    result.hasMotor && found.fits ? 'A slow-blow type stands the jolt when the motor starts.' : undefined;
  return [input, margin, cable, motor].filter(line => line !== undefined).slice(0, 3);
}

/** Words for a fuse. */
export function answerFuseSize(result: FuseSize): Reply {
  const cautions: CautionCode[] = ['fuse-at-battery'];
  if (result.figures.current.value >= bigA) cautions.push('big-current');
  // The figure is the fuse for the load: where the cable is too thin the cable has to change, not the fuse.
  const rating = result.figures.fuseRating;
  return {
    headline: headline(result),
    lines: lines(result),
    verdict: judge(result),
    figures: { fuseRating: figure(rating, 'A') },
    ...reasons(result),
    cautions,
    next: ['what cable for that over 3 m?', 'what is a fuse for?', 'show the working'],
  };
}
