import { storageAssumptions } from '#engine/battery/charging.ts';
import { likelyOf, solveFor } from '#engine/explore.ts';
import { dailyUseAh, useAssumptions } from '#engine/loads/model.ts';
import { panelPowerFor, type SolarCase, solarAssumptions } from '#engine/solar/model.ts';
import { plain } from '#quantity/round.ts';
import { batteryOnCharge } from '../../battery-air.ts';
import { bankFor } from '../../learned.ts';
import { sunOf } from '../../sun.ts';
import { hasUse, useOf } from '../../use.ts';
import { type Subject, weigh } from '../dispute.ts';
import { probe } from './probe.ts';
import { kindIn } from './use.ts';

/** "A 100 W panel does it." "You need 200." */
export const panelSizeSubject: Subject = {
  name: 'panel size',
  intent: 'solar-size',
  fits: d => {
    if (d.dimension !== 'power') return 0;
    const isSun = ['solar', 'sun', 'controller'].some(cue => d.cues.has(cue as 'solar'));
    const isUseAlone = !!(d.facts.dailyUseAh ?? d.facts.dailyUseWh) && !d.facts.loads;
    // Watts guessed after "what panel do I need?" are a panel's.
    const isAsked = d.argued === 'solar-size';
    return isSun || isAsked || d.facts.peakSunHours !== undefined || isUseAlone
      ? 2 + Math.max(weigh(d, 'loads'), weigh(d, 'dailyUseAh'))
      : 0;
  },
  missing: d => (hasUse(d.facts) ? undefined : 'what you use a day (say “fridge 1.2A” or “40Ah a day”)'),
  solve: ({ facts, at }) => {
    const kind = kindIn(facts);
    const use = useOf(facts, kind.voltageV, undefined, at);
    const sun = sunOf(facts, at);
    const assumptions = [
      ...useAssumptions(use),
      ...solarAssumptions(sun),
      ...storageAssumptions(kind.chemistry, kind.isChemistryAssumed),
      ...batteryOnCharge(facts, bankFor(facts), at),
    ];
    const watts = (
      c: SolarCase,
      values: Parameters<typeof dailyUseAh>[1],
      trace?: Parameters<typeof dailyUseAh>[2],
    ) =>
      panelPowerFor(
        dailyUseAh(use, values, trace),
        { ...c, nominalVoltageV: kind.voltageV, chemistry: kind.chemistry },
        values,
        trace,
      ).panelPowerW;
    const { explored } = probe(assumptions, (values, trace) => watts(sun, values, trace));
    const likely = likelyOf(assumptions);
    return {
      answer: explored.figures.answer,
      dimension: 'power',
      says: 'it takes',
      explored,
      wouldMean: value => {
        const hours = solveFor(value, 0.1, 12, peakSunHours => watts({ ...sun, peakSunHours }, likely));
        return hours === undefined
          ? 'is outside what any sun makes of it'
          : `is right with ${plain(hours)} hours of full sun a day`;
      },
      measure:
        'It depends on the sun where you camp and on what you use: a monitor shows both over a few days.',
    };
  },
};
