import type { Bot } from 'grammy';
import { present } from '#basics/present.ts';
import type { Log } from '#telegram/ops/deps.ts';
import type { Health } from '#telegram/ops/health.ts';
import type { Metrics } from '#telegram/ops/metrics.ts';
import type { Running } from '#telegram/ops/poll.ts';
import type { Config } from './config.ts';

const { ConfigError, readConfig } = await import('./config.ts');

/** How long running answers may take to finish after a stop (ms): a container is killed after 10 s. */
const stopWithinMs = 9000;
const usualPort = 8080;
/** A poll comes back after half a minute at most; after three without, the poller counts as cut off. */
const pollHeardWithinMs = 90_000;
const dayMs = 86_400_000;
/** What Telegram hands out again after a start is done by then; only what it took for done is left (ms). */
const resumeAfterMs = 15_000;
const resumeEveryMs = 60_000;
/** Whether several processes may keep their memory there. */
const isShared = (database: string): boolean => database.startsWith('postgres');
/** Telegram repeats an update for 24 h and people edit for 48 h; claims are kept a little longer. */
const claimsKeptMs = 3 * dayMs;
/** A chat that nobody used for a year is forgotten. */
const chatsKeptMs = 365 * dayMs;

/** Opens the console chat on the terminal. */
async function runConsole(config: Config): Promise<void> {
  const [{ chat }, { openStore }, { converse }] = await Promise.all([
    import('#console/console.ts'),
    import('#memory/open.ts'),
    import('#conversation/converse.ts'),
  ]);
  const store = await openStore(config.DATABASE_URL, { key: config.MEMORY_KEY });
  try {
    await chat(
      { converse, store, mainsV: config.MAINS_VOLTAGE, now: () => new Date() },
      { input: process.stdin, output: process.stdout, historyFile: 'data/history' },
    );
  } finally {
    await store.close();
  }
}

/** Runs the Telegram bot until it is told to stop: by webhook where one is set, else by long polling. */
async function runTelegram(config: Config, token: string): Promise<void> {
  const [{ makeLog }, { createBot }, { openStore }, { openWithRetry }, { IdleGc }, { converse }] =
    await Promise.all([
      import('./log.ts'),
      import('#telegram/updates/bot.ts'),
      import('#memory/open.ts'),
      import('./retry.ts'),
      import('./idle-gc.ts'),
      import('#conversation/converse.ts'),
    ]);
  const stopping = new AbortController();
  const told = new Promise<string>(resolve => {
    process.once('SIGTERM', resolve).once('SIGINT', resolve);
  }).finally(() => stopping.abort());
  const log = makeLog(config.LOG_LEVEL, undefined, secretsOf(config));
  const watch = await watchOver(config);
  // Until the webhook is served on the port, and by polling all along, the probes have a server of their own.
  const probes = await watch?.serve();
  const store = await openWithRetry(() => openStore(config.DATABASE_URL, { key: config.MEMORY_KEY }), {
    signal: stopping.signal,
    onFailed: error => log.warn({ err: error }, 'the memory cannot be reached; trying again'),
  }).catch(error => {
    if (stopping.signal.aborted) return undefined;
    throw error;
  });
  if (store === undefined) return log.info({}, 'stopped before the memory could be reached');
  watch?.health.opened(store);
  const { TELEGRAM_API_ROOT: apiRoot, MAINS_VOLTAGE: mainsV, ALLOWED_CHATS: allowedChats } = config;
  const settings = { token, apiRoot, mainsV, allowedChats, isPaced: config.SEND_PACE === 'on' };
  const bot = createBot(settings, { converse, store, log, meter: watch?.metrics, now: Date.now });
  if (config.WEBHOOK_URL !== undefined) await probes?.stop();
  const running = await start(config, bot, log, watch);
  const resume = (): void =>
    void bot.resume().catch(error => log.warn({ err: error }, 'answers of before could not be taken up'));
  setTimeout(resume, resumeAfterMs).unref();
  // What an instance that died still owed is taken up by those that live.
  if (isShared(config.DATABASE_URL)) setInterval(resume, resumeEveryMs).unref();

  const tidy = (): void => {
    const now = Date.now();
    store
      .prune({ claims: now - claimsKeptMs, chats: now - chatsKeptMs })
      .catch(error => log.warn({ err: error }, 'old memory could not be tidied'));
  };
  tidy();
  setInterval(tidy, dayMs / 4).unref();
  new IdleGc().start();

  const why = await Promise.race([told, running.ended.then(() => 'ended')]);
  log.info({ why }, 'stopping');
  watch?.health.stopping();
  setTimeout(() => {
    log.error({}, 'running answers did not finish in time');
    process.exit(1);
  }, stopWithinMs).unref();
  await running.stop();
  await store.close();
  log.info({}, 'stopped');
}

interface Watch {
  readonly health: Health;
  readonly metrics?: Metrics;
  /** Serves the probes, where the webhook doesn't. */
  serve(): Promise<{ stop(): Promise<void> }>;
}

/** Health and numbers for an operator: where a webhook is served, or a port is given for them. */
async function watchOver(config: Config): Promise<Watch | undefined> {
  const { WEBHOOK_URL: url, PORT: port, METRICS_PORT: metricsPort } = config;
  if (url === undefined && port === undefined && metricsPort === undefined) return undefined;
  const { Health, numbers, serveProbes } = await import('#telegram/ops/health.ts');
  const metrics =
    metricsPort === undefined ? undefined : (await import('#telegram/ops/metrics.ts')).makeMetrics();
  if (metrics !== undefined) await serveProbes(numbers(metrics), present(metricsPort));
  const health = new Health({
    now: Date.now,
    heardWithinMs: url === undefined ? pollHeardWithinMs : undefined,
  });
  const isServed = url !== undefined || port !== undefined;
  const serve = () => serveProbes(health.probe, port ?? usualPort);
  return { health, metrics, serve: isServed ? serve : async () => ({ stop: async () => {} }) };
}

const secretsOf = ({ BOT_TOKEN, WEBHOOK_SECRET, MEMORY_KEY }: Config): string[] =>
  [BOT_TOKEN, WEBHOOK_SECRET, MEMORY_KEY].filter(secret => secret !== undefined);

async function start(config: Config, bot: Bot, log: Log, watch: Watch | undefined): Promise<Running> {
  const { WEBHOOK_URL: url, WEBHOOK_SECRET: secret, PORT: port = usualPort } = config;
  const onHeard = () => watch?.health.heard();
  if (url === undefined || secret === undefined)
    return (await import('#telegram/ops/poll.ts')).poll(bot, log, {
      onHeard,
      onPolling: isRunning => watch?.health.polling(isRunning),
    });
  const probe = watch?.health.probe;
  return (await import('#telegram/ops/webhook.ts')).serve(bot, log, { url, secret, port, probe, onHeard });
}

try {
  const config = readConfig(process.env);
  if (config.BOT_TOKEN === undefined) await runConsole(config);
  else await runTelegram(config, config.BOT_TOKEN);
  process.exit(0);
} catch (error) {
  // One line that says why: 2 for a setting that can't be used, 1 for anything else.
  const { redact } = await import('./log.ts');
  process.stderr.write(`${redact(error instanceof Error ? error.message : String(error)).split('\n')[0]}\n`);
  process.exit(error instanceof ConfigError ? 2 : 1);
}
