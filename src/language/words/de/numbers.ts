import type { Gloss } from '../gloss.ts';

/** Number words and shares in German. */
export const numbers: Gloss = {
  two: ['zwei', 'zwo', 'beide'], three: ['drei'], four: ['vier'], five: ['fünf'], six: ['sechs'], seven: ['sieben'], eight: ['acht'], nine: ['neun'], ten: ['zehn'], eleven: ['elf'], twelve: ['zwölf'],
  fifteen: ['fünfzehn'], twenty: ['zwanzig'], thirty: ['dreißig'], forty: ['vierzig'], fifty: ['fünfzig'], sixty: ['sechzig'], eighty: ['achtzig'], 'a hundred': ['hundert', 'einhundert'], 'two hundred': ['zweihundert'],
  'one and a half': ['anderthalb', 'eineinhalb', 'einundhalb'], 'two and a half': ['zweieinhalb'], 'three and a half': ['dreieinhalb'],
  'half an hour': ['halbe stunde', 'eine halbe stunde', 'halben stunde', 'einer halben stunde'], 'half a day': ['halber tag', 'halben tag', 'einen halben tag'],
  half: ['halb', 'halbe', 'halber', 'halben'], 'a quarter of': ['ein viertel'], 'three quarters of': ['drei viertel', 'dreiviertel'],
  'a few': ['ein paar', 'einige'], 'a couple of': ['paar'], once: ['einmal'], twice: ['zweimal', 'zwei mal'], 'three times': ['dreimal', 'drei mal'],
};
