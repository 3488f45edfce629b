import { createInterface } from 'node:readline/promises';
import type { Answer } from '#answer/answer.ts';
import type { Chart } from '#answer/chart/chart.ts';
import type { Theme } from '#answer/chart/theme.ts';
import { readHistory, writeHistory } from './history.ts';
import { type Look, layout } from './layout.ts';
import { answerIn, type Deps } from './lines.ts';
import { isPictureWish, savePicture, themeOf } from './picture.ts';

export interface Terminal {
  readonly input: NodeJS.ReadableStream & { isTTY?: boolean };
  readonly output: NodeJS.WritableStream & { isTTY?: boolean; columns?: number };
  /** Where typed lines are kept; nowhere, where not given. */
  readonly historyFile?: string;
  /** Where pictures go. */
  readonly pictureFolder?: string;
}

/** The one chat of the terminal. */
const chatId = 'console';
const from = 'me';

const greeting = `Camping power, answered. Try: fridge 1.2A, 100Ah, 3 days?
A number asks the question beside it, /help says more, “picture” saves a picture, /quit ends.
`;

/** What a typed line asks: a number stands for the question it numbers, "/help" for "help". */
export function meaning(line: string, next: readonly string[]): string {
  const text = line.trim();
  const numbered = /^[1-9]$/.test(text) ? next[Number(text) - 1] : undefined;
  return numbered ?? text.replace(/^\/(?=[a-z])/i, '');
}

/** Talks with whoever sits at the terminal until "/quit" or the end of the input. Works without a terminal too. */
export async function chat(deps: Deps, terminal: Terminal): Promise<void> {
  const { input, output, historyFile, pictureFolder: folder = 'data/pictures' } = terminal;
  const isTerminal = input.isTTY === true && output.isTTY === true;
  const look = (): Look => ({
    // A terminal that doesn't tell its width tells 0.
    columns: Math.max(output.columns || 80, 20),
    isColoured: isTerminal && process.env.NO_COLOR === undefined,
  });
  const lines = createInterface({
    input,
    output: isTerminal ? output : undefined,
    terminal: isTerminal,
    prompt: '> ',
    historySize: 500,
    history: isTerminal && historyFile !== undefined ? readHistory(historyFile) : [],
    removeHistoryDuplicates: true,
  });
  if (isTerminal && historyFile !== undefined)
    lines.on('history', history => writeHistory(historyFile, history));
  let isOpen = true;
  lines.on('close', () => {
    isOpen = false;
  });
  lines.on('SIGINT', () => lines.close());
  // Without a terminal the input may have ended while its lines are still being answered.
  const prompt = (): void => {
    if (isTerminal && isOpen) lines.prompt();
  };

  let next: readonly string[] = [];
  let chart: (() => Chart) | undefined;
  if (isTerminal) output.write(`${greeting}\n`);
  prompt();
  for await (const line of lines) {
    if (/^\/(quit|exit|q)$/i.test(line.trim())) break;
    if (line.trim() !== '') {
      const text = meaning(line, next);
      if (chart !== undefined && isPictureWish(text)) {
        output.write(layout({ text: await draw(chart, folder, deps, themeOf(text)), next }, look()));
      } else {
        const answer = await answerLine(deps, text);
        chart = answer.chart;
        // The picture stands among the next questions, with a number of its own.
        next = chart === undefined ? answer.next : [...answer.next, 'picture'];
        output.write(layout({ text: answer.text, next }, look()));
      }
    }
    prompt();
  }
  lines.close();
  if (isTerminal) output.write('\n');
}

/** Saves the picture and says where it is. */
async function draw(chart: () => Chart, folder: string, deps: Deps, theme: Theme): Promise<string> {
  try {
    return `Saved as ${await savePicture(chart(), folder, deps.now(), theme)}`;
  } catch (error) {
    const why = (error as NodeJS.ErrnoException).code ?? error;
    return `The picture could not be saved in ${folder} (${why}).`;
  }
}

/** One turn. What goes wrong is said in the chat, and the talk goes on. */
async function answerLine(deps: Deps, text: string): Promise<Pick<Answer, 'text' | 'next' | 'chart'>> {
  try {
    return await answerIn(deps, { chat: chatId, from, text, at: deps.now(), kind: 'private' });
  } catch (error) {
    return { text: `Something went wrong: ${error instanceof Error ? error.message : error}`, next: [] };
  }
}
