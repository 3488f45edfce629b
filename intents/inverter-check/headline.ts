import type { Verdict } from '#answer/answer.ts';
import { listIn, rounded, sentence, span } from '#answer/say.ts';
import type { Speech } from '#answer/speech.ts';
import { present } from '#basics/present.ts';
import type { Range } from '#quantity/range.ts';
import type { RequestContext } from '../intent.ts';
import { isSpotted } from '../spotting.ts';
import { bankWithin } from '../words.ts';
import type { InverterCheck } from './compute.ts';

/** "the kettle and the toaster". */
function things({ loads }: InverterCheck, w: Speech): string {
  const names = loads.map(load => {
    const thing = load.name;
    return load.count > 1 ? `${load.count} × ${thing}` : w.say('the-thing', 'the {thing}', { thing });
  });
  return listIn([...new Set(names)], w);
}

/** "about 120 A" and its span "110–135 A". */
export const currents = ({ value, low, high }: Range, w: Speech) => ({
  amps: rounded(value, w),
  range: span(low, high, 'A', w),
});

/** From so many times its limit on a current is far over it. */
const far = 2;

/** Why the battery is the trouble: it is asked for too much, or its volts fall too low. */
function bankTrouble(result: InverterCheck, setting: RequestContext, w: Speech): string {
  const { figures, bank } = result;
  const { limitA, sagToV, cutOutV } = present(result.bankFit);
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
  return figures.batteryCurrent.value > far * limitA
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

/** Words that ask which inverter. */
const asksWhich: readonly string[] = ['what|which|how_big|size inverter'];

/** Words that ask whether it is more than is needed. */
const tooBig: readonly string[] = ['overkill', 'too_big', 'too_much', 'bigger_than'];

/** The first line. */
export function inverterHeadline(
  result: InverterCheck,
  verdict: Verdict,
  setting: RequestContext,
  w: Speech,
): string {
  const { figures, ratingW, neededW } = result;
  const gaps = {
    ...currents(figures.batteryCurrent, w),
    run: w.decimals(figures.acLoad.value, 0),
    rating: w.decimals(ratingW ?? 0, 0),
    needed: w.decimals(neededW, 0),
  };
  const { bank, bankFit } = result;
  const isBankAsked = setting.parsed.facts.batteries !== undefined || setting.parsed.cues.has('ask-can-it');
  const within = bank &&
    bankFit && {
      limit: w.plain(bankFit.limitA),
      bank: bankWithin(bank, setting, w).replace(/^A(?=n? )/, 'a'),
    };
  if (result.loads.length === 0 && bankFit && figures.batteryCurrent.value > bankFit.limitA)
    return w.say('not-flat-out', 'Not flat out: {why}.', { why: bankTrouble(result, setting, w) });
  if (result.loads.length === 0 && isBankAsked && within && bankFit?.fit === 'yes')
    return setting.parsed.cues.has('ask-can-it')
      ? w.say(
          'yes-flat-out',
          'Yes, even flat out: {amps} A is within the {limit} A that {bank} should give.',
          {
            ...gaps,
            ...within,
          },
        )
      : w.say(
          'flat-out-within',
          'Flat out, a {rating} W inverter takes about {amps} A, within the {limit} A that {bank} should give.',
          { ...gaps, ...within },
        );
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
