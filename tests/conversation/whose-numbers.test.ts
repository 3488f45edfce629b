import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { converse } from '#conversation/converse.ts';
import { emptyMemory, type Memory } from '#conversation/memory.ts';
import { intentNamed } from '#intents';

// Random interleavings of people who each have figures of their own: whatever an answer goes by, a figure of somebody
// else's stands in it with that person's name.

interface Person {
  readonly name: string;
  readonly ah: number;
  readonly amps: number;
  readonly watts: number;
}

const people: readonly Person[] = [
  { name: 'Ann', ah: 103, amps: 1.3, watts: 163 },
  { name: 'Bob', ah: 127, amps: 2.7, watts: 217 },
  { name: 'Cyn', ah: 89, amps: 1.9, watts: 89.5 },
  { name: 'Dov', ah: 211, amps: 3.1, watts: 331 },
];

/** What somebody may write, with figures of their own alone; `other` is named, and never a figure of theirs. */
const lines: readonly ((me: Person, other: Person) => string)[] = [
  me => `${me.ah}Ah agm, fridge averages ${me.amps}A, how long will it last?`,
  me => `my rig: ${me.ah}Ah lithium, fridge averages ${me.amps}A`,
  me => `got a ${me.watts}W panel on the roof`,
  me => `what panel do I need for a fridge that averages ${me.amps}A?`,
  me => `fridge averages ${me.amps}A`,
  me => `how long does a ${me.ah}Ah lithium last?`,
  () => 'what if the battery was lithium?',
  () => 'and mine?',
  () => 'how long have I got?',
  () => 'make it 3 days',
  () => 'and for me?',
  (_, other) => `and on ${other.name}'s battery?`,
  (_, other) => `with ${other.name}'s panel?`,
  (_, other) => `my fridge on ${other.name}'s battery, how long?`,
  (_, other) => `and ${other.name}'s?`,
  () => 'and if hers was gel?',
  () => 'and on my own?',
  () => 'show the working',
  () => 'same for me',
  () => 'who is right?',
  () => 'lol',
];

const turn = fc.record({
  who: fc.integer({ min: 0, max: people.length - 1 }),
  other: fc.integer({ min: 1, max: people.length - 1 }),
  line: fc.integer({ min: 0, max: lines.length - 1 }),
  to: fc.option(fc.integer({ min: 0, max: 5 }), { freq: 4 }),
});

const figuresOf = ({ ah, amps, watts }: Person): readonly number[] => [ah, amps, watts];

/** Every number of some facts. */
const numbersIn = (value: unknown): number[] =>
  typeof value === 'number'
    ? [value]
    : typeof value === 'object' && value !== null
      ? Object.values(value).flatMap(numbersIn)
      : [];

describe('whose numbers an answer holds', () => {
  test('a figure of somebody else’s never without that person’s name', () => {
    let answered = 0;
    let lent = 0;
    fc.assert(
      fc.property(fc.array(turn, { minLength: 3, maxLength: 9 }), turns => {
        let memory: Memory = emptyMemory();
        for (const [i, { who, other, line, to }] of turns.entries()) {
          const [me, them] = [people[who], people[(who + other) % people.length]] as [Person, Person];
          const text = lines[line]?.(me, them) ?? '';
          const at = new Date(Date.UTC(2026, 0, 15, 9, i));
          const onto = to === null ? undefined : memory.frames[to];
          const message = {
            chat: 'c',
            from: me.name,
            text,
            at,
            kind: 'group' as const,
            ...(onto && { onto }),
          };
          const { memory: after, answer } = converse(memory, message);
          memory = after;
          const frame = after.frames.find(one => one.at === at.getTime());
          if (!frame || Object.keys(answer.figures).length === 0) continue;
          answered += 1;
          // What its question takes: what else is known of the gear it does not go by.
          const { takes } = intentNamed(frame.intent);
          const held = new Set(numbersIn(takes.map(key => frame.facts[key])));
          for (const person of people.filter(one => one !== me)) {
            const theirs = figuresOf(person).filter(figure => held.has(figure));
            if (theirs.length === 0) continue;
            lent += 1;
            const said = answer.text
              .split('\n')
              .filter(row => row.includes(person.name))
              .join('\n');
            for (const figure of theirs)
              expect(said, `${me.name}: ${text} → ${answer.text}`).toContain(
                String(Number(figure.toPrecision(4))),
              );
          }
        }
      }),
      { numRuns: 150, seed: 20_260_115 },
    );
    // It must have come to the point, and often.
    expect(answered).toBeGreaterThan(100);
    expect(lent).toBeGreaterThan(20);
  }, 120_000);
});
