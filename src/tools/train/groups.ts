import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** One meaning in several wordings, as `tests/messages` keeps it. */
export interface Group {
  readonly id: string;
  readonly before?: readonly { readonly from: string; readonly text: string }[];
  readonly from: string;
  readonly wordings: readonly string[];
  readonly intent: readonly string[];
  readonly asked?: readonly string[];
  readonly states: Readonly<Record<string, unknown>>;
  readonly ignore?: readonly number[];
  readonly danger?: string | null;
  /** The label tells some of what is stated: what it leaves out may be stated too. */
  readonly isPartial?: boolean;
  readonly file: string;
}

/** All groups of the files of a folder, in order of their names; folders below it are left alone. */
export function readGroups(folder: string): Group[] {
  const files = readdirSync(folder)
    .filter(name => name.endsWith('.jsonl'))
    .sort();
  return files.flatMap(name =>
    readFileSync(join(folder, name), 'utf8')
      .split('\n')
      .filter(line => line.trim() !== '')
      .map(line => ({ ...(JSON.parse(line) as Omit<Group, 'file'>), file: name.replace('.jsonl', '') })),
  );
}

/** The groups that weights are fitted to: never those of a folder named `closed`, which only measure. */
export function groupsToFit(folders: readonly string[]): Group[] {
  const closed = folders.find(isClosed);
  if (closed !== undefined) throw new Error(`${closed}: nothing is fitted to closed messages`);
  return folders.flatMap(readGroups);
}

/** Whether a folder holds closed groups: nobody reads them, and of what they measure totals alone are told. */
export const isClosed = (folder: string): boolean => folder.split(/[\\/]/).includes('closed');

/** Every `step`-th group, from the one at `first` on. */
export const everyNth = (groups: readonly Group[], step: number, first = 0): Group[] =>
  groups.filter((_, i) => i % step === first);
