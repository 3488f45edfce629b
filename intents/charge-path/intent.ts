import type { Stated } from '#rig/rig.ts';
import { withAsides } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import { answerChargePath } from './answer.ts';
import { chargePathAsides } from './asides-table.ts';
import { computeChargePath } from './compute.ts';
import { answerSpecial } from './sums/special.ts';
import { wayAsides } from './ways-table.ts';
import { alternatorByYear, yearIn } from './year.ts';

const path = defineIntent({
  name: 'charge-path',
  title: 'Isolator or DC-DC charger?',
  thing: 'dcdc',
  takes: ['batteries', 'alternator', 'alternatorA', 'cable', 'solar', 'volts', 'chargers'],
  hangsOn: new Set(['chargers']),
  contest: () => 'path',
  reply: (facts, setting) => {
    const year = facts.alternator === undefined ? yearIn(setting.parsed) : undefined;
    const known = year === undefined ? facts : { ...facts, alternator: alternatorByYear(year) };
    const result = computeChargePath(known);
    return answerSpecial(facts, result, setting) ?? answerChargePath(result, setting, year);
  },
});

/** Gear with its figures: the choice itself is asked for. */
const isWeighed = ({ batteries, chargers, alternator, alternatorA, cable }: Stated): boolean =>
  (alternator ?? alternatorA ?? cable) !== undefined ||
  batteries?.some(({ capacityAh, maxCurrentA }) => (capacityAh ?? maxCurrentA) !== undefined) === true ||
  chargers?.some(({ currentA }) => currentA !== undefined) === true;

/** Isolator or DC-DC charger, and what people ask beside it. */
export const chargePath = withAsides(path, [...wayAsides, ...chargePathAsides], isWeighed);
