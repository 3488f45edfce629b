import { present } from '#basics/present.ts';
import type { Mention } from '../recognise/mention.ts';
import * as slot from './slots.ts';

const isTold =
  (dimension: Mention['dimension']) =>
  (mentions: readonly Mention[]): boolean =>
    mentions.some(m => m.dimension === dimension);
const isCountOf =
  (kinds: ReadonlySet<Mention['kind']>) =>
  (mentions: readonly Mention[], at: number): boolean =>
    kinds.has(mentions[at + 1]?.kind ?? 'sign');

/** Power stations hold so many Wh, and batteries seldom so many Ah: "the 1000 one". */
const leastOfStation = 200;
const isOfStation = (mentions: readonly Mention[], at: number): boolean => {
  const m = present(mentions[at]);
  return m.kind === 'amount' || m.told >= leastOfStation;
};

/** "BMS stops at 30", "sticker says max 30". */
const isOfLimit = (mentions: readonly Mention[], at: number): boolean =>
  mentions[at]?.kind === 'amount' ||
  mentions.some(m => m.kind === 'bms' || m.text === 'max' || m.text === 'limit');

/** Units that a bare number may have only where the message speaks of them. */
const unitsTold: Readonly<Record<number, (mentions: readonly Mention[], at: number) => boolean>> = {
  [slot.claimGauge]: isTold('gauge'),
  [slot.loadEnergy]: isTold('energy'),
  [slot.batteryEnergy]: isOfStation,
  [slot.batteryLimit]: isOfLimit,
  [slot.claimVolts]: isTold('voltage'),
  [slot.claimEnergy]: isTold('energy'),
  [slot.claimPanels]: isCountOf(new Set(['solar'])),
  [slot.claimBatteries]: isCountOf(new Set(['battery', 'chemistry'])),
};

/** Whether a mention may be in a slot as far as its unit goes: one with a unit may. */
export const mayBeBare = (s: number, mentions: readonly Mention[], at: number): boolean =>
  unitsTold[s]?.(mentions, at) ?? true;
