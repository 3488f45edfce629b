import type { Verdict } from '#answer/answer.ts';
import type { Reply } from '#answer/reply.ts';
import { listIn, rounded, sentence, span } from '#answer/say.ts';
import { english, type Speech } from '#answer/speech.ts';
import type { CautionCode } from '#answer/words/en.ts';
import { present } from '#basics/present.ts';
import type { Range } from '#quantity/range.ts';
import type { Facts } from '#rig/rig.ts';
import { loadCautions } from '../cautions.ts';
import { figure, reasons } from '../figures.ts';
import type { RequestContext } from '../intent.ts';
import { isSpotted } from '../spotting.ts';
import { usualWatts } from '../usual-watts.ts';
import { wiringChart } from '../wiring-chart.ts';
import { bankWithin } from '../words.ts';
import type { InverterCheck } from './compute.ts';
import { whatRuns } from './what-runs.ts';

/** "the kettle and the toaster". */
function things({ loads }: InverterCheck, w: Speech): string {
  const names = loads.map(load => {
    const thing = load.name;
    return load.count > 1 ? `${load.count} × ${thing}` : w.say('the-thing', 'the {thing}', { thing });
  });
  return listIn([...new Set(names)], w);
}

/** "about 120 A" and its span "110–135 A". */
const currents = ({ value, low, high }: Range, w: Speech) => ({
  amps: rounded(value, w),
  range: span(low, high, 'A', w),
});

/** Why the battery is the trouble: it is asked for too much, or its volts fall too low. */
function bankTrouble(result: InverterCheck, setting: RequestContext, w: Speech): string {
  const { figures, bank } = result;
  const { fit, limitA, sagToV, cutOutV } = present(result.bankFit);
  if (figures.batteryCurrent.value <= limitA)
    return w.say(
      'bank-sags',
      'the battery sags to about {sag} V when half full, and inverters cut out at {cutOut} V',
      { sag: w.plain(sagToV), cutOut: w.plain(cutOutV) },
    );
  const gaps = {
    amps: rounded(figures.batteryCurrent.value, w),
    limit: w.plain(limitA),
    bank: bankWithin(present(bank), setting, w),
  };
  return fit === 'no'
    ? w.say('far-over-bank', '{amps} A is far more than {bank} should give (about {limit} A)', gaps)
    : w.say('over-bank', '{amps} A is more than {bank} should give (about {limit} A)', gaps);
}

/** The reason that decides, for a no or a tight. */
function trouble(result: InverterCheck, setting: RequestContext, w: Speech): string {
  const { figures, ratingW, surgeW, bankFit } = result;
  const gaps = {
    run: w.decimals(figures.acLoad.value, 0),
    rating: w.decimals(ratingW ?? 0, 0),
    start: w.decimals(figures.startLoad.value, 0),
    surge: w.decimals(surgeW ?? 0, 0),
    use: w.plain(figures.batteryUse.value),
    usable: w.plain(figures.usableCapacity.value),
  };
  if (result.rating === 'no')
    return w.say('over-rating', '{run} W is more than the {rating} W it gives', gaps);
  if (bankFit && (bankFit.fit === 'no' || (bankFit.fit === 'tight' && result.rating !== 'tight')))
    return bankTrouble(result, setting, w);
  if (result.drains === 'no' || result.drains === 'tight')
    return w.say(
      'drains',
      'one go takes about {use} Ah, and the battery has about {usable} Ah to use when full',
      gaps,
    );
  if (result.surge === 'tight' && !result.isSurgeTold)
    return w.say(
      'hard-start',
      'it runs at {run} W, but a hard start may take {hardest} W: check its surge rating',
      { ...gaps, hardest: w.decimals(result.hardestW, -1) },
    );
  if (result.surge !== 'yes' && result.surge !== undefined)
    return w.say(
      'over-surge',
      'it runs at {run} W, but starting may ask for {start} W of its {surge} W surge',
      gaps,
    );
  if (result.rating === 'tight') return w.say('near-rating', '{run} W is nearly all of its {rating} W', gaps);
  const names = result.minding.map(name => name);
  return w.say('minds-wave', '{things} may not like a modified wave: hum, heat, or not start at all', {
    things: listIn(names, w),
  });
}

