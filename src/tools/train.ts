import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { dangerFolder, fingerprint, fingerprintIn, messageFolders } from './train/fingerprint.ts';
import { everyNth, groupsToFit } from './train/groups.ts';

const help = `Usage: npm run train [-- --sample N [--out FILE]] [-- --dangers] [-- --check]

Fits the reader to the labelled messages: writes src/language/words/learned.json, then
src/language/decide/weights.bin. The same messages and code always give the same files. About an hour on two cores, with 16 GB of memory.
  --sample N   only every N-th group, to try something: the project's files stay as they are
  --out FILE   where the weights of a sample go; measure them with npm run reading -- --weights FILE
  --dangers    only the net of dangers, some five minutes: where nothing but ${dangerFolder} changed
  --check      only tells whether the weights belong to the messages and the code (exit 1 if not)
VERBOSE=1 shows each step.
`;
const weightsPath = new URL('../language/decide/weights.bin', import.meta.url);
const wordsPath = new URL('../language/words/learned.json', import.meta.url);

const { values } = parseArgs({
  options: {
    sample: { type: 'string' },
    out: { type: 'string' },
    dangers: { type: 'boolean' },
    check: { type: 'boolean' },
    help: { type: 'boolean' },
  },
});

/** What is learned of words, from a process that knows none of it yet. */
const learnWords = (): string =>
  execFileSync(process.execPath, [fileURLToPath(new URL('./train/learn-words.ts', import.meta.url))], {
    encoding: 'utf8',
    maxBuffer: 1 << 26,
  });

async function train(step: number, out: URL | string | undefined): Promise<void> {
  const words = learnWords();
  if (step === 1) writeFileSync(wordsPath, words);
  else if (readFileSync(wordsPath, 'utf8') !== words) console.log('learned.json would change; it is left');
  // Loaded now, not before: the lexicons take up what was just learned.
  const [{ trainWhole }, { fitDangers }, { writeModel }] = await Promise.all([
    import('./train/whole.ts'),
    import('./train/fit-dangers.ts'),
    import('#language/decide/weights.ts'),
  ]);
  const groups = everyNth(groupsToFit(messageFolders), step);
  const start = performance.now();
  const rest = await trainWhole(groups);
  const ofDanger = everyNth(groupsToFit([dangerFolder]), step);
  const model = { ...rest, dangers: fitDangers([...groups, ...ofDanger], rest) };
  const bytes = writeModel(model, step === 1 ? fingerprint() : `every ${step}th group`);
  if (out) writeFileSync(out, bytes);
  const seconds = ((performance.now() - start) / 1000).toFixed(0);
  const hash = createHash('sha256').update(bytes).digest('hex').slice(0, 12);
  console.log(`${groups.length} groups in ${seconds} s: ${bytes.length} bytes of weights, ${hash}`);
}

/** Fits the net of dangers anew beside the rest as it is. */
async function trainDangers(): Promise<void> {
  const [{ fitDangers }, { shippedModel, writeModel }] = await Promise.all([
    import('./train/fit-dangers.ts'),
    import('#language/decide/weights.ts'),
  ]);
  const { dangers: _before, ...rest } = shippedModel();
  const groups = groupsToFit([...messageFolders, dangerFolder]);
  writeFileSync(weightsPath, writeModel({ ...rest, dangers: fitDangers(groups, rest) }, fingerprint()));
}

const step = Number(values.sample ?? 1);
if (values.help) console.log(help);
else if (values.check) {
  if (fingerprintIn(readFileSync(weightsPath)) !== fingerprint()) {
    console.error(
      'src/language/decide/weights.bin is not of these messages and this code: run "npm run train"',
    );
    process.exitCode = 1;
  }
} else if (values.dangers) await trainDangers();
else if (!Number.isInteger(step) || step < 1 || (values.out !== undefined && step === 1)) {
  console.error(`train: --sample needs a whole number, and --out goes with a --sample above 1\n\n${help}`);
  process.exitCode = 2;
} else await train(step, step === 1 ? weightsPath : values.out);
