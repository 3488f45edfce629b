import { hangsOnPlace, isPictured } from '#conversation/questions.ts';
import type { OutgoingReply } from '#telegram/delivery/reply.ts';
import { type Draft, hasWorking } from '#telegram/updates/think.ts';
import { keyboard } from './buttons.ts';
import { captionLimit } from './caption.ts';
import { helpDoor, helpPage } from './help.ts';
import { say } from './say.ts';

/** Whether the answer would be closer with a place, and it can be asked for: only private chats may. */
export function lacksPlace({ answer, memory: { frames }, kind }: Draft): boolean {
  const last = frames.at(-1);
  if (kind !== 'private' || last?.intent !== answer.intent) return false;
  const { place, latitudeDeg, peakSunHours } = last.facts;
  return hangsOnPlace(answer.intent, last.facts) && (place ?? latitudeDeg ?? peakSunHours) === undefined;
}

/** The rig that an answer shows, in a line that the bot reads: "my rig: 100 Ah AGM, fridge 1.2 A". */
function rigLineOf({ intent, text, understood }: Draft['answer']): string | undefined {
  if (intent !== 'rig' || Object.keys(understood.rig ?? {}).length === 0) return undefined;
  const [line = ''] = text.split('\n');
  const parts = line.slice(line.indexOf(': ') + 2).replace(/\.$/, '');
  return line.includes(': ') ? `my rig: ${parts.replaceAll('; ', ', ')}` : undefined;
}

/** Whether a question can be put anywhere and is answered alike: it leans on nothing said before. */
const standsAlone = ({ answer, memory: { frames } }: Draft): boolean =>
  hasWorking(answer) && frames.at(-1)?.intent === answer.intent && frames.at(-1)?.onto === undefined;

/** How an answer came to be asked. */
export interface Asked {
  /** The words on the button that asked it. */
  readonly byButton?: string;
  /** The question as somebody wrote it, where it may be passed on to another chat. */
  readonly question?: string;
}

type Laid = Pick<OutgoingReply, 'said' | 'buttons' | 'added' | 'react'>;

/** Thanks get a thumb; in private the words where reactions are refused, among people none. */
const thumb: NonNullable<OutgoingReply['react']> = '\u{1F44D}';

/** Lays an answer out with its buttons; to a trip comes a picture where its words fit below it. */
export function render(draft: Draft, asker: number, { byButton, question }: Asked = {}): Laid {
  const { answer, memory, kind } = draft;
  const react = answer.isThanks === true ? { react: thumb } : {};
  if (answer.text === '') return { said: { text: '', entities: [] }, ...react };
  if (answer.intent === 'help') return helpPage(kind, asker);
  const said = say(answer.text, { asked: byButton });
  const isTable = memory.settings.pictures === false;
  const isShown = !isTable && isPictured(answer.intent) && said.text.length <= captionLimit;
  const chart = isShown ? answer.chart?.() : undefined;
  const extras = {
    hasWorking: hasWorking(answer),
    hasPicture: answer.chart !== undefined,
    isTable,
    lacksPlace: lacksPlace(draft),
    rigLine: rigLineOf(answer),
    question: question !== undefined && standsAlone(draft) ? question : undefined,
  };
  const help = answer.intent === 'unclear' ? helpDoor(said.text) : undefined;
  const keys = (hasPicture: boolean) => keyboard(said.text, asker, answer.next, { ...extras, hasPicture });
  const buttons = keys(extras.hasPicture) ?? help;
  const below = chart && keys(false);
  const added = chart && { chart, ...(below && { buttons: below }) };
  return { said, ...react, ...(buttons && { buttons }), ...(added && { added }) };
}
