import * as slot from '../propose/slots.ts';
import type { Stated } from './assemble.ts';
import type { Frame } from './frame.ts';
import { begun, ended, hashText, mix } from './hash.ts';
import { choiceOfValue } from './owner-features.ts';
import type { State } from './state.ts';
import type { Table } from './table.ts';

/** How many of the likeliest readings are weighed as wholes. */
export const mostRanked = 10;

const bucket = (n: number): number => Math.min(n, 4);
const size = (value: number): number =>
  Number.isFinite(value) && value > 0 ? Math.round(Math.log2(value)) : -20;
type Row = Readonly<Record<string, unknown>>;
const signature = (row: Row): string =>
  Object.keys(row)
    .filter(key => key !== 'name')
    .sort()
    .join('+');
const isBare = (row: Row): boolean => {
  for (const key of Object.keys(row)) if (key !== 'name' && key !== 'supply') return false;
  return true;
};
const rowsOf = (value: unknown): readonly Row[] => (Array.isArray(value) ? (value as Row[]) : []);

/** What speaks for a reading: by itself, or together with the question asked. */
interface Signs {
  alone(feature: number): void;
  withQuestion(template: number, filling: number): void;
}

/** Both. */
const both = (out: Signs, template: number, a: number, b = 0): void => {
  out.alone(mix(template, a, b));
  out.withQuestion(template + 1, mix(0, a, b));
};

/** Both as they are given to the signs. */
function bothOf(template: number, a: number, b: number) {
  return { feature: mix(template, a, b), template: template + 1, filling: mix(0, a, b) };
}

/** Lists of facts with their hashes; that one is not told is most often said of them, and mixed beforehand. */
const lists = (['loads', 'batteries', 'solar', 'chargers', 'claims', 'days'] as const).map(list => {
  const id = hashText(list);
  const untold = [bothOf(710, id, 0), bothOf(714, id, hashText(''))] as const;
  return { list, id, untold };
});

/** Whether the facts go together (`keys`: their names in order), with each other and with the question. */
function factSigns(f: Frame, stated: Stated, keys: readonly string[], out: Signs): void {
  const ids = keys.map(hashText);
  const put = (template: number, a: number, b = 0): void => both(out, template, a, b);
  const together = togetherOf(keys);
  put(700, together);
  for (const id of ids) put(702, id);
  for (let i = 0; i < ids.length; i++)
    for (let j = i + 1; j < ids.length; j++) out.alone(mix(704, ids[i]!, ids[j]!));
  for (const first of f.questions) {
    out.withQuestion(705, first);
    for (const id of ids) out.alone(mix(707, first, id));
  }
  for (const c of f.context) {
    out.withQuestion(708, c);
    out.alone(mix(709, c, together));
  }
  // Each list by what its rows tell.
  for (const { list, id, untold } of lists) {
    const rows = rowsOf(stated[list]);
    if (rows.length === 0) {
      for (const { feature, template, filling } of untold) {
        out.alone(feature);
        out.withQuestion(template, filling);
      }
      continue;
    }
    put(710, id, bucket(rows.length));
    const kinds = rows.map(signature);
    for (const kind of kinds) put(712, id, hashText(kind));
    if (kinds.length < 2) put(714, id, hashText(kinds[0] ?? ''));
    else {
      const different = [...new Set(kinds)].sort();
      put(714, id, hashText(different.join(' ')));
      put(716, id, different.length === 1 ? 1 : different.length === rows.length ? 2 : 3);
    }
    for (const row of rows)
      for (const key of Object.keys(row)) {
        const value = row[key];
        if (typeof value === 'number') out.alone(mix(718, mix(0, id, hashText(key)), size(Math.abs(value))));
      }
  }
  const loads = rowsOf(stated.loads);
  const bare = loads.filter(isBare).length;
  put(720, bucket(bare), bucket(loads.length - bare));
  const claims = rowsOf(stated.claims);
  put(722, bucket(claims.length), bucket(new Set(claims.map(c => c.who)).size));
  put(724, new Set(claims.map(c => c.unit)).size, claims.length > 0 ? 1 : 0);
  for (const key of ['durationH', 'dailyUseAh', 'volts', 'ambientC', 'netCurrentA'] as const) {
    const value = stated[key];
    if (typeof value === 'number') out.alone(mix(726, hashText(key), size(Math.abs(value))));
  }
  if (typeof stated.durationH === 'number')
    put(
      727,
      loads.some(l => l.hoursPerDay !== undefined || l.minutesPerDay !== undefined)
        ? 1
        : loads.some(l => l.hoursOnce !== undefined)
          ? 2
          : 0,
      stated.durationH < 24 ? 1 : 0,
    );
}

