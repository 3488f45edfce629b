import type { BotCommand } from 'grammy/types';

/** Which menus show a command: private chats, groups, and the admins of groups besides. */
type Menu = 'private' | 'group' | 'admin';

/** A command: what the menu says of it, and the plain message that it stands for. */
interface Command {
  readonly name: string;
  readonly says: string;
  readonly menus: readonly Menu[];
  /** The message it stands for when it stands alone. */
  readonly bare: string;
  /** The message with what was typed after it; that itself, where not given. */
  readonly withRest?: string;
  /** Whether in a group nobody else shall see it, nor its answer (Bot API 10.2). */
  readonly isForOne?: true;
}

/** Stands for "/export", which is answered with a file and not by the conversation; nobody can type it otherwise. */
export const exportMessage = '/export';
/** Stands for "/settings", likewise. */
export const settingsMessage = '/settings';
/** Stands for "/pictures", likewise; what was typed after it follows. */
export const picturesMessage = '/pictures';

const everywhere = ['private', 'group', 'admin'] as const;

/** The commands, in the order in which the menus show them. */
export const commands: readonly Command[] = [
  { name: 'power', says: 'Ask: /power fridge 1.2A, 100Ah, 3 days?', menus: everywhere, bare: 'help' },
  {
    name: 'rig',
    says: 'Show your rig, or set it: /rig 100Ah AGM',
    menus: everywhere,
    bare: 'show my rig',
    withRest: 'my rig is {rest}',
  },
  {
    name: 'working',
    says: 'Show how the last answer was worked out',
    menus: everywhere,
    bare: 'show the working',
    withRest: 'show the working',
  },
  { name: 'learn', says: 'A short course in camping power', menus: ['private'], bare: 'teach me' },
  {
    name: 'help',
    says: 'What I can do and how to ask',
    menus: everywhere,
    bare: 'help',
    withRest: 'help',
    isForOne: true,
  },
  {
    name: 'settings',
    says: 'See and change what I go by here',
    menus: ['private', 'admin'],
    bare: settingsMessage,
    withRest: settingsMessage,
    isForOne: true,
  },
  {
    name: 'pictures',
    says: 'Pictures: on, off, dark or light',
    menus: ['private', 'admin'],
    bare: picturesMessage,
    withRest: `${picturesMessage} {rest}`,
  },
  {
    name: 'privacy',
    says: 'What I keep, why and for how long',
    menus: everywhere,
    bare: 'privacy',
    withRest: 'privacy',
    isForOne: true,
  },
  {
    name: 'export',
    says: 'Get what I keep of you as a file',
    menus: everywhere,
    bare: exportMessage,
    withRest: exportMessage,
    isForOne: true,
  },
  {
    name: 'forget',
    says: 'Delete what I keep',
    menus: ['private', 'admin'],
    bare: 'forget everything',
    withRest: 'forget {rest}',
  },
  // What comes after it is a link's, never words of the person's.
  { name: 'start', says: 'Say hello', menus: [], bare: 'help' },
];

/** What a link opens: "?start=rig" shows the rig. Nothing that changes or deletes, since anybody can write a link. */
const links = new Set(['rig', 'learn', 'help', 'privacy']);

const byName = new Map(commands.map(command => [command.name, command]));

/** The plain message that a command stands for; undefined for one that is not ours. */
export function commandMessage(name: string, rest: string): string | undefined {
  const key = name.toLowerCase();
  if (key === 'start') return commandMessage(links.has(rest) ? rest : 'help', '');
  const command = byName.get(key);
  if (command === undefined) return undefined;
  const { bare, withRest } = command;
  if (rest === '') return bare;
  if (withRest === undefined) return rest;
  return withRest.includes('{rest}') ? withRest.replace('{rest}', () => rest) : bare;
}

/** A menu as the Bot API takes it. */
export const menuOf = (menu: Menu): BotCommand[] =>
  commands
    .filter(command => command.menus.includes(menu))
    .map(({ name, says, isForOne }) => ({
      command: name,
      description: says,
      // In private there is nobody else.
      ...(isForOne && menu !== 'private' && { is_ephemeral: true }),
    }));
