import { isSpotted } from '#intents/spotting.ts';
import { meaningOf } from '#language/hazards/features.ts';
import type { Stated } from '#rig/rig.ts';
import type { Heard } from '../hear.ts';

/** How something is told that is only thought of, and nothing that is so now. */
const planned: readonly string[] = [
  'gonna|gunna|going_to|planning|plan|plans|thinking|want_to|wanna|might|should_i|should_we|can_i|can_we|could_i|could_we|may_i|may_we|ok_to|okay_to|safe_to|is_it_ok|is_it_safe|is_it_bad|is_it_alright|alright_to|would_it|what_if|tomorrow|next_trip|well_just|well_take|we_bring|we_will|put_the|bring_the|how_about|what_about -now -already -right_now -currently -since -been -was -were -had -slept -woke -wake -still -brought -carried -has -headache -headaches -dizzy -sick -asleep_already',
];

const hasLoad = ({ loads, inverter, chargers, solar, cable }: Stated): boolean =>
  !!loads?.length ||
  !!chargers?.length ||
  !!solar?.length ||
  (inverter?.powerW ?? cable?.currentA) !== undefined;

/** The size of a cable, or its length, by which the answer names its size. */
const hasCable = ({ cable }: Stated): boolean =>
  (cable?.areaMm2 ?? cable?.awg ?? cable?.autoCableMm ?? cable?.lengthM) !== undefined;

/** What a message shows, as words of its dangers go by it: the concepts of its words, whether it is only planned, and what is told. */
export function shownIn(text: string, { recognised }: Heard, facts: Stated): ReadonlySet<string> {
  return new Set([
    ...meaningOf(text).map(({ concept }) => concept),
    ...(isSpotted(recognised.words, planned) ? ['planned'] : []),
    ...(hasLoad(facts) ? ['told-load'] : []),
    ...(hasCable(facts) ? ['told-cable'] : []),
  ]);
}
