import { describe, expect, test } from 'vitest';
import { facts, type Row } from './reading.ts';

const rows: readonly Row[] = [
  ['for 3 days', { durationH: 72 }],
  ['3 nights', { durationH: 72 }],
  ['three full days', { durationH: 72 }],
  ['a weekend', { durationH: 48 }],
  ['the weekend', { durationH: 48 }],
  ['a long weekend', { durationH: 72 }],
  ['bank holiday weekend', { durationH: 72 }],
  ['weekend away, 4 days', { durationH: 96 }],
  ['a week', { durationH: 168 }],
  ['a fortnight', { durationH: 336 }],
  ['10 day trip', { durationH: 240 }],
  ['a 4-day trip', { durationH: 96 }],
  ['half a day', { durationH: 12 }],
  ['¾ of a day', { durationH: 18 }],
  ['a couple of days', { durationH: 48 }],
  ['2 1/2 days', { durationH: 60 }],
  ['1.5 days', { durationH: 36 }],
  ['2-3 days', { durationH: 72 }],
  ['two days and a half', { durationH: 60 }],
  ['36 hours', { durationH: 36 }],
  ['week at the lake', { durationH: 168 }],
  ['leaving 27/12 back 31/12', { durationH: 96, month: 12 }],
  ['28 dec till 2nd jan', { durationH: 120, month: 1 }],
  ['14th to 19th of july', { durationH: 120, month: 7 }],
  ['from the 3rd to the 7th', { durationH: 96 }],
  ['3-7 march', { durationH: 96, month: 3 }],
  ['7/28 to 7/31', { durationH: 72, month: 7 }],
  // the middle month of the season, by the hemisphere
  ['200W panel in winter', { solar: [{ powerW: 200 }], month: 7 }],
  ['200W panel near Inverness in winter', { solar: [{ powerW: 200 }], place: 'Inverness', month: 1 }],
  ['200W panel at Hobart in autumn', { solar: [{ powerW: 200 }], place: 'Hobart', month: 4 }],
  ['200W panel in Denver in fall', { solar: [{ powerW: 200 }], place: 'Denver', month: 10 }],
  ['we drive 4 hrs, camp 3 days', { drivingHoursPerDay: 4, drivingPlanH: [4, 0, 0, 0], durationH: 72 }],
  ['will it last 30 hrs', { durationH: 30 }],
  ['4 days, drive 2h each', { durationH: 96, drivingHoursPerDay: 2 }],
  ['arrive friday 5pm leave sunday 11am', { durationH: 42, startHour: 17 }],
  ['from fri 6pm to mon 9am', { durationH: 63, startHour: 18 }],
  ['friday 18:00 till sunday 12:00', { durationH: 42, startHour: 18 }],
  ['thursday noon to saturday noon', { durationH: 48, startHour: 12 }],
  // the message is written on Friday at nine
  ['good till sunday noon?', { durationH: 51 }],
  ['will it last until monday morning', { durationH: 72 }],
  [
    'fri drive 3h, sat sun parked, mon drive 2h',
    { drivingPlanH: [3, 0, 0, 2], durationH: 96, startWeekday: 5 },
  ],
  [
    'monday we drive 4 hours, tuesday to thursday no driving, friday 4h driving',
    { drivingPlanH: [4, 0, 0, 0, 4], durationH: 120 },
  ],
  ['3 days, 2 hours of driving a day', { durationH: 72, drivingHoursPerDay: 2 }],
  ['3 days camped, no driving', { durationH: 72, without: ['driving'] }],
  ['5 days no sun', { durationH: 120, without: ['solar'] }],
  ['2 days with no charging at all', { durationH: 48, without: ['charging'] }],
  ['4 days, the last two days overcast', { durationH: 96, sky: 'overcast', skyLastDays: 2 }],
  ['if the last day is cloudy', { sky: 'overcast', skyLastDays: 1 }],
  ['its 35 degrees out', { ambientC: 35 }],
  ['95F', { ambientC: 35 }],
  ['at -5c', { ambientC: -5 }],
  ['minus 5 degrees', { ambientC: -5 }],
  ['30°C', { ambientC: 30 }],
  ['in march near kalgoorlie', { month: 3, place: 'Kalgoorlie' }],
  ['round dubbo, late august', { month: 8, place: 'Dubbo' }],
  ['camped at byron bay in jan', { month: 1, place: 'Byron Bay' }],
  ['in scotland in sept', { month: 9, place: 'Scotland' }],
  ['new zealand, february', { month: 2, place: 'New Zealand' }],
];

describe('days, weather and places', () => {
  test.for(rows)('%s', ([text, want]) => {
    const got = facts(text) as Record<string, unknown>;
    expect(Object.fromEntries(Object.keys(want).map(key => [key, got[key]]))).toEqual(want);
  });

  test.for([
    'we may need a hand',
    'march over here',
    'the sun is out',
    'we sat around the fire',
    'see you at 6',
    '3 beers each',
  ])('%s: says nothing of days or months', text => {
    const { month, durationH, place } = facts(text) as Record<string, unknown>;
    expect({ month, durationH, place }).toEqual({});
  });
});
