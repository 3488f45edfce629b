import { present } from '#basics/present.ts';
import { isSpotted } from '#intents/spotting.ts';
import { stillRunning } from '#intents/still-running.ts';
import { correct, isAmong } from '#rig/correct.ts';
import { isSameName, type MergeMode, mergeBatteries, mergeFacts, removeFrom } from '#rig/merge.ts';
import type { Stated, StatedBattery, StatedLoad } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';
import type { Frame } from '../memory.ts';

/** Whether what is told comes on top of what was told before. */
export const isMore = ({ cues }: Heard): boolean => cues.has('add') || cues.has('and-with');

function mode({ cues }: Heard): MergeMode {
  if (cues.has('add')) return 'add';
  return cues.has('and-with') && !cues.has('what-if') && !cues.has('make-it') ? 'add' : 'change';
}

const isBare = ({ name: _name, volumeL: _litres, build: _build, ...rest }: StatedLoad): boolean =>
  Object.keys(rest).length === 0;

/** "Its 1.4", "a 40 amp one": a figure without a name is that of the one thing of its kind spoken of. */
function asNamed({ intent, facts: before }: Frame, heard: Heard): Stated {
  const { loads, chargers, ...rest } = heard.facts;
  const cpap = before.loads?.find(load => load.name === 'cpap');
  const named = loads?.map((load): StatedLoad => {
    if (cpap && load.name === 'humidifier') return { ...load, name: cpap.name };
    // What is told of an inverter runs on it.
    if (intent === 'inverter-check' && load.powerW !== undefined && !load.supply)
      return { ...load, supply: 'ac' };
    const isOne = load.name === 'load' && before.loads?.length === 1 && !isMore(heard);
    return isOne ? { ...load, name: present(present(before.loads)[0]).name } : load;
  });
  // "34 Ah a day, sorry": of the one thing that was told so.
  const [only] = before.loads ?? [];
  const isUse = heard.corrects && loads === undefined && rest.dailyUseAh !== undefined;
  if (isUse && before.loads?.length === 1 && only?.chargeAhPerDay !== undefined) {
    const { dailyUseAh: chargeAhPerDay, ...others } = rest;
    return { ...others, loads: [{ name: only.name, chargeAhPerDay }] };
  }
  const kind = before.chargers?.length === 1 ? present(before.chargers[0]).kind : undefined;
  const plugged = chargers?.map(charger =>
    kind && kind !== 'generator' && charger.kind === 'mains' && !heard.cues.has('mains')
      ? { ...charger, kind }
      : charger,
  );
  return { ...rest, ...(named && { loads: named }), ...(plugged && { chargers: plugged }) };
}

/** "Only the fridge": of the loads of before those named; "the hair dryer, I meant": another thing in the place of the one. */
function withThings(facts: Stated, told: Stated, { cues, corrects, recognised }: Heard): Stated {
  const { loads } = facts;
  if (!loads || !told.loads?.length) return facts;
  const isNamed = (load: StatedLoad): boolean =>
    present(told.loads).some(one => isSameName(one.name, load.name));
  const kept = loads.filter(isNamed);
  if (cues.has('only') && kept.length > 0 && told.loads.every(isBare)) return { ...facts, loads: kept };
  const isOther = cues.has('correction') && kept.length === 0 && told.loads.every(isBare);
  if (isOther && loads.length === 1 && corrects === undefined)
    return { ...facts, loads: [{ ...present(loads[0]), name: present(told.loads[0]).name }] };
  return kept.length === 0 ? withoutMisnamed(facts, told, recognised.words) : facts;
}

const misnaming: ReadonlySet<string> = new Set('said meant mean not instead wrote typed'.split(' '));

/** "I said fridge, but it's the freezer, 70 W": what was called by a wrong name is told anew. */
function withoutMisnamed({ loads = [], ...rest }: Stated, told: Stated, words: readonly string[]): Stated {
  const isNamed = ({ name }: StatedLoad): boolean => words.some(word => isSameName(word, name));
  const isMisnamed = loads.length === 1 && told.loads?.length === 1 && loads.every(isNamed);
  return isMisnamed && words.some(word => misnaming.has(word)) ? rest : { ...rest, loads };
}

/** "Plus another 30 Ah a day", "and the heater too": what comes on top of a use that was told, or read off, as one number. */
function withUse(
  facts: Stated,
  told: Stated,
  heard: Heard,
): { readonly facts: Stated; readonly told: Stated } {
  const useOf = ({ dailyUseAh, dailyUseWh, netCurrentA = 0 }: Stated): Partial<StatedLoad> | undefined =>
    dailyUseAh !== undefined
      ? { chargeAhPerDay: dailyUseAh }
      : dailyUseWh !== undefined
        ? { energyWhPerDay: dailyUseWh }
        : netCurrentA < 0
          ? { currentA: -netCurrentA }
          : undefined;
  const [before, now] = [useOf(facts), useOf(told)];
  if (!isMore(heard) || !(told.loads || now) || !(before || (now && facts.loads))) return { facts, told };
  const { dailyUseAh: _ah, dailyUseWh: _wh, netCurrentA: _net, ...rest } = facts;
  const { dailyUseAh: _toldAh, dailyUseWh: _toldWh, netCurrentA: _toldNet, ...more } = told;
  return {
    facts: before ? { ...rest, loads: [{ name: 'all else', ...before }] } : facts,
    told: now ? { ...more, loads: [...(more.loads ?? []), { name: 'the rest', ...now }] } : told,
  };
}

