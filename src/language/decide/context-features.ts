import type { Features } from './feature-list.ts';
import { classAt as at, bucket, type Frame, size } from './frame.ts';
import { hashText, mix } from './hash.ts';
import type { State } from './state.ts';

const none = hashText('-');

/** What speaks for the role of a mention: its own looks and its surroundings. */
export function contextFeatures(f: Frame, state: State, i: number, out: Features): void {
  surroundings(f, i, out);
  decidedAround(f, state, i, out);
}

/** The part that no decision changes. */
export function surroundings(f: Frame, i: number, out: Features): void {
  const own = f.cls[i]!;
  const n = f.cls.length;
  looks(f, i, out);
  neighbours(f, i, out);
  // The nearest thing or gear on each side.
  const left = f.left[i]!;
  const right = f.right[i]!;
  const L = at(f, left);
  const R = at(f, right);
  out.push(mix(70, L, own));
  out.push(mix(71, R, own));
  out.push(mix(72, L, bucket(i - left)));
  out.push(mix(73, R, bucket(right - i)));
  out.push(mix(74, mix(0, L, R), own));
  out.push(mix(77, mix(0, L, i - left < right - i ? 1 : 0), own));
  // Figures of the same unit before and after.
  let before = 0;
  let after = 0;
  for (let j = i - 1; j >= 0 && before < 3; j--) if (f.cls[j] === own) before++;
  for (let j = i + 1; j < n && after < 3; j++) if (f.cls[j] === own) after++;
  out.push(mix(91, mix(0, before, after), own));
  for (const p of f.present) out.push(mix(92, p, own));
  for (const c of f.context) out.push(mix(93, c, own));
  anotherValue(f, i, out);
  for (let k = 0; k < f.questions.length; k++) {
    const q = f.questions[k]!;
    out.push(mix(100 + k, q, own));
    out.push(mix(102, mix(k, q, own), at(f, i - 1)));
    out.push(mix(103, mix(k, q, own), at(f, i + 1)));
  }
  out.push(mix(94, own, (f.hasQuestion ? 1 : 0) + (n < 4 ? 2 : n < 8 ? 4 : n < 16 ? 6 : 8)));
  out.push(mix(95, at(f, 0), own));
  out.push(mix(96, at(f, n - 1), own));
  out.push(mix(97, own, (i === 0 ? 1 : 0) + (i === n - 1 ? 2 : 0)));
  out.push(mix(98, at(f, 0), at(f, 1)));
}

/** Which figure of the question before a number comes nearest to: a turn most often tells another value of it. */
function anotherValue(f: Frame, i: number, out: Features): void {
  const m = f.mentions[i]!;
  if (f.lastValues.length === 0 || (m.kind !== 'number' && m.kind !== 'amount')) return;
  let of = none;
  let least = Infinity;
  for (const last of f.lastValues) {
    const far = apart(m.value, last.value);
    if (far < least) {
      least = far;
      of = last.of;
    }
  }
  const own = f.cls[i]!;
  const far = least < 0.01 ? 0 : least < 1 ? 1 : least < 2 ? 2 : 3;
  out.push(mix(107, of, own));
  out.push(mix(108, mix(0, of, far), own));
  out.push(mix(109, own, far));
}

/** How many times two figures double from one to the other. */
const apart = (a: number, b: number): number =>
  a > 0 && b > 0 ? Math.abs(Math.log2(a / b)) : a === b ? 0 : 9;

function looks(f: Frame, i: number, out: Features): void {
  const m = f.mentions[i]!;
  const own = f.cls[i]!;
  out.push(mix(1, own));
  out.push(mix(2, own, size(Math.abs(m.value))));
  if (m.kind === 'number' || m.kind === 'amount') {
    out.push(mix(3, own, Math.round(Math.min(1e6, Math.abs(m.told)) * 10)));
    out.push(mix(4, own, m.rate ? hashText(m.rate) : none));
    if (m.isNegative) out.push(mix(5, own));
    out.push(mix(110, own, (Number.isInteger(m.told) ? 1 : 0) + (m.isNegative ? 2 : 0)));
  } else {
    out.push(mix(6, hashText(m.text)));
    out.push(mix(7, hashText(m.key)));
    if (m.fine !== undefined && m.fine >= 0) {
      out.push(mix(8, m.fine));
      out.push(mix(9, m.coarse!));
    }
  }
}

function neighbours(f: Frame, i: number, out: Features): void {
  const own = f.cls[i]!;
  const n = f.cls.length;
  for (let d = 1; d <= 4; d++) {
    const [l, r] = [at(f, i - d), at(f, i + d)];
    out.push(mix(10 + d, own, l));
    out.push(mix(20 + d, own, r));
    out.push(mix(30 + d, l));
    out.push(mix(40 + d, r));
  }
  const [l1, l2, r1, r2] = [at(f, i - 1), at(f, i - 2), at(f, i + 1), at(f, i + 2)];
  out.push(mix(51, l1, r1));
  out.push(mix(52, l2, l1));
  out.push(mix(53, r1, r2));
  out.push(mix(54, mix(0, own, l2), l1));
  out.push(mix(55, mix(0, own, r1), r2));
  out.push(mix(56, mix(0, own, l1), r1));
  // Words around, near or far, in the clause or beyond it.
  for (let d = 1; d <= 8; d++) {
    if (i - d >= 0 && f.mentions[i - d]!.kind !== 'sign')
      out.push(mix(f.clause[i - d] === f.clause[i] ? 60 : 61, f.cls[i - d]!));
    if (i + d < n && f.mentions[i + d]!.kind !== 'sign')
      out.push(mix(f.clause[i + d] === f.clause[i] ? 62 : 63, f.cls[i + d]!));
  }
  for (let d = 1; d <= 3; d++) {
    const l = f.mentions[i - d]?.coarse ?? -1;
    const r = f.mentions[i + d]?.coarse ?? -1;
    if (l >= 0) out.push(mix(64, mix(0, d, own), l));
    if (r >= 0) out.push(mix(65, mix(0, d, own), r));
  }
}

/** The part that speaks of what is decided already: of the things beside it, the figures around, those alike. */
export function decidedAround(f: Frame, state: State, i: number, out: Features): void {
  const own = f.cls[i]!;
  const { slots, told } = state;
  const left = f.left[i]!;
  const right = f.right[i]!;
  out.push(mix(75, mix(0, at(f, left), left >= 0 ? slots[left]! : -9), own));
  out.push(mix(76, mix(0, at(f, right), right < f.cls.length ? slots[right]! : -9), own));
  const isFigure = (j: number): boolean => {
    const { kind } = f.mentions[j]!;
    return kind !== 'thing' && kind !== 'noun';
  };
  let seen = 0;
  for (let t = told.length - 1; t >= 0 && seen < 2; t--) {
    const j = told[t]!;
    if (j >= i || !isFigure(j)) continue;
    out.push(mix(80 + seen, slots[j]!, own));
    if (seen === 0) out.push(mix(84, mix(0, slots[j]!, own), bucket(i - j)));
    seen++;
  }
  for (const j of told)
    if (j > i && isFigure(j)) {
      out.push(mix(86, slots[j]!, own));
      break;
    }
  for (const j of told) if (f.cls[j] === own) out.push(mix(90, slots[j]!, own));
}