/** Words that ask what an inverter runs. */
const asksWhat: readonly string[] = ['what', 'whats', 'biggest|most_powerful'];

/** Words that ask which inverter. */
const asksWhich: readonly string[] = ['what|which|how_big|size inverter'];

/** Words that ask what one use takes out of the battery. */
const asksUse: readonly string[] = [
  'how_much|how_many battery|batt|ah|amp_hours|out|use|take|takes',
  'what_ah|chew|chews|how_many_ah',
];

/** Words that ask whether it is more than is needed. */
const tooBig: readonly string[] = ['overkill', 'too_big', 'too_much', 'bigger_than'];

function headline(result: InverterCheck, verdict: Verdict, setting: RequestContext, w: Speech): string {
  const { figures, ratingW, neededW } = result;
  const gaps = {
    ...currents(figures.batteryCurrent, w),
    run: w.decimals(figures.acLoad.value, 0),
    rating: w.decimals(ratingW ?? 0, 0),
    needed: w.decimals(neededW, 0),
  };
  const { bank, bankFit } = result;
  const isBankAsked = setting.parsed.facts.batteries !== undefined || setting.parsed.cues.has('ask-can-it');
  const within = bank && bankFit && { limit: w.plain(bankFit.limitA), bank: bankWithin(bank, setting, w).replace(/^A(?=n? )/, 'a') };
  if (result.loads.length === 0 && bankFit && figures.batteryCurrent.value > bankFit.limitA)
    return w.say('not-flat-out', 'Not flat out: {why}.', { why: bankTrouble(result, setting, w) });
  if (result.loads.length === 0 && isBankAsked && within && bankFit?.fit === 'yes')
    return w.say('flat-out-within', 'Yes, even flat out: {amps} A is within the {limit} A that {bank} should give.', {
      ...gaps,
      ...within,
    });
  if (result.loads.length === 0)
    return w.say(
      'flat-out',
      'Flat out, a {rating} W inverter takes about {amps} A from the battery ({range}).',
      gaps,
    );
  if (verdict === 'no') return w.say('no-because', 'No: {why}.', { why: trouble(result, setting, w) });
  if (verdict === 'tight')
    return w.say('tight-because', 'Tight: {why}.', { why: trouble(result, setting, w) });
  const { words } = setting.parsed.recognised;
  const isWhichAsked = ratingW === undefined && isSpotted(words, asksWhich);
  if (ratingW === undefined && verdict === 'yes' && within && !isWhichAsked)
    return w.say(
      'yes-on-bank',
      'Yes, on a {needed} W inverter: {amps} A is within the {limit} A that {bank} should give.',
      { ...gaps, ...within },
    );
  if (isWhichAsked)
    return w.say('which-one', 'A {needed} W inverter: {things} about {amps} A from the battery ({range}).', {
      ...gaps,
      things:
        result.loads.length > 1
          ? w.say('together-they-take', 'together they take')
          : w.say('it-takes', '{things} takes', { things: things(result, w) }),
    });
  if (ratingW === undefined && verdict === null && setting.parsed.cues.has('ask-can-it'))
    return w.say(
      'only-with',
      'Only with a {needed} W inverter, and a battery that can give about {amps} A ({range}).',
      gaps,
    );
  if (ratingW === undefined && result.loads.length > 1)
    return w.say(
      'take-together',
      'Together they take about {amps} A from the battery ({range}) and need a {needed} W inverter.',
      gaps,
    );
  if (ratingW === undefined)
    return w.say(
      'takes-and-wants',
      '{things} takes about {amps} A from the battery ({range}) and needs a {needed} W inverter.',
      { ...gaps, things: sentence(things(result, w)) },
    );
  if (isSpotted(words, tooBig) && 2 * figures.acLoad.value < (ratingW ?? 0))
    return w.say(
      'more-than-enough',
      'Yes, it’s more than you need: {run} W of the {rating} W it gives.',
      gaps,
    );
  return w.say('within', 'Yes: {run} W is within the {rating} W it gives.', gaps);
}

