import type { Verdict } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { rounded } from '#answer/say.ts';
import type { CautionCode } from '#answer/words/en.ts';
import { present } from '#basics/present.ts';
import { decimals, plain, significant } from '#quantity/round.ts';
import { isAskedAgainst } from '../asked-against.ts';
import { figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import type { FuseSize } from './compute.ts';

/** From here on the current can start a fire in a poor joint, A. */
const bigA = 60;

/** "blade, blue", "class T style, high-breaking". */
const kindOf = ({ found, type }: FuseSize): string => {
  const { colour } = found.fuse;
  const { name } = type.kind;
  return colour && name.startsWith('blade') ? `${name}, ${colour}` : name;
};

const about = (amps: number): string => decimals(Number(amps.toPrecision(2)), 0);

/** Which fuse can break what the bank gives, in volts and amps. */
function breaking(result: FuseSize): string | undefined {
  const { source, voltageV, atBank, kind } = result;
  const { type, isMain } = atBank ?? result;
  const { kind: fuse, behind, isTooStrong } = type;
  const volts = voltageV > 24 ? `; a usual 32 V part is not made for ${voltageV} V` : '';
  if (source.shortA === undefined) {
    if (voltageV > 24 && kind !== 'solar')
      return `It must be marked for ${decimals(Math.ceil(source.fullV), 0)} V or more${volts}.`;
    return isMain
      ? 'On a lithium bank use a high-breaking one (class T style): a short there drives thousands of amps.'
      : undefined;
  }
  const short = `Into a short your bank could drive up to about ${about(source.shortA)} A`;
  if (isTooStrong)
    return `${short}, more than any usual fuse breaks: give each battery its own (${(behind ?? fuse).name}).`;
  if (behind)
    return `${short}, and a ${fuse.name} breaks about ${about(fuse.breaksA)} A: put ${atBank ? 'the one there' : 'it'} in a fuse block behind a main fuse at the battery (${behind.name}).`;
  if (isMain || volts)
    return `${short}: ${atBank ? 'the one there' : 'this kind'} breaks about ${about(fuse.breaksA)} A, at up to ${fuse.mostV} V${volts}.`;
  return undefined;
}

const cableName = ({ conductor }: FuseSize): string => {
  const copper = `${significant(present(conductor).areaMm2, 2)} mm²`;
  return present(conductor).as === 'auto'
    ? `${significant(present(conductor).size)} mm auto cable (${copper} of copper)`
    : copper;
};

/** The thinnest cable that gear is commonly wired with, mm²: common practice. */
const thinnestMm2 = 1.5;

/** A fuse spoken of for a load, where no cable is told: whether it does hangs on the cable. */
const isJudgedAlone = ({ saidAreaMm2, kind, saidA, leastA }: FuseSize): boolean =>
  saidAreaMm2 !== undefined &&
  kind !== undefined &&
  kind !== 'solar' &&
  saidA !== undefined &&
  saidA >= leastA;

/** Whether the fuse spoken of does: it must guard the cable and carry the load. */
function judge(result: FuseSize): Verdict {
  const { saidA, mostA, found, kind, figures } = result;
  if (kind !== undefined && !found.fits) return 'no';
  if (saidA === undefined) return null;
  if (mostA !== undefined && saidA > mostA) return 'no';
  if (kind !== undefined && saidA < figures.current.value) return 'no';
  if (isJudgedAlone(result))
    return saidA > found.wanted.ratingA && present(result.saidAreaMm2) > thinnestMm2 ? 'tight' : 'yes';
  return mostA === undefined ? null : 'yes';
}

/** What is said of the fuse that was spoken of. */
function spoken(result: FuseSize, isAgainst: boolean): string | undefined {
  const { saidA, mostA, figures, found } = result;
  const verdict = judge(result);
  if (saidA === undefined || verdict === null || !found.fits) return undefined;
  const fuse = `${significant(saidA)} A`;
  // "Is it too big?" can't be answered by a yes that means "it does".
  const [good, tooBig, tooSmall] = isAgainst
    ? ['That’s fine', 'No, too big', 'No, too small']
    : ['Yes', 'No', 'No'];
  if (isJudgedAlone(result) && verdict !== 'no') {
    const area = `${significant(present(result.saidAreaMm2), 3)} mm² or more`;
    return verdict === 'yes'
      ? `${good}: a ${fuse} fuse suits ${plain(figures.current.value)} A, on cable of ${area}.`
      : `Not unless its cable is ${area}: ${fuse} is over the ${plain(found.wanted.ratingA)} A that ${plain(figures.current.value)} A needs.`;
  }
  if (verdict === 'yes') return `${good}: a ${fuse} fuse guards ${cableName(result)}.`;
  return mostA !== undefined && saidA > mostA
    ? `${tooBig}: ${cableName(result)} would burn before a ${fuse} fuse blows; it allows ${plain(mostA)} A at most.`
    : `${tooSmall}: a ${fuse} fuse would blow at ${plain(figures.current.value)} A.`;
}

function headline(result: FuseSize, isAgainst: boolean): string {
  const { found, kind, figures } = result;
  const told = spoken(result, isAgainst);
  if (told) return told;
  const rating = `${plain(found.fuse.ratingA)} A`;
  if (kind === undefined) return `At most ${rating} on ${cableName(result)} (${kindOf(result)}).`;
  if (!found.fits)
    return `No, that cable is too thin: ${plain(figures.current.value)} A needs a ${plain(found.wanted.ratingA)} A fuse, and ${cableName(result)} allows ${rating} at most.`;
  return `${/^(?:8|11 |18 )/.test(rating) ? 'An' : 'A'} ${rating} fuse (${kindOf(result)}).`;
}

/** What the fuse spoken of does where the cable is too thin for any that would. */
function beside({ saidA, mostA, found, kind, figures }: FuseSize, cable: string): string | undefined {
  if (saidA === undefined || kind === undefined || found.fits) return undefined;
  const fuse = `${significant(saidA)} A fuse`;
  if (mostA !== undefined && saidA > mostA)
    return `A ${fuse} is too big: ${cable} would burn before it blows.`;
  const load = plain(figures.current.value);
  return saidA < figures.current.value
    ? `A ${fuse} guards it, but would blow at ${load} A.`
    : `A ${fuse} guards it, with little to spare over ${load} A.`;
}

/** The cable that goes with the fuse: by its current, and where the length is told by its drop too. */
function needed({ found, pair }: FuseSize): string {
  if (!pair || pair.isTooMuch)
    return `The cable must carry that: ${significant(found.leastAreaMm2)} mm² or more.`;
  return `Its cable: ${significant(pair.conductor.areaMm2)} mm² over ${significant(pair.lengthM)} m, which carries the fuse and loses ${significant(pair.percent, 2)} %.`;
}

/** What the cable told loses, where all of it is told. */
const lost = ({ drop }: FuseSize): string | undefined =>
  drop &&
  `Over ${significant(drop.lengthM)} m it loses ${significant(drop.dropV, 2)} V (${significant(drop.percent, 2)} %).`;

function lines(result: FuseSize, isDropAsked: boolean): string[] {
  const { found, kind, figures, carriesA, ratedA } = result;
  const carries = carriesA === undefined ? '' : `${cableName(result)} carries about ${rounded(carriesA)} A`;
  if (kind === undefined)
    // A fuse that was named is told already what the cable allows.
    return [
      `${result.saidA === undefined ? `${carries}, and its fuse has to blow before that. ` : ''}Tell me what runs on it, and a smaller one may do.`,
    ];
  const now = figures.current.value;
  const margin =
    kind === 'solar'
      ? `Twice 125 % of the panels’ short-circuit current (about ${plain(present(result.panelShortA))} A; the label comes first) is ${plain(result.leastA)} A: bright sun, and a fuse’s own margin.`
      : `${plain(now)} A and a quarter more is ${plain(result.leastA)} A${plain(result.leastA) === plain(found.wanted.ratingA) ? '' : `; the next standard size is ${plain(found.wanted.ratingA)} A`}.`;
  const there = result.atBank && `${plain(result.atBank.ratingA)} A (${result.atBank.type.kind.name})`;
  const input =
    ratedA === undefined || kind === 'solar'
      ? undefined
      : `A DC-DC charger draws more than it gives: about ${plain(now)} A for ${plain(ratedA)} A. At the house battery goes another fuse, ${there}.`;
  const behind =
    kind === 'solar'
      ? `Between controller and battery goes another, at the battery: ${there}. One or two panels side by side need none of their own; from three on each does.`
      : undefined;
  const cable = found.fits
    ? carriesA === undefined
      ? needed(result)
      : `${carries}, so it’s protected.`
    : `Go to ${significant(found.leastAreaMm2)} mm² or more, or keep the load down.`;
  const motor =
    result.hasMotor && found.fits ? 'A slow-blow type copes with the jolt when the motor starts.' : undefined;
  const said = found.fits ? undefined : beside(result, cableName(result));
  const dropped = lost(result);
  const told = isDropAsked
    ? [dropped, said, input, margin, behind, cable, breaking(result), motor]
    : [said, input, margin, behind, cable, dropped, breaking(result), motor];
  return told.filter(line => line !== undefined).slice(0, 4);
}

/** The fuse that does where the one spoken of doesn't, or the cable for it where that is what won't do. */
function insteadOf(result: FuseSize): string | undefined {
  const { found, kind } = result;
  if ((judge(result) ?? 'yes') === 'yes') return undefined;
  if (kind === undefined) return headline({ ...result, saidA: undefined }, false);
  const fuse = `${plain(found.fits ? found.fuse.ratingA : found.wanted.ratingA)} A fuse${found.fits ? ` (${kindOf(result)})` : ''}`;
  const cable =
    found.fits && result.carriesA !== undefined
      ? `: ${cableName(result)} carries it`
      : `, on ${significant(found.leastAreaMm2)} mm² or thicker`;
  return `${/^(?:8|11 |18 )/.test(fuse) ? 'An' : 'A'} ${fuse}${cable}.`;
}

/** Words that ask what is lost on the way. */
const asksDrop: ReadonlySet<string> = new Set('drop drops lose loses loss lost'.split(' '));

/** Words for a fuse. */
export function answerFuseSize(result: FuseSize, { parsed }: Pick<RequestContext, 'parsed'>): Reply {
  const cautions: CautionCode[] = ['fuse-at-battery'];
  if (result.figures.current.value >= bigA) cautions.push('big-current');
  // The figure is the fuse for the load: where the cable is too thin the cable has to change, not the fuse.
  const rating = result.figures.fuseRating;
  return {
    headline: headline(result, isAskedAgainst(parsed.recognised.words)),
    lines: lines(
      result,
      parsed.recognised.words.some(word => asksDrop.has(word)),
    ),
    instead: insteadOf(result),
    verdict: judge(result),
    figures: { fuseRating: figure(rating, 'A') },
    ...reasons(result),
    cautions,
    next: [...(result.kind === undefined ? [] : ['what cable for that over 3 m?']), 'show the working'],
  };
}
