import { byNight } from '../by-night.ts';
import { defineIntent } from '../define-intent.ts';
import type { Intent } from '../intent.ts';
import { needBattery, needLoads } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { drawFacts } from '../use.ts';
import { answerRunTime } from './answer.ts';
import { answerCharges } from './charges.ts';
import { compareRigs } from './compare.ts';
import { computeRunTime, type RunTimeFacts } from './compute.ts';
import { answerTypical, answerUsualUse, typicalRunTime } from './typical.ts';

/** How long will it last; will it last N days. */
export const runTime: Intent<RunTimeFacts> = defineIntent<RunTimeFacts>({
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
    const typical = typicalRunTime(facts);
    const ready = typical && runTime.needs.safeParse(typical).data;
    if (!ready) return undefined;
    const isKindTold = facts.batteries?.some(({ chemistry }) => chemistry !== undefined) === true;
    if (facts.loads) return answerTypical(ready, computeRunTime(ready, setting), isKindTold);
    // Of a battery from the talk more was known, and is past.
    return (
      setting.parsed.facts.batteries &&
      answerUsualUse(runTime.reply(ready, setting), computeRunTime(ready, setting), setting)
    );
  },
  reply: (told, setting) => {
    const { cues, recognised } = setting.parsed;
    // "Can it run all night" is answered for that one night.
    const facts = cues.has('ask-can-it') ? told : byNight(told, recognised.words);
    const compared = compareRigs(facts, setting);
    if (compared) return compared;
    const result = computeRunTime(facts, setting);
    return answerCharges(facts, result, setting) ?? answerRunTime(facts, result, setting);
  },
});
