import type { Reply } from '#answer/reply.ts';
import { decimals, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { figure } from '../figures.ts';
import { computeAmpacity } from './compute.ts';

/** What a cable of a told size carries (A), where nobody says how long it is: heat sets that, not length. */
export function answerAmpacity(facts: Facts): Reply {
  const { areaMm2, carries, fuse, working } = computeAmpacity(facts);
  const wantedA = facts.cable?.currentA;
  const amps = (value: number): string => decimals(value, 0);
  const says = `${significant(areaMm2)} mm² carries about ${amps(carries.value)} A (${amps(carries.low)}–${amps(carries.high)} A)`;
  const verdict =
    wantedA === undefined ? null : wantedA <= carries.low ? 'yes' : wantedA > carries.value ? 'no' : 'tight';
  const lead = { yes: 'Yes: ', tight: 'Tight: ', no: 'No: ' } as const;
  return {
    headline: `${verdict ? lead[verdict] : ''}${says}${wantedA === undefined ? '' : `, and you want ${significant(wantedA)} A`}.`,
    lines: [
      `Less where it is bundled, hot or in conduit${fuse ? `; the largest fuse for it is ${significant(fuse.ratingA)} A` : ''}.`,
      'How long it is sets the voltage drop: tell me the metres, one way, and I work that out too.',
    ],
    verdict,
    figures: {
      conductorArea: figure({ value: areaMm2, low: areaMm2, high: areaMm2 }, 'mm²'),
      ampacity: figure(carries, 'A'),
    },
    working,
    cautions: ['fuse-at-battery'],
    next: ['and over 5 m?', 'what fuse?'],
  };
}
