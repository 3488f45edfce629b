import { type State, wordAt } from '../state.ts';

const nominalV = 12;

/** "two in series, two in parallel", "2s2p": what stands in series sets the volts of the bank. */
export function banks(state: State): void {
  if (!state.things.some(one => one.kind === 'battery') && state.quantities.length === 0) return;
  const inSeries = seriesSaid(state);
  if (!inSeries) return;
  const blockV = state.things.find(one => one.kind === 'battery' && one.voltageV > 0)?.voltageV ?? nominalV;
  state.facts.arrangement = 'series';
  state.facts.systemVoltageV ??= inSeries * Math.round(blockV);
}

/** How many stand in series, where some stand in parallel as well; else 0. */
function seriesSaid(state: State): number {
  const { tokens, cues } = state;
  for (let i = 0; i < tokens.length; i++) {
    const { kind, value } = tokens[i]!;
    if (kind !== 'number' || !Number.isInteger(value) || value < 2 || value > 16) continue;
    const isInSeries = wordAt(state, i + 1) === 'in' && wordAt(state, i + 2) === 'series';
    const isShort =
      wordAt(state, i + 1) === 's' && tokens[i + 2]?.kind === 'number' && wordAt(state, i + 3) === 'p';
    if (!isShort && !(isInSeries && cues.has('series') && cues.has('parallel'))) continue;
    tokens[i]!.isKnown = true;
    return value;
  }
  return 0;
}