/** What of the facts before a new one makes void. */
function without(facts: Stated, told: Stated): Stated {
  const gone = new Set<string>();
  if (told.peakSunHours !== undefined) for (const key of ['place', 'month']) gone.add(key);
  if (told.place !== undefined || told.month !== undefined) gone.add('peakSunHours');
  if (told.place !== undefined) for (const key of ['latitudeDeg', 'longitudeDeg']) gone.add(key);
  // A location without a name that fits it: the name of before was of another place.
  if (told.latitudeDeg !== undefined) gone.add('place');
  const left = Object.fromEntries(Object.entries(facts).filter(([key]) => !gone.has(key))) as Stated;
  // "No sun" falls when a panel joins, "no driving" when a drive does.
  const isBack = (source: string): boolean =>
    (source === 'solar' && told.solar !== undefined) ||
    (source === 'driving' && (told.drivingHoursPerDay ?? told.days) !== undefined) ||
    (source === 'charging' && (told.solar ?? told.drivingHoursPerDay ?? told.days) !== undefined);
  return left.without ? { ...left, without: left.without.filter(source => !isBack(source)) } : left;
}

const mostBareWords = 4;

/**
 * "Now 4 A" after 6 A out of the battery, "60 Ah?" after 40 Ah to put back: a bare figure is of what the question had in
 * its unit.
 */
function asBefore(before: Stated, told: Stated, { words, cues }: Heard): Stated {
  const { netCurrentA: amps = 0, batteries, ...rest } = told;
  if (amps > 0 && (before.netCurrentA ?? 0) < 0 && !cues.has('charge'))
    return { ...told, netCurrentA: -amps };
  const [{ capacityAh, ...more } = {}] = batteries ?? [];
  const key = (['chargeUsedAh', 'chargeLeftAh', 'chargeNeededAh'] as const).find(
    one => before[one] !== undefined && told[one] === undefined,
  );
  const isBare = words <= mostBareWords && batteries?.length === 1 && Object.keys(more).length === 0;
  if (!key || !isBare || capacityAh === undefined || before.batteries) return told;
  return { ...rest, ...(told.netCurrentA !== undefined && { netCurrentA: amps }), [key]: capacityAh };
}

/** Words that put a thing on the cable or fuse of before, too. */
const onTheSame: readonly string[] = [
  'as_well|too|also|plus|together|both|another|add|adding|added|joins|share|shares|sharing|altogether',
  'same_cable|same_wire|same_circuit|same_fuse|same_line|same_lead|on_it|on_that|on_there|off_it',
];
/** Words that give a thing a run of its own, as long as the one before. */
const asFar: readonly string[] = ['same|just_as|as distance|length|run|far|long|metres|spot'];

/** Whether a thing told is another question of the same kind: of an inverter, or with a cable and fuse of its own. */
function isApart({ intent }: Frame, heard: Heard): boolean {
  const { words } = heard.recognised;
  if (intent === 'inverter-check') return !isMore(heard);
  if (intent !== 'cable-size' && intent !== 'fuse-size') return false;
  return isSpotted(words, asFar) || !isSpotted(words, onTheSame);
}

/** Without what drew before: on a cable, its amps too. */
function withoutLoads({ loads: _loads, cable, ...rest }: Stated): Stated {
  if (!cable) return rest;
  const { currentA: _amps, ...run } = cable;
  return { ...rest, cable: run };
}

/** Another battery of which no kind is told is of the kind of the one there is. */
function ofOneKind({ batteries = [] }: Stated, now: readonly StatedBattery[]): StatedBattery[] {
  const kind = batteries.find(({ role }) => role !== 'starter')?.chemistry;
  return now.map(one =>
    one.chemistry || one.role === 'starter' || !kind ? one : { ...one, chemistry: kind },
  );
}

/** "And a 200 Ah?" of how long a charge takes: from where the one before was charged. */
function stillAsFull({ intent }: Frame, { batteries = [] }: Stated, now: StatedBattery[]): StatedBattery[] {
  const [old, other] = batteries.filter(({ role }) => role !== 'starter');
  const levelPercent = other || intent !== 'charge-time' ? undefined : old?.stateOfChargePercent;
  if (levelPercent === undefined || now.length !== 1) return now;
  return now.map(one => ({ stateOfChargePercent: levelPercent, ...one }));
}

/** The facts of the question before, with what the message changes: pure, and the later word wins. */
export function turned(frame: Frame, before: Stated, heard: Heard): Stated {
  const { corrects, removed, cues } = heard;
  const named = asBefore(before, asNamed({ ...frame, facts: before }, heard), heard);
  // A number that stands among the facts told is laid over the old one anyway.
  const slip = corrects && !isAmong(named, corrects) ? corrects : undefined;
  const right = removeFrom(slip ? correct(before, slip) : before, removed);
  const { facts, told } = withUse(without(withThings(right, named, heard), named), named, heard);
  // "And the toaster, 900 W" asked of an inverter is another question of the same kind, not one more load.
  const isOther = frame.asked === undefined && !corrects && isApart(frame, heard);
  const isNew =
    isOther && told.loads?.some(load => !facts.loads?.some(one => isSameName(one.name, load.name)));
  const base = isNew && !told.loads?.every(isBare) ? withoutLoads(facts) : facts;
  const merged = mergeFacts(
    base,
    told,
    frame.asked !== undefined && !cues.has('add') ? 'state' : mode(heard),
  );
  // "And with 200 Ah?" is another battery in its place; only "add" and "another" put one beside it.
  if (told.batteries && !cues.has('add'))
    merged.batteries = stillAsFull(
      frame,
      base,
      mergeBatteries(base.batteries ?? [], told.batteries, 'change'),
    );
  if (told.batteries && cues.has('add')) merged.batteries = ofOneKind(base, merged.batteries ?? []);
  const all = Object.entries(merged).filter(([, value]) => value !== undefined);
  return stillRunning(before, Object.fromEntries(all) as Stated);
}
