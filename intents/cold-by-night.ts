import type { Facts } from '#rig/rig.ts';
import type { Aside } from './asides.ts';
import { cools } from './facts.ts';

/** Whether it is a thing that keeps cold that is asked after: what else is told by its hours. */
const isCold = ({ loads = [] }: Facts): boolean =>
  loads.length === 0 || loads.some(({ name }) => cools(name));

/**
 * A fridge that runs for a part of the day alone. Switched off it takes nothing, warms, and has that to make good: a
 * night of eight hours in mild air warms it by some 5 to 8 of the 20 degrees that drive heat into it, so about a tenth
 * of a day's use is saved. Common practice.
 */
export const coldByNight: readonly Aside[] = [
  {
    name: 'cold-off-by-day',
    spots: [
      'only|just run*|on|use|plug|have at_night|by_night|overnight|nights|in_the_night -enough -lights -long -what_size -solar -panel* -last -fan -heater -tv -telly -blanket -cpap -air*',
      'turn_off|turned_off|switch_off|off by_day|in_the_day|during_the_day|through_the_day|all_day -long -charge',
    ],
    when: isCold,
    hasAnyFigures: true,
    says: 'Cold on only at night, it takes perhaps two thirds, but what’s in it warms up by day.',
    lines: [
      'Milk and meat keep safely only at 5 °C or below: fine for drinks, or with ice packs frozen overnight.',
      'Do it the other way round where you can: on while the sun or the engine charges.',
    ],
    next: ['what does a fridge use a day?'],
  },
  {
    name: 'cold-off-by-night',
    spots: [
      'fridge|freezer|it|box off at_night|overnight|by_night|each_night|over_night|in_the_night|nights|nite|midnight|am|pm -how_long -what_size -solar -panel* -charger -inverter -lights -gas -heater -fan -telly -tv',
      'fridge|freezer|it turn|switch|switching|turning off night|nights|overnight|nite -how_long -what_size -solar -panel* -charger -inverter -lights -gas -heater -fan -telly -tv',
    ],
    when: isCold,
    hasAnyFigures: true,
    says: 'Off at night it saves only about a tenth: it warms up, and has that to catch up on.',
    lines: [
      'Left shut and full it stays cold enough for some hours; milk and meat keep safely only at 5 °C or below.',
      'Two or three degrees warmer, shade and air around it save as much.',
    ],
    next: ['what does a fridge use a day?'],
  },
];
