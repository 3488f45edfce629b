import type { Said } from '#language/said.ts';
import { correct, mergeFacts, removeFrom } from '#rig/merge.ts';
import { type Rig, rigSchema, type Stated } from '#rig/rig.ts';
import type { Setting } from '../intent.ts';

const gearKeys = Object.keys(rigSchema.shape) as (keyof Rig)[];

/** The part of the facts that stays: gear, daily use, place. */
export function gearOf(said: Pick<Said, 'facts' | 'bareLoads'>): Rig {
  const gear = Object.fromEntries(
    gearKeys.flatMap(key => (said.facts[key] === undefined ? [] : [[key, said.facts[key]]])),
  ) as Rig;
  const loads = [...(gear.loads ?? []), ...said.bareLoads];
  return loads.length > 0 ? { ...gear, loads } : gear;
}

/** Whether anything worth keeping was told. */
export const hasGear = (gear: Rig): boolean => Object.keys(gear).length > 0;

/** What happened to a rig. */
export interface RigChange {
  /** "" is the chat's own. */
  readonly owner: string;
  readonly did: 'shown' | 'kept' | 'changed' | 'forgotten' | 'unknown';
  readonly rig: Rig;
  /** Names that were to go, but are not there. */
  readonly missed: readonly string[];
}

/** Whose rig is meant: a name told, else one's own where there is one, else the chat's. */
function ownerOf({ said, rigs, ownKey }: Setting): string {
  // "Show my rig" is the group's where the asker has none of their own.
  if (said.owner === 'me') return rigs[ownKey] || hasGear(gearOf(said)) || !rigs[''] ? ownKey : '';
  if (said.owner === 'us') return '';
  if (said.owner !== undefined) return said.owner.toLowerCase();
  return rigs[ownKey] ? ownKey : '';
}

const prune = (facts: Stated): Rig =>
  Object.fromEntries(
    Object.entries(facts).filter(([, v]) => v !== undefined && !(Array.isArray(v) && v.length === 0)),
  ) as Rig;

/** Works out the rig after the message. */
export function changeRig(setting: Setting): RigChange {
  const { said, rigs } = setting;
  const owner = ownerOf(setting);
  const old = rigs[owner];
  const gear = gearOf(said);
  const { cues } = said;
  if (cues.has('forget') && cues.has('rig') && said.removed.length === 0)
    return { owner, did: old ? 'forgotten' : 'unknown', rig: {}, missed: [] };
  const isUntouched = !hasGear(gear) && said.removed.length === 0 && said.corrections.length === 0;
  if (isUntouched) return { owner, did: old ? 'shown' : 'unknown', rig: old ?? {}, missed: [] };
  const left = removeFrom(correct(old ?? {}, said.corrections), said.removed);
  const mode = cues.has('add') ? 'add' : cues.has('change') ? 'change' : 'state';
  const rig = prune(mergeFacts(left, gear, mode));
  const isRemoved = JSON.stringify(prune(left)) !== JSON.stringify(old ?? {});
  const missed = said.removed.length > 0 && !isRemoved ? said.removed : [];
  return { owner, did: old ? 'changed' : 'kept', rig, missed };
}
