import type { Answer } from '#answer/answer.ts';
import { present } from '#basics/present.ts';

/** Units of one kind of quantity: a line keeps to one of them. Charge and energy are one kind: what a battery holds. */
const kinds: readonly (readonly [kind: string, units: readonly string[]])[] = [
  ['time', ['minutes?|min', 'hours?|h', 'days?', 'nights?']],
  ['what is held', ['Ah', 'k?Wh']],
  ['power', ['W', 'kW']],
  ['current', ['A', 'mA']],
  ['voltage', ['V', 'mV']],
  ['length', ['m', 'ft|feet']],
  ['copper', ['mm²', 'AWG|B&S']],
  ['temperature', ['°C', '°F']],
  ['weight', ['kg', 'lb']],
];

/** Lines that say again what people told, in their own units, and the working, which turns one into the other. */
const echoes =
  /^(?:Counted|Not counted here|Noted\.|Changed\.|Undone\.|Your rig|The rig|From \S+ question|•|“)/;

/** The text without the working. */
const answerPart = (text: string): readonly string[] => present(text.split('\n\nWorking:')[0]).split('\n');

/** Questions about units themselves. */
const ofUnits: ReadonlySet<string> = new Set(['term', 'convert', 'learn', 'help']);

/** Lines of an answer in which one kind of quantity is told in two units. */
export function mixedLines({ intent, text }: Answer): string[] {
  if (ofUnits.has(intent)) return [];
  return answerPart(text).filter(line => {
    if (echoes.test(line)) return false;
    // Hours of full sun are an energy.
    const told = line.replaceAll('h of full sun', '');
    return kinds.some(([, units]) => {
      const found = units.filter(unit => new RegExp(`[\\d¼½¾] ?(?:${unit})(?![\\w²])`).test(told));
      return found.length > 1;
    });
  });
}

/** Lines of assumptions and cautions. */
export const asideLines = ({ text }: Answer): string[] =>
  answerPart(text).filter(line => /^(?:Assumed|Careful): /.test(line));

export const firstLine = ({ text }: Answer): string => present(text.split('\n')[0]);

/** Words that nobody says at camp, with the better ones in docs/voice.md. */
export const stiff =
  /\breckoned with\b|\bit hangs on\b|\bin hand\.|\bshall\b|\bstand that\b|\bcan't be had\b|\bit should stay above\b|\bshare of its capacity\b|\bTo make \d/i;

/** Figures that were worked out ("about …") and are told closer than anybody says them: in words a fridge takes 29 Ah, not 28.8. */
export const tooExact = (answer: Answer): string[] =>
  ofUnits.has(answer.intent)
    ? []
    : answerPart(answer.text).filter(line =>
        [...line.matchAll(/\babout ([\d,]+(?:\.\d+)?) (?:Ah|Wh|A|W)\b/g)].some(([, said]) => {
          const value = Number(present(said).replaceAll(',', ''));
          return (value >= 10 && value % 1 > 0) || (value >= 1000 && value % 100 > 0);
        }),
      );

/** Numbers past belief in an answer that doesn't ask about them: hundreds of batteries, days of driving a day. */
export function pastBelief({ text }: Answer): string[] {
  return answerPart(text).filter(line => {
    if (line.includes('Are the numbers right?')) return false;
    const ah = [...line.matchAll(/([\d,.]+) Ah\b/g)].map(([, n]) => Number(present(n).replaceAll(',', '')));
    const count = [...line.matchAll(/(\d+) × \d+ Ah/g)].map(([, n]) => Number(n));
    const drive = [...line.matchAll(/([\d.]+) h of driving a day/g)].map(([, n]) => Number(n));
    return (
      ah.some(n => n > 1000) || count.some(n => n > 6) || drive.some(n => n > 8) || /after 0 /.test(line)
    );
  });
}
