import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import type { Deployment } from 'kubernetes-types/apps/v1.d.ts';
import type { Service } from 'kubernetes-types/core/v1.d.ts';
import type { Ingress, NetworkPolicy } from 'kubernetes-types/networking/v1.d.ts';
import type { PodDisruptionBudget } from 'kubernetes-types/policy/v1.d.ts';
import { expect, test } from 'vitest';
import { parseAllDocuments } from 'yaml';
import { Health } from '#telegram/ops/health.ts';
import { readConfig } from '../../src/config.ts';
import { readDockerfile } from './dockerfile.ts';
import { root } from './script.ts';
import { filledIn, isSetting, stopTakesMs } from './settings.ts';

const text = readFileSync(`${root}deploy/many/kubernetes.yaml`, 'utf8');
const documents = parseAllDocuments(text, { strict: true, uniqueKeys: true });
const things = documents.map(document => document.toJS() as { apiVersion: string; kind: string });
const of = <T>(kind: string): T => things.find(thing => thing.kind === kind) as T;
const deployment = of<Deployment>('Deployment');
const service = of<Service>('Service');
const budget = of<PodDisruptionBudget>('PodDisruptionBudget');
const ingress = of<Ingress>('Ingress');
const policy = of<NetworkPolicy>('NetworkPolicy');
const pod = deployment.spec!.template;
const bot = pod.spec!.containers[0]!;
const final = readDockerfile().at(-1)!;

/** Kinds and their published types: https://kubernetes.io/docs/reference/kubernetes-api/ */
const types: Record<string, string> = {
  'apps/v1 Deployment': 'apps/v1',
  'v1 Service': 'core/v1',
  'policy/v1 PodDisruptionBudget': 'policy/v1',
  'networking.k8s.io/v1 Ingress': 'networking/v1',
  'networking.k8s.io/v1 NetworkPolicy': 'networking/v1',
};

/** Asks the compiler whether the objects are of the types; unknown names count as wrong. @returns what it says */
function typeErrors(objects: readonly { apiVersion: string; kind: string }[]): string {
  const folder = mkdtempSync(`${root}node_modules/.kubernetes-`);
  try {
    const lines = objects.flatMap(({ apiVersion, kind, ...rest }, i) => [
      `import type { ${kind} as Kind${i} } from 'kubernetes-types/${types[`${apiVersion} ${kind}`]}.d.ts';`,
      `export const thing${i}: Kind${i} = ${JSON.stringify({ apiVersion, kind, ...rest }, null, 1)};`,
    ]);
    writeFileSync(`${folder}/things.ts`, lines.join('\n'));
    const flags = ['--noEmit', '--strict', '--skipLibCheck', '--module', 'nodenext', '--types', ''];
    const tsc = [`${root}node_modules/typescript/bin/tsc`, '--ignoreConfig', ...flags, `${folder}/things.ts`];
    const { stdout, stderr, error } = spawnSync(process.execPath, tsc, { encoding: 'utf8' });
    return `${error ?? ''}${stdout}${stderr}`.replaceAll(/^.*things\.ts/gm, 'things.ts');
  } finally {
    rmSync(folder, { recursive: true });
  }
}

test('it is good YAML, of the kinds that are known', () => {
  expect(documents.flatMap(document => [...document.errors, ...document.warnings])).toEqual([]);
  expect(things.map(({ apiVersion, kind }) => `${apiVersion} ${kind}`)).toEqual([
    'apps/v1 Deployment',
    'networking.k8s.io/v1 NetworkPolicy',
    'v1 Service',
    'policy/v1 PodDisruptionBudget',
    'networking.k8s.io/v1 Ingress',
  ]);
});

test('every field is one of Kubernetes’ own, of the right type', () => {
  expect(typeErrors(things)).toBe('');
});

