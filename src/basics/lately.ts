import { dropOldest } from './oldest.ts';

/** A pure function of a text that keeps what it gave of late: what is asked for over and over is worked out once. */
export function lately<T>(work: (text: string) => T, most = 200): (text: string) => T {
  const kept = new Map<string, { readonly given: T }>();
  return text => {
    const known = kept.get(text);
    if (known) return known.given;
    const given = work(text);
    if (kept.size >= most) dropOldest(kept);
    kept.set(text, { given });
    return given;
  };
}
