import type { Api } from 'grammy';
import type { Log } from '#telegram/ops/deps.ts';
import { menuOf } from './commands.ts';

const menus = [
  ['private', 'all_private_chats'],
  ['group', 'all_group_chats'],
  ['admin', 'all_chat_administrators'],
] as const;

const about = 'Camping power, answered: how long it lasts, what battery, what panel, with the working.';
/** What stands in a chat before its first message; at most 512 characters. */
const description = [
  'Camping power on 12 volts, worked out for you: how long the battery lasts, what panel, cable and fuse, whether it',
  'lasts the trip, with the working.',
].join(' ');

/**
 * Sets the menus of commands and what the bot says of itself; the same at every start, so it may run
 * twice. The bot works without, so a refusal is only logged.
 */
export async function setMenus(api: Api, log: Log): Promise<void> {
  try {
    for (const [menu, type] of menus) await api.setMyCommands(menuOf(menu), { scope: { type } });
    await api.setMyCommands(menuOf('private'));
    await api.setMyShortDescription(about);
    await api.setMyDescription(`${description}\n\nWrite it short: fridge 1.2A, 100Ah, 3 days?`);
  } catch (error) {
    log.warn({ err: error }, 'the menus could not be set');
  }
}
