import { rigOf } from '../kept/remembered.ts';
import type { Frame, Memory } from '../memory.ts';
import type { FactSource } from './origins.ts';

/** The rig that a question before went by, as it is now. */
export function rigsOf({ rigs }: Memory, frame: Frame | undefined, from: string): FactSource[] {
  const key = frame && rigOf(frame);
  const rig = key === undefined ? undefined : rigs[key];
  return rig ? [{ who: key === from || key === '' ? undefined : key, facts: rig, isRig: true }] : [];
}
