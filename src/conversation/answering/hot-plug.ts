import type { Meaning } from '#language/hazards/features.ts';

type Concepts = ReadonlySet<string>;
const set = (concepts: string): Concepts => new Set(concepts.split(' '));

/** What is felt or seen of a bad contact that carries current. */
const heat = set('hot warm melt unbearable');
/** What current goes through, and what stores, makes or charges it. */
const conductor = set('plug ciggy socket insulation wire-word cord small-plug lug');
const source = set('battery lithium lead-acid wet-lead inverter cell-word battery-box case bms alternator');
/** With any of these it burns already, or is about to: nothing is taken back. */
const burning = set(
  'smoke flames burnt-smell smell swollen fat hiss exploded damaged cut-open broken-cell bypass short-circuit reuse fuse holder foil',
);

/** "The lead to the inverter": what a conductor goes to stands so many words behind it. */
const behind = 3;

/** Where some meanings stand in a sentence. */
const placesOf = (meaning: Meaning, of: Concepts, sentence: number): readonly number[] =>
  meaning.flatMap(one => (of.has(one.concept) && one.sentence === sentence && one.at >= 0 ? [one.at] : []));

const nearest = (places: readonly number[], at: number): number =>
  Math.min(...places.map(place => Math.abs(place - at)), Infinity);

/** Whether it is a plug, socket or lead that gets hot in use, and no battery, inverter or charger, with nothing that burns. */
export function isHotPlug(meaning: Meaning): boolean {
  if (meaning.some(({ concept }) => burning.has(concept))) return false;
  const hot = meaning.filter(({ concept, at }) => heat.has(concept) && at >= 0);
  // A word may be both ("lead"): what it is of counts first as the lead.
  return (
    hot.length > 0 &&
    hot.every(({ at, sentence }) => {
      const conductors = placesOf(meaning, conductor, sentence);
      const sources = placesOf(meaning, source, sentence).filter(
        place => !conductors.some(own => own < place && place - own <= behind),
      );
      const own = nearest(conductors, at);
      return own < Infinity && own <= nearest(sources, at);
    })
  );
}
