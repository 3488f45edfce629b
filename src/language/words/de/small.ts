import type { Gloss } from '../gloss.ts';

/** Small words, weather and places in German. */
export const small: Gloss = {
  the: ['der', 'die', 'das', 'den', 'dem', 'des'], a: ['ein', 'eine', 'einen', 'einem', 'einer', 'eines'], and: ['und', 'sowie'], or: ['oder'], with: ['mit', 'samt'], without: ['ohne'], for: ['für'], from: ['von', 'aus', 'ab'], 'from the': ['vom'], in: ['im'], at: ['bei', 'beim', 'am'], on: ['auf', 'an'], to: ['zu', 'zum', 'zur', 'nach'], until: ['bis'], per: ['pro', 'je'], over: ['über'], under: ['unter'],
  not: ['nicht'], no: ['kein', 'keine', 'keinen'], i: ['ich', 'man'], we: ['wir'], it: ['es', 'er', 'sie'], my: ['mein', 'meine', 'meinen', 'meinem', 'meiner'], our: ['unser', 'unsere', 'unseren', 'unserem', 'unserer'], is: ['ist', 'wird', 'liegt'], are: ['sind', 'werden'], has: ['hat'], have: ['haben', 'habe'], can: ['kann', 'können'], should: ['soll', 'sollte'], must: ['muss', 'müssen'],
  if: ['wenn', 'falls'], what: ['was'], enough: ['genug', 'ausreichend'], only: ['nur', 'bloß'], also: ['auch', 'außerdem'], still: ['noch'], now: ['jetzt', 'nun'], about: ['etwa', 'ca', 'circa', 'ungefähr', 'rund', 'zirka', 'so', 'knapp', 'gut'], than: ['als'], please: ['bitte'], plus: ['plus', 'dazu kommen'], old: ['alt', 'alte', 'alten', 'alter', 'altes'], new: ['neu', 'neue', 'neuen', 'neuer', 'neues'], there: ['damit', 'da', 'dort'], so: ['also'], each: ['jeweils', 'jede', 'jedes', 'jeder'], then: ['dann'], but: ['aber'], load: ['verbraucher', 'gerät', 'geräte', 'last'],
  overcast: ['bewölkt', 'bedeckt', 'trüb', 'trübe', 'grau', 'regen', 'bei regen', 'regnerisch', 'wolkig'], 'partly cloudy': ['teils bewölkt', 'wechselhaft', 'leicht bewölkt'], sunny: ['sonnig', 'bei sonne', 'sonnigem', 'klarer himmel'], 'in the shade': ['im schatten', 'unter bäumen'], 'half shade': ['halbschatten', 'im halbschatten'],
  'flat on the roof': ['flach auf dem dach', 'flach', 'liegend', 'flach liegend', 'auf dem dach'], tilted: ['aufgestellt', 'geneigt', 'schräg', 'angewinkelt', 'zur sonne ausgerichtet'],
  'in series': ['in reihe', 'in serie'], 'in parallel': ['parallel', 'parallel geschaltet'],
};

/** Lands and regions whose German name the list of places lacks. */
export const places: Gloss = {
  croatia: ['kroatien'], norway: ['norwegen'], sweden: ['schweden'], denmark: ['dänemark'], italy: ['italien'], spain: ['spanien'], france: ['frankreich'], greece: ['griechenland'], scotland: ['schottland'], sardinia: ['sardinien'], corsica: ['korsika'], sicily: ['sizilien'], tuscany: ['toskana'], andalusia: ['andalusien'], morocco: ['marokko'], poland: ['polen'], finland: ['finnland'], ireland: ['irland'], england: ['england'], slovenia: ['slowenien'], brittany: ['der bretagne', 'bretagne'], normandy: ['der normandie'], provence: ['der provence'], switzerland: ['der schweiz'], germany: ['deutschland'],
};
