import type { Reply } from '#answer/reply.ts';
import { span } from '#answer/say.ts';
import { english } from '#answer/speech.ts';
import { figure, reasons } from '../figures.ts';
import { wantedTime } from '../words.ts';
import type { PutBack } from './compute.ts';

/** How much a charger put back in the hours told, into a battery that nobody named. */
export function answerPutBack({ explored, hours, isDriven }: PutBack): Reply {
  const w = english;
  const { chargePutBack } = explored.figures;
  return {
    headline: w.say('put-back', 'About {ah} Ah in {time} ({range}).', {
      ah: w.plain(chargePutBack.value),
      time: isDriven
        ? w.say('of-driving', '{time} of driving', { time: wantedTime(hours, w) })
        : wantedTime(hours, w),
      range: span(chargePutBack.low, chargePutBack.high, 'Ah', w),
    }),
    lines: [
      w.say(
        'less-near-full',
        'Less if it was nearly full: then a battery takes less and less, AGM from about 80 % on.',
      ),
      w.say('tell-battery', 'Tell me the battery and how full it was, and I say where it is now.'),
    ],
    verdict: null,
    figures: { chargePutBack: figure(chargePutBack, 'Ah') },
    ...reasons(explored),
    next: ['100Ah lithium at 40 %', '100Ah AGM at 60 %'],
  };
}
