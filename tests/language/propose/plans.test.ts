import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { type PlanDay, planFeatures, planOf, planVariants } from '../../../src/language/propose/plans.ts';
import { recognise } from '../../../src/language/recognise/recognise.ts';

type Row = readonly [text: string, days: readonly PlanDay[]];

const told: readonly Row[] = [
  ['day 1 drive 5h, day 2 parked, day 3 drive 2h', [{ drivingH: 5 }, { drivingH: 0 }, { drivingH: 2 }]],
  ['d1 4h driving, d2 none, d3 1.5h', [{ drivingH: 4 }, { drivingH: 0 }, { drivingH: 1.5 }]],
  [
    'First day six hours on the road, second day nothing, third day half an hour to the shop.',
    [{ drivingH: 6 }, { drivingH: 0 }, { drivingH: 0.5 }],
  ],
  [
    'we drive 3 hours on day one and then sit still for two days, last day 3 hours home',
    [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 3 }],
  ],
  [
    'Days 1 to 3 overcast, day 4 sunny',
    [{ sky: 'overcast' }, { sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }],
  ],
  // Mains, what is told of all days, days joined by "or", hours without their unit, Sunday after Saturday.
  ['mon mains 8h, tue sunny, wed cloudy', [{ mainsH: 8 }, { sky: 'sunny' }, { sky: 'overcast' }]],
  ['fri 4h driving, none on sat or monday', [{ drivingH: 4 }, { drivingH: 0 }, {}, { drivingH: 0 }]],
  [
    '2 days with 3h driving each, then 3 days parked, sunny all along',
    [
      { drivingH: 3, sky: 'sunny' },
      { drivingH: 3, sky: 'sunny' },
      { drivingH: 0, sky: 'sunny' },
      { drivingH: 0, sky: 'sunny' },
      { drivingH: 0, sky: 'sunny' },
    ],
  ],
  ['Mon drive 5, Tue none, Wed drive 2', [{ drivingH: 5 }, { drivingH: 0 }, { drivingH: 2 }]],
  ['fri 4h driving, sat none, sun none', [{ drivingH: 4 }, { drivingH: 0 }, { drivingH: 0 }]],
  [
    '2 hours driving there, three days parked, 2 hours back. Will it stay above 50%?',
    [{ drivingH: 2 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 2 }],
  ],
  ['fri sat sun: sunny, sunny, cloudy', [{ sky: 'sunny' }, { sky: 'sunny' }, { sky: 'overcast' }]],
  [
    'Thu 2h driving, Fri and Sat no driving, Sun 2h driving',
    [{ drivingH: 2 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 2 }],
  ],
  [
    'an hour and a half of driving on monday, none on tuesday, 45 minutes on wednesday',
    [{ drivingH: 1.5 }, { drivingH: 0 }, { drivingH: 0.75 }],
  ],
  [
    'Tomorrow we drive 4 hours, the next day we stay put, then another 4 hours',
    [{ drivingH: 4 }, { drivingH: 0 }, { drivingH: 4 }],
  ],
  [
    'Two sunny days, then three overcast days. 100W panel.',
    [{ sky: 'sunny' }, { sky: 'sunny' }, { sky: 'overcast' }, { sky: 'overcast' }, { sky: 'overcast' }],
  ],
  [
    '5 days: 2 sunny, then overcast',
    [{ sky: 'sunny' }, { sky: 'sunny' }, { sky: 'overcast' }, { sky: 'overcast' }, { sky: 'overcast' }],
  ],
  [
    'generator 2h on the first and third day, none on the second',
    [{ generatorH: 2 }, { generatorH: 0 }, { generatorH: 2 }],
  ],
  [
    'drive 3h, parked two days, drive 3h back',
    [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 3 }],
  ],
  [
    'Saturday and Sunday we drive 2 hours each, Monday we rest',
    [{ drivingH: 2 }, { drivingH: 2 }, { drivingH: 0 }],
  ],
  ['Mon - 3 h drive, Tue - same, Wed - camp', [{ drivingH: 3 }, { drivingH: 3 }, { drivingH: 0 }]],
  [
    'day 1: 5h driving under cloud; day 2: parked, sunny; day 3: 2h driving, mixed',
    [
      { drivingH: 5, sky: 'overcast' },
      { drivingH: 0, sky: 'sunny' },
      { drivingH: 2, sky: 'mixed' },
    ],
  ],
  [
    '1) drive 6h\n2) camp, sunny\n3) camp, rain\n4) drive 2h',
    [{ drivingH: 6 }, { drivingH: 0, sky: 'sunny' }, { drivingH: 0, sky: 'overcast' }, { drivingH: 2 }],
  ],
  [
    "we've got rain wednesday and thursday but friday should be clear",
    [{ sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }],
  ],
  [
    'genny for an hour on each of days 2 and 3, drive 4h day 1',
    [{ drivingH: 4 }, { generatorH: 1 }, { generatorH: 1 }],
  ],
  [
    'Day one: 4.5 hours in the van. Day two: nothing. Day three: nothing. Day four: 4.5 hours.',
    [{ drivingH: 4.5 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 4.5 }],
  ],
  [
    'The first two days are sunny, after that it rains for three days',
    [{ sky: 'sunny' }, { sky: 'sunny' }, { sky: 'overcast' }, { sky: 'overcast' }, { sky: 'overcast' }],
  ],
  [
    'cloudy both days, we drive 2h the first and 1h the second',
    [
      { drivingH: 2, sky: 'overcast' },
      { drivingH: 1, sky: 'overcast' },
    ],
  ],
  [
    '3 h on saturday, 2 h on sunday, driving that is, and monday parked',
    [{ drivingH: 3 }, { drivingH: 2 }, { drivingH: 0 }],
  ],
  [
    'monday tuesday wednesday overcast thursday sunny',
    [{ sky: 'overcast' }, { sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }],
  ],
  ['Driving: day 1 5 h, day 2 0 h, day 3 4 h', [{ drivingH: 5 }, { drivingH: 0 }, { drivingH: 4 }]],
  [
    'Today sunny, tomorrow cloudy, the day after rain',
    [{ sky: 'sunny' }, { sky: 'overcast' }, { sky: 'overcast' }],
  ],
  ['tomorrow 3 h driving, sunny', [{ drivingH: 3, sky: 'sunny' }]],
  [
    'four days of camp. we drive 3h out on the first and 3h back on the last, no driving in between',
    [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 3 }],
  ],
  [
    'Sat: 2 hours behind the wheel, cloudy. Sun: none, sunny. Mon: 2 hours, mixed.',
    [
      { drivingH: 2, sky: 'overcast' },
      { drivingH: 0, sky: 'sunny' },
      { drivingH: 2, sky: 'mixed' },
    ],
  ],
  ['day 1 3 hours, day 2 5 hours driving, day 3 zero', [{ drivingH: 3 }, { drivingH: 5 }, { drivingH: 0 }]],
  [
    "We move camp on day 3 only, 2 hours; days 1, 2 and 4 we don't drive",
    [{ drivingH: 0 }, { drivingH: 0 }, { drivingH: 2 }, { drivingH: 0 }],
  ],
  [
    'day one three hours driving day two none day three two hours',
    [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 2 }],
  ],
  ['D1: 3h / D2: 0 / D3: 2h driving', [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 2 }]],
  ['six hours driving, then none, then four', [{ drivingH: 6 }, { drivingH: 0 }, { drivingH: 4 }]],
  ['3h drive fri. sat off. sun 2h drive.', [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 2 }]],
  ['driving 3h on day 1, 0h on day 2 and 2h on day 3', [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 2 }]],
  [
    "On the first day we drive for 3 hours, on the second we don't, and on the third it's 2 hours back",
    [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 2 }],
  ],
  [
    'Arrive after 5 hours driving, stay two days, 5 hours home',
    [{ drivingH: 5 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 5 }],
  ],
  ['2 hrs driving day 1, day 2 and 3 parked up', [{ drivingH: 2 }, { drivingH: 0 }, { drivingH: 0 }]],
  [
    'sunny tomorrow, overcast the day after, mixed on the third day',
    [{ sky: 'sunny' }, { sky: 'overcast' }, { sky: 'mixed' }],
  ],
  [
    "we're off friday, 3 hours up, back on sunday, 3 hours, saturday parked",
    [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 3 }],
  ],
  [
    'Drive 4 h on day 1 only, then three days without driving',
    [{ drivingH: 4 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 0 }],
  ],
  [
    "day 1 we drive 3h and it's sunny, day 2 same but cloudy, day 3 parked in the rain",
    [
      { drivingH: 3, sky: 'sunny' },
      { drivingH: 3, sky: 'overcast' },
      { drivingH: 0, sky: 'overcast' },
    ],
  ],
  ['Mon: 2h. Tue: 0. Wed: 3h. (driving)', [{ drivingH: 2 }, { drivingH: 0 }, { drivingH: 3 }]],
  [
    'a day of sun, two days of cloud, a day of sun',
    [{ sky: 'sunny' }, { sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }],
  ],
  [
    'One day sunny, the next overcast, and then mixed',
    [{ sky: 'sunny' }, { sky: 'overcast' }, { sky: 'mixed' }],
  ],
  ['genny: 1h mon, 2h tue, wed nothing', [{ generatorH: 1 }, { generatorH: 2 }, { generatorH: 0 }]],
  ['run the generator 2 hours on day 2 and 1 hour on day 4', [{}, { generatorH: 2 }, {}, { generatorH: 1 }]],
  [
    "first day 5 hours' drive, three days at camp, then 5 hours back",
    [{ drivingH: 5 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 5 }],
  ],
  [
    '1st day: sun, 2nd: clouds, 3rd: clouds, 4th: sun',
    [{ sky: 'sunny' }, { sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }],
  ],
  ['day 1 driving 2 h 30, day 2 driving 1 h 15 min', [{ drivingH: 2.5 }, { drivingH: 1.25 }]],
  ['Sunny on Saturday, Sunday cloudy', [{ sky: 'sunny' }, { sky: 'overcast' }]],
  ['Sunday sunny, Monday sunny, Tuesday pouring', [{ sky: 'sunny' }, { sky: 'sunny' }, { sky: 'overcast' }]],
  [
    'rain on day 1 and 2, sun on 3 and 4',
    [{ sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }, { sky: 'sunny' }],
  ],
  [
    'drive two hours on friday, stay saturday, drive two hours back on sunday',
    [{ drivingH: 2 }, { drivingH: 0 }, { drivingH: 2 }],
  ],
  [
    'two hours driving friday nothing saturday two hours sunday',
    [{ drivingH: 2 }, { drivingH: 0 }, { drivingH: 2 }],
  ],
  [
    'Day 1 – 4 hrs driving; Days 2, 3 – at camp; Day 4 – 4 hrs driving',
    [{ drivingH: 4 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 4 }],
  ],
  ['4 days, driving 3h on the first and the last', [{ drivingH: 3 }, {}, {}, { drivingH: 3 }]],
  [
    'drive 3h first day, 2h second, none third and fourth',
    [{ drivingH: 3 }, { drivingH: 2 }, { drivingH: 0 }, { drivingH: 0 }],
  ],
  [
    'On day two the genny gets 3 hours, other days nothing, four days in all',
    [{ generatorH: 0 }, { generatorH: 3 }, { generatorH: 0 }, { generatorH: 0 }],
  ],
  [
    'parked the first three days, then 2h driving on the fourth',
    [{ drivingH: 0 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 2 }],
  ],
  [
    '3 hours there on friday and 3 hours back on sunday, nothing in between',
    [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 3 }],
  ],
  [
    'Friday 5h driving overcast, Saturday and Sunday no driving sunny, Monday 5h driving mixed',
    [
      { drivingH: 5, sky: 'overcast' },
      { drivingH: 0, sky: 'sunny' },
      { drivingH: 0, sky: 'sunny' },
      { drivingH: 5, sky: 'mixed' },
    ],
  ],
  [
    "first day's driving is 4h, second day's is 1h, third day we're stopped",
    [{ drivingH: 4 }, { drivingH: 1 }, { drivingH: 0 }],
  ],
  [
    'sun sun cloud cloud sun is the forecast',
    [{ sky: 'sunny' }, { sky: 'sunny' }, { sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }],
  ],
  ['two overcast days then a sunny one', [{ sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }]],
  ['2 days overcast, third sunny', [{ sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }]],
  ['cloudy for two days then sun', [{ sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }]],
  ["it's sunny, then two days of rain", [{ sky: 'sunny' }, { sky: 'overcast' }, { sky: 'overcast' }]],
  ['no driving for 2 days then 3 hours home', [{ drivingH: 0 }, { drivingH: 0 }, { drivingH: 3 }]],
  ['4h, nothing, 2h driving', [{ drivingH: 4 }, { drivingH: 0 }, { drivingH: 2 }]],
  ['three days: sun, cloud, sun', [{ sky: 'sunny' }, { sky: 'overcast' }, { sky: 'sunny' }]],
  ['weather: day 1 ☀️ day 2 ☁️ day 3 ⛅', [{ sky: 'sunny' }, { sky: 'overcast' }, { sky: 'mixed' }]],
  ['one day of driving, 5 hours, then 2 days of rest', [{ drivingH: 5 }, { drivingH: 0 }, { drivingH: 0 }]],
  [
    'a 3 hour drive tomorrow, then two days parked, then a 3 hour drive home',
    [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 3 }],
  ],
  [
    'drive 3 hours Monday and again 3 hours Thursday, between that we stay',
    [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 3 }],
  ],
  ['3h drive on the Friday, 3h on the Sunday', [{ drivingH: 3 }, {}, { drivingH: 3 }]],
  [
    'Saturday will be grey and Sunday as well, Monday the sun comes out',
    [{ sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }],
  ],
  [
    'day 1: overcast, driving 2h. day 2: overcast, driving 2h. day 3: sunny, parked.',
    [
      { sky: 'overcast', drivingH: 2 },
      { sky: 'overcast', drivingH: 2 },
      { sky: 'sunny', drivingH: 0 },
    ],
  ],
  ['on the second day only, 2 hours of generator; three days in all', [{}, { generatorH: 2 }, {}]],
  [
    'drive 5h Mon; Tue-Thu parked; Fri drive 5h',
    [{ drivingH: 5 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 5 }],
  ],
  [
    'mon to wed sunny, thu and fri overcast',
    [{ sky: 'sunny' }, { sky: 'sunny' }, { sky: 'sunny' }, { sky: 'overcast' }, { sky: 'overcast' }],
  ],
  ['driving: 4h / 0h / 2h', [{ drivingH: 4 }, { drivingH: 0 }, { drivingH: 2 }]],
  [
    'day one five hours day two zero day three zero day four five hours driving',
    [{ drivingH: 5 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 5 }],
  ],
  [
    'Day 1 and 4: 3 hours driving each. Days 2 & 3: none.',
    [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 3 }],
  ],
  [
    "We're driving an hour Friday, an hour and a half Saturday and half an hour Sunday.",
    [{ drivingH: 1 }, { drivingH: 1.5 }, { drivingH: 0.5 }],
  ],
  ['first day 4 hours, second 4, third 2, all driving', [{ drivingH: 4 }, { drivingH: 4 }, { drivingH: 2 }]],
  [
    "for the first two days it's cloudy, the third is sunny",
    [{ sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }],
  ],
  ['overcast, then overcast, then sunny', [{ sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }]],
  ['overcast overcast sunny', [{ sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }]],
  [
    'forecast: overcast tomorrow, overcast wednesday, sunny thursday',
    [{ sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }],
  ],
  ['drive 3 h, rest a day, drive 2 h', [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 2 }]],
  ['3 days: drive 3h, none, drive 2h', [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 2 }]],
  [
    'three days; first 4 hours of driving, then nothing, then 4 hours',
    [{ drivingH: 4 }, { drivingH: 0 }, { drivingH: 4 }],
  ],
  [
    'Friday evening generator 2 h, Saturday evening 3 h, Sunday none',
    [{ generatorH: 2 }, { generatorH: 3 }, { generatorH: 0 }],
  ],
  [
    'we drive on day 1 for 5 hours and on day 3 for 2 hours, day 2 is a rest day',
    [{ drivingH: 5 }, { drivingH: 0 }, { drivingH: 2 }],
  ],
  [
    'first leg 5h on monday, second leg 2h on tuesday, wednesday off',
    [{ drivingH: 5 }, { drivingH: 2 }, { drivingH: 0 }],
  ],
  [
    'Day 1: driving (4 h), sunny. Day 2: no driving, cloudy. Day 3: driving (4 h), mixed.',
    [
      { drivingH: 4, sky: 'sunny' },
      { drivingH: 0, sky: 'overcast' },
      { drivingH: 4, sky: 'mixed' },
    ],
  ],
  ['4h driving today, 0 tomorrow, 4h the day after', [{ drivingH: 4 }, { drivingH: 0 }, { drivingH: 4 }]],
  [
    'Drive out 2h on day 1, camp days 2-3, drive back 2h on day 4, genny 1h on day 3',
    [{ drivingH: 2 }, { drivingH: 0 }, { drivingH: 0, generatorH: 1 }, { drivingH: 2 }],
  ],
  ['Wed n Thu raining, Fri sunny', [{ sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }]],
  ['day one: sunny; two: overcast; three: mixed', [{ sky: 'sunny' }, { sky: 'overcast' }, { sky: 'mixed' }]],
  ['Day1 3h driving, day2 no driving, day3 3h driving', [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 3 }]],
  [
    'the first day 2 hours, the second 3, the third nothing, and 100 Ah lithium with a 30 A DC-DC',
    [{ drivingH: 2 }, { drivingH: 3 }, { drivingH: 0 }],
  ],
  [
    "if day 1 is 3h at the wheel, days 2 and 3 we don't go anywhere and day 4 is 3h again",
    [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 3 }],
  ],
  [
    'we do 3 hours friday, nowt saturday, 3 hours back sunday',
    [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 3 }],
  ],
  [
    'cloud on friday and saturday, then sun on sunday and monday',
    [{ sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }, { sky: 'sunny' }],
  ],
  [
    'driving four hours the first day, two the second and none the third',
    [{ drivingH: 4 }, { drivingH: 2 }, { drivingH: 0 }],
  ],
  ['mon-wed parked, thu drive 6h', [{ drivingH: 0 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 6 }]],
  [
    'Drive 2 hours every other day, Monday to Friday',
    [{ drivingH: 2 }, { drivingH: 0 }, { drivingH: 2 }, { drivingH: 0 }, { drivingH: 2 }],
  ],
  [
    '5 hours driving then 3 days camped then 5 hours driving home',
    [{ drivingH: 5 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 5 }],
  ],
  [
    'it will be cloudy today and tomorrow and sunny after that',
    [{ sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }],
  ],
  [
    'Drive an hour and a half the first morning, nothing for two days, an hour and a half home',
    [{ drivingH: 1.5 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 1.5 }],
  ],
  [
    'day 1 drive 5h, day 2 stay at camp and run the genny 2h, day 3 drive 5h',
    [{ drivingH: 5 }, { drivingH: 0, generatorH: 2 }, { drivingH: 5 }],
  ],
  [
    'genny 2h and 1h driving on day 1, genny 1h on day 2',
    [{ drivingH: 1, generatorH: 2 }, { generatorH: 1 }],
  ],
  [
    'day 1: 4 h driving + 1 h generator, day 2: generator 2 h',
    [{ drivingH: 4, generatorH: 1 }, { generatorH: 2 }],
  ],
  [
    '4 days. Day 2 we drive 3 hours, the others none',
    [{ drivingH: 0 }, { drivingH: 3 }, { drivingH: 0 }, { drivingH: 0 }],
  ],
  ['we only drive on day 1 (2h) and day 5 (2h)', [{ drivingH: 2 }, {}, {}, {}, { drivingH: 2 }]],
  ['Driving only Monday 2h and Friday 3h', [{ drivingH: 2 }, {}, {}, {}, { drivingH: 3 }]],
  [
    'two days of driving, 4 hours each, then three parked',
    [{ drivingH: 4 }, { drivingH: 4 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 0 }],
  ],
  [
    'two days driving 4 hours a day then two days parked',
    [{ drivingH: 4 }, { drivingH: 4 }, { drivingH: 0 }, { drivingH: 0 }],
  ],
  [
    'first two days 3 hours of driving each, last two none',
    [{ drivingH: 3 }, { drivingH: 3 }, { drivingH: 0 }, { drivingH: 0 }],
  ],
  ['3 hours driving day 1, ditto day 2, none day 3', [{ drivingH: 3 }, { drivingH: 3 }, { drivingH: 0 }]],
  [
    'Wednesday 5 hours driving, same again Thursday, Friday nothing',
    [{ drivingH: 5 }, { drivingH: 5 }, { drivingH: 0 }],
  ],
  [
    'day one 2h drive and sunny, the second cloudy with no driving, the last 2h drive under clouds',
    [
      { drivingH: 2, sky: 'sunny' },
      { drivingH: 0, sky: 'overcast' },
      { drivingH: 2, sky: 'overcast' },
    ],
  ],
  [
    '3 sunny days then 2 cloudy ones, 120W panel',
    [{ sky: 'sunny' }, { sky: 'sunny' }, { sky: 'sunny' }, { sky: 'overcast' }, { sky: 'overcast' }],
  ],
  [
    'sun for 2 days followed by 3 days of cloud',
    [{ sky: 'sunny' }, { sky: 'sunny' }, { sky: 'overcast' }, { sky: 'overcast' }, { sky: 'overcast' }],
  ],
  [
    'it rains the whole first day, second day half sun half cloud, third full sun',
    [{ sky: 'overcast' }, { sky: 'mixed' }, { sky: 'sunny' }],
  ],
  [
    'drive 2h to the lake tomorrow, stay there Saturday and Sunday, 2h back Monday',
    [{ drivingH: 2 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 2 }],
  ],
  ['mon drv 2h tue drv 3h wed stay', [{ drivingH: 2 }, { drivingH: 3 }, { drivingH: 0 }]],
  [
    'moving days are monday and thursday, 3 h each. other days parked',
    [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 3 }],
  ],
  [
    'the generator: 3 h day one, off day two, 3 h day three',
    [{ generatorH: 3 }, { generatorH: 0 }, { generatorH: 3 }],
  ],
  ['Drive day 1: 3h, day 2: 3h, day 3: 0h', [{ drivingH: 3 }, { drivingH: 3 }, { drivingH: 0 }]],
  [
    '4h driving each on day 1 and 2, parked on 3 and 4',
    [{ drivingH: 4 }, { drivingH: 4 }, { drivingH: 0 }, { drivingH: 0 }],
  ],
  [
    'sunny sat, cloudy sun, 2h drive each day',
    [
      { sky: 'sunny', drivingH: 2 },
      { sky: 'overcast', drivingH: 2 },
    ],
  ],
  [
    "we'll drive 2.5 hours on Saturday and 2.5 on Sunday. Sunny both days.",
    [
      { drivingH: 2.5, sky: 'sunny' },
      { drivingH: 2.5, sky: 'sunny' },
    ],
  ],
  [
    'It is three days: on the first and the third we drive 2 hours, the second we remain in place',
    [{ drivingH: 2 }, {}, { drivingH: 2 }],
  ],
  ['three days of driving: 4 h, 3 h, 5 h', [{ drivingH: 4 }, { drivingH: 3 }, { drivingH: 5 }]],
  ['Day 1, 6 hours. Day 2, 2 hours. Day 3, no drive.', [{ drivingH: 6 }, { drivingH: 2 }, { drivingH: 0 }]],
  [
    'thursday and friday we get rain. saturday half cloudy. sunday sun.',
    [{ sky: 'overcast' }, { sky: 'overcast' }, { sky: 'mixed' }, { sky: 'sunny' }],
  ],
  [
    'gen for 2h tonight, none tomorrow, 2h the day after',
    [{ generatorH: 2 }, { generatorH: 0 }, { generatorH: 2 }],
  ],
  [
    'first two days raining, third day drive 4 hours in sun',
    [{ sky: 'overcast' }, { sky: 'overcast' }, { drivingH: 4, sky: 'sunny' }],
  ],
  ['day 1: 2 h. day 2: 3 h. day 3: 1 h. all driving.', [{ drivingH: 2 }, { drivingH: 3 }, { drivingH: 1 }]],
  ['no driving day 1, 2 hours day 2, no driving day 3', [{ drivingH: 0 }, { drivingH: 2 }, { drivingH: 0 }]],
  [
    'parked monday and tuesday, wednesday a 90 minute drive',
    [{ drivingH: 0 }, { drivingH: 0 }, { drivingH: 1.5 }],
  ],
  [
    'the weather goes sunny day, cloudy day, cloudy day, sunny day',
    [{ sky: 'sunny' }, { sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }],
  ],
  ["if it's grey tomorrow and sunny the day after", [{ sky: 'overcast' }, { sky: 'sunny' }]],
  [
    'We drive 3 hours tomorrow and 3 hours the day after tomorrow, then stay two days',
    [{ drivingH: 3 }, { drivingH: 3 }, { drivingH: 0 }, { drivingH: 0 }],
  ],
  [
    "day 1 sunny and we drive 1 hour; day 2 overcast and we drive 1 hour; day 3 overcast, we don't drive",
    [
      { sky: 'sunny', drivingH: 1 },
      { sky: 'overcast', drivingH: 1 },
      { sky: 'overcast', drivingH: 0 },
    ],
  ],
  [
    'Sat 2h driving (sunny), Sun 2h driving (rain)',
    [
      { drivingH: 2, sky: 'sunny' },
      { drivingH: 2, sky: 'overcast' },
    ],
  ],
];

