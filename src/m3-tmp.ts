import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
const play = (lines: string[]) => { let memory = emptyMemory(); let t = Date.parse('2026-01-15T09:00:00Z'); for (const l of lines) { const c = l.indexOf(': '); const r: any = converse(memory, { chat: 'c', from: l.slice(0, c), text: l.slice(c + 2), at: new Date((t += 60000)), kind: 'group' } as any); memory = r.memory; console.log('>', l, '\n  ', r.answer.intent, JSON.stringify(r.answer.reading?.margin), r.answer.text.split('\n').slice(0, 3).join(' | ')); } };
play(['ann: will a 1000W inverter run a 600W kettle?', 'ann: how many amps is that?']);
play(['di: five nights in may, fridge 1.4A average, 100Ah agm, 120W panel, enough?', "sol: I'm on the same trip with 100Ah lithium and a 2A average fridge"]);
for (const s of ['fridge averages 40W', 'the fridge averages 40W', 'fridge 40W on average', '40W is its average', 'fridge 40W average', '40W average', 'its 40W average']) play(['ann: 40W fridge on 120Ah lithium, how long', 'ann: ' + s]);
