import { english } from '#answer/speech.ts';
import { defineIntent } from '../define-intent.ts';
import type { Intent } from '../intent.ts';
import { needLoads } from '../needs.ts';
import { sunFacts } from '../sun.ts';
import { usualLoads } from '../untold-table.ts';
import { answerList } from './answer.ts';
import { computeList } from './compute.ts';

/** What to buy or bring: the size of each thing. */
export const list: Intent = defineIntent({
  name: 'list',
  title: 'What do I need to buy?',
  isItemised: true,
  takes: [
    ...sunFacts,
    'loads',
    'dailyUseAh',
    'dailyUseWh',
    'durationH',
    'drivingHoursPerDay',
    'depthOfDischargePercent',
    'cable',
    'inverter',
    'chargers',
    'alternator',
    'without',
  ],
  needs: [
    { ...needLoads, ask: 'what it has to run (say “fridge, lights and phones, 3 days”)', key: 'need-run' },
  ],
  guess: (told, setting) => {
    const ready = list.needs.safeParse({ ...told, loads: [...usualLoads] }).data;
    const reply = ready && list.reply(ready, setting);
    const question = english.say(
      'list-for-usual',
      'That is for a usual fridge, lights and phones: what will it run?',
    );
    const lines = (reply?.lines ?? []).filter(line => !line.endsWith('?'));
    return reply && { ...reply, lines: [...lines, question] };
  },
  reply: (facts, setting) => answerList(facts, computeList(facts, setting)),
});
