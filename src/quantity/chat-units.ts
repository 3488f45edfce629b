/** Units that a chat reads in place of metres, degrees Celsius and square millimetres. */
export interface ChatUnits {
  readonly length?: 'ft' | undefined;
  readonly temperature?: 'F' | undefined;
  /** Wire gauge, AWG (the same as B&S). */
  readonly cable?: 'awg' | undefined;
}

const feetPerMetre = 1 / 0.3048;
const number = String.raw`[-−]?\d[\d,]*(?:\.\d+)?`;
/** A number or a range before a unit, "5", "3–8", "22–28". */
const amounts = String.raw`(${number})(?:–(${number}))?`;

const valueOf = (told: string): number => Number(told.replaceAll(',', '').replace('−', '-'));
const rounded = (value: number): string =>
  String(Math.abs(value) < 10 ? Math.round(value * 10) / 10 : Math.round(value));

/** Each amount of a unit in a text as another unit has it. */
const turn = (text: string, from: string, to: string, as: (value: number) => number): string =>
  text.replace(new RegExp(`${amounts} ${from}`, 'g'), (_whole, low: string, high?: string) =>
    [low, high]
      .filter(told => told !== undefined)
      .map(told => rounded(as(valueOf(told))))
      .join('–')
      .concat(` ${to}`),
  );

/**
 * A text of the bot's own with its metres and degrees in the units that a chat reads: "over 4.57 m" → "over 15 ft". Cable
 * sizes are no matter of the text: another size is chosen (`cable-size`).
 */
export function inChatUnits(text: string, { length, temperature }: ChatUnits): string {
  const feet = length ? turn(text, String.raw`m(?![\w²/])`, 'ft', metres => metres * feetPerMetre) : text;
  return temperature ? turn(feet, '°C', '°F', celsius => Math.round(celsius * 1.8 + 32)) : feet;
}
