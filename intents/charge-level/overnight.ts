import type { Reply } from '#answer/reply.ts';
import { decimals, significant } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { Trace } from '#rule/trace.ts';
import { figure, workingOf } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { kindRead, kindSaid, pointsBetween } from '../points-between.ts';
import type { ReadTwice } from '../read-twice.ts';
import { isSpotted } from '../spotting.ts';

/** The subject of a question about two readings told one after the other, the higher first. */
const subjectOfDrop = /^drop (\d+(?:\.\d+)?) (\d+(?:\.\d+)?)$/;

/** Points of charge (%) that a night with a fridge and lights takes of an everyday battery, about 100 Ah: up to so many. Common practice. */
const usualPoints = 40;
/** From here on something is wrong with the battery, or more ran than was thought, points. */
const muchPoints = 60;

/** Words that ask whether the battery is done for. */
const asksDying: readonly string[] = [
  'dying|dead|stuffed|cactus|shot|had_it|way_out|worn|knackered|rooted|buggered|finished|new_one|replace|faulty|failing|gone|stuffing|crook|tired|done_for',
];

/** Words for a battery that went down between two readings at rest; undefined: none is asked of. */
export function answerOvernight(facts: Facts, { subject, parsed }: RequestContext): Reply | undefined {
  const [, high, low] = subjectOfDrop.exec(subject ?? '') ?? [];
  if (high === undefined || low === undefined) return undefined;
  const chemistry = facts.batteries?.find(one => one.chemistry !== undefined)?.chemistry;
  const read = { of: 'volts', first: Number(high), later: Number(low), chemistry } as ReadTwice;
  const trace = new Trace();
  const kind = kindRead(read);
  const points = pointsBetween(read.first, read.later, kind, trace);
  const fell = `${significant(read.first, 4)} to ${significant(read.later, 4)} V`;
  const isAsked = isSpotted(parsed.recognised.words, asksDying);
  const about = `${fell} at rest on ${kindSaid(read)} is about ${decimals(points.value, 0)} % used`;
  const isMuch = points.value > muchPoints;
  const isUsual = points.value <= usualPoints;
  const first =
    kind === 'lfp'
      ? `${isAsked ? 'Nothing says so' : 'Nothing odd'}: ${fell} is a normal night on lithium, whose volts hardly tell.`
      : isUsual
        ? `${isAsked ? 'Most likely not' : 'That’s usual'}: ${about}, as a fridge night takes of 100 Ah.`
        : isMuch
          ? `${isAsked ? 'It may be' : 'That’s a lot'}: ${about}, more than a fridge and lights take of 100 Ah.`
          : `${isAsked ? 'Not by that alone' : 'A bit much'}: ${about}, as a hot night with a fridge takes of 100 Ah.`;
  return {
    headline: first,
    lines:
      kind === 'lfp'
        ? ['Count amp hours with a shunt monitor over a night: that tells what it still holds.']
        : [
            'Soon after charging or sun the first reading flatters it: it settles over some hours.',
            'To be sure: charge it right up, all off, read it after 8 to 12 hours. Under 12.5 V it’s tired.',
          ],
    verdict: null,
    figures: { used: figure(points, '%') },
    working: workingOf(trace),
    next: ['what does a fridge use a day?', 'how full is it at 12.4V?'],
  };
}
