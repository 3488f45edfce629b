import { present } from '#basics/present.ts';
import { bankIn } from '#engine/battery/bank.ts';
import { storageAssumptions } from '#engine/battery/charging.ts';
import { likelyOf } from '#engine/explore.ts';
import { expectedOf } from '#engine/learn/expect.ts';
import type { Expected } from '#engine/learn/state.ts';
import { dailyYield, storedOf } from '#engine/solar/model.ts';
import type { Chemistry, Facts, Rig } from '#rig/rig.ts';
import { batteryAir } from './battery-air.ts';
import { factsOf } from './facts.ts';
import { hasCapacity } from './needs.ts';
import { panelsW, sunOf, whereOf } from './sun.ts';
import { hasUse, useOf } from './use.ts';

/** A short mark of anything told, so that a change of it is seen (FNV-1a). */
export function markOf(value: unknown): number {
  let hash = 0x811c9dc5;
  for (const character of JSON.stringify(value) ?? '')
    hash = Math.imul(hash ^ character.charCodeAt(0), 0x01000193) >>> 0;
  return hash;
}

function workedOut(rig: Rig, at: Date): Expected | undefined {
  const told = factsOf(rig);
  if (!hasCapacity(told) || !hasUse(told)) return undefined;
  // The place is looked up once.
  const { latitudeDeg, longitudeDeg } = whereOf(told);
  const facts = latitudeDeg === undefined ? told : { ...told, latitudeDeg, longitudeDeg };
  const bank = present(bankIn(facts));
  const batteryC = facts.ambientC ?? batteryAir(facts, at)?.value;
  return expectedOf({
    bank,
    batteryC,
    use: useOf(facts, bank.voltageV, undefined, at),
    ...sunFor(facts, bank, at),
  });
}

/** What was worked out lately, by marks of rig and month: a rig is asked of again and again. */
const lately = new Map<string, Expected | undefined>();
const mostKept = 64;

/** What the engine expects of a rig as told; undefined where its battery or its use is not known. */
export function expectedOfRig(rig: Rig, at: Date): Expected | undefined {
  const key = [at.getUTCMonth(), ...Object.entries(rig).map(markOf)].join();
  if (!lately.has(key)) {
    if (lately.size >= mostKept) lately.clear();
    lately.set(key, workedOut(rig, at));
  }
  return lately.get(key);
}

/** A compressor seldom runs less than this share of the time: common practice. */
const leastDuty = 0.2;
/** Loads whose hourly use differs no more than this are on all the time. */
const evenly = 1.2;

/**
 * Whether amps that flow out at a glance (A, above 0) may be the doing of what is known to run: of a fridge that runs
 * or rests, of lights that are on or off. Then what is known tells the draw better than the glance does.
 */
export function isExplained(amps: number, told: Rig, at: Date): boolean {
  const facts = factsOf(told);
  const bank = bankIn(facts);
  if (!bank) return false;
  const { useAh, isSteady } = expectedOf({ bank, use: useOf(facts, bank.voltageV, undefined, at) });
  const mostAh = Math.max(...useAh);
  const isEven = isSteady && mostAh <= evenly * (useAh.reduce((sum, ah) => sum + ah, 0) / useAh.length);
  return !isEven && amps <= mostAh / leastDuty;
}

/** Where the sun is, and what it puts into the battery a day. */
function sunFor(
  facts: Facts,
  { voltageV, chemistry }: { readonly voltageV: number; readonly chemistry: Chemistry },
  at: Date,
) {
  const powerW = panelsW(facts);
  const sun = sunOf(facts, at);
  const where = { latitudeDeg: sun.latitudeDeg, longitudeDeg: sun.longitudeDeg, month: sun.month };
  if (powerW === undefined) return where;
  const panel = { ...sun, powerW, nominalVoltageV: voltageV, chemistry };
  const values = likelyOf(storageAssumptions(chemistry));
  return { ...where, sunAhPerDay: storedOf(dailyYield(panel).dailyYieldAh, panel, values) };
}
