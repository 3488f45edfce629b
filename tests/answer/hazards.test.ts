import { describe, expect, test } from 'vitest';
import { hazardAnswers } from '#answer/hazard-answers-table.ts';
import { emergencyText, forbidden, hazardAnswer, warningLines } from '#answer/hazards.ts';
import { present } from '#basics/present.ts';
import { hazardTable } from '#language/hazards/hazard-table.ts';
import { emergencies, hazardCodes } from '#rig/hazard-codes.ts';

test('every code has its row and its answer, in one order', () => {
  expect(hazardTable.map(row => row.code)).toEqual([...hazardCodes]);
  expect(hazardAnswers.map(row => row.code)).toEqual([...hazardCodes]);
});

describe.for([...hazardAnswers])('$code', answer => {
  test('is short enough for a phone, and says where it hands over', () => {
    expect(answer.first.length).toBeLessThan(200);
    expect(answer.instead.length).toBeLessThan(260);
    expect(answer.defers).not.toBe('');
    expect(answer.source).not.toBe('');
    expect(answer.never.length).toBeGreaterThan(0);
  });

  test('says nothing that it forbids', () => {
    expect(forbidden(answer.first, [answer.code])).toEqual([]);
  });

  test('an emergency names whom to call', () => {
    expect(answer.call !== undefined).toBe(emergencies.has(answer.code));
  });
});

test('an emergency is what to do now, then whom to call', () => {
  const lines = present(emergencyText(['over-current', 'carbon-monoxide'])).split('\n');
  expect(lines[0]).toMatch(/out into fresh air now/);
  expect(lines[1]).toMatch(/emergency number/);
  expect(emergencyText(['over-current'])).toBeUndefined();
  expect(emergencyText([])).toBeUndefined();
});

test.for([
  ['acid in an eye is rinsed', ['acid', 'body', 'battery'], /^Rinse it with running water/],
  ['a battery shut in where one sleeps is vented', ['closed', 'wet-lead', 'bed'], /^Not without a vent/],
  ['rotten eggs from a battery on charge are its gas', ['eggs', 'battery', 'charge'], /^Stop the charging/],
  ['rotten eggs from the stove are a leak', ['eggs', 'gas-word', 'battery'], /^No spark/],
  ['acid looked at with a lighter is a spark', ['acid', 'caps', 'ignite', 'body'], /^No spark/],
  ['a smell in a shut van is a leak', ['gas-word', 'smell', 'closed', 'battery-box'], /^No spark/],
] as const)('gas: %s', ([, concepts, first]) => {
  const text = present(emergencyText(['gas'], new Set(concepts)));
  expect(text).toMatch(first);
  expect(text).toMatch(/emergency number/);
  expect(forbidden(text, ['gas'])).toEqual([]);
});

test('lithium straight on an alternator is told so, and not of one behind a DC-DC charger', () => {
  const first = (...concepts: string[]) => hazardAnswer('over-current', new Set(concepts)).first;
  expect(first('lithium', 'alternator')).toMatch(/^No, not straight on/);
  expect(first('lithium', 'alternator', 'dcdc')).toMatch(/^Each part has its limit/);
  expect(warningLines(['over-current'], new Set(['lithium', 'alternator']))).toEqual([
    first('lithium', 'alternator'),
  ]);
});

test('at most three warnings, the most urgent first', () => {
  expect(warningLines(['no-fuse', 'over-current', 'cold-charge', 'medical'])).toEqual(
    (['no-fuse', 'over-current', 'cold-charge'] as const).map(code => hazardAnswer(code).first),
  );
});

// What answers have said before that hurt: each row must catch it.
test.for([
  ['carbon-monoxide', 'Noted. The rig: gas heater.'],
  ['carbon-monoxide', 'About 33 h, from full to half.'],
  ['battery-fire', 'It needs 1.8 hours more.'],
  ['mains-wiring', 'Use 2.5 mm² for the sockets.'],
  ['mains-lead', 'Yes, the inverter manages it.'],
  ['backfeed', 'It is big enough for the pump.'],
  ['bigger-fuse', 'Put in a 30 A fuse.'],
  ['no-fuse', 'No need for one on so short a run.'],
  ['over-current', 'It’s tight, but it works.'],
  ['cold-charge', 'Yes, in about 3 h.'],
  ['generator-inside', 'What’s the load?'],
  ['mixed-parallel', '200 Ah in parallel.'],
  ['medical', 'Yes, it lasts two nights.'],
] as const)('%s never says: %s', ([code, text]) => {
  expect(forbidden(text, [code])).not.toEqual([]);
});
