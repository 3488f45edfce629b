/** Whether a calculation is only tried out, as far as the first figures that it explores: never for an answer. */
export let isTriedOut = false;

/** Thrown where a calculation that is tried out comes to its first figures; no error, so that no stack is gathered. */
export class FirstFigures {
  readonly figures: Readonly<Record<string, number>>;

  constructor(figures: Readonly<Record<string, number>>) {
    this.figures = figures;
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
