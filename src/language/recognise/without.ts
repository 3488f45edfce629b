import type { Token } from '../lex/lex.ts';
import type { Mention } from './mention.ts';

const negations: ReadonlySet<string> = new Set([
  'no',
  'nae',
  'nay',
  'without',
  'wout',
  'sans',
  'zero',
  'not',
  'nor',
  'nil',
  'never',
  'wont',
  'dont',
  'arent',
  'isnt',
  'neither',
  'no more',
  'minus',
  'cant',
  'wont be',
  'lacking',
  'havent',
  'aint',
  'nothing',
  'none',
  'skip',
  'strike',
  'scrap',
  'ditch',
  'wiout',
  'wioot',
  'wasnt',
  'werent',
  'shant',
  'leave',
  'leaving',
  'omit',
  'omitting',
  'disregard',
  'disregarding',
  'ignore',
  'ignoring',
  'forget',
  'forgetting',
  'exclude',
  'excluding',
  'wouldnt',
  'nobody',
  'nowt',
  'didnt',
]);
const fillers: ReadonlySet<string> = new Set([
  'any',
  'the',
  'a',
  'an',
  'my',
  'our',
  'extra',
  'more',
  'be',
  'been',
  'got',
  'get',
  'much',
  'from',
  'to',
  'going',
  'by',
  'of',
  'doing',
  'using',
  'having',
  'help',
  'mind',
  'plan',
  'planning',
  'want',
  'wi',
  'even',
  'real',
  'at',
  'all',
  'is',
  'are',
  'was',
  'being',
  'me',
  'us',
  'campsite',
  'camp',
  'site',
  'electric',
  'electrical',
  'single',
  'bit',
  'proper',
  'out',
  'plugged',
  'in',
]);
/** What is started: "not starting the car", "engine" by itself says it too. */
const starts: ReadonlySet<string> = new Set([
  'start',
  'starting',
  'started',
  'fire',
  'firing',
  'crank',
  'cranking',
  'run',
  'running',
]);
const vehicles: ReadonlySet<string> = new Set([
  'car',
  'cars',
  'van',
  'vans',
  'ute',
  'truck',
  'bus',
  'motor',
  'engine',
  'motors',
  'engines',
  'vehicle',
  'rig',
  'camper',
]);
const sources: Readonly<Record<string, string>> = {
  solar: 'solar',
  sun: 'solar',
  sunshine: 'solar',
  panel: 'solar',
  panels: 'solar',
  pv: 'solar',
  sunlight: 'solar',
  driving: 'driving',
  driven: 'driving',
  drive: 'driving',
  drives: 'driving',
  drivin: 'driving',
  moving: 'driving',
  alternator: 'driving',
  engine: 'driving',
  travel: 'driving',
  travelling: 'driving',
  motoring: 'driving',
  move: 'driving',
  charging: 'charging',
  charge: 'charging',
  recharge: 'charging',
  recharging: 'charging',
  chargin: 'charging',
  topup: 'charging',
  input: 'charging',
  inputs: 'charging',
  hookup: 'mains',
  hookups: 'mains',
  mains: 'mains',
  shore: 'mains',
  hook: 'mains',
  ehu: 'mains',
  plug: 'mains',
  plugs: 'mains',
  electricity: 'mains',
  powerpoint: 'mains',
  socket: 'mains',
  sockets: 'mains',
  outlet: 'mains',
  outlets: 'mains',
  powerpoints: 'mains',
  generator: 'generator',
  genny: 'generator',
  gennie: 'generator',
  genset: 'generator',
  gen: 'generator',
  jenny: 'generator',
  battery: 'battery',
  batteries: 'battery',
  dcdc: 'dcdc',
  inverter: 'inverter',
};
/** What joins a second source to one that is ruled out: "no solar or driving", "no sun/hookup". */
const joins: ReadonlySet<string> = new Set(['or', 'nor', '/']);
const most = 5;

/** The word after "the", "my" and their like. */
function startedAt(words: readonly string[], from: number): number {
  let i = from;
  while (i < from + 2 && fillers.has(words[i] ?? '')) i++;
  return i;
}

/** What may stand between the halves of "dc-dc". */
const between: ReadonlySet<string> = new Set(['-', '/', 'to']);

/** The end of a "dc-dc" or "dc to dc" that starts at a word. */
function dcdcEnd(words: readonly string[], at: number): number | undefined {
  if (words[at] !== 'dc') return undefined;
  let i = at + 1;
  while (i < at + 4 && between.has(words[i] ?? '')) i++;
  return words[i] === 'dc' ? i + 1 : undefined;
}

/** A source ruled out: "no sun", "without any driving", "won't be driving", "nor a generator". */
export function withoutAt(
  words: readonly string[],
  tokens: readonly Token[],
  at: number,
  before?: Mention,
): Mention | undefined {
  const isNext = joins.has(words[at]!) && before?.kind === 'without';
  // "w/o" comes in three tokens.
  const isShort = words[at] === 'w' && words[at + 1] === '/' && words[at + 2] === 'o';
  if (!negations.has(words[at]!) && !isNext && !isShort) return undefined;
  let i = at + (isShort ? 3 : 1);
  while (i < words.length && i < at + most && fillers.has(words[i]!)) i++;
  // "Sat none" at a line's end rules out nothing on the next one.
  for (let j = at + 1; j <= i; j++) if (tokens[j]?.isNewLine) return undefined;
  const isStarted = starts.has(words[i] ?? '');
  if (isStarted) i = startedAt(words, i + 1);
  const converter = isStarted ? undefined : dcdcEnd(words, i);
  const source =
    converter !== undefined
      ? 'dcdc'
      : isStarted && vehicles.has(words[i] ?? '')
        ? 'driving'
        : (words[i] ?? '');
  if (!Object.hasOwn(sources, source)) return undefined;
  let end = converter ?? i + 1;
  if (source === 'hook' && /^ups?$/.test(words[end] ?? '')) end++;
  if (source === 'shore' && words[end] === 'power') end++;
  const key = sources[source]!;
  return {
    kind: 'without',
    key,
    cls: `without:${key}`,
    text: words.slice(at, end).join(' '),
    from: at,
    to: end,
    value: Number.NaN,
    told: Number.NaN,
    variants: [],
  };
}
