import type { Gloss } from '../gloss.ts';

/** Units, times and dates in French. */
export const units: Gloss = {
  amps: ['ampère', 'ampères'], 'amp hours': ['ampères heures', 'ampères heure', 'ampère heure', 'ampère heures'], watts: ['watt', 'watts', 'wc', 'watts crête', 'watt crête'], 'watt hours': ['watts heures', 'wattheures', 'wattheure', 'watt heure', 'watts heure'], volts: ['volt', 'volts'],
  hours: ['heures'], hour: ['heure'], minutes: ['minutes', 'minute', 'mn'], days: ['jours', 'journées'], day: ['jour', 'journée'], nights: ['nuits'], night: ['nuit'], weeks: ['semaines'], week: ['semaine'],
  '# days': ['# j'], '# hours a day': ['# h par jour', '# heures par jour', '# heure par jour', '# h/jour', '# heures/jour', '# h / jour', '# heures / jour', '# h / j'], '# hours a night': ['# h par nuit', '# heures par nuit', '# heures la nuit'], '# minutes a day': ['# minutes par jour', '# min par jour', '# mn par jour'], '# times a day': ['# fois par jour'],
  'for a day': ['pour une journée', 'pendant une journée', 'pour un jour', 'pendant un jour'], 'for a night': ['pour une nuit', 'pendant une nuit'], 'a week': ['une semaine'], 'a weekend': ['un week end', 'le week end', 'un weekend', 'le weekend', 'ce week end'], 'a long weekend': ['un long week end', 'un week end prolongé', 'un long weekend'], 'an hour': ['une heure'],
  'a day': ['par jour', 'par jours', 'chaque jour', '/ jour', '/ j', 'tous les jours', 'quotidien', 'sur 24 heures', 'par 24 h'], 'per hour': ['par heure'], 'a night': ['par nuit', 'chaque nuit'], overnight: ['la nuit', 'toute la nuit', 'pendant la nuit'], 'all day': ['toute la journée', 'en continu', 'en permanence'],
  percent: ['pourcent', 'pour cent'], degrees: ['degrés', 'degré'], metres: ['mètres', 'mètre'], mm2: ['mm carré', 'mm carrés', 'carré', 'carrés'],
  'peak sun hours': ['heures de soleil', 'heures ensoleillement', 'h de soleil', 'heures de plein soleil', 'heures densoleillement'],
  january: ['janvier'], february: ['février'], march: ['mars'], april: ['avril'], 'in may': ['en mai', 'au mois de mai', 'mois de mai'], june: ['juin'], july: ['juillet'], august: ['août'], september: ['septembre'], october: ['octobre'], november: ['novembre'], december: ['décembre'],
  'in summer': ['en été', 'l été'], 'in winter': ['en hiver', 'l hiver'],
  monday: ['lundi'], tuesday: ['mardi'], wednesday: ['mercredi'], thursday: ['jeudi'], friday: ['vendredi'], saturday: ['samedi'], sunday: ['dimanche'],
};
