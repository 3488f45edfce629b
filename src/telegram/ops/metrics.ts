import type { Transformer } from 'grammy';
import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client';
import type { Meter } from './deps.ts';

/** Milliseconds to seconds, as the trade's convention has it. */
const sec = (ms: number): number => ms / 1000;

/** Numbers for an operator, with the page that shows them. No label ever holds a chat, a person or a text. */
export interface Metrics extends Meter {
  readonly page: () => Promise<string>;
  readonly type: string;
}

/** Names of the Bot API alone, so that the number of series is bounded. */
const isMethod = (method: string): boolean => /^[a-zA-Z]{2,40}$/.test(method);

/**
 * Starts counting: updates by kind and by how they ended, how long they took, calls to Telegram by method and
 * status, floods, and the process's own memory, CPU and event loop.
 */
export function makeMetrics(now: () => number = performance.now.bind(performance)): Metrics {
  const registry = new Registry();
  const registers = [registry];
  collectDefaultMetrics({ register: registry, prefix: 'billywatt_' });
  const updates = new Counter({
    name: 'billywatt_updates_total',
    help: 'Updates that had something to do, by kind and by how they ended',
    labelNames: ['kind', 'end'] as const,
    registers,
  });
  const took = new Histogram({
    name: 'billywatt_update_seconds',
    help: 'From taking an update up to being done with it, waiting for its turn and for Telegram included',
    buckets: [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 30],
    registers,
  });
  const inWork = new Gauge({ name: 'billywatt_updates_in_work', help: 'Updates in work now', registers });
  const calls = new Counter({
    name: 'billywatt_calls_total',
    help: 'Calls to Telegram by method and status; "network" where none came back',
    labelNames: ['method', 'status'] as const,
    registers,
  });
  const floods = new Counter({
    name: 'billywatt_floods_total',
    help: 'Questions beyond the limit of a person or a group, by what they got',
    labelNames: ['verdict'] as const,
    registers,
  });

  const watch: Transformer = async (prev, method, payload, signal) => {
    const label = isMethod(method) ? method : 'other';
    try {
      const result = await prev(method, payload, signal);
      calls.inc({ method: label, status: result.ok ? '200' : String(result.error_code) });
      return result;
    } catch (error) {
      calls.inc({ method: label, status: 'network' });
      throw error;
    }
  };

  return {
    began: kind => {
      const began = now();
      inWork.inc();
      return end => {
        inWork.dec();
        updates.inc({ kind, end });
        took.observe(sec(now() - began));
      };
    },
    flooded: verdict => floods.inc({ verdict }),
    watch,
    page: () => registry.metrics(),
    type: registry.contentType,
  };
}
