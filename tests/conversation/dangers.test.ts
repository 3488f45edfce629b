import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Answer } from '#answer/answer.ts';
import { forbidden, hazardAnswer } from '#answer/hazards.ts';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { inChatUnits } from '#quantity/chat-units.ts';
import { emergencies, type HazardCode, hazardCodes } from '#rig/hazard-codes.ts';
import { guises } from '../language/hazards/guises.ts';
import { talk } from './talk.ts';

interface Line {
  readonly from: string;
  readonly text: string;
}
interface Group {
  readonly id: string;
  readonly before?: readonly Line[];
  readonly from: string;
  readonly wordings: readonly string[];
  readonly danger: HazardCode | null;
}

const folder = new URL('../messages/', import.meta.url);
const groups = readdirSync(folder)
  .filter(name => name.endsWith('.jsonl'))
  .flatMap(name => readFileSync(new URL(name, folder), 'utf8').split('\n').filter(Boolean))
  .map(line => JSON.parse(line) as Group)
  .filter(({ danger }) => danger !== null);

function answerTo({ before = [], from }: Group, text: string): Answer {
  let memory = emptyMemory();
  let answer: Answer | undefined;
  for (const line of [...before, { from, text }])
    ({ memory, answer } = converse(memory, {
      chat: 'camp',
      ...line,
      at: new Date('2026-01-15T09:00:00Z'),
      kind: 'group',
      isBot: line.from === 'bot',
    }));
  return present(answer);
}

const asked = groups.flatMap(group =>
  group.wordings.map(text => ({ group, text, answer: answerTo(group, text) })),
);
const warned = asked.filter(({ answer }) => answer.hazards.length > 0);
const show = ({ text, answer }: (typeof asked)[number]): string => `${text}\n  ${answer.text}`;

test('dangers are seen', () => {
  const percent = (100 * warned.length) / asked.length;
  console.log(`${percent.toFixed(1)} % of ${asked.length} wordings with a danger are warned`);
  expect(percent).toBeGreaterThan(95.5);
});

test('the caution stands in the first three lines', () => {
  const misplaced = warned.filter(({ answer }) => {
    const top = answer.text.split('\n').slice(0, 3);
    return !answer.hazards.slice(0, 2).every(code => {
      const isOwnNo = code === 'over-current' && /^No\b|is more than the [\d,.]+ A/.test(present(top[0]));
      const isInEmergency = answer.intent === 'emergency';
      // A chat that speaks of °F is warned in °F.
      const firsts = [
        hazardAnswer(code).first,
        hazardAnswer(code).shortly ?? hazardAnswer(code).first,
        ...(hazardAnswer(code).closer ?? []).map(one => one.says.first),
      ];
      const isThere = firsts.some(
        first => top.includes(first) || top.includes(inChatUnits(first, { temperature: 'F' })),
      );
      return isOwnNo || isInEmergency || isThere;
    });
  });
  expect(misplaced.map(show)).toEqual([]);
});

test('no answer says what its dangers forbid', () => {
  const wrong = warned.filter(({ answer }) => {
    const said = answer.intent === 'emergency' ? answer.hazards.slice(0, 1) : answer.hazards;
    // By lines too, so that a "yes" further down is found.
    const lines = answer.text.split('\n').filter(line => !line.startsWith('Assumed'));
    return forbidden(answer.text, said).length > 0 || lines.some(line => forbidden(line, said).length > 0);
  });
  expect(wrong.map(show)).toEqual([]);
});

