import type { HazardCode } from './codes.ts';

export interface HazardRow {
  readonly code: HazardCode;
  /**
   * The ways it shows, by what is meant. Concepts of the lexicon are joined by " + " where they may stand
   * anywhere in a message and by " ~ " where they stand together; "|" is one of several, " - " none of these.
   */
  readonly shows: readonly string[];
  readonly source: string;
}

const cell = 'battery|lithium|lead-acid';

/** Every danger, the most urgent first. */
export const hazardTable: readonly HazardRow[] = [
  {
    code: 'carbon-monoxide',
    shows: [
      'symptom + fuel-heater|flued-heater|coals|generator|exhaust',
      'symptom + heater|cooker|engine ~ lit|inside|closed - no-heater',
      'symptom ~ people|inside ~ vehicle|shelter',
      'coals ~ shelter|vehicle - outside',
      'cooker|fuel-heater|gas-word + shelter|vehicle|closed ~ warmth|sleep ~ lit - electric',
      'cooker|gas-word|heater ~ warmth ~ shelter|closed - electric',
      'fuel-heater ~ shelter',
      'co + sounds|silence|symptom',
      'alarm + sounds|silence + sleep|heater|vehicle|symptom|fuel-heater|flued-heater - electric',
      'alarm ~ sounds|silence',
      'engine|car ~ lit ~ closed|shelter',
      'fuel-heater|flued-heater|heater + exhaust ~ detached',
      'fuel-heater|flued-heater|heater + exhaust ~ inside|under',
    ],
    source: 'AS/NZS 5601.2 and makers’ common data for fuel appliances in caravans; ABYC A-24 in general terms',
  },
  {
    code: 'battery-fire',
    shows: [
      `${cell}|inverter|charger-thing ~ smoke`,
      `${cell} ~ swollen|fat`,
      `${cell} ~ hiss`,
      `${cell}|case|charger-thing + hot ~ touch`,
      `${cell} ~ unbearable`,
      `${cell} + swollen - weather`,
      'swollen ~ hiss',
      `${cell}|inverter|wire-word|charger-thing + burnt-smell`,
      `${cell} ~ cut-open`,
      `broken-cell + cut-open`,
      'bms + bypass',
      `${cell}|post ~ short-circuit`,
      'wire-word|inverter|charger-thing|post ~ smoke|flames',
      'fuse|wire-word|holder ~ melt|burnt-smell',
      'swollen + hot',
      `${cell} ~ hot`,
    ],
    source: 'IEC 62619 and makers’ common data; ABYC E-13 in general terms',
  },
  {
    code: 'gas',
    shows: [
      'gas-word ~ smell',
      'gas-word|bottle ~ leak',
      'eggs ~ smell',
      'acid ~ body|caps',
      'caps ~ ignite',
      'battery-box|wet-lead|battery ~ closed + charge|wet-lead|smell',
      'wet-lead + bed + charge|closed',
      'smell ~ bottle|ignite',
    ],
    source: 'IEC 62485-2 and AS/NZS 5601.2 in general terms; common practice',
  },
  {
    code: 'mains-wiring',
    shows: [
      'mains|inlet|inverter|switchboard ~ socket|switchboard|inlet ~ wire-up + myself',
      'mains ~ wire-up ~ socket|switchboard|inlet - did-it',
      'switchboard ~ bypass|add-one',
      'which-wire + mains|inlet|socket|inverter',
      'tingle ~ mains|inlet|vehicle',
      'switchboard ~ omit + mains|socket',
      'inverter ~ wire-up ~ socket',
      'mains ~ wire-up ~ myself',
      'switchboard ~ myself|wire-up',
    ],
    source: 'IEC 60364-7-708 and -721; AS/NZS 3001',
  },
  {
    code: 'mains-lead',
    shows: [
      'both-ends ~ plug|cord|inverter',
      'earth-pin ~ cut-off',
      'cord|plug ~ join|tape ~ rain',
      'cord|mains + coiled',
      'cord ~ plug-change',
      'cord ~ tape ~ mains|plug',
      'mains ~ cord ~ #big-load|#thin',
    ],
    source: 'IEC 60364-7-708; AS/NZS 3001; common practice',
  },
  {
    code: 'backfeed',
    shows: [
      'generator|inverter ~ feed ~ socket|inlet ~ house|all-live|vehicle|mains',
      'inverter|generator + both-ends',
      'inverter ~ mains ~ both-on',
      'generator|inverter + power-cut + socket|house ~ feed',
      'generator|inverter ~ all-live',
    ],
    source: 'IEC 60364-5-55 (551); AS/NZS 3010 in general terms',
  },
  {
    code: 'bigger-fuse',
    shows: [
      'fuse ~ bigger - denial',
      'fuse ~ foil',
      'fuse|#amps ~ blow ~ put-in - same',
      'blow + put-in + fuse + #amps - same|claims|which',
      'blow + put-in ~ #two-currents + claims + fuse',
      'blow ~ foil',
      'blow + bigger + fuse|#amps',
    ],
    source: 'ABYC E-11 and ISO 13297 in general terms',
  },
  {
    code: 'no-fuse',
    shows: ['no-fuse', 'fuse ~ omit|need-it - which', 'direct ~ battery|post ~ wire-word', 'fuse + short-run ~ omit - which', 'direct ~ post', 'fuse ~ cut-out'],
    source: 'ABYC E-11 and ISO 13297 in general terms',
  },
  {
    code: 'over-current',
    shows: [
      '#over-limit',
      '#over-charge-limit',
      '#over-cable',
      '#over-socket',
      '#over-fuse',
      'lithium ~ alternator ~ direct',
      'wire-word|ciggy|plug|fuse ~ hot|warm|melt|burnt-smell',
      'source ~ ciggy',
      'inverter ~ ciggy',
      'small-plug ~ dcdc|charge',
      'lithium + isolator + #bank-over-alternator',
    ],
    source: 'Makers’ limits; IEC 60364-5-52, ISO 4165, ISO 1724 and ISO 10133 in general terms',
  },
  {
    code: 'cold-charge',
    shows: [
      'lithium + #below-zero + charge|source|lead-acid',
      'lithium + frost + charge|source',
      'lithium + #below-zero',
      'lithium + cold-word ~ charge',
      'frost ~ charge ~ bypass|silence',
      'lithium ~ frost',
    ],
    source: 'Makers’ common data for LiFePO4 cells; IEC 62619 in general terms',
  },
  {
    code: 'generator-inside',
    shows: [
      'generator ~ shelter - outside',
      'generator ~ inside|under ~ vehicle|shelter - outside',
      'generator ~ vehicle ~ closed|bit-open|under',
      'generator + rain + shelter|inside',
      'generator ~ nearby ~ sleep|shelter',
      'generator + bit-open|closed',
    ],
    source: 'ISO 8528-13 and AS/NZS 3010 in general terms; makers’ common data',
  },
  {
    code: 'mixed-parallel',
    shows: [
      'lithium + lead-acid + parallel',
      'lithium ~ lead-acid ~ join-batteries',
      'old + new + parallel|join-batteries - solar',
      'parallel ~ #two-capacities - solar',
      'parallel + #two-kinds',
      '#two-kinds ~ join-batteries',
      'lithium + one-of-them + parallel',
      'parallel + old + lead-acid|battery - solar',
      'old + one-of-them ~ new + parallel',
      '#years + new|one-of-them + parallel|join-batteries',
      'lithium ~ lead-acid ~ post',
    ],
    source: 'ABYC E-13 and makers’ common data',
  },
  { code: 'medical', shows: ['medical - not-here'], source: 'IEC 60601-1-11 in general terms; makers’ common data' },
  {
    code: 'jump-start',
    shows: ['jump ~ car|battery|lithium|no-start|starter - switch-to', '#two-voltages + jump|will-start', 'no-start + clamps', 'jump + clamps|no-start - switch-to', 'no-start + lithium + car|jump', 'clamps ~ car', 'starter ~ frost', 'will-start ~ clamps'],
    source: 'Common practice; vehicle makers’ handbooks in general terms',
  },
  {
    code: 'starter-flat',
    shows: [
      'starter ~ no-start|flat - #under-starter',
      'starter + will-start + all-night - #under-starter',
      'no-start ~ car - solar',
      'starter ~ all-night - #under-starter',
      'starter + remote - #under-starter',
      'starter + #over-starter',
      'starter + always',
      'starter + #low-volts',
      'starter + slow',
    ],
    source: 'Common practice; EN 50342-1 in general terms',
  },
];
