import { isSpoken } from '#basics/spoken.ts';

// "Is that right?", "true or rubbish?": words that ask whether what stands beside them is so, and say nothing of it.

const phrases: readonly (readonly string[])[] =
  `is it true that,is it true,is it right that,is it a myth that,is it just a myth that,is it a fact that,is it still true that,is it really true that,is it really true,is it correct that,am i right that,am i right,am i wrong,
is that true,is this true,is that right,is this right,is that so,is that correct,is that actually true,is that really true,is that still true,is that still right,is that still a thing,is that a myth,is that just a myth,is that a thing,is that rubbish,is that a load of rubbish,is that bull,is that nonsense,is that legit,is that fair,is that a fact,is there anything in it,is there anything in that,
is he right,is she right,are they right,is he wrong,is she wrong,are they wrong,is he correct,is she correct,is he dreaming,is she dreaming,is he having me on,is he pulling my leg,is he having a lend,is he talking rubbish,is she talking rubbish,is he full of it,is he on the money,is he onto something,was he right,was she right,does he know what hes talking about,
true or false,true or rubbish,true or not,true or bull,true or bulldust,true or a myth,true or myth,true or nonsense,true or wrong,fact or myth,myth or fact,fact or fiction,fact or rubbish,myth or true,myth or truth,right or wrong,right or rubbish,right or not,rubbish or not,rubbish or true,rubbish or right,bull or true,yes or no,
any truth in that,any truth to that,any truth in it,any truth to it,is there any truth in it,is there any truth to it,is there any truth in that,is there any truth to that,is there truth in that,
or is that rubbish,or is that a myth,or is that wrong,or is he wrong,or is she wrong,or is he dreaming,or is it a myth,or is it rubbish,or is that nonsense,or is that just talk,or am i wrong,or not true,can that be right,can that be true,that cant be right,that cant be right can it,surely not,that right,that true,fair dinkum,what do you say,what do you reckon,whos right,who is right,whose right,so whos right,so who is right,who wins,settle it,settle this,settle that,
isnt that right,isnt that so,isnt that true,isnt it true that,isnt it true`
    .split(/,\n?/)
    .map(phrase => phrase.trim().split(' '))
    .sort((a, b) => b.length - a.length);
/** The phrases by the word that they open with, longest first. */
const openedBy = Map.groupBy(phrases, ([first]) => first);

/** Words that ask so where a message ends in them. */
const last: ReadonlySet<string> = new Set(
  'true right correct rubbish myth fact really seriously thoughts yeah yes aye'.split(' '),
);

/** Behind a claim these only ask for a nod: no word of it denies. */
const tags: ReadonlySet<string> = new Set(
  `doesnt it,dont they,isnt it,arent they,wont it,cant you,dont you,dont it,cant it,dont we,shouldnt you,wouldnt it,aint it`.split(
    ',',
  ),
);

const isAt = (words: readonly string[], at: number, phrase: readonly string[]): boolean =>
  phrase.every((word, i) => words[at + i] === word);

const denying: ReadonlySet<string> = new Set('not isnt arent doesnt dont didnt cant wont never'.split(' '));
const reachOfIf = 3;
/** "If you don't run it down", "unless": a condition denies nothing of what is said on it. */
const isOnCondition = (words: readonly string[], at: number): boolean =>
  denying.has(words[at] ?? '') && words.slice(Math.max(0, at - reachOfIf), at).includes('if');

/** The words with those blanked that only ask whether the rest is so, or set a condition, and whether any ask. */
export function withoutAsking(words: readonly string[]): {
  readonly rest: readonly string[];
  readonly isAsking: boolean;
} {
  const rest = [...words];
  for (const [at] of words.entries()) {
    const phrase = openedBy.get(rest[at])?.find(one => isAt(rest, at, one));
    if (phrase) rest.fill('', at, at + phrase.length);
  }
  const end = rest.findLastIndex(word => isSpoken(word) && word !== 'bot');
  if (words.includes('?') && end > 0 && last.has(rest[end] ?? '') && !isSpoken(rest[end - 1] ?? ''))
    rest[end] = '';
  const isAsking = rest.some((word, at) => word !== words[at]);
  if (end > 1 && tags.has(rest.slice(end - 1, end + 1).join(' '))) rest.fill('', end - 1, end + 1);
  return { rest: rest.map((word, at) => (isOnCondition(rest, at) ? '' : word)), isAsking };
}
