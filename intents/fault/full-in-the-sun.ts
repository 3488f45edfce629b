import { present } from '#basics/present.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { decimals, significant } from '#quantity/round.ts';
import { amountsOf } from '../figures-told.ts';
import type { WorkedBeside } from '../worked-beside.ts';

/** A battery that sun holds full reads so many volts (a block of 12) while it takes as good as nothing, A. Common practice. */
const held = { fromV: 13.4, toV: 14.9, amps: 0.3 } as const;

/** Volts of a full battery with next to no amps, both told; undefined otherwise. */
function heldWithoutAmps(mentions: readonly Mention[]) {
  const [volts, ...more] = amountsOf(mentions, 'voltage').flatMap(({ value }) =>
    value === 12 || value === 24 ? [] : [value],
  );
  const amps = amountsOf(mentions, 'current')[0]?.value;
  if (volts === undefined || amps === undefined || more.length > 0 || Math.abs(amps) > held.amps)
    return undefined;
  const one = volts / Math.max(1, Math.round(volts / 13.8));
  return one >= held.fromV && one <= held.toV ? { volts, amps } : undefined;
}

/** A controller that reads a full battery's volts and no amps in the sun: full comes first, and how to see it. */
export const fullInTheSun: WorkedBeside = {
  name: 'full-in-the-sun',
  spots: [
    'solar|panel|panels|mppt|pwm|controller|regulator|reg sun|sunny|sunshine|noon|midday|daylight|blue_sky|clear_sky|lunchtime normal|wrong|ok|okay|right|broke|broken|bust|busted|bad|fault|faulty|dead|stuffed|problem|working|fine|why|cooked|died|cactus -series -shade -shaded -float -was -then -fridge -load -lights',
  ],
  when: ({ recognised: { mentions } }) => heldWithoutAmps(mentions) !== undefined,
  takes: [],
  reply: (_facts, { parsed: { recognised } }) => {
    const { volts, amps } = present(heldWithoutAmps(recognised.mentions));
    return {
      headline: `Most likely full, not broken: at ${significant(volts, 3)} V in the sun with ${decimals(amps, 1)} A it takes nothing more.`,
      lines: [
        'Try it: switch a fridge or lights on. The amps must rise at once.',
        'They don’t? The controller’s battery side must read as the battery itself does: else the fuse or a lug between, then the panel’s plug.',
      ],
      verdict: null,
      next: ['what is float?'],
    };
  },
};
