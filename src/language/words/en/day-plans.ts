import { table } from '../table.ts';

/** Words by which people tell a trip day by day. */

/** Ordinals of days. */
export const ordinals = table({
  first: 1, second: 2, third: 3, fourth: 4, fifth: 5, sixth: 6, seventh: 7, eighth: 8, ninth: 9, tenth: 10,
});
/** What an ordinal counts where it means a day. */
export const dayNouns: ReadonlySet<string> = new Set(['day', 'days', 'evening', 'evenings', 'night', 'nights', 'one', 'morning', 'afternoon', 'arvo']);
export const dayWords: ReadonlySet<string> = new Set(['day', 'days', 'd', 'dag', 'tag', 'jour']);
export const lastWords: ReadonlySet<string> = new Set(['last', 'final']);
export const connectors: ReadonlySet<string> = new Set(['and', '&', '+', 'n', '/', 'plus', 'or', 'nor']);
export const rangeWords: ReadonlySet<string> = new Set(['-', 'to', 'till', 'til', 'until', 'through', 'thru', 'thro']);
/** Before a weekday: the trip's end, no day of the plan. */
export const endWords: ReadonlySet<string> = new Set(['till', 'til', 'until', 'by', 'before', 'since', 'last', 'this']);
export const turnWords: ReadonlySet<string> = new Set(['then', 'next', 'afterwards', 'after', 'thereafter', 'followed', 'following', 'finally']);
export const restWords: ReadonlySet<string> = new Set(['other', 'others', 'rest', 'remaining', 'otherwise']);
export const betweenWords: ReadonlySet<string> = new Set(['between', 'middle', 'inbetween']);
export const againWords: ReadonlySet<string> = new Set(['same', 'ditto', 'likewise', 'again', 'also', 'repeat', 'too', 'well']);

/** Being on the move. */
export const driveWords: ReadonlySet<string> = new Set([
  'drive', 'drv', 'drives', 'driving', 'drivin', 'drove', 'driven', 'road', 'wheel', 'motoring', 'travel', 'travelling', 'traveling', 'leg', 'ride', 'riding', 'transfer', 'engine', 'motor', 'cruise', 'cruising', 'steam', 'steaming', 'sail',
  'haul', 'push', 'car', 'vehicle', 'behind', 'climbs', 'trek', 'towing', 'tow', 'roll', 'rolling', 'diving', 'alternator', 'moving', 'move', 'bus',
]);
/** Staying where one is. */
export const stayWords: ReadonlySet<string> = new Set([
  'camp', 'camped', 'camping', 'parked', 'park', 'parkup', 'stay', 'stays', 'stayin', 'staying', 'rest', 'resting', 'stationary', 'stopped', 'idle', 'moored', 'anchored', 'anchor', 'sit', 'sits', 'sat', 'sitting', 'standing', 'stand', 'stood', 'layover',
  'lying', 'parking', 'nowhere', 'stir', 'hike', 'hiking', 'bide',
]);
/** None of what was told before. */
export const noneWords: ReadonlySet<string> = new Set(['none', 'nothing', 'nil', 'zero', 'zip', 'nada', 'nought', 'nowt', 'naught', 'no', 'not', 'off']);
/** Before what is not done. */
export const notWords: ReadonlySet<string> = new Set(['dont', 'doesnt', 'not', 'never', 'wont', 'isnt', 'arent', 'didnt', 'cant', 'aint', 'without', 'hardly']);
/** Emoji of the sky. */
export const skySigns = table({ '☀': 'sunny', '🌞': 'sunny', '☁': 'overcast', '🌧': 'overcast', '🌫': 'overcast', '⛅': 'mixed', '🌤': 'mixed', '🌥': 'mixed', '🌦': 'mixed' });

/** Small words between the parts of one sky: "bit of sun, bit of cloud". */
export const skyFillers: ReadonlySet<string> = new Set([
  'and',
  'n',
  'an',
  '&',
  '+',
  '/',
  'with',
  'some',
  'bit',
  'bits',
  'of',
  'a',
  'half',
  'part',
  'in',
  'out',
  'partly',
  'then',
  'some',
]);
/** Those that join two skies into a mixed one. */
export const skyJoins: ReadonlySet<string> = new Set([
  'and',
  'n',
  'an',
  '&',
  '+',
  '/',
  'with',
  'bit',
  'half',
  'out',
  'part',
]);
/** Hours one way. */
export const wayWords: ReadonlySet<string> = new Set(['back', 'home', 'there', 'out', 'up', 'down']);
/** What may follow hours told as a bare number. */
export const hourTails: ReadonlySet<string> = new Set([
  'back',
  'home',
  'again',
  'there',
  'only',
  'and',
  'on',
  'or',
  'returning',
  'the',
  'more',
  'down',
  'up',
]);
/** Words by which somebody is quoted, as in disputes. */
export const quotingWords: ReadonlySet<string> = new Set([
  'says',
  'say',
  'said',
  'reckons',
  'reckon',
  'thinks',
  'think',
  'claims',
  'insists',
  'swears',
  'bets',
  'argues',
]);
