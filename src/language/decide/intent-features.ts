import type { Stated } from './assemble.ts';
import type { Frame } from './features.ts';
import { hashText, mix } from './hash.ts';

/** What speaks for a question: the words, the shape of the message, what it states, the talk before. */
export function intentFeatures(f: Frame, stated: Stated, out: number[]): void {
  const { mentions, cls } = f;
  const n = mentions.length;
  const seen = new Set<number>();
  const put = (feature: number): void => {
    if (!seen.has(feature)) {
      seen.add(feature);
      out.push(feature);
    }
  };
  put(mix(300, n < 4 ? 1 : n < 8 ? 2 : n < 16 ? 3 : n < 30 ? 4 : 5));
  let lastBreak = 0;
  let mark = -1;
  for (let i = 0; i < n; i++) {
    put(mix(301, cls[i]!));
    const m = mentions[i]!;
    if (m.kind === 'thing' || m.kind === 'charger' || m.kind === 'chemistry') put(mix(302, hashText(m.key)));
    if (m.fine !== undefined && m.fine >= 0) {
      put(mix(306, m.fine));
      put(mix(307, m.coarse!));
    }
    const a = cls[i - 1] ?? 0;
    put(mix(303, a, cls[i]!));
    put(mix(304, mix(0, cls[i - 2] ?? 0, a), cls[i]!));
    put(mix(305, cls[i - 2] ?? 0, cls[i]!));
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
    put(mix(310, cls[i]!));
    put(mix(311, cls[i - 1] ?? 0, cls[i]!));
  }
  put(mix(312, cls[0] ?? 0));
  put(mix(313, cls[0] ?? 0, cls[1] ?? 0));
  put(mix(314, cls[n - 1] ?? 0));
  put(mix(315, cls[n - 2] ?? 0, cls[n - 1] ?? 0));
  put(mix(316, cls[lastBreak] ?? 0));
  put(mix(317, cls[lastBreak] ?? 0, cls[lastBreak + 1] ?? 0));
  put(mix(318, f.hasQuestion ? 1 : 0));
  // What is stated.
  const keys: string[] = [];
  for (const [key, value] of Object.entries(stated)) {
    keys.push(key);
    put(mix(320, hashText(key)));
    if (Array.isArray(value)) {
      put(mix(321, hashText(key), Math.min(4, value.length)));
      for (const row of value)
        if (row && typeof row === 'object')
          for (const k of Object.keys(row as object))
            if (k !== 'name') put(mix(322, hashText(`${key}.${k}`)));
      if (key === 'claims') for (const c of value as { unit: string }[]) put(mix(323, hashText(c.unit)));
      if (key === 'chargers') for (const c of value as { kind: string }[]) put(mix(324, hashText(c.kind)));
    } else if (value && typeof value === 'object')
      for (const k of Object.keys(value)) put(mix(322, hashText(`${key}.${k}`)));
  }
  keys.sort();
  for (let i = 0; i < keys.length; i++)
    for (let j = i + 1; j < keys.length; j++) put(mix(325, hashText(keys[i]!), hashText(keys[j]!)));
  put(mix(326, hashText(keys.join(' '))));
  if (Array.isArray(stated.loads) && stated.loads.some(l => l.supply === 'ac')) put(mix(327, 1));
  if (
    Array.isArray(stated.loads) &&
    stated.loads.length > 0 &&
    stated.loads.every(l => Object.keys(l).length === 1)
  )
    put(mix(327, 2));
  if (Array.isArray(stated.batteries) && stated.batteries.some(b => b.role === 'starter')) put(mix(327, 3));
  const hours = stated.durationH as number | undefined;
  if (hours !== undefined) put(mix(328, hours < 1 ? 1 : hours < 13 ? 2 : hours < 25 ? 3 : 4));
  for (const c of f.context) {
    put(mix(330, c));
    put(mix(331, c, n < 6 ? 1 : n < 12 ? 2 : 3));
    put(mix(332, c, hashText(keys.join(' '))));
    put(mix(333, c, cls[0] ?? 0));
    if (f.hasQuestion) put(mix(334, c));
  }
}
