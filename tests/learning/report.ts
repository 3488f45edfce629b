import { median, quantile } from '../bench/measure.ts';
import type { Asked, Result, Tally } from './blind.ts';
import { styles } from './rig.ts';

const percent = (value: number): string => `${(100 * value).toFixed(1)} %`;
const mean = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;

type Side = 'before' | 'after' | 'clean' | 'informed';
const errors = (results: readonly Result[], side: Side) => results.map(result => result[side].error);
const held = (results: readonly Result[], side: Side) => mean(results.map(r => (r[side].isHeld ? 1 : 0)));
const width = (results: readonly Result[], side: Side) => median(results.map(r => r[side].width));

const line = (name: string, results: readonly Result[]): string => {
  const cells = [
    percent(median(errors(results, 'before'))),
    percent(median(errors(results, 'after'))),
    percent(quantile(errors(results, 'after'), 0.9)),
    percent(median(errors(results, 'informed'))),
    percent(median(results.map(({ known }) => known))),
    percent(held(results, 'before')),
    percent(held(results, 'after')),
    percent(width(results, 'after')),
  ];
  return `${name.padEnd(34)} ${String(results.length).padStart(4)}  ${cells.map(c => c.padStart(8)).join(' ')}`;
};

/** Classes of rigs: by style, by gear, and by which way the truth lies. */
const classes: readonly (readonly [string, (result: Result) => boolean])[] = [
  ...styles.map(style => [`style ${style}`, (r: Result) => r.rig.style === style] as const),
  ['AGM', r => r.rig.chemistry === 'agm'],
  ['lithium', r => r.rig.chemistry === 'lfp'],
  ['volts, AGM', r => r.rig.style === 'volts' && r.rig.chemistry === 'agm'],
  ['volts, lithium', r => r.rig.style === 'volts' && r.rig.chemistry === 'lfp'],
  ['left, AGM (counter set by label)', r => r.rig.style === 'left' && r.rig.chemistry === 'agm'],
  ['left, lithium (counter knows)', r => r.rig.style === 'left' && r.rig.chemistry === 'lfp'],
  ['percent, no panel', r => r.rig.style === 'percent' && r.rig.panelW === 0],
  ['percent, panel', r => r.rig.style === 'percent' && r.rig.panelW > 0],
  ['no panel', r => r.rig.panelW === 0],
  ['panel', r => r.rig.panelW > 0],
  ['fridge alone', r => !r.rig.evening],
  ['fridge and an evening load', r => r.rig.evening !== undefined],
  ['draws more, holds less', r => r.rig.drawFactor > 1 && r.rig.capacityFactor < 1],
  ['draws more, holds more', r => r.rig.drawFactor > 1 && r.rig.capacityFactor > 1],
  ['draws less, holds less', r => r.rig.drawFactor < 1 && r.rig.capacityFactor < 1],
  ['draws less, holds more', r => r.rig.drawFactor < 1 && r.rig.capacityFactor > 1],
  ['a wrong reading among them', r => r.wrong > 0],
  ['a stale reading among them', r => r.stale > 0],
  ['amps in the last reading', r => r.hasAmpsLast],
  ['no amps in the last reading', r => !r.hasAmpsLast],
  ['no amps last, never flat', r => !r.hasAmpsLast && !r.wasCut],
  ['percent, never flat', r => r.rig.style === 'percent' && !r.wasCut],
  ['ran flat on the way', r => r.wasCut],
  ['month from May to September', r => r.rig.month >= 5 && r.rig.month <= 9],
];

const least = 6;

export function report(results: readonly Result[], tally: Tally): string {
  const hit = results.filter(({ wrong }) => wrong > 0);
  const changed = results.filter(({ before, after }) => Math.abs(after.valueH / before.valueH - 1) > 0.01);
  const rows = classes
    .map(([name, isOf]) => [name, results.filter(isOf)] as const)
    .filter(([, of]) => of.length >= least);
  const worst = [...rows].sort(([, a], [, b]) => median(errors(b, 'after')) - median(errors(a, 'after')));
  const bias = (side: Side) => percent(median(results.map((r): Asked => r[side]).map(asked => asked.bias)));
  return [
    `${results.length} rigs; ${tally.read} readings sent, ${results.reduce((n, r) => n + r.wrong, 0)} of them wrong, ${results.reduce((n, r) => n + r.stale, 0)} stale`,
    `not understood as meant: ${tally.misread.length}${tally.misread
      .slice(0, 12)
      .map(text => `\n  ${text}`)
      .join('')}`,
    `questions without a run time: ${tally.unanswered.length}${tally.unanswered
      .slice(0, 8)
      .map(text => `\n  ${text}`)
      .join('')}`,
    `truths beyond the simulated days: ${tally.outside.length}`,
    '',
    `median error before ${percent(median(errors(results, 'before')))}, after three days ${percent(median(errors(results, 'after')))} (goal: 8 % or less); told the truth and nothing to learn: ${percent(median(errors(results, 'informed')))}; knowing all but the weather to come: ${percent(median(results.map(({ known }) => known)))}`,
    `truths in the stated range: before ${percent(held(results, 'before'))}, after ${percent(held(results, 'after'))} (goal: 85–97 %), told the truth ${percent(held(results, 'informed'))}; median width of the range over its figure ${percent(width(results, 'before'))}, ${percent(width(results, 'after'))}, ${percent(width(results, 'informed'))}`,
    `median bias before ${bias('before')}, after ${bias('after')}, told the truth ${bias('informed')}; the figure moved (more than 1 %) for ${changed.length}`,
    `wrong readings: median of all ${percent(median(errors(results, 'after')))} with, ${percent(median(errors(results, 'clean')))} without`,
    ...(hit.length
      ? [
          `  of the ${hit.length} rigs that had one: ${percent(median(errors(hit, 'after')))} with, ${percent(median(errors(hit, 'clean')))} without; held ${percent(held(hit, 'after'))} with, ${percent(held(hit, 'clean'))} without`,
        ]
      : []),
    `CPU of learning from a reading ${(tally.learnMs / tally.learnCalls).toFixed(3)} ms (goal: 0.2 or less), of the whole turn ${(tally.answerMs / tally.read).toFixed(2)} ms`,
    '',
    `${'class, the worst after three days first'.padEnd(40)}  before    after     90th truth told   known held bef. held aft.  width`,
    ...worst.map(([name, of]) => line(name, of)),
  ].join('\n');
}
