import type { Reply } from '#answer/reply.ts';
import { list, sentence } from '#answer/say.ts';
import { loadCautions } from '../cautions.ts';
import { describeRig } from '../describe.ts';
import { factsOf } from '../facts.ts';
import type { GearAsked, GearOf } from '../intent.ts';

const nameOf = ({ who, isOwn }: GearOf): string => (isOwn ? 'you' : sentence(who));
const ownerOf = (one: GearOf): string => (one.isOwn ? 'Yours' : `${nameOf(one)}’s`);
const listed = ({ gear }: GearOf): string => describeRig(gear).join('; ');
const told = (one: GearOf): string => `${sentence(nameOf(one))}: ${listed(one)}`;

/** So many are told of in one answer. */
const mostTold = 6;

/** Words for what a chat was told of gear, with whose it is; nothing is worked out of it. */
export function answerGearAsked({ how, found, rest }: GearAsked): Reply {
  const [first, ...more] = found.slice(0, mostTold);
  const cautions = [...new Set(found.flatMap(({ gear }) => loadCautions(factsOf(gear))))];
  if (!first) return { headline: 'Nobody here has told me of one.' };
  if (how === 'most') {
    const others = more.map(told).join('. ');
    return {
      headline: `${ownerOf(first)}: ${listed(first)}.`,
      lines: others ? [`${others}.`] : [],
      cautions,
      rig: first.gear,
    };
  }
  if (how === 'who') {
    const names = [first, ...more].map(nameOf);
    const headline = more.length === 0 ? `${told(first)}.` : `${sentence(list(names))}.`;
    return {
      headline,
      lines: more.length === 0 ? [] : [first, ...more].map(one => `${told(one)}.`),
      cautions,
    };
  }
  if (listed(first) !== '')
    return {
      headline: first.isOwn
        ? `You told me: ${listed(first)}.`
        : `${ownerOf(first)}, as I was told: ${listed(first)}.`,
      cautions,
      rig: first.gear,
    };
  const known = rest && listed(rest);
  const whom = first.isOwn ? 'You haven’t told me of that' : `${nameOf(first)} hasn’t told me of that`;
  return { headline: `${whom}.`, lines: known ? [`What I know: ${known}.`] : [] };
}
