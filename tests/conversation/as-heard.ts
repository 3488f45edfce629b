import { hear } from '#conversation/hear.ts';
import { type Interpreted, interpret } from '#conversation/interpret.ts';
import { emptyMemory, type Memory } from '#conversation/memory.ts';
import type { Message } from '#conversation/message.ts';
import type { Stated } from '#rig/rig.ts';

/** A message held against memory as if it had been read for sure as this question with these facts. */
export function interpretedAs(
  intent: string,
  facts: Stated,
  { text = '', memory = emptyMemory() }: { readonly text?: string; readonly memory?: Memory } = {},
): Interpreted {
  const message: Message = {
    chat: 'camp',
    from: 'ann',
    text,
    at: new Date('2026-01-15T09:00:00Z'),
    kind: 'private',
  };
  const sure = { probability: 1, certainty: 1, margin: 20, second: undefined, options: [], issues: [] };
  return interpret(memory, message, { ...hear(memory, message), ...sure, intent, facts });
}