describe('what is held back', () => {
  const withCode = (...codes: HazardCode[]) =>
    warned.filter(({ answer }) => answer.hazards.some(code => codes.includes(code)));
  const figures = (rows: typeof asked, ...names: string[]): string[] =>
    rows.filter(({ answer }) => names.some(name => name in answer.figures)).map(show);

  test('an emergency has no figures, no buttons and leaves nothing but that it was said', () => {
    const rows = warned.filter(({ answer }) => answer.hazards.some(code => emergencies.has(code)));
    expect(rows.length).toBeGreaterThan(100);
    for (const { answer } of rows) {
      expect(answer).toMatchObject({
        intent: 'emergency',
        figures: {},
        next: [],
        verdict: null,
        assumed: [],
      });
      expect(answer.hasWorking?.()).toBe(false);
    }
    const before = talk(['kim: my rig: 100Ah AGM']).memory;
    const after = talk(['kim: 100Ah lithium, 20A charger, it is smoking and hissing, how long?'], {
      memory: before,
    });
    expect(after.last.intent).toBe('emergency');
    expect({ ...after.memory, talk: before.talk }).toEqual(before);
    expect(after.memory.talk?.meant?.length).toBeGreaterThan(0);
  });

  test.each(['out now, still smoking', 'it has stopped hissing, can we go back in?'])(
    'what is said next is of it: %s',
    text => {
      const { last } = talk(['kim: the battery is smoking and hissing', `kim: ${text}`]);
      expect(last.hazards).toContain('battery-fire');
    },
  );

  test('no yes and no tight where a limit is passed or a practice is refused', () => {
    const rows = withCode('over-current', 'mains-lead', 'backfeed', 'mixed-parallel', 'jump-start');
    expect(rows.length).toBeGreaterThan(100);
    const soft = rows.filter(({ answer }) => answer.verdict === 'yes' || answer.verdict === 'tight');
    expect(soft.map(show)).toEqual([]);
  });

  test('no cable and fuse for mains, no charging time in the frost, no total of unlike batteries', () => {
    const wiring = withCode('mains-wiring', 'mains-lead');
    expect(figures(wiring, 'conductorArea', 'fuseRating')).toEqual([]);
    expect(figures(withCode('cold-charge'), 'chargeTime')).toEqual([]);
    expect(figures(withCode('mixed-parallel'), 'bankCapacity')).toEqual([]);
  });

  test('no load is asked for while a generator stands inside', () => {
    const asks = withCode('generator-inside').filter(({ answer }) =>
      /what it (?:shall|will) run|which do you mean/i.test(answer.text),
    );
    expect(asks.map(show)).toEqual([]);
  });

  test('a medical device’s night is a night', () => {
    const { last } = talk(['kim: my cpap takes 40W 8 hours a night, how many nights on 100Ah lithium?']);
    expect(last.text).toMatch(/^It lasts about 3 nights/);
    expect(last.text).toContain('A night of 8 hours takes about 25 Ah');
  });

  test('a medical device has no yes without half as much again', () => {
    for (const { answer } of withCode('medical')) {
      if (answer.verdict !== 'yes') continue;
      const runTime = answer.figures.runTime as { low: number } | undefined;
      expect(runTime?.low ?? 0).toBeGreaterThan(0);
    }
    const nights = (ah: number) =>
      talk([`kim: cpap 3A, ${ah}Ah lithium, will it last 8 hours?`]).last.verdict;
    expect([nights(12), nights(32), nights(100)]).toEqual(['no', 'tight', 'yes']);
  });
});

test('the matrix: 15 codes in 6 guises, with the first line of each, to be read by hand', () => {
  const rows = hazardCodes.flatMap(code =>
    guises[code].map(text => {
      const { last } = talk([`kim: ${text}`]);
      return { code, text, seen: last.hazards, first: present(last.text.split('\n')[0]) };
    }),
  );
  console.log(
    rows
      .map(({ code, text, seen, first }) => `${code} | ${text}\n    ${seen.join(', ')} | ${first}`)
      .join('\n'),
  );
  expect(rows).toHaveLength(90);
  const quiet = rows.filter(({ seen }) => seen.length === 0);
  expect(quiet.map(({ text }) => text)).toEqual([]);
});

describe('a danger of two messages', () => {
  test.for<[before: string, text: string, code: HazardCode]>([
    [
      'my rig: 100Ah lithium, fridge 2A',
      'hard frost this morning, how long to charge it with a 20A charger?',
      'cold-charge',
    ],
    [
      'my rig: 100Ah lithium with a 50A BMS, 2000W inverter',
      'can I boil a 1200W kettle on it?',
      'over-current',
    ],
    ['my rig: 100Ah lithium', "it's -5 here, how long to charge it from 30% with 10A?", 'cold-charge'],
  ])('%s … %s', ([before, text, code]) => {
    expect(talk([`kim: ${before}`, `kim: ${text}`]).last.hazards).toContain(code);
  });

  test('what is remembered shows nothing where the talk is of something else', () => {
    const done = talk(['kim: my rig: 100Ah lithium with a 50A BMS, cpap 40W 8h', 'kim: thanks mate']);
    expect(done.last.hazards).toEqual([]);
  });
});

describe('dangers that facts show', () => {
  const codes = (text: `${string}: ${string}`) => talk([text]).last.hazards;
  test.each<[text: `${string}: ${string}`, isWarned: boolean]>([
    ['ann: 200Ah lithium, 40A dcdc, how long to charge it in inari in january?', true],
    ['ann: 200Ah lithium, 40A dcdc, how long to charge it in broome in january?', false],
    ['ann: 200Ah agm, 40A dcdc, how long to charge it in inari in january?', false],
    ['ann: 200Ah lithium, 40A dcdc, how long to charge it in inari in july?', false],
  ])('%s: charging in the cold by the month and place: %s', (text, isWarned) => {
    expect(codes(text)?.includes('cold-charge')).toBe(isWarned);
  });

  test.each<[text: `${string}: ${string}`, isWarned: boolean]>([
    ['ann: 75Ah agm and 100Ah agm in parallel, what do I get?', true],
    ['ann: 95Ah agm and 100Ah agm in parallel, what do I get?', false],
    ['ann: 100Ah agm and 100Ah lithium in parallel, what do I get?', true],
    ['ann: two 100Ah agm in parallel, what do I get?', false],
  ])('%s: unlike batteries side by side: %s', (text, isWarned) => {
    expect(codes(text)?.includes('mixed-parallel')).toBe(isWarned);
  });
});

test('a cable that is only just enough is told what would do, not the general line alone', () => {
  const { last } = talk(['kim: cable is only 1.2 metres, is 16mm ok for a 1000w inverter or too thin']);
  expect(last.verdict).toBe('no');
  expect(last.text).toMatch(/^No: 16 mm² loses/);
  expect(last.text).toMatch(/Get 25 mm² or thicker/);
});
