import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { readModel, shippedModel } from '#language/decide/weights.ts';
import { changes } from './metamorphic/changes.ts';
import { unchanged } from './metamorphic/unchanged.ts';
import { bySubject, failures, summary, table, worstGroups } from './reading/report.ts';
import { everyNth, isClosed, readGroups } from './train/groups.ts';
import { measure, percent } from './train/measure.ts';

const help = `Usage: npm run reading [-- FOLDER…] [options]

Reads labelled messages and tells how many are read as their labels say: reach (some allowed reading is right), choice
(it is the one decided for), exact readings, whole groups, how wrong trades against asking back, and dangers.
  FOLDER…        folders of labelled messages; tests/messages by default
  --closed       folders that follow are closed: totals alone; tests/messages/closed by default
  --failures N   shows N wordings that are read wrong, and what differs (never of closed groups)
  --worst N      shows the N worst groups; 10 by default
  --sample N     only every N-th group
  --weights FILE weights to measure in place of the shipped ones
  --metamorphic  2,000 messages changed in ways that must not change the reading: how many stay as they were
`;
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    closed: { type: 'boolean' },
    failures: { type: 'string', default: '0' },
    worst: { type: 'string', default: '10' },
    sample: { type: 'string', default: '1' },
    weights: { type: 'string' },
    metamorphic: { type: 'boolean' },
    help: { type: 'boolean' },
  },
});
const model = values.weights ? readModel(readFileSync(values.weights)) : shippedModel();

function tellFolder(folder: string): void {
  const results = measure(everyNth(readGroups(folder), Number(values.sample)), model);
  const isHidden = values.closed || isClosed(folder);
  console.log(summary(isHidden ? `${folder}, closed` : folder, results).join('\n'));
  if (isHidden) return;
  console.log(['', ...bySubject(results)].join('\n'));
  console.log(['', 'Worst groups:', ...worstGroups(results, Number(values.worst))].join('\n'));
  const wrong = failures(results, Number(values.failures));
  if (wrong.length > 0) console.log(['', 'Not as labelled:', ...wrong].join('\n'));
}

/** How many readings stay as they were under each change. */
function tellChanges(folder: string): void {
  const rows = unchanged(readGroups(folder), model, 2_000).map(({ change, tried, same }) => [
    changes[change].says,
    tried,
    percent(same / tried),
  ]);
  console.log(table(['change', 'messages', 'read as before %'], rows).join('\n'));
}

const folders =
  positionals.length > 0 ? positionals : [values.closed ? 'tests/messages/closed' : 'tests/messages'];
if (values.help) console.log(help);
else if (values.metamorphic) for (const folder of folders.filter(f => !isClosed(f))) tellChanges(folder);
else for (const folder of folders) tellFolder(folder);