/** Plans in words that the grammar does not reach yet: each is to move up once it does. */
const unreached: readonly Row[] = [
  [
    'driving hours: 3, 0, 0, 2 over four days',
    [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 2 }],
  ],
  [
    "there's sun for two days and then cloud for two",
    [{ sky: 'sunny' }, { sky: 'sunny' }, { sky: 'overcast' }, { sky: 'overcast' }],
  ],
  ['drive 1 hour on each of the three days', [{ drivingH: 1 }, { drivingH: 1 }, { drivingH: 1 }]],
  [
    'wet for the first 2 days then clearing up, sunny for the last 2',
    [{ sky: 'overcast' }, { sky: 'overcast' }, { sky: 'sunny' }, { sky: 'sunny' }],
  ],
  [
    '5 hours on day 1 and 5 on day 4, nothing on the days in between. DC-DC 30A',
    [{ drivingH: 5 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 5 }],
  ],
  ['Tonight and tomorrow night generator 2 hours each', [{ generatorH: 2 }, { generatorH: 2 }]],
  ['we are driving 6 on day one and 2 on day two', [{ drivingH: 6 }, { drivingH: 2 }]],
  [
    'no driving except day 3, when we go 2 hours; five days altogether',
    [{ drivingH: 0 }, { drivingH: 0 }, { drivingH: 2 }, { drivingH: 0 }, { drivingH: 0 }],
  ],
  [
    "3 hours' drive each on Friday and Monday, Saturday and Sunday at the site",
    [{ drivingH: 3 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 3 }],
  ],
  [
    "day 1 and day 3 the generator runs 2 hours, day 2 it doesn't",
    [{ generatorH: 2 }, { generatorH: 0 }, { generatorH: 2 }],
  ],
  [
    "We leave on Tuesday with 4 h on the road, then nothing until Friday when it's 4 h back",
    [{ drivingH: 4 }, { drivingH: 0 }, { drivingH: 0 }, { drivingH: 4 }],
  ],
  ['Day 1 drive 2h / day 2 drive 2h / day 3 off', [{ drivingH: 2 }, { drivingH: 2 }, { drivingH: 0 }]],
  [
    'Mon 3h, Tue 0h, Wed 2h driving. sky: sunny, overcast, mixed',
    [
      { drivingH: 3, sky: 'sunny' },
      { drivingH: 0, sky: 'overcast' },
      { drivingH: 2, sky: 'mixed' },
    ],
  ],
  [
    'one day driving 4h then three days put then one day driving 4h',
    [{ drivingH: 4 }, {}, {}, {}, { drivingH: 4 }],
  ],
];

