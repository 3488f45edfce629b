import type { Gloss } from '../gloss.ts';

/** Number words and shares in French. */
export const numbers: Gloss = {
  two: ['deux'], three: ['trois'], four: ['quatre'], five: ['cinq'], six: ['six'], seven: ['sept'], eight: ['huit'], nine: ['neuf'], ten: ['dix'], eleven: ['onze'], twelve: ['douze'],
  fifteen: ['quinze'], twenty: ['vingt'], thirty: ['trente'], forty: ['quarante'], fifty: ['cinquante'], sixty: ['soixante'], eighty: ['quatre vingts', 'quatre vingt'], 'a hundred': ['cent'], 'two hundred': ['deux cents', 'deux cent'],
  'and a half': ['et demi', 'et demie'], 'half an hour': ['une demi heure', 'demi heure', 'demie heure'], 'half a day': ['une demi journée', 'demi journée'],
  half: ['demi', 'demie', 'la moitié de', 'la moitié'], 'a quarter of an hour': ['un quart heure', 'un quart dheure', 'quart dheure'],
  'a few': ['quelques'], 'a couple of': ['une paire de'], once: ['une fois'], twice: ['deux fois'], 'three times': ['trois fois'],
};
