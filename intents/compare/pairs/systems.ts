import { duration } from '#answer/say.ts';
import { bankAssumptions, usableCapacityAh } from '#engine/battery/usable.ts';
import { choosePair } from '#engine/cable/choose.ts';
import { conductorAssumptions } from '#engine/cable/conductor.ts';
import { dropLimits } from '#engine/cable/tables.ts';
import { explore, likelyOf } from '#engine/explore.ts';
import { batteryCurrentA, loadedVoltage } from '#engine/inverter/check.ts';
import { inverterEfficiency } from '#engine/inverter/efficiency.ts';
import { dailyUseAh, useAssumptions } from '#engine/loads/model.ts';
import { decimals, plain } from '#quantity/round.ts';
import type { Facts, Load } from '#rig/rig.ts';
import { figure } from '../../figures.ts';
import { bankFor } from '../../learned.ts';
import { panelsW } from '../../sun.ts';
import { useOf } from '../../use.ts';
import type { PairCase, Weighed } from '../../weighed.ts';

/** Load reckoned with where none was told, W. */
const usualW = 2000;
/** From here on 12 V asks for cables and fuses that few can fit well, A. Common practice. */
const awkwardA = 200;
/** From the battery to the inverter, one way, m. Common practice. */
const inverterRunM = 1.5;

/** The inverter's rating, else the largest watts told. */
const wattsOf = ({ inverter, loads = [] }: Facts): number | undefined => {
  const largest = Math.max(0, ...loads.map(load => load.powerW ?? 0));
  return inverter?.powerW ?? (largest > 0 ? largest : undefined);
};

/** 12 or 24 V for what it has to run. */
export function twelveOrTwentyFour({ facts }: PairCase): Weighed {
  const told = wattsOf(facts);
  const watts = told ?? usualW;
  const at = (voltageV: 12 | 24) => {
    const assumptions = [
      inverterEfficiency,
      loadedVoltage(voltageV, undefined),
      ...conductorAssumptions(undefined),
    ];
    const current = explore<'current'>(assumptions, 'current', (values, trace) => ({
      current: batteryCurrentA(watts, watts, values, trace),
    }));
    const currentA = current.figures.current.value;
    const about = { lengthM: inverterRunM, currentA, continuousA: currentA, voltageV };
    const values = { ...likelyOf(assumptions), dropLimit: dropLimits.critical.value };
    return { current, pair: choosePair(about, 'metric', values) };
  };
  const [twelve, twentyFour] = [at(12), at(24)];
  const [a, b] = [twelve.current.figures.current, twentyFour.current.figures.current];
  const is24 = a.value > awkwardA;
  const both = `${decimals(watts, 0)} W is about ${plain(a.value)} A at 12 V, ${plain(b.value)} A at 24 V`;
  const area = ({ pair }: typeof twelve): string => `${plain(pair.conductor.areaMm2)} mm²`;
  return {
    headline: is24 ? `24 V for you: ${both}.` : `12 V for you: ${both}.`,
    lines: [
      `Cable of ${plain(inverterRunM)} m each way: ${area(twelve)}${twelve.pair.isTooMuch ? ' isn’t even enough' : ''} at 12 V, ${area(twentyFour)} at 24 V.`,
      is24
        ? 'You need a 24 to 12 V converter for fridge, lights and pump, and a charger that makes 24 V on the drive.'
        : 'All camping gear runs on 12 V as it is; 24 V pays from about 2000 W on, or on a 24 V truck.',
      'It changes no energy: 100 Ah at 24 V is 200 Ah at 12 V.',
      told === undefined ? 'I took 2000 W: what is the largest thing to run?' : '',
    ],
    figures: { current12: figure(a, 'A'), current24: figure(b, 'A') },
    better: is24 ? '24 V' : '12 V',
    explored: is24 ? twentyFour.current : twelve.current,
    cautions: ['big-current', 'fuse-at-battery'],
  };
}

/** Days that gas need not bother. */
const shortH = 72;

/** A fridge on gas or one with a compressor on 12 V. */
export function gasOrTwelve({ facts, at, mainsV }: PairCase): Weighed {
  const named = facts.loads?.find(load => /fridge|freezer/.test(load.name)) ?? {
    name: 'fridge',
    count: 1,
    supply: 'dc' as const,
  };
  const bank = bankFor(facts);
  const uses = (load: Load) => {
    const use = useOf(
      { ...facts, loads: [load], dailyUseAh: undefined, dailyUseWh: undefined },
      12,
      mainsV,
      at,
    );
    return explore<'dailyUse'>(useAssumptions(use), 'dailyUse', (values, trace) => ({
      dailyUse: dailyUseAh(use, values, trace),
    }));
  };
  const own =
    named.build === 'three-way'
      ? { ...named, build: undefined, currentA: undefined, powerW: undefined }
      : named;
  const compressor = uses(own);
  const absorption = uses({ name: 'three-way fridge', count: 1, supply: 'dc' });
  const [a, b] = [compressor.figures.dailyUse, absorption.figures.dailyUse];
  const comesIn =
    panelsW(facts) !== undefined || !!facts.chargers?.length || (facts.drivingHoursPerDay ?? 0) > 0;
  const isOut = facts.without?.some(w => w === 'solar' || w === 'charging');
  const isTwelve = (comesIn && !isOut) || (facts.durationH !== undefined && facts.durationH <= shortH);
  const isUnknown = !comesIn && !isOut && facts.durationH === undefined;
  const lasts = bank
    ? ` Your ${plain(bank.capacityAh)} Ah battery carries it ${duration((24 * usableCapacityAh({ bank, currentA: 0 }, likelyOf(bankAssumptions(bank)))) / a.value)}.`
    : '';
  const takes = `about ${plain(a.value)} Ah a day`;
  return {
    headline:
      isTwelve || isUnknown
        ? `12 V compressor fridge for you: ${takes}; a three-way takes ${plain(b.value)} Ah on 12 V.`
        : `Gas for you while parked: a 12 V fridge takes ${takes}, and nothing puts it back.`,
    lines: [
      `A compressor fridge cools in heat and on a slope.${lasts}`,
      `A three-way runs for weeks on gas, level and vented, but on 12 V takes about ${plain(b.value)} Ah a day: for the drive only.`,
      isUnknown ? 'Do you have sun or drive most days? Without either, gas is right for long stays.' : '',
    ],
    figures: { dailyUse1: figure(a, 'Ah'), dailyUse2: figure(b, 'Ah') },
    better: isTwelve || isUnknown ? '12 V' : 'gas',
    explored: compressor,
    cautions: ['gas-fridge'],
  };
}
