import type { IntentName } from '#answer/answer.ts';
import { spotted } from '#intents/spotting.ts';
import type { Heard } from '../hear.ts';
import { isMedical, type Reading } from '../unsure/plain-enough.ts';
import { leastSure } from '../unsure/sureness.ts';
import { factsIn, readingsOf } from '../unsure/two-readings.ts';

/** A question that some words put beyond doubt, where reading is torn between it and others. */
interface Put {
  readonly intent: IntentName;
  /** What reading may take it for besides. */
  readonly besides: ReadonlySet<IntentName>;
  /** Patterns of `spotted`. */
  readonly words: readonly string[];
  /** So in a long message too, where reading puts it first. */
  readonly isInLong?: true;
  /** It is meant though reading is sure of one of those. */
  readonly isAlways?: true;
  /** Only where some reading takes it for that. */
  readonly isRead?: true;
}

const put: readonly Put[] = [
  // "Should I drive now?", "do I need to plug in yet?"
  {
    intent: 'charge-time',
    besides: new Set(['charge-level', 'run-time', 'generator', 'fault']),
    words: [
      'should|ought|need_to|must|better|time_to|have_to drive|charge|recharge|plug|run -how_long|how_much',
    ],
  },
  // "Will I make it to morning?", "flat by breakfast?"
  {
    intent: 'run-time',
    besides: new Set(['fault', 'charge-level']),
    words: [
      'make_it|last|survive|hold|get|see|flat|dead|empty|ok|okay|be_right|be_fine|enough morning|overnight|night|tonight|dark|dawn|breakfast|sunrise -why|wrong|was|what|percent',
    ],
  },
  // "Will we make it?", of what was told before.
  {
    intent: 'run-time',
    besides: new Set(['trip']),
    words: ['make_it|be_right|be_ok|be_okay|be_fine|get_by|get_us_through will|can|would'],
  },
  // "Can I run a microwave?"
  {
    intent: 'inverter-check',
    besides: new Set(['convert', 'unclear']),
    words: ['can|could|possible run|use|power -how'],
  },
  // "What is the alternator?"
  {
    intent: 'term',
    besides: new Set(['charge-path']),
    words: ['what_is_the|what_is_a|what_is_an|whats_a|whats_an alternator|isolator|dcdc|dc_dc -best -better'],
  },
  // "2 kVA generator, how long to charge it?"
  {
    intent: 'charge-time',
    besides: new Set(['generator', 'solar-yield', 'trip']),
    words: ['how_long|how_many_hours|hours_to charge|recharge|fill|full|top_up|charging -size|big|last|run'],
  },
  // "I've no idea what battery I need": the list of all there is to buy is another question.
  {
    intent: 'battery-size',
    besides: new Set(['list', 'battery-type', 'run-time']),
    words: [
      'what|which|how_big|what_size battery|batteries need|get|buy|want -else|everything|panel|solar|type',
    ],
  },
  // "12.3 this morning, should I worry?"
  {
    intent: 'charge-level',
    besides: new Set(['fault', 'run-time']),
    words: [
      'should_i_worry|worried|is_that_ok|is_that_bad|is_that_normal|is_it_normal|normal|is_that_good|any_good',
    ],
  },
  // "How many hours of driving a day to keep the fridge going?"
  {
    intent: 'charge-time',
    besides: new Set(['run-time', 'trip', 'energy-budget']),
    words: ['how_long|how_many_hours|how_much|hours drive|driving -last|lasts|left|flat|charge|solar|start'],
  },
  // "What size DC-DC for 200 Ah?"
  {
    intent: 'charge-path',
    besides: new Set(['term', 'charge-time', 'list']),
    words: ['dcdc|dc_dc|dc_to_dc what|which|good|best|how_big size|big|sized -fuse|cable|wire|long'],
  },
  // "Enough for 35 Ah a day?" of a panel
  {
    intent: 'solar-size',
    besides: new Set(['solar-yield', 'trip']),
    words: ['enough|cover|keep_up|do_it a_day|per_day|daily|every_day -days|last|battery'],
  },
  // "How many amps should I see at noon?"
  {
    intent: 'solar-yield',
    besides: new Set(['charge-time', 'convert', 'charge-path', 'fault', 'cable-size']),
    words: [
      'how_many|what|how_much amps|amp|current noon|midday|mid_day|lunchtime|full_sun|good_sun|clear_day -fuse|cable|wire|ah',
    ],
  },
  // "How many amps will 120 W make?": what makes amps of watts is a panel.
  {
    intent: 'solar-yield',
    besides: new Set(['charge-time', 'convert', 'charge-path', 'fault', 'term']),
    words: [
      'how_many|what|wot amps|amp make|makes|making|produce|produces|put_out|puts_out|putting_out|generate -fuse|cable|wire|ah|v|volt|volts|alternator|charger|dcdc|generator|genny|inverter|battery|day|draw|pull|use',
    ],
    isAlways: true,
    isRead: true,
  },
  // "280 Ah lithium, two 60 A DC-DCs at once?"
  {
    intent: 'charge-path',
    besides: new Set(['charge-time', 'rig', 'fault', 'settle', 'fuse-size']),
    words: [
      'two|three|both dcdc|dcdcs|dc_dc|dc_dcs at_once|same_time|together -fuse|cable|wire|how_long|solar|batteries',
    ],
  },
  // "MPPT or PWM for a 200 W panel?"
  {
    intent: 'compare',
    besides: new Set(['solar-wiring']),
    words: ['mppt pwm or|vs|versus|better -series|parallel'],
  },
  // "How many hours will the starter last with the stereo on?", whatever trip was spoken of before.
  {
    intent: 'starter-reserve',
    besides: new Set(['run-time', 'none']),
    words: [
      'starter_last|starter_battery_last|starter_stand|starter_battery_stand|starter_hold|starter_take|cranker_last|start_battery_last|crank_battery_last|starter_good_for how|will|can -house|leisure',
    ],
    isAlways: true,
  },
];

