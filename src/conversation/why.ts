import type { Option } from '#language/decide/decide.ts';
import { slots } from '#language/propose/slots.ts';
import type { ParsedMessage } from '#language/reading.ts';
import type { Mention } from '#language/recognise/mention.ts';

const shown = 5;
const percent = (share: number): string => `${(100 * share).toFixed(share < 0.1 ? 1 : 0)} %`;

/** What one mention was taken for, and whose it is. */
function roleOf(option: Option, mentions: readonly Mention[], at: number): string {
  const { state } = option;
  const slot = state.slots[at] ?? -1;
  const name = slot < 0 ? undefined : slots[slot]?.name;
  if (name === undefined || name === 'none') return 'nothing of the question';
  const owner = mentions[state.owners[at] ?? -1];
  return `${name}${owner && owner !== mentions[at] ? ` of “${owner.text}”` : ''}`;
}

const isPlain = ({ kind }: Mention, role: string): boolean =>
  (kind === 'word' || kind === 'sign') && role.startsWith('nothing');

/** How a message was read, in lines: what it mentions and what each was decided as, the readings by probability, what was left. */
export function why({ recognised, options, unread, intent, probability }: ParsedMessage): string {
  const { mentions, tokens } = recognised;
  const [best] = options;
  const lines = [`Taken for ${intent}, ${percent(probability)} sure.`];
  if (!best) return `${lines[0]} It is a command of the bot's own.`;
  lines.push('', 'What it mentions:');
  mentions.forEach((mention, i) => {
    const role = roleOf(best, mentions, i);
    if (isPlain(mention, role)) return;
    const span = `${tokens[mention.from]?.start ?? 0}–${tokens[mention.to - 1]?.end ?? 0}`;
    lines.push(`  “${mention.text}” (${mention.cls}, ${span}): ${role}`);
  });
  lines.push('', 'Readings:');
  for (const option of options.slice(0, shown))
    lines.push(`  ${percent(option.probability)} ${option.intent} ${JSON.stringify(option.stated)}`);
  if (options.length > shown) lines.push(`  and ${options.length - shown} more`);
  if (unread.length > 0)
    lines.push('', 'In no fact:', ...unread.map(({ text, why: reason }) => `  “${text}”: ${reason}`));
  return lines.join('\n');
}
