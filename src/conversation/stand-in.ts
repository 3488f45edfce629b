import { factsOf } from '#intents/facts.ts';
import type { Conversion, Said } from '#language/said.ts';
import type { Facts } from '#rig/rig.ts';
import type { Last as Kept } from './memory.ts';

type Loose = Said['loose'][number];
/** The question before, its facts complete. */
type Last = Omit<Kept, 'facts'> & { readonly facts: Facts };

const chargeIntents: readonly Last['intent'][] = ['charge-time', 'generator', 'charge-path'];
const wireIntents: readonly Last['intent'][] = ['cable-size', 'fuse-size'];

/** What "a 40 amp one", "2,400 watts" means in the question before: the thing of that kind that was spoken of. */
function thingOf(last: Last, { value, unit, isDaily }: Loose): Facts {
  const { chargers, loads, cable, solar, inverter } = last.facts;
  const [charger] = chargers ?? [];
  const [load] = loads ?? [];
  switch (unit) {
    case 'A':
      if (charger) return { chargers: [{ kind: charger.kind, currentA: value }] };
      if (chargeIntents.includes(last.intent)) return { chargers: [{ kind: 'mains', currentA: value }] };
      if (cable?.currentA !== undefined || wireIntents.includes(last.intent))
        return { cable: { currentA: value } };
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
      return last.intent === 'energy-budget' && load
        ? { loads: [{ ...load, dutyPercent: value }] }
        : { targetChargePercent: value };
    case 'h':
      return isDaily && load ? { loads: [{ ...load, hoursPerDay: value }] } : { durationH: value };
    default:
      return {};
  }
}

/** "Make it 5", "and 3?": as many of what was counted, else the time of the question before, in the unit it was most likely said in. */
function bareNumber(last: Last, value: number): Facts {
  const { durationH, batteries, solar } = last.facts;
  if (value <= 0) return {};
  const isCount = Number.isInteger(value) && value <= mostCount;
  if (last.intent === 'battery-bank' && batteries?.length === 1 && isCount)
    return { batteries: [{ ...batteries[0]!, count: value }] };
  if (last.intent === 'solar-yield' && solar?.length === 1 && isCount)
    return { solar: [{ ...solar[0]!, count: value }] };
  if (last.intent === 'cable-size' && last.facts.cable?.areaMm2 !== undefined)
    return { cable: { areaMm2: value } };
  if (last.intent === 'charge-level') return { volts: value };
  if (last.intent === 'inverter-check' && value >= leastInverterW && !last.facts.inverter?.powerW)
    return { inverter: { powerW: value } };
  const [battery] = batteries ?? [];
  // "With the 20,000 one": a power bank is told in mAh.
  if (battery?.energyWh !== undefined && value >= leastMilliAh)
    return { batteries: [{ ...battery, energyWh: (value / 1000) * cellV }] };
  if (durationH === undefined) return {};
  return { durationH: durationH >= 24 ? value * 24 : value };
}

const leastInverterW = 100;
const leastMilliAh = 2000;
/** Cells of power banks: what their mAh are counted at. */
const cellV = 3.7;

/** "There are six of those": of the one thing that was spoken of. */
function manyOf({ facts: { loads, batteries, solar } }: Last, count: number): Facts {
  if (loads?.length === 1) return { loads: [{ ...loads[0]!, count }] };
  if (solar?.length === 1) return { solar: [{ ...solar[0]!, count }] };
  return batteries?.length === 1 ? { batteries: [{ ...batteries[0]!, count }] } : {};
}

/** "Oh and 8 hours": where the days are known already, how long the one load runs. */
function nightTime({ facts: { loads, durationH } }: Last, said: Said): Facts | undefined {
  const [load, ...others] = loads ?? [];
  const time = said.facts.durationH;
  const isOnly = Object.keys(said.facts).length === 1 && time !== undefined && time < leastDayH;
  if (!isOnly || !load || others.length > 0 || (durationH ?? 0) < 24) return undefined;
  if (load.hoursPerDay !== undefined || load.minutesPerDay !== undefined || said.cues.has('make-it'))
    return undefined;
  return { loads: [{ ...load, hoursPerDay: time }] };
}

/** From here on a time is one of days, h. */
const leastDayH = 20;

/** "If we get it down to 2 kWh": of a day's use that was told in energy, not of a battery. */
function useInstead({ facts: { dailyUseWh, batteries } }: Last, { facts, cues }: Said): Facts | undefined {
  const [battery] = facts.batteries ?? [];
  const isOnly = Object.keys(facts).length === 1 && battery?.energyWh !== undefined;
  const isUse =
    dailyUseWh !== undefined && !!batteries?.length && cues.has('what-if') && !cues.has('battery');
  return isOnly && isUse ? { dailyUseWh: battery.energyWh } : undefined;
}

const mostCount = 20;

