import { present } from '#basics/present.ts';
import { type Bank, bankOf } from '#engine/battery/bank.ts';
import { decimals } from '#quantity/round.ts';
import type { Battery } from '#rig/rig.ts';
import { type Dispute, type Subject, weigh } from '../dispute.ts';
import { probe } from './probe.ts';

/** The batteries spoken of; one that is in series or parallel has a second like it. */
function joined(d: Dispute): readonly Battery[] {
  const batteries = d.facts.batteries ?? [];
  const [only] = batteries;
  return batteries.length === 1 && present(only).count === 1 && isJoined(d)
    ? [{ ...present(only), count: 2 }]
    : batteries;
}

const isJoined = ({ facts, cues }: Dispute): boolean =>
  facts.arrangement !== undefined || cues.has('series') || cues.has('parallel');

const blocks = (d: Dispute): number => joined(d).reduce((sum, b) => sum + b.count, 0);

const told = (bank: Bank): string => `${decimals(bank.capacityAh, 0)} Ah at ${decimals(bank.voltageV, 0)} V`;

/** "Two in series are 400 Ah." "No, it stays 200." */
export const bankSubject: Subject = {
  name: 'bank',
  intent: 'battery-bank',
  fits: d => {
    if (!['charge', 'energy', 'voltage'].includes(d.dimension ?? '')) return 0;
    if (blocks(d) < 2 && !isJoined(d)) return 0;
    const uses = Math.max(weigh(d, 'loads'), weigh(d, 'dailyUseAh'), weigh(d, 'solar'));
    return 1 + weigh(d, 'batteries') + (isJoined(d) ? 3 : 0) + (d.cues.has('bank') ? 1 : 0) - uses;
  },
  missing: d => {
    if (blocks(d) < 2) return 'how many batteries there are, and their size (say “two 6V 200Ah”)';
    return bankOf(joined(d)) ? undefined : "the batteries' size in Ah";
  },
  solve: d => {
    const { facts, dimension, cues } = d;
    const batteries = joined(d);
    const arrangement = facts.arrangement ?? (cues.has('series') ? 'series' : 'parallel');
    const bank = present(bankOf(batteries, arrangement));
    const other = present(bankOf(batteries, arrangement === 'series' ? 'parallel' : 'series'));
    const pick = (b: Bank): number =>
      dimension === 'voltage'
        ? b.voltageV
        : dimension === 'energy'
          ? b.capacityAh * b.voltageV
          : b.capacityAh;
    const { explored } = probe([], (_, trace) => {
      const value = pick(bank);
      const law =
        arrangement === 'series' ? 'in series volts add and Ah stay' : 'in parallel Ah add and volts stay';
      trace?.lookup({ name: 'bank', says: law, value, unit: unitFor(dimension), source: 'definition' });
      return value;
    });
    const word = arrangement === 'series' ? 'series' : 'parallel';
    return {
      answer: explored.figures.answer,
      dimension: present(dimension),
      says: `in ${word} it is`,
      explored,
      wouldMean: value =>
        Math.abs(pick(other) / value - 1) < 0.03
          ? `would be right in ${arrangement === 'series' ? 'parallel' : 'series'}: ${told(other)}`
          : Math.abs(pick(bank) / value - 1) < 0.03
            ? `fits: ${told(bank)}`
            : undefined,
      measure: `Series adds volts, parallel adds amp hours; the energy is the same: here ${told(bank)}.`,
      cautions: bank.isMixed ? ['mixed-batteries'] : [],
    };
  },
};

const unitFor = (dimension: string | undefined): string =>
  dimension === 'voltage' ? 'V' : dimension === 'energy' ? 'Wh' : 'Ah';
