import { exactly, withinSentence } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import { chargeRow } from '#engine/battery/charge-table.ts';
import { storageAssumptions } from '#engine/battery/charging.ts';
import { bankAssumptions, usableCapacityAh } from '#engine/battery/usable.ts';
import { type Charge, chargeAssumptions, chargeOf } from '#engine/charging/charge.ts';
import { recommendPath } from '#engine/charging/path.ts';
import { type Source, sourceAssumptions, sourceCurrentA } from '#engine/charging/source.ts';
import { explore, likelyOf } from '#engine/explore.ts';
import { dailyUseAh, useAssumptions } from '#engine/loads/model.ts';
import { dailyYield, panelPowerFor, peakSunHours, solarAssumptions, storedOf } from '#engine/solar/model.ts';
import { decimals, plain } from '#quantity/round.ts';
import type { Charger, Facts } from '#rig/rig.ts';
import { batteryOnCharge } from '../../battery-air.ts';
import { exactFigure, figure } from '../../figures.ts';
import { panelsW, sunOf, whereAndWhen } from '../../sun.ts';
import { useOf } from '../../use.ts';
import { bankOrUsual, dayUse, type PairCase, type Weighed } from '../../weighed.ts';

/** Hours driven a day where nobody said, h. Common practice. */
const usualDrivingH = 2;
/** Panels are told in these steps, W. */
const panelStepW = 20;
const panelW = (watts: number): string => decimals(Math.ceil(watts / panelStepW) * panelStepW, 0);

const sourceFor = (charger: Charger, facts: Facts): Source => ({
  ...charger,
  alternator: facts.alternator,
  row: chargeRow(bankOrUsual(facts).chemistry),
  blocks: Math.max(1, Math.round(bankOrUsual(facts).voltageV / 12.4)),
});

const unique = <T extends { readonly name: string }>(list: readonly T[]): T[] =>
  list.filter((a, i) => list.findIndex(b => b.name === a.name) === i);

/** Under so many sun hours a day a panel is a poor bargain. Common practice. */
const poorSunH = 2;

/** A panel or a generator, for a day's use. */
export function panelOrGenerator({ facts, at, mainsV }: PairCase): Weighed {
  const bank = bankOrUsual(facts);
  const use = useOf(facts, bank.voltageV, mainsV, at);
  const sun = sunOf(facts, at);
  const panel = { ...sun, nominalVoltageV: bank.voltageV, chemistry: bank.chemistry };
  const told = facts.chargers?.find(c => c.kind === 'mains' || (c.kind === 'generator' && c.currentA));
  const source = sourceFor({ kind: 'mains', currentA: told?.currentA }, facts);
  const charge: Charge = { bank, isSizeAssumed: true, missingAh: 1, isIsolator: false };
  const assumptions = unique([
    ...solarAssumptions(sun),
    ...storageAssumptions(bank.chemistry, bank.isChemistryAssumed),
    ...batteryOnCharge(facts, bank, at),
    ...useAssumptions(use),
    ...sourceAssumptions(source),
    ...chargeAssumptions(charge),
  ]);
  const explored = explore<'panelPower' | 'chargeTime' | 'dailyUse'>(
    assumptions,
    'panelPower',
    (values, trace) => {
      const dailyUse = dailyUseAh(use, values, trace);
      const missing = { ...charge, missingAh: dailyUse };
      return {
        dailyUse,
        panelPower: panelPowerFor(dailyUse, panel, values, trace).panelPowerW,
        chargeTime: chargeOf(missing, sourceCurrentA(source, values, trace), values, trace).timeH,
      };
    },
  );
  const { panelPower, chargeTime, dailyUse } = explored.figures;
  const isDark =
    facts.sky === 'overcast' ||
    facts.shade === 'heavy' ||
    !Number.isFinite(panelPower.value) ||
    peakSunHours(sun, likelyOf(assumptions)) < poorSunH;
  const runs = exactly(chargeTime.value);
  const watts = panelW(panelPower.value);
  const day = `${plain(dailyUse.value)} Ah a day`;
  return {
    headline: isDark
      ? `Generator for you: about ${runs} a day puts back ${day}; there is too little sun.`
      : `Panel for you: about ${watts} W makes your ${day}, in silence.`,
    lines: [
      isDark
        ? Number.isFinite(panelPower.value)
          ? `A panel for it would be about ${watts} W${whereAndWhen(facts, sun)}.`
          : ''
        : `A generator with a ${told?.currentA ? decimals(told.currentA, 0) : 'usual 20'} A charger runs about ${runs} a day for the same.`,
      isDark
        ? 'A small panel still keeps it topped up between runs.'
        : 'The generator is the spare for a week of cloud, and for what the sun can’t carry.',
      facts.place === undefined && facts.latitudeDeg === undefined ? 'Where and when do you camp?' : '',
    ],
    figures: {
      ...(Number.isFinite(panelPower.value) && { panelPower: figure(panelPower, 'W') }),
      chargeTime: figure(chargeTime, 'h'),
      dailyUse: figure(dailyUse, 'Ah'),
    },
    better: isDark ? 'generator' : 'panel',
    explored,
    cautions: ['carbon-monoxide', 'park-rules'],
  };
}

