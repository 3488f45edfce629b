import type { Meaning } from '#language/hazards/features.ts';

type Concepts = ReadonlySet<string>;
const set = (concepts: string): Concepts => new Set(concepts.split(' '));

/** What is felt or seen of a bad contact that carries current. */
const heat = set('hot warm melt unbearable');
/** What current goes through, and what stores, makes or charges it. */
const conductor = set('plug ciggy socket insulation wire-word cord small-plug lug join tape post');
const source = set('battery lithium lead-acid wet-lead inverter cell-word battery-box case bms alternator');
const posts = set('post');
const batteryAlone = set('battery');
const joints = set('lug tape post');
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

/** A terminal is no fuse holder, though it may be part of one. */
const isTerminal = (meaning: Meaning, { concept, sentence, at }: Meaning[number]): boolean =>
  concept === 'holder' && placesOf(meaning, posts, sentence).includes(at);

/** "The battery and its terminals": where a terminal is hot and no "battery terminal", the battery may be too. */
function isOfBatteryToo(meaning: Meaning, sentence: number): boolean {
  const terminals = placesOf(meaning, posts, sentence);
  const batteries = placesOf(meaning, batteryAlone, sentence);
  const isNamed = (place: number): boolean =>
    terminals.some(post => place === post - 1 || (place > post && place - post <= behind));
  return terminals.length > 0 && (batteries.length > 1 || !batteries.every(isNamed));
}

/** So many words behind a lug or terminal it is still that which is told to be warm. */
const near = 6;
/** The post of a campsite is no terminal, and near a flame or a heater other things are warm. */
const otherwise = set('mains heater fuel-heater flued-heater cooker planned');

/** Whether a lug, terminal or taped join of the battery's or a wire's is told to get warm or hot. */
export function isHotJoint(meaning: Meaning): boolean {
  if (meaning.some(({ concept }) => otherwise.has(concept))) return false;
  const carries = meaning.some(({ concept }) => source.has(concept) || concept === 'wire-word');
  return (
    carries &&
    meaning.some(
      ({ concept, sentence, at }) =>
        (concept === 'hot' || concept === 'warm') &&
        placesOf(meaning, joints, sentence).some(own => own < at && at - own <= near),
    )
  );
}

/** Whether it is a plug, socket, joint or lead that gets hot in use, and no battery, inverter or charger, with nothing that burns. */
export function isHotPlug(meaning: Meaning): boolean {
  if (meaning.some(one => burning.has(one.concept) && !isTerminal(meaning, one))) return false;
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
      if (isOfBatteryToo(meaning, sentence)) return false;
      return own < Infinity && own <= nearest(sources, at);
    })
  );
}
