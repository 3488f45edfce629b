import { globSync, readFileSync } from 'node:fs';
import { present } from '#basics/present.ts';
import { appliances } from '#catalog/appliances-table.ts';
import { intents } from '#intents';
import { parseFormula } from '#rule/parse.ts';
import { printFormula } from '#rule/print.ts';
import { allRules, type Rule } from '#rule/rule.ts';

const root = new URL('../../', import.meta.url);
const isRule = (value: unknown): value is Rule<string> => (allRules as unknown[]).includes(value);

/** Rooms of the engine in the order in which a beginner meets them. */
const order = ['loads', 'battery', 'charging', 'solar', 'inverter', 'cable', 'trip'];

/** "k_rate" as a page shows it: `k_rate`, never read as markup. */
const code = (text: string): string => `\`${text}\``;
const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');
const table = (head: readonly string[], rows: readonly (readonly string[])[]): string[] => [
  `| ${head.join(' | ')} |`,
  `|${' --- |'.repeat(head.length)}`,
  ...rows.map(row => `| ${row.map(cell).join(' | ')} |`),
];

function ruleSection(rule: Rule<string>): string[] {
  return [
    `### ${rule.name}`,
    '',
    rule.says,
    '',
    `    ${rule.gives.symbol} = ${printFormula(rule)}`,
    '',
    ...table(
      ['symbol', 'is', 'unit'],
      [
        ...Object.entries(rule.symbols).map(([name, { says, unit }]) => [code(name), says, unit]),
        [code(rule.gives.symbol), 'the result', rule.gives.unit],
      ],
    ),
    '',
    `Source: ${rule.source}.`,
    '',
  ];
}

const show = (value: unknown): string => {
  if (Array.isArray(value)) return value.map(show).join(' / ');
  if (value !== null && typeof value === 'object')
    return Object.entries(value)
      .map(([key, inner]) => `${key}: ${show(inner)}`)
      .join(', ');
  return value === undefined ? '' : String(value);
};

const isRecord = (value: unknown): value is Record<string, unknown> =>
  value !== null && typeof value === 'object' && !Array.isArray(value);

/** A table of data as a page shows it: rows of one shape, from a list of objects or an object of objects. */
function tableSection(name: string, value: unknown, path: string): string[] {
  const rows = Array.isArray(value)
    ? value
    : isRecord(value)
      ? Object.entries(value).map(([key, row]) => (isRecord(row) ? { row: key, ...row } : undefined))
      : [];
  if (rows.length < 2 || !rows.every(isRecord)) return [];
  const columns = [...new Set(rows.flatMap(row => Object.keys(row)))];
  const cells = rows.map(row => columns.map(column => show(row[column])));
  return [
    `### Table: ${name}`,
    '',
    `What each column means stands in ${code(path)}.`,
    '',
    ...table(columns, cells),
    '',
  ];
}

/** `docs/method.md`: every rule and every table of the engine, with its source. */
async function method(): Promise<string> {
  const lines = [
    '# Method: every formula and table the bot uses',
    '',
    'Written by `npm run docs` from the rules that the program runs; not by hand. Each formula gives the number,',
    'the working shown in a chat and its line here. A table shows a likely value with its plausible ends by slashes.',
    '',
  ];
  const rooms = globSync('src/engine/*/', { cwd: root }).map(path => present(path.split(/[\\/]/)[2]));
  const at = (room: string) => (order.includes(room) ? order.indexOf(room) : order.length);
  for (const room of rooms.sort((a, b) => at(a) - at(b) || a.localeCompare(b))) {
    const paths = globSync(`src/engine/${room}/*{rules,tables}.ts`, { cwd: root }).sort();
    const sections: string[] = [];
    for (const path of paths) {
      const exported = Object.entries((await import(new URL(path, root).href)) as Record<string, unknown>);
      // By name, whoever loads the module; the rules are told in the order in which they are written.
      exported.sort(([a], [b]) => (a < b ? -1 : 1));
      const rules = exported.map(([, value]) => value).filter(isRule);
      rules.sort((a, b) => allRules.indexOf(a) - allRules.indexOf(b));
      sections.push(...rules.flatMap(ruleSection));
      if (path.endsWith('tables.ts'))
        sections.push(...exported.flatMap(([name, value]) => tableSection(name, value, path)));
    }
    if (sections.length > 0)
      lines.push(`## ${present(room[0]).toUpperCase()}${room.slice(1)}`, '', ...sections);
  }
  const path = 'src/catalog/appliances-table.ts';
  // The many ways to spell a name are for reading alone.
  const rows = appliances.map(({ names: _names, ...row }) => row);
  lines.push('## Catalogue', '', ...tableSection('appliances', rows, path));
  return `${lines.join('\n').trimEnd()}\n`;
}

interface Row {
  readonly say: string;
  readonly show?: string;
  readonly not?: boolean;
}

/** `docs/questions.md`: what people can ask, from the phrases that the tests hold. */
function questions(): string {
  const lines = [
    '# What you can ask',
    '',
    'Written by `npm run docs` from `intents/*/phrases.json`; the tests ask every line of it.',
    '',
  ];
  for (const { name, title } of intents) {
    const path = new URL(`intents/${name}/phrases.json`, root);
    const all = JSON.parse(readFileSync(path, 'utf8')) as Row[];
    const rows = all.filter(row => !row.not);
    const said = [...rows.filter(row => row.show), ...rows.filter(row => !row.show)];
    lines.push(`## ${title}`, '', `(${code(name)})`, '', ...said.map(row => `- ${cell(row.say)}`), '');
  }
  return `${lines.join('\n').trimEnd()}\n`;
}

/** `src/rule/trees.json`: every formula of the rules as mathjs parses it, one a line, so that a start needs no mathjs. */
function trees(): string {
  const rows = new Map<string, string>();
  for (const { name, formula, symbols } of allRules)
    rows.set(formula, JSON.stringify(parseFormula(name, formula, Object.keys(symbols))));
  const lines = [...rows].sort().map(([formula, tree]) => `  ${JSON.stringify(formula)}: ${tree}`);
  return `{\n${lines.join(',\n')}\n}\n`;
}

/** The files that are written by the program, by their path from the root. */
export const pages = async (): Promise<Readonly<Record<string, string>>> => ({
  'docs/method.md': await method(),
  'docs/questions.md': questions(),
  // After the method, which has loaded every room of rules.
  'src/rule/trees.json': trees(),
  'docs/scenes.md': (await (await import('./scenes.ts')).transcript()).text,
});
