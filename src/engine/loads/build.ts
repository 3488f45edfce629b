import { present } from '#basics/present.ts';
import { type Appliance, applianceOf } from '#catalog/appliances.ts';
import type { Load, StatedLoad } from '#rig/rig.ts';
import { kindOf, powerShareFor } from './cooler.ts';
import type { CoolerKind } from './cooler-table.ts';
import { batterySideAboveA } from './duty.ts';
import {
  type HouseholdKind,
  householdFromL,
  householdFromW,
  householdKinds,
  smallBelowL,
  threeWayDrawsW,
} from './household-table.ts';

/** How a thing that cools is built: for a camp, for a house, with a heater for gas, mains and 12 V, or without a compressor. */
export type Build = 'camping' | 'household' | 'three-way' | 'thermoelectric';

const houseWords: ReadonlySet<string> = new Set(['residential', 'household', 'domestic', 'kitchen', 'house']);
const smallWords: ReadonlySet<string> = new Set(['bar', 'mini', 'wine', 'bench']);
const peltierWords: ReadonlySet<string> = new Set(['thermoelectric', 'peltier']);
const threeWays = ['three way', 'three-way', '3 way', '3-way', 'absorption'] as const;
const wordsOf = (name: string): string[] => name.toLowerCase().split(/[ -]+/);

/** What the name of a thing that cools tells of how it is built: "residential fridge", "three way fridge". */
export function buildNamed(name: string): Exclude<Build, 'camping'> | undefined {
  if (applianceOf(name)?.setPointC === undefined) return undefined;
  if (threeWays.some(way => name.toLowerCase().includes(way))) return 'three-way';
  if (wordsOf(name).some(word => peltierWords.has(word))) return 'thermoelectric';
  return wordsOf(name).some(word => houseWords.has(word)) ? 'household' : undefined;
}

/** Mains voltage where only the kind of a thing hangs on it, V. */
const usualMainsV = 230;

/** Whether a mains one without a word of its kind is a household one: portables with a mains plug draw little. */
function isHouseholdByDraw({ supply, powerW, currentA }: Load): boolean {
  if (supply !== 'ac' || (currentA ?? 0) > batterySideAboveA) return false;
  const drawnW = powerW ?? (currentA === undefined ? Infinity : currentA * usualMainsV);
  return drawnW >= householdFromW;
}

/** How a thing that cools is built, by its name, what was told of it, its litres and what it runs on. */
export function buildOf(load: Load): Build {
  const told = load.build ?? buildNamed(load.name);
  if (told !== undefined) return told;
  if (applianceOf(load.name)?.isMedical) return 'camping';
  // Bar and mini fridges on mains are made for a house, however little they draw.
  if (load.supply === 'ac' && wordsOf(load.name).some(word => smallWords.has(word))) return 'household';
  const isLarge = load.supply === 'ac' && (load.volumeL ?? 0) >= householdFromL;
  return isLarge || isHouseholdByDraw(load) ? 'household' : 'camping';
}

const isSmall = ({ name, volumeL, powerW }: StatedLoad): boolean =>
  volumeL === undefined
    ? wordsOf(name).some(word => smallWords.has(word)) && (powerW ?? 0) < householdKinds.fridge.powerW
    : volumeL < smallBelowL;

/** What is usual of a household one. */
const householdOf = (load: StatedLoad, setPointC: number): HouseholdKind =>
  kindOf(setPointC) === kindOf(householdKinds.freezer.setPointC)
    ? householdKinds.freezer
    : isSmall(load)
      ? householdKinds.small
      : householdKinds.fridge;

/** A load's row of the catalogue as its build alters it, and its kind where it cools by a compressor. */
export interface Built {
  readonly row: Appliance | undefined;
  readonly kind?: CoolerKind;
}

const known = new WeakMap<Load, Built>();

/** What a load is by the catalogue, told from its like by how it is built and by its litres; looked up once a load. */
export function builtAs(load: Load): Built {
  let built = known.get(load);
  if (built === undefined) {
    built = newlyBuilt(load);
    known.set(load, built);
  }
  return built;
}

function newlyBuilt(load: Load): Built {
  const row = applianceOf(load.name);
  if (row?.setPointC === undefined) return { row };
  const build = buildOf(load);
  if (build === 'three-way') {
    const { setPointC: _cools, surge: _starts, ...heats } = row;
    return { row: { ...heats, powerW: threeWayDrawsW } };
  }
  if (build === 'thermoelectric') {
    const { setPointC: _cools, surge: _starts, ...draws } = row;
    return { row: { ...draws, powerW: present(applianceOf('thermoelectric cooler')).powerW } };
  }
  const kind = build === 'household' ? householdOf(load, row.setPointC) : kindOf(row.setPointC);
  const share = load.volumeL === undefined ? 1 : powerShareFor(load.volumeL, kind);
  const sized = ([low, likely, high]: Appliance['powerW']): Appliance['powerW'] =>
    share === 1 ? [low, likely, high] : [low * share, likely * share, high * share];
  if ('drawsW' in kind) {
    const { drawsW, setPointC, surge } = kind as HouseholdKind;
    return { row: { ...row, powerW: sized(drawsW), setPointC, surge }, kind };
  }
  return { row: share === 1 ? row : { ...row, powerW: sized(row.powerW) }, kind };
}
