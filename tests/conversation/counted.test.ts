import { describe, expect, test } from 'vitest';
import { talk } from './talk.ts';

describe('what an answer counted', () => {
  test('two loads or more are listed', () => {
    const { last } = talk(['ann: fridge 1.2A, fan 0.5A 8h a night, 100Ah agm, how long will it last?']);
    expect(last.text).toContain('Counted: fridge 1.2 A; fan 0.5 A, 8 h a day.');
  });

  test('one that was guessed is listed as such', () => {
    const { last } = talk(['ann: how long will my fridge last on a 100Ah agm?']);
    expect(last.text).toContain('Counted: fridge (typical).');
  });

  test('so is one that comes from memory', () => {
    const { last } = talk(['ann: my rig: fridge 1.4A, 120Ah agm', 'ann: how long will it last?']);
    expect(last.text).toContain('Counted: fridge 1.4 A.');
  });

  test('one load told with its figure needs no list', () => {
    const { last } = talk(['ann: fridge 1.2A, 100Ah agm, how long will it last?']);
    expect(last.text).not.toContain('Counted');
  });

  test('an answer that lists by itself does it once', () => {
    const { last } = talk(['ann: fridge 1.2A and fan 0.5A 8h a day, what do I use a day?']);
    expect(last.text).not.toContain('Counted');
  });
});

describe('what was told and not counted', () => {
  test('is named', () => {
    const { last } = talk(['ann: 4A fan in Kansas, what fuse']);
    expect(last.intent).toBe('fuse-size');
    expect(last.text).toContain('Not counted here: ');
  });

  test('a load beside a panel is part of it', () => {
    const { last } = talk(['ann: what does my 200W panel make in broome in july? fridge 1.2A']);
    expect(last.intent).toBe('solar-yield');
    expect(last.text).toContain('covers your 29 Ah a day');
    expect(last.text).not.toContain('Not counted here');
  });

  test('nothing is said where all was used', () => {
    const { last } = talk(['ann: fridge 1.2A, 100Ah agm, 3 days?']);
    expect(last.text).not.toContain('Not counted here');
  });
});
