import { describe, expect, test } from 'vitest';
import { aliases, untypical } from '#engine/loads/aliases-table.ts';
import { applianceOf, appliances } from '#engine/loads/tables.ts';
import { appliances as spoken } from '#language/words/en/appliances.ts';

const said = spoken.flatMap(row => row.names);

/** Rows that no single word of the lexicon means: they are typical for a thing said in other words. */
const unspoken = ['cpap with humidifier', 'portable heater', 'clock radio'];

describe('what people say and what is typical', () => {
  test('every appliance that reading knows has a typical row, or is listed as having none', () => {
    expect(said.filter(name => !applianceOf(name) && !untypical.includes(name))).toEqual([]);
  });

  test('every row can be said', () => {
    const missing = appliances.map(row => row.name).filter(name => !said.includes(name));
    expect(missing.filter(name => !unspoken.includes(name))).toEqual([]);
  });

  test('every other name belongs to a row, and to one alone', () => {
    const rows = new Set(appliances.map(row => row.name));
    expect(Object.keys(aliases).filter(name => !rows.has(name))).toEqual([]);
    const all = [...rows, ...Object.values(aliases).flat(), ...untypical];
    expect(all.filter((name, i) => all.indexOf(name) !== i)).toEqual([]);
  });

  test('each row is in order: low, likely, high, with a source', () => {
    for (const { name, powerW, hoursPerDay, source } of appliances) {
      expect(
        powerW.toSorted((a, b) => a - b),
        name,
      ).toEqual([...powerW]);
      expect(
        hoursPerDay.toSorted((a, b) => a - b),
        name,
      ).toEqual([...hoursPerDay]);
      expect(hoursPerDay[2], name).toBeLessThanOrEqual(24);
      expect(source).not.toBe('');
    }
  });

  test.for<[said: string, row: string | undefined]>([
    ['fridge', 'fridge'],
    ['our old fridge', 'fridge'],
    ['telly', 'tv'],
    ['coffee maker', 'coffee machine'],
    ['heated blanket', 'electric blanket'],
    ['fridge fan', 'fan'],
    ['fridge freezer', 'fridge'],
    ['insulin fridge', 'medicine fridge'],
    ['headlights', 'light'],
    ['smartphone', 'phone'],
    ['microwave oven', 'microwave'],
    ['thermoelectric cooler', 'thermoelectric cooler'],
    ['coffee machine 2', 'coffee machine'],
    ['heater for the fish tank', 'heater'],
    ['fish tank heater', undefined],
    ['gizmo', undefined],
    ['', undefined],
  ])('"%s" is typical for %s', ([name, row]) => {
    expect(applianceOf(name)?.name).toBe(row);
  });

  test('what keeps people alive is marked', () => {
    for (const name of ['cpap', 'bipap', 'oxygen machine', 'nebuliser', 'insulin cooler'])
      expect(applianceOf(name)?.isMedical, name).toBe(true);
  });
});
