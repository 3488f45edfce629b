import { present } from '#basics/present.ts';
import type { Claim, Facts } from '#rig/rig.ts';
import type { RequestContext } from '../intent.ts';
import { dimensionOf, hear, inDimension } from './claims.ts';
import type { Dispute, Finding, Heard } from './dispute.ts';
import { subjects } from './subjects/all.ts';
import { voltageIn } from './subjects/use.ts';
import { waysToTake } from './unsaid.ts';

export type Settled =
  | { readonly kind: 'asked'; readonly missing: string; readonly claims: readonly Heard[] }
  | { readonly kind: 'found'; readonly finding: Finding; readonly claims: readonly Heard[] };

/** Watts to be told in amps ("80 W in amps is 10") are a load, at the volts told with them. */
function withWatts(facts: Facts, { conversion }: RequestContext['parsed']): Facts {
  if (conversion?.unit !== 'W' || facts.loads?.length) return facts;
  return {
    ...facts,
    loads: [{ name: 'load', count: 1, supply: 'dc', powerW: conversion.value, isAverage: true }],
    systemVoltageV: facts.systemVoltageV ?? conversion.voltageV,
  };
}

/** A subject that the question before asked for fits better by so much. */
const byQuestion = 3;

/** How far the claims are from an answer, on average, as a factor's logarithm. */
function farOff({ finding, claims }: Extract<Settled, { kind: 'found' }>): number {
  if (claims.length === 0) return Number.POSITIVE_INFINITY;
  const far = claims.map(({ value }) => Math.abs(Math.log(value / Math.max(finding.answer.value, 1e-9))));
  return far.reduce((a, b) => a + b, 0) / far.length;
}

/**
 * Finds out what an argument is about and works out the answer, or what is missing for it. Where nobody said a unit,
 * that of the question before counts, and of several the one that brings the claims nearest to the answer.
 */
export function settleDispute(told: Facts, setting: RequestContext): Settled {
  const all = setting.claims.length > 0 ? setting.claims : setting.parsed.claims;
  const ways = waysToTake(all, setting.argued).map(claims => settledBy(claims, told, setting));
  const found = ways.filter(way => way.kind === 'found');
  return found.toSorted((a, b) => farOff(a) - farOff(b))[0] ?? present(ways[0]);
}

/** The same with claims of known units. */
function settledBy(said: readonly Claim[], told: Facts, setting: RequestContext): Settled {
  const facts = withWatts(told, setting.parsed);
  const { parsed, recalled, rigs, at, mainsV, argued } = setting;
  const claims = hear(said);
  const dispute: Dispute = {
    facts,
    claims,
    dimension: dimensionOf(claims),
    cues: parsed.cues,
    argued,
    recalled,
    rigs,
    at,
    mainsV,
  };
  const fitting = subjects
    .map(subject => ({ subject, weight: subject.fits(dispute) }))
    .filter(({ weight }) => weight > 0)
    .map(({ subject, weight }) => ({
      subject,
      weight: weight + (argued !== undefined && subject.intent === argued ? byQuestion : 0),
    }))
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
