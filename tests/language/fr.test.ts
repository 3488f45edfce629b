import { expect, test } from 'vitest';
import { answerTo, type Row, sayAll, testGolden, testRows } from './foreign.ts';

// Reckoned by hand as in de.test.ts.
const rows: readonly Row[] = [
  {
    say: 'combien de temps dure une batterie AGM 100Ah avec un frigo de 1,2 A ?',
    intent: 'run-time',
    means: { loads: [{ name: 'fridge', count: 1, currentA: 1.2, supply: 'dc' }] },
    about: { runTime: 41.7, usableCapacity: 50 },
    answers: 'Ça tient environ 1¾ jour',
  },
  {
    say: 'glacière 0,75 A en moyenne, 80 Ah gel, quelle autonomie ?',
    intent: 'run-time',
    means: { batteries: [{ count: 1, capacityAh: 80, chemistry: 'gel' }] },
    about: { runTime: 53 },
    answers: 'Ça tient',
  },
  {
    say: 'frigo 45W sur lithium 100Ah combien de temps ca tient',
    intent: 'run-time',
    about: { usableCapacity: 80 },
    answers: 'Frigo 45 W',
  },
  {
    say: 'Est-ce que ma 105Ah AGM tient trois jours avec une glacière de 0,9 A ?',
    intent: 'run-time',
    means: { durationH: 72 },
    about: { runTime: 58.3 },
    answers: /^Non, pas 3 jours/,
  },
  {
    say: "J'ai une lithium de 200Ah : combien de jours pour un frigo de 1,5 A et des lampes de 10 W 5 heures par jour ?",
    intent: 'run-time',
    about: { usableCapacity: 160 },
    answers: 'utilisables',
  },
  {
    say: "combien de nuits tient une 95Ah avec l'appareil à apnée de 30 W, 8 heures par nuit ?",
    intent: 'run-time',
    answers: 'appareil médical',
  },
  {
    say: 'quelle batterie pour un frigo de 1,2 A pendant 3 jours ?',
    intent: 'battery-size',
    means: { durationH: 72 },
    about: { batteryCapacity: 173, dailyUse: 28.8 },
    answers: 'Ah en lithium',
  },
  {
    say: 'Nous consommons 50 Ah par jour, quelle capacité de lithium pour deux jours ?',
    intent: 'battery-size',
    means: { dailyUseAh: 50, durationH: 48 },
    about: { batteryCapacity: 125 },
    answers: 'lithium pour 2 jours',
  },
  {
    say: "combien d'Ah en AGM nous faut-il pour 30Ah par jour et 4 jours",
    intent: 'battery-size',
    means: { dailyUseAh: 30 },
    about: { batteryCapacity: 240 },
    answers: 'AGM pour 4 jours',
  },
  {
    say: 'Quelle batterie me faut-il pour un ordinateur portable 60 W 3 heures par jour et une glacière 1 A, 2 jours ?',
    intent: 'battery-size',
    means: { durationH: 48 },
    about: { dailyUse: 39 },
    answers: 'pour 2 jours',
  },
  {
    say: 'quel panneau pour 40 Ah par jour en Bretagne en mai',
    intent: 'solar-size',
    means: { place: 'Brittany', month: 5, dailyUseAh: 40 },
    answers: 'pour la Bretagne en mai',
  },
  {
    say: 'Combien de watts de panneaux pour 60Ah par jour avec 5 heures de soleil et un régulateur MPPT ?',
    intent: 'solar-size',
    means: { peakSunHours: 5, dailyUseAh: 60 },
    about: { panelPower: 196 },
    answers: 'heures de plein soleil',
  },
  {
    say: 'Un panneau de 100 W suffit-il pour 45Ah par jour en Bretagne en mai ?',
    intent: 'solar-size',
    means: { month: 5 },
    answers: /^Non, 100 W ne suffisent pas/,
  },
  {
    say: 'quelle puissance de panneau solaire pour une glacière de 1,1 A par temps couvert',
    intent: 'solar-size',
    means: { sky: 'overcast' },
    answers: 'un panneau de',
  },
  {
    say: 'Combien de temps pour charger une lithium 100Ah de 20 % à 100 % avec un chargeur secteur de 25A ?',
    intent: 'charge-time',
    means: { chargers: [{ kind: 'mains', currentA: 25 }] },
    about: { chargeNeeded: 81 },
    answers: "sur le chargeur jusqu'à plein",
  },
  {
    say: "temps de charge d'une batterie 100Ah à 50 % avec un booster de 20A",
    intent: 'charge-time',
    means: { batteries: [{ count: 1, capacityAh: 100, stateOfChargePercent: 50 }] },
    about: { chargeNeeded: 56 },
    answers: "heures de route jusqu'à plein",
  },
  {
    say: "Combien d'heures de route pour recharger une AGM 100Ah à 60 % avec un chargeur DC-DC 30A ?",
    intent: 'charge-time',
    answers: 'de route',
  },
  {
    say: 'recharger une 120Ah AGM de 50 % à 80 % avec un chargeur 15 A, combien de temps ?',
    intent: 'charge-time',
    means: { targetChargePercent: 80 },
    answers: "jusqu'à 80 %",
  },
  {
    say: 'Un onduleur de 1500 W peut-il alimenter une cafetière de 1200 W ?',
    intent: 'inverter-check',
    means: { inverter: { powerW: 1500 } },
    about: { acLoad: 1200, batteryCurrent: 111 },
    answers: /^Oui : 1200 W/,
  },
  {
    say: "L'onduleur de 1000W supporte-t-il la bouilloire de 2000W ?",
    intent: 'inverter-check',
    about: { acLoad: 2000 },
    answers: /^Non : 2000 W/,
  },
  {
    say: 'Combien consomme un grille-pain de 900 W sur la batterie pendant 5 minutes ?',
    intent: 'inverter-check',
    about: { batteryCurrent: 83, batteryUse: 6.9 },
    answers: 'Grille-pain',
  },
  {
    say: 'Mon installation : 120Ah gel, 200W solaire, glacière 1,3 A',
    intent: 'rig',
    means: { solar: [{ count: 1, powerW: 200 }] },
    answers: 'Noté. Ton installation : gel 120 Ah; solaire 200 W; glacière 1,3 A.',
  },
  {
    say: 'Nous avons 2 x 100Ah lithium et un chargeur DC-DC de 30A',
    intent: 'rig',
    means: { chargers: [{ kind: 'dcdc', currentA: 30 }] },
    answers: 'chargeur DC-DC 30 A',
  },
  { say: 'montre mon installation', intent: 'rig', answers: 'Je ne connais pas encore' },
  { say: 'aide', intent: 'help', answers: "Je calcule l'électricité" },
  { say: 'que peux-tu faire ?', intent: 'help', answers: "Je calcule l'électricité" },
  {
    say: 'frigo 45W, combien de temps ça dure ?',
    intent: 'unclear',
    answers: 'Il me manque pour cela : la taille de la batterie',
  },
  { say: 'Merci', intent: 'unclear', answers: 'De rien.' },
];
testRows('French', rows);

