import { present } from '#basics/present.ts';
import { decide } from '#language/decide/decide.ts';
import { finish } from '#language/decide/finish.ts';
import type { TalkContext } from '#language/decide/frame.ts';
import type { Model } from '#language/decide/model.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { compare } from '../train/compare.ts';
import type { Group } from '../train/groups.ts';
import { contextOf } from '../train/train.ts';
import { type Change, type ChangeName, changeNames, changes } from './changes.ts';

interface Reading {
  readonly intent: string;
  readonly stated: Readonly<Record<string, unknown>>;
}

/** How one change went: how many messages it could be tried on, and how many were read as before. */
export interface Outcome {
  readonly change: ChangeName;
  readonly tried: number;
  readonly same: number;
  /** Those read otherwise, as they were and as changed. */
  readonly others: readonly (readonly [text: string, changed: string])[];
}

function readBy(model: Model, text: string, context: TalkContext): Reading {
  const recognised = recognise(text);
  const best = present(decide(model, recognised.mentions, context, text).options[0]);
  return { intent: best.intent, stated: inHours(finish(recognised, best, context)) };
}

/** Minutes a day told as hours: the same amount. */
const inHours = (stated: Readonly<Record<string, unknown>>): Record<string, unknown> => ({
  ...stated,
  ...(Array.isArray(stated.loads) && {
    loads: (stated.loads as Record<string, unknown>[]).map(({ minutesPerDay, ...load }) =>
      typeof minutesPerDay === 'number' ? { ...load, hoursPerDay: minutesPerDay / 60 } : load,
    ),
  }),
});

/** Whether two readings say the same: the order of a list and another name of a thing count for nothing. */
export const isSameReading = (a: Reading, b: Reading): boolean =>
  a.intent === b.intent &&
  compare(b.stated, a.stated).missing.length === 0 &&
  compare(a.stated, b.stated).missing.length === 0;

const tellsUnits = ({ intent, stated }: Reading): boolean =>
  intent === 'convert' || intent === 'settle' || 'claims' in stated || 'corrects' in stated;
/** Days told one by one have an order: turned round they are another plan. */
const tellsOrder = ({ stated }: Reading): boolean => 'days' in stated || 'corrects' in stated;

function fitsTo(name: ChangeName, reading: Reading): boolean {
  const change: Change = changes[name];
  if (!change.keepsUnits && tellsUnits(reading)) return false;
  return name !== 'turnedRound' || !tellsOrder(reading);
}

/** Evenly spread messages of groups, the first wording of each group first. */
function spread(groups: readonly Group[], most: number): { group: Group; text: string }[] {
  const all = groups.flatMap(group => group.wordings.map(text => ({ group, text })));
  const step = Math.max(1, all.length / most);
  return Array.from({ length: Math.min(most, all.length) }, (_, k) => present(all[Math.floor(k * step)]));
}

/** Reads messages as they are and under each change; how many readings stay. */
export function unchanged(groups: readonly Group[], model: Model, most: number): Outcome[] {
  const tally = changeNames.map(change => ({
    change,
    tried: 0,
    same: 0,
    others: [] as (readonly [string, string])[],
  }));
  spread(groups, most).forEach(({ group, text }, n) => {
    const context = contextOf(group, model);
    const before = readBy(model, text, context);
    for (const row of tally) {
      const changed = fitsTo(row.change, before) ? changes[row.change].apply(text, n) : undefined;
      if (changed === undefined) continue;
      row.tried++;
      if (isSameReading(before, readBy(model, changed, context))) row.same++;
      else row.others.push([text, changed]);
    }
  });
  return tally;
}
