import type { Reply } from '#answer/reply.ts';
import { alike, list, rounded, sentence } from '#answer/say.ts';
import type { CautionCode } from '#answer/words/en.ts';
import { present } from '#basics/present.ts';
import { decimals, plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { hasUse } from '../use.ts';
import { wiringChart } from '../wiring-chart.ts';
import type { RigCheck } from './compute.ts';
import type { Link, Part } from './links/link.ts';

const partNames: Readonly<Record<Part, string>> = {
  battery: 'the battery',
  solar: 'the solar',
  driving: 'the charge from driving',
  inverter: 'the inverter',
  'battery-current': 'the battery’s current',
  charger: 'the charger',
  'charge-limit': 'the charger',
  alternator: 'the alternator',
  isolator: 'the isolator',
  cable: 'the cable',
  fuse: 'the fuse',
};

const round = (value: number, step: number): string => decimals(Math.ceil(value / step) * step, 0);
/** Sizes that a mend is told in: steps of the trade, W, Ah. */
const steps = { panelW: 20, batteryAh: 10 } as const;

/** From this share of a day on, one thing is all there is to cut. */
const wholeShare = 0.9;

/** What the weakest part comes to. */
function shows({ part, explored, wanted, besidesAh }: Link): string {
  const { value } = explored.figures.figure;
  switch (part) {
    case 'battery':
      return `from full it runs your gear ${alike(value, wanted)[0]}; plan for ${alike(value, wanted)[1].replace(/about | (?:hours|days)$/g, '')} or more`;
    case 'solar':
      return besidesAh === undefined
        ? `it makes about ${plain(value)} Ah a day, and you need about ${plain(wanted)}`
        : `it makes about ${plain(value)} Ah a day, and you need about ${plain(wanted)} beside the drive`;
    case 'driving':
      return `it brings about ${plain(value)} Ah a day, and you use about ${plain(wanted)}`;
    case 'inverter':
      return `all at once is about ${rounded(value)} W, and it gives ${decimals(wanted, 0)} W`;
    case 'battery-current':
      return `about ${plain(value)} A, and it is good for ${plain(wanted)} A`;
    case 'charger':
      return `${plain(value)} A, and that battery needs ${plain(wanted)} A or more`;
    case 'charge-limit':
      return `${plain(value)} A, and that battery takes no more than about ${plain(wanted)} A`;
    case 'alternator':
      return `the DC-DC takes about ${plain(value)} A, and it spares about ${plain(wanted)} A`;
    case 'fuse':
      return `${plain(value)} A, and its cable carries about ${plain(wanted)} A`;
    case 'isolator':
      return 'it suits neither lithium nor a smart alternator';
    case 'cable':
      return `it loses about ${plain(value)} V, and ${plain(wanted)} V is plenty`;
  }
}

/** What heats, for which gas is cheaper than any battery. */
const heaters = /\b(?:kettle|jug|coffee|espresso|hot ?plate|cooktop|induction|oven|toaster|frypan|fry pan)/i;

/** What a day takes, by its biggest parts, and what charging loses of what comes in. */
function dayOf({ shares, dailyUse, links }: RigCheck): string {
  const sun = links.find(({ part }) => part === 'solar');
  if (!sun || sun.besidesAh !== undefined || sun.share >= soundShare || shares.length < 2) return '';
  const each = shares
    .slice(0, 3)
    .map(({ name, chargeAh }) => `${name} ${plain(chargeAh)}`)
    .join(', ');
  return `You use about ${plain(dailyUse)} Ah a day (${each}); charging loses some, so the sun has to bring ${plain(sun.wanted)}.`;
}

/** What a battery that is short gives at these draws: less than the half of its label that people count on. */
function holds({ links }: RigCheck): string {
  const battery = links.find(({ part }) => part === 'battery');
  if (battery?.holdsAh === undefined || battery.share >= soundShare) return '';
  return `At these draws a full battery gives about ${plain(battery.holdsAh)} Ah.`;
}

/** The cheapest mend: first what costs nothing, then what costs least. */
function mendOf({ part, mend, wanted }: Link, { biggest, dailyUse, shares }: RigCheck): string {
  const boils = shares.find(({ name }) => heaters.test(name))?.name;
  const saves =
    biggest && dailyUse > 0 && biggest.chargeAh < wholeShare * dailyUse
      ? `cut the ${biggest.name}, which takes ${decimals((100 * biggest.chargeAh) / dailyUse, 0)} % of it`
      : 'use less';
  switch (part) {
    case 'battery':
      return `Cheapest: ${saves}. Else get ${mend === undefined ? 'a larger battery' : `about ${round(mend, steps.batteryAh)} Ah in all`}.`;
    case 'solar': {
      const size = Number.isFinite(mend)
        ? `about ${round(present(mend), steps.panelW)} W in all`
        : 'another source: there is hardly any sun';
      return `Cheapest: angle the panel at the sun and keep shade off it; then ${saves}. Else get ${size}.`;
    }
    case 'inverter':
      return `Cheapest: run one thing at a time.${mend === undefined ? '' : ` Else get an inverter of about ${decimals(mend, 0)} W.`}`;
    case 'battery-current':
      return boils === undefined
        ? `Cheapest: run one thing at a time, under ${plain(wanted)} A. Else get a battery that gives more amps.`
        : `Cheapest: boil or cook on gas, outside, not with the ${boils}. Else get a battery that gives more amps.`;
    case 'charger':
      return `Cheapest: drive or plug in longer. Else get a ${decimals(present(mend), 0)} A charger.`;
    case 'driving':
      return `Cheapest: ${saves}. Else get ${mend === undefined ? 'a panel' : `about ${decimals(mend, 1)} hours of driving a day, or a panel`}.`;
    case 'charge-limit':
      return `Set it to ${plain(wanted)} A or less, or take a ${decimals(present(mend), 0)} A one.`;
    case 'alternator':
      return 'Cheapest: set the DC-DC lower, or let it rest while the engine idles.';
    case 'fuse':
      return `Put in ${mend === undefined ? 'a smaller one' : `${decimals(mend, 0)} A or less`}, or lay thicker cable.`;
    case 'isolator':
      return `A ${decimals(present(mend), 0)} A DC-DC charger puts that right.`;
    case 'cable':
      return `Cheapest: shorten the run. Else lay ${plain(present(mend))} mm² or more, with a fuse to suit.`;
  }
}

/** From here on nothing is weak. */
const soundShare = 1.2;

/** As a list of parts has them: "battery, solar and cable". */
const bare = ({ part }: Link): string => partNames[part].replace(/^the /, '');

/** What holds, and what nothing was told about. */
function rest({ links, untold, isCold }: RigCheck): string[] {
  const [, ...others] = links;
  const fine = others.filter(({ share }) => share >= soundShare).map(bare);
  return [
    fine.length > 0
      ? `${links[0].share >= soundShare ? 'Also sound' : 'Sound'}: ${list([...new Set(fine)])}.`
      : '',
    isCold ? 'In the cold it must be kept over 0 °C to charge: a warm box or a heater.' : '',
    untold.length > 0 ? `You didn’t tell me, so I didn’t check: ${list(untold.slice(0, 4))}.` : '',
  ];
}

function cautionsOf(facts: Facts, { links, bank, isCold }: RigCheck): CautionCode[] {
  const parts = new Set(links.filter(({ share }) => share < soundShare).map(({ part }) => part));
  const isAny = (...names: readonly Part[]): boolean => names.some(name => parts.has(name));
  const found = loadCautions(facts, bank);
  if (isAny('fuse')) found.push('no-fuse');
  if (isCold) found.push('lithium-cold');
  if (isAny('battery-current', 'inverter')) found.push('big-current');
  if (isAny('charge-limit')) found.push('battery-gas');
  return [...found, 'fuse-at-battery'];
}

/** The thing or the part that is the trouble, in the first line. */
function troubleOf(weakest: Link, { shares }: RigCheck): string {
  const heats = shares.find(({ name }) => heaters.test(name))?.name;
  if (weakest.part !== 'battery-current' || heats === undefined)
    return `${sentence(partNames[weakest.part])} is the weakest part: ${shows(weakest)}.`;
  const { figure: amps } = weakest.explored.figures;
  return `The ${heats} is too much: about ${plain(amps.value)} A, and the battery is good for ${plain(weakest.wanted)} A.`;
}

/** Words for the weakest part of a rig. */
export function answerRigCheck(
  facts: Facts,
  check: RigCheck,
  { mainsV }: Pick<RequestContext, 'mainsV'>,
): Reply {
  const [weakest, ...others] = check.links;
  const isSound = weakest.share >= soundShare;
  // Two that fall short, or one that only just does.
  const weak = others.filter(({ share }, i) => share < (i === 0 ? soundShare : 1)).slice(0, 2);
  const name = partNames[weakest.part];
  return {
    headline: isSound ? `All sound. Tightest is ${name}: ${shows(weakest)}.` : troubleOf(weakest, check),
    lines: [
      isSound ? '' : weakest.share < 1 ? mendOf(weakest, check) : 'It does, with little to spare.',
      ...weak.map(link => `Next, ${partNames[link.part]}: ${shows(link)}.`),
      holds(check),
      dayOf(check),
      ...rest(check),
    ].filter(Boolean),
    verdict: null,
    figures: {
      [weakest.name]: figure(weakest.explored.figures.figure, weakest.unit),
      weakest: { value: weakest.part },
    },
    ...reasons(weakest.explored),
    chart: wiringChart(facts, mainsV),
    cautions: cautionsOf(facts, check),
    next: [...(hasUse(facts) ? ['what panel do I need?', 'how long will it last?'] : []), 'show the working'],
  };
}
