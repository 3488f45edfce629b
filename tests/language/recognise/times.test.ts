import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { recognise } from '#language/recognise/recognise.ts';

const mentions = (text: string) => recognise(text).mentions;
const first = (text: string, kind: string) => mentions(text).find(m => m.kind === kind);

describe('times of the clock', () => {
  test.for<[text: string, label: string, hour: number]>([
    ['till 7am', '7am', 7],
    ['until 7:30 pm', '7:30pm', 19.5],
    ['by 19:00', '7pm', 19],
    ['at 6 oclock', '6am', 6],
    ['7 in the morning', '7am', 7],
    ['till midnight', 'midnight', 24],
    ['till sunday lunch', 'sunday lunch', 12.5],
    ['by 10am monday', 'monday 10am', 10],
    ['7.30am', '7:30am', 7.5],
  ])('%s', ([text, label, hour]) => {
    expect(first(text, 'clock')).toMatchObject({ key: label, value: hour });
  });

  test('a bare number is no time', () => {
    expect(first('fridge 7', 'clock')).toBeUndefined();
  });

  test.for<[text: string, hours: number]>([
    ['from 10pm to 6am', 8],
    ['from 7 till 10pm', 3],
    ['party at 10pm, home by 2am', 4],
  ])('%s spans %d hours', ([text, hours]) => {
    const clock = present(
      mentions(text)
        .filter(m => m.kind === 'clock')
        .at(-1),
    );
    expect(clock.variants).toContainEqual({ why: 'span', value: hours });
  });
});

describe('bare hours beside one another', () => {
  test.for<[text: string, hours: number | undefined]>([
    ['the gig is 8 to 11', 3],
    ['7 to 10.30', 3.5],
    ['6.30-11', 4.5],
    ['8 and 11', undefined],
    ['fridge 30 to 40', undefined],
  ])('%s', ([text, hours]) => {
    const spans = mentions(text).flatMap(m => m.variants.filter(v => v.why === 'span'));
    expect(spans.map(v => v.value).at(0)).toBe(hours);
  });
});

describe('rates', () => {
  test.for<[text: string, rate: string | undefined]>([
    ['5 hours a day', 'day'],
    ['35Ah per day', 'day'],
    ['4 h/d', 'day'],
    ['3 hours every night', 'night'],
    ['30Ah daily', 'day'],
    ['2 kWh a week', 'week'],
    // An hour of use: power is no matter of hours.
    ['15 watts an hour a day', undefined],
    ['45 Wh an hour', 'hour'],
    ['5 hours', undefined],
    ['5 hours, a day out', undefined],
  ])('%s', ([text, rate]) => {
    expect(mentions(text).find(m => m.kind === 'amount')?.rate).toBe(rate);
  });

  test.for<[text: string, hours: number]>([
    ['a full week', 168],
    ['day and a half ok?', 36],
    ['hour and a half a day', 1.5],
    ['a day and a half', 36],
    ['one full day', 24],
    ['15 watts an hour a day', 1],
  ])('%s tells %d hours', ([text, hours]) => {
    expect(mentions(text).filter(m => m.dimension === 'time')).toMatchObject([{ value: hours }]);
  });

  test('“for a day” is a span', () => {
    expect(first('for a day', 'rate')).toBeUndefined();
    expect(first('for a day', 'amount')).toMatchObject({ value: 24 });
  });
});

describe('sources ruled out', () => {
  test.for<[text: string, source: string | undefined]>([
    ['no sun', 'solar'],
    ['without any driving', 'driving'],
    ['we wont be moving', 'driving'],
    ['no hook up', 'mains'],
    ['not charging', 'charging'],
    ['sans generator', 'generator'],
    ['nor a genny', 'generator'],
    ['no DC-DC in between', 'dcdc'],
    ['no dc to dc', 'dcdc'],
    // It feeds what runs off it.
    ['off the inverter', undefined],
    ['lights off the start battery', undefined],
    ['charging off the mains', undefined],
    ['no worries', undefined],
    ['sunny', undefined],
    ['Sat none\nsun all day', undefined],
  ])('%s', ([text, source]) => {
    expect(first(text, 'without')?.key).toBe(source);
  });
});
