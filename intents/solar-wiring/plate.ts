import { present } from '#basics/present.ts';
import type { ControllerPlate } from '#engine/solar/wiring.ts';
import type { ParsedMessage } from '#language/reading.ts';

/** What stands on plates and labels beside the facts: the controller's limit and rating, a panel's amps. */
export interface Plates {
  readonly plate: ControllerPlate;
  /** A panel's current at full power, A. */
  readonly fullPowerA?: number;
  /** How much of its open-circuit volts a panel gains with each degree, 1/K: minus, as it is more in the cold. */
  readonly voltageCoefficient?: number;
}

const ofCoefficient: ReadonlySet<string> = new Set(
  'tempco coefficient coeff coef tc beta temperature temp per /'.split(' '),
);
/** Percents a degree that crystalline panels have on their label. Data sheets, from memory. */
const coefficients = { least: 0.2, most: 0.5 } as const;

/** "Tempco -0.27%/C", of the volts and no power's. */
function coefficientIn({ mentions, tokens, words }: ParsedMessage['recognised']): number | undefined {
  const told = mentions.find(
    ({ dimension, unit, value, from, to }) =>
      (dimension === 'percent' || unit === '%') &&
      isWithin(value, coefficients) &&
      tokens.slice(Math.max(0, from - 4), to + 2).some(({ text }) => ofCoefficient.has(text.toLowerCase())) &&
      !words.slice(Math.max(0, from - 4), from).some(word => ['pmax', 'pmpp', 'power', 'isc'].includes(word)),
  );
  return told && -told.value / 100;
}

/** Words beside a number that make it the controller's, and those that make it the panel's current at full power. */
const ofController: ReadonlySet<string> = new Set([
  ...['mppt', 'pwm', 'controller', 'controllers', 'regulator', 'reg'],
  ...['limit', 'max', 'maximum', 'rated', 'rating', 'input', 'pv'],
]);
const ofPanel: ReadonlySet<string> = new Set(['imp', 'impp']);
/** Words beside a number that make it something else of the panel: it is left alone. */
const ofOther: ReadonlySet<string> = new Set([
  'isc',
  'vmp',
  'vmpp',
  'voc',
  'fuse',
  'breaker',
  'cable',
  'wire',
]);

/** How many words away from its number such a word may stand. */
const reach = 3;
/** Input limits and ratings that controllers are made for, V and A. Common practice. */
const limits = { least: 20, most: 600 } as const;
const ratings = { least: 3, most: 200 } as const;

const isWithin = (
  value: number,
  { least, most }: { readonly least: number; readonly most: number },
): boolean => value >= least && value <= most;

/**
 * The nearest telling word about a stretch of tokens, the one before it first where two are as near; a sign or
 * another number doesn't hide it.
 */
function toldBy(words: readonly string[], from: number, to: number): 'controller' | 'panel' | undefined {
  for (let away = 1; away <= reach; away++)
    for (const word of [words[from - away], words[to - 1 + away]]) {
      if (word === undefined) continue;
      if (ofOther.has(word)) return undefined;
      if (ofPanel.has(word)) return 'panel';
      if (ofController.has(word)) return 'controller';
    }
  return undefined;
}

/** Volts that systems have: any others beside a controller are what it stands. */
const nominal: ReadonlySet<number> = new Set([6, 12, 24, 36, 48]);

/**
 * Reads them from the numbers that no fact took, and from volts that no system has: "on a 30A mppt, 50V max",
 * "mppt 100/30", "imp 9.5A".
 */
export function platesIn({
  recognised,
  unread,
  facts,
}: Pick<ParsedMessage, 'recognised' | 'unread' | 'facts'>): Plates {
  const { text, tokens, words, mentions } = recognised;
  const left = new Set(unread.map(number => number.text));
  let limitV: number | undefined;
  let ratedA: number | undefined;
  let fullPowerA: number | undefined;
  mentions.forEach((m, i) => {
    const isOdd =
      m.dimension === 'voltage' && m.value === facts.systemVoltageV && !nominal.has(facts.systemVoltageV);
    if (!isOdd && !left.has(text.slice(present(tokens[m.from]).start, present(tokens[m.to - 1]).end))) return;
    const by = toldBy(words, m.from, m.to);
    if (m.dimension === 'voltage' && by === 'controller' && isWithin(m.value, limits)) limitV ??= m.value;
    if (m.dimension === 'current' && by === 'controller' && isWithin(m.value, ratings)) ratedA ??= m.value;
    if (m.dimension === 'current' && by === 'panel') fullPowerA ??= m.value;
    // The trade's short way: "100/30" beside the controller is volts in and amps out.
    const [bar, amps] = mentions.slice(i + 1, i + 3);
    const isPair = m.kind === 'number' && amps?.kind === 'number' && ['/', '|'].includes(bar?.text ?? '');
    if (isPair && toldBy(words, m.from, amps.to) === 'controller' && isWithin(m.value, limits)) {
      limitV ??= m.value;
      if (isWithin(amps.value, ratings)) ratedA ??= amps.value;
    }
  });
  return { plate: { limitV, ratedA }, fullPowerA, voltageCoefficient: coefficientIn(recognised) };
}
