import type { Gloss } from '../gloss.ts';

/** Units, times and dates in Spanish. */
export const units: Gloss = {
  amps: ['amperio', 'amperios', 'amperes'], 'amp hours': ['amperios hora', 'amperio hora', 'amperios por hora'], watts: ['vatio', 'vatios', 'watios', 'wp'], 'watt hours': ['vatios hora', 'vatio hora'], volts: ['voltio', 'voltios'],
  hours: ['horas'], hour: ['hora'], minutes: ['minutos', 'minuto'], days: ['días'], day: ['día'], nights: ['noches'], night: ['noche'], weeks: ['semanas'], week: ['semana'],
  '# hours a day': ['# h al día', '# horas al día', '# hora al día', '# horas diarias', '# h diarias', '# horas cada día', '# horas por día', '# h por día', '# h/día'], '# hours a night': ['# horas por noche', '# horas cada noche', '# h por noche', '# horas por la noche'], '# minutes a day': ['# minutos al día', '# min al día', '# minutos diarios', '# minutos por día'], '# times a day': ['# veces al día'],
  'for a day': ['para un día', 'durante un día'], 'for a night': ['para una noche', 'durante una noche'], 'a week': ['una semana'], 'a weekend': ['un fin de semana', 'el fin de semana', 'fin de semana'], 'a long weekend': ['un puente', 'un fin de semana largo'], 'an hour': ['una hora'],
  'a day': ['al día', 'por día', 'diarios', 'diarias', 'cada día', '/ día', 'diario', 'todos los días', 'en 24 horas'], 'per hour': ['por hora', 'a la hora'], 'a night': ['por noche', 'cada noche'], overnight: ['por la noche', 'toda la noche', 'de noche'], 'all day': ['todo el día', 'sin parar', 'continuamente', 'las 24 horas'],
  percent: ['por ciento', 'porciento'], degrees: ['grados', 'grado'], metres: ['metros', 'metro'], mm2: ['mm cuadrados', 'milímetros cuadrados', 'cuadrados'],
  'peak sun hours': ['horas de sol', 'horas solares pico', 'horas sol pico', 'h de sol', 'horas pico'],
  january: ['enero'], february: ['febrero'], march: ['marzo'], april: ['abril'], 'in may': ['en mayo', 'mayo'], june: ['junio'], july: ['julio'], august: ['agosto'], september: ['septiembre'], october: ['octubre'], november: ['noviembre'], december: ['diciembre'],
  'in summer': ['en verano'], 'in winter': ['en invierno'],
  monday: ['lunes'], tuesday: ['martes'], wednesday: ['miércoles'], thursday: ['jueves'], friday: ['viernes'], saturday: ['sábado'], sunday: ['domingo'],
};