/** In a longer message the words of a pattern may stand anywhere. */
const mostWords = 16;
/** More likely than this together, other questions are not ruled out by the words. */
const mostOther = 0.15;
/** Less likely than this it is not what reading is torn over. */
const leastLikely = 0.2;

const shareOf = (readings: readonly Reading[]): number =>
  readings.reduce((sum, { probability }) => sum + probability, 0);

/** As likely as this, of the likeliest, a reading that tells more is taken: what it tells can be seen. */
const leastFuller = 0.6;
const told = ({ stated }: Reading): number => Object.keys(stated).length;

/** The likeliest reading, or one about as likely that tells more. */
function fullest(readings: readonly Reading[]): Reading | undefined {
  const [first] = readings;
  const near = readings.filter(({ probability }) => probability >= leastFuller * (first?.probability ?? 1));
  return near.reduce<Reading | undefined>(
    (best, one) => (best && told(best) >= told(one) ? best : one),
    first,
  );
}

/** An unsure message as the question that its words put, where nearly all readings are of that or of what it is taken for. */
export function asPut(heard: Heard): Heard {
  const isSure = heard.certainty >= leastSure;
  const row = spotted(heard.recognised.words, put, one => one.words);
  if (!row || (isSure && !row.isAlways) || heard.issues.length > 0) return heard;
  const isLong = heard.words > mostWords && !(row.isInLong && heard.intent === row.intent);
  const readings = isLong ? [] : readingsOf(heard);
  if (readings.length === 0) return heard;
  if (readings.some(isMedical)) return heard;
  const own = readings.filter(({ intent }) => intent === row.intent);
  const other = readings.filter(({ intent }) => intent !== row.intent && !row.besides.has(intent));
  if (row.isRead && own.length === 0) return heard;
  if (shareOf(other) > mostOther || (shareOf(own) < leastLikely && !row.isAlways)) return heard;
  const first = fullest(own) ?? readings[0];
  const facts = first ? factsIn(first.stated, heard) : heard.facts;
  const certainty = Math.max(heard.certainty, leastSure);
  return { ...heard, intent: row.intent, facts, options: [], certainty };
}
