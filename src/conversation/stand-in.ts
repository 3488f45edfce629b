import type { Said } from '#language/said.ts';
import type { Facts } from '#rig/rig.ts';
import type { Last } from './memory.ts';

type Loose = Said['loose'][number];

/** What "a 40 amp one", "2,400 watts" means in the question before: the thing of that kind that was spoken of. */
function thingOf(last: Last, { value, unit }: Loose): Facts {
  const { chargers, loads, cable, solar, inverter } = last.facts;
  const [charger] = chargers ?? [];
  const [load] = loads ?? [];
  switch (unit) {
    case 'A':
      if (charger) return { chargers: [{ kind: charger.kind, currentA: value }] };
      if (cable?.currentA !== undefined) return { cable: { currentA: value } };
      return load
        ? { loads: [{ name: load.name, count: load.count, supply: load.supply, currentA: value }] }
        : {};
    case 'W':
      if (load)
        return { loads: [{ name: load.name, count: load.count, supply: load.supply, powerW: value }] };
      if (solar?.length) return { solar: [{ count: 1, powerW: value }] };
      if (inverter) return { inverter: { powerW: value } };
      return charger ? { chargers: [{ kind: charger.kind, powerW: value }] } : {};
    case 'Ah':
      return last.facts.dailyUseAh !== undefined && !last.facts.batteries?.some(b => b.capacityAh)
        ? { dailyUseAh: value }
        : { batteries: [{ count: 1, capacityAh: value }] };
    case 'm':
      return { cable: { lengthM: value } };
    case 'mm²':
      return { cable: { areaMm2: value } };
    case '%':
      return { targetChargePercent: value };
    case 'h':
      return { durationH: value };
    default:
      return {};
  }
}

/** "Make it 5": the time of the question before, in the unit it was most likely said in. */
function bareNumber(last: Last, value: number): Facts {
  const { durationH } = last.facts;
  if (durationH === undefined || value <= 0) return {};
  return { durationH: durationH >= 24 ? value * 24 : value };
}

/** A follow-up whose number stands for a thing of the question before, read as that thing. */
export function withStandIns(last: Last, said: Said): Said {
  if (Object.keys(said.facts).length > 0 || said.corrections.length > 0) return said;
  const [loose] = said.loose;
  const [number] = said.numbers;
  const facts = loose ? thingOf(last, loose) : number !== undefined ? bareNumber(last, number) : {};
  return { ...said, facts };
}
