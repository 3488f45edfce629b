import type { Reply } from '#answer/reply.ts';
import { plain } from '#quantity/round.ts';
import { exactFigure } from '../../figures.ts';
import type { RequestContext } from '../../intent.ts';

const nominalV = 12;
/** What a dash socket gives for long, A. Common practice. */
const socketA = 8;

/** A thing told as one for 12 V needs no inverter; undefined where one is spoken of, or where its draw isn't told. */
export function onTwelveVolts({ parsed }: Pick<RequestContext, 'parsed'>): Reply | undefined {
  const { facts, recognised } = parsed;
  const [load, other] = facts.loads ?? [];
  const isOfInverter = facts.inverter !== undefined || recognised.words.includes('inverter');
  const eachA = load?.currentA ?? (load?.powerW === undefined ? undefined : load.powerW / nominalV);
  if (!load || other || load.supply !== 'dc' || eachA === undefined || isOfInverter) return undefined;
  const amps = (load.count ?? 1) * eachA;
  return {
    headline: `No inverter needed: on 12 V it takes about ${plain(amps)} A straight from the battery.`,
    lines: [
      amps > socketA
        ? `A dash socket gives about ${socketA} A for long: this goes on a fused cable and a heavy plug of its own.`
        : `A dash socket does: it gives about ${socketA} A for long.`,
    ],
    verdict: 'yes',
    figures: { current: exactFigure(amps, 'A') },
    cautions: ['fuse-at-battery'],
    next: ['what cable for 15A over 5 m?'],
  };
}
