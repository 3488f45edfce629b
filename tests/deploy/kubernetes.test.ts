import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import type { Deployment } from 'kubernetes-types/apps/v1.d.ts';
import type { Service } from 'kubernetes-types/core/v1.d.ts';
import type { Ingress, NetworkPolicy } from 'kubernetes-types/networking/v1.d.ts';
import type { PodDisruptionBudget } from 'kubernetes-types/policy/v1.d.ts';
import { expect, test } from 'vitest';
import { parseAllDocuments } from 'yaml';
import { present } from '#basics/present.ts';
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
const deploymentSpec = present(deployment.spec, 'spec of the deployment');
const serviceSpec = present(service.spec, 'spec of the service');
const ingressSpec = present(ingress.spec, 'spec of the ingress');
const policySpec = present(policy.spec, 'spec of the network policy');
const pod = deploymentSpec.template;
const podSpec = present(pod.spec, 'spec of the pod');
const bot = present(podSpec.containers[0], 'container');
const ports = present(bot.ports, 'ports of the bot');
const final = present(readDockerfile().at(-1));

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
  const { labels } = present(pod.metadata);
  expect(labels).toEqual({ app: 'billywatt' });
  expect(deploymentSpec.selector.matchLabels).toEqual(labels);
  expect(serviceSpec.selector).toEqual(labels);
  expect(budget.spec?.selector?.matchLabels).toEqual(labels);
  expect(pod.spec?.topologySpreadConstraints?.[0]?.labelSelector?.matchLabels).toEqual(labels);
  const [port] = present(serviceSpec.ports);
  expect(ports[0]).toEqual({
    name: present(port).targetPort,
    containerPort: expect.any(Number),
  });
  const [rule] = present(ingressSpec.rules);
  expect(present(present(present(rule).http).paths[0]).backend.service).toEqual({
    name: present(service.metadata).name,
    port: { name: present(port).name },
  });
  expect(present(present(ingressSpec.tls)[0]).hosts).toEqual([present(rule).host]);
});

test('only the ingress reaches the webhook, and only who watches the numbers; out go names, TLS and the database', () => {
  expect(policySpec.podSelector.matchLabels).toEqual(present(pod.metadata).labels);
  expect(policySpec.policyTypes).toEqual(['Ingress', 'Egress']);
  const open = present(policySpec.ingress).map(({ from, ports }) => [
    present(from).length,
    present(ports).map(one => one.port),
  ]);
  expect(open).toEqual([
    [1, ['http']],
    [1, ['metrics']],
  ]);
  const known = ports.map(({ name }) => name);
  for (const one of present(policySpec.ingress).flatMap(rule => present(rule.ports)))
    expect(known).toContain(one.port);
  // The service, and so the ingress, knows nothing of the numbers.
  expect(present(serviceSpec.ports).map(one => one.targetPort)).toEqual(['http']);
  expect(
    new Set(present(policySpec.egress).flatMap(rule => present(rule.ports).map(one => one.port))),
  ).toEqual(new Set([53, 443, 5432]));
});

test('the ingress hears of an end before it comes, and answers still have their time', () => {
  const { sleep } = present(present(bot.lifecycle).preStop);
  const graceMs = present(podSpec.terminationGracePeriodSeconds) * 1000;
  expect(present(sleep).seconds).toBeGreaterThanOrEqual(5);
  expect(graceMs - present(sleep).seconds * 1000).toBeGreaterThan(stopTakesMs);
});

test('the webhook’s address is what the ingress lets through, and that alone', () => {
  const { host, http } = present(present(ingressSpec.rules)[0]);
  const address = new URL(present(present(present(bot.env).find(one => one.name === 'WEBHOOK_URL')).value));
  expect(ingressSpec.rules).toHaveLength(1);
  expect(present(http).paths).toHaveLength(1);
  expect(present(http).paths[0]).toMatchObject({ path: address.pathname, pathType: 'Exact' });
  expect([address.protocol, address.host]).toEqual(['https:', host]);
});

test('the settings are ones the program reads, and good once the secret is filled in', () => {
  const secret = present(present(/create secret generic (\S+)/.exec(text))[1]);
  expect(bot.envFrom).toEqual([{ secretRef: { name: secret } }]);
  const inSecret = [...text.matchAll(/--from-literal=(\w+)=/g)].map(([, name]) => present(name));
  const own = present(bot.env).map(({ name, value }) => [name, present(value)] as const);
  const names = [...inSecret, ...own.map(([name]) => name)];
  expect(names.filter(name => !isSetting(name))).toEqual([]);
  expect(new Set(names).size).toBe(names.length);
  const secrets = inSecret.map(name => [name, present(filledIn[name])] as const);
  const config = readConfig(Object.fromEntries([...secrets, ...own]), '/nonexistent/.env');
  expect(config.PORT).toBe(present(ports[0]).containerPort);
  expect(config.WEBHOOK_SECRET).toBeDefined();
  expect(config.MEMORY_KEY).toBeDefined();
  expect(text).not.toMatch(/\d{8,}:[\w-]{30,}|:\/\/\w+:\w+@/);
});

test('the probes ask what the program answers, on its port', async () => {
  const health = new Health({ now: () => 0 });
  for (const probe of [bot.readinessProbe, bot.livenessProbe, bot.startupProbe]) {
    expect(present(present(probe).httpGet).port).toBe(present(ports[0]).name);
    expect(health.probe({ method: 'GET', url: present(present(probe).httpGet).path } as never)).toBeDefined();
  }
  // Alive however Telegram or the database is: else an outage there would start all instances anew.
  const { path: url } = present(present(bot.livenessProbe).httpGet);
  expect(await health.probe({ method: 'GET', url } as never)).toMatchObject({ status: 200 });
});

test('it runs as an ordinary user, sees nothing of the cluster, and can write to /tmp alone', () => {
  expect(pod.spec).toMatchObject({
    automountServiceAccountToken: false,
    securityContext: { runAsNonRoot: true, seccompProfile: { type: 'RuntimeDefault' } },
  });
  // The user "node" of Node's official images: https://github.com/nodejs/docker-node
  expect([final.last('USER').text, present(podSpec.securityContext).runAsUser]).toEqual(['node', 1000]);
  expect(bot.securityContext).toEqual({
    allowPrivilegeEscalation: false,
    readOnlyRootFilesystem: true,
    capabilities: { drop: ['ALL'] },
  });
  expect(bot.volumeMounts).toEqual([{ name: present(present(podSpec.volumes)[0]).name, mountPath: '/tmp' }]);
  expect(bot.resources?.requests).toEqual({ cpu: expect.any(String), memory: expect.any(String) });
  expect(bot.resources?.limits?.memory).toEqual(expect.any(String));
});

test('a stop is waited for longer than the program takes, and one instance may always be away', () => {
  expect(present(podSpec.terminationGracePeriodSeconds) * 1000).toBeGreaterThan(stopTakesMs);
  expect(Number(present(budget.spec).minAvailable)).toBeLessThan(present(deploymentSpec.replicas));
  expect(present(deploymentSpec.replicas)).toBeGreaterThanOrEqual(2);
});
