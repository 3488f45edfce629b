import { meaningOf } from '#language/hazards/features.ts';
import { outOf } from '#conversation/answering/ruled-out.ts';
for (const t of process.argv.slice(2)) console.log(t, [...new Set(meaningOf(t).map(m => m.concept))].join(' '));
console.log(outOf({ arrangement: 'parallel', batteries: [{ capacityAh: 95, chemistry: 'agm' }, { capacityAh: 100, chemistry: 'agm' }] } as any, new Set(meaningOf('95Ah agm and 100Ah agm in parallel, what do I get?').map(m => m.concept)), false));
