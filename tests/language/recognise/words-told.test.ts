import { describe, expect, test } from 'vitest';
import { recognise } from '#language/recognise/recognise.ts';

/** The classes of a kind that a message's words have. */
const classes = (text: string, kind: string): string[] =>
  recognise(text)
    .mentions.filter(m => m.kind === kind)
    .map(m => m.cls);

describe('facts told by words', () => {
  test.for<[text: string, kind: string, found: string[]]>([
    ['alt 140, fixed type', 'alternator', ['alternator', 'alternator?:fixed']],
    ['alt smart, agm 100', 'alternator', ['alternator', 'alternator?:smart']],
    ['a smart alternator', 'alternator', ['alternator:smart']],
    ['the old fridge', 'alternator', []],
    ['two batteries in parallel', 'arrangement', ['arrangement:parallel']],
    ['the pair linked together', 'arrangement', ['arrangement?:parallel']],
    ['two panels chained', 'arrangement', ['arrangement?:series']],
    ['joining the new one to the old', 'arrangement', ['arrangement?:parallel']],
    ['both on one busbar', 'arrangement', ['arrangement?:parallel']],
    ['4 of 12 V in ser', 'arrangement', ['arrangement?:series']],
    ['four par cans', 'arrangement', []],
    ['three uncharged days', 'without', ['without?:charging']],
    ['power cut again', 'without', ['without?:mains']],
    ['panel hung upright', 'mount', ['mount?:tilted']],
    ['panel under trees', 'shade', ['shade']],
    ['half shaded', 'shade', ['shade:half']],
    ['a birch shades it', 'shade', ['shade']],
    ['the oak shades half', 'shade', ['shade:half']],
    ['deep shade', 'shade', ['shade:heavy']],
    ['not shaded', 'shade', ['shade:none']],
    ['nothing tops it up', 'without', ['without?:charging']],
    ['engine never on', 'without', ['without?:driving']],
    ['no sun', 'without', ['without:solar']],
    ['nothing is charging', 'without', ['without:charging']],
    ['nobody drives', 'without', ['without:driving']],
    ['we are not starting the car', 'without', ['without:driving']],
    ['dont start the fridge', 'without', []],
    ['no proper hook-ups', 'without', ['without:mains']],
    ['no power at all', 'without', ['without?:mains']],
    ['cloud free and dry', 'sky', ['sky?:sunny']],
    ['lashing all day', 'sky', ['sky?:overcast']],
    ['clouds come and go', 'sky', ['sky?:mixed']],
    ['the dial says minus 3.9', 'number', ['num:minus']],
    ['the dial says 3.9', 'monitor', ['monitor']],
    ['a hundred of the sealed mat type', 'chemistry', ['chemistry:agm']],
    ['iron phosphate, 100', 'chemistry', ['chemistry:lfp']],
    ['the 110 with caps', 'chemistry', ['chemistry:flooded']],
  ])('%s', ([text, kind, found]) => {
    expect(classes(text, kind)).toEqual(found);
  });
});
