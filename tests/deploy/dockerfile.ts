import { readFileSync } from 'node:fs';
import { DockerfileParser, type ModifiableInstruction } from 'dockerfile-ast';
import { root } from './script.ts';

/** One line of the Dockerfile. */
export interface Step {
  /** In capitals: FROM, COPY, RUN… */
  readonly keyword: string;
  /** All after the keyword and its flags, as it stands. */
  readonly text: string;
  readonly words: readonly string[];
  readonly flags: Readonly<Record<string, string>>;
  /** The words of the form `["a", "b"]`, where it is used. */
  readonly exec: readonly string[];
}

/** The steps of a stage, and what its ENV lines have set by its end. */
export interface Stage {
  readonly steps: readonly Step[];
  readonly env: Readonly<Record<string, string>>;
  /** All of a keyword, in order. */
  of(keyword: string): Step[];
  /** The last of a keyword, which is the one that counts. */
  last(keyword: string): Step;
}

const stageOf = (steps: readonly Step[]): Stage => {
  const of = (keyword: string) => steps.filter(step => step.keyword === keyword);
  const last = (keyword: string): Step => {
    const found = of(keyword).at(-1);
    if (found === undefined) throw new Error(`the Dockerfile's stage has no ${keyword}`);
    return found;
  };
  const env = Object.fromEntries(of('ENV').flatMap(step => step.words.map(word => word.split(/=(.*)/s, 2))));
  return { steps, of, last, env };
};

/** The stages of deploy/Dockerfile, first to last. */
export function readDockerfile(): Stage[] {
  const stages: Step[][] = [];
  for (const one of DockerfileParser.parse(
    readFileSync(`${root}deploy/Dockerfile`, 'utf8'),
  ).getInstructions()) {
    const keyword = one.getKeyword();
    const flags = (one as ModifiableInstruction).getFlags?.() ?? [];
    const text = one.getArgumentsContent() ?? '';
    const array = /^(?:CMD\s+)?(\[.*\])$/s.exec(text)?.[1];
    const step: Step = {
      keyword,
      text,
      words: one.getArguments().map(argument => argument.getValue()),
      flags: Object.fromEntries(flags.map(flag => [flag.getName(), flag.getValue() ?? ''])),
      exec: array === undefined ? [] : JSON.parse(array),
    };
    if (keyword === 'FROM') stages.push([]);
    stages.at(-1)?.push(step);
  }
  return stages.map(stageOf);
}
