import type { Facts } from '#rig/rig.ts';
import type { Setting } from '../intent.ts';
import { dimensionOf, hear, inDimension } from './claims.ts';
import type { Dispute, Finding, Heard } from './dispute.ts';
import { subjects } from './subjects/all.ts';
import { voltageIn } from './subjects/use.ts';

export type Settled =
  | { readonly kind: 'asked'; readonly missing: string; readonly claims: readonly Heard[] }
  | { readonly kind: 'found'; readonly finding: Finding; readonly claims: readonly Heard[] };

/** Watts to be told in amps ("80 W in amps is 10") are a load, at the volts told with them. */
function withWatts(facts: Facts, { conversion }: Setting['parsed']): Facts {
  if (conversion?.unit !== 'W' || facts.loads?.length) return facts;
  return {
    ...facts,
    loads: [{ name: 'load', count: 1, supply: 'dc', powerW: conversion.value, isAverage: true }],
    systemVoltageV: facts.systemVoltageV ?? conversion.voltageV,
  };
}

/** Finds out what an argument is about and works out the answer, or what is missing for it. */
export function settleDispute(told: Facts, setting: Setting): Settled {
  const facts = withWatts(told, setting.parsed);
  const { parsed, recalled, rigs, at, mainsV } = setting;
  const claims = hear(setting.claims.length > 0 ? setting.claims : parsed.claims);
  const dispute: Dispute = {
    facts,
    claims,
    dimension: dimensionOf(claims),
    cues: parsed.cues,
    recalled,
    rigs,
    at,
    mainsV,
  };
  const fitting = subjects
    .map(subject => ({ subject, weight: subject.fits(dispute) }))
    .filter(({ weight }) => weight > 0)
    .sort((a, b) => b.weight - a.weight);
  const [best] = fitting;
  if (!best)
    return {
      kind: 'asked',
      missing: 'what it is about: the battery, what runs on it, and each one’s number',
      claims,
    };
  const missing = best.subject.missing(dispute);
  if (missing !== undefined) return { kind: 'asked', missing, claims };
  const finding = best.subject.solve(dispute);
  return { kind: 'found', finding, claims: inDimension(claims, finding.dimension, voltageIn(facts)) };
}
