import { sentence } from '#answer/say.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { significant } from '#quantity/round.ts';
import type { WorkedBeside } from '../worked-beside.ts';
import { copperOfAutoMm2 } from './compute.ts';

/** Up to this trade size makers' sheets agree on the copper, mm; thicker cable is sold by B&S or mm². */
const listedMm = 6.3;

interface AutoCable {
  readonly tradeMm: number;
  /** The mm² that it is held for. */
  readonly areaMm2?: number;
}

const inUnit = (mentions: readonly Mention[], unit: string): readonly number[] =>
  mentions.flatMap(one => (one.kind === 'amount' && one.unit === unit ? [one.told] : []));

/** The trade size of auto cable, told with nothing but the mm² beside it; undefined otherwise. */
function autoCableIn(mentions: readonly Mention[]): AutoCable | undefined {
  const [tradeMm, second] = inUnit(mentions, 'mm');
  const [areaMm2] = inUnit(mentions, 'mm²');
  const isOther = mentions.some(({ kind, unit }) => kind === 'amount' && unit !== 'mm' && unit !== 'mm²');
  if (tradeMm === undefined || isOther) return undefined;
  const square = areaMm2 ?? second;
  return { tradeMm, ...(square !== undefined && { areaMm2: square }) };
}

const typical: AutoCable = { tradeMm: 6 };

/** So near to the mm² that it is held for makers' sheets don't tell it from them. */
const near = 0.15;

/** The copper first, or yes or no where it is asked whether the two are the same. */
function headline({ tradeMm, areaMm2 }: AutoCable): string {
  const outside = `${significant(tradeMm)} mm auto cable is ${significant(tradeMm)} mm over its insulation`;
  if (tradeMm > listedMm)
    return `${areaMm2 === undefined ? 'Look' : 'No, look'} on the reel: ${outside}, and makers differ in the copper.`;
  const copperMm2 = copperOfAutoMm2(tradeMm);
  const copper = `about ${significant(copperMm2, 2)} mm² of copper`;
  if (areaMm2 === undefined) return `${sentence(copper)}: ${outside}.`;
  const isNear = Math.abs(areaMm2 / copperMm2 - 1) <= near;
  return `${isNear ? 'Yes, near enough' : 'No'}: ${copper}. ${outside}.`;
}

/** What auto cable's mm are in mm² of copper. */
export const autoMm: WorkedBeside = {
  name: 'auto-mm',
  spots: [
    'auto|automotive|auto_cable|auto_wire really|actually|same|mm|square|squared|copper|right|true|real|equal|equals|equivalent|convert|is|in|how|what|whats -fuse -fridge -inverter -amps -carry -carries -handle -drop -thin -enough -length -thinner -what_cable -which_cable -far',
  ],
  when: ({ recognised: { mentions } }) => {
    const isAuto = mentions.some(({ kind, key }) => kind === 'cable' && key === 'auto');
    return isAuto && autoCableIn(mentions) !== undefined;
  },
  takes: [],
  reply: (_facts, { parsed: { recognised } }) => {
    const told = autoCableIn(recognised.mentions) ?? typical;
    return {
      headline: headline(told),
      lines: [
        told.tradeMm > listedMm
          ? 'Go by the mm² or the B&S (AWG) printed on it: 8 B&S is 8 mm², 6 B&S is 13 mm².'
          : 'Buy by mm² of copper, or by B&S. Tell me amps and metres, and I say whether it does.',
      ],
      verdict: null,
      next: ['what cable for 20A over 5 m?'],
    };
  },
};
