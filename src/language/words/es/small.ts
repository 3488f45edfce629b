import type { Gloss } from '../gloss.ts';

/** Small words, weather and places in Spanish. */
export const small: Gloss = {
  when: ['cuando'],
  the: ['el', 'la', 'los', 'las', 'lo', 'este', 'esta', 'ese', 'esa'], a: ['un', 'una'], of: ['de', 'del'], and: ['y', 'e'], or: ['o', 'u'], with: ['con'], without: ['sin'], for: ['para', 'durante'], from: ['desde'], in: ['en'], at: ['al'], on: ['sobre', 'encima de'], until: ['hasta'], per: ['por'], over: ['más de'], under: ['menos de', 'bajo'],
  not: ['no'], no: ['ningún', 'ninguna'], i: ['yo'], we: ['nosotros'], it: ['ello', 'eso', 'esto'], my: ['mi', 'mis'], our: ['nuestro', 'nuestra', 'nuestros', 'nuestras'], is: ['es', 'está'], are: ['son', 'están'], has: ['tiene'], have: ['tener'], should: ['debería'], must: ['debo', 'hay que', 'tengo que'], that: ['que'], me: ['me'],
  if: ['si'], only: ['solo', 'sólo', 'solamente'], also: ['también'], still: ['todavía', 'aún'], now: ['ahora'], about: ['unos', 'unas', 'aproximadamente', 'casi', 'alrededor de', 'más o menos'], please: ['por favor'], plus: ['más'], old: ['vieja', 'viejo'], new: ['nueva', 'nuevo'], there: ['ahí', 'allí'], each: ['cada', 'cada una', 'cada uno'], then: ['luego', 'entonces'], but: ['pero'], load: ['consumidor', 'aparato', 'aparatos', 'dispositivo'],
  overcast: ['nublado', 'nubes', 'cubierto', 'lluvia', 'lloviendo', 'lluvioso', 'con lluvia'], 'partly cloudy': ['parcialmente nublado', 'variable'], sunny: ['soleado', 'despejado', 'pleno sol', 'mucho sol', 'hace sol'], 'in the shade': ['a la sombra', 'en la sombra', 'bajo los árboles'], 'half shade': ['media sombra', 'a media sombra'],
  'flat on the roof': ['plana en el techo', 'en el techo', 'plano en el techo', 'planas en el techo'], tilted: ['inclinada', 'inclinado', 'orientada', 'inclinadas', 'orientado'],
  'in series': ['en serie'], 'in parallel': ['en paralelo'],
};

/** Lands and regions whose Spanish name the list of places lacks. */
export const places: Gloss = {
  france: ['francia'], germany: ['alemania'], italy: ['italia'], morocco: ['marruecos'], norway: ['noruega'], greece: ['grecia'], scotland: ['escocia'], croatia: ['croacia'], switzerland: ['suiza'], pyrenees: ['los pirineos', 'pirineos'], catalonia: ['cataluña'], brittany: ['bretaña'], sweden: ['suecia'], denmark: ['dinamarca'], ireland: ['irlanda'], england: ['inglaterra'], sicily: ['sicilia'], sardinia: ['cerdeña'], corsica: ['córcega'],
};
