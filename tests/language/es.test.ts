import { expect, test } from 'vitest';
import { answerTo, type Row, sayAll, testGolden, testRows } from './foreign.ts';

// Reckoned by hand as in de.test.ts.
const rows: readonly Row[] = [
  {
    say: '¿cuánto dura una nevera de 1,2 A con 100 Ah AGM?',
    intent: 'run-time',
    means: { loads: [{ name: 'fridge', count: 1, currentA: 1.2, supply: 'dc' }] },
    about: { runTime: 41.7, usableCapacity: 50 },
    answers: 'Dura unos 1¾ días',
  },
  {
    say: 'nevera portátil 0,75 A de media, 80 Ah gel, ¿cuánto tiempo aguanta?',
    intent: 'run-time',
    means: { batteries: [{ count: 1, capacityAh: 80, chemistry: 'gel' }] },
    about: { runTime: 53 },
    answers: 'Dura',
  },
  {
    say: 'frigorifico 45W con litio 100Ah cuanto dura',
    intent: 'run-time',
    about: { usableCapacity: 80 },
    answers: 'Nevera 45 W',
  },
  {
    say: '¿Aguanta mi AGM de 105Ah tres días con una nevera de 0,9 A?',
    intent: 'run-time',
    means: { durationH: 72 },
    about: { runTime: 58.3 },
    answers: /^No, 3 días no/,
  },
  {
    say: '¿Cuántos días da para una batería de litio de 200Ah con nevera de 1,5 A y luces de 10 W 5 horas al día?',
    intent: 'run-time',
    about: { usableCapacity: 160 },
    answers: 'útiles',
  },
  {
    say: '¿Cuántas noches aguanta una batería de 95Ah con la máquina de apnea de 30 W, 8 horas por noche?',
    intent: 'run-time',
    answers: 'aparato médico',
  },
  {
    say: '¿Qué batería necesito para una nevera de 1,2 A y 3 días?',
    intent: 'battery-size',
    means: { durationH: 72 },
    about: { batteryCapacity: 173, dailyUse: 28.8 },
    answers: 'Ah de litio',
  },
  {
    say: 'Consumimos 50 Ah al día, ¿qué capacidad de litio para dos días?',
    intent: 'battery-size',
    means: { dailyUseAh: 50, durationH: 48 },
    about: { batteryCapacity: 125 },
    answers: 'litio para 2 días',
  },
  {
    say: 'cuántos Ah de AGM necesitamos para 30Ah al día y 4 días',
    intent: 'battery-size',
    means: { dailyUseAh: 30 },
    about: { batteryCapacity: 240 },
    answers: 'AGM para 4 días',
  },
  {
    say: '¿Qué batería hace falta para un ordenador de 60 W 3 horas al día y una nevera de 1 A, 2 días?',
    intent: 'battery-size',
    means: { durationH: 48 },
    about: { dailyUse: 39 },
    answers: 'para 2 días',
  },
  {
    say: '¿Qué placa necesito para 40 Ah al día en Galicia en mayo?',
    intent: 'solar-size',
    means: { place: 'Galicia', month: 5, dailyUseAh: 40 },
    answers: 'en Galicia en mayo',
  },
  {
    say: '¿Cuántos vatios de placa para 60Ah al día con 5 horas de sol y regulador MPPT?',
    intent: 'solar-size',
    means: { peakSunHours: 5, dailyUseAh: 60 },
    about: { panelPower: 196 },
    answers: 'horas de sol pico',
  },
  {
    say: '¿Basta un panel de 100 W para 45Ah al día en Francia en mayo?',
    intent: 'solar-size',
    means: { place: 'France', month: 5 },
    answers: /^No, 100 W no bastan/,
  },
  {
    say: 'qué placa solar para una nevera de 1,1 A con cielo nublado',
    intent: 'solar-size',
    means: { sky: 'overcast' },
    answers: 'llega',
  },
  {
    say: '¿Cuánto tarda en cargar una batería de litio de 100Ah del 20 % al 100 % con un cargador de red de 25A?',
    intent: 'charge-time',
    means: { chargers: [{ kind: 'mains', currentA: 25 }] },
    about: { chargeNeeded: 81 },
    answers: 'con el cargador hasta llena',
  },
  {
    say: 'tiempo de carga de una batería de 100Ah al 50 % con un booster de 20A',
    intent: 'charge-time',
    means: { batteries: [{ count: 1, capacityAh: 100, stateOfChargePercent: 50 }] },
    about: { chargeNeeded: 56 },
    answers: 'horas de viaje hasta llena',
  },
  {
    say: '¿Cuántas horas tengo que conducir para cargar una AGM de 100Ah al 60 % con un cargador DC-DC de 30A?',
    intent: 'charge-time',
    answers: 'de viaje',
  },
  {
    say: 'cargar 120Ah AGM del 50 % al 80 % con cargador de 15 A, ¿cuánto tiempo?',
    intent: 'charge-time',
    means: { targetChargePercent: 80 },
    answers: 'hasta el 80 %',
  },
  {
    say: 'puede un inversor de 1500 W con una cafetera de 1200 W',
    intent: 'inverter-check',
    means: { inverter: { powerW: 1500 } },
    about: { acLoad: 1200, batteryCurrent: 111 },
    answers: /^Sí: 1200 W/,
  },
  {
    say: '¿Aguanta mi inversor de 1000W el hervidor de 2000W?',
    intent: 'inverter-check',
    about: { acLoad: 2000 },
    answers: /^No: 2000 W/,
  },
  {
    say: '¿Cuánto saca de la batería una tostadora de 900 W en 5 minutos?',
    intent: 'inverter-check',
    about: { batteryCurrent: 83, batteryUse: 6.9 },
    answers: 'Tostadora',
  },
  {
    say: 'Mi equipo: 120Ah gel, 200W solar, nevera 1,3 A',
    intent: 'rig',
    means: { solar: [{ count: 1, powerW: 200 }] },
    answers: 'Apuntado. Tu equipo: gel 120 Ah; solar 200 W; nevera 1,3 A.',
  },
  {
    say: 'Tenemos 2 x 100Ah de litio y un cargador DC-DC de 30A',
    intent: 'rig',
    means: { chargers: [{ kind: 'dcdc', currentA: 30 }] },
    answers: 'cargador DC-DC 30 A',
  },
  { say: 'muestra mi equipo', intent: 'rig', answers: 'Todavía no conozco' },
  { say: 'ayuda', intent: 'help', answers: 'Calculo la electricidad' },
  { say: '¿qué puedes hacer?', intent: 'help', answers: 'Calculo la electricidad' },
  {
    say: 'nevera 45W, ¿cuánto dura?',
    intent: 'unclear',
    answers: 'Para eso me falta: el tamaño de la batería',
  },
  { say: 'Gracias', intent: 'unclear', answers: 'De nada.' },
];
testRows('Spanish', rows);

