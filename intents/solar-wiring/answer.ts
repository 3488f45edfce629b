import type { Reply } from '#answer/reply.ts';
import { sentence, span } from '#answer/say.ts';
import type { CautionCode } from '#answer/words/en.ts';
import { present } from '#basics/present.ts';
import type { Range } from '#quantity/range.ts';
import { decimals, plain } from '#quantity/round.ts';
import { figure, reasons } from '../figures.ts';
import { wiringChart } from '../wiring-chart.ts';
import type { SolarWiring, WiringFacts } from './compute.ts';

/** Above this, V of direct current, a touch can hurt and an arc doesn't go out by itself. IEC 61140, from memory. */
const dangerousV = 60;
/** From three strings on each wants its own fuse. Common practice. */
const stringsToFuse = 3;

/** Input limits that controllers are sold with, V. Common practice. */
const limitsSoldV = [50, 75, 100, 150, 250] as const;
/** Room below a limit for a colder morning still. Common practice. */
const room = 1.05;

/** The limit of the controller to have for a string in the cold, V. */
const limitFor = ({ high }: Range): number | undefined => limitsSoldV.find(limit => limit >= room * high);

/** "2 in series", "parallel", "2 strings of 2 in series". */
function wiring(count: number, inSeries: number): string {
  if (count === 1) return 'one panel';
  if (inSeries === 1) return 'parallel';
  return inSeries === count ? 'series' : `${count / inSeries} strings of ${inSeries} in series`;
}

function because({ reason, systemV, controller, figures, coldestC, plate }: SolarWiring): string {
  const { stringVoltage, coldVoltage, chargeCurrent } = figures;
  const amps = plain(chargeCurrent.value);
  const morning = `at ${plain(coldestC)} °C`;
  // A limit that is only just passed is told to the tenth.
  const isJustOver = plate.limitV !== undefined && plain(coldVoltage.value) === plain(plate.limitV);
  const cold = isJustOver ? decimals(coldVoltage.value, 1) : plain(coldVoltage.value);
  switch (reason) {
    case 'too-low':
      return `${plain(stringVoltage.value)} V open circuit is too little to charge a ${systemV} V battery`;
    case 'over-limit':
      return `about ${cold} V ${morning} is past the controller's ${plain(present(plate.limitV))} V and can destroy it`;
    case 'near-limit':
      return `about ${cold} V ${morning}, close to the controller's ${plain(present(plate.limitV))} V`;
    case 'within-limit':
      return `about ${cold} V ${morning}, within the controller's ${plain(present(plate.limitV))} V`;
    case 'over-rating':
      return `about ${amps} A in full sun is more than the controller's ${plain(present(plate.ratedA))} A`;
    case 'near-rating':
      return `about ${amps} A in full sun; cloud edges can pass the controller's ${plain(present(plate.ratedA))} A`;
    case 'held-to-rating':
      return `about ${amps} A in full sun is over the controller's ${plain(present(plate.ratedA))} A, and the rest is lost`;
    case 'pwm-too-high':
      return 'a PWM throws away the volts above the battery’s, and may not stand them';
    case 'pwm-wastes':
      return 'it charges, but a PWM throws away the volts above the battery’s';
    case 'above-usual':
      return `about ${cold} V ${morning} is more than most controllers take`;
    case 'needs-limit':
      return `about ${cold} V ${morning}, so only on a controller for ${coldVoltage.high < 100 ? 100 : 150} V or more`;
    case 'unlike-currents':
      return 'in series the panel with the fewest amps holds the others back';
    case 'unlike-volts':
      return 'their volts differ, so the higher is pulled down to the lower';
    case 'fits':
      return controller === 'pwm'
        ? `that suits a PWM on a ${systemV} V battery`
        : `about ${cold} V ${morning}, so have a controller of ${limitFor(coldVoltage)} V or more`;
  }
}

