import { quantityAt, type State, textAt, wordAt } from '../state.ts';
import { list } from '../words/list.ts';
import { dutyOf, nearestBattery, setCharge } from './percents.ts';

const halves = list('full flat charged empty discharged dead gone');
const notFullBefore = list('how is be it that not when until properly its');
const notFullAfter = list(
  'day days sun night nights strength time timer blast size hour hours load power speed week hookup house tank',
);
const goals = list('to till til');
const flatBefore = list('from dead totally completely a is its nearly almost near was');
const nearly = list('nearly almost near');
const climbing = list('get gets up back it us charge fill');
const standing = list('sitting battery is its now lithium agm currently');
const nearlyEmptyPercent = 10;

/** How full in words: "half flat", "fully charged", "to full", "from flat", "sitting at 40". */
export function fullness(state: State): void {
  for (let i = 0; i < state.tokens.length; i++) {
    const token = state.tokens[i]!;
    if (token.kind === 'number') timeShare(state, i);
    if (token.kind !== 'word') continue;
    switch (token.text) {
      case 'half':
        half(state, i);
        break;
      case 'full':
      case 'fully':
      case 'brimmed':
        full(state, i, token.text);
        break;
      case 'flat':
      case 'dead':
      case 'empty':
        if (flatBefore.has(wordAt(state, i - 1))) flat(state, i);
        break;
      case 'to':
      case 'at':
        if (state.tokens[i + 1]?.kind === 'number') bare(state, i, token.text);
        break;
      case 'from':
        fromTo(state, i);
        break;
      case 'right':
        if (
          wordAt(state, i + 1) === 'down' &&
          wordAt(state, i + 2) === 'to' &&
          /^(0|zero|nothing|empty|flat)$/.test(textAt(state, i + 3))
        )
          state.facts.depthOfDischargePercent ??= 100;
    }
  }
}

function half(state: State, at: number): void {
  const next = wordAt(state, at + 1);
  const before = wordAt(state, at - 1);
  if (halves.has(next)) setCharge(state, at, 50);
  else if (next === 'the' && wordAt(state, at + 2) === 'time') dutyOf(state, at, 50);
  else if (goals.has(before) && wordAt(state, at - 2) === 'down') {
    if (state.cues.has('charge') || state.cues.has('charger')) setCharge(state, at, 50);
    else state.facts.depthOfDischargePercent ??= 50;
  } else if (
    before === 'at' &&
    !quantityAt(state, at + 1) &&
    state.things.some(one => one.kind === 'battery')
  )
    setCharge(state, at, 50);
}

/** "a third of the time". */
function timeShare(state: State, at: number): void {
  const { value } = state.tokens[at]!;
  if (value > 0 && value < 1 && wordAt(state, at + 1) === 'the' && wordAt(state, at + 2) === 'time')
    dutyOf(state, at, Math.round(value * 100));
}

function full(state: State, at: number, word: string): void {
  const before = wordAt(state, at - 1);
  const next = wordAt(state, at + 1);
  if (notFullAfter.has(next) || (notFullBefore.has(before) && word === 'full')) return;
  if (goals.has(before)) {
    state.facts.targetChargePercent ??= 100;
    return;
  }
  if (state.cues.has('ask-charge-level') || next === 'again') return;
  if (word === 'fully' && !/^(charged|full|topped)$/.test(next)) return;
  const isSaid = before.startsWith('start') || word !== 'full' || next === 'charge' || isBeside(state, at);
  if (isSaid && nearestBattery(state, at)?.percent === -1) setCharge(state, at, 100);
}

/** A battery stands right before or behind, or just before in the same part. */
const isBeside = (state: State, at: number): boolean =>
  state.things.some(
    one =>
      one.kind === 'battery' &&
      (one.at === at + 1 ||
        (one.end <= at && at - one.end <= 2 && state.segments[one.at] === state.segments[at])),
  );

function flat(state: State, at: number): void {
  const owner = nearestBattery(state, at);
  const { cues } = state;
  if (!owner || owner.percent >= 0 || cues.has('ask-charge-level')) return;
  const isCharging = cues.has('charge') || state.things.some(one => one.kind === 'charger');
  if (cues.has('ask-how-long') && !isCharging) return;
  owner.percent = nearly.has(wordAt(state, at - 1)) ? nearlyEmptyPercent : 0;
}

/** "from 20 to 80%", "from 50 to 80" of a charge. */
function fromTo(state: State, at: number): void {
  const low = state.tokens[at + 1];
  if (low?.kind !== 'number' || wordAt(state, at + 2) !== 'to' || low.value > 100) return;
  const share = quantityAt(state, at + 3);
  const high = state.tokens[at + 3];
  const { cues } = state;
  const isCharging = cues.has('charge') || cues.has('charger') || cues.has('drive') || cues.has('generator');
  if (share?.unit.dimension !== 'percent' && !(isCharging && high?.kind === 'number' && high.value <= 100))
    return;
  setCharge(state, at, low.value);
  state.facts.targetChargePercent ??= share?.value ?? high!.value;
  low.isKnown = true;
  low.text = 'share';
  if (!share) high!.isKnown = true;
}

/** "get to 75", "sitting at 40": a share without its sign, where charging is spoken of. */
function bare(state: State, at: number, word: string): void {
  const number = state.tokens[at + 1]!;
  const { cues } = state;
  const before = wordAt(state, at - 1);
  if (number.value < 1 || number.value > 100 || !Number.isInteger(number.value)) return;
  if (!cues.has('charge') && !cues.has('charger') && !cues.has('drive') && before !== 'sitting') return;
  if (word === 'to' && climbing.has(before)) state.facts.targetChargePercent ??= number.value;
  else if (word === 'at' && standing.has(before) && number.value > 16) setCharge(state, at, number.value);
  else return;
  number.isKnown = true;
  number.text = 'share';
}
