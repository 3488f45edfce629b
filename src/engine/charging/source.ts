import { present } from '#basics/present.ts';
import type { Charger } from '#rig/rig.ts';
import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import type { Assumption, AssumptionName, Values } from '../assumption.ts';
import type { ChargeRow } from '../battery/charge-table.ts';
import { meanChargeV } from '../battery/round-trip.ts';
import { taken } from '../explore.ts';
import { continuousAssumption, continuousW, deratingOf, generatorAssumptions } from './generator.ts';
import { chargerCurrent, generatorCurrent, outputCurrent } from './rules.ts';
import { smartAlternatorShare, usualChargerA } from './tables.ts';

/** What charges: its kind and rating as told, what drives it, and how many blocks of 12 V it charges in series. */
export interface Source {
  readonly kind: Charger['kind'];
  readonly currentA?: number;
  readonly powerW?: number;
  /** The watts that the generator goes by which the charger hangs on, W. */
  readonly generatorW?: number;
  readonly alternator?: 'smart' | 'fixed';
  readonly altitudeM?: number;
  readonly ambientC?: number;
  readonly row: ChargeRow;
  readonly blocks: number;
}

const spread = (
  name: AssumptionName,
  [value, low, high]: readonly [number, number, number],
  unit: string,
  why: string,
): Assumption => ({ name, value, low, high, unit, why });

/** An isolator's rating is what its contacts stand, not what it brings; it counts only where it is the lesser. */
const isRated = (source: Source): boolean =>
  source.kind !== 'isolator' && (source.currentA !== undefined || source.powerW !== undefined);

/** What is taken for granted of a source of charge. */
export function sourceAssumptions(source: Source): Assumption[] {
  const found: Assumption[] = [];
  if (!isRated(source)) {
    const { range, why } = usualChargerA[source.kind];
    found.push(spread('chargerCurrent', range, 'A', why));
  } else {
    found.push(spread('chargerOutput', [0.97, 0.9, 1], '', 'warm, and through its cables'));
    if (source.currentA === undefined) {
      const [value, low, high] = meanChargeV(source.row.kind);
      const ofBank = [value, low, high].map(v => v * source.blocks) as [number, number, number];
      found.push(spread('chargeVoltage', ofBank, 'V', 'mean while charging'));
    }
  }
  if (source.kind === 'isolator' && source.alternator !== 'fixed')
    found.push(
      spread(
        'alternatorShare',
        source.alternator === 'smart' ? smartAlternatorShare : [1, 0.6, 1],
        '',
        source.alternator === 'smart'
          ? 'of the driving; a smart alternator lowers its voltage and the isolator drops out'
          : 'of the driving; less with a smart alternator',
      ),
    );
  if (source.generatorW !== undefined) found.push(continuousAssumption, ...generatorAssumptions(source));
  return found;
}

/** Current (A) that a source offers the battery, on average over the time it runs. */
export function sourceCurrentA(source: Source, values: Values, trace?: Trace): number {
  const offered = offeredA(source, values, trace);
  if (source.generatorW === undefined) return offered;
  const limitA = generatorLimitA(source, source.generatorW, values);
  if (limitA >= offered) return offered;
  // Only then is it worth lines of working.
  return trace ? generatorLimitA(source, source.generatorW, values, trace) : limitA;
}

/** Current (A) that a generator of so many watts leaves a charger on it. */
function generatorLimitA(source: Source, plateW: number, values: Values, trace?: Trace): number {
  const S = continuousW(plateW, values, trace);
  const eta = taken(values, 'chargerEfficiency');
  const pf = taken(values, 'powerFactor');
  const V = source.row.absorptionV[0] * source.blocks;
  return run(generatorCurrent, { S, ...deratingOf(source, values, trace), eta, pf, V }, trace);
}

function offeredA(source: Source, values: Values, trace?: Trace): number {
  if (source.kind === 'isolator') {
    const currentA = Math.min(source.currentA ?? Number.POSITIVE_INFINITY, taken(values, 'chargerCurrent'));
    const k_s = values.alternatorShare ?? 1;
    return k_s === 1 ? currentA : run(outputCurrent, { k_s, I_r: currentA }, trace);
  }
  if (!isRated(source)) return taken(values, 'chargerCurrent');
  const I_r =
    source.currentA ??
    run(chargerCurrent, { P: present(source.powerW), V: taken(values, 'chargeVoltage') }, trace);
  return run(outputCurrent, { k_s: taken(values, 'chargerOutput'), I_r }, trace);
}
