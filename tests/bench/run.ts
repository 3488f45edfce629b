import { loadavg } from 'node:os';
import type { Section } from './measure.ts';
import { where, writePage } from './page.ts';

// `npm run bench` prints; `npm run bench -- --write` also writes docs/speed.md, and the figures of the whole bot into
// docs/scaling.md. Names of sections as further words run only those: `npm run bench -- bot starting --write`. A number
// says for how many minutes `soak` goes on, which runs only where it is named: `npm run bench -- soak 10`.
const sections: Readonly<Record<string, () => Promise<Section>>> = {
  answering: async () => (await import('./reading.ts')).answering(),
  reading: async () => (await import('./reading.ts')).reading(),
  quantities: async () => (await import('./quantities.ts')).quantities(),
  length: async () => (await import('./reading.ts')).length(),
  formulas: async () => (await import('./formulas.ts')).formulas(),
  engine: async () => (await import('./engine.ts')).engine(),
  bot: async () => (await import('./bot.ts')).wholeBot(),
  ban: async () => (await import('./ban.ts')).banOfOne(),
  flood: async () => (await import('./flood.ts')).floodOfOne(),
  starting: async () => (await import('./start.ts')).starting(5),
  adversarial: async () => (await import('./adversarial.ts')).adversarial(),
  rigs: async () => (await import('./rigs.ts')).manyRigs(),
  soak: async () => (await import('./soak.ts')).soak(minutes),
};
/** Those that run only where they are named: they take long. */
const onlyNamed: ReadonlySet<string> = new Set(['soak']);

const isWritten = process.argv.includes('--write');
const asked = process.argv.slice(2).filter(word => word !== '--write');
if (asked.includes('--help')) {
  console.log(`npm run bench -- [SECTION …] [MINUTES of soak] [--write]\n${Object.keys(sections).join(' ')}`);
  process.exit();
}
const minutes = Number(asked.find(word => /^\d+$/.test(word)) ?? 10);
const words = asked.filter(word => !/^\d+$/.test(word));
const unknown = words.filter(word => !(word in sections));
if (unknown.length > 0) {
  console.error(`no section ${unknown.join(', ')}; there are: ${Object.keys(sections).join(', ')}`);
  process.exit(2);
}

const began = loadavg();
const done: Section[] = [];
let failed = 0;
for (const [name, run] of Object.entries(sections)) {
  if (words.length > 0 ? !words.includes(name) : onlyNamed.has(name)) continue;
  try {
    const section = await run();
    done.push(section);
    console.log(`\n${section.title}`);
    for (const { what, value, goal, isMet } of section.lines)
      console.log(
        `  ${what.padEnd(70)} ${value.padStart(22)}${goal ? `   goal ${goal}: ${isMet ? 'met' : 'MISSED'}` : ''}`,
      );
  } catch (error) {
    failed++;
    console.log(
      `\n${name}: could not be measured: ${error instanceof Error ? error.message : String(error)}`,
    );
  }
}

console.log(`\n${where(began)}`);
const goals = done.flatMap(section => section.lines).filter(line => line.goal);
const met = goals.filter(line => line.isMet).length;
console.log(`\n${met} of ${goals.length} goals met${failed > 0 ? `, ${failed} sections not measured` : ''}`);
if (failed > 0) process.exitCode = 1;

if (isWritten && failed === 0) writePage(done);
process.exit();
