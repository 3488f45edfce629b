import { readingSigns } from '#language/decide/certainty.ts';
import { decide } from '#language/decide/decide.ts';
import { finish } from '#language/decide/finish.ts';
import { apart, headOf, type Model } from '#language/decide/model.ts';
import { mostRanked, rankFeatures } from '#language/decide/rank.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { compare } from './compare.ts';
import type { Ranking } from './fit-rank.ts';
import type { Group } from './groups.ts';
import { contextOf } from './train.ts';

/** The likeliest readings of groups by a model that has not seen them, held against their labels. */
export function rankingsOf(groups: readonly Group[], model: Model, firstGroup: number): Ranking[] {
  return groups.flatMap((group, n) => {
    if (group.isPartial) return [];
    const context = contextOf(group, model);
    return group.wordings.map(text => {
      const recognised = recognise(text);
      const { frame, options, hazards } = decide(model, recognised.mentions, context, text);
      const danger = [...hazards.values()].reduce((a, b) => a + b, 0);
      return {
        group: firstGroup + n,
        options: options.slice(0, mostRanked).map(option => {
          const features: number[] = [];
          rankFeatures(frame, option.state, option.stated, option.intent, features);
          const { missing, extra } = compare(finish(recognised, option, context), group.states);
          const asked = apart(
            model.message,
            option.units,
            headOf(model, 'intents'),
            model.intentNames.indexOf(option.intent),
          );
          return {
            features: Int32Array.from(features),
            roles: option.roles,
            question: option.question,
            signs: readingSigns(frame, option.state, Math.exp(option.question), danger, asked),
            isRight: missing.length + extra.length === 0 && group.intent.includes(option.intent),
          };
        }),
      };
    });
  });
}
