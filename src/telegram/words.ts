import { wordsBeside } from '#answer/speech.ts';

/** What the bot says besides its answers, in other languages: the files of `words/`. */
export const words = wordsBeside(import.meta.url);

/** What stands on the buttons that ask nothing, and in what they lead to. */
export interface Labels {
  readonly working: string;
  /** The same as answers offer it, in words. */
  readonly workingWish: string;
  readonly picture: string;
  readonly place: string;
  readonly steps: string;
  readonly share: string;
  readonly shareHow: string;
}

/** The labels in a language; English where it has none. */
export function labelsIn(language: string): Labels {
  const { say } = words(language);
  return {
    working: say('button-working', 'Show working'),
    workingWish: say('next-working', 'show the working'),
    picture: say('button-picture', 'Picture'),
    place: say('button-place', 'Use my location'),
    steps: say('the-working', 'The working:'),
    share: say('share-place', 'Share my location'),
    shareHow: say(
      'share-how',
      'Tap “Share my location” below, or write the place: “in Dubbo”.\nI keep it to about 10 km, for the sun and nothing else.',
    ),
  };
}
