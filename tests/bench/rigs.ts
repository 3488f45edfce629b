import { converse } from '#conversation/converse.ts';
import { emptyMemory, type Memory } from '#conversation/memory.ts';
import { mostKept } from '#rig/rig.ts';
import { cpuMs, median, quantile, round, type Section } from './measure.ts';

const people = 1000;
const start = Date.UTC(2026, 3, 3, 9);

/** A thousand people of one group tell a rig, and ask: those past the cap are refused kindly, and none takes long. */
export function manyRigs(): Section {
  let memory: Memory = emptyMemory();
  let refused = 0;
  const told: number[] = [];
  const asked: number[] = [];
  const say = (from: string, text: string, minute: number, took: number[]): string => {
    const at = new Date(start + minute * 1000);
    const before = cpuMs();
    const done = converse(memory, { chat: '-1', kind: 'group', from, text, at });
    took.push(cpuMs() - before);
    memory = done.memory;
    return done.answer.text;
  };
  for (let i = 0; i < people; i++) {
    const rig = `my rig: ${80 + (i % 90)}Ah AGM, fridge 1.${i % 10}A, ${100 + (i % 7) * 20}W solar`;
    if (/I keep \d+ rigs in a chat/.test(say(`camper${i}`, rig, 2 * i, told))) refused++;
    say(`camper${i}`, 'will mine last 3 days?', 2 * i + 1, asked);
  }
  const mean = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0) / list.length;
  const all = mean([...told, ...asked]);
  const kept = Object.keys(memory.rigs).length;
  return {
    title: `${people.toLocaleString('en-AU')} people of one group tell a rig each`,
    lines: [
      {
        what: `rigs kept, of ${mostKept.rigs} at most`,
        value: String(kept),
        goal: `${mostKept.rigs}`,
        isMet: kept === mostKept.rigs,
      },
      {
        what: 'refused in so many words',
        value: String(refused),
        goal: String(people - mostKept.rigs),
        isMet: refused === people - mostKept.rigs,
      },
      { what: 'CPU a message, ms', value: round(all), goal: '≤ 2', isMet: all <= 2 },
      { what: 'telling a rig: median, ms', value: round(median(told)) },
      { what: 'asking: median, ms', value: round(median(asked)) },
      { what: 'slowest of a hundred, ms', value: round(quantile([...told, ...asked], 0.99)) },
    ],
  };
}
