import type { Rig } from '#rig/rig.ts';

/** Gear of somebody's that a message speaks of: a thing of a name, a sort of gear, or all there is. */
export interface Possession {
  readonly who: string;
  readonly isOwn: boolean;
  readonly key?: keyof Rig;
  readonly name?: string;
  /** The writer has such a one too. */
  readonly isSame?: true;
  /** It was only spoken of as "the kettle", and whose that is is no matter. */
  readonly isSpoken?: true;
  /** Words before and after it, at these places. */
  readonly from: number;
  readonly to: number;
}