/** A DC-DC charger or an isolator, for a day's drive. */
export function dcdcOrIsolator({ facts }: PairCase): Weighed {
  const chargers = facts.chargers ?? [];
  const of = (kind: 'dcdc' | 'isolator'): Source =>
    sourceFor({ kind, currentA: chargers.find(c => c.kind === kind)?.currentA }, facts);
  const hours = facts.drivingHoursPerDay ?? usualDrivingH;
  const gain = (kind: 'dcdc' | 'isolator') =>
    explore<'gain'>(sourceAssumptions(of(kind)), 'gain', (values, trace) => ({
      gain: sourceCurrentA(of(kind), values, trace) * hours,
    }));
  const [dcdc, isolator] = [gain('dcdc'), gain('isolator')];
  const house = facts.batteries?.find(b => b.role !== 'starter' && b.chemistry)?.chemistry;
  const { recommendation, reasons } = recommendPath({
    house,
    alternator: facts.alternator,
    lengthM: facts.cable?.lengthM,
  });
  const isDcdc = recommendation === 'dcdc';
  const why = reasons.includes('lithium')
    ? 'lithium must not hang straight on an alternator'
    : reasons.includes('smart-alternator')
      ? 'a smart alternator drops its volts, and an isolator lets go'
      : isDcdc
        ? 'it fills the battery on any alternator'
        : 'a plain alternator and a battery of its kind ask for no more';
  const [most, least] = [dcdc.figures.gain, isolator.figures.gain];
  return {
    headline: isDcdc ? `DC-DC for you: ${why}.` : `An isolator will do for you: ${why}.`,
    lines: [
      `In ${exactly(hours)} of driving a DC-DC brings about ${plain(most.value)} Ah and an isolator about ${plain(least.value)} Ah (${plain(least.low)}–${plain(least.high)}), less as it fills.`,
      isDcdc
        ? 'An isolator costs less, and does on an old alternator with the same kind of battery.'
        : 'DC-DC once you go lithium, gel, or to a newer vehicle.',
      facts.alternator === undefined
        ? 'What vehicle and year? Most since the mid-2000s vary their volts.'
        : '',
    ],
    figures: {
      dailyGain1: figure(most, 'Ah'),
      dailyGain2: figure(least, 'Ah'),
      recommendation: { value: recommendation },
    },
    better: isDcdc ? 'DC-DC' : 'isolator',
    explored: isDcdc ? dcdc : isolator,
    cautions: house === 'lfp' ? ['fuse-at-battery', 'lithium-cold'] : ['fuse-at-battery'],
  };
}

/** Panel taken where none was told, W. */
const usualPanelW = 200;
/** An MPPT is worth its price from so much more on, Ah a day. Common practice. */
const worthAh = 6;

/** PWM or MPPT for the panels. */
export function pwmOrMppt({ facts, at }: PairCase): Weighed {
  const powerW = panelsW(facts) ?? usualPanelW;
  const solar = facts.solar?.filter(p => p.powerW !== undefined) ?? [];
  const panels = solar.length > 0 ? solar : [{ count: 1, powerW: usualPanelW }];
  const nominalVoltageV = (facts.systemVoltageV ?? 12) > 18 ? 24 : 12;
  const makes = (controller: 'pwm' | 'mppt') => {
    const sun = { ...sunOf({ ...facts, solar: panels }, at), controller };
    return explore<'made'>(solarAssumptions(sun), 'made', (values, trace) => ({
      made: dailyYield({ ...sun, powerW, nominalVoltageV }, values, trace).dailyYieldAh,
    }));
  };
  const [pwm, mppt] = [makes('pwm'), makes('mppt')];
  const [less, more] = [pwm.figures.made.value, mppt.figures.made.value];
  const isMppt = more - less >= worthAh;
  const both = `${plain(more)} Ah a day against ${plain(less)} Ah from ${plain(powerW)} W`;
  return {
    headline: isMppt ? `MPPT for you: about ${both}.` : `PWM will do: MPPT makes about ${both}.`,
    lines: [
      `That is about ${decimals((100 * (more - less)) / Math.max(less, 1e-9), 0)} % more${whereAndWhen(facts, sunOf(facts, at))}.`,
      'A PWM passes the panel’s amps and wastes the volts over the battery’s: a roof panel of 30 V and more needs MPPT.',
      panelsW(facts) === undefined ? 'I took a 200 W panel: how many watts are yours?' : '',
    ],
    figures: {
      dailyYield1: figure(mppt.figures.made, 'Ah'),
      dailyYield2: figure(pwm.figures.made, 'Ah'),
      difference: figure(
        {
          value: more - less,
          low: mppt.figures.made.low - pwm.figures.made.low,
          high: mppt.figures.made.high - pwm.figures.made.high,
        },
        'Ah',
      ),
    },
    better: isMppt ? 'MPPT' : 'PWM',
    explored: mppt,
    cautions: ['fuse-at-battery'],
  };
}

