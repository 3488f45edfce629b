/** What a request to forget is about: one rig, all that is kept of the chat, or all that is kept of the speaker. */
export interface ForgetRequest {
  readonly which: 'rig' | 'chat' | 'me';
  /** Whose rig, lower case, where it is somebody's: "forget sam's rig". */
  readonly owner?: string;
}

/** What the bot keeps, by name. */
const rig = /^(?:rigs?|setups?|kit)$/;
const record =
  /^(?:data|details|info|information|records?|memory|memories|history|notes|profile|entry|file|stuff|things?|facts|messages|conversations?|chats?|groups?)$/;
const whole = /^(?:everything|anything|all|lot|whatever|whole)$/;
const speaker = /^(?:me|us|my|our|mine|ive|weve|i|we)$/;
const place = /^(?:chat|group|here|us|our|we|weve)$/;

/** Small words that fill such a request out. */
const filler = new Set(
  `please pls plz now thanks thank you ta cheers mate will ya u ye right again completely entirely for good forever
  the a an of on about from in that this what which have has had got ive youve weve yours your s it its is was were
  i we you me us my our mine know knows keep kept keeping store stored stores saved save remember remembered
  learnt learned told tell gave given said been ever so far there any all every whole lot bit bits everything
  today straight away off to and them those do did can could bot billywatt memory chat group here
  anything whatever sold it im leaving gone with no longer more need want by ok okay hold holding held personal
  sent wrote written old too also permanently totally then over hey bro dont anymore more havent camping not real
  quick soon`
    .split(/\s+/)
    .filter(Boolean),
);

/** "sams rig", "rig of sam", "the rig of my brother": whose, if somebody's. */
function ownerOf(words: readonly string[], at: number): string | undefined {
  const before = words[at - 1];
  const after =
    words[at + 1] === 'of' || words[at + 1] === 'from'
      ? words.slice(at + 2).find(word => !/^(?:my|the|our)$/.test(word))
      : undefined;
  if (after !== undefined && !filler.has(after)) return after;
  if (before !== undefined && before.length > 2 && before.endsWith('s') && !filler.has(before))
    return before.slice(0, -1);
  return undefined;
}

/** "What you know about my van" is of the bot's; "everything in my van" is not. */
const home = /^(?:van|caravan|camper|ute|bus|boat|motorhome|trailer|gear|batteries|battery)$/;
const known = /^(?:know|knows|kept|store|stored|saved|remember|remembered|told|learned|learnt)$/;

const isPlain = (words: readonly string[], spared: readonly number[]): boolean => {
  const isKnown = words.some(word => known.test(word));
  return words.every(
    (word, i) =>
      spared.includes(i) ||
      filler.has(word) ||
      record.test(word) ||
      rig.test(word) ||
      (isKnown && home.test(word)),
  );
};

function ofRig(words: readonly string[]): ForgetRequest | undefined {
  const at = words.findIndex(word => rig.test(word));
  if (at < 0) return undefined;
  const owner = ownerOf(words, at);
  const spared = words.flatMap((word, i) =>
    owner !== undefined && (word === owner || word === `${owner}s`) ? [i] : [],
  );
  if (!isPlain(words, spared)) return undefined;
  return owner === undefined ? { which: 'rig' } : { which: 'rig', owner };
}

/**
 * What a losing verb takes of what the bot keeps, from the words after the verb; undefined where it takes
 * something else. Verbs that machines know too ("reset", "clear") need a word for what is kept as well.
 */
export function whatIsKept(verb: string, words: readonly string[]): ForgetRequest | undefined {
  if (words.length === 0 || words.length > 14) return undefined;
  // "Remove the telly from my rig", "remove from my rig": something of it, not the rig.
  if (words[0] === 'from' || words[0] === 'out') return undefined;
  const asRig = ofRig(words);
  if (asRig) return asRig;
  if (!isPlain(words, [])) return undefined;
  const has = (kind: RegExp): boolean => words.some(word => kind.test(word));
  const first = words[0]!;
  const isKnown = words.some(word =>
    /^(?:know|knows|keep|kept|store|stored|saved|remember|remembered|told|hold|holding|have|has|got|learned|learnt)$/.test(
      word,
    ),
  );
  if (first === 'it' || first === 'that' || first === 'this' || first === 'about') {
    // "forget it", "forget that", "forget about it" are talk; "forget this chat", "this whole conversation" are not.
    if (!/^(?:chats?|groups?|conversation|whole)$/.test(words[1] ?? '')) return undefined;
  }
  const isAboutMe = words.some(
    (word, i) =>
      speaker.test(word) &&
      (word === 'me' ||
        word === 'my' ||
        word === 'mine' ||
        word === 'ive' ||
        (words[i - 1] === 'about' && !/^(?:us|our|we|weve)$/.test(word))),
  );
  if (
    has(/^(?:chats?|groups?|conversations?)$/) ||
    (has(whole) && words.some(word => place.test(word) && word !== 'here') && !isAboutMe)
  )
    return { which: 'chat' };
  if (first === 'me') return words[1] === 'not' ? undefined : { which: 'me' };
  if (has(record) && (isAboutMe || isKnown || has(/^(?:our)$/))) return { which: isAboutMe ? 'me' : 'chat' };
  if (has(whole)) {
    if (isAboutMe) return { which: 'me' };
    // "clear everything" may be a table; "forget everything" can only be the bot's.
    if (isKnown || /^(?:forget|unlearn|erase|wipe|purge|delete)$/.test(verb)) return { which: 'chat' };
    return undefined;
  }
  if (isKnown && isAboutMe && first === 'what') return { which: 'me' };
  return isKnown && first === 'what' ? { which: 'chat' } : undefined;
}
