import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { earlier, featuresOf, meaningOf } from '#language/hazards/features.ts';
import { type HazardCode, hazardCodes } from '#rig/hazard-codes.ts';

/** One wording of a labelled meaning. */
export interface Labelled {
  readonly group: string;
  /** The file that it comes from, without its number: one author's hand. */
  readonly author: string;
  readonly text: string;
  readonly before: readonly string[];
  readonly danger: HazardCode | null;
  readonly features: readonly string[];
}

interface Group {
  readonly id: string;
  readonly before?: readonly { readonly text: string }[];
  readonly wordings: readonly string[];
  readonly danger: string | null;
}

const isCode = (code: string): code is HazardCode => (hazardCodes as readonly string[]).includes(code);

/** Reads labelled messages, JSON lines of meaning groups; what is in a folder named `closed` is never read. */
export function readLabelled(paths: readonly string[]): readonly Labelled[] {
  return paths.flatMap(path => {
    if (path.split(/[\\/]/).includes('closed'))
      throw new Error(`${path}: nothing is fitted to closed messages`);
    const author = basename(path, '.jsonl').replace(/-\d+$/, '');
    const lines = readFileSync(path, 'utf8').split('\n').filter(Boolean);
    return lines.flatMap(line => {
      const group = JSON.parse(line) as Group;
      if (group.danger !== null && !isCode(group.danger))
        throw new Error(`${path}: ${group.id} has the unknown danger ${group.danger}`);
      const before = (group.before ?? []).map(turn => turn.text);
      const known = earlier(before);
      return group.wordings.map(text => ({
        group: group.id,
        author,
        text,
        before,
        danger: group.danger as HazardCode | null,
        features: [...featuresOf(meaningOf(text, before), known)],
      }));
    });
  });
}

const kin: readonly (readonly HazardCode[])[] = [
  ['mains-lead', 'backfeed', 'mains-wiring'],
  ['gas', 'battery-fire', 'carbon-monoxide'],
  ['carbon-monoxide', 'generator-inside'],
  ['no-fuse', 'bigger-fuse', 'over-current'],
  ['jump-start', 'starter-flat'],
];

/** Whether a careful person might have given one code for the other. */
export const isKin = (a: HazardCode, b: HazardCode): boolean =>
  a === b || kin.some(codes => codes.includes(a) && codes.includes(b));
