import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { applianceOf, isAlwaysOn, supplyOf, things } from '#catalog/appliances.ts';
import { appliances } from '#catalog/appliances-table.ts';
import { gear } from '#catalog/gear-table.ts';

describe('the catalogue of what uses power', () => {
  test('every name belongs to one row alone', () => {
    const all = things.flatMap(({ id, names }) => [id, ...names]);
    expect(all.filter((name, i) => all.indexOf(name) !== i)).toEqual([]);
  });

  test('names are written as reading looks them up', () => {
    const all = [...things.flatMap(({ id, names }) => [id, ...names]), ...gear.flatMap(({ names }) => names)];
    expect(all.filter(name => name !== name.trim().toLowerCase() || /[-'’]|\s{2}/.test(name))).toEqual([]);
  });

  test('the hours of a kettle are those that its water takes', () => {
    const { powerW, hoursPerDay } = present(applianceOf('kettle'));
    // 4,186 J a litre and kelvin, from 15 °C to the boil, 85 % of the heat in the water.
    for (const [i, litres] of [1, 2, 4].entries())
      expect(hoursPerDay[i]).toBeCloseTo((litres * 4186 * 85) / 3600 / 0.85 / powerW[1], 2);
  });

  test.each([
    ['oxygen concentrator', 'ac'],
    ['gaming laptop', 'ac'],
    ['laptop', 'dc'],
    ['welder', 'ac'],
    ['tool battery', 'dc'],
    ['gizmo', undefined],
  ])('%s runs on %s', (name, supply) => expect(supplyOf(name)).toBe(supply));

  test.each([
    ['fridge', true],
    ['router', false],
    ['thermoelectric cooler', true],
    ['gas detector', true],
    ['medicine fridge', true],
    ['ice maker', false],
    ['light', false],
    ['tool battery', false],
  ])('%s is always on: %s', (name, is) => expect(isAlwaysOn(things.find(row => row.id === name))).toBe(is));

  test('each row is in order: low, likely, high, with a source', () => {
    for (const { id: name, powerW, hoursPerDay, source } of appliances) {
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
    expect(applianceOf(name)?.id).toBe(row);
  });

  test('what keeps people alive is marked', () => {
    for (const name of ['cpap', 'bipap', 'oxygen machine', 'nebuliser', 'insulin cooler'])
      expect(applianceOf(name)?.isMedical, name).toBe(true);
  });
});
