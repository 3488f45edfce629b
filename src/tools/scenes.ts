import { present } from '#basics/present.ts';
import { scenes } from './scenes/script.ts';
import { Group, type Seen } from './scenes/telegram.ts';

/** The page of scenes, and the pictures in it by their path. */
export interface Transcript {
  readonly text: string;
  readonly pictures: Readonly<Record<string, Buffer>>;
}

const intro = `# Scenes from a group

What people in a group see, word for word: the real bot plays them each time this page is written. All people are
invented. Buttons stand as \`labels\` under an answer.
`;

const nameless = (text: string): string => text.replace(/[\\`*_[\]<>#]/g, sign => `\\${sign}`);
const quoted = (text: string): string =>
  text
    .split('\n')
    .map(line => (line === '' ? '>' : `> ${nameless(line)}  `))
    .join('\n');

let played: Promise<Transcript> | undefined;

/** All scenes, played and written down; once, however many ask. */
export function transcript(): Promise<Transcript> {
  played ??= play();
  return played;
}

async function play(): Promise<Transcript> {
  const pictures: Record<string, Buffer> = {};
  const parts = [intro];
  for (const [i, scene] of scenes.entries()) {
    const group = new Group();
    await scene.play(group);
    parts.push(`## ${i + 1}. ${scene.title}\n\n${scene.shows}\n`);
    for (const seen of group.seen) {
      if (seen.kind !== 'answer') {
        parts.push(lineOf(seen));
        continue;
      }
      const { picture, text } = seen;
      let image = '';
      if (picture !== undefined) {
        const file = `scenes/${i + 1}-${Object.keys(pictures).filter(name => name.includes(`/${i + 1}-`)).length + 1}.png`;
        pictures[`docs/${file}`] = picture;
        image = `> ![${nameless(present(text.split('\n')[0]))}](${file})\n>\n`;
      }
      const how = seen.isEdit
        ? ' (in the same place)'
        : seen.onlyFor
          ? ` (seen by ${seen.onlyFor} alone)`
          : '';
      const buttons = seen.buttons.map(label => `\`${label}\``).join(' ');
      parts.push(`**Billywatt**${how}:\n\n${image}${quoted(text)}${buttons ? `\n>\n> ${buttons}` : ''}\n`);
    }
  }
  return { text: `${parts.join('\n').trimEnd()}\n`, pictures };
}

const lineOf = (seen: Exclude<Seen, { kind: 'answer' }>): string =>
  seen.kind === 'did'
    ? `*${nameless(seen.text)}*\n`
    : `**${seen.who}**${seen.to ? ` (in reply to ${seen.to})` : ''}: ${nameless(seen.text)}\n`;
