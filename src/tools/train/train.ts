import type { Stated } from '#language/decide/assemble.ts';
import { decide } from '#language/decide/decide.ts';
import { frameOf, type TalkContext } from '#language/decide/frame.ts';
import { firstQuestions, meaningFeatures, messageFeatures } from '#language/decide/message.ts';
import type { Model, Net } from '#language/decide/model.ts';
import { planFeatures, planOutcomes } from '#language/decide/plan-features.ts';
import * as slot from '#language/propose/slots.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { type HazardCode, hazardCodes } from '#rig/hazard-codes.ts';
import { choicesOf, suppliesOf, type Wording, wordingsOf } from './dataset.ts';
import { fitHeads } from './fit-heads.ts';
import { fitSlots } from './fit-slots.ts';
import type { Group } from './groups.ts';
import type { Example, FitOptions } from './lessons.ts';
import { talkBefore } from './talk.ts';

export interface TrainOptions {
  readonly slots: FitOptions;
  readonly message: FitOptions;
  readonly folds: number;
}

export const usual: TrainOptions = {
  slots: {
    units: 24,
    epochs: 3,
    after: 3,
    rate: 0.03,
    l2: 1e-5,
    drop: 0.4,
    least: 6,
    keep: 19000,
    leastOwner: 5,
    keepOwners: 12000,
    dropOwner: 0.3,
    seed: 7,
    members: 2,
  },
  message: {
    units: 48,
    epochs: 3,
    after: 3,
    rate: 0.03,
    l2: 1e-5,
    drop: 0.5,
    least: 4,
    keep: 40000,
    leastOwner: 4,
    keepOwners: 0,
    dropOwner: 0,
    seed: 8,
    members: 2,
  },
  folds: 3,
};

const tick = (() => {
  let last = Date.now();
  return (what: string): void => {
    if (process.env.VERBOSE) console.error(`${what}: ${((Date.now() - last) / 1000).toFixed(1)} s`);
    last = Date.now();
  };
})();

/** Dangers are rare: each counts for more than a harmless message. */
export const dangerWeight = 2;

/** What a wording teaches of itself as a whole, by its words alone and by what they state. */
function examplesOf(w: Wording, names: readonly string[], model: Model | undefined): readonly Example[] {
  const gold = w.group.intent.map(name => names.indexOf(name));
  const code = w.group.danger ? hazardCodes.indexOf(w.group.danger as HazardCode) : hazardCodes.length;
  const danger = { head: 2, gold: [code], weight: w.group.danger ? dangerWeight : 1 };
  const group = w.groupIndex;
  const first: Example = {
    features: messageFeatures(w.frame, {}, w.meanings),
    group,
    lessons: [{ head: 0, gold }],
  };
  if (!w.group.isPartial)
    return [
      first,
      {
        features: messageFeatures(w.frame, w.group.states as Stated, w.meanings),
        group,
        lessons: [{ head: 1, gold }, danger],
      },
    ];
  // What a partial label leaves out is read by the first round; of dangers it tells nothing.
  if (!model) return [first];
  const { stated } = decide(model, w.frame.mentions, w.context, w.text).options[0]!;
  return [
    first,
    {
      features: messageFeatures(w.frame, stated, w.meanings),
      group,
      lessons: [{ head: 1, gold, weight: 0.7 }],
    },
  ];
}

/** A model of which only the message's net is known yet. */
const bare = (message: Net, names: readonly string[]): Model => ({
  message,
  slots: message,
  supply: message,
  plans: message,
  owners: message.features,
  certainty: usualCertainty,
  intentNames: names,
  hazardNames: hazardCodes,
});

/** Which questions words alone point to, from nets that have not seen the group: what the roles learn with is what they will meet. */
function crossed(
  words: readonly Wording[],
  firsts: readonly Example[],
  names: readonly string[],
  o: TrainOptions,
): Wording[] {
  const heads = [names.length, names.length, hazardCodes.length + 1];
  const quick = { ...o.message, units: 24, keep: 20_000, after: 2, members: 1 };
  const nets = Array.from({ length: o.folds }, (_, k) =>
    fitHeads(
      firsts.filter(e => e.group % o.folds !== k),
      heads,
      quick,
    ),
  );
  return words.map(w => ({
    ...w,
    frame: {
      ...w.frame,
      questions: firstQuestions(bare(nets[w.groupIndex % o.folds]!, names), w.frame, w.meanings),
    },
  }));
}

