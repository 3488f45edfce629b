import type { IntentName } from '#answer/answer.ts';
import type { Stated } from '#rig/rig.ts';

/** What a button means: a question of its own, or the one before it with something changed. */
export interface Meant {
  /** Absent: the question before. */
  readonly intent?: IntentName;
  readonly facts?: Stated;
}

/** What the buttons under answers mean: the bot wrote them, so nothing of them is guessed at. In small letters. */
const buttons: Readonly<Record<string, Meant>> = {
  'how long will it last?': { intent: 'run-time' },
  'how long will mine last?': { intent: 'run-time' },
  'what battery do i need?': { intent: 'battery-size' },
  'what second battery do i need?': { intent: 'battery-size' },
  'what solar do i need?': { intent: 'solar-size' },
  'what panel do i need?': { intent: 'solar-size' },
  'what will the solar make?': { intent: 'solar-yield' },
  "what's our daily use?": { intent: 'energy-budget' },
  'isolator or dcdc?': { intent: 'charge-path' },
  'agm or lithium?': { intent: 'battery-type' },
  'what is an amp hour?': { intent: 'term' },
  'what if lithium?': { facts: { batteries: [{ chemistry: 'lfp' }] } },
  'what if agm?': { facts: { batteries: [{ chemistry: 'agm' }] } },
  'what if mppt?': { facts: { solar: [{ controller: 'mppt' }] } },
  'what if pwm?': { facts: { solar: [{ controller: 'pwm' }] } },
  'what if it is overcast?': { facts: { sky: 'overcast' } },
  "what if it's overcast?": { facts: { sky: 'overcast' } },
  'what if it is sunny?': { facts: { sky: 'sunny' } },
  'and tilted?': { facts: { mount: 'tilted' } },
  'and flat?': { facts: { mount: 'flat' } },
  'what if no solar?': { facts: { without: ['solar'] } },
  'what if in parallel?': { facts: { arrangement: 'parallel' } },
  'what if in series?': { facts: { arrangement: 'series' } },
};
/** Buttons that go on: the rest of them tells the facts. */
const openings: readonly (readonly [opening: string, intent: IntentName])[] = [
  ['what fuse for ', 'fuse-size'],
  ['what cable for ', 'cable-size'],
  ['voltage drop on ', 'cable-size'],
];
const days = /^make it (\d{1,3}) days$/;
const charger = /^what if a (\d{1,3})a charger\?$/;

/** What a text means that is a button's own, in small letters; undefined for any other. */
export function meantBy(text: string): Meant | undefined {
  const [, count] = days.exec(text) ?? [];
  if (count !== undefined) return { facts: { durationH: 24 * Number(count) } };
  const [, amps] = charger.exec(text) ?? [];
  if (amps !== undefined) return { facts: { chargers: [{ kind: 'mains', currentA: Number(amps) }] } };
  if (Object.hasOwn(buttons, text)) return buttons[text];
  const opened = text.endsWith('?') ? openings.find(([opening]) => text.startsWith(opening)) : undefined;
  return opened && { intent: opened[1] };
}
