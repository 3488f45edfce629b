import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { assemble } from '#language/decide/assemble.ts';
import { State } from '#language/decide/state.ts';
import { slots } from '#language/propose/slots.ts';
import { all, nobody, self } from '#language/propose/whose.ts';
import { recognise } from '#language/recognise/recognise.ts';

/** What is decided of one mention: which, its slot, whose it is (another mention by its text), its value. */
type Role = readonly [what: string, slot: string, owner?: string | number, value?: number];

/** The facts that roles given by hand tell. */
function told(text: string, roles: readonly Role[], onMains: readonly string[] = []) {
  const { mentions } = recognise(text);
  const at = (what: string): number => {
    const found = mentions.findIndex(m => m.text === what || m.cls === what);
    if (found < 0) throw new Error(`no ${what} among ${mentions.map(m => `${m.text}/${m.cls}`).join(' ')}`);
    return found;
  };
  const slotOf = (name: string): number => {
    const found = slots.findIndex(s => s.name === name);
    if (found < 0) throw new Error(`no slot ${name}`);
    return found;
  };
  const state = roles.reduce((s, [what, slot, owner = nobody, value]) => {
    const i = at(what);
    const whose = typeof owner === 'number' ? owner : at(owner);
    return s.with(i, slotOf(slot), whose, -1, value ?? present(mentions[i]).value, 0);
  }, State.empty(mentions));
  return assemble(state, new Set(onMains.map(at)));
}

describe('facts from roles', () => {
  test.for<[text: string, roles: Role[], facts: object]>([
    [
      'fridge 1.2 A, 100 Ah AGM, 3 days',
      [
        ['fridge', 'load'],
        ['A', 'load.currentA', 'fridge'],
        ['Ah', 'battery.capacityAh', self],
        ['chemistry:agm', 'battery.chemistry', 'Ah'],
        ['days', 'durationH', nobody, 72],
      ],
      {
        loads: [{ name: 'fridge', currentA: 1.2 }],
        batteries: [{ capacityAh: 100, chemistry: 'agm' }],
        durationH: 72,
      },
    ],
    ['2 A', [['A', 'load.currentA', self]], { loads: [{ currentA: 2 }] }],
    [
      'fridge and lamp, 2 A',
      [
        ['fridge', 'load'],
        ['lamp', 'load'],
        ['A', 'load.currentA', all],
      ],
      {
        loads: [
          { name: 'fridge', currentA: 2 },
          { name: 'lamp', currentA: 2 },
        ],
      },
    ],
    [
      '200 W mppt',
      [
        ['W', 'solar.powerW', self],
        ['controller:mppt', 'solar.controller', 'W'],
      ],
      { solar: [{ powerW: 200, controller: 'mppt' }] },
    ],
    ['dc-dc charger', [['charger:dcdc', 'charger:dcdc']], { chargers: [{ kind: 'dcdc' }] }],
    [
      '6 mm2, 10 m there and back',
      [
        ['mm²', 'cable.areaMm2'],
        ['m?', 'cable.lengthM:round'],
      ],
      { cable: { areaMm2: 6, lengthM: 10, isRoundTrip: true } },
    ],
    ['12.4 V', [['V', 'volts:rest']], { volts: 12.4, voltsTaken: 'rest' }],
    ['no sun', [['without:solar', 'without']], { without: ['solar'] }],
    ['fridge', [], {}],
  ])('%s', ([text, roles, facts]) => {
    expect(told(text, roles)).toEqual(facts);
  });

  test('a load on mains says so', () => {
    expect(told('kettle', [['kettle', 'load']], ['kettle'])).toEqual({
      loads: [{ name: 'kettle', supply: 'ac' }],
    });
  });

  test('claims are told in their own unit, and lend it to one without', () => {
    const { mentions } = recognise('Sam says 3 days, Lou says 4');
    const [sam, , three, , lou, , four] = mentions.map((_, i) => i);
    const claim = slots.findIndex(s => s.name === 'claim');
    const state = State.empty(mentions)
      .with(present(three), claim, present(sam), -1, 72, 0)
      .with(present(four), claim, present(lou), -1, 4, 0);
    expect(assemble(state).claims).toEqual([
      { who: 'sam', value: 3, unit: 'days' },
      { who: 'lou', value: 4, unit: 'days' },
    ]);
  });

  test('a state is copied, never changed', () => {
    const { mentions } = recognise('fridge 2 A');
    const empty = State.empty(mentions);
    empty.with(0, 2, nobody, -1, Number.NaN, -1);
    expect([...empty.slots]).toEqual(mentions.map(() => -1));
  });
});
