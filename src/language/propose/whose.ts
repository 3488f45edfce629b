/** Owners that are no mention: nothing owns it, it makes an entity of its own, it holds for all of them. */
export const nobody = -1;
export const self = -2;
export const all = -3;
/** The writer, as the owner of a claim, where no word for them stands near. */
export const writer = -4;