/** Each mention with its role, and what is left over: how the loads that are told go with it. */
function roleSigns(f: Frame, state: State, stated: Stated, out: Signs): void {
  const put = (template: number, a: number, b = 0): void => both(out, template, a, b);
  let left = 0;
  let leftThings = 0;
  let leftward = 0;
  let rightward = 0;
  let crossings = 0;
  const { mentions } = f;
  for (let i = 0; i < mentions.length; i++) {
    const s = state.slots[i]!;
    if (s < 0) continue;
    const m = mentions[i]!;
    if (s === slot.none) {
      if (m.kind === 'amount' || m.kind === 'number') {
        left++;
        put(730, f.cls[i]!, m.rate ? 1 : 0);
        out.withQuestion(732, mix(0, f.cls[i]!, f.cls[i - 1] ?? 0));
        out.withQuestion(733, mix(0, f.cls[i]!, f.cls[i + 1] ?? 0));
      } else if (m.kind === 'thing' || m.kind === 'noun') leftThings++;
      if (m.kind !== 'amount' && m.kind !== 'number' && m.kind !== 'noun') put(734, f.cls[i]!);
      continue;
    }
    put(736, s, f.cls[i]!);
    if (m.variants.length > 0) {
      const choice = choiceOfValue(m, state.variants[i]!);
      put(764, choice, m.dimension ? hashText(m.dimension) : 0);
      out.alone(mix(766, choice, f.cls[i - 1] ?? 0));
      out.alone(mix(767, choice, f.cls[i - 3] ?? 0));
    }
    out.alone(mix(738, mix(0, s, f.cls[i - 1] ?? 0), f.cls[i]!));
    out.alone(mix(739, mix(0, s, f.cls[i + 1] ?? 0), f.cls[i]!));
    const o = state.owners[i]!;
    if (o >= 0) {
      if (o < i) leftward++;
      else rightward++;
      for (let j = Math.min(o, i) + 1; j < Math.max(o, i); j++)
        if (state.slots[j] === slot.load || state.slots[j] === slot.capacity) crossings++;
    }
  }
  put(740, bucket(left));
  put(742, bucket(leftThings));
  put(744, bucket(leftward), bucket(rightward));
  put(746, bucket(crossings));
  let before = -1;
  for (let i = 0; i < mentions.length; i++) {
    const s = state.slots[i]!;
    if (s <= 0) continue;
    out.alone(mix(748, before + 2, s));
    out.withQuestion(749, mix(0, before + 2, s));
    before = s;
  }
  out.alone(mix(750, before + 2, 999));
  ownedSigns(f, state, out);
  const loads = rowsOf(stated.loads);
  const bare = loads.filter(isBare).length;
  for (const first of f.questions) {
    out.alone(mix(752, first, bucket(bare)));
    out.alone(mix(753, mix(0, first, bucket(left)), bucket(loads.length)));
  }
  const names = loads.map(row => row.name);
  put(754, names.length - new Set(names).size, names.includes(undefined) ? 1 : 0);
}

