import { hash } from '#telegram/ui/buttons.ts';
import type { SentMessage } from './again/place.ts';
import type { BotContext, OutgoingReply } from './reply.ts';

/**
 * Adds the picture to an answer that is out, as soon as it is drawn: words wait for no picture. It is left where the
 * answer has been turned into another one meanwhile, and where it fails: the words say it all, and a button has it.
 */
export function illustrateSoon(room: BotContext, at: SentMessage, reply: OutgoingReply): void {
  const { deps, drawing } = room;
  // One that a single person sees takes no picture; its button has it.
  if (reply.added === undefined || at.onlyFor !== undefined) return;
  const work = illustrate(room, at, reply, reply.added)
    .catch(error => deps.log.warn({ err: error }, 'a picture could not be added'))
    .finally(() => drawing.delete(work));
  drawing.add(work);
}

async function illustrate(
  room: BotContext,
  at: SentMessage,
  { said }: OutgoingReply,
  { chart, buttons }: NonNullable<OutgoingReply['added']>,
): Promise<void> {
  const { deps, kept, pictures, sender } = room;
  const chat = String(at.chat);
  const { memory, revision } = await deps.store.load(chat);
  const picture = await pictures.of(chart, memory.settings.isDark ? 'dark' : 'light');
  await deps.store.withLock(chat, async () => {
    const known = kept.ofAnswer(at.chat, at.id);
    const isTurned = known !== undefined && known.shown !== hash(said.text);
    // By whichever process.
    if (isTurned || (await deps.store.load(chat)).revision !== revision) return;
    if (await sender.illustrate(at, { said, picture, buttons })) kept.shows(at.chat, at.id, 'picture');
  });
}
