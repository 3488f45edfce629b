import type { IntentName } from '#answer/answer.ts';
import { applianceOf } from '#catalog/appliances.ts';
import type { Cue } from '#language/words/en/cues.ts';
import type { Stated } from '#rig/rig.ts';
import { chemistryName } from './words.ts';

// What somebody was asked for and doesn't know: where each figure is to be found, and what most camps have in its place.

/** Usual gear in the place of what nobody knows, and the smaller and bigger ones that are as usual. */
export interface Usual {
  /** As an answer names it: "a 100 Ah AGM battery". */
  readonly gear: string;
  readonly facts: Stated;
  readonly small?: Stated;
  readonly big?: Stated;
}

/** What shapes what is usual, beside the facts. */
interface Asking {
  readonly intent: IntentName;
  readonly cues: ReadonlySet<Cue>;
}

/** Something that a question needs and its asker doesn't know. */
export interface Untold {
  /** Where it is to be found, in a line that stands by itself. */
  readonly where: string;
  /** Undefined, or giving nothing: a guess would be dangerous or senseless. */
  readonly usual?: (facts: Stated, asking: Asking) => Usual | undefined;
}

/** Sizes that most camps have: the likely one, a small and a big one. Common practice. */
const usualAh = { likely: 100, small: 75, big: 120 } as const;
const usualPanelW = { likely: 150, small: 100, big: 200 } as const;
/** A usual mains charger, A. Common practice. */
const usualChargerA = 20;

/** What nearly every camp runs. Common practice. */
export const usualLoads = [{ name: 'fridge' }, { name: 'lights' }, { name: 'phones' }] as const;

/** The one house battery told without a size, or none at all, of so many Ah. */
function sized({ batteries = [] }: Stated, capacityAh: number): Stated['batteries'] {
  const [first = {}, ...others] = batteries;
  const isSized = (first.capacityAh ?? first.energyWh) !== undefined;
  return others.length > 0 || isSized || first.role === 'starter'
    ? undefined
    : [{ ...first, chemistry: first.chemistry ?? 'agm', capacityAh }];
}

/** Of the amp hours of a battery there is, of a rig as a whole or a bank, none that is usual says anything. */
const ofItsOwn: ReadonlySet<IntentName> = new Set(['rig-check', 'battery-bank']);

function usualBattery(facts: Stated, { intent }: Asking): Usual | undefined {
  const [batteries, small, big] = [usualAh.likely, usualAh.small, usualAh.big].map(ah => sized(facts, ah));
  const isOfOne = (facts.chargeLeftAh ?? facts.chargeUsedAh) !== undefined || ofItsOwn.has(intent);
  const [first] = batteries ?? [];
  if (!first || isOfOne) return undefined;
  const one = `${usualAh.likely} Ah ${chemistryName(first.chemistry ?? 'agm')}`;
  return {
    gear: first.count === undefined ? `a ${one}` : `${first.count} × ${one}`,
    facts: { batteries },
    small: { batteries: small },
    big: { batteries: big },
  };
}

/** Below this lithium takes only a small current, and none at 0 °C. */
const coldC = 5;

/** The battery to charge; near freezing none, unless it is known to be lead: what matters there is whether it may be charged at all. */
function usualCharge(facts: Stated, asking: Asking): Usual | undefined {
  const isLead = facts.batteries?.every(({ chemistry = 'lfp' }) => chemistry !== 'lfp') === true;
  if ((facts.ambientC ?? 20) < coldC && !isLead) return undefined;
  const usual = usualBattery(facts, asking);
  const isLevelTold = facts.batteries?.some(one => one.stateOfChargePercent !== undefined) || facts.volts;
  return usual && { ...usual, gear: isLevelTold ? usual.gear : usual.gear.replace('a ', 'a half-full ') };
}

const usualSun: Usual = {
  gear: `a ${usualPanelW.likely} W panel`,
  facts: { solar: [{ powerW: usualPanelW.likely }] },
  small: { solar: [{ powerW: usualPanelW.small }] },
  big: { solar: [{ powerW: usualPanelW.big }] },
};
const usualDrive: Usual = { gear: 'a 25 A DC-DC charger', facts: { chargers: [{ kind: 'dcdc' }] } };
const usualMains: Usual = {
  gear: `a ${usualChargerA} A charger`,
  facts: { chargers: [{ kind: 'mains', currentA: usualChargerA }] },
};

