import type { Stated } from '#language/decide/assemble.ts';
import { dangerFeatures } from '#language/decide/dangers.ts';
import { frameOf } from '#language/decide/frame.ts';
import { meaningFeatures } from '#language/decide/message.ts';
import type { Model, Net } from '#language/decide/model.ts';
import { recognise } from '#language/recognise/recognise.ts';
import { type HazardCode, hazardCodes } from '#rig/hazard-codes.ts';
import { fitHeads } from './fit-heads.ts';
import type { Group } from './groups.ts';
import type { Example, FitOptions } from './lessons.ts';
import { contextOf, dangerWeight, usual } from './train.ts';

/** Of a meaning two wordings do. */
const mostWordings = 2;

const usualDangers: FitOptions = { ...usual.message, units: 24, drop: 0.4, seed: 9 };

/**
 * Fits the net that tells dangers by themselves, on all groups whose label is whole.
 * @param model reads the talk before each
 */
export function fitDangers(groups: readonly Group[], model: Model, o: FitOptions = usualDangers): Net {
  const whole = groups.filter(({ isPartial }) => !isPartial);
  const examples = whole.flatMap((group, n): Example[] => {
    const context = contextOf(group, model);
    const code = group.danger ? hazardCodes.indexOf(group.danger as HazardCode) : hazardCodes.length;
    const lessons = [{ head: 0, gold: [code], weight: group.danger ? dangerWeight : 1 }];
    return group.wordings.slice(0, mostWordings).map(text => {
      const features: number[] = [];
      const frame = frameOf(recognise(text).mentions, context);
      const meanings = meaningFeatures(text, context.meant);
      dangerFeatures(frame, group.states as Stated, text, meanings, features);
      return { features: [...new Set(features)], group: n, lessons };
    });
  });
  return fitHeads(examples, [hazardCodes.length + 1], o);
}
