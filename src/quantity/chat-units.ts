/** Units that a chat reads in place of metres, degrees Celsius and square millimetres. */
export interface ChatUnits {
  readonly length?: 'ft' | undefined;
  readonly temperature?: 'F' | undefined;
  /** Wire gauge, AWG (the same as B&S). */
  readonly cable?: 'awg' | undefined;
}

const feetPerMetre = 1 / 0.3048;
/** An amount or a range of metres, "5 m", "3–8 m"; "8 mm²" and "22 m/s" are none. */
const ofMetres = /([-−]?\d[\d,.]{0,9})(?:–([-−]?\d[\d,.]{0,9}))? m(?![\w²/])/g;
const ofCelsius = /([-−]?\d[\d,.]{0,9})(?:–([-−]?\d[\d,.]{0,9}))? °C/g;

const numberOf = (told: string): number => Number(told.replaceAll(',', '').replace('−', '-'));
const rounded = (value: number): string =>
  String(Math.abs(value) < 10 ? Math.round(value * 10) / 10 : Math.round(value));

/** Each amount that a pattern finds as another unit has it. */
const turn = (text: string, found: RegExp, to: string, as: (value: number) => number): string =>
  text.replace(found, (_whole, low: string, high?: string) =>
    [low, high]
      .filter(told => told !== undefined)
      .map(told => rounded(as(numberOf(told))))
      .join('–')
      .concat(` ${to}`),
  );

/**
 * A text of the bot's own with its metres and degrees in the units that a chat reads: "over 4.57 m" → "over 15 ft". Cable
 * sizes are no matter of the text: another size is chosen (`cable-size`).
 */
export function inChatUnits(text: string, { length, temperature }: ChatUnits): string {
  const feet = length ? turn(text, ofMetres, 'ft', metres => metres * feetPerMetre) : text;
  return temperature ? turn(feet, ofCelsius, '°F', celsius => Math.round(celsius * 1.8 + 32)) : feet;
}