testGolden('fr', {
  'run-time': 'Est-ce qu’une 100Ah AGM tient trois jours avec un frigo de 1,2 A ?',
  'battery-size': 'quelle batterie me faut-il pour un frigo de 45 W pendant 3 jours ?',
  'solar-size': 'quel panneau pour 40 Ah par jour en Bretagne en mai ?',
  'charge-time': 'combien de temps pour charger une 100Ah AGM à 50 % avec un chargeur secteur de 20A ?',
  'inverter-check': 'un onduleur de 1000W peut-il alimenter une bouilloire de 1800W ?',
  rig: 'mon installation : 2 x 100Ah lithium, 160W solaire, chargeur DC-DC 30A, frigo 1,2 A, deux lampes de 5 W',
  help: 'aide',
});

test('a talk goes on in French', () => {
  const { answers, memory } = sayAll([
    'Mon installation : 120Ah gel, 200W solaire, glacière 1,3 A',
    'combien de temps ça tient ?',
    'et si lithium ?',
    'mets 5 jours',
    'montre le calcul',
    'oublie mon installation',
  ]);
  expect(answers.map(answer => answer.intent)).toEqual([
    'rig',
    'run-time',
    'run-time',
    'run-time',
    'run-time',
    'rig',
  ]);
  expect(answers[1]!.text).toMatch(/^Ça tient environ 2 jours .*\nTa batterie gel de 120 Ah/);
  expect(answers[2]!.text).toContain('batterie lithium de 120 Ah');
  expect(answers[3]!.text).toMatch(/^Non, pas 5 jours/);
  expect(answers[4]!.text).toContain('Calcul:');
  expect(memory.rigs).toEqual({});
});

test('another question is answered in English, and says so in French', () =>
  expect(answerTo('quel fusible pour une pompe de 8A en 12V ?').text).toContain("qu'en anglais"));

test('dangers are warned of in French', () => {
  expect(answerTo('est-ce que je peux shunter le BMS ?').text).toContain('Ne contourne pas le BMS');
  expect(answerTo('le groupe électrogène de 1000 W dans la tente pour la batterie ?').text).toContain(
    'monoxyde de carbone',
  );
});
