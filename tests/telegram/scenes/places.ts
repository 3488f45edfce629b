import type { Chat, Message } from 'grammy/types';
import { alone, group, plainGroup, type Scene } from '../rows/one-group.ts';

/** Where a scene plays. */
export interface Place {
  readonly name: string;
  readonly chat: Chat;
  /** What every message there has besides. */
  readonly mark?: Partial<Message>;
  readonly prepare?: (s: Scene) => void;
  /** Refusals that belong there: the bot gets around them. */
  readonly usual?: RegExp;
}

const forum = { ...group, id: -1002222222222, is_forum: true } as Chat.SupergroupChat;

/** Every kind of chat that the bot meets, as Telegram describes them. */
export const places: readonly Place[] = [
  { name: 'in private', chat: alone },
  { name: 'in a small group', chat: plainGroup },
  { name: 'in a supergroup', chat: group },
  { name: 'in a supergroup, as an admin', chat: group, prepare: s => s.makeAdmin(group.id) },
  { name: 'in a topic of a forum', chat: forum, mark: { is_topic_message: true, message_thread_id: 7 } },
  {
    name: 'in General of a forum, whose thread is no topic',
    chat: forum,
    mark: { message_thread_id: 1 },
    prepare: s => s.world.deadThreads.add(1),
  },
  {
    name: 'where pictures and reactions are forbidden',
    chat: group,
    prepare: s => {
      s.world.withoutPhotos.add(group.id);
      s.world.withoutReactions.add(group.id);
    },
    usual: /REACTION_INVALID|not enough rights to send photos/,
  },
  {
    name: 'on a server of last year',
    chat: group,
    prepare: s => {
      s.world.isOld = true;
      s.makeAdmin(group.id);
    },
    usual: /method not found/,
  },
];

export const isPrivate = ({ chat }: Place): boolean => chat.type === 'private';
