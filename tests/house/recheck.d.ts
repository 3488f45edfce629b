/** The build of recheck without workers or binaries: a little slower, the same everywhere. */
declare module 'recheck/lib/browser.js' {
  import type { checkSync } from 'recheck';

  const recheck: { checkSync: typeof checkSync };
  export default recheck;
}
