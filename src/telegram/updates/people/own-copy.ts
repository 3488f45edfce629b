import type { SentMessage } from '#telegram/delivery/again/place.ts';
import { postFirst } from '#telegram/delivery/deliver.ts';
import { Held } from '#telegram/delivery/hold.ts';
import type { OutgoingReply } from '#telegram/delivery/reply.ts';
import { chartAside, workingAside } from '#telegram/ui/show.ts';
import type { Kept } from '../kept.ts';
import type { Pressed } from '../pressing/pressed.ts';

/** Shows the working or the picture of somebody else's answer to the one who tapped, and leaves the answer as it is. */
export async function ownCopy(pressed: Pressed, kept: Kept): Promise<SentMessage | undefined> {
  const { button, reply } = pressed;
  const answer = kept.again();
  if (button.action === 'working') return showAlone(pressed, workingAside(answer));
  const chart = answer.chart?.();
  if (chart === undefined) return void (await reply('noCopy'));
  return showAlone(pressed, chartAside(chart, kept.isTable));
}

/**
 * Shows something to whoever tapped, alone. The tap is named by the message, so its spinner ends behind it; it counts
 * for some seconds only, so in a ban nothing is kept of it.
 * @param otherwise what the spinner ends with where it can't be shown
 */
export async function showAlone(
  { room, message, query, reply }: Pressed,
  shown: Omit<OutgoingReply, 'place'>,
  otherwise: Parameters<Pressed['reply']> = ['noCopy'],
): Promise<undefined> {
  const place = { chat: message.chat.id, onlyFor: { person: query.from.id, press: query.id } };
  try {
    const sent = await postFirst(room, { ...shown, place });
    await (sent === undefined ? reply(...otherwise) : reply());
  } catch (error) {
    if (!(error instanceof Held)) throw error;
    await reply('held');
  }
}
