import { readFileSync, writeFileSync } from 'node:fs';
import { present } from '#basics/present.ts';
import { decide } from '#language/decide/decide.ts';
import type { TalkContext } from '#language/decide/frame.ts';
import { shippedModel } from '#language/decide/weights.ts';
import { read as readMessage } from '#language/reading.ts';
import { files, read } from '../house/source.ts';
import { filled, pieces } from './corpus.ts';

// Does a change made for speed leave every decision as it was?
//   node tests/bench/decisions.ts --write before.json     before the change
//   node tests/bench/decisions.ts before.json             after it
// Facts, intents and mentions must be the same, probabilities to 1e-6, logarithms of them to 1e-5: sums of other order.

const most = 3000;
const talks: readonly TalkContext[] = [
  {},
  { lastIntent: 'run-time', lastKeys: ['batteries', 'loads'], asked: [], things: ['fridge'], isOwn: true },
  { lastIntent: 'charge-time', lastKeys: ['batteries'], asked: ['?', 'A'], hasRig: true, people: ['sam'] },
];

/** Every n-th of all wordings, and messages that nobody writes in good faith. */
function texts(): string[] {
  const all = files('tests/messages/*.jsonl', 'tests/messages/partial/*.jsonl').flatMap(path =>
    read(path)
      .split('\n')
      .filter(Boolean)
      .flatMap(line => (JSON.parse(line) as { wordings: string[] }).wordings),
  );
  const step = all.length / most;
  const some = Array.from({ length: most }, (_, i) => present(all[Math.floor(i * step)]));
  return [...some, ...Object.values(pieces).map(piece => filled(piece, 90))];
}

/** What is decided of a message, but for what only explains it. */
function decisionOf(text: string, i: number): unknown {
  const context = present(talks[i % 5 < 3 ? 0 : (i % 5) - 2]);
  const { options, recognised, cues, ...rest } = readMessage(text, context);
  const { certainty, signs, hazards } = decide(shippedModel(), recognised.mentions, context, text);
  return {
    ...rest,
    text,
    cues: [...cues],
    mentions: recognised.mentions,
    certainty,
    signs,
    hazards: Object.fromEntries(hazards),
    options: options.map(({ intent, stated, probability }) => ({ intent, stated, probability })),
  };
}

let largest = 0;
const tolerance = 1e-6;
// A likelihood below this is noise of the sum: order and value of such options may change.
const least = 1e-6;

/** Where two decisions differ. */
function differences(a: unknown, b: unknown, path: string): string[] {
  if (typeof a === 'number' && typeof b === 'number') {
    const far = Math.abs(a - b);
    largest = Math.max(largest, far);
    return far <= (/margin|signs/.test(path) ? 10 : 1) * tolerance ? [] : [`${path}: ${a} → ${b}`];
  }
  if (a && b && typeof a === 'object' && typeof b === 'object') {
    const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
    return [...keys].flatMap(key =>
      differences((a as Record<string, unknown>)[key], (b as Record<string, unknown>)[key], `${path}.${key}`),
    );
  }
  return a === b ? [] : [`${path}: ${JSON.stringify(a)} → ${JSON.stringify(b)}`];
}

type Told = { text: string; options: { probability: number }[] };
const now = texts().map((text, i) => JSON.parse(JSON.stringify(decisionOf(text, i))) as Told);
const [first, second] = process.argv.slice(2);
if (first === '--write') writeFileSync(present(second), JSON.stringify(now));
else {
  const before = JSON.parse(readFileSync(present(first), 'utf8')) as Told[];
  const likely = (told: Told): Told => ({
    ...told,
    options: told.options.filter(o => o.probability > least),
  });
  let changed = 0;
  now.forEach((told, i) => {
    const found = differences(likely(present(before[i])), likely(told), '');
    if (found.length === 0) return;
    changed++;
    if (changed <= 10) console.log(JSON.stringify(told.text), found.slice(0, 4));
  });
  console.log(
    `${changed} of ${now.length} decisions changed; numbers by ${largest.toExponential(1)} at most`,
  );
  if (changed > 0) process.exitCode = 1;
}
