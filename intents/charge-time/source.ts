import type { Cue } from '#language/words/en/cues.ts';
import type { Charger, Facts } from '#rig/rig.ts';
import type { RequestContext } from '../intent.ts';
import { isDcdcSpoken } from '../spoken-charger.ts';

/** What the question charges from. */
export type ChargeSource =
  | { readonly kind: 'solar' }
  | {
      readonly kind: Charger['kind'];
      readonly charger?: Charger;
      readonly generatorW?: number;
      /** What a monitor shows going in, whatever gives it. */
      readonly isNet?: boolean;
    };

const hasPanel = (facts: Facts): boolean =>
  !!facts.solar?.some(panel => panel.powerW !== undefined) ||
  facts.solarAhPerDay !== undefined ||
  facts.solarWhPerDay !== undefined;

/** Kinds that a word of the message points at, where several chargers are known. */
const spokenOf: readonly (readonly [cue: Cue, kind: Charger['kind']])[] = [
  ['dcdc', 'dcdc'],
  ['isolator', 'isolator'],
  ['generator', 'mains'],
  ['mains', 'mains'],
  ['drive', 'dcdc'],
  ['drive', 'isolator'],
];

/** Which source is meant: what was said before what is remembered, what is spoken of before the rest. */
export function chargeSourceOf(
  facts: Facts,
  setting: Pick<RequestContext, 'recalled' | 'parsed'>,
): ChargeSource {
  const { cues } = setting.parsed;
  const isChargerSaid = !setting.recalled.has('chargers');
  const chargers = facts.chargers ?? [];
  const { netCurrentA = 0 } = facts;
  if (netCurrentA > 0 && (chargers.length === 0 || !isChargerSaid))
    return { kind: 'mains', charger: { kind: 'mains', currentA: netCurrentA }, isNet: true };
  const isSolarMeant =
    hasPanel(facts) &&
    (chargers.length === 0 ||
      (!isChargerSaid && (!setting.recalled.has('solar') || !!cues.has('solar') || !!cues.has('sun'))));
  if (isSolarMeant) return { kind: 'solar' };
  const generator = chargers.find(c => c.kind === 'generator');
  const others = chargers.filter(c => c.kind !== 'generator');
  const meant = spokenOf.flatMap(([cue, kind]) => (cues.has(cue) ? others.filter(c => c.kind === kind) : []));
  // "Generator, 30 A" may be told as one: the amps are what it charges with.
  const ofGenerator: Charger | undefined =
    generator?.currentA === undefined ? undefined : { kind: 'mains', currentA: generator.currentA };
  const charger = meant[0] ?? others[0] ?? ofGenerator;
  const isOnGenerator = generator !== undefined && (charger === undefined || charger.kind === 'mains');
  const isGeneratorMeant = isChargerSaid || !!cues.has('generator');
  if (isOnGenerator && (isGeneratorMeant || !charger))
    return { kind: 'generator', charger, generatorW: generator.powerW };
  if (charger) return { kind: charger.kind, charger };
  // Hours of driving and no word of how it charges: the alternator through a plain isolator.
  return { kind: isDcdcSpoken(facts, cues) ? 'dcdc' : 'isolator' };
}
