/** What a unit measures. 'count-like' things people mention beside power (litres, kilos) are 'other'. */
export type Dimension =
  | 'current'
  | 'charge'
  | 'power'
  | 'energy'
  | 'voltage'
  | 'time'
  | 'sun'
  | 'length'
  | 'area'
  | 'gauge'
  | 'temperature'
  | 'percent'
  | 'resistance'
  | 'irradiance'
  | 'distance'
  | 'other';

/** One unit: value in the base unit of its dimension = value × factor + offset. */
export interface Unit {
  /** As an answer prints it. */
  readonly symbol: string;
  readonly dimension: Dimension;
  readonly factor: number;
  readonly offset?: number;
  /** As people write it, lower case, words apart by one space. Plurals are listed. */
  readonly spellings: readonly string[];
}

/** The base unit of each dimension: all facts are kept in these. */
export const baseSymbol: Readonly<Record<Dimension, string>> = {
  current: 'A',
  charge: 'Ah',
  power: 'W',
  energy: 'Wh',
  voltage: 'V',
  time: 'h',
  sun: 'h',
  length: 'm',
  area: 'mm²',
  gauge: 'AWG',
  temperature: '°C',
  percent: '%',
  resistance: 'Ω',
  irradiance: 'W/m²',
  distance: 'km',
  other: '',
};

/**
 * The one table of units. Factors: definitions of the SI and of the international inch and foot;
 * a power bank's mAh counts as charge here, its cell voltage is the reader's business.
 * kVA and VA are taken as W: the engine's generator model knows the power factor.
 */
