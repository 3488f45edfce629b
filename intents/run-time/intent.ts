import { withAsides } from '../asides.ts';
import { byNight, isAllNight } from '../by-night.ts';
import { defineIntent } from '../define-intent.ts';
import type { Intent } from '../intent.ts';
import { needBattery, needLoads } from '../needs.ts';
import { isSpotted } from '../spotting.ts';
import { whereFacts } from '../sun.ts';
import { drawFacts } from '../use.ts';
import { withWorked } from '../worked-beside.ts';
import { answerAhLeft, leftAlone } from './ah-left.ts';
import { answerRunTime, asksWhether } from './answer.ts';
import { lastingAsides } from './asides-table.ts';
import { answerCharges } from './charges.ts';
import { compareRigs } from './compare.ts';
import { computeRunTime, type RunTimeFacts } from './compute.ts';
import { answerIfLithium, ifLithium } from './if-lithium.ts';
import { jumpPack } from './jump-pack.ts';
import { netOfTwo } from './net-of-two.ts';
import { answerShare } from './share.ts';
import { stoppingAt } from './stop-at.ts';
import { answerTypical, answerUsualUse, ofTypical, typicalRunTime } from './typical.ts';

/** How long it lasts is asked, not whether it lasts so long. */
const asksHowLong: readonly string[] = ['how_many days|nights|hours|evenings', 'how_long'];

const lasts: Intent<RunTimeFacts> = defineIntent<RunTimeFacts>({
  name: 'run-time',
  title: 'How long will it last?',
  thing: 'battery',
  isOfNow: true,
  takes: [
    'loads',
    'dailyUseAh',
    'dailyUseWh',
    'netCurrentA',
    'batteries',
    'arrangement',
    'inverter',
    'systemVoltageV',
    'durationH',
    'chargeUsedAh',
    'chargeLeftAh',
    'volts',
    'voltsTaken',
    'ambientC',
    ...whereFacts,
    'depthOfDischargePercent',
  ],
  hangsOn: new Set([...drawFacts, 'batteries.capacityAh', 'batteries.chemistry', 'durationH']),
  needs: [needBattery, needLoads],
  // What comes in is counted only by the hour; a net current read off now holds all that comes in already.
  becomes: ({ solar, solarAhPerDay, solarWhPerDay, drivingHoursPerDay, days, netCurrentA }) =>
    netCurrentA !== undefined
      ? undefined
      : solar?.some(panel => panel.powerW !== undefined) ||
          (solarAhPerDay ?? solarWhPerDay ?? drivingHoursPerDay) !== undefined ||
          days?.length
        ? 'trip'
        : undefined,
  guess: (facts, setting) => {
    // Where somebody’s health hangs on it, or somebody’s own gear is named, nothing usual is put in the place of what is there.
    const alone = leftAlone(facts);
    const left = alone && lasts.needs.safeParse(alone).data;
    if (left) return answerAhLeft(facts, computeRunTime(left, setting));
    const isSomebodys = setting.owner !== undefined || setting.parsed.owners.length > 0;
    if (setting.parsed.hazards.includes('medical') || isSomebodys) return undefined;
    const typical = typicalRunTime(facts);
    const ready = typical && lasts.needs.safeParse(typical).data;
    if (!ready) return undefined;
    const isKindTold = facts.batteries?.some(({ chemistry }) => chemistry !== undefined) === true;
    if (facts.loads) {
      const result = computeRunTime(ready, setting);
      const charges = answerCharges(ready, result, setting);
      return charges ? ofTypical(charges, result) : answerTypical(ready, result, isKindTold, setting.parsed);
    }
    // Of a battery from the talk more was known, and is past.
    return (
      setting.parsed.facts.batteries &&
      answerUsualUse(lasts.reply(ready, setting), computeRunTime(ready, setting), setting)
    );
  },
  reply: (known, setting) => {
    const { cues, recognised, facts: said } = setting.parsed;
    // "All night then?" asks for a night, "how many days?" for how long it lasts: not for the hours asked for before.
    const isUntold = said.durationH === undefined && said.until === undefined;
    const isOther =
      isUntold &&
      (isSpotted(recognised.words, asksHowLong) ||
        (isAllNight(recognised.words) && setting.recalled.has('durationH')));
    const told = isOther ? { ...known, durationH: undefined } : known;
    // "Can it run all night" is answered for that one night.
    const isOneNight = cues.has('ask-can-it') || asksWhether(told, setting);
    const facts = stoppingAt(isOneNight ? told : byNight(told, recognised.words), setting);
    const compared = compareRigs(facts, setting);
    if (compared) return compared;
    const result = computeRunTime(facts, setting);
    const lithium = ifLithium(facts, result);
    if (lithium) return answerIfLithium(lithium, computeRunTime(lithium, setting), setting);
    return (
      answerCharges(facts, result, setting) ??
      answerShare(facts, result, setting) ??
      answerRunTime(facts, result, setting)
    );
  },
});

/** How long will it last, will it last N days; and what people ask beside that. */
export const runTime: Intent<RunTimeFacts> = withWorked(withAsides(lasts, lastingAsides), [
  netOfTwo,
  jumpPack,
]);
