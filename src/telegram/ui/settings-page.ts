import type { Memory } from '#conversation/memory.ts';
import type { Content } from '#telegram/delivery/again/place.ts';
import { buttonsOf } from './buttons.ts';
import { say } from './say.ts';
import { labels } from './words.ts';

type Settings = Memory['settings'];

/** Mains voltages of the world's countries, V; the nominal ones of IEC 60038 and those still met beside them. */
const mainsVolts = [100, 120, 230, 240] as const;

/** What the buttons of the page change, in the order of their index. */
export const changes: readonly ((settings: Settings) => Settings)[] = [
  settings => ({ ...settings, pictures: settings.pictures === false }),
  ...mainsVolts.map(mainsV => (settings: Settings) => ({ ...settings, mainsV })),
  settings => ({ ...settings, isDark: settings.isDark !== true }),
];

/** What the bot goes by in a chat, with a button for each change. @param mainsV what goes where the chat told none */
export function settingsPage(
  settings: Settings,
  kind: 'private' | 'group',
  asker: number,
  mainsV: number,
): Pick<Content, 'said' | 'buttons'> {
  const volts = settings.mainsV ?? mainsV;
  const arePictures = settings.pictures !== false;
  const isDark = settings.isDark === true;
  const said = say(
    [
      'What I go by in this chat:',
      `• Pictures with a trip: ${arePictures ? 'on' : 'off'}`,
      `• Pictures on ${isDark ? 'dark' : 'light'} ground`,
      `• Mains: ${volts} V`,
      ...(kind === 'group' ? ['In a group an admin changes them.'] : []),
      'A rig is told by /rig, and deleted by /forget.',
    ].join('\n'),
  );
  const button = buttonsOf(said.text, asker);
  const mains = mainsVolts.flatMap((v, index) => (v === volts ? [] : [button('set', `${v} V`, index + 1)]));
  return {
    said,
    buttons: {
      inline_keyboard: [
        [
          button('set', arePictures ? 'Turn the pictures off' : 'Turn the pictures on', 0),
          button('set', isDark ? 'Light pictures' : 'Dark pictures', changes.length - 1),
        ],
        mains,
        // Asked back before anything goes.
        ...(kind === 'private' ? [[button('next', labels.forget)]] : []),
      ],
    },
  };
}