/** "about 7 Ah (6–8 Ah) for 5 minutes". */
const useOfOne = ({ figures: { batteryUse }, hours }: InverterCheck, w: Speech): string =>
  w.say('use-for', 'about {ah} Ah ({range}) for {time}', {
    ah: w.plain(batteryUse.value),
    range: span(batteryUse.low, batteryUse.high, 'Ah', w),
    time: time(present(hours), w),
  });

/** What the battery feels. */
function drain(result: InverterCheck, isInHeadline: boolean, w: Speech): string | undefined {
  const { batteryCurrent, batteryUse } = result.figures;
  const current = currents(batteryCurrent, w);
  const isUsed = batteryUse.value > 0;
  const use = isUsed ? useOfOne(result, w) : '';
  if (isInHeadline) return isUsed ? w.say('that-is', 'That is {use}.', { use }) : undefined;
  return isUsed
    ? w.say('takes-use', 'It draws about {amps} A ({range}) from the battery, {use}.', { ...current, use })
    : w.say('takes-current', 'It draws about {amps} A ({range}) from the battery.', current);
}

const time = (hours: number, w: Speech): string =>
  hours < 1.5
    ? w.say('minutes', '{n} minutes', { n: w.plain(hours * 60), count: hours * 60 })
    : w.say('hours', '{n} hours', { n: w.plain(hours), count: hours });

/** From here on it is worth asking what the battery gives, A. Common practice. */
const askedA = 60;
/** Near the 100 A at which many lithium batteries cut off, A. Common practice. */
const lithiumStopsA = 90;

/** Whether a limit of the battery that was told is passed. */
const isForbidden = ({ bank, bankFit, figures }: InverterCheck): boolean =>
  bank?.maxCurrentA !== undefined && bankFit !== undefined && figures.batteryCurrent.value > bankFit.limitA;

/** The limit told of a battery whose size wasn't, held against what is drawn. */
function limitNote(facts: Facts, { bank, figures }: InverterCheck, w: Speech): string | undefined {
  const limitA = bank ? undefined : facts.batteries?.[0]?.maxCurrentA;
  if (limitA === undefined) return undefined;
  return figures.batteryCurrent.value > limitA
    ? w.say('over-its-limit', 'Your battery’s limit of {limit} A is less than that: take a smaller load.', {
        limit: w.plain(limitA),
      })
    : w.say('in-its-limit', 'Your battery’s limit of {limit} A allows that.', { limit: w.plain(limitA) });
}

function hints(result: InverterCheck, verdict: Verdict, limit: string | undefined, w: Speech): string[] {
  const { figures, ratingW, neededW, bankFit } = result;
  const factor = result.ranked.find(a => a.name.endsWith('input factor'));
  const isShort =
    result.loads.length > 0 &&
    verdict !== 'yes' &&
    ratingW !== undefined &&
    (result.rating !== 'yes' || result.surge === 'no');
  return [
    factor
      ? w.say(
          'plate-is-output',
          "A microwave's watts are what it cooks with: it draws about {times} times that, {watts} W here. If yours are its input, say so.",
          { times: w.significant(factor.value), watts: w.decimals(figures.acLoad.value, 0) },
        )
      : '',
    result.oneAtATime ? w.say('one-at-a-time', 'One at a time works.') : '',
    isShort
      ? w.say('bigger-inverter', 'A {watts} W inverter handles it easily.', { watts: w.decimals(neededW, 0) })
      : '',
    bankFit && isForbidden(result)
      ? w.say('needs-more-battery', 'You need a battery that can give {amps} A or more, or a smaller load.', {
          amps: w.plain(figures.batteryCurrent.value),
        })
      : '',
    bankFit && bankFit.fit !== 'yes' && result.rating !== 'no' && !isForbidden(result)
      ? w.say(
          'engine-or-second',
          'Run the engine while it’s on, or add a second battery of the same kind to share the load.',
        )
      : '',
    limit ?? '',
    limit === undefined && result.bank === undefined && figures.batteryCurrent.value >= askedA
      ? w.say(
          'must-give',
          figures.batteryCurrent.value < lithiumStopsA
            ? 'Check that your battery can give {amps} A: a single 100 Ah AGM sags at that.'
            : 'Check that your battery can give {amps} A: many lithium ones stop at 100 A, and a single 100 Ah AGM sags.',
          { amps: rounded(figures.batteryCurrent.value, w) },
        )
      : '',
  ].filter(Boolean);
}

