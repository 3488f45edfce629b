import { examplesOf, subjects } from '#conversation/subjects.ts';
import type { Content } from '#telegram/delivery/again/place.ts';
import { buttonsOf } from './buttons.ts';
import { say } from './say.ts';
import { labels } from './words.ts';

/** The index of the list of all subjects. */
export const allSubjects = 99;

/** What the pages are asked by, in the order of their index in a button. */
export const pages = ['help', 'privacy'] as const;
export type Page = (typeof pages)[number];

type Words = Pick<Content, 'said' | 'buttons'>;

/** Two in a row fit a phone. */
const inPairs = <T>(all: readonly T[]): T[][] =>
  Array.from({ length: Math.ceil(all.length / 2) }, (_, row) => all.slice(row * 2, row * 2 + 2));

/** Help that fits a phone: what it does, one example, how to ask here, and a button a subject. */
export function helpPage(kind: 'private' | 'group', asker: number): Words {
  const said = say(
    [
      'I work out camping power. Write it short, with the numbers you have:',
      '• fridge 1.2A, 100Ah, 3 days?',
      '• my rig: 100Ah AGM, fridge 1.2A, 160W solar',
      'Then “what if lithium?”, “make it 5 days” or “show the working”.',
      kind === 'group'
        ? 'In a group start with /power, or reply to me.'
        : 'Tell me your rig once and I use it from then on.',
      'Examples by subject:',
    ].join('\n'),
  );
  const button = buttonsOf(said.text, asker);
  const keys = subjects.map(({ title }, index) => button('subject', title, index));
  return { said, buttons: { inline_keyboard: inPairs(keys) } };
}

/** Examples of one subject; undefined for one that this version doesn't have. */
export function subjectPage(index: number, asker: number): Words | undefined {
  const subject = subjects[index];
  if (subject === undefined) return undefined;
  const said = say([`${subject.title}:`, ...examplesOf(subject).map(line => `• ${line}`)].join('\n'));
  const back = buttonsOf(said.text, asker)('subject', labels.subjects, allSubjects);
  return { said, buttons: { inline_keyboard: [[back]] } };
}

const door = (shownText: string, page: Page) =>
  buttonsOf(shownText, 0)(
    'page',
    page === 'help' ? labels.showHelp : labels.showPrivacy,
    pages.indexOf(page),
  );

/** A button to the help, for what wasn't understood. */
export const helpDoor = (shownText: string): Words['buttons'] => ({
  inline_keyboard: [[door(shownText, 'help')]],
});

/** What everybody may see of a page that only its asker wants: a button, which shows it to whoever taps. */
export function doorTo(page: Page): Words {
  const said = say(
    page === 'help'
      ? 'I answer camping power questions: /power fridge 1.2A, 100Ah, 3 days?'
      : 'What I keep, why and for how long stands in my notice.',
  );
  return { said, buttons: { inline_keyboard: [[door(said.text, page)]] } };
}
