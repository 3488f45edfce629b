import { answerAside } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import { answerSettle } from './answer.ts';
import { settleDispute } from './compute.ts';
import { commonKnowledge } from './known.ts';
import { answerMaxim, heldBy } from './maxim-answer.ts';
import { answerAlone, answerSides } from './sides.ts';

/** A says 2 days, B says 4: who is right. What is missing is asked for by the answer, as it hangs on the claims. */
export const settle = defineIntent({
  name: 'settle',
  title: 'Who is right?',
  asksNothing: true,
  isArgument: true,
  takes: [
    'loads',
    'dailyUseAh',
    'dailyUseWh',
    'netCurrentA',
    'batteries',
    'arrangement',
    'systemVoltageV',
    'inverter',
    'cable',
    'chargers',
    'alternator',
    'drivingHoursPerDay',
    'durationH',
    'ambientC',
    'depthOfDischargePercent',
    'chargeNeededAh',
    'targetChargePercent',
    'solar',
    'mount',
    'peakSunHours',
    'place',
    'latitudeDeg',
    'longitudeDeg',
    'month',
    'sky',
    'shade',
    'volts',
    'voltsTaken',
  ],
  reply: (facts, setting) => {
    const held = heldBy(setting);
    if (held) return answerMaxim(held, setting.from);
    const sided = answerSides(setting);
    if (sided) return sided;
    const settled = settleDispute(facts, setting);
    const known = settled.kind === 'asked' ? commonKnowledge(facts, setting.parsed) : undefined;
    if (known) return answerAside(known, facts);
    return (settled.kind === 'asked' && answerAlone(setting)) || answerSettle(settled, setting);
  },
});
