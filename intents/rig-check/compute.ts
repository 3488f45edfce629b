import { present } from '#basics/present.ts';
import type { Bank } from '#engine/battery/bank.ts';
import { likelyOf } from '#engine/explore.ts';
import { dailyUseAh, useAssumptions, usePerLoad } from '#engine/loads/model.ts';
import type { Facts } from '#rig/rig.ts';
import { isFrostLikely } from '../frost.ts';
import { bankFor } from '../learned.ts';
import { panelsW } from '../sun.ts';
import { hasUse, useOf } from '../use.ts';
import { alternatorLink, chargeLimitLink, chargerLink } from './links/charger.ts';
import { inverterLinks } from './links/inverter.ts';
import type { At, Link, Part } from './links/link.ts';
import { batteryLink, drivingLink, solarLink } from './links/supply.ts';
import { cableLink, fuseLink } from './links/wiring.ts';

export interface RigCheck {
  /** Weakest first. */
  readonly links: readonly [Link, ...Link[]];
  readonly bank: Bank;
  /** The load that takes most a day, and its Ah. */
  readonly biggest?: { readonly name: string; readonly chargeAh: number };
  readonly dailyUse: number;
  /** What each load takes a day, Ah, the biggest first. */
  readonly shares: readonly { readonly name: string; readonly chargeAh: number }[];
  /** Lithium that may have to be charged in the cold. */
  readonly isCold: boolean;
  /** What nothing was told about, so that it wasn't checked. */
  readonly untold: readonly string[];
}

/** Under this lithium is charged gently at most, °C. */
const coldC = 5;

/** Parts that bear on how a rig holds together, and of which nothing was told. */
function untoldOf(facts: Facts): string[] {
  const { chargers = [], inverter, batteries = [], cable, fuseA } = facts;
  const hasDrive = chargers.some(c => c.kind === 'dcdc' || c.kind === 'isolator');
  const isLimited = batteries.some(b => b.maxCurrentA !== undefined || b.chemistry !== 'lfp');
  const parts: readonly (readonly [isTold: boolean, name: string])[] = [
    [hasUse(facts), 'what runs on it'],
    [panelsW(facts) !== undefined || chargers.length > 0, 'what charges it'],
    [!hasDrive || facts.drivingHoursPerDay !== undefined, 'hours driven a day'],
    [inverter?.powerW === undefined || isLimited, 'the BMS limit'],
    [cable?.lengthM !== undefined, 'cables'],
    [fuseA !== undefined, 'fuses'],
    [
      facts.place !== undefined || facts.latitudeDeg !== undefined || facts.peakSunHours !== undefined,
      'where and when you camp',
    ],
  ];
  return parts.filter(([isTold]) => !isTold).map(([, name]) => name);
}

/** Parts that get hot where too much is asked of them: they come before what is merely short. */
const hot: ReadonlySet<Part> = new Set(['battery-current', 'inverter', 'fuse', 'charge-limit', 'alternator']);
const isHurtful = ({ part, share }: Link): boolean => share < 1 && hot.has(part);

/** Each part of a rig against what is asked of it, the weakest first. */
export function computeRigCheck(facts: Facts, setting: At): RigCheck {
  const bank = present(bankFor(facts));
  const others = [
    ...(hasUse(facts) ? [solarLink(facts, bank, setting), drivingLink(facts, bank, setting)] : []),
    ...inverterLinks(facts, bank, setting),
    chargerLink(facts, bank),
    chargeLimitLink(facts, bank),
    alternatorLink(facts, bank, setting),
    cableLink(facts, bank, setting),
    fuseLink(facts),
  ].filter(link => link !== undefined);
  const lasting = hasUse(facts) ? [batteryLink(facts, bank, setting)] : [];
  const [first, ...rest] = [...lasting, ...others].sort(
    (a, b) => Number(isHurtful(b)) - Number(isHurtful(a)) || a.share - b.share,
  ) as [Link, ...Link[]];
  const use = useOf(facts, bank.voltageV, setting.mainsV, setting.at);
  const likely = likelyOf(useAssumptions(use));
  const each = usePerLoad(use, likely).sort((a, b) => b.chargeAh - a.chargeAh);
  return {
    links: [first, ...rest],
    bank,
    biggest: each[0] && { name: each[0].load.name, chargeAh: each[0].chargeAh },
    dailyUse: dailyUseAh(use, likely),
    shares: each.map(({ load, chargeAh }) => ({ name: load.name, chargeAh })),
    isCold: bank.chemistry === 'lfp' && ((facts.ambientC ?? 20) < coldC || isFrostLikely(facts)),
    untold: untoldOf(facts),
  };
}
