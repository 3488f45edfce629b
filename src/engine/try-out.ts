/** Whether a calculation is only tried out, as far as the first figures that it explores: never for an answer. */
export let isTriedOut = false;

/** Thrown where a calculation that is tried out comes to its first figures; no error, so that no stack is gathered. */
export class FirstFigures {
  readonly figures: Readonly<Record<string, number>>;

  constructor(figures: Readonly<Record<string, number>>) {
    this.figures = figures;
  }
}

/** Where the first figures of an answer are noted as it is worked out. */
let noted: { figures?: Readonly<Record<string, number>> } | undefined;

/** Notes figures that a calculation explores, the first of an answer alone. */
export function note(figures: Readonly<Record<string, number>>): void {
  if (noted && noted.figures === undefined) noted.figures = figures;
}

/** A calculation's result beside the first figures that it explored, as `firstFigures` would give them. */
export function withFirstFigures<T>(calculation: () => T): {
  readonly result: T;
  readonly figures?: Readonly<Record<string, number>>;
} {
  const outer = noted;
  const own: NonNullable<typeof noted> = {};
  noted = own;
  try {
    return { result: calculation(), figures: own.figures };
  } finally {
    noted = outer;
  }
}

/**
 * The first figures that a calculation comes to, at the likely values of what it assumes: a small part of the time that
 * the whole takes, to tell whether a fact bears on it. Undefined where it explores none.
 */
export function firstFigures(calculation: () => unknown): Readonly<Record<string, number>> | undefined {
  isTriedOut = true;
  try {
    calculation();
    return undefined;
  } catch (thrown) {
    if (thrown instanceof FirstFigures) return thrown.figures;
    throw thrown;
  } finally {
    isTriedOut = false;
  }
}
