import type { Mention } from '#language/recognise/mention.ts';
import { significant } from '#quantity/round.ts';
import type { Chemistry } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { amountsOf } from '../figures-told.ts';
import { chargeRow } from './compute.ts';

type Kind = Exclude<Chemistry, 'lead-acid'>;
const names: Readonly<Record<Kind, string>> = {
  lfp: 'Lithium (LiFePO4)',
  agm: 'AGM',
  gel: 'Gel',
  flooded: 'Wet lead-acid',
};

/** Volts that say which system it is. */
const blocksOfSystem: ReadonlyMap<number, number> = new Map([
  [12, 1],
  [24, 2],
  [36, 3],
  [48, 4],
]);

/** Blocks of 12 V in the system told; undefined where other volts are told, which are judged elsewhere. */
function blocksIn(mentions: readonly Mention[]): number | undefined {
  const [volts, ...more] = amountsOf(mentions, 'voltage').map(({ value }) => value);
  if (volts === undefined) return 1;
  return more.length === 0 ? blocksOfSystem.get(volts) : undefined;
}

/** The kinds of battery that are named, each once; "lead-acid" alone is both of its usual ones. */
function kindsIn(mentions: readonly Mention[]): readonly Kind[] {
  const named = mentions
    .filter(({ kind }) => kind === 'chemistry')
    .flatMap(({ key }): Kind[] => {
      const chemistry = key as Chemistry;
      return chemistry === 'lead-acid' ? ['agm', 'flooded'] : [chemistry];
    });
  return [...new Set(named)];
}

/** "Gel: 14.2 V in bulk and absorption (14 to 14.4 V), then float at 13.4 V." */
function settingOf(kind: Kind, blocks: number): string {
  const { absorptionV, floatV } = chargeRow(kind);
  const [likely, low, high] = absorptionV.map(volts => significant(volts * blocks, 3));
  const float = `${significant(floatV * blocks, 3)} V`;
  const then = kind === 'lfp' ? `no float, or ${float} at most` : `then float at ${float}`;
  return `${names[kind]}: ${likely} V in bulk and absorption (${low} to ${high} V), ${then}.`;
}

const everyKind: readonly Kind[] = ['lfp', 'agm', 'gel', 'flooded'];

/** The settings of the kinds that are named, or of all. */
function settings(mentions: readonly Mention[]): readonly string[] {
  const named = kindsIn(mentions);
  return (named.length > 0 ? named : everyKind).map(kind => settingOf(kind, blocksIn(mentions) ?? 1));
}

/** What the rest of it says: by kind. */
function notes(mentions: readonly Mention[]): readonly string[] {
  const kinds = kindsIn(mentions);
  const isLead = kinds.some(kind => kind !== 'lfp');
  return [
    'Bulk has no volts of its own: all the amps go in until the absorption volts are reached.',
    ...(isLead || kinds.length === 0
      ? [
          'Those are at 25 °C: in heat about 0.02 V less a degree, which a charger with a probe does by itself.',
        ]
      : []),
    ...(isLead ? [] : ['Never equalise lithium, and no charge below 0 °C.']),
    'The label of the battery goes before these.',
  ];
}

/** Volts to set a charger to, by the kind of battery. Volts as in the engine's table (common practice). */
export const chargeVolts: readonly Aside[] = [
  {
    name: 'charge-volts',
    hasAnyFigures: true,
    isAsked: 'for-sure',
    spots: [
      'bulk float|absorption|absorb|absorbtion -difference -mean -means -meaning -versus -vs -first -then -after -before -next -why -stuck -hours -minutes -stage -stages -what_is -what_are -explain -teach',
      'bulk|absorption|absorb|absorbtion volt*|voltage|voltages|volts|setting|settings|set what*|whats|which|should|for|right|correct -why -how_long -solar -hours -full -difference -mean -means -then -what_is -what_are -explain',
      'charge_volt*|charging_volt*|charge_voltage|charging_voltage|charger_volt*|charge_settings|charging_settings|charge_profile|charging_profile|charger_settings agm|gel|lithium|lifepo|lifepo4|lfp|flooded|lead|wet|battery|batteries -why -how_long -low -only -stuck',
    ],
    when: (_facts, { recognised: { mentions } }) => blocksIn(mentions) !== undefined,
    says: (_facts, mentions) => settings(mentions)[0] ?? '',
    lines: (_facts, mentions) => [...settings(mentions).slice(1), ...notes(mentions)].slice(0, 5),
    next: ['what is float?', 'what is absorption?'],
  },
];
