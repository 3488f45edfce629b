import { all, type Candidate, self, writer } from '../propose/candidates.ts';
import * as slot from '../propose/slots.ts';
import type { Mention } from '../recognise/mention.ts';
import { sayingVerbs, speakers } from '../words/en/people.ts';
import { hashText, mix } from './hash.ts';
import type { State } from './state.ts';

/** What the talk before leaves for the reading of a message. */
export interface TalkContext {
  /** The question asked before, where there is one. */
  readonly lastIntent?: string;
  /** Facts of that question: "batteries", "loads". */
  readonly lastKeys?: readonly string[];
  /** What the bot asked back for, as kinds and dimensions: "battery", "A". */
  readonly asked?: readonly string[];
  /** Things last spoken of, the likeliest to be meant last. */
  readonly things?: readonly string[];
  /** The last question was this person's own. */
  readonly isOwn?: boolean;
  /** A rig is known. */
  readonly hasRig?: boolean;
  /** Names of people in the chat, small. */
  readonly people?: readonly string[];
}

/** Notes what a feature's number stands for; only for explaining. */
export type Namer = (feature: number, name: string) => void;

/** Everything of a message that features look at, worked out once. */
export interface Frame {
  readonly mentions: readonly Mention[];
  /** The thing of the talk before that a figure without a name is of. */
  readonly spokenOf?: string;
  /** Hashes of the classes. */
  readonly cls: Uint32Array;
  readonly hasQuestion: boolean;
  readonly context: readonly number[];
  readonly clause: Uint8Array;
  /** Gear and things: whether a mention is one, for the nearest on each side. */
  readonly isAnchor: Uint8Array;
  readonly present: readonly number[];
  readonly contextNames: readonly string[];
  /** The questions that the words alone point to, likeliest first, as hashes. */
  readonly questions: readonly number[];
}

const anchors: ReadonlySet<string> = new Set([
  'thing',
  'noun',
  'battery',
  'chemistry',
  'role',
  'station',
  'solar',
  'controller',
  'charger',
  'inverter',
  'cable',
  'fuse',
  'alternator',
  'monitor',
  'bms',
  'mains',
  'regulator',
  'person',
]);
const breaks: ReadonlySet<string> = new Set(['.', ';', '!', '?', ':', '-', '(', ')', '•', '|', '/']);

export function frameOf(mentions: readonly Mention[], context: TalkContext = {}): Frame {
  const n = mentions.length;
  const cls = new Uint32Array(n);
  const clause = new Uint8Array(n);
  const isAnchor = new Uint8Array(n);
  const present = new Set<number>();
  let at = 0;
  let hasQuestion = false;
  for (let i = 0; i < n; i++) {
    const m = mentions[i]!;
    cls[i] = hashText(m.cls);
    if (m.kind === 'sign' && breaks.has(m.text)) at++;
    if (m.text === '?') hasQuestion = true;
    clause[i] = Math.min(at, 255);
    if (anchors.has(m.kind)) isAnchor[i] = 1;
    if (m.kind !== 'word' && m.kind !== 'sign') present.add(hashText(m.kind === 'amount' ? m.cls : m.kind));
  }
  const names: string[] = [];
  names.push(`last:${context.lastIntent ?? 'nothing'}`);
  for (const key of context.lastKeys ?? []) names.push(`had:${key}`);
  for (const key of context.asked ?? []) names.push(`asked:${key}`);
  if (context.lastIntent) names.push(context.isOwn ? 'own' : 'another');
  if (context.hasRig) names.push('rig');
  if (context.things?.length) names.push(`things:${Math.min(3, context.things.length)}`);
  return {
    mentions,
    spokenOf: context.things?.at(-1),
    cls,
    hasQuestion,
    context: names.map(hashText),
    clause,
    isAnchor,
    present: [...present],
    contextNames: names,
    questions: [],
  };
}

const outside = hashText('<none>');
const at = (f: Frame, i: number): number => (i >= 0 && i < f.cls.length ? f.cls[i]! : outside);
const bucket = (n: number): number => (n < 6 ? n : n < 9 ? 6 : n < 14 ? 7 : 8);
const size = (value: number): number =>
  Number.isFinite(value) && value > 0 ? Math.max(-12, Math.min(24, Math.round(Math.log2(value) * 2))) : -20;

