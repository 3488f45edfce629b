import { describe, expect, test } from 'vitest';
import { languages } from '#answer/speech.ts';
import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { commandMessage, commands, menuOf } from '#telegram/commands.ts';
import { toasts } from '#telegram/press.ts';
import { labelsIn, words } from '#telegram/words.ts';

/** What each command stands for is a message that the bot itself understands. */
test.each([
  ['power', 'fridge 1.2A, 100Ah, 3 days?', 'run-time'],
  ['power', '', 'help'],
  ['start', 'rig_abc', 'help'],
  ['start', 'rig', 'rig'],
  ['start', 'learn', 'learn'],
  ['start', 'privacy', 'privacy'],
  ['start', 'forget', 'help'],
  ['start', 'constructor', 'help'],
  ['language', 'de', 'help'],
  ['working', '', 'unclear'],
  ['help', '', 'help'],
  ['settings', '', 'help'],
  ['privacy', '', 'privacy'],
  ['forget', '', 'forget'],
  ['rig', '', 'rig'],
  ['rig', '120Ah AGM and a 200W panel', 'rig'],
  ['learn', '', 'learn'],
])('/%s %s → %s', (name, rest, intent) => {
  const text = commandMessage(name, rest) ?? '';
  const message = { chat: 'g', from: 'Sam', text, at: new Date(0), kind: 'group' } as const;
  expect(converse(emptyMemory(), message).answer.intent).toBe(intent);
});

describe('in other languages', () => {
  test.each([
    ['strom', 'kühlbox 1,2A, 100Ah', 'de', 'kühlbox 1,2A, 100Ah'],
    ['strom', '', 'de', 'hilfe'],
    ['anlage', '100Ah AGM', 'de-AT', 'meine anlage ist 100Ah AGM'],
    ['rig', '100Ah AGM', 'de', 'meine anlage ist 100Ah AGM'],
    ['rig', '100Ah AGM', undefined, 'my rig is 100Ah AGM'],
    ['anlage', '', undefined, 'show my rig'],
    ['calcul', '', 'fr', 'montre le calcul'],
    ['help', 'me', 'es', 'ayuda'],
    ['privacy', '', 'de', 'privacy'],
    ['help', '', 'xx', 'help'],
    ['hilfsbot', '', 'de', undefined],
  ])('/%s %s of a %s app says “%s”', (name, rest, language, says) => {
    expect(commandMessage(name, rest, language)).toBe(says);
  });

  test.each([
    ['help', '', 'de', 'help', /rechne/],
    ['anlage', '100Ah AGM', 'de', 'rig', /Deine Anlage/],
    ['installation', '100Ah AGM', 'fr', 'rig', /Ton installation/i],
    ['equipo', '100Ah AGM', 'es', 'rig', /equipo/i],
    ['language', 'de', undefined, 'help', /Deutsch/],
  ])(
    '/%s %s of a %s app is understood, and answered in its language',
    (name, rest, language, intent, says) => {
      const text = commandMessage(name, rest, language) ?? '';
      const message = { chat: 'g', from: 'Sam', text, at: new Date(0), kind: 'private' } as const;
      const { answer } = converse(emptyMemory(), message);
      expect(answer.intent).toBe(intent);
      expect(answer.text).toMatch(says);
    },
  );

  test.each([
    ['de', 'wie lange hält eine 100Ah AGM mit einer Kühlbox, die 1,5A zieht?', 'zeig den rechenweg'],
    ['fr', 'combien de temps tient une batterie AGM 100Ah avec un frigo de 1,5A ?', 'montre le calcul'],
    ['es', '¿cuánto dura una batería AGM de 100Ah con una nevera de 1,5A?', 'muestra el cálculo'],
  ])('%s: the command for the working shows it', (language, question, says) => {
    const of = (text: string) =>
      ({ chat: 'g', from: 'Sam', text, at: new Date(0), kind: 'private' }) as const;
    const { memory, answer } = converse(emptyMemory(), of(question));
    expect(answer.intent).toBe('run-time');
    const wish = commandMessage('working', '', language)!;
    expect(wish).toBe(says);
    const shown = converse(memory, of(wish)).answer.text;
    expect(shown).toContain('Q_usable = ');
  });

  test('no name stands for two commands, nor for one of English', () => {
    const all = languages().flatMap(language => {
      const menu = new Set(
        ['private', 'group', 'admin'].flatMap(of => menuOf(of as 'private', language).map(c => c.command)),
      );
      return [...menu];
    });
    const means = new Map(all.map(name => [name, commandMessage(name, '')]));
    expect([...means.values()]).not.toContain(undefined);
    expect(commandMessage('strom', '')).toBe(commandMessage('power', ''));
  });

  test.each(languages().filter(language => language !== 'en'))(
    '%s has all words that English has',
    language => {
      const { find } = words(language);
      for (const command of commands.filter(one => one.menus.length > 0))
        expect(find(`about-${command.name}`), command.name).toBeDefined();
      for (const key of Object.keys(toasts)) {
        expect(find(`toast-${key}`), key).toBeDefined();
        expect(find(`toast-${key}`)!.length).toBeLessThanOrEqual(200);
      }
      const [own, english] = [labelsIn(language), labelsIn('en')];
      for (const key of ['working', 'place', 'share', 'shareHow', 'steps'] as const)
        expect(own[key]).not.toBe(english[key]);
      expect(find('about-bot')!.length).toBeLessThanOrEqual(120);
    },
  );
});
