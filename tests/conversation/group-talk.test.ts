import { describe, expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { type Turn, talk } from './talk.ts';

// Several people at once: whose gear, which question, what stays.

/** The last question as it was answered, with what the chat saw. */
function played(...turns: Turn[]) {
  const { last, memory } = talk(turns, { apartMin: 1 });
  const { intent, facts } = present(memory.frames.at(-1), 'a question');
  return { intent, facts, text: last.text, answered: last.intent, rigs: memory.rigs };
}

describe('gear told is kept', () => {
  test('what somebody says they have beside the group’s rig is their own', () => {
    const { rigs } = talk(['ann: ours is a 120Ah agm', 'bob: got a 100Ah lithium here'], {
      apartMin: 1,
    }).memory;
    expect(rigs['']?.batteries).toEqual([{ capacityAh: 120, chemistry: 'agm' }]);
    expect(rigs.bob?.batteries).toEqual([{ capacityAh: 100, chemistry: 'lfp' }]);
  });

  test('one’s inverter is noted though a question about another’s stands', () => {
    const { memory, last } = talk(
      ['ann: does a 600W inverter run a 550W rice cooker?', 'bob: my inverter is 1000'],
      {
        apartMin: 1,
      },
    );
    expect(last.intent).toBe('rig');
    expect(memory.rigs.bob?.inverter).toEqual({ powerW: 1000 });
  });

  test('the one battery told anew stays of its kind', () => {
    const { memory } = talk(['ann: my rig: 90Ah gel, fridge 1.2A average', "ann: nope it's 80Ah"], {
      apartMin: 1,
    });
    expect(memory.rigs.ann?.batteries).toEqual([{ capacityAh: 80, chemistry: 'gel' }]);
  });

  test('the same battery as somebody’s is copied into one’s own rig', () => {
    const { memory } = talk(
      [
        'bea: my rig: 75Ah agm, fridge 1.1A average',
        'cas: I have the same battery as bea, and a 0.5A fan 6h a day',
      ],
      { apartMin: 1 },
    );
    expect(memory.rigs.cas?.batteries).toEqual([{ capacityAh: 75, chemistry: 'agm' }]);
    expect(memory.rigs.cas?.loads?.map(({ name }) => name)).toEqual(['fan']);
  });
});

describe('what is taken out stays out, and can be put back', () => {
  const rig: Turn = 'pat: my rig: 130Ah agm, fridge 1.8A average, fan 0.6A 8h a day';
  const names = (...turns: Turn[]) => played(rig, ...turns).facts.loads?.map(({ name }) => name);
  test('of a rig of which nothing was asked', () => {
    expect(names('pat: how long without the fan')).toEqual(['fridge']);
  });
  test('also in what turns that', () => {
    expect(names('pat: how long without the fan', 'pat: for 2 days?')).toEqual(['fridge']);
  });
  test('until it is put back', () => {
    expect(names('pat: how long without the fan', 'pat: ok put the fan back')).toEqual(['fridge', 'fan']);
  });
});

describe('a turn is of one’s own question', () => {
  test('where what was asked since is another one of the same kind', () => {
    const { intent, facts } = played(
      'vic: what would 200W of solar make in Cairns in july?',
      'una: my fridge averages 2A on 100Ah lithium, how long?',
      'vic: and what would it make in december?',
    );
    expect(intent).toBe('solar-yield');
    expect(facts).toMatchObject({ month: 12, place: 'cairns', solar: [{ powerW: 200 }] });
    expect(facts.loads).toBeUndefined();
  });

  test('“half that battery” halves it', () => {
    const { facts } = played(
      'ann: 200Ah lithium, fridge 2A average, how long?',
      'ann: and half that battery?',
    );
    expect(facts.batteries).toEqual([{ capacityAh: 100, chemistry: 'lfp' }]);
    expect(facts.depthOfDischargePercent).toBeUndefined();
  });

  test('“three of them” counts the things of which there are several', () => {
    const { facts } = played(
      'ann: two lamps 6W each 5h a day on a 40Ah lithium, how long?',
      'ann: three of them?',
    );
    expect(facts.loads).toMatchObject([{ count: 3, powerW: 6 }]);
    expect(facts.batteries).toEqual([{ capacityAh: 40, chemistry: 'lfp' }]);
  });

  test('amps now go the way they went', () => {
    const { facts } = played('ann: 200Ah lithium at 62%, drawing 6A, how long?', 'ann: now 4A');
    expect(facts.netCurrentA).toBe(-4);
  });

  test('amp hours alone are what is to be put back, where that was told', () => {
    const { facts } = played('ann: how long to drive to refill 40Ah with a 25A dcdc', 'ann: 60Ah?');
    expect(facts).toMatchObject({ chargeUsedAh: 60 });
    expect(facts.batteries).toBeUndefined();
  });

  test('“leave it at 200” goes back to that', () => {
    const { facts } = played(
      'ann: 200Ah agm, fridge 3A average, how long?',
      'ann: what if 300Ah',
      'ann: no leave it at 200',
    );
    expect(facts.batteries).toEqual([{ capacityAh: 200, chemistry: 'agm' }]);
  });

  test('“why only 25” explains it', () => {
    const { last } = talk(['ann: 100Ah agm, 2A average load, how long?', 'ann: why only 25'], {
      apartMin: 1,
    });
    expect(last.intent).toBe('run-time');
    expect(last.text).toMatch(/50 %/);
  });
});

describe('another’s', () => {
  test('thing that was spoken of is that one, and is named', () => {
    const { facts, text } = played(
      'ada: does a 600W inverter run a 550W rice cooker?',
      'col: my inverter is 1000W',
      "ben: would col's do the rice cooker?",
    );
    expect(facts).toMatchObject({
      loads: [{ name: 'rice cooker', powerW: 550 }],
      inverter: { powerW: 1000 },
    });
    expect(text).toMatch(/Ada/);
  });

  test('fridge that everybody has one of is not meant by “the fridge”', () => {
    const { facts } = played(
      'ada: 100Ah agm, fridge 2.3A average, how long?',
      'ben: how long will the fridge run on a 75Ah lithium?',
    );
    expect(JSON.stringify(facts)).not.toContain('2.3');
  });

  test('stay is one’s own for the same trip', () => {
    const { facts } = played(
      'di: five nights in may, fridge 1.4A average, 100Ah agm, 120W panel, enough?',
      "sol: I'm on the same trip with 100Ah lithium and a 2A average fridge, enough?",
    );
    expect(facts).toMatchObject({ durationH: 120, month: 5 });
    expect(facts.solar).toBeUndefined();
  });

  test('question is one’s own by “for me too”', () => {
    const { facts, intent } = played(
      'kev: my rig: 100Ah agm, fridge 2A average',
      'lee: my rig: 75Ah agm, fridge 1A average',
      'kev: what size panel do I need?',
      'lee: for me too',
    );
    expect(intent).toBe('solar-size');
    expect(facts.loads).toMatchObject([{ currentA: 1 }]);
  });

  test('watts to put on top are no load', () => {
    const { facts } = played(
      'vic: what would 200W of solar make in Cairns in july?',
      'una: my fridge averages 2A on 100Ah lithium, how long?',
      "una: and with vic's 200W?",
    );
    expect(facts).toMatchObject({ loads: [{ currentA: 2 }], solar: [{ powerW: 200 }] });
  });
});

test('watts guessed after “what panel?” are a panel’s', () => {
  const { last } = talk(
    [
      'abe: what size panel for a 2A average fridge?',
      'bri: 100W is plenty',
      'cam: more like 250W',
      "abe: who's closest?",
    ],
    { apartMin: 1 },
  );
  expect(last.intent).toBe('settle');
  expect(last.figures.answer).toMatchObject({ unit: 'W' });
  expect(last.figures.answer?.value).toBeGreaterThan(100);
});

test('a yes or no belongs to the last question that can be answered so', () => {
  const { memory } = talk(
    [
      'jo: will 120Ah agm keep a 1.5A average fridge for 2 days?',
      'ky: what fuse for a 20A pump?',
      "lin: it won't, agm is only half",
    ],
    { apartMin: 1 },
  );
  expect(memory.claims).toMatchObject([{ who: 'lin', says: 'no' }]);
});
