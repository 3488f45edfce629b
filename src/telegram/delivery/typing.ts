import type { Api } from 'grammy';
import type { Place } from './again/place.ts';

/** After how long people are told that an answer is on its way, in milliseconds. */
const slowAfterMs = 500;

/** Shows "typing" only where the work takes a while; a refusal is of no interest. */
export async function whenSlow<T>(api: Api, place: Place, work: () => Promise<T>): Promise<T> {
  const timer = setTimeout(() => {
    const thread = place.thread === undefined ? {} : { message_thread_id: place.thread };
    api.sendChatAction(place.chat, 'typing', thread).catch(() => {});
  }, slowAfterMs);
  try {
    return await work();
  } finally {
    clearTimeout(timer);
  }
}
