import type { Subject } from '../dispute.ts';
import { bankSubject } from './bank.ts';
import { batterySizeSubject } from './battery-size.ts';
import { cableSubject } from './cable.ts';
import { chargeLevelSubject } from './charge-level.ts';
import { chargeTimeSubject } from './charge-time.ts';
import { currentSubject } from './current.ts';
import { dailyUseSubject } from './daily-use.ts';
import { dropSubject } from './drop.ts';
import { fuseSubject } from './fuse.ts';
import { inverterSubject } from './inverter.ts';
import { panelSizeSubject } from './panel-size.ts';
import { powerSubject } from './power.ts';
import { runTimeSubject } from './run-time.ts';
import { solarAmpsSubject } from './solar-amps.ts';
import { solarYieldSubject } from './solar-yield.ts';
import { usableSubject } from './usable.ts';
import { whoseSubject } from './whose.ts';

/** Every kind of argument; where two fit alike, the first wins. */
export const subjects: readonly Subject[] = [
  whoseSubject,
  inverterSubject,
  bankSubject,
  batterySizeSubject,
  solarYieldSubject,
  solarAmpsSubject,
  dailyUseSubject,
  runTimeSubject,
  chargeTimeSubject,
  cableSubject,
  dropSubject,
  chargeLevelSubject,
  fuseSubject,
  currentSubject,
  panelSizeSubject,
  powerSubject,
  usableSubject,
];
