import type { Stated } from './assemble.ts';
import type { Features } from './feature-list.ts';
import type { Frame } from './frame.ts';
import { hashOn, hashText, mix } from './hash.ts';

/** What speaks for a question by the words alone: the words, the shape of the message, the talk before. Some come twice. */
export function wordFeatures(f: Frame, out: Features): void {
  const { mentions, cls } = f;
  const n = mentions.length;
  out.push(mix(300, n < 4 ? 1 : n < 8 ? 2 : n < 16 ? 3 : n < 30 ? 4 : 5));
  let lastBreak = 0;
  let mark = -1;
  for (let i = 0; i < n; i++) {
    out.push(mix(301, cls[i]!));
    const m = mentions[i]!;
    if (m.kind === 'thing' || m.kind === 'charger' || m.kind === 'chemistry')
      out.push(mix(302, hashText(m.key)));
    if (m.fine !== undefined && m.fine >= 0) {
      out.push(mix(306, m.fine));
      out.push(mix(307, m.coarse!));
    }
    const a = cls[i - 1] ?? 0;
    out.push(mix(303, a, cls[i]!));
    out.push(mix(304, mix(0, cls[i - 2] ?? 0, a), cls[i]!));
    out.push(mix(305, cls[i - 2] ?? 0, cls[i]!));
    if (m.text === '?') mark = i;
  }
  // The clause that ends in a question mark, or the last one: where the question most often stands.
  const end = mark >= 0 ? mark : n;
  for (let i = end - 1; i >= 0; i--) {
    const t = mentions[i]!.text;
    if (t === '.' || t === '?' || t === ';' || t === '!') {
      lastBreak = i + 1;
      break;
    }
  }
  for (let i = lastBreak; i < end; i++) {
    out.push(mix(310, cls[i]!));
    out.push(mix(311, cls[i - 1] ?? 0, cls[i]!));
    // "How long" beside a charger asks something else than beside a fridge.
    for (const kind of f.present) out.push(mix(319, kind, cls[i]!));
  }
  out.push(mix(312, cls[0] ?? 0));
  out.push(mix(313, cls[0] ?? 0, cls[1] ?? 0));
  out.push(mix(314, cls[n - 1] ?? 0));
  out.push(mix(315, cls[n - 2] ?? 0, cls[n - 1] ?? 0));
  out.push(mix(316, cls[lastBreak] ?? 0));
  out.push(mix(317, cls[lastBreak] ?? 0, cls[lastBreak + 1] ?? 0));
  out.push(mix(318, f.hasQuestion ? 1 : 0));
  for (const c of f.context) {
    out.push(mix(330, c));
    out.push(mix(331, c, n < 6 ? 1 : n < 12 ? 2 : 3));
    out.push(mix(333, c, cls[0] ?? 0));
    if (f.hasQuestion) out.push(mix(334, c));
  }
  heardFeatures(f, out);
}

const speakers = { own: 0, other: 3, bot: 9 } as const;

/** What the lines before speak of: by itself, by whom it was said, how long ago. */
function heardFeatures({ heard }: Frame, out: Features): void {
  for (const { whose, ago, words } of heard)
    for (const word of words) {
      out.push(mix(341, word));
      out.push(mix(342, word, speakers[whose] + ago));
      if (whose !== 'bot') out.push(mix(340, word, ago));
    }
}

/** What speaks for a question by what the message states. Some come twice. */
export function factFeatures(f: Frame, stated: Stated, out: Features): void {
  const keys: string[] = [];
  for (const [key, value] of Object.entries(stated)) {
    keys.push(key);
    const id = hashText(key);
    const inside = hashOn(id, '.');
    out.push(mix(320, id));
    if (Array.isArray(value)) {
      out.push(mix(321, id, Math.min(4, value.length)));
      for (const row of value)
        if (row && typeof row === 'object')
          for (const k of Object.keys(row as object)) if (k !== 'name') out.push(mix(322, hashOn(inside, k)));
      if (key === 'claims') for (const c of value as { unit: string }[]) out.push(mix(323, hashText(c.unit)));
      if (key === 'chargers')
        for (const c of value as { kind?: string }[]) out.push(mix(324, hashText(c.kind ?? 'mains')));
    } else if (value && typeof value === 'object')
      for (const k of Object.keys(value)) out.push(mix(322, hashOn(inside, k)));
  }
  keys.sort();
  const ids = keys.map(hashText);
  for (let i = 0; i < ids.length; i++)
    for (let j = i + 1; j < ids.length; j++) out.push(mix(325, ids[i]!, ids[j]!));
  const together = hashText(keys.join(' '));
  out.push(mix(326, together));
  if (Array.isArray(stated.loads) && stated.loads.some(l => l.supply === 'ac')) out.push(mix(327, 1));
  if (
    Array.isArray(stated.loads) &&
    stated.loads.length > 0 &&
    stated.loads.every(l => Object.keys(l).length === 1)
  )
    out.push(mix(327, 2));
  if (Array.isArray(stated.batteries) && stated.batteries.some(b => b.role === 'starter'))
    out.push(mix(327, 3));
  const hours = stated.durationH as number | undefined;
  if (hours !== undefined) out.push(mix(328, hours < 1 ? 1 : hours < 13 ? 2 : hours < 25 ? 3 : 4));
  for (const c of f.context) out.push(mix(332, c, together));
}
