// `node src/boot.mjs main|ask …`: plain JavaScript, so that Node's cache is on before the first TypeScript file is
// loaded. With a warm cache the stripper of types is then never loaded: 17 MB and 20 ms less.
import module from 'node:module';

module.enableCompileCache();
const [program] = process.argv.splice(2, 1);
await import(program === 'ask' ? './ask.ts' : './main.ts');
