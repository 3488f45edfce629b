import { drawn } from '#telegram/delivery/deliver.ts';
import type { Content, Place, SentMessage } from '#telegram/delivery/place.ts';
import { captionLimit, captionOf } from '#telegram/ui/caption.ts';
import { chartTable, workingTable } from '#telegram/ui/rich.ts';
import { say, workingAlone } from '#telegram/ui/say.ts';
import { labels } from '#telegram/ui/words.ts';
import type { Kept } from './kept.ts';
import type { Pressed } from './pressed.ts';
import { workingOf } from './think.ts';

/** Shows the working or the picture of somebody else's answer to the one who tapped, and leaves the answer as it is. */
export async function ownCopy(pressed: Pressed, kept: Kept): Promise<SentMessage | undefined> {
  const { room, message, query, button, reply } = pressed;
  const place: Place = {
    chat: message.chat.id,
    onlyFor: { person: query.from.id, press: query.id },
  };
  const answer = kept.again();
  const content = button.action === 'working' ? working(answer) : await picture(pressed, answer);
  // The tap is named by the message, so its spinner ends behind it.
  const sent = content && (await room.sender.send(place, content));
  await reply(sent === undefined ? 'noCopy' : undefined);
  return undefined;
}

const working = (answer: ReturnType<Kept['again']>): Content => ({
  said: workingAlone(labels.steps, workingOf(answer)),
  rich: workingTable(labels.steps, answer.working),
});

async function picture(
  { room, message }: Pressed,
  answer: ReturnType<Kept['again']>,
): Promise<Content | undefined> {
  const chart = answer.chart?.();
  if (chart === undefined) return undefined;
  const said = say(captionOf(chart), { limit: captionLimit });
  return { said, picture: await drawn(room, chart, message.chat.id), rich: chartTable(chart) };
}
