import type { ParsedMessage } from '#language/reading.ts';

type Option = ParsedMessage['options'][number];
type Row = Readonly<Record<string, unknown>>;

/** Volts that batteries and their cells are sold with. */
const soldV: ReadonlySet<unknown> = new Set([
  undefined,
  ...[
    2, 3.2, 3.3, 3.6, 3.7, 6, 6.4, 7.2, 7.4, 8, 9.6, 11.1, 12, 12.8, 13.2, 14.4, 14.8, 18, 24, 25.6, 36, 48,
    51.2,
  ],
]);

/** Words with an amount of charge that is out of a battery, or has to go back. */
const ofUse: ReadonlySet<string> = new Set(
  `used use uses using out left down need needs needed missing short back put replace gone taken took take drawn drew
draw pulled lost below minus spent ate chewed remaining deficit top owe owes up`.split(/\s+/),
);
/** From here on charge told without such a word is the size of a battery, Ah. */
const leastSizeAh = 70;

const batteriesIn = ({ stated }: Option): readonly Row[] =>
  Array.isArray(stated.batteries) ? (stated.batteries as Row[]) : [];

/** Volts read off taken for those that a battery is sold with: "150 Ah AGM at 12.6 V". */
const isOfOddVolts = (option: Option): boolean =>
  batteriesIn(option).some(({ voltageV }) => !soldV.has(voltageV));

/** "How long to charge 200 Ah" taken for 200 Ah that are out of some battery. */
function isSizeAsUse({ stated }: Option, words: readonly string[], all: readonly Option[]): boolean {
  const ah = stated.chargeNeededAh ?? stated.chargeUsedAh;
  if (typeof ah !== 'number' || ah < leastSizeAh || words.some(word => ofUse.has(word))) return false;
  return all.some(one => batteriesIn(one).some(({ capacityAh }) => capacityAh === ah));
}

/** A message without the readings that nobody would mean: those that are left share what these were likely. */
export function withoutFarFetched(parsed: ParsedMessage): ParsedMessage {
  const { options, recognised } = parsed;
  const kept = options.filter(
    option => !isOfOddVolts(option) && !isSizeAsUse(option, recognised.words, options),
  );
  const [first] = kept;
  if (!first || kept.length === options.length) return parsed;
  const isFirst = first === options[0];
  const gone = options.filter(option => !kept.includes(option));
  const left = 1 - gone.reduce((sum, { probability }) => sum + probability, 0);
  const {
    claims: _c,
    removed: _r,
    corrects: _s,
    owner: _o,
    term: _t,
    choice: _ch,
    ...facts
  } = first.stated as Row;
  return {
    ...parsed,
    ...(!isFirst && { intent: first.intent, facts: facts as ParsedMessage['facts'] }),
    options: kept.map(option => ({ ...option, probability: option.probability / left })),
    certainty: isFirst ? Math.min(1, parsed.certainty / left) : first.probability / left,
  };
}
