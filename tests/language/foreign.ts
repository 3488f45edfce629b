import { describe, expect, test } from 'vitest';
import type { Answer, IntentName } from '#answer/answer.ts';
import { converse } from '#conversation/converse.ts';
import { emptyMemory, type Memory } from '#conversation/memory.ts';
import type { Facts } from '#rig/rig.ts';

/** A message in another language, what it means, and a word that its answer has. */
export interface Row {
  readonly say: string;
  readonly intent: IntentName;
  readonly means?: Partial<Facts>;
  /** Figures as the trade reckons them; the answer has to come within a tenth. */
  readonly about?: Readonly<Record<string, number>>;
  readonly answers: string | RegExp;
}

const turn = (memory: Memory, text: string) =>
  converse(memory, {
    chat: 'camp',
    from: 'kim',
    text,
    at: new Date('2026-01-15T09:00:00Z'),
    kind: 'private',
  });

/** Says messages one after the other in a private chat, on a Thursday in January. */
export function sayAll(texts: readonly string[]): { answers: Answer[]; memory: Memory } {
  let memory = emptyMemory();
  const answers = texts.map(text => {
    const done = turn(memory, text);
    memory = done.memory;
    return done.answer;
  });
  return { answers, memory };
}

export const answerTo = (text: string): Answer => turn(emptyMemory(), text).answer;

/** Tests that every row is understood, reckoned and answered in its language. */
export function testRows(language: string, rows: readonly Row[]): void {
  describe(`what people say in ${language}`, () => {
    test.each(rows)('$say', ({ say, intent, means, about = {}, answers }) => {
      const answer = answerTo(say);
      expect(answer.intent).toBe(intent);
      if (means) expect(answer.understood).toMatchObject(means);
      for (const [name, value] of Object.entries(about)) {
        const figure = answer.figures[name];
        expect(figure, name).toBeDefined();
        expect(Math.abs((figure!.value as number) / value - 1), `${name} ${figure!.value}`).toBeLessThan(0.1);
      }
      expect(answer.text).toMatch(answers);
      expect(answer.text).not.toMatch(/Assumed|Careful|\{ ?\$|undefined|NaN/);
    });
  });
}

/** Tests that one whole answer of each question reads as it did, and that what it offers next is understood. */
export function testGolden(language: string, says: Readonly<Record<string, string>>): void {
  describe(`whole answers in ${language}`, () => {
    test.each(Object.entries(says))('%s', async (name, say) => {
      const answer = answerTo(say);
      expect(answer.intent).toBe(name);
      const shown = [`> ${say}`, answer.text, ...answer.next.map(next => `[${next}]`)].join('\n');
      await expect(`${shown}\n`).toMatchFileSnapshot(`answers/${language}/${name}.txt`);
    });

    test.each(Object.values(says))('what comes next after “%s” is understood', say => {
      for (const next of answerTo(say).next) {
        const { answers } = sayAll([say, next]);
        expect(answers[1]!.text, next).not.toBe(answerTo('asdf').text);
        expect(['unclear'].includes(answers[1]!.intent) && answers[1]!.figures, next).toBeFalsy();
      }
    });
  });
}
