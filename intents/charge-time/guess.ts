import type { Assumed } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { english } from '#answer/speech.ts';
import type { Cue } from '#language/words/en/cues.ts';
import type { Battery, Charger, Stated } from '#rig/rig.ts';
import type { RequestContext } from '../intent.ts';
import { answerAtTemperature } from './temperature.ts';

/** What most campers have, common practice: an AGM, where its kind isn't told. */
const usualAh = 100;

/** What charges where only how it is driven is told; a usual one of its kind is taken by the engine. */
const drivenBy: readonly (readonly [cue: Cue, kind: Charger['kind']])[] = [
  ['drive', 'dcdc'],
  ['generator', 'generator'],
];

/** What was told, with usual gear in place of what wasn't. */
export interface Guessed {
  readonly facts: Stated;
  readonly isSizeGuessed: boolean;
  readonly isSourceGuessed: boolean;
}

const hasSize = ({ capacityAh, energyWh, role }: Partial<Battery>): boolean =>
  (capacityAh ?? energyWh) !== undefined && role !== 'starter';

const isLead = ({ batteries = [] }: Stated): boolean =>
  batteries.length > 0 && batteries.every(({ chemistry }) => chemistry !== undefined && chemistry !== 'lfp');

/** Below this lithium takes only a small current, and none at 0 °C. */
const coldC = 5;
const isCold = (told: Stated): boolean => (told.ambientC ?? 20) < coldC && !isLead(told);

/** Near freezing nothing is guessed: what matters is whether lithium may be charged at all. */
export function coldFirst(told: Stated): Reply | undefined {
  const { ambientC, batteries } = told;
  const isLithium = batteries?.some(({ chemistry }) => chemistry === 'lfp');
  return ambientC !== undefined && ambientC < coldC && isLithium
    ? answerAtTemperature({ chemistry: 'lfp', ambientC })
    : undefined;
}

/**
 * The question with a usual battery and charger where none is told, so that a beginner gets a number before the
 * question. Undefined where a guess could hurt.
 */
export function guessed(told: Stated, { parsed }: RequestContext, hasSource: boolean): Guessed | undefined {
  if (isCold(told)) return undefined;
  const { batteries = [], chargers } = told;
  const isSized = batteries.some(hasSize) || told.chargeNeededAh !== undefined;
  const at = Math.max(
    0,
    batteries.findIndex(({ role }) => role !== 'starter'),
  );
  const sized = [...batteries];
  sized[at] = { ...batteries[at], capacityAh: usualAh };
  // What is named and has no figure is no usual one.
  const isSourceNamed = parsed.recognised.mentions.some(({ kind }) => kind === 'charger' || kind === 'solar');
  if (isSourceNamed && !hasSource) return undefined;
  // Of nothing at all only how long is answered for usual gear: "can I leave the solar on?" is something else.
  const isLevelTold = batteries.length > 0 || told.volts !== undefined;
  if (!isSized && !hasSource && !isLevelTold && !parsed.cues.has('ask-how-long')) return undefined;
  const isOfEngine = parsed.recognised.words.some(word => word === 'engine' || word === 'idling');
  const [, kind] = drivenBy.find(([cue]) => parsed.cues.has(cue) || (cue === 'drive' && isOfEngine)) ?? [
    undefined,
    'mains' as const,
  ];
  return {
    facts: {
      ...told,
      ...(!isSized && { batteries: sized }),
      ...(!hasSource && { chargers: [...(chargers ?? []), { kind }] }),
    },
    isSizeGuessed: !isSized,
    isSourceGuessed: !hasSource,
  };
}

/** An answer for usual gear: it says so, and asks for the one thing that changes it most. */
export function withGuess(reply: Reply, { isSizeGuessed, facts }: Guessed): Reply {
  const w = english;
  const isKindTold = facts.batteries?.some(({ chemistry }) => chemistry !== undefined) === true;
  const size: Assumed = {
    name: 'batteryCapacity',
    value: usualAh,
    unit: 'Ah',
    why: isKindTold ? 'as you told no size' : 'AGM, as you named none',
  };
  const question = isSizeGuessed
    ? w.say('which-battery', 'What battery have you got? Its size and kind change this most.')
    : w.say('which-charger', 'What charges it? Its amps change this most.');
  const isOfCharger = ({ name }: Assumed): boolean => name === 'chargerCurrent';
  const { assumed = [] } = reply;
  return {
    ...reply,
    lines: [...(reply.lines ?? []).slice(0, 2), question],
    // What was guessed is named before what only changes it more.
    assumed: [
      ...(isSizeGuessed ? [size] : []),
      ...assumed.filter(isOfCharger),
      ...assumed.filter(one => !isOfCharger(one)),
    ],
    next: isSizeGuessed
      ? ['100Ah AGM', '200Ah AGM', '100Ah lithium']
      : ['10A charger', '25A DC-DC', '200W panel'],
  };
}
