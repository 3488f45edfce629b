import { allRules } from '#rule/rule.ts';
import { files, root } from '../house/source.ts';

/** Every rule of the engine, with the file that declares it. */
export const rules = await (async () => {
  const found = [];
  for (const path of files('src/engine/**/*rules.ts')) {
    const before = allRules.length;
    await import(`${root}${path}`);
    found.push(...allRules.slice(before).map(rule => ({ path, rule })));
  }
  return found;
})();
