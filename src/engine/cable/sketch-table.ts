/** A run of cable in a rig. */
export type LeadName =
  | 'main'
  | 'panels'
  | 'controller'
  | 'starter'
  | 'dcdc'
  | 'mains-charger'
  | 'inverter'
  | 'load';

/** How long a run usually is in a vehicle or a van, one way, m, where nobody measured it. Common practice. */
export const usualLengthM: Readonly<Record<LeadName, number>> = {
  // From the battery to the bus bar beside it.
  main: 0.5,
  // Down from a roof.
  panels: 5,
  controller: 1.5,
  // From under the bonnet to the back.
  starter: 6,
  dcdc: 1.5,
  'mains-charger': 1.5,
  inverter: 1.5,
  load: 4,
};

/** Loads that a sketch has room for; the largest first. */
export const mostLoads = 5;