/** Reasons that name the amps and the controller's rating. */
const ofAmps: ReadonlySet<SolarWiring['reason']> = new Set(['over-rating', 'near-rating', 'held-to-rating']);

/** What has to be looked up before it is done so. */
const lookUp: Partial<Record<SolarWiring['reason'], string>> = {
  'held-to-rating': 'Its maker must allow so much panel: look it up first.',
  'pwm-wastes': 'The controller must stand the panel’s open volts. An MPPT uses them.',
};

/** What the better wiring comes to, and the controller that it takes. */
function betterVolts({ insteadColdV, plate }: SolarWiring): string {
  if (!insteadColdV) return '.';
  const volts = `, about ${plain(insteadColdV.value)} V in the cold`;
  const limitV = limitFor(insteadColdV);
  return plate.limitV !== undefined || limitV === undefined
    ? `${volts}.`
    : `${volts}, on a controller rated for ${limitV} V. What limit is on yours: 75, 100, 150 V?`;
}

const openings = { yes: 'Yes', tight: 'With care', no: 'No' } as const;

function headline(result: SolarWiring, isTold: boolean): string {
  const how = wiring(result.count, result.inSeries);
  if (!isTold && result.fit !== 'no') return `${sentence(how)}: ${because(result)}.`;
  return `${openings[result.fit]}, ${how}: ${because(result)}.`;
}

/** Words for panels in series or parallel. */
export function answerSolarWiring(facts: WiringFacts, result: SolarWiring, isTold: boolean): Reply {
  const { figures, count, inSeries, controller, instead, suits, trackedA, plate } = result;
  const { stringVoltage, coldVoltage, chargeCurrent } = figures;
  const { limitV, ratedA } = plate;
  const hasAmps = chargeCurrent.value > 0;
  const cautions: CautionCode[] =
    coldVoltage.high > dangerousV ? ['high-dc', 'fuse-at-battery'] : ['fuse-at-battery'];
  const lines = [
    lookUp[result.reason] ?? '',
    instead === undefined ? '' : `Better: ${wiring(count, instead)}${betterVolts(result)}`,
    `${result.fit === 'no' ? 'As it is: ' : ''}${plain(stringVoltage.value)} V open circuit, ${span(coldVoltage.low, coldVoltage.high, 'V')} in the cold${limitV === undefined && result.fit !== 'no' ? ": the controller's limit must be above that" : ''}.`,
    hasAmps && !ofAmps.has(result.reason)
      ? `About ${plain(chargeCurrent.value)} A${ratedA === undefined ? ' into the battery in full sun: the controller must be rated for it' : ` in full sun; the controller is rated for ${plain(ratedA)} A`}.`
      : '',
    suits === undefined
      ? ''
      : `A PWM controller needs ${wiring(count, suits.pwm)} here; an MPPT takes ${wiring(count, suits.mppt)}${suits.pwm === suits.mppt ? ' too' : ''}.`,
    trackedA === undefined ? '' : `An MPPT would bring about ${plain(trackedA)} A of it.`,
    result.isShaded ? 'With shade on one, parallel loses less.' : '',
    count / inSeries >= stringsToFuse ? 'With three strings or more, fuse each.' : '',
  ].filter(Boolean);
  return {
    headline: headline(result, isTold),
    lines: lines.slice(0, 4),
    verdict: isTold ? result.fit : null,
    figures: {
      stringVoltage: figure(stringVoltage, 'V'),
      coldVoltage: figure(coldVoltage, 'V'),
      ...(hasAmps && { chargeCurrent: figure(chargeCurrent, 'A') }),
    },
    ...reasons(result),
    // What must not be wired so is not drawn so.
    chart: result.fit === 'no' ? undefined : wiringChart(facts, undefined, inSeries),
    cautions,
    next: [
      inSeries > 1 ? 'what if in parallel?' : 'what if in series?',
      controller === 'pwm' ? 'what if mppt?' : 'what if pwm?',
      'show the working',
    ],
  };
}
