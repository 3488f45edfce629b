import { drawBars } from './bars.ts';
import { drawCharge } from './charge.ts';
import type { Chart } from './chart.ts';
import { drawClaims } from './claims.ts';
import type { Drawing } from './drawing.ts';
import { drawMonths } from './months.ts';
import { drawPlan } from './plan.ts';
import { drawWiring } from './wiring.ts';

/** A chart as marks on a page as wide as a phone. Pure. */
export function draw(chart: Chart): Drawing {
  switch (chart.kind) {
    case 'charge':
      return drawCharge(chart);
    case 'bars':
      return drawBars(chart);
    case 'claims':
      return drawClaims(chart);
    case 'months':
      return drawMonths(chart);
    case 'plan':
      return drawPlan(chart);
    case 'wiring':
      return drawWiring(chart);
  }
}
