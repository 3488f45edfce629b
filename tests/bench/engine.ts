import { present } from '#basics/present.ts';
import { bankOf } from '#engine/battery/bank.ts';
import { choosePair } from '#engine/cable/choose.ts';
import { conductorAssumptions } from '#engine/cable/conductor.ts';
import { protect } from '#engine/cable/fuse.ts';
import { explore } from '#engine/explore.ts';
import { climateAt } from '#engine/solar/climate-at.ts';
import { dailyYield, hourlyShares } from '#engine/solar/model.ts';
import { simulate, type Trip, tripAssumptions } from '#engine/trip/model.ts';
import { keep, median, round, type Section, timed } from './measure.ts';

const bank = present(bankOf([{ count: 1, capacityAh: 120, chemistry: 'agm' }]));
const fortnight: Trip = {
  bank,
  use: {
    loads: [
      { name: 'fridge', count: 1, powerW: 45, supply: 'dc' },
      { name: 'light', count: 4, powerW: 4, supply: 'dc' },
      { name: 'laptop', count: 1, powerW: 60, hoursPerDay: 2, supply: 'ac' },
    ],
    voltageV: bank.voltageV,
  },
  sun: { powerW: 160, sun: { latitudeDeg: -28.6, longitudeDeg: 153.6, month: 3 } },
  driving: { hoursPerDay: 1 },
  durationH: 14 * 24,
};

/** Fourteen days by the hour, every assumption moved both ways. */
const assumptions = tripAssumptions(fortnight);
const balanceOfFortnight = (): void =>
  keep(
    explore(tripAssumptions(fortnight), 'lowestCharge', (values, trace) => ({
      lowestCharge: simulate(fortnight, values, trace).lowestCharge,
    })),
  );

/** Sun hours, yield and the shares of the hours, climate looked up anew. */
const dayOfSun = (month: number): void => {
  keep(dailyYield({ latitudeDeg: -28.6, longitudeDeg: 153.6, month, powerW: 160, nominalVoltageV: 12 }));
  keep(hourlyShares(-28.6, month));
};

/** The twelve months of points all over the earth. */
const yearAnywhere = (i: number): void => keep(climateAt(-60 + (i % 120), -180 + ((i * 7) % 360)));

const values = {
  dropLimit: 3,
  ...Object.fromEntries(conductorAssumptions(undefined).map(a => [a.name, a.value])),
};
const cableAndFuse = (currentA: number): void => {
  const choice = choosePair({ lengthM: 5, currentA, continuousA: currentA, voltageV: 12 }, 'metric', values);
  keep(protect(currentA, choice.conductor));
};

/** Median time of one go, ms, after some to warm up; `many` of them are timed together where one is too short to time. */
function each(rounds: number, many: number, work: (i: number) => void): number {
  const round = () => timed(() => Array.from({ length: many }, (_, i) => work(i))) / many;
  for (let i = 0; i < 5; i++) round();
  return median(Array.from({ length: rounds }, round));
}

const line = (what: string, ms: number, goalMs: number) => ({
  what,
  value: `${round(ms)} ms`,
  goal: `< ${goalMs} ms`,
  isMet: ms < goalMs,
});

/** What the engine takes for its three usual jobs. */
export function engine(): Section {
  return {
    title: `Engine (${assumptions.length} assumptions explored)`,
    lines: [
      line('fourteen days by the hour, all assumptions explored', each(41, 1, balanceOfFortnight), 3),
      line(
        'solar day for a place',
        each(41, 48, i => dayOfSun(1 + (i % 12))),
        0.03,
      ),
      line('climate of a place-month', each(41, 40, yearAnywhere) / 12, 0.01),
      line(
        'cable and fuse choice',
        each(41, 48, i => cableAndFuse(2 + 3 * (i % 40))),
        0.1,
      ),
    ],
  };
}
