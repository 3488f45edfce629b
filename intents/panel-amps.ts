import { likelyOf } from '#engine/explore.ts';
import { bestPowerOf, type SolarCase, solarAssumptions } from '#engine/solar/model.ts';

// Amps that panels give about clear noon.

/** The subject of a question of a panel's amps, not of what it makes a day. */
export const ofPanelAmps = 'amps';

/** Volts that a 12 V battery has while the sun charges it. */
export const chargingV = 13.6;

/** Share of full sun's best from which on all is well: heat, a flat roof and haze take the rest. Common practice. */
export const fineShare = 0.6;

/** The most that panels give, W. */
export const bestWOf = (powerW: number, sun: SolarCase): number =>
  bestPowerOf(powerW, sun, likelyOf(solarAssumptions(sun)));
