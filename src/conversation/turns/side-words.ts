import { type Contest, choicesIn } from '#intents/contests.ts';

// The words by which people take a side without a number: a thing of the choice, else yes or no.

const phrases = (text: string): readonly string[] => text.split(/[,\n]/).map(one => one.trim());

const yes =
  phrases(`yes, yep, yeah, yup, ya, aye, easy, easily, easy as, too easy, does it easy, does it easily, no dramas, no problem, no probs, yeah no worries, yep no worries, easy no worries, no sweat,
sure, sure will, of course, course, course it will, of course it will, definitely, absolutely, for sure, piece of cake, walk in the park, be fine, itll be fine, it will be fine,
be right, itll be right, itll be ok, it will be right, shell be right, she will be right, fine, plenty, heaps, loads left, should do, should be fine, should be right, should be ok, will do,
it will, itll, itll last, itll do, itll make it, itll do it, itll cope, itll run, it can, it does, it should, itll manage, will last, will make it, its fine, its ok, it is, will run, bound to, goes all the way, with room to spare, with some left`);
const no =
  phrases(`no, nah, nope, na, no way, no chance, not a chance, no hope, not a hope, no hope in hell, fat chance, never, never ever, not ever, it wont, wont, it wont last, wont last, wont make it,
wont do it, wont run, it will not, doubt it, i doubt it, doubt that, dream on, dreaming, youre dreaming, shes dreaming, hes dreaming, dont think so, i dont think so, dont reckon, i dont reckon, not likely,
unlikely, as if, yeah nah, not happening, aint happening, it cant, cant, cant do it, not even close, nowhere near, nowhere near it, itll be flat, itll be dead, itll die, itll go flat, itll run out, itll be flat by then,
it doesnt, doesnt, it isnt, its not, it aint, isnt, not gonna, not going to, not gonna happen, not gonna last, not gonna make it, not enough, pull the other one, pigs might fly, in your dreams, forget about it`);
/** Said often, and no side in anything. */
const neither =
  phrases(`yeah right, yes please, no thanks, no thank you, no idea, no clue, no rush, no stress, sure thing, sure why not, fine by me, easy tiger, never mind, never again,
yeah thanks, fine thanks, no need, no kidding, yeah no idea, not sure, no offence`);
/** May stand around a side. */
const asides: ReadonlySet<string> = new Set(
  `bot mate bro bros haha ha hah lol pfft pff hmm well ok oh so honestly imo tbh guys man dude hey i id im ill we me reckon think say saying bet it that this thats is surely at all just
wrong youre you bots rubbish sorry but to through thru the a weekend whole all trip till until then by my from on tomorrow sunday monday friday saturday morning night long way`.split(
    /\s+/,
  ),
);

const rows: readonly (readonly [words: readonly string[], says: string | undefined])[] = [
  ...yes.map(one => [one.split(' '), 'yes'] as const),
  ...no.map(one => [one.split(' '), 'no'] as const),
  ...neither.map(one => [one.split(' '), undefined] as const),
].sort((a, b) => b[0].length - a[0].length);

/** "Yes" or "no" of words that say nothing else; the longest phrase at each place counts, the first one that takes a side wins. */
export function yesOrNo(words: readonly string[]): 'yes' | 'no' | undefined {
  const said = new Set<string | undefined>();
  for (let at = 0; at < words.length; ) {
    const row = rows.find(([phrase]) => phrase.every((word, i) => words[at + i] === word));
    if (row) said.add(row[1]);
    else if (!asides.has(words[at] ?? '')) return undefined;
    at += row?.[0].length ?? 1;
  }
  const [one, ...more] = said;
  return more.length === 0 && (one === 'yes' || one === 'no') ? one : undefined;
}

/** What may stand before the choice that somebody names: "I'd go the lithium", "has to be solar", "my money's on". */
const before: ReadonlySet<string> = new Set(
  `the a go going team has have to be its it is gotta id ill im i we say says reckon reckons think thinks def definitely defo for moneys money on my voting vote votes need want get take surely must
no nah nope yeah yes yep bot mate haha lol well ok oh so honestly imo tbh always still obviously clearly wrong youre you bots rubbish sorry but just would might`.split(
    /\s+/,
  ),
);
const denying: ReadonlySet<string> = new Set(['not', 'never', 'isnt', 'aint', 'wasnt']);
/** Behind a thing, these tell of it and choose nothing. */
const telling: ReadonlySet<string> = new Set(
  'died dead broke broken was were did got went cream here arrived came hat burn burnt in my mine our yours theirs his her hers has'.split(
    ' ',
  ),
);
const mostBehind = 4;

/** The one choice that some words are for; undefined where they name none or several, or tell of one. */
export function choiceIn(contest: Contest, words: readonly string[]): string | undefined {
  const [choice, ...more] = choicesIn(contest, words);
  if (choice === undefined || more.length > 0) return undefined;
  const at = words.findIndex(word => choicesIn(contest, [word]).length > 0);
  const last = words.findLastIndex(word => choicesIn(contest, [word]).length > 0);
  const behind = words.slice(last + 1);
  if (words.slice(0, at).some(word => denying.has(word))) return undefined;
  const isFor = words.slice(0, at).every(word => before.has(word));
  return isFor && behind.length <= mostBehind && !behind.some(word => telling.has(word)) ? choice : undefined;
}