test.each([
  ['an unknown field', { replica: 3 }, /replica.* does not exist in type 'DeploymentSpec'/],
  ['text for a number', { replicas: '3' }, /'string' is not assignable to type 'number/],
])('a fault would be found: %s', (_, fault, told) => {
  expect(typeErrors([{ ...deployment, spec: { ...deployment.spec, ...fault } } as never])).toMatch(told);
});

test('selectors, names and ports lead to what they mean', () => {
  const { labels } = pod.metadata!;
  expect(labels).toEqual({ app: 'billywatt' });
  expect(deployment.spec?.selector.matchLabels).toEqual(labels);
  expect(service.spec?.selector).toEqual(labels);
  expect(budget.spec?.selector?.matchLabels).toEqual(labels);
  expect(pod.spec?.topologySpreadConstraints?.[0]?.labelSelector?.matchLabels).toEqual(labels);
  const [port] = service.spec!.ports!;
  expect(bot.ports![0]).toEqual({ name: port!.targetPort, containerPort: expect.any(Number) });
  const [rule] = ingress.spec!.rules!;
  expect(rule!.http!.paths[0]!.backend.service).toEqual({
    name: service.metadata!.name,
    port: { name: port!.name },
  });
  expect(ingress.spec!.tls![0]!.hosts).toEqual([rule!.host]);
});

test('only the ingress reaches the webhook, and only who watches the numbers; out go names, TLS and the database', () => {
  expect(policy.spec?.podSelector.matchLabels).toEqual(pod.metadata!.labels);
  expect(policy.spec?.policyTypes).toEqual(['Ingress', 'Egress']);
  const open = policy.spec!.ingress!.map(({ from, ports }) => [from!.length, ports!.map(one => one.port)]);
  expect(open).toEqual([
    [1, ['http']],
    [1, ['metrics']],
  ]);
  const known = bot.ports!.map(({ name }) => name);
  for (const one of policy.spec!.ingress!.flatMap(rule => rule.ports!)) expect(known).toContain(one.port);
  // The service, and so the ingress, knows nothing of the numbers.
  expect(service.spec!.ports!.map(one => one.targetPort)).toEqual(['http']);
  expect(new Set(policy.spec!.egress!.flatMap(rule => rule.ports!.map(one => one.port)))).toEqual(
    new Set([53, 443, 5432]),
  );
});

test('the ingress hears of an end before it comes, and answers still have their time', () => {
  const { sleep } = bot.lifecycle!.preStop!;
  const graceMs = pod.spec!.terminationGracePeriodSeconds! * 1000;
  expect(sleep!.seconds).toBeGreaterThanOrEqual(5);
  expect(graceMs - sleep!.seconds * 1000).toBeGreaterThan(stopTakesMs);
});

test('the webhook’s address is what the ingress lets through, and that alone', () => {
  const { host, http } = ingress.spec!.rules![0]!;
  const address = new URL(bot.env!.find(one => one.name === 'WEBHOOK_URL')!.value!);
  expect(ingress.spec!.rules).toHaveLength(1);
  expect(http!.paths).toHaveLength(1);
  expect(http!.paths[0]).toMatchObject({ path: address.pathname, pathType: 'Exact' });
  expect([address.protocol, address.host]).toEqual(['https:', host]);
});

test('the settings are ones the program reads, and good once the secret is filled in', () => {
  const secret = /create secret generic (\S+)/.exec(text)![1]!;
  expect(bot.envFrom).toEqual([{ secretRef: { name: secret } }]);
  const inSecret = [...text.matchAll(/--from-literal=(\w+)=/g)].map(([, name]) => name!);
  const own = bot.env!.map(({ name, value }) => [name, value!] as const);
  const names = [...inSecret, ...own.map(([name]) => name)];
  expect(names.filter(name => !isSetting(name))).toEqual([]);
  expect(new Set(names).size).toBe(names.length);
  const secrets = inSecret.map(name => [name, filledIn[name]!] as const);
  const config = readConfig(Object.fromEntries([...secrets, ...own]), '/nonexistent/.env');
  expect(config.PORT).toBe(bot.ports![0]!.containerPort);
  expect(config.WEBHOOK_SECRET).toBeDefined();
  expect(config.MEMORY_KEY).toBeDefined();
  expect(text).not.toMatch(/\d{8,}:[\w-]{30,}|:\/\/\w+:\w+@/);
});

test('the probes ask what the program answers, on its port', async () => {
  const health = new Health({ now: () => 0 });
  for (const probe of [bot.readinessProbe, bot.livenessProbe, bot.startupProbe]) {
    expect(probe!.httpGet!.port).toBe(bot.ports![0]!.name);
    expect(health.probe({ method: 'GET', url: probe!.httpGet!.path } as never)).toBeDefined();
  }
  // Alive however Telegram or the database is: else an outage there would start all instances anew.
  const { path: url } = bot.livenessProbe!.httpGet!;
  expect(await health.probe({ method: 'GET', url } as never)).toMatchObject({ status: 200 });
});

test('it runs as an ordinary user, sees nothing of the cluster, and can write to /tmp alone', () => {
  expect(pod.spec).toMatchObject({
    automountServiceAccountToken: false,
    securityContext: { runAsNonRoot: true, seccompProfile: { type: 'RuntimeDefault' } },
  });
  // The user "node" of Node's official images: https://github.com/nodejs/docker-node
  expect([final.last('USER').text, pod.spec!.securityContext!.runAsUser]).toEqual(['node', 1000]);
  expect(bot.securityContext).toEqual({
    allowPrivilegeEscalation: false,
    readOnlyRootFilesystem: true,
    capabilities: { drop: ['ALL'] },
  });
  expect(bot.volumeMounts).toEqual([{ name: pod.spec!.volumes![0]!.name, mountPath: '/tmp' }]);
  expect(bot.resources?.requests).toEqual({ cpu: expect.any(String), memory: expect.any(String) });
  expect(bot.resources?.limits?.memory).toEqual(expect.any(String));
});

test('a stop is waited for longer than the program takes, and one instance may always be away', () => {
  expect(pod.spec!.terminationGracePeriodSeconds! * 1000).toBeGreaterThan(stopTakesMs);
  expect(Number(budget.spec!.minAvailable)).toBeLessThan(deployment.spec!.replicas!);
  expect(deployment.spec!.replicas!).toBeGreaterThanOrEqual(2);
});
