import type { Reply } from '#answer/reply.ts';
import { decimals, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { isAskedAgainst } from '../asked-against.ts';
import { figure } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { computeAmpacity, takenByDcdcA } from './compute.ts';

/** A length to go by, never longer than it is. */
const metres = (lengthM: number): string =>
  lengthM < 10 ? decimals(Math.floor(lengthM * 10) / 10, 1) : decimals(Math.floor(lengthM), 0);

/** The current of the one thing told with it, A: what it draws, or what a DC-DC charger takes from its battery. */
function withCurrent(facts: Facts, { facts: said }: RequestContext['parsed']): Facts {
  if (facts.cable?.currentA !== undefined) return facts;
  const [load, other] = said.loads ? (facts.loads ?? []) : [];
  const rated = (said.chargers ? facts.chargers : undefined)?.find(({ currentA }) => currentA !== undefined);
  const ofCharger =
    rated?.currentA === undefined
      ? undefined
      : rated.kind === 'dcdc'
        ? takenByDcdcA(rated.currentA)
        : rated.currentA;
  const currentA =
    load && !other && load.currentA !== undefined ? load.count * load.currentA : load ? undefined : ofCharger;
  return currentA === undefined ? facts : { ...facts, cable: { ...facts.cable, currentA } };
}

/**
 * What a cable of a told size carries (A), where nobody says how long it is: heat sets that, not length. With a current
 * told, how far it carries that.
 */
export function answerAmpacity(told: Facts, { parsed }: Pick<RequestContext, 'parsed'>): Reply {
  const facts = withCurrent(told, parsed);
  const { areaMm2, carries, fuse, far, working } = computeAmpacity(facts);
  const wantedA = facts.cable?.currentA;
  const amps = (value: number): string => decimals(value, 0);
  const square = `${significant(areaMm2)} mm²`;
  const says = `${square} carries about ${amps(carries.value)} A (${amps(carries.low)}–${amps(carries.high)} A)`;
  const verdict =
    wantedA === undefined ? null : wantedA <= carries.low ? 'yes' : wantedA > carries.value ? 'no' : 'tight';
  const lead = isAskedAgainst(parsed.recognised.words)
    ? ({ yes: 'That’s fine: ', tight: 'Tight: ', no: 'No, too thin: ' } as const)
    : ({ yes: 'Yes: ', tight: 'Tight: ', no: 'No: ' } as const);
  const isFarAsked = parsed.cues.has('ask-how-long') || parsed.recognised.words.includes('far');
  const wanted = wantedA === undefined ? '' : `${significant(wantedA)} A`;
  const capacity = `${verdict ? lead[verdict] : ''}${says}${wanted && `, and you want ${wanted}`}.`;
  const bundle = `Less where it is bundled, hot or in conduit${fuse ? `; the largest fuse for it is ${significant(fuse.ratingA)} A` : ''}.`;
  const isFarTold = far !== undefined && verdict !== 'no';
  const most = far && (far.wanted || far.most);
  const [headline = '', ...lines] =
    isFarTold && most && isFarAsked
      ? [
          `At most about ${metres(most.lengthM)} m one way: over that ${wanted} loses ${significant(most.percent)} % of ${significant(far.voltageV)} V on ${square}.`,
          far.wanted
            ? 'The wire back is counted in.'
            : `For a fridge or charging stay within ${metres(far.good.lengthM)} m (${far.good.percent} %). The wire back is counted in.`,
          capacity,
          bundle,
        ]
      : [
          capacity,
          bundle,
          isFarTold && far.wanted
            ? `At ${wanted} it may be about ${metres(far.wanted.lengthM)} m long one way for ${significant(far.wanted.percent)} %.`
            : isFarTold
              ? `At ${wanted} it may be about ${metres(far.most.lengthM)} m long one way (${far.most.percent} % lost), or ${metres(far.good.lengthM)} m for ${far.good.percent} %.`
              : 'How long it is sets the voltage drop: tell me the metres, one way, and I work that out too.',
        ];
  return {
    headline,
    lines,
    verdict,
    figures: {
      conductorArea: figure({ value: areaMm2, low: areaMm2, high: areaMm2 }, 'mm²'),
      ampacity: figure(carries, 'A'),
      ...(far && {
        length: far.wanted
          ? figure({ value: far.wanted.lengthM, low: far.wanted.lengthM, high: far.wanted.lengthM }, 'm')
          : figure({ value: far.most.lengthM, low: far.good.lengthM, high: far.most.lengthM }, 'm'),
      }),
    },
    working,
    cautions: ['fuse-at-battery'],
    next: ['and over 5 m?', 'what fuse?'],
  };
}
