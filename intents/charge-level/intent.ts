import type { Facts } from '#rig/rig.ts';
import { answerAside, asideIn, asideOf, needsBeside } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import { computeLater } from '../level-later.ts';
import type { Need } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { answerChargeLevel } from './answer.ts';
import { levelAsides } from './asides-table.ts';
import { computeChargeLevel } from './compute.ts';
import { answerLater } from './later-answer.ts';

const isLevelTold = ({ volts, batteries }: Facts): boolean =>
  volts !== undefined || !!batteries?.some(b => b.stateOfChargePercent !== undefined);

const needLevel: Need = {
  anyOf: ['volts', 'batteries'],
  ask: 'the volts it reads at rest, and its type (say “AGM reads 12.4V”)',
  holds: isLevelTold,
};

/** It reads 12.2 V: how full is it. */
export const chargeLevel = defineIntent({
  name: 'charge-level',
  title: 'How full is my battery?',
  thing: 'battery',
  isOfNow: true,
  takes: [
    'volts',
    'voltsTaken',
    'batteries',
    'chargeUsedAh',
    'chargeLeftAh',
    'arrangement',
    'systemVoltageV',
    'depthOfDischargePercent',
    // At a later time: what runs until then, and what the battery's air does.
    'durationH',
    'until',
    'loads',
    'dailyUseAh',
    'dailyUseWh',
    'inverter',
    'netCurrentA',
    'solar',
    'mount',
    'ambientC',
    'sky',
    'without',
    ...whereFacts,
  ],
  needs: [needLevel],
  subjectIn: words => asideIn(words, levelAsides)?.name,
  needsOn: needsBeside(levelAsides, [needLevel]),
  reply: (facts, setting) => {
    // "What volts is full" is read as a level of 100 %: only volts make it a sum.
    const own = setting.parsed.facts;
    const hasOwnFigures = (own.volts ?? own.chargeUsedAh ?? own.chargeLeftAh) !== undefined;
    const aside = asideOf(levelAsides, setting, { hasOwnFigures, canSum: isLevelTold(facts) });
    if (aside) return answerAside(aside, facts);
    const level = computeChargeLevel(facts, setting);
    const later = computeLater(facts, level, setting);
    return later ? answerLater(facts, level, later, setting) : answerChargeLevel(facts, level, setting);
  },
});