export const units: readonly Unit[] = [
  { symbol: 'A', dimension: 'current', factor: 1, spellings: ['a', 'amp', 'amps', 'ampere', 'amperes', 'amper', 'ampers', 'ampz', 'adc'] },
  { symbol: 'mA', dimension: 'current', factor: 0.001, spellings: ['ma', 'milliamp', 'milliamps', 'milli amps', 'milliampere', 'milliamperes'] },
  { symbol: 'Ah', dimension: 'charge', factor: 1, spellings: ['ah', 'ahr', 'ahrs', 'ahs', 'a h', 'amp hr', 'amp hrs', 'amp h', 'amps hour', 'amps hours', 'amp hour', 'amp hours', 'amphour', 'amphours', 'amphr', 'amphrs', 'ampere hour', 'ampere hours', 'amph'] },
  { symbol: 'mAh', dimension: 'charge', factor: 0.001, spellings: ['mah', 'milliamp hour', 'milliamp hours'] },
  { symbol: 'W', dimension: 'power', factor: 1, spellings: ['w', 'watt', 'watts', 'wat', 'wats', 'watter', 'watters', 'wp', 'watt peak', 'va', 'volt amps'] },
  { symbol: 'kW', dimension: 'power', factor: 1000, spellings: ['kw', 'kws', 'kilowatt', 'kilowatts', 'kilo watt', 'kilo watts', 'kva', 'kwp'] },
  { symbol: 'hp', dimension: 'power', factor: 745.7, spellings: ['hp', 'horsepower', 'horse power'] },
  { symbol: 'Wh', dimension: 'energy', factor: 1, spellings: ['wh', 'whr', 'whrs', 'w h', 'watt hr', 'watt hrs', 'watt h', 'watt hour', 'watt hours', 'watts hour', 'watts hours', 'watthour', 'watthours'] },
  { symbol: 'kWh', dimension: 'energy', factor: 1000, spellings: ['kwh', 'kwhr', 'kwhrs', 'kwhs', 'kw h', 'kw hr', 'kw hours', 'kw hour', 'kilowatt hour', 'kilowatt hours'] },
  { symbol: 'V', dimension: 'voltage', factor: 1, spellings: ['v', 'volt', 'volts', 'vdc', 'vac'] },
  { symbol: 'mV', dimension: 'voltage', factor: 0.001, spellings: ['mv', 'millivolt', 'millivolts'] },
  { symbol: 's', dimension: 'time', factor: 1 / 3600, spellings: ['s', 'sec', 'secs', 'second', 'seconds'] },
  { symbol: 'min', dimension: 'time', factor: 1 / 60, spellings: ['min', 'mins', 'minute', 'minutes', 'minuts', 'minits', 'mintues'] },
  { symbol: 'h', dimension: 'time', factor: 1, spellings: ['h', 'hr', 'hrs', 'hour', 'hours', 'hors', 'houres', 'horas', 'stunden', 'std', 'heures', 'uur', 'ore'] },
  { symbol: 'days', dimension: 'time', factor: 24, spellings: ['d', 'day', 'days', 'dayz', 'night', 'nights', 'nite', 'nites', 'sleep', 'sleeps', 'tage', 'tag', 'jours', 'dias', 'dagen', 'giorni'] },
  { symbol: 'days', dimension: 'time', factor: 48, spellings: ['weekend', 'weekends', 'wkend', 'wkends', 'week end'] },
  { symbol: 'days', dimension: 'time', factor: 72, spellings: ['long weekend', 'bank holiday weekend', 'long wkend', 'three day weekend'] },
  { symbol: 'weeks', dimension: 'time', factor: 168, spellings: ['week', 'weeks', 'wk', 'wks'] },
  { symbol: 'weeks', dimension: 'time', factor: 336, spellings: ['fortnight', 'fortnights'] },
  { symbol: 'h', dimension: 'sun', factor: 1, spellings: ['peak sun hours', 'peak sun hour', 'psh', 'sun hours', 'sun hour', 'sunhours', 'sun hrs', 'sun h', 'hours of sun', 'hrs of sun', 'h of sun', 'hour of sun', 'hours sun', 'hrs sun', 'h sun', 'hours of full sun', 'hrs of full sun', 'hours full sun', 'hours of good sun', 'hours of sunshine', 'hrs of sunshine', 'hours sunshine', 'hours of sunlight', 'peak hours', 'full sun hours', 'hours of peak sun', 'hrs of good sun', 'hours of decent sun', 'hours of direct sun', 'hrs full sun', 'hours of strong sun', 'good sun hours', 'hours of daylight sun'] },
  { symbol: 'm', dimension: 'length', factor: 1, spellings: ['m', 'mtr', 'mtrs', 'metre', 'metres', 'meter', 'meters', 'mt', 'mts'] },
  { symbol: 'cm', dimension: 'length', factor: 0.01, spellings: ['cm', 'cms', 'centimetre', 'centimetres', 'centimeter', 'centimeters'] },
  { symbol: 'mm', dimension: 'length', factor: 0.001, spellings: ['mm', 'mil', 'millimetre', 'millimetres', 'millimeter', 'millimeters'] },
  { symbol: 'ft', dimension: 'length', factor: 0.3048, spellings: ['ft', 'foot', 'feet', "'", 'fts'] },
  { symbol: 'in', dimension: 'length', factor: 0.0254, spellings: ['inch', 'inches', '"', 'ins'] },
  { symbol: 'yd', dimension: 'length', factor: 0.9144, spellings: ['yd', 'yds', 'yard', 'yards'] },
  { symbol: 'km', dimension: 'distance', factor: 1, spellings: ['km', 'kms', 'k m', 'kilometre', 'kilometres', 'kilometer', 'kilometers', 'kays', 'clicks'] },
  { symbol: 'mi', dimension: 'distance', factor: 1.609344, spellings: ['mile', 'miles', 'mi'] },
  { symbol: 'mm²', dimension: 'area', factor: 1, spellings: ['mm²', 'mm2', 'sqmm', 'sq mm', 'mm sq', 'mm squared', 'mmsq', 'square mm', 'square mil', 'square mils', 'sq mil', 'square millimetre', 'square millimetres', 'square millimeter', 'square millimeters', 'mm square', 'qmm', 'mm 2', 'square', 'squares'] },
  { symbol: 'AWG', dimension: 'gauge', factor: 1, spellings: ['awg', 'b&s', 'bs', 'b and s', 'b & s', 'b s', 'gauge', 'gage', 'ga', 'guage', 'gauges'] },
  { symbol: '°C', dimension: 'temperature', factor: 1, spellings: ['c', '°c', '°', 'celsius', 'celcius', 'centigrade', 'degree', 'degrees', 'deg', 'degs', 'degrees c', 'deg c', 'degree c', 'degrees celsius', 'deg celsius', 'degc'] },
  { symbol: '°F', dimension: 'temperature', factor: 5 / 9, offset: -160 / 9, spellings: ['f', '°f', 'fahrenheit', 'farenheit', 'degrees f', 'deg f', 'degree f', 'degrees fahrenheit', 'degf'] },
  { symbol: '%', dimension: 'percent', factor: 1, spellings: ['%', 'percent', 'per cent', 'pct', 'prozent', 'pc', 'procent'] },
  { symbol: 'Ω', dimension: 'resistance', factor: 1, spellings: ['ohm', 'ohms', 'ω'] },
  { symbol: 'W/m²', dimension: 'irradiance', factor: 1, spellings: ['w / m²', 'w / m2', 'watts per square metre', 'watts per square meter'] },
  { symbol: 'L', dimension: 'other', factor: 1, spellings: ['l', 'lt', 'ltr', 'ltrs', 'litre', 'litres', 'liter', 'liters', 'gal', 'gallon', 'gallons', 'qt', 'quart', 'quarts'] },
  { symbol: 'kg', dimension: 'other', factor: 1, spellings: ['kg', 'kgs', 'kilo', 'kilos', 'lb', 'lbs', 'pounds', 'ton', 'tonne', 'tonnes', 'g', 'grams'] },
  { symbol: '', dimension: 'other', factor: 1, spellings: ['btu', 'btus', 'psi', 'hz', 'rpm', 'kmh', 'kph', 'mph', 'knots', 'bucks', 'dollars', 'dollar', 'pounds sterling', 'euro', 'euros', 'quid', 'people', 'persons', 'pax', 'adults', 'kids', 'years', 'year', 'yrs', 'yr', 'months', 'month', 'mths', 'yo', 'db', 'dba', 'lumens', 'lm', 'cycles', 'stars', 'star', 'seater', 'berth', 'cells', 'cell', 'inch tv', 'wd', 'g internet', 'mbps', 'st', 'nd', 'rd', 'th'] },
];
