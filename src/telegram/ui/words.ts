/** What stands on the buttons that ask nothing, and in what they lead to. */
export const labels = {
  working: 'Show working',
  /** The same as answers offer it, in words. */
  workingWish: 'show the working',
  picture: 'Picture',
  /** In its place where a chat wants no pictures. */
  table: 'Table',
  place: 'Use my location',
  steps: 'The working:',
  share: 'Share my location',
  shareHow:
    'Tap “Share my location” below, or write the place: “in Dubbo”.\nI keep it to about 10 km, for the sun and nothing else.',
  /** Sends the question to another chat, where it is answered in place. */
  pass: 'Share this answer',
  copyRig: 'Copy the rig',
  subjects: 'All the subjects',
  showHelp: 'Show the help',
  showPrivacy: 'Show the notice',
  forget: 'Forget everything',
} as const;