testGolden('es', {
  'run-time': '¿Aguanta una AGM de 100Ah tres días con una nevera de 1,2 A?',
  'battery-size': '¿qué batería necesito para una nevera de 45 W y 3 días?',
  'solar-size': '¿qué placa necesito para 40 Ah al día en Galicia en mayo?',
  'charge-time': '¿cuánto tarda en cargar una AGM de 100Ah al 50 % con un cargador de red de 20A?',
  'inverter-check': '¿puede un inversor de 1000W con un hervidor de 1800W?',
  rig: 'mi equipo: 2 x 100Ah litio, 160W solar, cargador DC-DC de 30A, nevera 1,2 A, dos luces de 5 W',
  help: 'ayuda',
});

test('a talk goes on in Spanish', () => {
  const { answers, memory } = sayAll([
    'Mi equipo: 120Ah gel, 200W solar, nevera 1,3 A',
    '¿cuánto dura?',
    '¿y si es litio?',
    'que sean 5 días',
    'muestra el cálculo',
    'olvida mi equipo',
  ]);
  expect(answers.map(answer => answer.intent)).toEqual([
    'rig',
    'run-time',
    'run-time',
    'run-time',
    'run-time',
    'rig',
  ]);
  expect(answers[1]!.text).toMatch(/^Dura unos 2 días .*\nTu batería de 120 Ah \(gel\)/);
  expect(answers[2]!.text).toContain('120 Ah (litio)');
  expect(answers[3]!.text).toMatch(/^No, 5 días no/);
  expect(answers[4]!.text).toContain('Cálculo:');
  expect(memory.rigs).toEqual({});
});

test('another question is answered in English, and says so in Spanish', () =>
  expect(answerTo('¿qué fusible para una bomba de 8A a 12V?').text).toContain('solo lo respondo en inglés'));

test('dangers are warned of in Spanish', () => {
  expect(answerTo('¿puedo puentear el BMS?').text).toContain('No puentees el BMS');
  expect(answerTo('¿puedo poner el generador de 1000 W en la tienda para cargar?').text).toContain(
    'monóxido de carbono',
  );
});