/** What speaks for the role of a mention: its own looks and its surroundings. */
export function contextFeatures(f: Frame, state: State, i: number, out: number[]): void {
  const m = f.mentions[i]!;
  const own = f.cls[i]!;
  const n = f.cls.length;
  out.push(mix(1, own));
  out.push(mix(2, own, size(Math.abs(m.value))));
  if (m.kind === 'number' || m.kind === 'amount') {
    out.push(mix(3, own, Math.round(Math.min(1e6, Math.abs(m.told)) * 10)));
    out.push(mix(4, own, hashText(m.rate ?? '-')));
    if (m.isNegative) out.push(mix(5, own));
  } else {
    out.push(mix(6, hashText(m.text)), mix(7, hashText(m.key)));
    if (m.fine !== undefined && m.fine >= 0) out.push(mix(8, m.fine), mix(9, m.coarse!));
  }
  for (let d = 1; d <= 4; d++) {
    out.push(mix(10 + d, own, at(f, i - d)), mix(20 + d, own, at(f, i + d)));
    out.push(mix(30 + d, at(f, i - d)), mix(40 + d, at(f, i + d)));
  }
  out.push(
    mix(51, at(f, i - 1), at(f, i + 1)),
    mix(52, at(f, i - 2), at(f, i - 1)),
    mix(53, at(f, i + 1), at(f, i + 2)),
  );
  out.push(
    mix(54, mix(0, own, at(f, i - 2)), at(f, i - 1)),
    mix(55, mix(0, own, at(f, i + 1)), at(f, i + 2)),
    mix(56, mix(0, own, at(f, i - 1)), at(f, i + 1)),
  );
  // Words around, near or far, in the clause or beyond it.
  for (let d = 1; d <= 8; d++) {
    if (i - d >= 0 && f.mentions[i - d]!.kind !== 'sign')
      out.push(mix(f.clause[i - d] === f.clause[i] ? 60 : 61, at(f, i - d)));
    if (i + d < n && f.mentions[i + d]!.kind !== 'sign')
      out.push(mix(f.clause[i + d] === f.clause[i] ? 62 : 63, at(f, i + d)));
  }
  for (let d = 1; d <= 3; d++) {
    const [l, r] = [f.mentions[i - d]?.coarse ?? -1, f.mentions[i + d]?.coarse ?? -1];
    if (l >= 0) out.push(mix(64, mix(0, d, own), l));
    if (r >= 0) out.push(mix(65, mix(0, d, own), r));
  }
  // The nearest thing or gear on each side, and what it was taken for.
  let left = i - 1;
  while (left >= 0 && !f.isAnchor[left]) left--;
  let right = i + 1;
  while (right < n && !f.isAnchor[right]) right++;
  const L = left >= 0 ? at(f, left) : outside;
  const R = right < n ? at(f, right) : outside;
  const sl = left >= 0 ? state.slots[left]! : -9;
  const sr = right < n ? state.slots[right]! : -9;
  out.push(
    mix(70, L, own),
    mix(71, R, own),
    mix(72, L, bucket(i - left)),
    mix(73, R, bucket(right - i)),
    mix(74, mix(0, L, R), own),
    mix(75, mix(0, L, sl), own),
    mix(76, mix(0, R, sr), own),
  );
  out.push(mix(77, mix(0, L, i - left < right - i ? 1 : 0), own));
  // What was decided of the figures before and after.
  let k = 0;
  for (let j = i - 1; j >= 0 && k < 2; j--) {
    const s = state.slots[j]!;
    if (s > 0 && f.mentions[j]!.kind !== 'thing' && f.mentions[j]!.kind !== 'noun') {
      out.push(mix(80 + k, s, own));
      if (k === 0) out.push(mix(84, mix(0, s, own), bucket(i - j)));
      k++;
    }
  }
  for (let j = i + 1; j < n; j++) {
    const s = state.slots[j]!;
    if (s > 0 && f.mentions[j]!.kind !== 'thing' && f.mentions[j]!.kind !== 'noun') {
      out.push(mix(86, s, own));
      break;
    }
  }
  // Roles that are filled, figures of the same unit before and after.
  let before = 0;
  let after = 0;
  for (let j = 0; j < n; j++) {
    if (j !== i && f.cls[j] === own) {
      if (j < i) before++;
      else after++;
    }
    const s = state.slots[j]!;
    if (j !== i && s > 0 && f.cls[j] === own) out.push(mix(90, s, own));
  }
  out.push(mix(91, mix(0, Math.min(before, 3), Math.min(after, 3)), own));
  for (const p of f.present) out.push(mix(92, p, own));
  for (const c of f.context) out.push(mix(93, c, own));
  for (let k = 0; k < f.questions.length; k++) {
    const q = f.questions[k]!;
    out.push(mix(100 + k, q, own));
    out.push(mix(102, mix(k, q, own), at(f, i - 1)), mix(103, mix(k, q, own), at(f, i + 1)));
  }
  out.push(mix(94, own, (f.hasQuestion ? 1 : 0) + (n < 4 ? 2 : n < 8 ? 4 : n < 16 ? 6 : 8)));
  out.push(mix(95, at(f, 0), own), mix(96, at(f, n - 1), own));
  out.push(mix(97, own, (i === 0 ? 1 : 0) + (i === n - 1 ? 2 : 0)));
  out.push(mix(98, at(f, 0), at(f, 1)));
}

