import type { Reply } from '#answer/reply.ts';
import type { Facts, Stated } from '#rig/rig.ts';
import { withAsides } from '../asides.ts';
import { chargersTogether } from '../chargers-together.ts';
import { defineIntent } from '../define-intent.ts';
import { factsOf } from '../facts.ts';
import type { Intent, RequestContext } from '../intent.ts';
import { hasCapacity, type Need } from '../needs.ts';
import { computeShould } from '../should-charge.ts';
import { sunFacts } from '../sun.ts';
import { hasUse } from '../use.ts';
import { answerChargeTime } from './answer.ts';
import { chargeTimeAsides } from './asides-table.ts';
import { computeChargeTime, computePutBack, isPutBack } from './compute.ts';
import { coldFirst, guessed, withGuess } from './guess.ts';
import { answerPutBack } from './put-back.ts';
import { answerShould } from './should-answer.ts';
import { chargerSize } from './sums/charger-size.ts';
import { shutOffLithium } from './sums/shut-off.ts';
import { answerAtTemperature, atTemperature } from './temperature.ts';

const isOfTemperature = (facts: Facts): boolean => atTemperature(facts) !== undefined;
const needCharge: Need = {
  anyOf: ['batteries', 'chargeNeededAh', 'loads', 'dailyUseAh', 'dailyUseWh', 'chargers'],
  ask: "the battery's size and how full it is (say “100Ah AGM at 50%”)",
  key: 'need-charge',
  holds: facts =>
    hasCapacity(facts) ||
    facts.chargeNeededAh !== undefined ||
    hasUse(facts) ||
    isOfTemperature(facts) ||
    isPutBack(facts),
};
const hasWatts = (facts: Facts): boolean => !!facts.solar?.some(panel => panel.powerW !== undefined);
/** What is read off it tells whether to charge, whatever with; and what flows in is a source. */
const isLive = ({ netCurrentA, volts, durationH, batteries }: Facts): boolean =>
  (netCurrentA !== undefined && (netCurrentA > 0 || durationH !== undefined)) ||
  (volts !== undefined && !!batteries?.some(one => one.chemistry));
const needSource: Need = {
  anyOf: [
    'chargers',
    'solar',
    'solarAhPerDay',
    'solarWhPerDay',
    'drivingHoursPerDay',
    'netCurrentA',
    'volts',
    'ambientC',
  ],
  ask: 'what charges it (say “25A DC-DC”, “10A mains charger” or “200W panel”)',
  key: 'need-source',
  holds: facts => hasSource(facts) || isOfTemperature(facts),
};
function hasSource(facts: Facts): boolean {
  const { chargers, solarAhPerDay, solarWhPerDay, drivingHoursPerDay } = facts;
  const isOfSun = (solarAhPerDay ?? solarWhPerDay) !== undefined || hasWatts(facts);
  return !!chargers?.length || isOfSun || isLive(facts) || drivingHoursPerDay !== undefined;
}

/** What was used hangs in each answer where nothing else tells how full it is; a charger's amps where it is the only source. */
function alsoHangsOn(facts: Stated): readonly string[] {
  const { batteries, chargeNeededAh, netCurrentA, volts, chargers, solar } = facts;
  if ((netCurrentA ?? volts) !== undefined) return [];
  const isLevelTold = batteries?.some(battery => battery.stateOfChargePercent !== undefined);
  const isUsedAlone = chargeNeededAh === undefined && !isLevelTold;
  const [charger] = chargers?.length === 1 && !solar ? chargers : [];
  const isCharger = charger !== undefined && charger.kind !== 'generator' && charger.powerW === undefined;
  return [...(isUsedAlone ? ['chargeUsedAh'] : []), ...(isCharger ? ['chargers.currentA'] : [])];
}

/** Above freezing, of a battery that nobody told: what is right for lithium is right for all. */
function warmEnough(
  { ambientC, batteries }: Stated,
  { parsed: { cues } }: RequestContext,
): Reply | undefined {
  const isAsked = ambientC !== undefined && ambientC > 0 && batteries === undefined;
  return isAsked && !cues.has('ask-how-long')
    ? answerAtTemperature({ chemistry: 'lfp', ambientC })
    : undefined;
}

const time: Intent = defineIntent({
  name: 'charge-time',
  title: 'How long to charge it?',
  isOfNow: true,
  takes: [
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
    'netCurrentA',
    'volts',
    'voltsTaken',
  ],
  alsoHangsOn,
  needs: [needCharge, needSource],
  guess: (told, setting) => {
    const size = chargerSize(factsOf(told), setting);
    if (size) return size;
    const guess = guessed(told, setting, hasSource(factsOf(told)));
    const ready = guess && time.needs.safeParse(guess.facts).data;
    return ready
      ? withGuess(time.reply(ready, setting), guess)
      : (warmEnough(told, setting) ?? coldFirst(told));
  },
  reply: (facts, setting) => {
    const off = shutOffLithium(facts, setting);
    if (off) return off;
    const asked = atTemperature(facts);
    if (asked) return answerAtTemperature(asked);
    const size = chargerSize(facts, setting);
    if (size) return size;
    if (isPutBack(facts)) return answerPutBack(computePutBack(facts));
    const should = computeShould(facts, setting);
    return should
      ? answerShould(facts, should, setting)
      : answerChargeTime(facts, computeChargeTime(facts, setting), setting);
  },
});

/** How long to charge it; how long must I drive; and what people ask beside that. */
export const chargeTime: Intent = withAsides(time, [...chargersTogether, ...chargeTimeAsides]);