/** "It's a 240 V one off the inverter": the one load runs on mains. */
function throughInverter({ facts: { loads } }: Last, { facts, bareLoads }: Said): Facts | undefined {
  const isPlain = Object.keys(facts).length === 0 && bareLoads.length === 0;
  return isPlain && loads?.length === 1 ? { loads: [{ ...loads[0]!, supply: 'ac' }] } : undefined;
}

/** "Hang on, its 1.4": the draw of the one load, or of the one named, where the number is of its size. */
function drawInstead({ facts: { loads } }: Last, said: Said): Facts | undefined {
  const [slip] = said.corrections;
  const value = slip
    ? slip.unit === undefined && slip.from === undefined
      ? slip.to
      : undefined
    : said.numbers[0];
  const named = said.bareLoads[0]?.name;
  const load = loads?.length === 1 ? loads[0]! : loads?.find(one => one.name === named);
  if (value === undefined || !load || Object.keys(said.facts).length > 0) return undefined;
  const key = load.currentA === undefined ? 'powerW' : 'currentA';
  const before = load[key];
  const isOfItsSize = before !== undefined && value / before < mostFactor && before / value < mostFactor;
  return isOfItsSize ? { loads: [{ ...load, [key]: value }] } : undefined;
}

const mostFactor = 4;

/** "Sorry, there's two of them": a number put right that is how many there are. */
function counted(last: Last, said: Said, { from, to }: Said['corrections'][number]): Said {
  const facts = from === undefined ? bareNumber(last, to) : manyOf(last, to);
  return Object.keys(facts).length === 0
    ? said
    : { ...said, corrections: [], facts: { ...said.facts, ...facts } };
}

/** "What if I turn it off for 10 h": the one load of the question before runs the rest of the day. */
function offFor({ facts: { loads } }: Last, hoursOff: number): Facts {
  return loads?.length === 1 ? { loads: [{ ...loads[0]!, hoursPerDay: 24 - hoursOff }] } : {};
}

/** "Make it 10 mins" said of the one load that had a time, where the question had none. */
function loadTime({ facts: { loads, durationH } }: Last, said: Said): Facts | undefined {
  const [load, ...others] = loads ?? [];
  const time = said.facts.durationH;
  if (!load || others.length > 0 || durationH !== undefined || time === undefined || time > 24)
    return undefined;
  if (Object.keys(said.facts).length > 1 || (load.minutesPerDay ?? load.hoursPerDay) === undefined)
    return undefined;
  const { minutesPerDay: _minutes, hoursPerDay: _hours, ...rest } = load;
  return {
    loads: [time < 1 ? { ...rest, minutesPerDay: Math.round(time * 60) } : { ...rest, hoursPerDay: time }],
  };
}

/** "And at 24 V?", "and 500 W?": the conversion of before with another number. */
function converted(last: Conversion, said: Said): Conversion {
  const voltageV = said.facts.systemVoltageV ?? said.facts.volts ?? last.voltageV;
  const sizeAh = last.unit === 'Ah' ? said.facts.batteries?.[0]?.capacityAh : undefined;
  const value =
    said.loose.find(one => one.unit === last.unit)?.value ?? sizeAh ?? said.numbers[0] ?? last.value;
  return { ...last, value, ...(voltageV !== undefined && { voltageV }) };
}

/** A follow-up whose number stands for a thing of the question before, read as that thing. */
export function withStandIns(kept: Kept, said: Said): Said {
  const last: Last = { ...kept, facts: factsOf(kept.facts) };
  const timed = said.cues.has('make-it') ? loadTime(last, said) : undefined;
  if (timed) return { ...said, facts: timed };
  if (said.hoursOff !== undefined)
    return { ...said, facts: { ...said.facts, ...offFor(last, said.hoursOff) } };
  const onMains = said.cues.has('mains') ? throughInverter(last, said) : undefined;
  if (onMains) return { ...said, facts: onMains };
  if (said.count !== undefined)
    return { ...said, corrections: [], facts: { ...said.facts, ...manyOf(last, said.count) } };
  const other = nightTime(last, said) ?? useInstead(last, said);
  if (other) return { ...said, facts: other };
  if (last.conversion) return { ...said, conversion: converted(last.conversion, said) };
  const drawn = said.cues.has('correction') ? drawInstead(last, said) : undefined;
  if (drawn) return { ...said, corrections: [], facts: drawn, bareLoads: [] };
  const [slip, ...others] = said.corrections;
  const isCount = slip?.from === undefined || slip.from === last.facts.loads?.[0]?.count;
  if (slip && slip.unit === undefined && isCount && others.length === 0) return counted(last, said, slip);
  if (Object.keys(said.facts).length > 0 || slip) return said;
  const [loose] = said.loose;
  const [number] = said.numbers;
  const facts = loose ? thingOf(last, loose) : number !== undefined ? bareNumber(last, number) : {};
  return { ...said, facts };
}
