import { present } from '#basics/present.ts';
import { type Explored, explore, likelyOf } from '#engine/explore.ts';
import { toldCold } from '#engine/solar/cold.ts';
import { countOf } from '#engine/solar/module.ts';
import { type PanelCase, wire, wiringAssumptions } from '#engine/solar/wiring.ts';
import { type Fit, inSeriesOf, judgeWiring } from '#engine/solar/wiring-fit.ts';
import type { Range } from '#quantity/range.ts';
import type { Facts } from '#rig/rig.ts';
import { blocksOf, whereOf } from '../sun.ts';
import type { Plates } from './plate.ts';

export type WiringFacts = Facts & { readonly solar: NonNullable<Facts['solar']> };

type Figures = Explored<'coldVoltage' | 'stringVoltage' | 'chargeCurrent'>;

export interface SolarWiring extends Figures, Fit {
  readonly count: number;
  readonly inSeries: number;
  readonly controller?: 'mppt' | 'pwm';
  readonly plate: Plates['plate'];
  /** The battery, V: 12, 24, 48. */
  readonly systemV: number;
  readonly isShaded: boolean;
  /** The coldest morning it was reckoned for, °C. */
  readonly coldestC: number;
  /** How they may be wired instead where this way is wrong: as many in series. */
  readonly instead?: number;
  /** The volts of that in the cold, V. */
  readonly insteadColdV?: Range;
  /** How many in series suit each kind of controller, where none was told. */
  readonly suits?: { readonly pwm: number; readonly mppt: number };
  /** What an MPPT would bring, A, where a PWM brings much less. */
  readonly trackedA?: number;
}

/** An MPPT is worth a word from so many times a PWM's amps on. */
const worthTracking = 1.35;

const arrange = (about: PanelCase, inSeries: number): Figures =>
  explore<'coldVoltage' | 'stringVoltage' | 'chargeCurrent'>(
    wiringAssumptions(about),
    'coldVoltage',
    (values, trace) => ({ ...wire(about, inSeries, values, trace) }),
  );

const judge = (about: PanelCase, inSeries: number, { figures }: Figures): Fit =>
  judgeWiring(about, inSeries, {
    stringVoltage: figures.stringVoltage.value,
    coldVoltage: figures.coldVoltage,
    chargeCurrent: figures.chargeCurrent.value,
  });

/** Panels in series or parallel against the controller and the battery (V, A). */
export function computeSolarWiring(facts: WiringFacts, plates: Plates = { plate: {} }): SolarWiring {
  const { solar } = facts;
  const blocks = blocksOf({ ...facts, arrangement: undefined });
  const about: PanelCase = {
    panels: solar,
    controller: solar.find(panel => panel.controller)?.controller,
    ...plates,
    arrangement: facts.arrangement,
    blocks,
    isShaded: facts.shade !== undefined && facts.shade !== 'none',
    coldestC: toldCold(facts.ambientC),
    where: { ...whereOf(facts), month: facts.month },
  };
  const likely = likelyOf(wiringAssumptions(about));
  const inSeries = inSeriesOf(about, likely);
  const explored = arrange(about, inSeries);
  const judged = judge(about, inSeries, explored);
  const open = { ...about, arrangement: undefined };
  const other = inSeriesOf(open, likely);
  const isBetter =
    judged.fit !== 'yes' && other !== inSeries && judge(open, other, arrange(open, other)).fit !== 'no';
  const suiting = (controller: 'pwm' | 'mppt') => inSeriesOf({ ...open, controller }, likely);
  const trackedA = wire({ ...about, controller: 'mppt' }, inSeries, likely).chargeCurrent;
  const isWasted =
    about.controller === 'pwm' && trackedA > worthTracking * explored.figures.chargeCurrent.value;
  return {
    ...explored,
    ...judged,
    count: countOf(solar),
    inSeries,
    controller: about.controller,
    plate: plates.plate,
    systemV: blocks * 12,
    isShaded: about.isShaded,
    coldestC: about.coldestC ?? present(likely.coldestC),
    instead: isBetter ? other : undefined,
    insteadColdV: isBetter ? arrange(open, other).figures.coldVoltage : undefined,
    suits:
      about.controller === undefined && countOf(solar) > 1
        ? { pwm: suiting('pwm'), mppt: suiting('mppt') }
        : undefined,
    trackedA: isWasted ? trackedA : undefined,
  };
}
