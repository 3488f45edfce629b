import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { codeOf, needsOf, root } from './files.ts';

/** Folders of labelled messages that the weights are fitted to. */
export const messageFolders = ['tests/messages', 'tests/messages/partial'] as const;
/** Labelled messages of dangers and of what looks like them: of these only the net of dangers learns. */
export const dangerFolder = 'tests/messages/dangers';

/** Where fitting starts: everything that these need is part of what the weights belong to. */
const starts = [
  'src/tools/train/words.ts',
  'src/tools/train/whole.ts',
  'src/tools/train/fit-dangers.ts',
  'src/language/decide/weights.ts',
];
/** Written by fitting, or of no weight for it. */
const isOwn = (path: string): boolean => path.endsWith('.bin');

/** A short digest of parts, each with its name: line ends of another system change nothing. */
export function digest(parts: readonly (readonly [name: string, content: string])[]): string {
  const hash = createHash('sha256');
  for (const [name, content] of parts) {
    const plain = content.replaceAll('\r\n', '\n');
    hash.update(`${name}\0${plain.length}\0${plain}\0`);
  }
  return hash.digest('hex').slice(0, 16);
}

const messageFiles = (): string[] =>
  [...messageFolders, dangerFolder].flatMap(folder =>
    readdirSync(new URL(folder, root))
      .filter(name => name.endsWith('.jsonl'))
      .map(name => `${folder}/${name}`)
      .sort(),
  );

/** What of a file counts: of code its tokens, of data all of it. */
const contentOf = (path: string): string => {
  const text = readFileSync(new URL(path, root), 'utf8');
  return path.endsWith('.ts') ? codeOf(text).join('\0') : text;
};

/** The files that the weights belong to: the labelled messages, and the code and tables that reading and fitting go by. */
export const fittedFiles = (): string[] => [
  ...needsOf(starts).filter(path => !isOwn(path)),
  ...messageFiles(),
];

/** The fingerprint of messages and code as they are now. */
export const fingerprint = (): string => digest(fittedFiles().map(path => [path, contentOf(path)] as const));

/** The fingerprint that a file of weights carries in its first line. */
export function fingerprintIn(weights: Buffer): string {
  const header = JSON.parse(weights.subarray(0, weights.indexOf('\n')).toString('utf8')) as {
    fingerprint: string;
  };
  return header.fingerprint;
}
