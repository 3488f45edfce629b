import { applianceOf } from '#catalog/appliances.ts';
import { limitsOf } from '#engine/battery/limits.ts';
import { explore } from '#engine/explore.ts';
import { batteryCurrentA, loadedVoltage } from '#engine/inverter/check.ts';
import { inverterEfficiency } from '#engine/inverter/efficiency.ts';
import { throughWatts, wattsAssumptions } from '#engine/inverter/watts.ts';
import { currentOfPower } from '#engine/loads/rules.ts';
import { decimals, plain } from '#quantity/round.ts';
import { run } from '#rule/rule.ts';
import { figure } from '../../figures.ts';
import { type FaultCase, type Finding, thing } from './finding.ts';

/** Mains loads, where what each takes is known. */
function outletOf({ told, mainsV }: FaultCase) {
  const loads = told.loads?.filter(load => load.supply === 'ac') ?? [];
  const isKnown = loads.every(load => load.powerW ?? load.currentA ?? applianceOf(load.name));
  return loads.length > 0 && isKnown ? { loads, mainsV } : undefined;
}

/** Mains loads together against the inverter's rating. */
export function loadFinding(about: FaultCase): Finding | undefined {
  const outlet = outletOf(about);
  const ratingW = about.facts.inverter?.powerW;
  if (!outlet || ratingW === undefined) return undefined;
  const explored = explore<'acLoad'>(wattsAssumptions(outlet), 'acLoad', (values, trace) => ({
    acLoad: throughWatts(outlet, values, trace),
  }));
  const { acLoad } = explored.figures;
  const isCause = acLoad.value > ratingW;
  const sum = `${thing(outlet.loads)}: about ${decimals(acLoad.value, 0)} W on a ${decimals(ratingW, 0)} W inverter`;
  return {
    by: 'load',
    isCause,
    says: isCause ? `${sum}: that alone trips it.` : `${sum}: it should carry that, so look at its volts.`,
    ...(isCause && {
      likely: `${thing(outlet.loads)} ${outlet.loads.length > 1 ? 'are' : 'is'} too much for it: about ${decimals(acLoad.value, 0)} W on ${decimals(ratingW, 0)} W.`,
    }),
    figures: { acLoad: figure(acLoad, 'W') },
    explored,
  };
}

/** The current out of the battery against what it stands. */
export function limitFinding(about: FaultCase): Finding | undefined {
  const { facts, bank } = about;
  const outlet = outletOf(about);
  if (!bank || !outlet) return undefined;
  const assumptions = [
    ...wattsAssumptions(outlet),
    inverterEfficiency,
    loadedVoltage(bank.voltageV, bank.isChemistryAssumed ? undefined : bank.chemistry === 'lfp'),
  ];
  const explored = explore<'batteryCurrent'>(assumptions, 'batteryCurrent', (values, trace) => ({
    batteryCurrent: batteryCurrentA(
      throughWatts(outlet, values, trace),
      facts.inverter?.powerW,
      values,
      trace,
    ),
  }));
  const { batteryCurrent } = explored.figures;
  const limitA = limitsOf(bank, facts.ambientC).dischargeA;
  const isCause = batteryCurrent.value > limitA;
  return {
    by: 'load',
    isCause,
    says: `It asks about ${plain(batteryCurrent.value)} A of a battery that gives about ${plain(limitA)} A${isCause ? ': too much' : ''}.`,
    ...(isCause && {
      likely: `Too many amps for the battery: about ${plain(batteryCurrent.value)} A, and it gives about ${plain(limitA)} A.`,
    }),
    figures: { batteryCurrent: figure(batteryCurrent, 'A') },
    explored,
  };
}

/** What hangs on a site's post, A. */
export function postFinding(about: FaultCase): Finding | undefined {
  const outlet = outletOf(about);
  if (!outlet) return undefined;
  const explored = explore<'current'>(wattsAssumptions(outlet), 'current', (values, trace) => ({
    current: run(currentOfPower, { P: throughWatts(outlet, values, trace), V: about.mainsV }, trace),
  }));
  const { current } = explored.figures;
  return {
    says: `${thing(outlet.loads)}: about ${plain(current.value)} A at ${decimals(about.mainsV, 0)} V.`,
    figures: { current: figure(current, 'A') },
    explored,
  };
}
