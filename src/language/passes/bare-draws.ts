import { type State, textAt, wordAt } from '../state.ts';
import { isFree } from './giving.ts';

/** Amps and watts said without the word. */
export function bareDraws(state: State): void {
  bareAmps(state);
  bareWatts(state);
}

/** "The charger only pulls 25": amps without the word. */
function bareAmps(state: State): void {
  for (let i = 1; i < state.tokens.length; i++) {
    const number = state.tokens[i]!;
    if (number.kind !== 'number' || number.isKnown || number.value <= 0 || number.value > mostBareA) continue;
    if (!/^(pulls|pulling|draws|drawing|sucks)$/.test(wordAt(state, i - 1))) continue;
    const owner = state.things.findLast(
      one => one.at < i && (one.kind === 'load' || one.kind === 'charger') && isFree(one) && !one.isDropped,
    );
    if (!owner || state.sentences[owner.at] !== state.sentences[i]) continue;
    owner.currentA = number.value;
    number.isKnown = true;
    number.text = 'amps';
  }
}

const mostBareA = 300;

/** Ratings of inverters and draws of mains things, W. */
const [leastBareW, mostBareW] = [50, 6000];

/** "My inverter's a 1000", "add the grinder, 250": watts without the word, of what is rated in watts. */
function bareWatts(state: State): void {
  const areWatts = /\ball (in )?watts\b/i.test(state.text);
  const isOfInverter = areWatts || /^(inverter-check|generator)$/.test(state.context.lastIntent ?? '');
  for (const one of state.things) {
    const isInverter = one.kind === 'inverter';
    if (one.isDropped || !isFree(one) || (!isInverter && !(one.kind === 'load' && isOfInverter))) continue;
    let at = one.end;
    while (at < one.end + 3 && /^(a|an|is|s|are|only|about|just|,|-|=|:)$/.test(textAt(state, at))) at++;
    const number = state.tokens[at];
    const isPlain = number?.kind === 'number' && number.value >= leastBareW && number.value <= mostBareW;
    if (!isPlain || number.isKnown || /^(of|%|x)$/.test(textAt(state, at + 1))) continue;
    one.powerW = number.value;
    number.isKnown = true;
    number.text = 'watts';
  }
}
