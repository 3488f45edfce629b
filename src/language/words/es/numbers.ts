import type { Gloss } from '../gloss.ts';

/** Number words and shares in Spanish. */
export const numbers: Gloss = {
  two: ['dos'], three: ['tres'], four: ['cuatro'], five: ['cinco'], six: ['seis'], seven: ['siete'], eight: ['ocho'], nine: ['nueve'], ten: ['diez'], eleven: ['once'], twelve: ['doce'],
  fifteen: ['quince'], twenty: ['veinte'], thirty: ['treinta'], forty: ['cuarenta'], fifty: ['cincuenta'], sixty: ['sesenta'], eighty: ['ochenta'], 'a hundred': ['cien'], 'two hundred': ['doscientos'],
  'and a half': ['y medio', 'y media'], 'half an hour': ['media hora'], 'half a day': ['medio día'],
  half: ['medio', 'la mitad de', 'la mitad'], 'a quarter of an hour': ['un cuarto de hora', 'cuarto de hora'],
  'a few': ['unos pocos', 'algunos', 'algunas'], 'a couple of': ['un par de'], once: ['una vez'], twice: ['dos veces'], 'three times': ['tres veces'],
};
