import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { read } from '#language/reading.ts';
for (const text of process.argv.slice(2)) {
  const r: any = converse(emptyMemory(), { chat: 'c', from: 'ann', text, at: new Date('2026-01-15T09:00:00Z'), kind: 'private' } as any);
  const p: any = read(text);
  console.log(text, '\n ', r.answer.intent, r.answer.hazards, JSON.stringify(r.answer.understood), p.hazards, p.hazardShares ?? '', Math.round(p.certainty*100)/100, p.options?.slice(0,2).map((o: any)=>[o.intent, Math.round(o.probability*100)]), '\n  ', r.answer.text.split('\n')[0]);
}