/** How figures lie to what owns them: how far, over what, and whether a value is likely for that thing. */
function ownedSigns(f: Frame, state: State, out: Signs): void {
  const put = (template: number, a: number, b = 0): void => both(out, template, a, b);
  const { mentions } = f;
  let far = 0;
  let over = 0;
  for (let i = 0; i < mentions.length; i++) {
    const o = state.owners[i]!;
    const s = state.slots[i]!;
    if (o < 0 || s <= 0) continue;
    const owner = mentions[o]!;
    put(756, mix(0, s, hashText(owner.key)), size(Math.abs(state.values[i]!)));
    const [from, to] = o < i ? [o, i] : [i, o];
    far = Math.max(far, to - from);
    for (let j = from + 1; j < to; j++)
      if ((mentions[j]!.kind === 'thing' || mentions[j]!.kind === 'noun') && state.slots[j] === slot.none)
        over++;
    // A nearer thing that was passed over, or one that stands right beside the figure on its other side.
    const beside = mentions[o < i ? i + 1 : i - 1];
    if (beside && beside !== owner && (beside.kind === 'thing' || beside.kind === 'noun'))
      put(758, s, o < i ? 1 : 0);
  }
  put(760, far < 3 ? 0 : far < 6 ? 1 : far < 10 ? 2 : 3, Math.min(over, 3));
  for (let i = 0; i < mentions.length; i++) {
    const m = mentions[i]!;
    if (state.slots[i] !== slot.none || (m.kind !== 'thing' && m.kind !== 'noun')) continue;
    const next = mentions[i + 1];
    const before = mentions[i - 1];
    const isBeside = (x: typeof next): number => (x?.kind === 'amount' || x?.kind === 'number' ? 1 : 0);
    put(762, isBeside(before) + 2 * isBeside(next), f.cls[i + 1] ?? 0);
  }
}

/** The facts that are told, by their names together. */
const togetherOf = (keys: readonly string[]): number => hashText(keys.join(' '));

/** Whether the question that the words point to and the one taken suit the facts. */
const questionSign = (first: number, question: number, together: number): number =>
  mix(706, mix(0, first, question), together);

/** What speaks for a reading as a whole, as features to learn from. */
export function rankFeatures(f: Frame, state: State, stated: Stated, intent: string, out: number[]): void {
  const question = hashText(intent);
  const signs: Signs = {
    alone: feature => void out.push(feature),
    withQuestion: (template, filling) => void out.push(mix(template, filling, question)),
  };
  const keys = Object.keys(stated).sort();
  const together = togetherOf(keys);
  factSigns(f, stated, keys, signs);
  roleSigns(f, state, stated, signs);
  for (const first of f.questions) out.push(questionSign(first, question, together));
}

/** Weights of whole readings: of their features, and of the logarithms they come with (roles, question, plan). */
export interface Ranker {
  readonly features: Table;
  /** Of the roles' log-probability and of the question's. */
  readonly logs: readonly [roles: number, question: number];
}

/** Weighs one reading with each of the questions that it may ask: what speaks for it alone is summed once. */
export class ReadingScores implements Signs {
  readonly #ranker: Ranker;
  readonly #frame: Frame;
  readonly #together: number;
  /** Features by themselves with their weight together, and those that wait for a question. */
  readonly #own: number[] = [];
  readonly #halves: number[] = [];
  #alone = 0;

  constructor(ranker: Ranker, frame: Frame, state: State, stated: Stated) {
    this.#ranker = ranker;
    this.#frame = frame;
    const keys = Object.keys(stated).sort();
    this.#together = togetherOf(keys);
    factSigns(frame, stated, keys, this);
    roleSigns(frame, state, stated, this);
  }

  alone(feature: number): void {
    this.#own.push(feature);
    this.#alone += this.#ranker.features.weight(feature);
  }

  withQuestion(template: number, filling: number): void {
    this.#halves.push(begun(template, filling));
  }

  /** The weight of what speaks for it with a question, in units of the table's scale. */
  #asked(table: Table, question: number): number {
    let sum = 0;
    for (const half of this.#halves) sum += table.weight(ended(half, question));
    for (const first of this.#frame.questions)
      sum += table.weight(questionSign(first, question, this.#together));
    return sum;
  }

  /** The score with a question, by the logarithms of the probabilities of its roles and of the question. */
  with(intent: string, roles: number, asked: number): number {
    const { features, logs } = this.#ranker;
    const sum = this.#alone + this.#asked(features, hashText(intent));
    return logs[0] * roles + logs[1] * asked + features.scale * sum;
  }

  /** What it weighs with a question in another table with one column. */
  weightIn(table: Table, intent: string): number {
    return (table.sum(this.#own) + this.#asked(table, hashText(intent))) * table.scale;
  }
}
