import type { Gloss } from '../gloss.ts';

/** Small words, weather and places in French. */
export const small: Gloss = {
  when: ['quand', 'lorsque'],
  the: ['le', 'la', 'les', 'l', 'ce', 'cette', 'ces'], a: ['un', 'une'], of: ['de', 'du', 'des', 'd'], and: ['et', 'ainsi que'], or: ['ou'], with: ['avec'], without: ['sans'], for: ['pour', 'pendant', 'durant'], from: ['depuis'], in: ['en', 'dans', 'au', 'aux'], at: ['à', 'chez'], on: ['sur'], until: ['jusqu à', 'jusquà', 'jusquau'], per: ['par'], over: ['plus de'], under: ['moins de', 'sous'], to: ['vers'],
  not: ['pas', 'ne'], no: ['aucun', 'aucune', 'pas de'], i: ['je', 'j'], we: ['nous', 'on'], it: ['il', 'elle', 'ça', 'cela', 'lui'], my: ['mon', 'ma', 'mes'], our: ['notre', 'nos'], is: ['est', 'cest'], are: ['sont'], has: ['possède'], have: ['ai', 'avons'], should: ['devrait', 'doit'], must: ['dois', 'faut'], that: ['que', 'qui', 'qu'],
  if: ['si'], only: ['seulement', 'juste', 'uniquement'], also: ['aussi', 'également'], still: ['encore', 'toujours'], now: ['maintenant'], about: ['environ', 'à peu près', 'presque'], than: ['que le'], please: ['sil vous plaît', 's il vous plaît', 'svp', 's il te plaît', 'stp'], plus: ['plus'], old: ['vieille', 'vieux', 'ancienne', 'ancien'], new: ['neuve', 'neuf', 'nouvelle', 'nouveau'], there: ['y'], each: ['chacun', 'chacune', 'chaque'], then: ['puis', 'ensuite', 'alors'], but: ['mais'], load: ['consommateur', 'appareil', 'appareils'],
  overcast: ['couvert', 'nuageux', 'gris', 'pluie', 'temps couvert', 'ciel couvert', 'sous la pluie', 'pluvieux', 'il pleut'], 'partly cloudy': ['partiellement nuageux', 'mitigé', 'variable'], sunny: ['ensoleillé', 'plein soleil', 'grand soleil', 'beau temps', 'ciel clair', 'il fait beau'], 'in the shade': ['à lombre', 'à l ombre', 'sous les arbres'], 'half shade': ['à mi ombre', 'mi ombre'],
  'flat on the roof': ['à plat sur le toit', 'sur le toit', 'posé à plat'], tilted: ['incliné', 'inclinés', 'orienté', 'inclinée', 'orientés'],
  'in series': ['en série'], 'in parallel': ['en parallèle'],
};

/** Lands and regions whose French name the list of places lacks. */
export const places: Gloss = {
  brittany: ['bretagne'], spain: ['espagne', 'l espagne'], italy: ['italie'], croatia: ['croatie'], norway: ['norvège'], sweden: ['suède'], greece: ['grèce'], scotland: ['écosse'], germany: ['allemagne'], england: ['angleterre'], ireland: ['irlande'], morocco: ['maroc'], switzerland: ['suisse'], austria: ['autriche'], sardinia: ['sardaigne'], sicily: ['sicile'], andalusia: ['andalousie'], tuscany: ['toscane'], catalonia: ['catalogne'], belgium: ['belgique'], netherlands: ['pays bas'], corsica: ['corse'], denmark: ['danemark'],
};
