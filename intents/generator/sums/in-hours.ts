import type { Reply } from '#answer/reply.ts';
import { duration, lasting, span } from '#answer/say.ts';
import { chargeRow } from '#engine/battery/charge-table.ts';
import { type Source, sourceAssumptions, sourceCurrentA } from '#engine/charging/source.ts';
import { type Explored, explore } from '#engine/explore.ts';
import { decimals, plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { enough, figure, reasons } from '../../figures.ts';
import type { RequestContext } from '../../intent.ts';
import { isSpotted } from '../../spotting.ts';
import type { Generator } from '../compute.ts';
import { fuelLh, litres } from '../fuel.ts';

/** Longer than this is a stay and no time that a generator runs, h. */
const stayH = 24;

const asksFuel: readonly string[] = [
  'petrol|fuel|litre*|gas|diesel|tank how_much|how_many|per_hour|an_hour|enough|last|use|uses|drink|drinks|burn|burns -size -bottle',
];

/** The hours that it runs, where they are told. */
const hoursTold = ({ durationH }: Facts): number | undefined =>
  durationH !== undefined && durationH < stayH ? durationH : undefined;

const charging = (facts: Facts) =>
  facts.chargers?.find(({ currentA, kind }) => currentA !== undefined && kind !== 'generator') ??
  facts.chargers?.find(({ currentA }) => currentA !== undefined);

const rest = (own: Reply): readonly string[] => [own.headline, ...(own.lines ?? [])];

/** What a charger puts in over the hours told, Ah. */
function putIn(facts: Facts, hours: number): Explored<'chargePutBack'> | undefined {
  const charger = charging(facts);
  if (!charger) return undefined;
  const generatorW = facts.chargers?.find(({ kind }) => kind === 'generator')?.powerW;
  const source: Source = {
    kind: 'mains',
    currentA: charger.currentA,
    generatorW,
    row: chargeRow('agm'),
    blocks: 1,
  };
  return explore<'chargePutBack'>(sourceAssumptions(source), 'chargePutBack', (values, trace) => ({
    chargePutBack: sourceCurrentA(source, values, trace) * hours,
  }));
}

/** Whether the hours told do, or what they put in. */
function inHours(facts: Facts, { figures }: Generator, own: Reply, hours: number): Reply | undefined {
  const added = putIn(facts, hours);
  if (!added) return undefined;
  const { chargePutBack: ah } = added.figures;
  const puts = `about ${plain(ah.value)} Ah (${span(ah.low, ah.high, 'Ah')})`;
  const time = duration(hours).replace(/^about /, '');
  const { chargeTime } = figures;
  const isNeedTold = chargeTime.value > 0 && Number.isFinite(chargeTime.value);
  if (!isNeedTold)
    return {
      ...own,
      headline: `A${puts.slice(1)} in ${time}.`,
      lines: [
        'Less if it’s nearly full: then a battery takes less and less, AGM from about 80 % on.',
        ...rest(own),
      ].slice(0, 3),
      verdict: null,
      figures: { ...own.figures, chargePutBack: figure(ah, 'Ah') },
      ...reasons(added),
    };
  const verdict = enough({ value: -chargeTime.value, low: -chargeTime.high, high: -chargeTime.low }, -hours);
  const lead = { yes: 'Yes', tight: 'Just', no: 'No' } as const;
  return {
    ...own,
    headline: `${lead[verdict]}: that takes ${lasting(chargeTime)} of running; ${time} puts in about ${plain(ah.value)} Ah.`,
    lines: rest(own).slice(0, 3),
    verdict,
    figures: { ...own.figures, chargePutBack: figure(ah, 'Ah') },
  };
}

/** What an hour puts in, where hours are asked and nothing tells how much is to go in. */
function inAnHour(facts: Facts, own: Reply): Reply | undefined {
  const ah = putIn(facts, 1)?.figures.chargePutBack;
  return (
    ah && {
      ...own,
      headline: `Each hour puts in about ${plain(ah.value)} Ah: divide what you use in a day by that.`,
      lines: [
        'Say “40 Ah a day” or your battery’s size and level, and I work the hours out.',
        ...rest(own),
      ].slice(0, 3),
      verdict: null,
    }
  );
}

/** Petrol for the time it has to run. */
function fuelFor(facts: Facts, result: Generator, own: Reply, toldH: number | undefined): Reply | undefined {
  const hours = toldH ?? result.figures.chargeTime.value;
  if (!(hours > 0) || !Number.isFinite(hours)) return undefined;
  const ratedW = facts.chargers?.find(({ kind }) => kind === 'generator')?.powerW ?? result.sizeW;
  const each = fuelLh(ratedW > 0 ? ratedW : 1000);
  return {
    ...own,
    headline: `About ${litres({ low: each.low * hours, high: each.high * hours })}: some ${decimals(hours, hours < 3 ? 1 : 0)} hours at ${litres(each)} an hour.`,
    lines: rest(own).slice(0, 3),
    verdict: null,
  };
}

/** The answer with what was asked of hours in its first line: what they put in, whether they do, how long, what petrol. */
export function hoursAsked(facts: Facts, result: Generator, own: Reply, setting: RequestContext): Reply {
  const { words } = setting.parsed.recognised;
  const told = hoursTold(facts);
  const ofFuel = isSpotted(words, asksFuel) ? fuelFor(facts, result, own, told) : undefined;
  if (ofFuel) return ofFuel;
  const ofHours = told === undefined ? undefined : inHours(facts, result, own, told);
  if (ofHours) return ofHours;
  const { figures } = result;
  const { chargeTime, generatorPower } = figures;
  const isTime = chargeTime.value > 0 && Number.isFinite(chargeTime.value) && generatorPower.value > 0;
  const isSizeAsked = isSpotted(words, [
    'size|what_generator|which_generator|how_big|will|can|run|enough|trip',
  ]);
  const isLongAsked =
    setting.parsed.cues.has('ask-how-long') ||
    isSpotted(words, ['how_many_hours|how_long|hours_a_day|generator_hours|hours_of|hours_to -size']) ||
    (facts.chargeNeededAh !== undefined && !isSizeAsked);
  if (isLongAsked && !isTime && figures.loadPower.value <= 0) return inAnHour(facts, own) ?? own;
  if (!isTime || !isLongAsked || own.verdict === 'no') return own;
  const [run = '', ...others] = own.lines ?? [];
  return { ...own, headline: run, lines: [own.headline, ...others].slice(0, 3), verdict: null };
}
