import { isSpoken } from '#basics/spoken.ts';
import { isSpotted } from '#intents/spotting.ts';
import type { Mention } from '#language/recognise/mention.ts';
import type { Stated } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';

// A short line after an answer that names nothing itself and asks for another side of it.

/**
 * What side is asked for: what a change has changed, how two people's answers differ, either of these ("by how much"),
 * what would do in place of what won't, how many goes there are in it, how panels stand to the sun.
 */
export type SideAsked = 'change' | 'rivals' | 'apart' | 'instead' | 'goes' | 'angle';

interface Row {
  readonly side: SideAsked;
  /** Patterns of `intents/spotting.ts`. */
  readonly spots: readonly string[];
  /** Words beside the fillers that may stand in it; absent: any, as people are named by names. */
  readonly words?: ReadonlySet<string>;
}

const wordsOf = (text: string): ReadonlySet<string> => new Set(text.split(/\s+/));

/** May stand in any of them. */
const fillers = wordsOf(
  `so ok okay well hm hmm right oh ah and but then now bot mate tho though just really actually roughly about even please yeah
the a an of it its that thats this is isnt are be do does did to for in on at us me i we you us my our`,
);

const rows: readonly Row[] = [
  {
    side: 'rivals',
    spots: [
      'which_of_us|which_of_them|who_of_us|which_one_of_us|whos|whose|who lasts|last|longer|longest|first|better|more|most|wins|ahead|further -right -wrong',
      'difference|gap between_us|between_them|between_ours|between_theirs|between_the_two|between_his|between_hers|between_mine|between_yours',
      'compare|compares mine|ours how|hows',
      'is|does mine|ours|his|hers|theirs longer|better|more|less than',
      'how_far ahead|behind',
      'how_much|how_many|by_how_much|much longer|more|better|less|shorter|worse mine|than|he|she|they|us|them|hers|his|theirs|yours -need -needs -want -left -cost -costs',
    ],
  },
  {
    side: 'apart',
    spots: [
      'by_how_much',
      'how_much longer|more|better|less|shorter|worse|further|difference',
      'gap what|whats',
    ],
    words: wordsOf('by how much longer more better less shorter worse further difference get what whats gap'),
  },
  {
    side: 'change',
    spots: [
      'change|changes|changed what|whats|how|does|did|will|would|much',
      'difference what|whats|how|does|did|is|big|much|make|makes|any|will|would|worth',
      'gain|gains|gained|lose|loses|lost|save|saves what|how_much|how_many|much',
      'longer|better|worse|more|less|shorter much -need',
      'how_many hours|days|ah|amp_hours more|less|extra|longer',
      'how_much extra',
      'compare|compares before how|hows',
      'what did_that|did_it do',
    ],
    words: wordsOf(
      `what whats how hows compare compares did much many big bigger any change changes changed difference different make makes made will would gain gains
gained lose loses lost save saves by longer shorter more less better worse extra get gets give gives worth hours days ah amp get
over before compared with from`,
    ),
  },
  {
    side: 'goes',
    spots: [
      'how_many of_those|of_these|of_them|of_that|times|goes|cups|cup|cuppas|brews|boils|meals|slices|rounds|runs|charges|coffees|teas|toasties|uses',
      'how_often can|could|before|till|until|do_it|do_that',
    ],
    words: wordsOf(
      `how many often those these them times time goes go cups cup cuppas brews boils meals slices rounds runs charges coffees teas
toasties uses would could can will get gets out before till until flatten flattens flat kill kills drain drains empty dead goes
battery one full charge from per each do it dies have run`,
    ),
  },
  {
    side: 'angle',
    spots: [
      'how_many_degrees should|do|does|from|off|up|is',
      'angle|tilt|slope|steep|steeply|direction|lean|angled|tilted what|whats|which|how|best|should|right -much -more',
      'face|facing|point|aim|pointing which|what|how|where|should|do|does|best|right|north|south -much -more',
    ],
    words: wordsOf(
      `what whats which how many best should off angle tilt slope steep steeply direction lean angled tilted face facing point pointing aim
way north south where right need needs have set put they them panel panels up must ideal would use want degrees there sun`,
    ),
  },
  {
    side: 'instead',
    spots: [
      'what|whats|which|how_thick|how_big|how_heavy use|need|get|buy|fit|want|right|correct|proper|size|instead|work|do|ok|one|then|go|be|good|enough|gauge|bought -much -next',
      'not what_is|whats',
      'cable|wire|gauge|fuse|inverter what|which',
    ],
    words: wordsOf(
      `what whats which how thick big heavy should would could can use need needs get buy fit want have right correct proper best
better size sized instead one ones work use go with must here else recommend suggest reckon good enough not bought got had
cable wire gauge fuse inverter`,
    ),
  },
];

const mostWords = 10;
/** Whether what was made of the words of a side is told by them: "what tilt?" tells none, "how many coffees?" no machine. */
function isNoNews(side: SideAsked, { loads = [], ...rest }: Stated): boolean {
  const others = Object.keys(rest);
  const isBare = loads.every(load => Object.keys(load).every(key => key === 'name' || key === 'supply'));
  return (
    isBare &&
    (loads.length === 0 || side === 'goes') &&
    others.every(key => key === 'mount' && side === 'angle')
  );
}

/** Which side of the answer before a short line asks for; undefined: none of these, or it names something itself. */
export function sideAskedIn(heard: Heard): SideAsked | undefined {
  const { facts, removed, corrects, claims } = heard;
  const words = heard.recognised.words.filter(isSpoken);
  const isTold = removed.length > 0 || corrects !== undefined || claims.length > 0;
  if (isTold || words.length === 0 || words.length > mostWords || words.includes('if')) return undefined;
  const isNumber = ({ kind, value, unit }: Mention): boolean =>
    kind === 'amount' || (kind === 'number' && (value !== 1 || unit !== undefined));
  // "Which one" counts nothing.
  const hasNumber = heard.recognised.mentions.some(isNumber);
  return rows.find(({ side, spots, words: own }) => {
    if (hasNumber || !isNoNews(side, facts)) return false;
    return (
      (own === undefined || words.every(word => fillers.has(word) || own.has(word))) &&
      isSpotted(heard.recognised.words, spots)
    );
  })?.side;
}

/** Words that ask what something told with them would change. */
const ofTold: readonly string[] = [
  'difference make|makes|does|would|did',
  'how_much|how_many|much more|less|longer|shorter|better|worse|extra if|with|when|on|at|than_before -need -needs -left',
];

/** "How much longer with lithium?", "does shade make a difference?": what the change that it tells itself would make. */
export const asksWhatItChanges = ({ facts, recognised: { words } }: Heard): boolean =>
  Object.keys(facts).length > 0 && isSpotted(words, ofTold);
