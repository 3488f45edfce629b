import type { Mention } from '#language/recognise/mention.ts';
import type { Dimension } from '#quantity/units.ts';

/** The amounts of a dimension that a message tells, in their order and in base units. */
export const amountsOf = (mentions: readonly Mention[], dimension: Dimension): readonly Mention[] =>
  mentions.filter(mention => mention.kind === 'amount' && mention.dimension === dimension);

/** Over this no 12 V battery is, on charge either, V: volts of a panel. */
const panelV = 15.5;
/** Volts that go by without saying are no reading. */
const nominal: ReadonlySet<number> = new Set([12, 24, 36, 48]);
/** A battery while it takes what a panel gives, V a block of 12. Common practice. */
export const takingV = 13.6;
/** Panel volts within so much of the battery's are the battery's own, V. */
const nearV = 1;

/** What stands on a controller: the panel's volts and amps, and the battery's volts where they are told. */
export function offPanel(mentions: readonly Mention[]) {
  const volts = amountsOf(mentions, 'voltage').map(({ value }) => value);
  const panel = Math.max(...volts.filter(v => !nominal.has(v)), 0);
  const battery = volts.find(v => v !== panel && v > 10 && v < 60 && (!nominal.has(v) || panel < 2 * v));
  const amps = amountsOf(mentions, 'current')[0]?.value;
  return {
    panel,
    battery: battery ?? (panel > 0 ? takingV : undefined),
    isBatteryTold: battery !== undefined,
    amps,
  };
}

/** Whether panel volts are told that no battery has, with or without amps. */
export const isOverBattery = (mentions: readonly Mention[]): boolean => {
  const { panel, battery = takingV } = offPanel(mentions);
  return panel > panelV && panel > battery + nearV;
};
