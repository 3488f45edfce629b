import { list, sentence } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import { nominalVoltage } from '#engine/battery/bank.ts';
import { type Explored, explore } from '#engine/explore.ts';
import { eachHour } from '#engine/hours.ts';
import { dayOf, useAssumptions } from '#engine/loads/model.ts';
import { useByHour } from '#engine/trip/profile.ts';
import type { Facts } from '#rig/rig.ts';
import type { RequestContext } from './intent.ts';
import { hasUse, useOf } from './use.ts';

/** What loads are reckoned to use over some hours. */
export interface LoadsOver extends Explored<'used'> {
  /** "Fridge and lights usually take", as they were told. */
  readonly usually: string;
}

const withArticle = (name: string): string => `${/^[aeiou]/i.test(name) ? 'an' : 'a'} ${name}`;

/** Air that nobody told, °C. */
const mildC = 25;

/**
 * What the loads told would use over some hours, Ah; undefined where nothing is told that anything is known of.
 * @param fromH hour of the clock at the start; without one a share of the day's use is counted
 */
export function loadsOver(
  facts: Facts,
  { hours, fromH }: { readonly hours: number; readonly fromH?: number | undefined },
  setting: RequestContext,
): LoadsOver | undefined {
  if (!facts.loads || !hasUse(facts)) return undefined;
  const chemistry = facts.batteries?.find(b => b.chemistry !== undefined)?.chemistry ?? 'agm';
  const voltageV = nominalVoltage(facts.systemVoltageV, chemistry);
  const use = { ...useOf(facts, voltageV, setting.mainsV, setting.at), isOfDay: true };
  const explored = explore<'used'>(useAssumptions(use), 'used', values => {
    const day = dayOf(use, values);
    if (fromH === undefined) return { used: (day.dailyUse * hours) / 24 };
    const byHour = useByHour(day, facts.ambientC ?? values.ambientC ?? mildC);
    let used = 0;
    eachHour(fromH, hours, (hour, span) => {
      used += present(byHour[hour]) * span;
    });
    return { used };
  });
  const names = (facts.loads ?? []).map(({ name, count }) =>
    count > 1 && !name.endsWith('s') ? `${name}s` : name,
  );
  const [one = ''] = names;
  const isOne = names.length === 1 && !one.endsWith('s');
  return {
    ...explored,
    usually: sentence(`${isOne ? withArticle(one) : list(names)} usually ${isOne ? 'takes' : 'take'}`),
  };
}
