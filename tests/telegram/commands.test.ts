import { expect, test } from 'vitest';
import { present } from '#basics/present.ts';
import { converse } from '#conversation/converse.ts';
import { emptyMemory } from '#conversation/memory.ts';
import { commandMessage, menuOf } from '#telegram/ui/commands.ts';
import { toasts } from '#telegram/updates/pressing/toasts.ts';

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
  ['working', '', 'unclear'],
  ['help', '', 'help'],
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

test.each([
  ['power', 'fridge 1.2A', 'fridge 1.2A'],
  ['rig', '100Ah AGM', 'my rig is 100Ah AGM'],
  ['RIG', '', 'show my rig'],
  ['help', 'me', 'help'],
  ['rig', 'a $& b', 'my rig is a $& b'],
  ['nobody', '', undefined],
  ['language', 'de', undefined],
])('/%s %s says “%s”', (name, rest, says) => expect(commandMessage(name, rest)).toBe(says));

test('the command for the working shows it', () => {
  const of = (text: string) => ({ chat: 'g', from: 'Sam', text, at: new Date(0), kind: 'private' }) as const;
  const { memory } = converse(
    emptyMemory(),
    of('how long does a 100Ah AGM last with a fridge that takes 1.5A?'),
  );
  expect(converse(memory, of(present(commandMessage('working', '')))).answer.text).toContain(
    '(capacity on the label) × 0.5 (depth of discharge)',
  );
});

test('every name in a menu is a command, once', () => {
  for (const menu of ['private', 'group', 'admin'] as const) {
    const names = menuOf(menu).map(({ command }) => command);
    expect(new Set(names).size).toBe(names.length);
    expect(names.map(name => commandMessage(name, ''))).not.toContain(undefined);
  }
});

test('toasts fit over the chat', () => {
  for (const toast of Object.values(toasts)) expect(toast.length).toBeLessThanOrEqual(200);
});
