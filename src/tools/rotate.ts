import { readConfig } from '../config.ts';
import { redact } from '../log.ts';

// `npm run rotate`: seals anew, with the first key of MEMORY_KEY, what an older one sealed; afterwards the older one
// can be dropped. With SQLite the bot must be stopped; with PostgreSQL it may run. `-- --accept` takes a SQLite file as
// it is that was changed from outside. How: docs/running.md
try {
  const { openStore } = await import('#memory/open.ts');
  const config = readConfig(process.env);
  const store = await openStore(config.DATABASE_URL, {
    key: config.MEMORY_KEY,
    isAccepting: process.argv.includes('--accept'),
  });
  try {
    const count = await store.rotate();
    console.log(count === 0 ? 'everything is sealed with the newest key' : `sealed anew: ${count} values`);
  } finally {
    await store.close();
  }
} catch (error) {
  console.error(redact(error instanceof Error ? error.message : String(error)).split('\n')[0]);
  process.exitCode = 1;
}
