import { present } from '#basics/present.ts';
import { storageAssumptions } from '#engine/battery/charging.ts';
import { type Circuit, circuitAssumptions, circuitCurrents } from '#engine/cable/circuit.ts';
import { recommendPath } from '#engine/charging/path.ts';
import { explore } from '#engine/explore.ts';
import { dailyUseAh, useAssumptions } from '#engine/loads/model.ts';
import { dailyYield, solarAssumptions, storedOf } from '#engine/solar/model.ts';
import { type PanelCase, wire, wiringAssumptions } from '#engine/solar/wiring.ts';
import { decimals, plain, significant } from '#quantity/round.ts';
import { figure } from '../../figures.ts';
import { nominalVOf, panelsW, sunOf, whereAndWhen } from '../../sun.ts';
import { hasUse, useOf } from '../../use.ts';
import { blocksIn, type FaultCase, type Finding } from './finding.ts';

/** Under this share of full sun's amps something is wrong, in full sun. Common practice. */
const poorShare = 0.4;

/** What the panels should put in at noon in full sun, A, beside what was read. */
export function noonFinding(about: FaultCase): Finding | undefined {
  const { facts, told } = about;
  const solar = facts.solar?.filter(panel => panel.powerW !== undefined) ?? [];
  if (solar.length === 0) return undefined;
  const panels: PanelCase = {
    panels: solar,
    controller: solar.find(panel => panel.controller)?.controller,
    blocks: blocksIn(about),
    isShaded: false,
    coldestC: 20,
  };
  const explored = explore<'chargeCurrent'>(wiringAssumptions(panels), 'chargeCurrent', (values, trace) => ({
    chargeCurrent: wire(panels, 1, values, trace).chargeCurrent,
  }));
  const { chargeCurrent } = explored.figures;
  if (chargeCurrent.value <= 0) return undefined;
  const powerW = present(panelsW(facts));
  // Panels lie flat and hot: their label is the most that the sun at noon gives.
  const full = `${significant(powerW)} W give up to about ${plain(chargeCurrent.value)} A at noon in full sun`;
  const read = told.netCurrentA !== undefined && told.netCurrentA > 0 ? told.netCurrentA : undefined;
  const isPoor = read !== undefined && read < poorShare * chargeCurrent.value;
  return {
    ...(read !== undefined && { isCause: isPoor }),
    says:
      read === undefined
        ? `${full}; flat or hazy, two thirds of that.`
        : `${full}: ${plain(read)} A is ${isPoor ? 'far too little for clear sky' : 'about right for a flat panel'}.`,
    figures: { chargeCurrent: figure(chargeCurrent, 'A') },
    explored,
  };
}

/** What the panels put back a day against what is used. */
export function chargeFinding(about: FaultCase): Finding | undefined {
  const { facts, bank, mainsV, at } = about;
  const powerW = panelsW(facts);
  if (powerW === undefined || !hasUse(facts)) return undefined;
  const sun = sunOf(facts, at);
  const voltageV = nominalVOf(facts, bank, sun);
  const chemistry = bank?.chemistry ?? sun.chemistry ?? 'agm';
  const use = useOf(facts, voltageV, mainsV, at);
  const panel = { ...sun, powerW, nominalVoltageV: voltageV, chemistry };
  const assumptions = [
    ...solarAssumptions(sun),
    ...storageAssumptions(chemistry, bank?.isChemistryAssumed ?? sun.chemistry === undefined),
    ...useAssumptions(use),
  ];
  const explored = explore<'dailyYield' | 'dailyUse'>(assumptions, 'dailyYield', (values, trace) => ({
    dailyYield: storedOf(dailyYield(panel, values, trace).dailyYieldAh, panel, values, trace),
    dailyUse: dailyUseAh(use, values, trace),
  }));
  const { dailyYield: made, dailyUse } = explored.figures;
  const isCause = made.value < dailyUse.value;
  return {
    by: 'charge',
    isCause,
    says: `The panels put back about ${plain(made.value)} Ah a day${whereAndWhen(facts, sun)}, you use about ${plain(dailyUse.value)}${isCause ? ': it can’t catch up' : ''}.`,
    ...(isCause && {
      likely: `Less goes in than out: about ${plain(made.value)} Ah of sun a day, about ${plain(dailyUse.value)} Ah used.`,
    }),
    figures: {
      dailyYield: figure(made, 'Ah'),
      dailyUse: figure(dailyUse, 'Ah'),
    },
    explored,
  };
}

/** What a DC-DC charger gives and takes, or whether an isolator suits. */
export function driveFinding(about: FaultCase): Finding | undefined {
  const { facts, bank, mainsV } = about;
  const chargers = facts.chargers ?? [];
  const house = bank && !bank.isChemistryAssumed ? bank.chemistry : undefined;
  if (chargers.some(c => c.kind === 'isolator')) {
    const isWrong = facts.alternator === 'smart' || house === 'lfp';
    const { recommendation } = recommendPath({
      house,
      alternator: facts.alternator,
    });
    if (!isWrong || recommendation !== 'dcdc') return undefined;
    const why = house === 'lfp' ? 'lithium' : 'a smart alternator';
    return {
      by: 'isolator',
      isCause: true,
      says: `An isolator doesn’t suit ${why}: a DC-DC charger does.`,
      figures: { recommendation: { value: 'dcdc' } },
    };
  }
  const dcdc = chargers.find(c => c.kind === 'dcdc' && c.currentA !== undefined);
  if (!dcdc) return undefined;
  const circuit: Circuit = {
    kind: 'dcdc',
    use: 'critical',
    facts: { ...facts, chargers: [dcdc] },
    voltageV: blocksIn(about) > 1 ? 24 : 12,
    mainsV,
  };
  const explored = explore<'inputCurrent'>(circuitAssumptions(circuit), 'inputCurrent', (values, trace) => ({
    inputCurrent: circuitCurrents(circuit, values, trace).cableA,
  }));
  const { inputCurrent } = explored.figures;
  return {
    says: `A ${decimals(present(dcdc.currentA), 0)} A DC-DC takes about ${plain(inputCurrent.value)} A at its input when it works.`,
    figures: { inputCurrent: figure(inputCurrent, 'A') },
    explored,
  };
}
