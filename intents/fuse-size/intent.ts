import type { Facts, Stated } from '#rig/rig.ts';
import { ampsAtTwelve } from '../amps-at-twelve.ts';
import { withAsides } from '../asides.ts';
import { defineIntent } from '../define-intent.ts';
import type { Need } from '../needs.ts';
import { isSpotted } from '../spotting.ts';
import { answerFuseSize } from './answer.ts';
import { fuseAsides } from './asides-table.ts';
import { computeFuseSize } from './compute.ts';

const isCircuitKnown = (facts: Facts): boolean =>
  (facts.cable?.currentA ?? facts.cable?.areaMm2 ?? facts.cable?.awg ?? facts.cable?.autoCableMm) !==
    undefined ||
  facts.inverter?.powerW !== undefined ||
  !!facts.loads?.length ||
  !!facts.chargers?.some(c => c.kind !== 'generator') ||
  !!facts.solar?.some(s => s.powerW !== undefined);
const needCircuit: Need = {
  anyOf: ['cable', 'inverter', 'loads', 'chargers', 'solar'],
  ask: 'what it protects (say “15A pump”, “2000W inverter” or “6mm² cable”)',
  key: 'need-circuit',
  holds: isCircuitKnown,
};

const hasFigures = ({ loads = [], cable, inverter, chargers = [] }: Stated): boolean =>
  !!cable || !!inverter || chargers.length > 0 || loads.some(load => load.currentA ?? load.powerW);

/** How a cable is said to be fused, so that the amps told are its fuse: "you can fuse 6 mm² for 50 A". */
const fusing: readonly string[] = [
  'can_fuse|could_fuse|may_fuse|to_fuse|id_fuse|you_fuse|i_fuse|we_fuse|always_fuse|just_fuse|fused_at|fused_for|fused_to|fuse_that_at|fuse_it_at|fuse_it_for',
];

/** Amps of a cable that are told as its fuse. */
function asFused(facts: Facts, words: readonly string[]): Facts {
  const { cable, fuseA, loads, inverter, chargers } = facts;
  const areIts = cable?.currentA !== undefined && (fuseA ?? loads ?? inverter ?? chargers) === undefined;
  if (!areIts || cable.areaMm2 === undefined || !isSpotted(words, fusing)) return facts;
  return { ...facts, fuseA: cable.currentA, cable: { ...cable, currentA: undefined } };
}

const size = defineIntent({
  name: 'fuse-size',
  title: 'What fuse do I need?',
  thing: 'fuse',
  takes: [
    'cable',
    'inverter',
    'loads',
    'chargers',
    'solar',
    'systemVoltageV',
    'batteries',
    'arrangement',
    'fuseA',
    'ambientC',
  ],
  needs: [needCircuit],
  reply: (stated, setting) => {
    const facts = asFused(ampsAtTwelve(stated, setting.parsed.facts), setting.parsed.recognised.words);
    return answerFuseSize(computeFuseSize(facts, setting), setting);
  },
});

/** What fuse, and what people ask beside that. */
export const fuseSize = withAsides(size, fuseAsides, hasFigures);
