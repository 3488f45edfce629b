/** The single-file build of mathjs, which has no types of its own; only what `parse.ts` uses. */
declare module 'mathjs/lib/browser/math.js' {
  import type { MathJsInstance } from 'mathjs';

  const mathjs: MathJsInstance;
  export default mathjs;
}
