/** Ways to say that a battery is full. */
export const fullPhrases: readonly string[] = [
  'full', 'fully charged', 'full charge', 'fully topped up', 'topped up', 'topped off', 'brimmed', 'brim full', 'chockers', 'chock full', 'to the brim', 'fully full', 'right up', 'completely full', 'totally full', 'fully', 'brimming', 'fully juiced', 'charged up',
];

/** Ways to say that a battery is empty. */
export const emptyPhrases: readonly string[] = ['empty', 'from empty', 'from nothing', 'dead flat', 'stone dead', 'completely flat', 'fully flat', 'drained', 'fully discharged', 'nothing left', 'down to nothing', 'right down to nothing', 'down to zero', 'totally flat', 'run down'];

/** Ways to say that half of a battery is used. */
export const halfPhrases: readonly string[] = ['halfway', 'halfway down', 'halfway flat'];

/** Ways to ask for a full battery. */
export const fillPhrases: readonly string[] = ['fill', 'refill', 'fill up', 'fill it', 'fill it up', 'filling', 'filled', 'refilled', 'top up', 'top it up', 'fills', 'replenish', 'brim', 'fill her up', 'fully recharge', 'recharge fully', 'charge it fully', 'charge fully', 'all the way', 'all the way up', 'to the top'];

/** Ways to say that something never stops. */
export const alwaysPhrases: readonly string[] = [
  'all day', 'the whole day', 'whole day', 'the entire day', '24 x 7', '24x7', 'perpetually', 'always', 'without pause', 'all hours', 'non stop all day', 'day long', 'all 24', 'all twenty four', 'every hour of the day', 'nonstop day and night', 'morning noon and night',
  '24 / 7', 'round the clock', 'around the clock', 'day and night', 'all day and night', 'all day and all night', 'all day all night', 'night and day', 'always on', 'nonstop', 'non stop', 'all the time', 'the whole time', 'never stops', 'never off', 'all day long', 'permanently', 'permanently on', 'continuously', 'constantly', 'on all the time', 'the clock round', 'day n night', 'runs all the time', 'stays on', 'twenty four seven', 'without stop', 'without stopping', 'without a break', 'all time', 'always running', 'on constantly',
];

/** Weather and shade in words that the first lists lack. */
export const morePhrases = {
  sky: {
    sunny: ['in the sun', 'sun is out', 'suns out', 'full sun', 'blazing', 'blazing sun', 'blazing away', 'bright sun', 'strong sun', 'scorching', 'sunshine', 'bluebird', 'clear as a bell', 'cracking sun', 'not a cloud', 'no clouds', 'sun', 'clear', 'bright', 'fine weather', 'good sun', 'sun all day', 'all sun'],
    overcast: ['grey skies', 'grey sky', 'socked in', 'drizzly', 'miserable', 'murky', 'leaden', 'gloom', 'mist', 'misty', 'thick fog', 'solid cloud', 'cloud all day', 'clouded', 'grey day', 'dreich', 'mizzle', 'showery', 'pissing down', 'tipping down', 'chucking it down'],
    mixed: ['half cloudy', 'half sunny', 'sun and cloud', 'on and off', 'patchy sun', 'half half', 'half and half', 'mixed sky', 'mixed skies', 'so so', 'changeable', 'bit of everything', 'part sun', 'bits of sun', 'sunny intervals', 'sunny periods', 'bit of both', 'half n half', 'half and half', 'mixed bag', 'part cloud', 'partly cloud', 'partly clouds', 'sun n cloud', 'half sun half cloud', 'bit of sun bit of cloud'],
  },
  flat: ['flat', 'laying flat', 'lying flat', 'laid flat', 'dead flat', 'flat mount', 'horizontal', 'horizontally', 'flat down', 'mounted flat'],
  tilted: ['tilted', 'tilt', 'propped', 'propped up', 'angled', 'on a frame', 'leaned', 'tipped up', 'facing south', 'facing north', 'aimed', 'at an angle'],
  house: ['house', 'leisure', 'service', 'domestic', 'living area', 'cabin', 'second', 'hab', 'habitation'],
} as const;
