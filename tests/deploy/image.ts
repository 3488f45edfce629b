import { type ChildProcess, execFileSync, type SpawnOptions, spawn, spawnSync } from 'node:child_process';
import {
  chmodSync,
  cpSync,
  existsSync,
  globSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  statSync,
  symlinkSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { present } from '#basics/present.ts';
import { readDockerfile, type Stage, type Step } from './dockerfile.ts';
import { root } from './script.ts';

/** Somebody who isn't root stands for the image's user; where nobody is root, it is whoever runs the tests. */
const isRoot = process.getuid?.() === 0;
const somebody = isRoot ? { uid: 65_534, gid: 65_534 } : {};

/** The files below the paths: those that git knows, so that nothing that only lies about gets in. */
const filesBelow = (paths: readonly string[]): string[] => {
  const flags = ['ls-files', '-z', '--cached', '--others', '--exclude-standard', '--', ...paths];
  const { status, stdout } = spawnSync('git', flags, { cwd: root, encoding: 'utf8' });
  if (status === 0) return stdout.split('\0').filter(path => path !== '' && existsSync(root + path));
  // Not a clone: all that is there.
  return globSync(
    paths.flatMap(path => [path, `${path}/**/*`]),
    { cwd: root },
  ).filter(path => statSync(root + path).isFile());
};

/** Whether `.dockerignore`'s lines (`*`, then `!path`) let a path through. */
export const isLetThrough = (path: string, lines: readonly string[]): boolean =>
  lines.some(
    line => line.startsWith('!') && (path === line.slice(1) || path.startsWith(`${line.slice(1)}/`)),
  );

export const ignoreLines = (): string[] =>
  readFileSync(`${root}deploy/Dockerfile.dockerignore`, 'utf8').trim().split('\n');

/** The image laid out in a plain folder: `/app` and `/data` lie in it, and commands run there as its user. */
export class Image {
  readonly #folder: string;
  readonly #final: Stage;
  /** The names of what was copied. */
  readonly copied: string[] = [];

  /** Does the steps of deploy/Dockerfile as far as that goes without a network. @param folder empty; it is filled */
  constructor(folder: string) {
    this.#folder = folder;
    if (isRoot) chmodSync(folder, 0o755);
    const stages = readDockerfile();
    this.#final = present(stages.at(-1));
    for (const stage of stages) this.#build(stage);
  }

  /** A path or text of the image as it is here. */
  here(text: string): string {
    return text.replace(/(?<![\w.-])\/(app|data)(?![\w-])/g, `${this.#folder}/$1`);
  }

  #build({ steps, env }: Stage): void {
    let cwd = this.#folder;
    let user: SpawnOptions = {};
    for (const step of steps) {
      if (step.keyword === 'WORKDIR') cwd = this.here(present(step.words[0]));
      if (step.keyword === 'USER') user = somebody;
      if (step.keyword === 'WORKDIR') mkdirSync(cwd, { recursive: true });
      if (step.keyword === 'COPY') this.#copy(step, cwd);
      if (step.keyword === 'RUN' && step.words[0] === 'npm') this.#install(cwd);
      else if (step.keyword === 'RUN') this.#run(step.text, { cwd, env: this.#env(env), ...user });
    }
  }

  #copy({ words, flags }: Step, cwd: string): void {
    // The stages share the folder: what one takes from another is there.
    if (flags.from !== undefined) return;
    const [sources, target] = [words.slice(0, -1), present(words.at(-1))];
    const ignored = ignoreLines();
    for (const path of filesBelow(sources).filter(path => isLetThrough(path, ignored))) {
      const source = present(sources.find(one => path === one || path.startsWith(`${one}/`)));
      // A folder's content goes into the target; a file goes under its own name.
      const name = path === source ? present(path.split('/').at(-1)) : path.slice(source.length + 1);
      cpSync(join(root, path), join(cwd, target, name));
      this.copied.push(path);
    }
  }

  /** What `npm ci --omit=dev` would bring, but for the Node of bare machines, by links. */
  #install(cwd: string): void {
    const { packages } = JSON.parse(readFileSync(join(cwd, 'package-lock.json'), 'utf8')) as {
      packages: Record<string, { dev?: boolean; devOptional?: boolean; optional?: boolean }>;
    };
    for (const [path, { dev, devOptional }] of Object.entries(packages)) {
      const isTop = /^node_modules\/(@[^/]+\/)?[^/]+$/.test(path);
      if (!isTop || dev || devOptional || /\/node-(linux|darwin|win|bin)-/.test(path)) continue;
      mkdirSync(join(cwd, dirname(path)), { recursive: true });
      symlinkSync(join(root, path), join(cwd, path));
    }
  }

  #run(text: string, options: SpawnOptions): void {
    const { uid, gid } = somebody as { uid?: number; gid?: number };
    const owner = uid === undefined ? '' : `-o ${uid} -g ${gid}`;
    const script = this.here(text).replace('-o node -g node', owner);
    execFileSync('sh', ['-c', script], { ...options, stdio: 'pipe' } as object);
  }

  #env(env: Readonly<Record<string, string>>): Record<string, string> {
    const own = Object.entries(env).map(([name, value]) => [name, this.here(value)]);
    return { PATH: `${dirname(process.execPath)}:/usr/bin:/bin`, ...Object.fromEntries(own) };
  }

  /** Takes the right to write from everybody, but in the folders given. */
  freeze(...spared: string[]): void {
    const kept = spared.map(path => this.here(path));
    const walk = (path: string): void => {
      const stat = lstatSync(path);
      if (stat.isSymbolicLink() || kept.includes(path)) return;
      if (stat.isDirectory()) for (const name of readdirSync(path)) walk(join(path, name));
      chmodSync(path, stat.mode & 0o555);
    };
    walk(this.#folder);
  }

  /** Lets the folder be removed again. */
  thaw(): void {
    execFileSync('chmod', ['-R', 'u+w', this.#folder]);
  }

  /** Runs a command in the image with its own settings and those given. */
  start(command: readonly string[], env: Record<string, string> = {}): ChildProcess {
    return spawn(present(command[0]), command.slice(1), {
      cwd: this.here(present(this.#final.last('WORKDIR').words[0])),
      env: { ...this.#env(this.#final.env), ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
      ...somebody,
    });
  }

  get command(): readonly string[] {
    return this.#final.last('CMD').exec;
  }

  get healthCheck(): readonly string[] {
    return this.#final.last('HEALTHCHECK').exec;
  }
}
