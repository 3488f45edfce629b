import { table } from '../table.ts';

export type Role = 'house' | 'starter';

/** Where a battery sits, said before it: it may tell what the battery is for. */
export const placesBefore = table<Role>({
  back: 'house', rear: 'house', caravan: 'house', caravans: 'house',
  car: 'starter', cars: 'starter', ute: 'starter', utes: 'starter', truck: 'starter', trucks: 'starter',
});

/** The same said after it, behind "in", "at" or "up". */
export const placesAfter = table<Role>({ back: 'house', rear: 'house', boot: 'house', front: 'starter' });
