import { isStop, type State } from '../state.ts';
import { list } from '../words/list.ts';

const joints = list(`
  and n plus with off from on or vs versus then also for through thru via into but while against running
  run runs powering handle und y et mit feeding keeps keep
`);

/** Cuts the message into parts: a quantity belongs first of all to a thing of its own part. */
export function segments(state: State): void {
  let [segment, sentence] = [0, 0];
  const { tokens } = state;
  state.segments = new Array(tokens.length);
  state.sentences = new Array(tokens.length);
  for (let i = 0; i < tokens.length; i++) {
    const { kind, text, isGlued } = tokens[i]!;
    if (kind === 'sign') {
      if (isStop(text)) {
        segment++;
        sentence++;
      } else if (
        text === ',' ||
        text === '+' ||
        text === '&' ||
        text === ':' ||
        text === '=' ||
        (text === '-' && !isGlued)
      )
        segment++;
    } else if (kind === 'word' && joints.has(text)) segment++;
    state.segments[i] = segment;
    state.sentences[i] = sentence;
  }
  for (const thing of state.things) thing.segment = state.segments[thing.at]!;
}
