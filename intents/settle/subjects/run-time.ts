import { present } from '#basics/present.ts';
import { bankIn } from '#engine/battery/bank.ts';
import { bankAssumptions } from '#engine/battery/usable.ts';
import { exploreRunTime } from '#engine/loads/lasting.ts';
import { decimals, plain } from '#quantity/round.ts';
import { batteryAir } from '../../battery-air.ts';
import { hasUse, useOf } from '../../use.ts';
import { type Subject, weigh } from '../dispute.ts';

/** "It lasts 2 days." "No, four." */
export const runTimeSubject: Subject = {
  name: 'run time',
  intent: 'run-time',
  fits: d => {
    if (d.dimension !== 'time') return 0;
    const uses = Math.max(weigh(d, 'loads'), weigh(d, 'dailyUseAh'), weigh(d, 'dailyUseWh'));
    return 1 + uses + (bankIn(d.facts) ? 1 : 0) + (d.cues.has('last') || d.cues.has('ask-how-long') ? 1 : 0);
  },
  missing: d => {
    if (!bankIn(d.facts)) return "the battery's size (say “100Ah AGM”)";
    return hasUse(d.facts) ? undefined : 'what runs on it (say “fridge 1.2A”)';
  },
  solve: ({ facts, at, mainsV }) => {
    const bank = present(bankIn(facts));
    const depthPercent = facts.depthOfDischargePercent;
    const use = { ...useOf(facts, bank.voltageV, mainsV, at), doesMainsRunOn: true };
    const explored = exploreRunTime({
      bank,
      use,
      temperatureC: facts.ambientC,
      assumptions: bankAssumptions(bank, depthPercent, batteryAir(facts, at)),
    });
    const { runTime, dailyUse } = explored.figures;
    const { value: depth } = present(
      bankAssumptions(bank, depthPercent).find(a => a.name === 'depthOfDischarge'),
    );
    const missing = 1 - (bank.stateOfChargePercent ?? 100) / 100;
    // The time grows evenly with the share used: each claim asks for a share of its own.
    const shareFor = (hours: number): number =>
      missing + (Math.max(0, depth - missing) * hours) / runTime.value;
    return {
      answer: runTime,
      dimension: 'time',
      says: 'it lasts',
      explored,
      wouldMean: hours => {
        if (!(runTime.value > 0)) return undefined;
        const share = shareFor(hours);
        if (share <= 1.005)
          return share > 0.995
            ? 'would mean running it flat'
            : `would run it down to ${decimals(100 * (1 - share), 0)} %`;
        const wanted = (dailyUse.value * (1 - missing)) / (share - missing);
        return `is out of reach even run flat, unless it draws ${plain(wanted)} Ah a day, not ${plain(dailyUse.value)}`;
      },
      measure:
        'To find out, put a battery monitor (shunt) on it for a day: it counts the amp hours that really go out.',
    };
  },
};
