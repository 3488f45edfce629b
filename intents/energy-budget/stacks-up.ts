import type { Reply } from '#answer/reply.ts';
import { exactly, rounded, span } from '#answer/say.ts';
import { present } from '#basics/present.ts';
import { applianceOf } from '#catalog/appliances.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Mention } from '#language/recognise/mention.ts';
import { plain } from '#quantity/round.ts';
import type { Facts, Load } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { clockHour } from '../clock.ts';
import { exactFigure, figure, reasons } from '../figures.ts';
import { amountsOf } from '../figures-told.ts';
import type { RequestContext } from '../intent.ts';
import { loadsOver } from '../loads-over.ts';
import { momentsIn, sinceIn } from '../moments.ts';
import { isCapacity } from '../read-twice.ts';
import type { WorkedBeside } from '../worked-beside.ts';

const counting =
  /^(?:used|use|gone|counted|counts|says|said|reckons|reads|shows|showing|consumed|pulled|took|taken|burnt|burned|chewed|drawn|drew|out|ate|eaten|since|overnight|using)$/;
/** So near to the figure it is said what was counted, mentions. */
const near = 4;

/** The amp hours that were counted: the one figure of that kind that is no battery's size, and no use a day. */
function countedIn(mentions: readonly Mention[]): number | undefined {
  const [counted, ...more] = amountsOf(mentions, 'charge').filter(one => !isCapacity(mentions, one));
  if (!counted || more.length > 0 || (counted.rate !== undefined && counted.rate !== 'night'))
    return undefined;
  const at = mentions.indexOf(counted);
  const round = mentions.slice(Math.max(0, at - near), at + near + 1);
  const isOther = amountsOf(mentions, 'voltage').some(({ value }) => value !== 12 && value !== 24);
  return !isOther && round.some(({ text }) => counting.test(text)) ? counted.value : undefined;
}

const isTimed = ({ recognised: { words, mentions } }: ParsedMessage): boolean =>
  momentsIn(words, mentions).hours !== undefined || sinceIn(words, mentions) !== undefined;

/** Words that are appliances elsewhere. */
const otherwise: ReadonlySet<string> = new Set([
  'amp',
  'sound',
  'bed',
  'load',
  'standby',
  'monitor',
  'sensor',
]);
const mostCounted = 20;

/** What was running, as it was told; a draw that is a count of the whole is none of one thing. */
function loadsOf({ loads }: Facts, mentions: readonly Mention[]): Load[] | undefined {
  if (loads?.length) return loads.map(({ chargeAhPerDay: _ah, energyWhPerDay: _wh, ...load }) => load);
  const named = mentions.flatMap((mention, at): Load[] => {
    if (mention.kind !== 'thing' || otherwise.has(mention.key) || !applianceOf(mention.key)) return [];
    const before = mentions[at - 1];
    const isCount = before?.kind === 'number' && Number.isInteger(before.told) && before.told <= mostCounted;
    return [{ name: mention.key, count: isCount ? Math.max(1, before.told) : 1, supply: 'dc' }];
  });
  return named.length > 0 ? named : undefined;
}

/** The hours that were counted over, and the hour of the clock that they begin at. */
function timeOf(
  facts: Facts,
  setting: RequestContext,
): { readonly hours: number; readonly fromH?: number | undefined } {
  const { words, mentions } = setting.parsed.recognised;
  const told = momentsIn(words, mentions);
  if (told.hours !== undefined) return { hours: told.hours, fromH: told.fromH };
  const { hour, daysBefore } = present(sinceIn(words, mentions));
  const now = clockHour(facts, setting);
  const hours = now - hour + 24 * daysBefore;
  return { hours: hours > 0 ? hours : hours + 24, fromH: hour };
}

const reasonsFor = {
  more: [
    'Most often: heat about the fridge or no air behind it, an inverter left on, or something nobody thought of.',
    'Switch all off, then on one by one, and read the amps of each at the monitor.',
  ],
  right: ['A hot day, a warm load in the fridge or a late night moves that by a third either way.'],
  less: [
    'Most often sun or a drive put some back, as a shunt counts both ways, or a load’s minus goes round the shunt.',
    'Switch one thing on: if the amps don’t move, its minus must go to the load side of the shunt.',
  ],
} as const;

const heads = { more: 'More than usual', right: 'Yes, about right', less: 'Less than usual' } as const;
const verdicts = { more: 'no', right: 'yes', less: 'no' } as const;

function answerStacksUp(facts: Facts, setting: RequestContext): Reply {
  const { mentions } = setting.parsed.recognised;
  const counted = present(countedIn(mentions));
  const { hours, fromH } = timeOf(facts, setting);
  const loads = loadsOf(facts, mentions);
  const over = loadsOver({ ...facts, loads }, { hours, fromH }, setting);
  const anHour = `${plain(counted)} Ah in ${exactly(hours)} is ${plain(counted / hours)} A all the time, or ${rounded((24 * counted) / hours)} Ah a day.`;
  if (!over)
    return {
      headline: anHour,
      lines: [
        'What was running? Tell me, and I say whether that fits: a fridge alone takes about 1 to 2 A on average.',
      ],
      verdict: null,
      next: ['fridge and lights, what do they use a day?'],
    };
  const { used } = over.figures;
  const judged = counted > used.high ? 'more' : counted < used.low ? 'less' : 'right';
  return {
    headline: `${heads[judged]}: ${over.usually.charAt(0).toLowerCase()}${over.usually.slice(1)} about ${rounded(used.value)} Ah (${span(used.low, used.high, 'Ah')}) in ${exactly(hours)}.`,
    lines: [anHour, ...reasonsFor[judged]],
    verdict: verdicts[judged],
    figures: { usual: figure(used, 'Ah'), counted: exactFigure(counted, 'Ah') },
    ...reasons(over),
    cautions: loadCautions({ ...facts, loads }),
    next: ['what do I use a day?', 'what is a shunt?'],
  };
}

/** Whether what a monitor counted is what the loads would take over that time. */
export const stacksUp: WorkedBeside = {
  name: 'stacks-up',
  spots: [
    'stack_up|stacks_up|stacking_up|add_up|adds_up|sound_right|sounds_right|sound_about_right|look_right|looks_right|seem_right|seems_right|about_right|make_sense|makes_sense|plausible|believable|realistic|a_lot|too_much|bit_much|too_high|seem_high|seems_high|sound_high|normal|reasonable|expected|believe|legit|fair|is_that_right|that_right|possible|seem_like_much|heaps used|use|uses|using|gone|counted|counts|says|said|reckons|reads|shows|showing|consumed|pulled|took|taken|burnt|burned|chewed|drawn|drew|out|since|overnight|ate|eaten -how_long|will_it_last|panel|panels|solar|put_in|charger|charging|charge',
  ],
  when: parsed => countedIn(parsed.recognised.mentions) !== undefined && isTimed(parsed),
  takes: ['loads', 'ambientC'],
  reply: answerStacksUp,
};
