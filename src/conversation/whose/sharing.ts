import { gearIn, hasGear } from '#rig/gear.ts';
import type { Heard } from '../hear.ts';
import { personKey } from '../kept/recall.ts';
import type { Memory } from '../memory.ts';
import type { Message } from '../message.ts';
import { peopleIn, whoIn, wordsWritten } from './people.ts';
import { bound, opened, unbound } from './shared.ts';

// "Me and Dot's van", "sharing with Dot", "our van": one rig of several people.

const words = (text: string): ReadonlySet<string> => new Set(text.split(' '));
const selves = words('me i myself');
const homes = words(
  'van camper campervan bus boat yacht caravan trailer motorhome ute truck rv tent rig setup camp wagon',
);
const sharing = words('share sharing shared shares');
const having = words('have has got run runs own are');
const joint = words('together between one same');
const being = words('im am were ill staying sleeping travelling travel camping is');
const ours = words('our ours');
const each = words('each both');
const near = 3;

/** Whom the writer names as one with whom they share a rig. */
function partnerIn(memory: Memory, message: Message, { recognised }: Heard): string | undefined {
  const said = wordsWritten(recognised);
  const self = personKey(message.from);
  const known = new Set(peopleIn(memory));
  const named = (at: number): string | undefined => {
    const mention = recognised.mentions.find(
      one => one.kind === 'person' && one.from === at && one.to === at + 1,
    );
    const name =
      whoIn(said[at] ?? '', known) ?? (mention && !selves.has(mention.text) ? mention.text : undefined);
    return name === self || selves.has(said[at] ?? '') ? undefined : name;
  };
  const isHomeAfter = (at: number): boolean => said.slice(at, at + near).some(word => homes.has(word));
  const isOwned = (at: number, name: string): boolean => said[at] !== name && (said[at] ?? '').endsWith('s');
  for (const [at, word] of said.entries()) {
    if (word !== 'and' && word !== 'n' && word !== '&') continue;
    const other = selves.has(said[at - 1] ?? '') ? at + 1 : selves.has(said[at + 1] ?? '') ? at - 1 : -1;
    const name = other < 0 ? undefined : named(other);
    if (name === undefined) continue;
    const next = said[at + 2] ?? '';
    const isOurHome = said.some((one, i) => ours.has(one) && isHomeAfter(i + 1));
    const isOfBoth = isOurHome || (isOwned(other, name) && isHomeAfter(other + 1));
    const isHad =
      having.has(next) &&
      !said.some(one => each.has(one)) &&
      said.some(one => joint.has(one) || homes.has(one));
    if (isOfBoth || sharing.has(next) || isHad) return name;
  }
  const isFirst =
    said.some(word => selves.has(word) || being.has(word) || word === 'we') || sharing.has(said[0] ?? '');
  const at = said.findIndex(word => sharing.has(word));
  const by = at < 0 ? -1 : said.indexOf('with', at);
  if (by >= 0 && isFirst && named(at - 1) === undefined) return named(by + 1);
  const inside = said.findIndex((word, i) => word === 'in' && being.has(said[i - 1] ?? ''));
  const host = inside < 0 || isPutAsked(recognised.text) ? undefined : named(inside + 1);
  return host !== undefined && isOwned(inside + 1, host) && homes.has(said[inside + 2] ?? '') && isFirst
    ? host
    : undefined;
}

const isPutAsked = (text: string): boolean => text.includes('?');

/** A chat's memory after what a message of a group tells of who shares whose rig. */
export function sharedBy(memory: Memory, message: Message, heard: Heard): Memory {
  if (message.kind !== 'group' || heard.forgetting) return memory;
  const from = personKey(message.from);
  const said = wordsWritten(heard.recognised);
  const isTelling = hasGear(gearIn(heard.facts));
  // "My own battery now": what was shared is not meant any more.
  if (isTelling && said.some((word, at) => word === 'own' && said[at - 1] === 'my'))
    return unbound(memory, from);
  const partner = partnerIn(memory, message, heard);
  if (partner !== undefined) {
    const isOpen = memory.shared?.[partner] !== undefined;
    return bound(memory, from, partner, isOpen || (message.isAdmin ?? true));
  }
  const isOurs = isTelling && said.some((word, at) => ours.has(word) && homes.has(said[at + 1] ?? ''));
  return isOurs && memory.rigs[''] === undefined ? opened(memory, message.from) : memory;
}
