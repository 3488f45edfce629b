import { lately } from '#basics/lately.ts';
import * as find from '#places/find.ts';

// A message asks after its place a dozen times, and each time the table of the world is searched.

/** The likeliest place of a name; undefined where there is none. */
export const placeLately = lately(find.placeByName);

/** Whether a name stands in other countries too, or in other states of the same one. */
export const namesakes = lately(find.namesakes);
