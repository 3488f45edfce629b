import type { Facts } from '#rig/rig.ts';
import { withAsides } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import { heldHigh } from '../held-high-table.ts';
import { computeLater } from '../level-later.ts';
import type { Need } from '../needs.ts';
import { whereFacts } from '../sun.ts';
import { withWorked } from '../worked-beside.ts';
import { answerAgainst } from './against.ts';
import { answerChargeLevel } from './answer.ts';
import { levelAsides } from './asides-table.ts';
import { chargeVolts } from './charge-volts.ts';
import { computeChargeLevel } from './compute.ts';
import { answerCurrent, withFlow } from './current-alone.ts';
import { answerEither } from './either-kind.ts';
import { gravityAsides } from './gravity.ts';
import { answerLater } from './later-answer.ts';
import { leftAt } from './left-at.ts';
import { answerOvernight } from './overnight.ts';
import { hoursToGo, readOuts } from './readout.ts';
import { tailCurrent } from './tail-current.ts';
import { answerUsed } from './used-alone.ts';
import { usedBetween } from './used-between.ts';

const isLevelTold = ({ volts, batteries }: Facts): boolean =>
  volts !== undefined || !!batteries?.some(b => b.stateOfChargePercent !== undefined);

const needLevel: Need = {
  anyOf: ['volts', 'batteries'],
  ask: 'the volts it reads at rest, and its type (say “AGM reads 12.4V”)',
  key: 'need-level',
  holds: isLevelTold,
};

const level = defineIntent({
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
  guess: ({ batteries }, { parsed }) =>
    answerCurrent({ ...parsed.facts, batteries }) ?? answerUsed({ ...parsed.facts, batteries }),
  reply: (facts, setting) => {
    const overnight = answerOvernight(facts, setting);
    if (overnight) return overnight;
    const now = computeChargeLevel(facts, setting);
    const against = answerAgainst(facts, now, setting);
    if (against) return against;
    const later = computeLater(facts, now, setting);
    if (later) return answerLater(facts, now, later, setting);
    return withFlow(
      answerEither(facts, now, setting) ?? answerChargeLevel(facts, now, setting),
      facts,
      setting,
    );
  },
});

/** It reads 12.2 V: how full is it; and what people ask beside that. */
export const chargeLevel = withWorked(
  withAsides(
    level,
    [...heldHigh, ...readOuts, ...gravityAsides, ...chargeVolts, ...levelAsides],
    // "What volts is full" is read as a level of 100 %: only volts make it a sum.
    ({ volts, chargeUsedAh, chargeLeftAh }) => (volts ?? chargeUsedAh ?? chargeLeftAh) !== undefined,
  ),
  [leftAt, usedBetween, hoursToGo, tailCurrent],
);
