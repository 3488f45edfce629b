import { isStop, quantityAt, type State, textAt, wordAt } from '../state.ts';
import { plainWords } from '../words/en/common.ts';
import { list } from '../words/list.ts';
import { vocabulary } from './vocabulary.ts';

/** One person's words: who, where they start and where the next begins. */
export interface Clause {
  readonly who: string;
  readonly at: number;
  readonly from: number;
  end: number;
}

const verbs = list(`
  says say said reckons reckon reckoned thinks think thought claims claim claimed bets swears swear wants
  figures figure guesses guess insists insist tells told goes argues estimates estimate suggests suggested
  saying recommends recommended maintains quoted quotes recons recon rekons rekon believes believe
  predicts calculates calculated gets got bet sez
`);
/** Verbs that everybody uses of everything: only with a name before and a figure behind. */
const weakVerbs = list(`
  wants goes gets got figures figure think guess claim bet tells say estimate calculated told
`);
/** Verbs that only people do: whoever stands before them is one, whatever the word means elsewhere ("max says"). */
const strongVerbs = list(`
  says reckons thinks claims swears insists bets believes reckoned recons rekons sez said claimed
  maintains argues
`);
const neverPeople = list(`
  is are was not also or with on in of for if so as a volts amps solar fuse cable reads always usually
  then
`);
/** What speaks without being a person: its figures are readings. */
const devices = list(`
  it label plate sticker box meter multimeter gauge monitor screen display app panel voltage manual book
  shunt which that this what battery fridge microwave kettle door specs spec sheet compliance lithium agm
  inverter rating bms reading voltmeter datasheet site forecast laptop charger controller regulator there
  bat batt tester gage guage ammeter clamp dash dashboard readout unit thermometer tag website listing
  packaging ad phone bluetooth sensor brick adapter adaptor psu supply plate tag
  when we you how thing internet who people and to ive weve have
`);
const fillers = list(`
  that its it about around only like more at least roughly is will be you need needs we a an the just
  maybe should use uses ill itll get gets last lasts us me for of easy most up to over under nearly almost
  runs does takes i can would than do =
`);
const speakers = list('i id me he she they someone somebody');

/** Cuts the message into what each person says; empty where nobody claims anything. */
export function clauses(state: State): Clause[] {
  const found: Clause[] = [];
  const bare: Clause[] = [];
  for (let i = 0; i < state.tokens.length; i++) {
    const word = wordAt(state, i);
    if (!word) continue;
    const spoken = verbs.has(word) ? spokenAt(state, i) : undefined;
    if (spoken) {
      const start = spoken.start;
      const last = found.at(-1);
      if (last && last.end > start) last.end = start;
      found.push({ who: spoken.who, at: start, from: i + 1, end: endOf(state, i + 1) });
    } else {
      const named = namedAt(state, i);
      if (named) bare.push(named);
    }
  }
  // "ann 40 hours, ben 30": names alone make claims only where there are two voices.
  const isDispute =
    bare.length + found.length >= 2 || (bare.length > 0 && state.cues.has('ask-who-is-right'));
  const all = isDispute ? [...found, ...bare].sort((a, b) => a.at - b.at) : found;
  for (const [i, clause] of all.entries()) {
    const next = all[i + 1];
    if (next && clause.end > next.at) clause.end = next.at;
  }
  return all.filter(clause => clause.end > clause.from);
}

/** The person before a verb of saying, or undefined. */
function spokenAt(state: State, at: number): { who: string; start: number } | undefined {
  let back = at - 1;
  if (/^(still|always|just|also|now|then|never)$/.test(wordAt(state, back))) back--;
  const who = wordAt(state, back);
  // What a battery or a sandwich press "says" is a reading of it.
  if (state.things.some(one => one.at <= back && back < one.end)) return undefined;
  const verb = wordAt(state, at);
  if (
    !who ||
    devices.has(who) ||
    /^(dont|not|never|as|is|was|the|a|an|would|will|can|does|did|do|or|say)$/.test(who)
  )
    return undefined;
  const isPerson = speakers.has(who) || state.context.people.includes(who) || !vocabulary.has(who);
  if (
    !isPerson &&
    !(strongVerbs.has(verb) && !neverPeople.has(who)) &&
    !/^(shop|mechanic|seller|salesman|guy|bloke|bot|mate|sparky|electrician|hubby|missus|neighbour|neighbor|installer|dealer|lady|man|woman|kid|dog|store|x|y|z|a|b)$/.test(
      who,
    )
  )
    return undefined;
  if (weakVerbs.has(verb) && !hasFigureSoon(state, at + 1)) return undefined;
  if (
    (verb === 'say' || verb === 'think' || verb === 'bet') &&
    who !== 'i' &&
    who !== 'id' &&
    who !== 'they' &&
    who !== 'we' &&
    who !== 'y' &&
    !state.context.people.includes(who) &&
    who !== 'others'
  )
    return undefined;
  const inLaw = who === 'law' ? relativeInLaw(state, back) : undefined;
  return inLaw ?? { who: who === 'id' ? 'i' : who, start: back };
}

