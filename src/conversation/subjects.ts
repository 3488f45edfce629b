import type { IntentName } from '#answer/answer.ts';
import { examples } from '#intents/examples.ts';

/** What people ask about, as help lists it: a title short enough for a button on a phone, and the questions of it. */
export const subjects: readonly { readonly title: string; readonly intents: readonly IntentName[] }[] = [
  { title: 'How long it lasts', intents: ['run-time', 'charge-level', 'starter-reserve'] },
  { title: 'The battery', intents: ['battery-size', 'battery-type', 'battery-bank'] },
  { title: 'The solar panels', intents: ['solar-size', 'solar-yield', 'solar-wiring'] },
  { title: 'The charging', intents: ['charge-time', 'charge-path', 'generator'] },
  { title: 'The inverter', intents: ['inverter-check', 'energy-budget'] },
  { title: 'The cable and the fuse', intents: ['cable-size', 'fuse-size'] },
  { title: 'A whole trip', intents: ['trip', 'list'] },
  { title: 'A fault', intents: ['fault', 'rig-check'] },
  { title: 'The better of two', intents: ['compare', 'settle'] },
  { title: 'The words and the units', intents: ['term', 'convert', 'learn'] },
];

/** Examples of a subject, two a question at most; each is a message that the bot itself understands. */
export const examplesOf = ({ intents }: (typeof subjects)[number], most = 2): string[] =>
  intents.flatMap(name =>
    examples()
      .filter(({ intent }) => intent === name)
      .slice(0, most)
      .map(({ say }) => say),
  );