/** More battery or more panel first, for this rig. */
export function batteryOrPanel(about: PairCase): Weighed {
  const { facts, at } = about;
  const bank = bankOrUsual(facts);
  const usedAh = present(dayUse(about, bank.voltageV));
  const powerW = panelsW(facts);
  const addW = 100;
  const sun = sunOf(facts, at);
  const panel = { ...sun, nominalVoltageV: bank.voltageV, chemistry: bank.chemistry };
  const assumptions = unique([
    ...bankAssumptions(bank, facts.depthOfDischargePercent),
    ...solarAssumptions(sun),
    ...storageAssumptions(bank.chemistry, bank.isChemistryAssumed),
  ]);
  const explored = explore<'usable' | 'made'>(assumptions, 'made', (values, trace) => ({
    usable: usableCapacityAh({ bank, currentA: 0, temperatureC: facts.ambientC }, values, trace),
    made: storedOf(dailyYield({ ...panel, powerW: addW }, values, trace).dailyYieldAh, panel, values, trace),
  }));
  const { usable, made } = explored.figures;
  const hadAh = powerW === undefined ? 0 : (made.value * powerW) / addW;
  const shortAh = usedAh - hadAh;
  const lastsH = shortAh > 0 ? (24 * usable.value) / shortAh : Number.POSITIVE_INFINITY;
  const wholeW = panelPowerFor(usedAh, panel, likelyOf(assumptions)).panelPowerW;
  const evenDays = made.value > 0 ? usable.value / made.value : Number.POSITIVE_INFINITY;
  const isShortTrip = facts.durationH !== undefined && facts.durationH < 24 * evenDays;
  const isNeither = shortAh <= 0 || (facts.durationH !== undefined && facts.durationH <= lastsH);
  const isPanel = !isShortTrip && Number.isFinite(evenDays) && shortAh > 0;
  const kind = `${plain(bank.capacityAh)} Ah`;
  const gain = `100 W brings about ${plain(made.value)} Ah each day, another ${kind} about ${plain(usable.value)} Ah once`;
  return {
    headline: isNeither
      ? shortAh <= 0
        ? `Neither yet: your sun of about ${plain(hadAh)} Ah a day covers the ${plain(usedAh)} Ah you use.`
        : `Neither yet: your battery lasts about ${exactly(lastsH)} as it is.`
      : isPanel
        ? `Panel first: ${gain}.`
        : `Battery first: ${gain}.`,
    lines: [
      isNeither ? `For more, ${withinSentence(gain)}.` : '',
      `You use about ${plain(usedAh)} Ah a day${powerW === undefined ? ', and nothing comes in' : `, and about ${plain(hadAh)} Ah comes in`}${Number.isFinite(lastsH) ? `: the battery bridges about ${exactly(lastsH)}` : ''}.`,
      Number.isFinite(wholeW) && shortAh > 0
        ? `About ${panelW(wholeW)} W in all covers the day${whereAndWhen(facts, sun)}; then battery for cloudy days.`
        : '',
      facts.durationH === undefined && Number.isFinite(evenDays) && !isNeither
        ? `For trips under ${exactly(24 * evenDays)} it’s the battery. How long are you away?`
        : '',
    ],
    figures: {
      dailyGain1: figure(made, 'Ah'),
      dailyGain2: figure(usable, 'Ah'),
      dailyUse: exactFigure(usedAh, 'Ah'),
    },
    better: isNeither ? 'neither' : isPanel ? 'panel' : 'battery',
    explored,
    cautions: ['fuse-at-battery', 'mixed-batteries'],
  };
}