/** "brother in law", "mother-in-law": the whole of it. */
function relativeInLaw(state: State, at: number): { who: string; start: number } | undefined {
  let i = at - 1;
  if (textAt(state, i) === '-') i--;
  if (wordAt(state, i) !== 'in') return undefined;
  i--;
  if (textAt(state, i) === '-') i--;
  const relative = wordAt(state, i);
  return relative ? { who: `${relative} in law`, start: i } : undefined;
}

function hasFigureSoon(state: State, at: number): boolean {
  for (let i = at; i < at + 4; i++) {
    if (quantityAt(state, i) || state.tokens[i]?.kind === 'number') return true;
    if (!fillers.has(wordAt(state, i))) return false;
  }
  return false;
}

/** "pam: 8A", "ben 30 hours", "me 3.5", "rob = 4". */
function namedAt(state: State, at: number): Clause | undefined {
  const word = wordAt(state, at);
  const isMe = word === 'me' || word === 'myself' || state.context.people.includes(word);
  if (!isMe && (vocabulary.has(word) || plainWords.has(word) || word.length < 1)) return undefined;
  if (!isMe && state.things.some(one => one.at <= at && at < one.end)) return undefined;
  const before = textAt(state, at - 1);
  if (at > 0 && !/^[,.;:!?\n(+&/-]$/.test(before) && !/^(and|but|n|vs|while|or)$/.test(before))
    return undefined;
  let next = at + 1;
  if (/^[:=-]$/.test(textAt(state, next))) next++;
  while (next < at + 5 && fillers.has(wordAt(state, next))) next++;
  const quantity = quantityAt(state, next);
  if (!quantity && state.tokens[next]?.kind !== 'number') return undefined;
  if (quantity && (quantity.taken || state.things.some(one => one.at === next + 1 && one.kind === 'load')))
    return undefined;
  return { who: word, at, from: at + 1, end: endOf(state, next) };
}

const endOf = (state: State, from: number): number => {
  for (let i = from; i < state.tokens.length; i++) {
    const text = textAt(state, i);
    if (isStop(text)) return i;
  }
  return state.tokens.length;
};

const resultVerbs = list('gives makes stays equals remains becomes');
const denials = list(`
  no nah nope rubbish wrong bull bullshit never naw bollocks nonsense crap disagree nup noway hardly
`);

const boasts = list('easy easily tops max guaranteed comfortably');

/** Token of the figure that the speaker states as a result, or −1 as undefined. */
export function result(state: State): number | undefined {
  const { tokens } = state;
  const isDenial = denials.has(wordAt(state, 0));
  for (let i = 0; i < tokens.length; i++) {
    const word = wordAt(state, i);
    const isReckon =
      (word === 'reckon' || word === 'think' || word === 'say') && wordAt(state, i - 1) === 'i';
    if (isReckon) {
      for (let k = i - 2; k >= 0 && k >= i - 4; k--)
        if (quantityAt(state, k) && quantityAt(state, k)!.unit.dimension !== 'voltage') return k;
    }
    if (word === 'is' && isToldTwice(state, i)) return i + 1;
    if (resultVerbs.has(word) && i > 0) for (let k = i + 1; k < i + 4; k++) if (figure(state, k)) return k;
    if (boasts.has(word) && quantityAt(state, i - 1)?.unit.dimension === 'time') return i - 1;
    if (word === 'need' && /^(you|youd|youll)$/.test(wordAt(state, i - 1)))
      for (let k = i + 1; k < i + 4; k++)
        if (
          quantityAt(state, k)?.unit.dimension === 'charge' ||
          quantityAt(state, k)?.unit.dimension === 'area' ||
          quantityAt(state, k)?.unit.dimension === 'power'
        )
          return k;
  }
  if (!isDenial || tokens.length > 9) return undefined;
  const not = tokens.findIndex(token => token.text === 'not');
  if (not > 0 || state.cues.has('correction')) return undefined;
  const figures = tokens.map((_, i) => i).filter(i => figure(state, i));
  if (
    figures.length !== 1 ||
    (/^(its|sorry|i|make)$/.test(wordAt(state, 1)) && !/^(stays|only)$/.test(wordAt(state, 2)))
  )
    return undefined;
  return figures[0];
}

/** "a 60w fridge is 5 amps": a load's power turned into a current, or the other way round. */
function isToldTwice(state: State, at: number): boolean {
  const result = quantityAt(state, at + 1);
  const load = state.things.find(one => one.kind === 'load' && one.end === at);
  const own = quantityAt(state, load ? load.at - 1 : at - 1);
  const pair = `${own?.unit.dimension} ${result?.unit.dimension}`;
  return pair === 'power current' || pair === 'current power';
}

const figure = (state: State, at: number): boolean =>
  quantityAt(state, at) !== undefined || state.tokens[at]?.kind === 'number';
