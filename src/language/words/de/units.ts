import type { Gloss } from '../gloss.ts';

/** Units, times and dates in German. */
export const units: Gloss = {
  amps: ['ampere', 'amper'], 'amp hours': ['amperestunden', 'amperestunde', 'ampere stunden'], watts: ['watt'], 'watt hours': ['wattstunden', 'wattstunde'], volts: ['volt'],
  hours: ['stunden', 'std', 'stdn'], hour: ['stunde'], minutes: ['minuten', 'minute', 'min'], days: ['tage', 'tagen', 'tg', 'tages'], day: ['tag'], nights: ['nächte', 'nächten'], night: ['nacht'], weeks: ['wochen'], week: ['woche'],
  'for a day': ['für einen tag', 'einen tag lang', 'einen tag'], 'for a night': ['für eine nacht', 'eine nacht lang'], 'a week': ['eine woche', 'einer woche'], 'a weekend': ['wochenende', 'ein wochenende', 'übers wochenende', 'das wochenende', 'am wochenende'], 'a long weekend': ['langes wochenende', 'verlängertes wochenende', 'ein langes wochenende'],
  'an hour': ['eine stunde', 'einer stunde'], '# hours a day': ['# h am tag', '# h pro tag', '# h täglich', '# stunden am tag', '# stunden pro tag', '# stunden täglich', '# std am tag', '# std pro tag', 'täglich # stunden', 'täglich # h', 'am tag # stunden', '# h/tag'],
  '# hours a night': ['# h pro nacht', '# stunden pro nacht', '# stunden in der nacht', '# h nachts'],
  '# minutes a day': ['# minuten am tag', '# minuten pro tag', '# min am tag', '# min pro tag', '# minuten täglich', '# min täglich'],
  '# times a day': ['# mal am tag', '# mal pro tag', '# mal täglich'],
  'a day': ['am tag', 'pro tag', 'täglich', 'je tag', 'jeden tag', 'tägl', '/ tag', 'in 24 stunden'], 'per hour': ['pro stunde', 'je stunde', 'in der stunde'], 'a night': ['pro nacht', 'jede nacht'], overnight: ['nachts', 'über nacht', 'in der nacht', 'die ganze nacht'], 'all day': ['den ganzen tag', 'rund um die uhr', 'durchgehend', 'dauernd'],
  percent: ['prozent'], degrees: ['grad'], metres: ['meter'], mm2: ['quadrat', 'mm quadrat', 'quadratmillimeter'],
  'peak sun hours': ['sonnenstunden', 'volle sonnenstunden', 'stunden sonne', 'h sonne'],
  january: ['januar', 'jänner'], february: ['februar'], march: ['märz'], april: ['april'], 'in may': ['im mai'], june: ['juni'], july: ['juli'], august: ['august'], september: ['september'], october: ['oktober'], november: ['november'], december: ['dezember'],
  'in summer': ['im sommer'], 'in winter': ['im winter'],
  monday: ['montag'], tuesday: ['dienstag'], wednesday: ['mittwoch'], thursday: ['donnerstag'], friday: ['freitag'], saturday: ['samstag', 'sonnabend'], sunday: ['sonntag'],
};
