import type { Reply } from '#answer/reply.ts';
import { rounded } from '#answer/say.ts';
import { chemistryRow } from '#engine/battery/tables.ts';
import { fitsBank } from '#engine/inverter/check.ts';
import { inverterEfficiency } from '#engine/inverter/efficiency.ts';
import { batteryCurrent } from '#engine/inverter/rules.ts';
import { decimals } from '#quantity/round.ts';
import type { Chemistry } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import { wantedTime } from '../words.ts';
import type { BatterySize } from './compute.ts';

/** Words for the battery of a usual fridge, where nobody said what is to run, and what to tell. */
export function answerForFridge(reply: Reply, { explored, other, durationH, chemistry }: BatterySize): Reply {
  const ah = rounded(explored.figures.batteryCapacity.value);
  const kind = chemistryRow(chemistry).name;
  const or = other ? `, or ${rounded(other.explored.figures.batteryCapacity.value)} Ah of lithium` : '';
  return {
    ...reply,
    headline: `For a usual fridge alone, ${wantedTime(durationH)}: about ${ah} Ah of ${kind}${or}.`,
    lines: [
      ...(reply.lines ?? []).slice(0, 2),
      'What else runs, for how many days, and what charges it? That changes it most.',
    ],
    next: ['fridge and lights, 3 days', '40Ah a day for 2 days'],
  };
}

/** Nominal volts under a load that an inverter's draw is worked out at, V. */
const loadedV = 12;

/** Words for the smallest battery that gives what an inverter takes flat out. */
export function answerForInverter(powerW: number): Reply {
  const amps = run(batteryCurrent, { P: powerW, eta: inverterEfficiency.value, V: loadedV });
  const size = (kind: Chemistry): string => {
    const { usualSizesAh, nominalV } = chemistryRow(kind);
    const banks = [1, 2, 3, 4, 5, 6]
      .flatMap(count => usualSizesAh.map(sizeAh => ({ count, sizeAh })))
      .sort((a, b) => a.count * a.sizeAh - b.count * b.sizeAh);
    const found = banks.find(({ count, sizeAh }) => {
      const bank = { capacityAh: count * sizeAh, voltageV: nominalV, chemistry: kind };
      return fitsBank({ ...bank, isChemistryAssumed: false, isMixed: false, count }, amps).fit === 'yes';
    });
    if (!found) return 'more than is usual';
    return found.count === 1 ? `${found.sizeAh} Ah` : `${found.count} × ${found.sizeAh} Ah`;
  };
  return {
    headline: `Flat out, ${decimals(powerW, 0)} W takes about ${rounded(amps)} A: ${size('lfp')} of lithium or ${size('agm')} of AGM.`,
    lines: [
      'That is to give the amps; how long it lasts depends on what you run. Run less on it and a smaller one does.',
      'What will you run on it, and for how long?',
    ],
    verdict: null,
    cautions: ['big-current'],
    next: ['fridge and lights, 3 days', 'kettle 10 minutes a day'],
  };
}