/** What charges, by the signs that the question's words gave. */
const sources: readonly (readonly [cue: Cue, usual: Usual])[] = [
  ['solar', usualSun],
  ['sun', usualSun],
  ['drive', usualDrive],
  ['alternator', usualDrive],
  ['dcdc', usualDrive],
];

const usualSource = (_: Stated, { cues }: Asking): Usual =>
  sources.find(([cue]) => cues.has(cue))?.[1] ?? usualMains;

function usualRun({ loads = [] }: Stated): Usual | undefined {
  if (loads.some(({ name }) => applianceOf(name)?.isMedical)) return undefined;
  return { gear: 'a fridge, lights and phones', facts: { loads: [...usualLoads] } };
}

const ofLoads: Untold = {
  where: 'For what runs on it no figures are needed: just name it, like “fridge, lights and phones”.',
  usual: (facts, { intent }) => (ofItsOwn.has(intent) ? undefined : usualRun(facts)),
};
const ofPanel: Untold = {
  where:
    'A panel’s watts (W) stand on the label on its back; without one count about 180 W to the square metre.',
  usual: ({ solar = [] }) => (solar.length > 1 ? undefined : usualSun),
};

/** By the key of a need. */
export const untoldTable: Readonly<Record<string, Untold>> = {
  'need-battery': {
    where: 'The battery’s size stands on its label: a number with Ah, mostly beside its kind (AGM, lithium).',
    usual: usualBattery,
  },
  'need-loads': ofLoads,
  'need-run': ofLoads,
  'need-charge': {
    where:
      'The battery’s size stands on its label, a number with Ah; how full it is a monitor or its volts at rest tell.',
    usual: usualCharge,
  },
  'need-source': {
    where:
      'A charger’s amps (A) stand on its case, a panel’s watts (W) on its back; for hours of driving a guess will do.',
    usual: usualSource,
  },
  'need-panel': ofPanel,
  'need-panels': {
    where:
      'The label on a panel’s back tells its watts (W) and open-circuit volts (Voc), the controller’s case PWM or MPPT.',
  },
  'need-level': {
    where:
      'The volts show on a multimeter held to its two posts, or on the charger’s or solar controller’s screen: read them after an hour with nothing running.',
  },
  'need-current': {
    where:
      'Amps (A) or watts (W) stand on the plate or plug of what it feeds, an inverter’s watts on its case.',
  },
  'need-length': {
    where: 'For the length lay a tape or a string the way the cable will go, one way from end to end.',
  },
  'need-circuit': {
    where:
      'Amps (A) or watts (W) stand on the plate or plug of what it feeds, a cable’s size (mm²) mostly along its skin.',
  },
  'need-watts': {
    where: 'Watts (W) stand on the plate or plug of each thing, and the inverter’s own on its case.',
  },
  'need-work': {
    where: 'Watts (W) stand on the plate or plug of each thing, a charger’s amps (A) on its case.',
    usual: () => usualMains,
  },
  'need-sides': {
    where: 'Two words are enough, like “AGM or lithium”; sizes stand on the labels.',
  },
};

/** What is said first where nothing usual is put in the place of what is missing. */
export const noGuess: Partial<Readonly<Record<IntentName, string>>> = {
  'cable-size': 'I don’t guess a cable: one too thin gets hot, and may burn.',
  'fuse-size': 'I don’t guess a fuse: one too big lets the cable burn.',
  'charge-level': 'How full it is only its volts or a monitor can tell.',
  'solar-wiring': 'That hangs on the figures of your panels and controller: a wrong guess can kill it.',
  'rig-check': 'What is weak in your rig only its own figures can tell.',
  'battery-bank': 'That hangs on the batteries you have.',
  compare: 'I can only weigh two things that I know.',
  'inverter-check': 'Most camps do with 300 to 600 W; a kettle or microwave takes 2000 W or more.',
};

/** The same where somebody's health hangs on it. */
export const noGuessOfHealth = 'No guess here: it has to be the real figure.';
