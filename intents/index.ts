import type { IntentName } from '#answer/answer.ts';
import { batteryBank } from './battery-bank/intent.ts';
import { batterySize } from './battery-size/intent.ts';
import { batteryType } from './battery-type/intent.ts';
import { cableSize } from './cable-size/intent.ts';
import { chargeLevel } from './charge-level/intent.ts';
import { chargePath } from './charge-path/intent.ts';
import { chargeTime } from './charge-time/intent.ts';
import { compare } from './compare/intent.ts';
import { convert } from './convert/intent.ts';
import { emergency } from './emergency/intent.ts';
import { energyBudget } from './energy-budget/intent.ts';
import { fault } from './fault/intent.ts';
import { forget } from './forget/intent.ts';
import { fuseSize } from './fuse-size/intent.ts';
import { generator } from './generator/intent.ts';
import { help } from './help/intent.ts';
import type { Intent } from './intent.ts';
import { inverterCheck } from './inverter-check/intent.ts';
import { learn } from './learn/intent.ts';
import { list } from './list/intent.ts';
import { none } from './none/intent.ts';
import { privacy } from './privacy/intent.ts';
import { rig } from './rig/intent.ts';
import { rigCheck } from './rig-check/intent.ts';
import { runTime } from './run-time/intent.ts';
import { settle } from './settle/intent.ts';
import { solarSize } from './solar-size/intent.ts';
import { solarWiring } from './solar-wiring/intent.ts';
import { solarYield } from './solar-yield/intent.ts';
import { starterReserve } from './starter-reserve/intent.ts';
import { term } from './term/intent.ts';
import { trip } from './trip/intent.ts';
import { unclear } from './unclear/intent.ts';

/** A question with its own shape of facts, as one of the list. Safe: `needs` is what makes that shape. */
const listed = <N>(intent: Intent<N>): Intent => intent as unknown as Intent;

/** Every question the bot can answer; where the evidence is equal, the first wins. */
export const intents: readonly Intent[] = [
  listed(runTime),
  batterySize,
  energyBudget,
  listed(solarSize),
  listed(solarYield),
  chargeTime,
  inverterCheck,
  generator,
  fuseSize,
  cableSize,
  chargeLevel,
  chargePath,
  batteryType,
  listed(batteryBank),
  listed(trip),
  starterReserve,
  settle,
  convert,
  term,
  learn,
  rig,
  help,
  privacy,
  forget,
  fault,
  emergency,
  listed(solarWiring),
  compare,
  list,
  rigCheck,
  none,
  unclear,
];

const byName = new Map(intents.map(intent => [intent.name, intent]));

/** The question of a name. @throws Error where the list lacks it */
export function intentNamed(name: IntentName): Intent {
  const intent = byName.get(name);
  if (!intent) throw new Error(`no intent named ${name}`);
  return intent;
}