/** Hours, skies and spans that are no plan day by day. */
const none: readonly string[] = [
  'we drive 2 h a day for 5 days',
  'fridge 2 A, lights 5 h a night, 4 days, overcast',
  'from friday 6pm to sunday noon, no driving, fridge 1.5A',
  'overcast for three days, how long does 100Ah last',
  'tv 2 hours on friday and 3 hours on saturday, how many Ah',
  'we stay 3 nights and drive 2 hours home, fridge 2A',
  'the kettle for 10 minutes on day 1 and day 2',
  '5 h drive there, 2 nights, 5 h drive back',
  'drive there 2h, drive back 2h, fridge 3A',
];

const planIn = (text: string) => planOf(recognise(text).mentions);

describe('day plans', () => {
  test.each(told)('%s', (text, days) => {
    const plan = planIn(text);
    expect(plan).toBeDefined();
    expect(planVariants(present(plan))).toContainEqual(days);
  });
  test.fails.each(unreached)('not yet: %s', (text, days) => {
    const plan = planIn(text);
    expect(plan).toBeDefined();
    expect(planVariants(present(plan))).toContainEqual(days);
  });
  test.each(none)('no plan: %s', text => {
    expect(planIn(text)).toBeUndefined();
  });
});

describe('what a plan takes of its message', () => {
  test("leaves a load's hours and the battery alone", () => {
    const { mentions } = recognise('lamp 5 W 4 h a night, day 1 drive 3 h, day 2 parked, 100 Ah lithium');
    const plan = present(planOf(mentions));
    const used = plan.used.map(i => present(mentions[i]));
    expect(used.some(m => m.kind === 'amount' && m.value === 4)).toBe(false);
    expect(used.some(m => m.kind === 'amount' && m.value === 3)).toBe(true);
    expect(used.some(m => m.unit === 'Ah' || m.unit === 'W')).toBe(false);
  });

  test('points at mentions of the message where it parts one in two', () => {
    const { mentions } = recognise('3 hrs driving fri, none sat, 4 hrs sun');
    const plan = present(planOf(mentions));
    expect(Math.max(...plan.used)).toBe(mentions.length - 1);
  });

  test('offers at most three variants, all different', () => {
    const plan = present(planIn('day 1 drive 3 h, day 2 camp, day 3 sunny'));
    const variants = planVariants(plan);
    expect(variants.length).toBeLessThanOrEqual(3);
    expect(new Set(variants.map(v => JSON.stringify(v))).size).toBe(variants.length);
    expect(variants).toContainEqual([{ drivingH: 3 }, {}, { sky: 'sunny' }]);
  });
});

describe('features of a plan', () => {
  const featuresOf = (text: string): string[] => {
    const { mentions } = recognise(text);
    return planFeatures(present(planOf(mentions)), mentions);
  };
  test('name its marks and what it tells', () => {
    const features = featuresOf('fri 3 h driving, sat none, sun 2 h driving');
    expect(features).toEqual(
      expect.arrayContaining([
        'days 3',
        'only by weekdays',
        'tells drivingH',
        'drivingH differs',
        'some carried over',
      ]),
    );
    expect(features).not.toContain('tells sky');
  });
  test('say where days are implied', () => {
    expect(featuresOf('forecast: sunny, overcast, mixed')).toContain('all days implied');
    expect(featuresOf('day 1 sunny, day 2 overcast')).not.toContain('all days implied');
  });
});
