import { allRules, type Rule } from '#rule/rule.ts';
import { files, root } from '../house/source.ts';

const isRule = (value: unknown): value is Rule<string> => (allRules as unknown[]).includes(value);

/** Every rule of the engine, with the file that declares it. */
export const rules = await (async () => {
  const found = [];
  for (const path of files('src/engine/**/*rules.ts')) {
    const exported = Object.values((await import(`${root}${path}`)) as Record<string, unknown>);
    found.push(...exported.filter(isRule).map(rule => ({ path, rule })));
  }
  return found;
})();