/** What speaks for an owner: where it stands, what stands between. */
export function ownerFeatures(f: Frame, state: State, i: number, c: Candidate, out: number[]): void {
  const s = c.slot;
  const row = slot.slots[s]!;
  const group = hashText(row.group);
  const m = f.mentions[i]!;
  const put = (template: number, a: number, b = 0): void => {
    out.push(mix(template, mix(0, a, b), s + 1), mix(template + 1, mix(0, a, b), group));
  };
  if (c.variant !== -1) {
    const why = c.variant >= 0 ? m.variants[c.variant]!.why : 'hours';
    put(200, hashText(why), f.cls[i]!);
    if (why === 'times') {
      // The count that stands nearest is the likeliest.
      const count = m.variants[c.variant]!.count ?? 0;
      let far = 99;
      for (let j = 0; j < f.mentions.length; j++)
        if (j !== i && (f.mentions[j]!.told === count || (count === 2 && f.mentions[j]!.text === 'twice')))
          far = Math.min(far, Math.abs(j - i));
      put(202, bucket(far));
    }
  }
  // How likely a value is in this slot.
  put(204, size(Math.abs(c.value)));
  if (!row.owner && !row.isMaker) {
    if (state.has(s)) put(206, 1);
    return;
  }
  if (c.owner === self || c.owner === all || c.owner === writer || c.owner === -1) {
    put(210, c.owner + 10, 0);
    put(
      212,
      c.owner + 10,
      Math.min(
        4,
        row.owner === 'load' || row.group === 'load'
          ? state.loads().length
          : row.group === 'battery'
            ? state.batteries().length
            : 0,
      ),
    );
    put(214, c.owner + 10, at(f, i + 1));
    put(216, c.owner + 10, at(f, i - 1));
    if (c.owner === all) for (let d = -4; d <= 4; d++) if (d !== 0) put(218, at(f, i + d));
    return;
  }
  const o = c.owner;
  const owner = f.mentions[o]!;
  const [from, to] = o < i ? [o, i] : [i, o];
  const isLeft = o < i ? 1 : 0;
  let figures = 0;
  let things = 0;
  let commas = 0;
  let stops = 0;
  let ands = 0;
  let lines = 0;
  for (let j = from + 1; j < to; j++) {
    const b = f.mentions[j]!;
    if (b.kind === 'amount' || b.kind === 'number') figures++;
    else if (f.isAnchor[j] && state.slots[j] !== slot.none) things++;
    else if (b.text === ',') commas++;
    else if (b.kind === 'sign' && breaks.has(b.text)) stops++;
    else if (b.text === 'and' || b.text === 'plus' || b.text === '+' || b.text === '&' || b.text === 'with')
      ands++;
  }
  if (f.clause[from] !== f.clause[to]) lines = 1;
  const kind = hashText(
    owner.kind === 'word'
      ? speakers.has(owner.text)
        ? 'i'
        : 'word'
      : owner.kind === 'amount'
        ? owner.cls
        : owner.kind,
  );
  const dir = isLeft * 10;
  put(220, dir + bucket(to - from), kind);
  put(222, dir + Math.min(figures, 3), Math.min(things, 3));
  put(224, dir + Math.min(commas, 3), Math.min(stops, 2) * 4 + Math.min(ands, 2));
  put(226, dir + lines, Math.min(figures, 3));
  if (to - from <= 4) for (let j = from + 1; j < to; j++) put(228, dir, f.cls[j]!);
  if (to - from === 2) put(230, dir, f.cls[from + 1]!);
  if (to - from === 1) put(232, dir, kind);
  put(234, dir, at(f, i + 1));
  put(236, dir, at(f, i - 1));
  // What the owner has already, and what the mention's neighbours went to.
  let has = 0;
  let others = 0;
  let lastOwner = -9;
  let lastDir = -1;
  for (let j = 0; j < f.mentions.length; j++) {
    const t = state.slots[j]!;
    if (t <= 0 || j === i) continue;
    if (state.owners[j] === o || j === o) has |= 1 << (t % 24);
    if (t === s && state.owners[j]! >= 0) {
      others++;
      lastDir = state.owners[j]! < j ? 1 : 0;
    }
    if (j < i && state.owners[j]! >= 0) lastOwner = state.owners[j]!;
  }
  put(238, has === 0 ? 0 : 1, dir);
  put(240, has, 0);
  put(242, lastDir + 1, isLeft);
  put(244, lastOwner === o ? 1 : lastOwner === -9 ? 2 : 0, dir);
  put(246, Math.min(others, 3), dir);
  // Whether it is the nearest of its kind on its side.
  let isNearest = 1;
  for (let j = from + 1; j < to; j++) if (f.mentions[j]!.kind === owner.kind) isNearest = 0;
  put(248, isNearest * 2 + isLeft, kind);
  if (row.group === 'load') put(250, hashText(owner.key), size(Math.abs(c.value)));
  if (row.group === 'claim') {
    const next = f.mentions[o + 1];
    const isSaid = next && (sayingVerbs.has(next.text) || next.text === ':');
    put(252, isSaid ? 1 : 0, dir);
    put(254, at(f, o + 1), dir);
    put(256, at(f, o - 1), dir);
    let isUsed = 0;
    for (let j = 0; j < f.mentions.length; j++)
      if (j !== i && slot.claims.has(state.slots[j]!) && state.owners[j] === o) isUsed = 1;
    put(258, isUsed, dir);
    put(260, hashText(owner.cls), dir);
  }
  if (row.group === 'count') put(262, kind, to - from);
}

