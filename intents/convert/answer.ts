import type { Assumed } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import type { Conversion } from '#language/reading.ts';
import { areaOfGauge, gaugeName } from '#quantity/gauge.ts';
import { significant } from '#quantity/round.ts';
import { exactFigure, figure, workingOf } from '../figures.ts';
import type { Converted, ThroughInverter } from './compute.ts';
import { saysThrough } from './through-inverter.ts';

const amount = (value: number, unit: string): string =>
  unit === 'AWG' ? gaugeName(value) : `${significant(value)} ${unit}`;

/** The even gauges that shops have, about one that came out. */
function sold(gauge: number): string {
  const thin = gauge > 0 ? Math.ceil(gauge / 2) * 2 : gauge;
  const sizes = thin === gauge ? [gauge] : [thin, Math.max(thin - 2, 0)];
  return `Sold as ${sizes.map(n => `${gaugeName(n)} (${significant(areaOfGauge(n))} mm²)`).join(' or ')}.`;
}

/** What amps over some hours are in watt hours, at the volts told or 12 V. */
function wattHoursOf(
  { unit, voltageV = 12 }: Conversion,
  { unit: to, value, hours, isHourAssumed }: Converted,
) {
  const isOverTime = to === 'Ah' && unit !== 'mAh' && hours !== undefined && !isHourAssumed;
  return isOverTime
    ? `Amps times hours are amp hours; at ${significant(voltageV)} V that is ${significant(value * voltageV)} Wh.`
    : undefined;
}

/** How it was done, in a line: the two that bridge, or what to beware of. */
function how(conversion: Conversion, result: Converted): string[] {
  const { voltageV, hours } = result;
  const lines: string[] = [];
  const wh = wattHoursOf(conversion, result);
  if (wh !== undefined) return [wh];
  if (result.isAtCell)
    return ['A power bank’s mAh are told at its 3.7 V cell; some 10 to 15 % are lost on the way.'];
  if (voltageV !== undefined)
    lines.push(
      result.unit === 'Ah'
        ? `Divide by the volts (${significant(voltageV)} V) to go from watt hours to amp hours.`
        : result.unit === 'Wh' || result.unit === 'kWh'
          ? `Multiply by the volts (${significant(voltageV)} V) to go from amp hours to watt hours.`
          : result.unit === 'A'
            ? `Divide by the volts (${significant(voltageV)} V) to go from watts to amps.${voltageV === 12 ? ' At 12.8 V it’s a little less.' : ''}`
            : `Multiply by the volts (${significant(voltageV)} V) to go from amps to watts.`,
    );
  if (conversion.unit === 'mAh' && voltageV !== undefined && result.isVoltageAssumed)
    lines.push('A power bank’s mAh are told at its 3.7 V cell, not at the plug.');
  if (hours !== undefined && result.isHourAssumed) lines.push('That is for each hour it runs.');
  if (result.unit === 'AWG')
    lines.push(`${sold(result.value)} Auto cable’s “mm” is its outside, not its copper.`);
  return lines;
}

function assumedOf(result: Converted): Assumed[] {
  const found: Assumed[] = [];
  if (result.isVoltageAssumed && result.voltageV !== undefined)
    found.push({ name: 'voltageV', value: result.voltageV, unit: 'V', why: 'no volts told' });
  return found;
}

/** Words for a conversion. */
export function answerConvert(
  result: Converted | undefined,
  conversion: Conversion | undefined,
  through?: ThroughInverter,
): Reply {
  if (!result || !conversion)
    return {
      headline: conversion
        ? `I can't turn ${significant(conversion.value)} ${conversion.unit}${conversion.to ? ` into ${conversion.to}` : ''}: they measure different things.`
        : 'Tell me the number, its unit and the one you want, say “60W in amps at 12V”.',
      figures: {},
      next: ['60W in amps', '100Ah in Wh', '8 AWG in mm2'],
    };
  const { value, unit, voltageV, hours } = result;
  const at = [
    ...(voltageV === undefined ? [] : [`at ${significant(voltageV)} V`]),
    ...(hours === undefined || result.isHourAssumed ? [] : [`over ${significant(hours)} h`]),
  ];
  return {
    // A reading that is already in the unit wanted ("30 feet in metres") has nothing left to set against it.
    headline:
      conversion.unit === unit
        ? `That is ${amount(value, unit)}.`
        : `${amount(conversion.value, conversion.unit)}${at.length > 0 ? ` ${at.join(' ')}` : ''} is ${amount(value, unit)}.`,
    lines: how(conversion, result),
    ...(through && saysThrough(through, result)),
    verdict: null,
    figures: {
      result: exactFigure(value, unit),
      ...(through && { batteryCurrent: figure(through.currentA, 'A') }),
    },
    assumed: assumedOf(result),
    working: workingOf(result.trace),
    cautions: [],
    next:
      voltageV === undefined ? ['60W in amps', '100Ah in Wh'] : ['what is an amp hour?', 'show the working'],
  };
}
