import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { fitWeights } from './hazards/fit.ts';
import { readLabelled } from './hazards/labelled.ts';
import { byWays, crossValidated, fold, type Score, score } from './hazards/measure.ts';

// `node src/tools/train-hazards.ts FILE… [--check] [--failures]`: fits the weights of the dangers to labelled
// messages and prints what held under cross-validation. With --check it writes nothing.
const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: { check: { type: 'boolean' }, failures: { type: 'boolean' } },
});
/** The project's own labelled messages, fitted beside those given. */
const own = new URL('./hazards/own.jsonl', import.meta.url);
const weights = new URL('../language/hazards/weights.json', import.meta.url);

const line = (name: string, { seenPercent, alarmPercent, missed, alarmed }: Score): string =>
  `${name}: seen ${seenPercent} %, false alarms ${alarmPercent} % (${missed.length} missed, ${alarmed.length} alarmed)`;

const rows = readLabelled([...positionals, fileURLToPath(own)]);
const held = crossValidated(rows, fold);
console.log(line('five-fold by meaning', held));
console.log(
  line(
    'each author held out',
    crossValidated(rows, row => row.author),
  ),
);
console.log(line('ways of the table alone', score(rows, byWays)));
if (values.failures) {
  for (const row of held.missed) console.log(`missed ${row.danger} ${row.group} ${JSON.stringify(row.text)}`);
  for (const row of held.alarmed) console.log(`alarm ${row.group} ${JSON.stringify(row.text)}`);
}
if (!values.check) {
  const model = fitWeights(rows);
  writeFileSync(weights, `${JSON.stringify(model, null, 2)}\n`);
  const count = Object.values(model).reduce((n, { features }) => n + Object.keys(features).length, 0);
  console.log(`wrote ${count} weights`);
}
