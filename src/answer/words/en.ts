/** Cautions: one short sentence each, shown when they apply. All defer to local rules and licensed people. */
export const cautions = {
  'fuse-at-battery': 'Fuse the cable at the battery end, as close to the terminal as you can.',
  'mains-wiring': 'Fixed 230/240/120 V wiring is a job for a licensed electrician.',
  backfeed:
    'Never feed an inverter into an inlet or a wall socket: pins go live. Use its own outlet, or a licensed electrician.',
  'hook-up':
    'On a hook-up use an outdoor lead, fully unrolled, and an RCD; wiring behind the inlet is for a licensed electrician.',
  'battery-gas': 'Lead-acid batteries give off explosive gas on charge: vent the box, no sparks.',
  'lithium-cold':
    'Never charge lithium below freezing (0 °C), and only gently up to 5 °C: it ruins the cells.',
  'bypass-bms':
    "Don't bypass the BMS: it stands between lithium and a fire. Find out why it trips, or see the maker's dealer.",
  'mixed-batteries':
    "Don't join batteries of different type, age or size in one bank, and never lithium straight to lead.",
  'big-current':
    'Big currents: short thick cable, tight lugs and a fuse to suit. Have an auto electrician check it.',
  'no-fuse':
    'Never leave out, bridge or oversize a fuse: the cable becomes the fuse, and that is how vehicles burn.',
  'carbon-monoxide':
    'Carbon monoxide kills: run generators and engines outside only, well away from tents and vents.',
  'fuel-heater': 'Fuel heaters need their exhaust outside and a working carbon monoxide alarm.',
  medical:
    "A medical device needs a fallback that doesn't hang on one battery; ask its maker or your clinic.",
  'starter-reserve':
    'The starter battery is for starting: keep a jump pack handy, and fit a second battery for camp loads.',
  'high-dc':
    'Over about 60 V DC shocks badly and its arc won’t go out: cover panels first, have a licensed electrician check it.',
  surge: 'Motors and compressors can draw several times their rating for a moment when they start.',
  'alternator-share':
    'That is a big share of most alternators: check its rating, and that it keeps cool at idle.',
  'fault-finding':
    'Measure on the 12 V side only. Not found? Leave it off, and have an auto electrician look.',
  'plate-first': "The appliance's own plate and local rules come first.",
  'gas-fridge':
    'A gas fridge is vented to the outside and checked by a licensed gas fitter; never alight in a closed tent or van.',
  'park-rules': 'Check the park: many limit generator hours and noise.',
} as const;
export type CautionCode = keyof typeof cautions;

/** What an assumption is called in an answer. Names without a row are split into words. */
export const assumptionLabels: Readonly<Record<string, string>> = {
  depthOfDischarge: 'usable share of the battery',
  age: 'share of its capacity it still has',
  learnedDraw: 'draw against what you told',
  learnedSun: 'sun against what I expected',
  peukertExponent: 'Peukert exponent',
  temperatureC: 'temperature',
  ambientC: 'temperature outside',
  chargeEfficiency: 'charge that stays in',
  topEfficiency: 'charge that stays in at the very end',
  batteryTemperature: 'temperature of the battery',
  inverterEfficiency: 'inverter efficiency',
  timeConstant: 'time constant of the last part',
  openCircuitVoltage: 'open-circuit volts of a panel',
  coldestC: 'coldest morning',
  voltageCoefficient: 'change of volts per degree',
  panelAzimuth: 'turned away from the midday sun',
  panelVoltage: 'volts of the panel at full power',
  fullPowerShare: 'volts at full power against open circuit',
  chargingVoltage: 'battery while charging',
  fullAt: 'full at',
  stateOfCharge: 'charged to',
  chargerOutput: 'share of its rating the charger gives',
  chargerCurrent: 'charging current',
  chargeVoltage: 'voltage while charging',
  alternatorShare: 'share of the drive that charges',
  chargerEfficiency: 'efficiency of the charger',
  powerFactor: 'power factor',
  altitudeShare: 'power left at that height',
  continuousShare: 'share of its watts that a generator gives without a break',
  loadedVoltage: 'battery voltage under load',
  conductorC: 'temperature of the copper',
  cableAirC: 'air around the cable',
  bundleShare: 'share left beside other wires',
  strandFactor: 'resistance against the table',
  dropLimit: 'drop allowed',
  batteryCapacity: 'battery size',
  voltageSag: 'volts that the load takes off',
  voltageV: 'voltage',
  durationH: 'time to last',
};

export const phrases = {
  assumed: 'Assumed',
  working: 'Working',
  caution: 'Careful',
  needIntro: 'To work that out I need',
  canYou: 'Can you tell me?',
} as const;