/** What speaks for a load running on mains through an inverter or at a site. */
export function supplyFeatures(f: Frame, state: State, i: number, out: number[]): void {
  const m = f.mentions[i]!;
  const known = hashText(m.supply ?? '-');
  let mains = 0;
  let near = 99;
  let unit = 0;
  for (let j = 0; j < f.mentions.length; j++) {
    const o = f.mentions[j]!;
    if (
      o.kind === 'inverter' ||
      o.kind === 'wave' ||
      o.kind === 'mains' ||
      (o.kind === 'amount' && o.unit === 'V' && o.value >= 100)
    ) {
      mains |= o.kind === 'inverter' || o.kind === 'wave' ? 1 : 2;
      near = Math.min(near, Math.abs(j - i));
    }
    if (state.owners[j] === i || j === i) {
      if (state.slots[j] === slot.loadCurrent) unit |= 1;
      if (state.slots[j] === slot.loadPower)
        unit |= 2 + (state.values[j]! > 400 ? 4 : 0) + (state.values[j]! > 100 ? 8 : 0);
    }
  }
  out.push(
    mix(400, known),
    mix(401, known, mains),
    mix(402, known, mains * 100 + bucket(near)),
    mix(403, known, unit),
    mix(404, mix(0, known, unit), mains),
    mix(405, hashText(m.key)),
    mix(406, hashText(m.key), mains > 0 ? 1 : 0),
    mix(407, m.coarse ?? -1, mains > 0 ? 1 : 0),
  );
  for (const q of f.questions) out.push(mix(408, q, known), mix(409, q, mains));
  for (const c of f.context) out.push(mix(410, c, known));
  for (let d = 1; d <= 3; d++) out.push(mix(411, at(f, i + d), d), mix(412, at(f, i - d), d));
}
