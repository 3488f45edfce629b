import { present } from '#basics/present.ts';
import { solveFor } from '#engine/explore.ts';
import { dailyYield, type SolarCase, solarAssumptions } from '#engine/solar/model.ts';
import { decimals, plain } from '#quantity/round.ts';
import { panelsW, sunOf } from '../../sun.ts';
import { type Subject, weigh } from '../dispute.ts';
import { probe } from './probe.ts';
import { voltageIn } from './use.ts';

/** "The panel makes 1 kWh a day." "More like 700 Wh." */
export const solarYieldSubject: Subject = {
  name: 'solar yield',
  intent: 'solar-yield',
  fits: d => {
    if (d.dimension !== 'charge' && d.dimension !== 'energy') return 0;
    if (!d.facts.solar?.some(s => s.powerW)) return d.cues.has('solar') && d.cues.has('ask-yield') ? 2 : 0;
    return (
      1 +
      2 * weigh(d, 'solar') +
      (d.facts.peakSunHours ? 1 : 0) -
      (d.facts.durationH && weigh(d, 'loads') > 1 ? 3 : 0)
    );
  },
  missing: d => (d.facts.solar?.some(s => s.powerW) ? undefined : "the panel's size in watts"),
  solve: ({ facts, dimension, at }) => {
    const powerW = present(panelsW(facts));
    const sun = sunOf(facts, at);
    const voltageV = voltageIn(facts);
    const of = (
      c: SolarCase,
      values: Parameters<typeof dailyYield>[1],
      trace?: Parameters<typeof dailyYield>[2],
    ) => {
      const made = dailyYield({ ...c, powerW, nominalVoltageV: voltageV }, values, trace);
      return dimension === 'energy' ? made.dailyYieldEnergyWh : made.dailyYieldAh;
    };
    const { explored } = probe(solarAssumptions(sun), (values, trace) => of(sun, values, trace));
    const toWh = dimension === 'energy' ? 1 : voltageV;
    return {
      answer: explored.figures.answer,
      dimension: present(dimension),
      says: 'a day brings',
      explored,
      wouldMean: value => {
        const hours = facts.peakSunHours;
        if (hours !== undefined) {
          const share = (100 * value * toWh) / (powerW * hours);
          const extra = share > 100 ? ', which no panel does' : '';
          return `would mean ${decimals(share, 0)} % of the label for all ${plain(hours)} sun hours${extra}`;
        }
        const needed = solveFor(value, 0.05, 14, peakSunHours => of({ ...sun, peakSunHours }, {}));
        return needed === undefined
          ? 'is more than any sun gives in a day'
          : `would take ${plain(needed)} hours of full sun a day`;
      },
      measure:
        "To find out, read the day's total on the controller; a clear and a cloudy day differ threefold.",
    };
  },
};
