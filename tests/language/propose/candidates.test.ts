import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { State } from '#language/decide/state.ts';
import { candidatesOf } from '#language/propose/candidates.ts';
import { slotsOf, turnOf } from '#language/propose/roles.ts';
import { claim, load, slots } from '#language/propose/slots.ts';
import { all, self, writer } from '#language/propose/whose.ts';
import { recognise } from '#language/recognise/recognise.ts';

/** The mentions of a message, and where the one stands whose text or class is asked for. */
function read(text: string) {
  const { mentions } = recognise(text);
  const at = (what: string): number => {
    const found = mentions.findIndex(m => m.text === what || m.cls === what);
    if (found < 0) throw new Error(`“${text}” mentions no ${what}: ${mentions.map(m => m.cls).join(' ')}`);
    return found;
  };
  return { mentions, at };
}

/** Names of the slots that are proposed for one mention, nothing decided before. */
function proposed(text: string, what: string): string[] {
  const { mentions, at } = read(text);
  const names = candidatesOf(State.empty(mentions), at(what)).map(c => present(slots[c.slot]).name);
  return [...new Set(names)].sort();
}

/** Whose claim the mention at hand may be, by their texts; the writer apart. */
function claimedBy(text: string, what: string): string[] {
  const { mentions, at } = read(text);
  const owners = candidatesOf(State.empty(mentions), at(what)).flatMap(c =>
    c.slot === claim && c.owner >= 0 ? [present(mentions[c.owner]).text] : [],
  );
  return [...new Set(owners)].sort();
}

describe('who may claim a figure', () => {
  test.for<[text: string, what: string, who: string[]]>([
    ['lights 3 A. cletus 2 h, sam 3 days', 'h', ['cletus', 'sam']],
    ['is it 26 h (joost)?', 'h', ['joost']],
    ["Lee's called 30 h", 'h', ['lees']],
    ['she would rather buy 30 A', 'A', ['she']],
    ['about 30 A', 'A', []],
  ])('%s', ([text, what, who]) => {
    expect(claimedBy(text, what)).toEqual(who);
  });
});

describe('what a mention may be', () => {
  test.for<[text: string, what: string, some: string[]]>([
    ['fridge 45 Wh an hour', 'Wh', ['load.powerW']],
    ['fridge 2 Ah an hour', 'Ah', ['load.currentA', 'charger.currentA']],
    ['panels make 40 Ah', 'Ah', ['solarAhPerDay']],
    ['5 peak sun hours', 'h', ['peakSunHours']],
    ['minus ten nights', 'night', ['ambientC']],
    ['fridge 100 Ah', 'Ah', ['battery.capacityAh', 'dailyUseAh', 'chargeUsedAh', 'chargeLeftAh']],
    ['200 W', 'W', ['load.powerW', 'solar.powerW', 'inverter.powerW', 'charger.powerW']],
    ['3 days', 'days', ['durationH']],
    ['30 degrees', '°C', ['ambientC']],
    ['6 mm2', 'mm²', ['cable.areaMm2']],
    ['10 m', 'm?', ['cable.lengthM', 'durationH']],
    ['lithium', 'chemistry:lfp', ['battery.chemistry']],
    ['fridge', 'thing', ['load', 'removed']],
    ['in series', 'arrangement:series', ['arrangement']],
    ['12.4 V', 'V', ['volts', 'volts:rest', 'systemVoltageV']],
  ])('%s: %s', ([text, what, some]) => {
    expect(proposed(text, what)).toEqual(expect.arrayContaining(['none', ...some]));
  });

  test('a value that cannot be believed is not proposed', () => {
    expect(proposed('24 V', 'V')).toContain('systemVoltageV');
    expect(proposed('230 V', 'V')).not.toContain('battery.voltageV');
    expect(proposed('9000 W', 'W')).toContain('charger.powerW');
    expect(proposed('30000 W', 'W')).not.toContain('charger.powerW');
    // Somebody may say it all the same.
    expect(proposed('150 %', '%')).toEqual(['claim', 'none']);
  });

  test('a price and a distance are nothing', () => {
    expect(proposed('$400', 'money')).toEqual(['none']);
    expect(proposed('40 km', 'km')).toEqual(['none']);
  });
});

describe('whose it may be', () => {
  const loadsDecided = (text: string, things: readonly string[]) => {
    const { mentions, at } = read(text);
    const state = things.reduce(
      (s, thing) => s.with(at(thing), load, -1, -1, Number.NaN, 0),
      State.empty(mentions),
    );
    return { state, at };
  };

  test('a draw is of a load told, of none yet named, or of all', () => {
    const { state, at } = loadsDecided('fridge and lamp 2 A', ['fridge', 'lamp']);
    const owners = candidatesOf(state, at('A'))
      .filter(c => present(slots[c.slot]).name === 'load.currentA')
      .map(c => c.owner);
    expect(owners.sort()).toEqual([at('fridge'), at('lamp'), self, all].sort());
  });

  test('hours need a load', () => {
    const { state, at } = loadsDecided('fridge 5 hours', ['fridge']);
    const owners = candidatesOf(state, at('h'))
      .filter(c => present(slots[c.slot]).name === 'load.hoursPerDay')
      .map(c => c.owner);
    expect(owners).toEqual([at('fridge')]);
    expect(proposed('5 hours', 'h')).not.toContain('load.hoursPerDay');
  });

  test('a claim is of somebody near, or of the writer', () => {
    const { mentions, at } = read('Sam says 3 days');
    const claims = candidatesOf(State.empty(mentions), at('days')).filter(
      c => present(slots[c.slot]).name === 'claim',
    );
    expect(claims.map(c => c.owner)).toEqual(expect.arrayContaining([0, writer]));
  });

  test('only whole numbers count things', () => {
    const counts = (text: string) => {
      const { state, at } = loadsDecided(text, ['lamps']);
      return candidatesOf(state, at('num')).filter(c => present(slots[c.slot]).name === 'count').length;
    };
    expect(counts('3 lamps')).toBe(1);
    expect(counts('3.5 lamps')).toBe(0);
  });
});

test('a middle of a range is proposed beside its end', () => {
  const { mentions, at } = read('2 to 4 days');
  const values = candidatesOf(State.empty(mentions), at('days'))
    .filter(c => present(slots[c.slot]).name === 'durationH')
    .map(c => c.value);
  expect(values).toEqual([96, 72]);
});

test('things come before their figures, figures before what colours them', () => {
  const { mentions, at } = read('fridge 2 A, 100 Ah AGM, 3 lamps');
  const turn = (what: string) => turnOf(present(mentions[at(what)]));
  expect(turn('fridge')).toBeLessThan(turn('A'));
  expect(turn('Ah')).toBeLessThan(turn('chemistry:agm'));
  expect(turn('A')).toBeLessThan(turn('num'));
});

test('a slot stands under its own number, and plain words have none', () => {
  expect(present(slots[load]).name).toBe('load');
  expect(new Set(slots.map(s => s.name)).size).toBe(slots.length);
  const { mentions } = read('how long');
  expect(mentions.flatMap(m => slotsOf(m))).toEqual([]);
});
