import type { Facts } from '#rig/rig.ts';
import type { Evidence, Intent } from '../intent.ts';
import { hasCapacity, type Need, needs } from '../needs.ts';
import { sunFacts } from '../sun.ts';
import { hasUse } from '../use.ts';
import { answerChargeTime } from './answer.ts';
import { computeChargeTime } from './compute.ts';

const takes = [
  ...sunFacts,
  'chargers',
  'alternator',
  'loads',
  'dailyUseAh',
  'dailyUseWh',
  'inverter',
  'durationH',
  'drivingHoursPerDay',
  'targetChargePercent',
  'chargeNeededAh',
  'chargeUsedAh',
  'chargeLeftAh',
  'solarAhPerDay',
  'solarWhPerDay',
  'altitudeM',
] as const satisfies readonly (keyof Facts)[];

const needCharge: Need = {
  anyOf: ['batteries', 'chargeNeededAh', 'loads', 'dailyUseAh', 'dailyUseWh'],
  ask: "the battery's size and how full it is (say “100Ah AGM at 50%”)",
  key: 'need-charge',
  holds: facts => hasCapacity(facts) || facts.chargeNeededAh !== undefined || hasUse(facts),
};
const hasWatts = (facts: Facts): boolean => !!facts.solar?.some(panel => panel.powerW !== undefined);
const needSource: Need = {
  anyOf: ['chargers', 'solar', 'solarAhPerDay', 'solarWhPerDay', 'drivingHoursPerDay'],
  ask: 'what charges it (say “25A DC-DC”, “10A mains charger” or “200W panel”)',
  key: 'need-source',
  holds: facts =>
    !!facts.chargers?.length ||
    hasWatts(facts) ||
    (facts.solarAhPerDay ?? facts.solarWhPerDay ?? facts.drivingHoursPerDay) !== undefined,
};

/** How long to charge it; how long must I drive. */
export const chargeTime: Intent = {
  name: 'charge-time',
  title: 'How long to charge it?',
  takes,
  needs: needs(takes, [needCharge, needSource]),
  asks: said => {
    const { cues, facts } = said;
    const found: Evidence[] = [];
    const add = (because: string, weight: number) => found.push({ because, weight });
    const chargers = (facts.chargers ?? []).filter(c => c.kind !== 'generator');
    const isCharging = chargers.length > 0 || cues.has('charge') || cues.has('charger');
    const isDriving = cues.has('drive') || facts.drivingHoursPerDay !== undefined;
    const isTold = facts.batteries?.some(b => b.stateOfChargePercent !== undefined);
    const isToGoal = facts.targetChargePercent !== undefined || facts.chargeNeededAh !== undefined;
    const isAsking =
      cues.has('ask-how-long') ||
      cues.has('ask-can-it') ||
      cues.has('ask-how-much') ||
      (chargers.length > 0 && !!isTold && facts.drivingHoursPerDay !== undefined);
    if (chargers.length > 0) add('a charger', 2);
    if (cues.has('charge')) add('speaks of charging', 2);
    if (cues.has('ask-how-long') && (isCharging || isDriving)) add('asks how long, of charging', 2);
    if (chargers.length > 0 && (isTold || facts.batteries?.length)) add('a charger and a battery', 1);
    if (isToGoal) add('a charge to reach', 2);
    if (isDriving && (isTold || isToGoal)) add('driving and a charge', 2);
    if (isDriving && cues.has('ask-how-long') && cues.has('full')) add('how long to drive to fill it', 2);
    if (cues.has('full') && isAsking) add('asks for full', 1);
    if (hasWatts(facts) && cues.has('full') && cues.has('ask-how-long')) add('a panel to fill it', 2);
    if (cues.has('ask-which') || (cues.has('isolator') && cues.has('dcdc'))) add('asks which', -4);
    for (const cue of ['cable', 'fuse', 'learn', 'ask-what-is'] as const)
      if (cues.has(cue)) add(`speaks of ${cue}`, -3);
    if (cues.has('trip') || cues.has('day-plan') || facts.drivingPlanH) add('a trip', -2);
    if (cues.has('last') && hasUse(facts)) add('loads that should last', -2);
    if (cues.has('ask-what-size')) add('asks what size', -3);
    if (cues.has('generator') && (cues.has('ask-can-it') || hasUse(facts))) add('asks of a generator', -1);
    if (cues.has('smart-alternator') || facts.alternator) add('asks of the alternator', -2);
    if (facts.volts !== undefined && cues.has('ask-charge-level')) add('a voltage was read', -3);
    if (said.claims.length > 1 || cues.has('ask-who-is-right')) add('an argument', -4);
    if (!isAsking && !cues.has('question-mark') && !isToGoal) add('tells, and asks nothing', -3);
    if (cues.has('generator')) add('speaks of a generator', -3);
    return found;
  },
  reply: (facts, setting) => answerChargeTime(facts, computeChargeTime(facts, setting), setting),
};
