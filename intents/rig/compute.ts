import { isPartOf } from '#basics/part-of.ts';
import { correct, isAmong, isOf } from '#rig/correct.ts';
import { gearIn, hasGear } from '#rig/gear.ts';
import { mergeBatteries, mergeFacts, removeFrom } from '#rig/merge.ts';
import { mostKept, type Rig, type Stated } from '#rig/rig.ts';
import type { RequestContext } from '../intent.ts';

/** What happened to a rig. */
export interface RigChange {
  /** "" is the chat's own. */
  readonly owner: string;
  readonly did: 'shown' | 'kept' | 'added' | 'changed' | 'undone' | 'theirs' | 'unknown' | 'full' | 'big';
  readonly rig: Rig;
  /** Names that were to go, but are not there. */
  readonly missed: readonly string[];
}

/** Whose rig is meant: a name told, else one's own where there is one, else the chat's. */
function ownerOf({ parsed, rigs, ownKey, sharing }: RequestContext): string {
  // "Show my rig" is the group's where the asker has none of their own.
  if (parsed.owner === 'me') return rigs[ownKey] || hasGear(gearIn(parsed.facts)) || !rigs[''] ? ownKey : '';
  // "Ours is a 100 Ah lithium" beside the rigs of others is its writer's.
  const isOthers = (owner: string): boolean =>
    owner !== '' && !relatives.has(owner) && !sharing?.(ownKey).includes(owner);
  if (parsed.owner === 'us')
    return !rigs[''] && (rigs[ownKey] || Object.keys(rigs).some(isOthers)) ? ownKey : '';
  if (parsed.owner !== undefined) return parsed.owner.toLowerCase();
  // "Got a 100 Ah lithium here" is its writer's, also where others have told what is the group's.
  const isOwn = parsed.cues.has('own-statement') && !parsed.recognised.words.some(word => ofAll.has(word));
  return rigs[ownKey] || !rigs[''] || isOwn ? ownKey : '';
}

/** Words that speak for the group. */
const ofAll: ReadonlySet<string> = new Set('we weve our ours us were there'.split(' '));

/** Somebody else's rig, who can speak for themselves: only they or an admin change it. */
const isTheirs = (owner: string, { ownKey, kind, isAdmin, sharing }: RequestContext): boolean =>
  kind === 'group' &&
  owner !== '' &&
  owner !== ownKey &&
  !sharing?.(owner).includes(ownKey) &&
  !isAdmin &&
  !relatives.has(owner);

/** People at home, whose rig is told by somebody of the chat. */
const relatives: ReadonlySet<string> = new Set(
  'dad mum mom nan pop grandad grandma hubby missus wife husband brother sister son daughter uncle aunt mate neighbour'.split(
    ' ',
  ),
);

const prune = (facts: Stated): Rig =>
  Object.fromEntries(
    Object.entries(facts).filter(([, v]) => v !== undefined && !(Array.isArray(v) && v.length === 0)),
  ) as Rig;

/** "1.4 A, sorry": a figure without a name is that of the one thing there is, or puts right the one that it is like. */
function asNamed(gear: Rig, old: Rig | undefined, { corrects, cues }: RequestContext['parsed']): Rig {
  const [load] = gear.loads ?? [];
  if (!load || gear.loads?.length !== 1 || load.name !== 'load' || cues.has('add')) return gear;
  const { loads: _loads, ...rest } = gear;
  if (corrects && old && isOf(old, corrects)) return rest;
  const [only] = old?.loads ?? [];
  return only && old?.loads?.length === 1 ? { ...rest, loads: [{ ...load, name: only.name }] } : gear;
}

const isSaidBefore = (old: Rig, rig: Rig): boolean => isPartOf(old, rig) && isPartOf(rig, old);

/** Works out the rig after the message. */
export function changeRig(setting: RequestContext): RigChange {
  const { parsed, rigs, undo } = setting;
  const [undone] = Object.entries(undo ?? {});
  if (undone) return { owner: undone[0], did: 'undone', rig: undone[1] ?? {}, missed: [] };
  const owner = ownerOf(setting);
  const old = rigs[owner];
  const { cues, removed } = parsed;
  const gear = asNamed(gearIn(parsed.facts), old, parsed);
  // A number that stands among the facts told is laid over the old one anyway.
  const slip = parsed.corrects && !isAmong(gear, parsed.corrects) ? parsed.corrects : undefined;
  const isUntouched = !hasGear(gear) && removed.length === 0 && slip === undefined;
  if (isUntouched) return { owner, did: old ? 'shown' : 'unknown', rig: old ?? {}, missed: [] };
  if (old && isTheirs(owner, setting)) return { owner, did: 'theirs', rig: old, missed: [] };
  if (!old && Object.keys(rigs).length >= mostKept.rigs) return { owner, did: 'full', rig: {}, missed: [] };
  const left = removeFrom(slip ? correct(old ?? {}, slip) : (old ?? {}), removed);
  const isOther = cues.has('change') || cues.has('make-it') || cues.has('correction');
  const mode = cues.has('add') ? 'add' : isOther ? 'change' : 'state';
  const merged = mergeFacts(left, gear, mode);
  // "It's 80": the one battery, which stays of its kind.
  if (mode === 'state' && left.batteries?.length === 1 && gear.batteries?.length === 1)
    merged.batteries = mergeBatteries(left.batteries, gear.batteries, 'change');
  const rig = prune(merged);
  const isBig = (rig.loads?.length ?? 0) > Math.max(mostKept.loads, old?.loads?.length ?? 0);
  if (isBig) return { owner, did: 'big', rig: old ?? {}, missed: [] };
  const isRemoved = JSON.stringify(prune(left)) !== JSON.stringify(old ?? {});
  const missed = removed.length > 0 && !isRemoved ? removed : [];
  const did = !old || isSaidBefore(old, rig) ? 'kept' : isPartOf(old, rig) ? 'added' : 'changed';
  return { owner, did, rig, missed };
}
