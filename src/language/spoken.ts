import type { Mention } from './recognise/mention.ts';
import type { Cue } from './words/en/cues.ts';

/** What a mention's kind says the message speaks of. */
const byKind: Readonly<Partial<Record<Mention['kind'], Cue>>> = {
  battery: 'battery',
  station: 'power-station',
  solar: 'solar',
  controller: 'controller',
  regulator: 'controller',
  inverter: 'inverter',
  cable: 'cable',
  fuse: 'fuse',
  alternator: 'alternator',
  monitor: 'monitor',
  bms: 'bms',
  mains: 'mains',
};
/** What its key says, of the kinds that have one. */
const byKey: Readonly<Record<string, Cue>> = {
  agm: 'agm',
  gel: 'gel',
  flooded: 'flooded',
  lfp: 'lfp',
  starter: 'starter',
  dcdc: 'dcdc',
  isolator: 'isolator',
  generator: 'generator',
  mains: 'mains',
  series: 'series',
  parallel: 'parallel',
  sunny: 'sun',
  rest: 'rest-reading',
  load: 'under-load',
  charging: 'on-charge',
  '?': 'question-mark',
};
const keyed: ReadonlySet<Mention['kind']> = new Set([
  'chemistry',
  'role',
  'charger',
  'arrangement',
  'sky',
  'taken',
  'sign',
]);

/** The gear and kinds that a message speaks of, with figures or without. */
export function spokenOf(mentions: readonly Mention[]): Cue[] {
  return mentions.flatMap(({ kind, key }) => {
    const cues = [byKind[kind], keyed.has(kind) && Object.hasOwn(byKey, key) ? byKey[key] : undefined];
    return cues.filter(cue => cue !== undefined);
  });
}

/** Relatives whose gear is spoken of as anybody's: "dad's rig". */
export const relatives: readonly string[] = [
  'dad',
  'mum',
  'mom',
  'nan',
  'pop',
  'grandad',
  'grandma',
  'hubby',
  'missus',
];
