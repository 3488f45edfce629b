import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { recognise } from '#language/recognise/recognise.ts';

const matter = (text: string): string =>
  recognise(text)
    .mentions.map(m => (Number.isNaN(m.told) ? m.text : String(m.told)))
    .join(' ');

test.for([
  ['Hi all, fridge 2A on 100Ah', 'fridge 2A on 100Ah'],
  ['Sorry to bother you, but how long will 100Ah last? thanks mate', 'how long will 100Ah last?'],
  ['Good evening everyone, quick question. Is 6 mm² enough', 'Is 6 mm² enough'],
  ['Morning! 12.4 V on the AGM?', '12.4 V on the AGM?'],
  ['how many hours please', 'how many hours'],
  ['Hello there, if you have a moment: 3 days', '3 days'],
])('"%s" is about "%s"', ([said, meant]) => {
  expect(matter(present(said))).toBe(matter(present(meant)));
});

test.for(['thanks', 'cheers all', 'hi', 'please', 'Good morning everyone!'])(
  '"%s" alone is left whole',
  text => {
    expect(recognise(text).mentions.length).toBeGreaterThan(0);
  },
);

test.for([
  ['morning 12.4 V', 'morning'],
  ['-3 A', '-'],
  ['sorry, 1.6', 'sorry'],
])('"%s" keeps "%s"', ([text, word]) => {
  expect(recognise(present(text)).mentions.map(m => m.text)).toContain(word);
});
