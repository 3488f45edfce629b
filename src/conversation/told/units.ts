import type { ChatUnits } from '#quantity/chat-units.ts';
import type { Heard } from '../hear.ts';
import type { Frame, Memory } from '../memory.ts';

/** What each name of a unit sets. */
const names: ReadonlyMap<string, ChatUnits> = new Map(
  (
    [
      [{ length: 'ft' }, 'feet foot ft'],
      [{ length: undefined }, 'metres meters metre meter m'],
      [{ temperature: 'F' }, 'fahrenheit f °f'],
      [{ temperature: undefined }, 'celsius centigrade c °c'],
      [{ cable: 'awg' }, 'awg gauge gauges bs'],
      [{ cable: undefined }, 'mm2 mm² sqmm millimetres'],
      [{ length: 'ft', temperature: 'F', cable: 'awg' }, 'imperial american'],
      [{ length: undefined, temperature: undefined, cable: undefined }, 'metric'],
    ] as const
  ).flatMap(([set, words]) => words.split(' ').map(word => [word, set] as const)),
);
/** Words that ask for a unit, one of which a wish has. */
const wishes: ReadonlySet<string> = new Set(
  'in use using show speak switch change give answer talk prefer make put'.split(' '),
);
const fillers: ReadonlySet<string> = new Set(
  'please pls bot to and me us it that them all everything from now on instead degrees units answers sizes the i we want with can could you would like ta thanks cable cables wire temperatures lengths'.split(
    ' ',
  ),
);
const mostChars = 60;

/** The units that a message asks the bot to speak in ("use feet", "in fahrenheit please"), where it asks for nothing else. */
export function unitsWish(text: string): ChatUnits | undefined {
  if (text.length > mostChars) return undefined;
  const words =
    text
      .toLowerCase()
      .replaceAll('&', '')
      .match(/[\p{L}\d°²]+/gu) ?? [];
  const named = words.flatMap(word => names.get(word) ?? []);
  const isOther = words.some(word => !names.has(word) && !wishes.has(word) && !fillers.has(word));
  if (named.length === 0 || isOther || !words.some(word => wishes.has(word))) return undefined;
  return Object.assign({}, ...named);
}

/** What a message itself speaks in, by the units of what it tells: those of its amounts, or of its cable. */
function unitsOf({ recognised, facts, cues }: Heard): ChatUnits {
  const units = new Set(
    recognised.mentions.flatMap(({ kind, unit }) => (kind === 'amount' && unit ? [unit] : [])),
  );
  const isMetres = units.has('m');
  return {
    ...((units.has('ft') || isMetres) && { length: isMetres ? undefined : ('ft' as const) }),
    ...((units.has('°F') || units.has('°C')) && {
      temperature: units.has('°C') ? undefined : ('F' as const),
    }),
    ...((facts.cable?.awg !== undefined || cues.has('bs-gauge')) && { cable: 'awg' as const }),
    ...(facts.cable?.areaMm2 !== undefined && { cable: undefined }),
  };
}

/** The units of an answer: as the message speaks, else as the question that it turns did, else as the chat wished. */
export const unitsFor = (memory: Memory, heard: Heard, frame: Frame | undefined): ChatUnits => ({
  ...memory.settings.units,
  ...frame?.units,
  ...unitsOf(heard),
});

/** Units without those that are as usual; undefined where all are. */
export function unusualUnits({ length, temperature, cable }: ChatUnits): ChatUnits | undefined {
  if (!length && !temperature && !cable) return undefined;
  return { ...(length && { length }), ...(temperature && { temperature }), ...(cable && { cable }) };
}