function cautionsOf(facts: Facts, result: InverterCheck): CautionCode[] {
  const found: CautionCode[] = loadCautions(facts, result.bank);
  if (result.surge !== undefined && result.surge !== 'yes') found.push('surge');
  if (result.figures.batteryCurrent.value >= 80) found.push('big-current');
  return found;
}

/** Words for an inverter and what hangs on it. */
export function answerInverterCheck(
  facts: Facts,
  result: InverterCheck,
  setting: RequestContext,
  isPeakAlone = false,
): Reply {
  const { cues } = setting.parsed;
  const w = english;
  const sizeW = w.decimals(result.ratingW ?? result.neededW, 0);
  const isJudged = result.loads.length > 0 && (result.ratingW !== undefined || result.fit === 'no');
  const isBankTold = setting.parsed.facts.batteries !== undefined && result.loads.length > 0;
  const isAsked = isJudged || (result.bank !== undefined && (cues.has('ask-can-it') || isBankTold));
  const verdict: Verdict = isAsked ? (result.fit ?? null) : null;
  const isInHeadline = verdict === null || (verdict === 'yes' && result.ratingW === undefined);
  const { acLoad, batteryCurrent, batteryUse } = result.figures;
  const { words } = setting.parsed.recognised;
  const isWhatAsked = result.loads.length === 0 && isSpotted(words, asksWhat);
  const [only, other] = result.loads;
  const watts = only && !other ? usualWatts(only, words) : undefined;
  const usual = isWhatAsked ? whatRuns(result, w) : [];
  const isUseAsked = batteryUse.value > 0 && (verdict ?? 'yes') === 'yes' && isSpotted(words, asksUse);
  const useFirst = isUseAsked ? sentence(`${useOfOne(result, w)}.`) : '';
  const lines = [
    isPeakAlone
      ? w.say('peak-is-half', '{peak} W peak is about {rating} W for long, as a rule: its label tells.', {
          peak: w.decimals(facts.inverter?.surgeW ?? 0, 0),
          rating: sizeW,
        })
      : undefined,
    useFirst ? undefined : drain(result, isInHeadline, w),
    ...hints(result, verdict, limitNote(facts, result, w), w),
  ].filter(line => line !== undefined);
  const [first = useFirst, ...rest] = usual;
  const flatOut = headline(result, verdict, setting, w);
  return {
    headline: watts ?? (first || flatOut),
    lines: (watts || first ? [...rest, flatOut, ...lines] : lines).slice(0, 4),
    verdict,
    figures: {
      acLoad: figure(acLoad, 'W'),
      batteryCurrent: figure(batteryCurrent, 'A'),
      ...(batteryUse.value > 0 && { batteryUse: figure(batteryUse, 'Ah') }),
    },
    ...reasons(result),
    // What it may not carry is not drawn.
    chart: result.fit === 'no' || isForbidden(result) ? undefined : wiringChart(facts, setting.mainsV),
    cautions: cautionsOf(facts, result),
    next: [
      w.say('next-cable', 'what cable for a {watts}W inverter, 1.5 m?', { watts: sizeW }),
      w.say('next-fuse', 'what fuse for a {watts}W inverter?', { watts: sizeW }),
      w.say('next-working', 'show the working'),
    ],
  };
}
