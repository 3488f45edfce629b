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
      'alarm ~ sounds|silence - unit-alarm',
      'engine|car ~ lit ~ closed|shelter',
      'fuel-heater|flued-heater|heater + exhaust ~ detached',
      'fuel-heater|flued-heater|heater + exhaust ~ inside|under', 'symptom + fuel-heater|flued-heater|heater|coals|cooker|generator|exhaust + lit|shelter|vehicle|inside|sleep', 'fuel-heater|cooker + shelter|vehicle ~ warmth|sleep|rain', 'fuel-heater|coals|cooker ~ warmth + shelter|vehicle', 'fuel-heater|cooker ~ shelter + lit|rain|sleep', 'co ~ ppm-word', 'alarm ~ sounds|silence - electric', 'engine ~ lit ~ shelter|closed', 'engine|generator + symptom', 'closed ~ fuel-heater|heater|cooker + vehicle|shelter', 'heater|flued-heater + exhaust ~ smell|vehicle|inside|detached', 'fuel-heater|coals|cooker + closed', 'symptom ~ sleep|people + heater|fuel-heater|flued-heater', 'symptom + cooker|fuel-heater|coals|heater', 'sleep ~ cooker|fuel-heater|coals ~ lit', 'engine + sleep + warmth + vehicle', 'engine ~ lit + warmth ~ vehicle', 'alarm ~ sounds|silence - unit-alarm',],
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
      `${cell} ~ hot`, `${cell}|inverter|charger-thing|insulation ~ smoke`, `${cell} + exploded`, `${cell} ~ damaged + hot|warm|reuse|charge|smoke|swollen`, `${cell} ~ damaged`, 'insulation ~ melt|smoke', `${cell} + burnt-smell|hiss`, `${cell} + cut-open`, `${cell} ~ fat`, 'bms ~ bypass', 'burnt-smell + charger-thing|battery|lithium|lead-acid|inverter', 'cut-open ~ lithium|cell-word|case',],
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
      'smell ~ bottle|ignite', 'gas-word + smell|leak', 'gas-alarm + sounds', 'acid + body|damaged', 'battery|wet-lead|acid ~ closed', 'wet-lead ~ closed', 'gas-word + hiss', 'caps + smoke|ignite', 'acid ~ battery ~ body', 'gas-word|bottle ~ smell', 'hiss|leak ~ bottle', 'wet-lead + bed|closed|shelter + charge', 'caps + body', 'leak ~ ignite',],
    source: 'IEC 62485-2 and AS/NZS 5601.2 in general terms; common practice',
  },
  {
    code: 'mains-wiring',
    shows: [
      'mains|inlet|inverter|switchboard ~ socket|switchboard|inlet ~ wire-up + myself - did-it',
      'mains ~ wire-up ~ socket|switchboard|inlet - did-it',
      'switchboard ~ bypass|add-one - did-it',
      'which-wire + mains|inlet|socket|inverter - did-it',
      'tingle ~ mains|inlet|vehicle - did-it',
      'switchboard ~ omit + mains|socket - did-it',
      'inverter ~ wire-up ~ socket - did-it',
      'mains ~ wire-up ~ myself - did-it',
      'switchboard ~ myself|wire-up - did-it', 'mains + add-verb ~ mains-thing - did-it', 'inverter ~ add-verb ~ mains-thing - did-it', 'which-wire + plug|vehicle|socket|mains - did-it', 'no-earth + mains|supply|socket|vehicle - did-it', 'switchboard ~ no-earth|omit|bypass - did-it', 'tingle + mains|vehicle - did-it', 'mains ~ myself - did-it', 'add-verb ~ mains-thing + myself|mains - did-it', 'vehicle ~ mains ~ wire-up - did-it', 'tingle ~ tingle-metal - did-it', 'switchboard ~ put-in|add-verb - did-it', 'mains + mains-thing + myself - did-it', 'vehicle + switchboard + put-in|swap-word|add-verb - did-it',],
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
      'mains ~ cord ~ #big-load|#thin', 'both-ends + plug|cord|inverter|generator', 'cord + rolled + #big-load|heater|mains', 'cord|mains ~ exposed', 'cord ~ rain', 'earth-pin + plug|cord', 'plug-change + cord|plug', 'cord + thin + big-load|heater|#big-load', 'both-ends ~ plug|cord', 'plug + socket + cut-off', 'twist ~ cord',],
    source: 'IEC 60364-7-708; AS/NZS 3001; common practice',
  },
  {
    code: 'backfeed',
    shows: [
      'generator|inverter ~ feed ~ socket|inlet ~ house|all-live|vehicle|mains',
      'inverter|generator + both-ends',
      'inverter ~ mains ~ both-on',
      'generator|inverter + power-cut + socket|house ~ feed',
      'generator|inverter ~ all-live', 'generator|inverter + feed|wire-up + house|all-live + socket', 'generator|inverter + power-cut', 'inverter + mains + both-on', 'inverter ~ inlet', 'generator|inverter ~ socket ~ all-live|house', 'generator|inverter ~ house ~ socket|cord|plug', 'feed ~ socket ~ generator|inverter',],
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
      'blow + bigger + fuse|#amps', '#two-ratings ~ swap-word - claims', '#two-ratings + blow', 'fuse + bigger', 'fuse ~ fuse-foil-2', 'fuse + foil', 'fuse ~ swap-word + blow - same', '#two-ratings + blow + swap-word|put-in - same|claims', 'fuse + foil|fuse-foil-2 ~ safe',],
    source: 'ABYC E-11 and ISO 13297 in general terms',
  },
  {
    code: 'no-fuse',
    shows: ['no-fuse', 'fuse ~ omit|need-it - which', 'direct ~ battery|post ~ wire-word - solar', 'fuse + short-run ~ omit - which', 'direct ~ post - solar', 'fuse ~ cut-out', 'direct ~ battery|post - solar', 'hooked ~ direct ~ battery - solar', 'bypass-fuse', 'fuse + need-it - which', 'battery|post + omit ~ fuse', 'fuse ~ short-run - which', 'battery ~ wire-word ~ nothing-else', 'fuse ~ omit', 'fuse + omit ~ safe',],
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
      'lithium + isolator + #bank-over-alternator', '#over-supply', 'insulation|ciggy ~ hot|melt|warm', 'wire-word + warm|hot + #amps|inverter|big-load', 'lithium + alternator + direct', 'bms|limit ~ charge + #two-currents', 'limit + charge ~ #over-charge-limit', 'ciggy|socket + inverter + big-load',],
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
      'lithium ~ frost', 'frost + lithium', 'frost|#below-zero + charge|source ~ lithium', 'lithium + cold-word ~ charge|source', 'frost ~ bypass + charge|lithium',],
    source: 'Makers’ common data for LiFePO4 cells; IEC 62619 in general terms',
  },
  {
    code: 'generator-inside',
    shows: [
      'generator ~ shelter - far',
      'generator ~ inside|under ~ vehicle|shelter - far',
      'generator ~ vehicle ~ closed|bit-open|under - far',
      'generator + rain + shelter|inside - far',
      'generator ~ nearby ~ sleep|shelter - far',
      'generator + bit-open|closed - far', 'generator + shelter - far', 'generator ~ vehicle|shelter ~ under|inside|nearby - far', 'generator + sleep ~ nearby|shelter|vehicle - far', 'generator + bit-open|shelter - far', 'generator ~ lit ~ vehicle|shelter - far',],
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
      'lithium ~ lead-acid ~ post', 'different ~ age-word ~ battery|parallel', '#two-capacities ~ join-batteries', 'second-battery ~ join-batteries + #years|old', 'car-battery + parallel|join-batteries', '#two-kinds + join-batteries', 'lithium + wet-lead|lead-acid + join-batteries|post', 'lead-kind ~ lithium ~ join-batteries', 'starter ~ lithium ~ join-batteries', 'old + new + parallel', 'old ~ parallel + #two-capacities|new',],
    source: 'ABYC E-13 and makers’ common data',
  },
  { code: 'medical', shows: ['medical - not-here'], source: 'IEC 60601-1-11 in general terms; makers’ common data' },
  {
    code: 'jump-start',
    shows: ['jump ~ car|battery|lithium|no-start|starter - switch-to', '#two-voltages + jump|will-start', 'no-start + clamps', 'jump + clamps|no-start - switch-to', 'no-start + lithium + car|jump', 'clamps ~ car', 'starter ~ frost', 'will-start ~ clamps', 'start-engine + second-battery|lithium|battery', 'second-battery ~ will-start|start-engine', 'clamps + plug', 'jump ~ second-battery', 'start-engine ~ lithium|house|second-battery',  '#two-voltages + help-word|jump', 'jump + lithium', 'clamps + jump|car', 'starter ~ help-word',],
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
      'starter + slow', 'dead-car - isolator', 'clicks ~ car|engine|starter - isolator', 'clicks + all-night - isolator', 'car|engine ~ no-start', 'starter + all-night - #under-starter', 'car-battery + all-night', 'ciggy + all-night', 'will-start + all-night + car', 'slow ~ will-start', 'car|engine + no-start - isolator', 'starter + all-night + will-start - #under-starter', 'ciggy + no-start', '#low-volts + starter', 'always ~ will-start + starter|all-night',],
    source: 'Common practice; EN 50342-1 in general terms',
  },
];
