import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { cpus, loadavg } from 'node:os';
import { present } from '#basics/present.ts';
import type { Section } from './measure.ts';

const file = (name: string): URL => new URL(`../../docs/${name}`, import.meta.url);

/** Where it was measured, and how busy that was: more than its cores means that figures are too low. */
export const where = (began: readonly number[]): string =>
  `Node ${process.versions.node}, ${cpus().length} cores; load at the start ${present(began[0]).toFixed(1)}, at the end ` +
  `${present(loadavg()[0]).toFixed(1)} (quiet: well below the cores).`;

const table = ({ title, lines }: Section, how: string): string =>
  [
    `## ${title}`,
    '',
    how,
    '',
    '| | measured | goal |',
    '| --- | --- | --- |',
    ...lines.map(
      l => `| ${l.what} | ${l.value} | ${l.goal ? `${l.goal}, ${l.isMet ? 'met' : '**missed**'}` : ''} |`,
    ),
  ].join('\n');

const head = `# Speed

Written by \`npm run bench -- --write\`. Medians; what is compared ran in turn in the same session, so trust the ratios
and not the milliseconds. The bare bot is grammY with its runner, and echoes.`;

const marks = ['<!-- written by npm run bench -->', '<!-- until here -->'] as const;

/** Puts what was measured into docs/speed.md, section by section, and the whole bot's into docs/scaling.md as well. */
export function writePage(done: readonly Section[], began = loadavg()): void {
  const old = existsSync(file('speed.md')) ? readFileSync(file('speed.md'), 'utf8') : '';
  const parts = new Map(
    old
      .split(/^(?=## )/m)
      .slice(1)
      .map(part => [present(part.split('\n', 1)[0]).slice(3), part.trimEnd()]),
  );
  const how = where(began);
  for (const section of done) parts.set(section.title, table(section, how));
  writeFileSync(file('speed.md'), `${[head, ...parts.values()].join('\n\n')}\n`);
  const bot = done.find(({ title }) => title.startsWith('The whole bot'));
  if (bot === undefined) return;
  const page = readFileSync(file('scaling.md'), 'utf8');
  const [before, rest = ''] = page.split(marks[0]);
  const [, after = ''] = rest.split(marks[1]);
  const shown = table(bot, how).split('\n').slice(2).join('\n');
  writeFileSync(file('scaling.md'), `${before}${marks[0]}\n\n${shown}\n\n${marks[1]}${after}`);
}
