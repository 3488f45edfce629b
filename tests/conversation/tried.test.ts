import { describe, expect, test } from 'vitest';
import { english } from '#answer/speech.ts';
import { askWhich } from '#conversation/unsure/ask-back.ts';
import { triesOf } from '#conversation/unsure/tried.ts';
import type { ReadingOffered, Two } from '#conversation/unsure/two-readings.ts';
import { intentNamed } from '#intents';
import { needsOf } from '#intents/intent.ts';
import type { Stated } from '#rig/rig.ts';
import { settingWith } from '../intents/setting.ts';

const bank = { batteries: [{ count: 1, capacityAh: 100, chemistry: 'lfp' as const }] };
const choice = (say: string, intent: ReadingOffered['intent'], facts: Stated): ReadingOffered => ({
  say,
  intent,
  facts,
});
const runTime = choice('How long will it last?', 'run-time', {
  ...bank,
  loads: [{ name: 'fan', count: 1, currentA: 2 }],
});
const chargeTime = choice('How long to charge it?', 'charge-time', {
  ...bank,
  chargers: [{ kind: 'mains', currentA: 10 }],
});
const twoOf = (one: ReadingOffered, other: ReadingOffered): Two => ({ options: [one, other], shared: bank });

const tries = (more: object = {}) =>
  triesOf((name, facts) => {
    const intent = intentNamed(name);
    const parsed = needsOf(intent, undefined).safeParse(facts);
    return {
      intent,
      ready: parsed.success ? parsed.data : undefined,
      setting: settingWith(),
      lent: [],
      hazards: [],
      ...more,
    };
  });

describe('which of two readings is meant', () => {
  test('is asked with what each would be answered', () => {
    const { headline, lines, next } = askWhich(tries().withFirstLines(twoOf(runTime, chargeTime)), english);
    expect(headline).toMatch(/^“How long will it last\?” It lasts about [\d½¼¾]+ (hours|days)/);
    expect(lines?.[0]).toMatch(/^“How long to charge it\?” .*about \d+ hours/i);
    expect(lines?.[1]).toBe('Which do you mean?');
    expect(next).toEqual(['How long will it last?', 'How long to charge it?']);
  });

  test('is asked bare where nothing can be worked out', () => {
    const bare = twoOf({ ...runTime, facts: {} }, { ...chargeTime, facts: {} });
    expect(tries().withFirstLines(bare)).toBe(bare);
    expect(askWhich(bare, english).lines).toEqual(['“How long will it last?” or “How long to charge it?”']);
  });

  test.each([
    ['holds figures of somebody else', { lent: [{ who: 'ann' }] }],
    ['needs a caution of a danger', { hazards: ['cold-charge'] }],
  ])('is asked bare where an answer %s', (_, more) => {
    const two = twoOf(runTime, chargeTime);
    expect(tries(more).withFirstLines(two)).toBe(two);
  });

  test('tells no medical device how long it lasts on a guess', () => {
    const cpap = { ...runTime, facts: { ...bank, loads: [{ name: 'cpap', count: 1, powerW: 40 }] } };
    expect(tries().withFirstLines(twoOf(cpap, chargeTime)).firsts?.[0]).toBeUndefined();
  });

  test('tells no big inverter load without its caution', () => {
    const kettle = choice('Will the inverter run it?', 'inverter-check', {
      loads: [{ name: 'kettle', count: 1, powerW: 1800, supply: 'ac' }],
      inverter: { powerW: 2000 },
    } as Stated);
    expect(tries().withFirstLines(twoOf(kettle, chargeTime)).firsts?.[0]).toBeUndefined();
  });
});

test('one unsure reading is said back with its answer', () => {
  const [yes, no] = [choice('Yes', 'run-time', runTime.facts), choice('No', 'unclear', {})];
  const two = { ...twoOf(yes, no), echo: 'How long will it last? fan 2 A' };
  const { lines } = askWhich(tries().withFirstLines(two), english);
  expect(lines).toEqual([expect.stringMatching(/^“How long will it last\? fan 2 A” It lasts about /)]);
});

test('what was tried is worked out once', () => {
  const one = tries();
  expect(one.workedOf(runTime.intent, runTime.facts)).toBeUndefined();
  expect(one.answerOf(runTime.intent, runTime.facts)).toMatch(/^It lasts/);
  expect(one.workedOf(runTime.intent, runTime.facts)?.reply.headline).toMatch(/^It lasts/);
});
