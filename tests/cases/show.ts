import { cases, scoreOf } from './score.ts';

// `node tests/cases/show.ts [word]` prints the score and what went wrong; with a word only for ids that hold it.
const [word = ''] = process.argv.slice(2);
const list = cases.filter(one => one.id.includes(word));
const { shares, failures } = scoreOf(list);
for (const failure of failures) console.log(failure);
const score = Object.entries(shares).map(([part, share]) => `${part} ${(100 * share).toFixed(1)} %`);
console.log(`${score.join(', ')}, of ${list.length} cases`);
