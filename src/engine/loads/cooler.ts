import { run } from '#rule/rule.ts';
import type { Trace } from '#rule/trace.ts';
import { boxSurface, compressorDuty, coolingRatio, heatGain, wallLeak } from './cooler-rules.ts';
import { type CoolerKind, coolerKinds, cooling, type Insulation, insulations } from './cooler-table.ts';

/** A box with a compressor. */
export interface Cooler {
  /** Temperature that it is set to, °C. */
  readonly setPointC: number;
  /** Inside, L (2–2,000). */
  readonly volumeL: number;
  readonly insulation: Insulation;
  /** Openings and warm goods, as a share of what the walls let in (0 as tested: closed and empty). */
  readonly goodsShare: number;
  /** What the compressor draws while it runs, W. */
  readonly powerW: number;
  /** Heat pumped for a watt, as a multiple of what small compressors of 12 V pump; 1 where absent. */
  readonly pumping?: number;
  /** How much its walls let in, as a multiple of what is usual of its class; 1 where absent. */
  readonly leak?: number;
}

/** A freezer is what is set below this, °C. */
const freezerBelowC = -5;

/** What is usual of a fridge or a freezer, by its set point (°C). */
export const kindOf = (setPointC: number): CoolerKind =>
  setPointC < freezerBelowC ? coolerKinds.freezer : coolerKinds.fridge;

/** The smallest box that is reckoned with, L. */
const smallestL = 2;

/**
 * The box (L, whole) that a compressor of a power (W) usually cools: makers choose the compressor to suit the box, so that
 * twice the draw stands for twice the surface.
 */
export function usualVolumeL(
  setPointC: number,
  powerW: number,
  kind: CoolerKind = kindOf(setPointC),
): number {
  const half = insulations[kind.insulation].thicknessM / 2;
  const usualEdgeM = (kind.volumeL / 1000) ** (1 / 3);
  const edgeM = (usualEdgeM + half) * Math.sqrt(powerW / kind.powerW) - half;
  return Math.max(smallestL, Math.round(1000 * edgeM ** 3));
}

/** What a compressor for a box (L) usually draws, as a multiple of its kind's: by the surface, as above. */
export function powerShareFor(volumeL: number, kind: CoolerKind): number {
  const half = insulations[kind.insulation].thicknessM / 2;
  const widthM = (litres: number): number => (litres / 1000) ** (1 / 3) + half;
  return (widthM(volumeL) / widthM(kind.volumeL)) ** 2;
}

/** A usual thing that cools, by its set point (°C), the draw of its compressor (W) and its kind. */
export function usualCooler(
  setPointC: number,
  powerW?: number,
  kind: CoolerKind = kindOf(setPointC),
): Cooler {
  const { insulation, goodsShare, pumping } = kind;
  const drawnW = powerW ?? kind.powerW;
  return {
    setPointC,
    volumeL: usualVolumeL(setPointC, drawnW, kind),
    insulation,
    goodsShare: goodsShare[1],
    powerW: drawnW,
    ...(pumping !== undefined && { pumping }),
  };
}

/** Heat (W) to be pumped out of it in air of a temperature (°C). */
function gainW(cooler: Cooler, ambientC: number, trace?: Trace): number {
  const { thicknessM: d, conductivity: k, sealsShare: s } = insulations[cooler.insulation];
  const A = run(boxSurface, { g: cooling.shape, V: cooler.volumeL / 1000, d }, trace);
  const UA = run(wallLeak, { k: k * (cooler.leak ?? 1), A, d, s }, trace);
  return run(heatGain, { UA, T_a: ambientC, T_s: cooler.setPointC, w: cooler.goodsShare }, trace);
}

/** Share of the time (0.05–1) that its compressor runs in air of a temperature (°C). */
export function dutyAt(cooler: Cooler, ambientC: number, trace?: Trace): number {
  const q = gainW(cooler, ambientC, trace);
  const { carnotShare: c, plateBelowK, condenserAboveK, lossK: L } = cooling;
  const lift = { T_e: cooler.setPointC - plateBelowK, T_c: ambientC + condenserAboveK };
  const COP = run(coolingRatio, { c: c * (cooler.pumping ?? 1), ...lift, T_0: 273.15, L }, trace);
  return run(compressorDuty, { q, P: cooler.powerW, COP }, trace);
}

/** What it takes (A) on average at a voltage (V) in air of a temperature (°C). */
export const averageA = (cooler: Cooler, ambientC: number, voltageV: number): number =>
  (dutyAt(cooler, ambientC) * cooler.powerW) / voltageV;
