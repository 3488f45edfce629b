import type { Reply } from '#answer/reply.ts';
import { duration, sentence } from '#answer/say.ts';
import type { CautionCode } from '#answer/words/en.ts';
import { decimals, plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { figure, reasons } from '../figures.ts';
import type { Setting } from '../intent.ts';
import { wiringChart } from '../wiring-chart.ts';
import type { Link, Part, RigCheck } from './compute.ts';

const partNames: Readonly<Record<Part, string>> = {
  battery: 'the battery',
  solar: 'the solar',
  inverter: 'the inverter',
  'battery-current': 'the current out of the battery',
  charger: 'the charger',
  isolator: 'the isolator',
  cable: 'the cable',
};

const round = (value: number, step: number): string => decimals(Math.ceil(value / step) * step, 0);
/** Sizes that a mend is told in: steps of the trade, W, Ah. */
const steps = { panelW: 20, batteryAh: 10 } as const;

/** What the weakest part comes to. */
function shows({ part, explored, wanted }: Link): string {
  const { value } = explored.figures.figure;
  switch (part) {
    case 'battery':
      return `it lasts ${duration(value)} by itself, and ${duration(wanted).replace('about ', '')} is wanted`;
    case 'solar':
      return `it makes about ${plain(value)} Ah a day, and you use about ${plain(wanted)}`;
    case 'inverter':
      return `all at once is about ${decimals(value, 0)} W on its ${decimals(wanted, 0)} W`;
    case 'battery-current':
      return `about ${plain(value)} A is asked of it, and it stands about ${plain(wanted)} A`;
    case 'charger':
      return `${plain(value)} A, and that battery wants ${plain(wanted)} A or more`;
    case 'isolator':
      return 'it suits neither lithium nor a smart alternator';
    case 'cable':
      return `it loses about ${plain(value)} V, and ${plain(wanted)} V is plenty`;
  }
}

/** The cheapest mend: first what costs nothing, then what costs least. */
function mendOf({ part, mend, wanted }: Link, { biggest, dailyUse }: RigCheck): string {
  const saves =
    biggest && dailyUse > 0
      ? `cut the ${biggest.name}, which takes ${decimals((100 * biggest.chargeAh) / dailyUse, 0)} % of it`
      : 'use less';
  switch (part) {
    case 'battery':
      return `Cheapest: ${saves}. Else ${mend === undefined ? 'a larger battery' : `about ${round(mend, steps.batteryAh)} Ah in all`}.`;
    case 'solar': {
      const size = Number.isFinite(mend)
        ? `about ${round(mend!, steps.panelW)} W in all`
        : 'another source: there is hardly any sun';
      return `Cheapest: angle the panel at the sun and keep shade off it; then ${saves}. Else ${size}.`;
    }
    case 'inverter':
      return `Cheapest: one thing at a time.${mend === undefined ? '' : ` Else an inverter of about ${decimals(mend, 0)} W.`}`;
    case 'battery-current':
      return `Cheapest: one thing at a time, under ${plain(wanted)} A. Else a battery that gives more amps.`;
    case 'charger':
      return `Cheapest: drive or plug in longer. Else a ${decimals(mend!, 0)} A charger.`;
    case 'isolator':
      return `A ${decimals(mend!, 0)} A DC-DC charger is the mend.`;
    case 'cable':
      return `Cheapest: a shorter run. Else ${plain(mend!)} mm² or more, with a fuse to suit.`;
  }
}

/** From here on nothing is weak. */
const soundShare = 1.2;

/** Words for the weakest part of a rig. */
export function answerRigCheck(facts: Facts, check: RigCheck, { mainsV }: Pick<Setting, 'mainsV'>): Reply {
  const [weakest, second] = check.links;
  const isSound = weakest.share >= soundShare;
  const name = partNames[weakest.part];
  const cautions: CautionCode[] = loadCautions(facts, check.bank);
  if (weakest.part === 'cable' || weakest.part === 'isolator') cautions.push('fuse-at-battery');
  if (weakest.part === 'battery-current' || weakest.part === 'inverter') cautions.push('big-current');
  return {
    headline: isSound
      ? `Nothing weak in it. Tightest is ${name}: ${shows(weakest)}.`
      : `${sentence(name)} is the weakest part: ${shows(weakest)}.`,
    lines: [
      ...(isSound ? [] : [mendOf(weakest, check)]),
      ...(second && second.share < soundShare
        ? [`Next: ${partNames[second.part]}, as ${shows(second)}.`]
        : []),
    ],
    verdict: null,
    figures: {
      [weakest.name]: figure(weakest.explored.figures.figure, weakest.unit),
      weakest: { value: weakest.part },
    },
    ...reasons(weakest.explored),
    chart: wiringChart(facts, mainsV),
    cautions,
    next: ['what panel do I need?', 'how long will it last?', 'show the working'],
  };
}
