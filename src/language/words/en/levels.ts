/** Ways to say that a battery is full. */
export const fullPhrases: readonly string[] = [
  'full', 'fully charged', 'full charge', 'fully topped up', 'topped up', 'topped off', 'brimmed', 'brim full', 'chockers', 'chock full', 'to the brim', 'fully full', 'right up', 'completely full', 'totally full', 'fully', 'brimming', 'fully juiced', 'charged up',
];

/** Weather and shade in words that the first lists lack. */
export const morePhrases = {
  sky: {
    sunny: ['in the sun', 'sun is out', 'suns out', 'full sun', 'blazing', 'blazing sun', 'blazing away', 'bright sun', 'strong sun', 'scorching', 'sunshine', 'bluebird', 'clear as a bell', 'cracking sun', 'not a cloud', 'no clouds', 'sun', 'clear', 'bright', 'fine weather', 'good sun', 'sun all day', 'all sun'],
    overcast: ['grey skies', 'grey sky', 'socked in', 'drizzly', 'miserable', 'murky', 'leaden', 'gloom', 'mist', 'misty', 'thick fog', 'solid cloud', 'cloud all day', 'clouded', 'grey day', 'dreich', 'mizzle', 'showery', 'pissing down', 'tipping down', 'chucking it down'],
    mixed: ['half cloudy', 'half sunny', 'sun and cloud', 'on and off', 'patchy sun', 'half half', 'half and half', 'mixed sky', 'mixed skies', 'so so', 'changeable', 'bit of everything', 'part sun', 'bits of sun', 'sunny intervals', 'sunny periods'],
  },
  shade: ['shade', 'shadow', 'shadows', 'in shade', 'shaded', 'under trees', 'under the trees', 'under the olive trees', 'partial shade', 'some shade', 'half shade', 'under a tree', 'tree shade', 'shady', 'partly shaded', 'partially shaded', 'half in shade', 'in the shade', 'dappled'],
} as const;
