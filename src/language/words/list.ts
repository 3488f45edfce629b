/** Words apart by spaces as a set: tables of words stay easy to read and to add to. */
export const list = (words: string): ReadonlySet<string> => new Set(words.split(/\s+/).filter(Boolean));
