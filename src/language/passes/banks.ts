import { type State, wordAt } from '../state.ts';

const nominalV = 12;

/** "two in series, two in parallel", "2s2p": what stands in series sets the volts of the bank. */
export function banks(state: State): void {
  if (!state.things.some(one => one.kind === 'battery') && state.quantities.length === 0) return;
  another(state);
  const inSeries = seriesSaid(state);
  if (!inSeries) return;
  const blockV = state.things.find(one => one.kind === 'battery' && one.voltageV > 0)?.voltageV ?? nominalV;
  state.facts.arrangement = 'series';
  state.facts.systemVoltageV ??= inSeries * Math.round(blockV);
}

/** "another 90ah beside the 90 I have": a second one of the same size. */
function another(state: State): void {
  const { things, tokens, facts } = state;
  const one = things.find(({ kind, chargeAh, count }) => kind === 'battery' && chargeAh > 0 && count <= 1);
  if (!one || things.filter(({ kind, chargeAh }) => kind === 'battery' && chargeAh > 0).length > 1) return;
  const isAnother = [1, 2, 3].some(step => /^(another|second|extra)$/.test(wordAt(state, one.at - step)));
  const same = tokens.find(
    ({ kind, value, text }) => kind === 'number' && value === one.chargeAh && text !== 'count',
  );
  if (!isAnother || !same) return;
  one.count = 2;
  same.isKnown = true;
  facts.arrangement ??= 'parallel';
}

/** How many stand in series, where some stand in parallel as well; else 0. */
function seriesSaid(state: State): number {
  const { tokens, cues } = state;
  for (let i = 0; i < tokens.length; i++) {
    const { kind, value } = tokens[i]!;
    if (kind !== 'number' || !Number.isInteger(value) || value < 2 || value > 16) continue;
    const isInSeries =
      wordAt(state, i + 1) === 'series' ||
      (wordAt(state, i + 1) === 'in' && wordAt(state, i + 2) === 'series');
    const isShort =
      wordAt(state, i + 1) === 's' && tokens[i + 2]?.kind === 'number' && wordAt(state, i + 3) === 'p';
    if (!isShort && !(isInSeries && cues.has('series') && cues.has('parallel'))) continue;
    tokens[i]!.isKnown = true;
    return value;
  }
  return 0;
}
