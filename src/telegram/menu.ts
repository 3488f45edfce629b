import type { Api } from 'grammy';
import type { LanguageCode } from 'grammy/types';
import { languages } from '#answer/speech.ts';
import { menuOf } from './commands.ts';
import type { Log } from './deps.ts';
import { words } from './words.ts';

const menus = [
  ['private', 'all_private_chats'],
  ['group', 'all_group_chats'],
  ['admin', 'all_chat_administrators'],
] as const;

const about = 'Camping power, answered: how long it lasts, what battery, what panel, with the working.';

/**
 * Sets the menus of commands and what the bot says of itself, in English for all and in each language there is; the
 * same at every start, so it may run twice. The bot works without, so a refusal is only logged.
 */
export async function setMenus(api: Api, log: Log): Promise<void> {
  try {
    for (const language of languages()) {
      const code = language === 'en' ? {} : { language_code: language as LanguageCode };
      for (const [menu, type] of menus)
        await api.setMyCommands(menuOf(menu, language), { scope: { type }, ...code });
      await api.setMyCommands(menuOf('private', language), code);
      await api.setMyShortDescription(words(language).say('about-bot', about), code);
    }
  } catch (error) {
    log.warn({ err: error }, 'the menus could not be set');
  }
}
