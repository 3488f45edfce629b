import type { Reply } from '#telegram/delivery/deliver.ts';
import { hasWorking, type Thought } from '#telegram/updates/think.ts';
import { keyboard } from './buttons.ts';
import { captionLimit } from './caption.ts';
import { say } from './say.ts';

/** Questions whose answer people would rather look at. */
const pictured = new Set(['trip']);
/** Questions whose answer hangs on where the sun is. */
const sunny = new Set(['solar-size', 'solar-yield', 'trip']);

/** Whether the answer would be closer with a place, and it can be asked for: only private chats may. */
export function lacksPlace({ answer, memory: { frames }, kind }: Thought): boolean {
  const last = frames.at(-1);
  if (kind !== 'private' || !sunny.has(answer.intent) || last?.intent !== answer.intent) return false;
  const { place, latitudeDeg, peakSunHours, solar } = last.facts;
  const hasSun = answer.intent === 'solar-size' || solar !== undefined;
  return hasSun && (place ?? latitudeDeg ?? peakSunHours) === undefined;
}

/**
 * Lays an answer out with its buttons; a trip comes as a picture where its words fit below it.
 * @param asked the words on the button that asked it
 */
export function lay(
  thought: Thought,
  asker: number,
  asked?: string,
): Pick<Reply, 'said' | 'buttons' | 'chart'> {
  const { answer, memory } = thought;
  if (answer.text === '') return { said: { text: '', entities: [] } };
  const said = say(answer.text, { asked });
  const isPictured =
    memory.settings.pictures !== false && pictured.has(answer.intent) && said.text.length <= captionLimit;
  const chart = isPictured ? answer.chart?.() : undefined;
  const extras = {
    hasWorking: hasWorking(answer),
    hasPicture: answer.chart !== undefined && chart === undefined,
    lacksPlace: lacksPlace(thought),
  };
  const buttons = keyboard(said.text, asker, answer.next, extras);
  return { said, ...(buttons && { buttons }), ...(chart && { chart }) };
}
