import { present } from '#basics/present.ts';
import { hasMotor } from '#engine/cable/circuit.ts';
import { sketchOf } from '#engine/cable/sketch.ts';
import { usualLengthM } from '#engine/cable/sketch-table.ts';
import { factsOf } from '#intents/facts.ts';
import type { StatedBattery } from '#rig/rig.ts';
import { cells, type Row } from './row.ts';

const systemV = (battery: StatedBattery, systemVoltageV?: number): number =>
  present(
    sketchOf(
      factsOf({ batteries: [battery], systemVoltageV, loads: [{ name: 'light', powerW: 20, supply: 'dc' }] }),
    ),
  ).voltageV;
const isMotor = (name: string): number => Number(hasMotor(factsOf({ loads: [{ name }] })));

/** Runs that nobody measured, and what a system is called by its volts. */
export const rows: readonly Row[] = [
  ...cells('common practice: runs of cable in a van, one way, m', 'memory', [
    ['trade-run.main, from a battery to the bus bar beside it', 0.5, 0.08, () => usualLengthM.main],
    ['trade-run.panels, sold in pairs of 5 m for a roof', 5, 0.8, () => usualLengthM.panels],
    ['trade-run.starter, wiring kits of 6 m from bonnet to back', 6, 0.9, () => usualLengthM.starter],
    ['trade-run.load, to a fridge in the kitchen', 4, 0.7, () => usualLengthM.load],
  ]),
  ...cells('manuals of inverters and chargers: battery leads of no more than 1 to 2 m', 'memory', [
    ['trade-run.inverter', 1.5, 0.25, () => usualLengthM.inverter],
    ['trade-run.controller', 1.5, 0.25, () => usualLengthM.controller],
    ['trade-run.dcdc', 1.5, 0.25, () => usualLengthM.dcdc],
    ['trade-run.mains', 1.5, 0.25, () => usualLengthM['mains-charger']],
  ]),
  ...cells('common practice: 16 cells of lithium are a 48 V system, 8 a 24 V one, 4 a 12 V one', 'memory', [
    ['trade-system.48', 48, 0.1, () => systemV({ capacityAh: 100, chemistry: 'lfp', voltageV: 51.2 })],
    ['trade-system.24', 24, 0.1, () => systemV({ capacityAh: 100, chemistry: 'lfp', voltageV: 25.6 })],
    ['trade-system.12', 12, 0.1, () => systemV({ capacityAh: 100, chemistry: 'lfp' })],
  ]),
  ...cells('common practice: pumps start hard, lamps and things that nobody knows don’t', 'memory', [
    ['trade-motor.pump', 1, 0.1, () => isMotor('water pump')],
    ['trade-motor.lamp', 0, 0.1, () => isMotor('light')],
    ['trade-motor.unknown', 0, 0.1, () => isMotor('frobnicator')],
  ]),
];
