import recognizers from '@microsoft/recognizers-text-number-with-unit';
import * as chrono from 'chrono-node';
import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { read } from '#language/reading.ts';
import { corpus, filled, pieces } from './corpus.ts';
import {
  interleaved,
  keep,
  type Line,
  median,
  quantile,
  round,
  type Section,
  timed,
  times,
} from './measure.ts';

const at = new Date('2026-01-15T09:00:00Z');
const context = {};
const message = (text: string) => ({ chat: 'c', from: 'kim', text, at, kind: 'group' as const });
const all =
  (work: (text: string) => unknown, texts = corpus) =>
  () => {
    for (const text of texts) keep(work(text));
  };

/** Messages read and answered in one process. */
export function answering(): Section {
  const answer = (text: string) => converse(emptyMemory(), message(text)).answer.text;
  const { whole } = interleaved(15, { whole: all(answer) });
  const each = corpus.map(text => median(Array.from({ length: 9 }, () => timed(() => keep(answer(text))))));
  const perSecond = (1000 * corpus.length) / whole;
  return {
    title: `Read and answered, in one process (${corpus.length} messages, each from an empty memory)`,
    lines: [
      { what: 'messages a second', value: round(perSecond), goal: '≥ 3,000', isMet: perSecond >= 3000 },
      { what: 'median message, ms', value: round(median(each)), goal: '< 0.3', isMet: median(each) < 0.3 },
      { what: 'slowest of a hundred, ms', value: round(quantile(each, 0.99)) },
    ],
  };
}

const isUsual = (text: string): boolean => {
  const words = text.split(/\s+/).length;
  return words >= 10 && words <= 30;
};
const usual = corpus.filter(isUsual).filter((_, i) => i % 4 === 0);
/** Talk that is not for the bot: no figure, no thing, no question. */
const chatter = ['lol see you at the gate', 'nah mate, she said she was right', 'happy birthday to you both'];

/** The shortest of several times that a message takes, ms: what it takes where nothing else runs. */
const shortest = (text: string, rounds = 15): number =>
  Math.min(...Array.from({ length: rounds }, () => timed(() => keep(read(text, context)))));

/** Reading alone, beside general-purpose readers on the same messages: they look for other and for more things. */
export function reading(): Section {
  const { ours, dates, scans } = interleaved(9, {
    ours: all(text => read(text, context)),
    dates: all(text => chrono.parse(text, at)),
    scans: all(text => text.match(/\d+(?:\.\d+)?\s?[a-z]*/gi)),
  });
  // The unit recogniser takes a thousand times longer: a tenth of the messages, three rounds.
  const some = corpus.filter((_, i) => i % 10 === 0);
  const { few, units } = interleaved(3, {
    few: all(text => read(text, context), some),
    units: all(text => recognizers.recognizeDimension(text, 'en-us'), some),
  });
  const perSecond = (ms: number, count = corpus.length) => round((1000 * count) / ms);
  const each = usual.map(text => shortest(text));
  const idle = median(chatter.map(text => 1000 * shortest(text, 200)));
  return {
    title: 'Reading alone, on the same messages',
    lines: [
      { what: 'messages a second', value: perSecond(ours) },
      {
        what: 'median of those with 10–30 words, ms',
        value: round(median(each)),
        goal: '≤ 0.3',
        isMet: median(each) <= 0.3,
      },
      { what: 'slowest of a hundred of these, ms', value: round(quantile(each, 0.99)) },
      { what: 'chatter, µs', value: round(idle), goal: '≤ 5', isMet: idle <= 5 },
      { what: 'chrono-node (dates), messages a second', value: perSecond(dates) },
      { what: 'as fast as chrono-node', value: times(dates / ours) },
      {
        what: 'recognizers-text (numbers with units), messages a second',
        value: perSecond(units, some.length),
      },
      { what: 'as fast as recognizers-text', value: times(units / few) },
      {
        what: 'a bare regular expression for number and letters, messages a second',
        value: perSecond(scans),
      },
      { what: 'time of the bare regular expression', value: times(ours / scans) },
    ],
  };
}

/** Long messages: time in proportion to length, whatever stands in them. */
export function length(): Section {
  const lines: Line[] = [];
  let [worst, slowest] = [0, 0];
  for (const [name, piece] of Object.entries(pieces)) {
    const [short, long] = [filled(piece, 2048), filled(piece, 4096)];
    // In turn, the shortest of each: long messages meet slow moments of the machine more often than short ones.
    const took = { short: Number.POSITIVE_INFINITY, long: Number.POSITIVE_INFINITY };
    for (let round = 0; round < 25; round++) {
      took.short = Math.min(took.short, shortest(short, 1));
      took.long = Math.min(took.long, shortest(long, 1));
    }
    // Below 20 µs the clock says more than the reader.
    const ratio = took.long / Math.max(took.short, 0.02);
    worst = Math.max(worst, ratio);
    slowest = Math.max(slowest, took.long);
    lines.push({
      what: `4,096 characters of ${name}, ms`,
      value: `${round(took.long)} (${times(ratio)} of 2,048)`,
    });
  }
  return {
    title: 'Long messages, reading alone',
    lines: [
      { what: 'slowest of 4,096 characters, ms', value: round(slowest), goal: '≤ 5', isMet: slowest <= 5 },
      {
        what: '4,096 characters to 2,048, at worst',
        value: times(worst),
        goal: '≤ 2.5 ×',
        isMet: worst <= 2.5,
      },
      ...lines,
    ],
  };
}
