import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { expectedOf } from '#engine/learn/expect.ts';
import { type Findings, findings } from '#engine/learn/findings.ts';
import { learn, type TaughtBy } from '#engine/learn/learn.ts';
import type { Expected, Learned } from '#engine/learn/state.ts';
import type { SimReading, SimRig } from './rig-simulator.ts';

/** A rig as its owner tells it, as the engine expects it to behave. */
function expectedFor({ told }: SimRig): Expected {
  const bank = present(bankOf([{ count: 1, capacityAh: told.capacityAh, chemistry: told.chemistry }]));
  return expectedOf({
    bank,
    use: {
      voltageV: bank.voltageV,
      loads: [
        { name: 'fridge', count: 1, supply: 'dc', currentA: told.fridgeA, isAverage: true },
        { name: 'lights', count: 1, supply: 'dc', currentA: told.lightsA, hoursPerDay: told.lightsH },
      ],
    },
    sunAhPerDay: told.sunAhPerDay,
    month: 1,
  });
}

/** What is learnt of a rig by all its readings, and how it went. */
export function learnt(
  rig: SimRig,
  readings: readonly SimReading[] = rig.readings,
): {
  readonly found: Findings;
  readonly learned: Learned | undefined;
  readonly taken: readonly TaughtBy[];
  readonly off: number;
  readonly holds: boolean;
  readonly toldOff: number;
} {
  const expected = expectedFor(rig);
  const taken: TaughtBy[] = [];
  let learned: Learned | undefined;
  for (const { flaw: _flaw, ...reading } of readings) {
    const lesson = learn(learned, { ...reading, chemistry: rig.told.chemistry }, expected);
    learned = lesson.learned;
    taken.push(lesson.taken);
  }
  const found = findings(present(learned), expected);
  const truth = rig.hoursPerShare / rig.toldHoursPerShare;
  return {
    found,
    learned,
    taken,
    off: Math.abs(found.lasts.value / truth - 1),
    toldOff: Math.abs(1 / truth - 1),
    holds: found.lasts.low <= truth && truth <= found.lasts.high,
  };
}
