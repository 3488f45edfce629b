import type { PlainQuestion } from './plain-question.ts';

/** What people ask who have just bought their first van. Common practice; makers' sheets agree. */
export const vanQuestions: readonly PlainQuestion[] = [
  {
    name: 'leisure-or-car',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'leisure|leisure_battery|deep_cycle|auxiliary|house_battery car_battery|car_batteries|starter_battery|starter|cranking_battery|car_one|normal|ordinary|starting_battery difference|different|differ|differs|differently|vs|versus|compared|same -dcdc -isolator -charg* -agm -lithium -volts',
      'leisure|leisure_battery|deep_cycle|leisure_batteries different|special what|whats|makes|make|why -charg* -volts',
    ],
    says: 'How it’s built: a car battery gives a short big burst, a leisure one gives a little for hours.',
    lines: [
      'A car battery’s thin plates start the engine, then the alternator fills it: run down to half a few dozen times, it is done.',
      'A leisure (deep-cycle) battery’s thick plates stand that hundreds of times; lithium stands it thousands of times.',
    ],
    next: ['agm or lithium?', 'what battery do I need for a fridge?'],
  },
  {
    name: 'why-no-car-battery',
    isBeforeSums: true,
    hasAnyFigures: true,
    spots: [
      'why car_battery|starter_battery|cranking_battery|starting_battery|engine_battery cant|cannot|not|shouldnt|bad|wrong|no_good camper|campervan|van|leisure|camping|caravan|house|fridge|instead|camp -charg* -flat* -start_the -wont -lithium',
    ],
    says: 'It’s made for short big bursts: its thin plates wear out within months of being run down.',
    lines: [
      'A few dozen times down to half, and it is done. At a pinch use no more than a third of its label.',
      'A leisure (deep-cycle) battery has thicker plates, made to give a little for hours and be filled again.',
    ],
    next: ['agm or lithium?'],
  },
];
