import type { IntentName } from '#answer/answer.ts';
import type { CautionCode } from '#answer/words/en.ts';
import type { Cue, Said } from '#language/said.ts';

/** Intentions that get a caution whatever else was asked. */
const cautionOf: Partial<Record<Cue, CautionCode>> = {
  'danger-no-fuse': 'no-fuse',
  'danger-bypass-fuse': 'no-fuse',
  'danger-bypass-bms': 'bypass-bms',
  'danger-mix-parallel': 'mixed-batteries',
  'danger-mains-wiring': 'mains-wiring',
  'danger-backfeed': 'backfeed',
  'danger-cold-charge': 'lithium-cold',
  'danger-generator-inside': 'carbon-monoxide',
  'danger-medical': 'medical',
  'danger-open-battery': 'battery-gas',
  'danger-fuel-heater': 'fuel-heater',
};

/** The question that a danger is about; a refusal carries its name only where that is the question taken. */
const questionOf: Partial<Record<CautionCode, IntentName>> = {
  'no-fuse': 'fuse-size',
  backfeed: 'inverter-check',
  'mains-wiring': 'inverter-check',
  'lithium-cold': 'charge-time',
  'carbon-monoxide': 'generator',
  'mixed-batteries': 'battery-bank',
};

/** Whether a question is what the danger in a message is about. */
export const isAbout = (intent: IntentName, codes: readonly CautionCode[]): boolean =>
  codes.some(code => questionOf[code] === intent);

/**
 * The cautions that a message itself calls for.
 * @param ambientC the temperature of the talk, °C, where it was told before
 */
export function dangers(said: Said, ambientC = said.facts.ambientC): CautionCode[] {
  const found: CautionCode[] = [];
  for (const cue of said.cues) {
    const code = cautionOf[cue];
    if (code) found.push(code);
  }
  const { batteries } = said.facts;
  const isCold = ambientC !== undefined && ambientC < 5;
  const isLithium = said.cues.has('lfp') || !!batteries?.some(b => b.chemistry === 'lfp');
  if (isCold && isLithium && said.cues.has('charge')) found.push('lithium-cold');
  return found;
}
