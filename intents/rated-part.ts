import type { Reply } from '#answer/reply.ts';
import { present } from '#basics/present.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { decimals, significant } from '#quantity/round.ts';
import { amountsOf } from './figures-told.ts';
import type { WorkedBeside } from './worked-beside.ts';

/** A part of the wiring with the amps it is rated for, and those that are to go through it. */
interface RatedPart {
  readonly name: string;
  readonly ratedA: number;
  readonly wantedA: number;
}

/** Parts that current goes through, by the words they are called by; a fuse and a cable are judged by their own sums. */
const parts: ReadonlyMap<string, string> = new Map(
  Object.entries({
    plug: 'plug',
    plugs: 'plug',
    anderson: 'plug',
    andersons: 'plug',
    connector: 'connector',
    connectors: 'connector',
    socket: 'socket',
    sockets: 'socket',
    outlet: 'socket',
    switch: 'switch',
    isolator: 'isolator',
    relay: 'relay',
    solenoid: 'solenoid',
    breaker: 'breaker',
    busbar: 'busbar',
    holder: 'holder',
  }),
);

/** Words by which a figure is the part's own. */
const ofRating: ReadonlySet<string> = new Set(
  'rated rating rate says max maximum limit label good stamped marked'.split(' '),
);
/** Usual ratings of what is called by its make, A. Common practice. */
const usualA: ReadonlyMap<string, number> = new Map([['anderson', 50]]);

/** Words between a rating and the part it stands before: "50A grey Anderson plug". */
const reach = 3;

/** The words of a message at their places, as they are mentioned. */
function wordsOf(mentions: readonly Mention[]): readonly string[] {
  const words: string[] = [];
  for (const { kind, text, from } of mentions)
    if (kind !== 'amount')
      for (const [i, word] of text.toLowerCase().split(' ').entries()) words[from + i] = word;
  return Array.from(words, word => word ?? '');
}

/** Words beside a bare number that make it amps: "can I pull 60 through it", "rated 10". */
const ofCurrent: ReadonlySet<string> = new Set(
  'pull pulling pulls draw drawing draws run running put putting push pushing through rated rating'.split(
    ' ',
  ),
);

/** The currents that are told, and bare numbers that can be nothing else, in their order. */
const currentsIn = (mentions: readonly Mention[], words: readonly string[]): readonly Mention[] => {
  const bare = mentions.filter(
    ({ kind, from }) =>
      kind === 'number' && (ofCurrent.has(words[from - 1] ?? '') || words[from + 1] === 'through'),
  );
  const told = amountsOf(mentions, 'current');
  return told.length === 0 ? [] : [...told, ...bare].toSorted((a, b) => a.from - b.from);
};

/** The part, its rating and the current asked of it, where those and nothing else are told. */
function ratedPart(mentions: readonly Mention[]): RatedPart | undefined {
  const words = wordsOf(mentions);
  const [first, second, ...more] = currentsIn(mentions, words);
  if (!first || more.length > 0) return undefined;
  const at = words.findIndex(word => parts.has(word));
  const called = words[at];
  const name = called === undefined ? undefined : parts.get(called);
  if (called === undefined || name === undefined) return undefined;
  const make = words.find(word => usualA.has(word));
  if (!second) {
    // "Is an Anderson plug ok for 50 amps": of "a 50 A Anderson plug" the figure is its own.
    const usual = make === undefined ? undefined : usualA.get(make);
    return usual === undefined || first.from < at ? undefined : { name, ratedA: usual, wantedA: first.value };
  }
  const nearRating = (from: number): number =>
    Math.min(...words.flatMap((word, i) => (ofRating.has(word) ? [Math.abs(i - from)] : [])), Infinity);
  const [a, b] = [nearRating(first.from), nearRating(second.from)];
  const isFirst =
    a === b ? first.from < at && at - first.from <= reach && second.from > at : a < b && a <= reach + 1;
  const isSecond = a === b ? second.from < at && at - second.from <= reach : b < a && b <= reach + 1;
  if (isFirst === isSecond) return undefined;
  const [rated, wanted] = isFirst ? [first, second] : [second, first];
  return { name, ratedA: rated.value, wantedA: wanted.value };
}

/** Of a rating what may go through it for hours. Common practice: the share that a fuse has too. */
const forLong = 0.8;

/** Yes or no first, and by how much. */
function judged({ name, ratedA, wantedA }: RatedPart): Pick<Reply, 'headline' | 'verdict'> {
  const amps = `${significant(wantedA)} A`;
  const rating = `the ${significant(ratedA)} A that the ${name} is rated for`;
  if (wantedA > ratedA) {
    const then = name === 'breaker' ? 'it trips' : 'it overheats, within minutes too';
    const over = `${significant(wantedA - ratedA, 2)} A more than ${rating}`;
    return { headline: `No: ${amps} is ${over}: ${then}.`, verdict: 'no' };
  }
  if (wantedA <= forLong * ratedA) return { headline: `Yes: ${amps} is within ${rating}.`, verdict: 'yes' };
  const spare = decimals(100 * (1 - wantedA / ratedA), 0);
  return {
    headline: `Yes, just: ${amps} is within ${rating}, with ${spare === '0' ? 'nothing' : `${spare} %`} to spare.`,
    verdict: 'yes',
  };
}

/** Whether a part may carry more, or as much, as it is rated for. */
export const ratedParts: WorkedBeside = {
  name: 'rated-part',
  spots: [
    'plug|plugs|anderson|andersons|connector|connectors|socket|sockets|outlet|switch|isolator|relay|solenoid|breaker|busbar|holder can|could|ok|okay|alright|fine|safe|will|would|too_much|enough|handle|handles|does|is_it|do_it|right|worry|cope -fuse -trips -tripped -tripping -what_size -trailer -cost -price -hot -warm -melted -melting -burnt -metres -volts_drop',
  ],
  when: ({ recognised: { mentions } }) => ratedPart(mentions) !== undefined,
  takes: [],
  reply: (_facts, { parsed: { recognised } }) => {
    const part = present(ratedPart(recognised.mentions));
    const wider = significant(Math.ceil(part.wantedA / forLong));
    return {
      ...judged(part),
      lines:
        part.wantedA > part.ratedA
          ? [`Fit one rated ${wider} A or more, on cable that carries it, or draw less.`]
          : [
              'The weakest part counts: battery, fuse, plug and cable must each stand it. What gets warm is switched off.',
              'It holds for clean, tight contacts and the cable that it was made for.',
            ],
      next: [],
    };
  },
};