function planNet(words: readonly Wording[], o: TrainOptions): Net {
  const examples = words.flatMap((w): Example[] => {
    if (!w.plan || w.group.isPartial || (w.group.states.days && w.planGold[0] === 0)) return [];
    const features: number[] = [];
    planFeatures(w.frame, w.plan, features);
    return [{ features, group: w.groupIndex, lessons: [{ head: 0, gold: w.planGold }] }];
  });
  return fitHeads(examples, [planOutcomes.length], {
    ...o.message,
    units: 6,
    least: 4,
    keep: 600,
    drop: 0.2,
    members: 1,
  });
}

const mostOfFirst = 2;
const isOfFirst = ({ group, text }: Wording): boolean => group.wordings.indexOf(text) < mostOfFirst;

/** Fits everything to labelled groups: twice, as the talk before a message is read by what the first round learned. */
export function train(groups: readonly Group[], o: TrainOptions = usual): Model {
  const names = [...new Set(groups.flatMap(g => g.intent))].sort();
  const heads = [names.length, names.length, hazardCodes.length + 1];
  const blank = wordingsOf(groups, () => ({}));
  tick(`${blank.length} wordings`);
  let words: Wording[] = blank;
  let model: Model | undefined;
  for (const round of [1, 2]) {
    const members = round === 1 ? 1 : o.slots.members;
    if (model) words = withTalk(blank, model);
    // The first round is for reading the talk before: two wordings of a meaning do for that.
    const some = round === 1 ? words.filter(isOfFirst) : words;
    const examples = some.map(w => examplesOf(w, names, model));
    const met = crossed(
      some,
      examples.map(([first]) => first!),
      names,
      o,
    );
    tick(`round ${round}: questions by words`);
    const { net, owners } = fitSlots(
      met.flatMap(w => choicesOf(w)),
      slot.slots.length,
      { ...o.slots, members },
    );
    tick('roles');
    const message = fitHeads(examples.flat(), heads, { ...o.message, members });
    tick('questions and dangers');
    const supply = fitHeads(
      met.flatMap(w => suppliesOf(w)),
      [2],
      { ...o.message, units: 6, keep: 700, drop: 0.2, members: 1 },
    );
    model = {
      certainty: usualCertainty,
      slots: net,
      owners,
      supply,
      plans: planNet(met, o),
      message,
      hazardNames: hazardCodes,
      intentNames: names,
    };
  }
  return model!;
}

/** Before it is fitted: the share alone. */
const usualCertainty: readonly number[] = [0, 0, 1];

/** The same wordings with the talk before them, as a model reads it. */
export function withTalk(words: readonly Wording[], model: Model): Wording[] {
  const contexts = new Map<Group, TalkContext>();
  return words.map(w => {
    let context = contexts.get(w.group);
    if (!context) {
      context = contextOf(w.group, model);
      contexts.set(w.group, context);
    }
    const frame = frameOf(w.frame.mentions, context);
    // What a turn may lean on comes from the talk: the label is held against the message anew.
    if (frame.lean !== 'whole' || frame.awaits.length > 0)
      return wordingsOf([{ ...w.group, wordings: [w.text] }], () => context!).map(x => ({
        ...x,
        groupIndex: w.groupIndex,
        group: w.group,
      }))[0]!;
    return {
      ...w,
      context,
      frame,
      meanings: meaningFeatures(w.text, context.meant),
    };
  });
}

export const contextOf = (group: Group, model: Model): TalkContext =>
  talkBefore(group, (text, context) => {
    const [best] = decide(model, recognise(text).mentions, context, text).options;
    return { intent: best!.intent, stated: best!.stated };
  });
