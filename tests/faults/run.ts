// `npm run faults`: the real program is killed, flooded and fed with nonsense. Parts by name: `npm run faults --
// matrix instances fuzz`; a number after fuzz says how many updates. Exit 1 where anything was lost.
const words = process.argv.slice(2);
const isAll = words.length === 0;
const fuzzCount = Number(words.find(word => /^\d+$/.test(word)) ?? 100_000);

const parts: Readonly<Record<string, () => Promise<boolean>>> = {
  matrix: async () => (await import('./matrix.ts')).matrix(),
  instances: async () => (await import('./instances.ts')).instances(),
  rolling: async () => (await import('./instances.ts')).rolling(),
  drill: async () => (await import('./drill.ts')).drills(),
  fuzz: async () => (await import('./fuzz.ts')).fuzz(fuzzCount),
};

if (words.includes('--help')) {
  console.log(`npm run faults -- [PART …] [UPDATES of fuzz]\n${Object.keys(parts).join(' ')}`);
  process.exit();
}
const unknown = words.filter(word => !(word in parts) && !/^\d+$/.test(word));
if (unknown.length > 0) {
  console.error(`no part ${unknown.join(', ')}; there are: ${Object.keys(parts).join(', ')}`);
  process.exit(2);
}
let isWell = true;
for (const [name, run] of Object.entries(parts))
  if (isAll || words.includes(name)) isWell = (await run()) && isWell;
process.exit(isWell ? 0 : 1);
