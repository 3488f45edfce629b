import { languages } from '#answer/speech.ts';
import { words } from './words.ts';

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
}

/** Stands for "/export", which is answered with a file and not by the conversation; nobody can type it otherwise. */
export const exportMessage = '/export';
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
  { name: 'help', says: 'What I can do and how to ask', menus: everywhere, bare: 'help', withRest: 'help' },
  {
    name: 'settings',
    says: 'What I go by in this chat',
    menus: ['private', 'admin'],
    bare: 'settings',
    withRest: 'settings',
  },
  {
    name: 'language',
    says: 'Answer in another language: /language de',
    menus: ['private', 'admin'],
    bare: 'settings',
    withRest: 'language {rest}',
  },
  {
    name: 'pictures',
    says: 'Pictures with the answers: on or off',
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
  },
  {
    name: 'export',
    says: 'Get what I keep of you as a file',
    menus: ['private'],
    bare: exportMessage,
    withRest: exportMessage,
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

/** Names in other languages, read when a name is none of ours. */
let foreign: Map<string, Command> | undefined;
function byForeignName(name: string): Command | undefined {
  foreign ??= new Map(
    languages().flatMap(language =>
      commands.flatMap(command => {
        const found = words(language).find(`name-${command.name}`);
        return found === undefined ? [] : [[found, command] as const];
      }),
    ),
  );
  return foreign.get(name);
}

/**
 * The plain message that a command stands for; undefined for one that is not ours.
 * @param language of the person's app, "de" or "de-AT": the message is in it where there are words for it
 */
export function commandMessage(name: string, rest: string, language?: string): string | undefined {
  const key = name.toLowerCase();
  if (key === 'start') return commandMessage(links.has(rest) ? rest : 'help', '', language);
  const command = byName.get(key) ?? byForeignName(key);
  if (command === undefined) return undefined;
  const { find } = words(language?.slice(0, 2));
  if (rest === '')
    return (
      find(`say-${command.name}`) ?? (command.bare === 'help' ? find('say-help') : undefined) ?? command.bare
    );
  const { withRest } = command;
  if (withRest === undefined) return rest;
  if (!withRest.includes('{rest}')) return commandMessage(name, '', language);
  return find(`say-${command.name}-is`, { rest }) ?? withRest.replace('{rest}', () => rest);
}

/** A menu as the Bot API takes it, in a language. */
export const menuOf = (menu: Menu, language = 'en'): { command: string; description: string }[] => {
  const { find } = words(language);
  return commands
    .filter(command => command.menus.includes(menu))
    .map(({ name, says }) => ({
      command: find(`name-${name}`) ?? name,
      description: find(`about-${name}`) ?? says,
    }));
};
