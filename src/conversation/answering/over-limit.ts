import type { Reply } from '#answer/reply.ts';
import { english } from '#answer/speech.ts';
import { ampacityA, batteryCurrentA, lighterSocketA } from '#language/hazards/limits.ts';
import { areaOfGauge } from '#quantity/gauge.ts';
import type { Stated, StatedLoad } from '#rig/rig.ts';

/** A current told or worked out, and the limit that it passes. */
export interface OverLimit {
  /** What of a part: a battery's limit says all; what a cable or fuse carries stands before the size that was asked. */
  readonly part: 'battery' | 'other';
  readonly says: string;
}

/** By so much a draw that was worked out must pass a cable or a fuse to be named: tables differ by less. */
const clearly = 1.25;

const amps = (value: number): string => english.significant(value, 2);

/** What the largest thing told takes from the battery, A. */
function drawA({ loads = [], inverter, systemVoltageV = 12 }: Stated): number {
  const cells = Math.max(1, Math.round(systemVoltageV / 12)) * 12.8;
  const isAc = (load: StatedLoad): boolean =>
    load.supply === 'ac' || (load.supply === undefined && inverter !== undefined);
  const ac = loads.filter(isAc).map(load => (load.powerW ?? 0) * (load.count ?? 1));
  const direct = loads.filter(load => !isAc(load)).map(load => (load.currentA ?? 0) * (load.count ?? 1));
  const powerW = Math.max(0, ...ac) || (inverter?.powerW ?? 0);
  return Math.max(0, batteryCurrentA(powerW, cells), ...direct);
}

/** The battery's own limit, passed by what is drawn from it or charged into it. */
function overBattery({ figures = {} }: Reply, facts: Stated): string | undefined {
  const limits = (facts.batteries ?? []).flatMap(({ maxCurrentA }) => maxCurrentA ?? []);
  const [limit] = limits;
  if (limits.length !== 1 || limit === undefined) return undefined;
  const charged = Math.max(0, ...(facts.chargers ?? []).map(({ currentA = 0 }) => currentA));
  if (charged > limit)
    return english.say('over-charge', '{amps} A is more than the {limit} A your battery takes.', {
      amps: english.significant(charged),
      limit: english.significant(limit),
    });
  const worked = figures.batteryCurrent?.value;
  const drawn = typeof worked === 'number' ? worked : drawA(facts);
  if (drawn <= limit) return undefined;
  const gaps = { amps: amps(drawn), limit: english.significant(limit) };
  return facts.batteries?.every(({ chemistry }) => chemistry === 'lfp')
    ? english.say(
        'over-bms',
        'about {amps} A is more than the {limit} A that the battery’s BMS lets through, so it cuts out.',
        gaps,
      )
    : english.say(
        'over-limit',
        'about {amps} A is more than the {limit} A your battery gives, so it cuts out.',
        gaps,
      );
}

/** A cable, a fuse or a lighter socket that less than what is told goes through. */
function overOther(facts: Stated, concepts: ReadonlySet<string>): string | undefined {
  const { cable, fuseA } = facts;
  const area = cable?.areaMm2 ?? (cable?.awg === undefined ? undefined : areaOfGauge(cable.awg));
  const told = cable?.currentA;
  const drawn = told ?? drawA(facts);
  if (area !== undefined) {
    const carries = ampacityA(area);
    const gaps = { area: english.significant(area), limit: amps(carries) };
    if (drawn > (told === undefined ? clearly : 1) * carries)
      return english.say(
        'over-cable',
        'about {amps} A is more than the {limit} A or so that {area} mm² carries, so it overheats.',
        { ...gaps, amps: amps(drawn) },
      );
    if (fuseA !== undefined && fuseA > carries)
      return english.say(
        'over-by-fuse',
        'a {fuse} A fuse is more than the {limit} A or so that {area} mm² carries: the cable burns first.',
        { ...gaps, fuse: english.significant(fuseA) },
      );
    return undefined;
  }
  if (fuseA !== undefined && drawn > clearly * fuseA)
    return english.say('over-fuse', 'about {amps} A is more than the {limit} A of the fuse, so it blows.', {
      amps: amps(drawn),
      limit: english.significant(fuseA),
    });
  if (concepts.has('ciggy') && drawn > clearly * lighterSocketA)
    return english.say(
      'over-lighter',
      'about {amps} A is more than the {limit} A that a lighter socket carries for long: it melts or blows its fuse.',
      { amps: amps(drawn), limit: english.significant(lighterSocketA) },
    );
  return undefined;
}

/** Which limit is passed by figures that were told or worked out, and by how much; nothing where none is. */
export function overLimit(
  reply: Reply,
  facts: Stated,
  concepts: ReadonlySet<string> = new Set(),
): OverLimit | undefined {
  const ofBattery = overBattery(reply, facts);
  if (ofBattery !== undefined) return { part: 'battery', says: ofBattery };
  const ofOther = overOther(facts, concepts);
  return ofOther === undefined ? undefined : { part: 'other', says: ofOther };
}
