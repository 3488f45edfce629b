import { expect, test } from 'vitest';
import { answerTo, type Row, sayAll, testGolden, testRows } from './foreign.ts';

// Reckoned by hand: usable is half of AGM and gel, four fifths of lithium (common practice); a compressor told in
// watts runs 35 % of the time at 25 °C.
const rows: readonly Row[] = [
  {
    say: 'Kühlschrank 1,2 A und 100Ah AGM, wie lange?',
    intent: 'run-time',
    means: { loads: [{ name: 'fridge', count: 1, currentA: 1.2, supply: 'dc' }] },
    about: { runTime: 41.7, usableCapacity: 50 },
    answers: 'Das hält etwa 1¾ Tage',
  },
  {
    say: 'wie lang hält ne 80 Ah Gelbatterie mit einer Kühlbox von 0,75 A im Schnitt',
    intent: 'run-time',
    means: { batteries: [{ count: 1, capacityAh: 80, chemistry: 'gel' }] },
    about: { runTime: 53 },
    answers: 'Das hält',
  },
  {
    say: 'Kuehlbox 45W an 100Ah Lithium, wie lange haelt das',
    intent: 'run-time',
    means: { loads: [{ name: 'cool box', count: 1, powerW: 45, supply: 'dc' }] },
    answers: 'Kühlbox 45 W',
  },
  {
    say: 'Reicht meine 105Ah AGM drei Tage für eine Kühlbox mit 0,9 A?',
    intent: 'run-time',
    means: { durationH: 72 },
    about: { runTime: 58.3 },
    answers: /^Nein, nicht 3 Tage/,
  },
  {
    say: 'Hält eine 200Ah LiFePO4 übers Wochenende mit Kühlschrank 1,5 A und Licht 10 W 5 Stunden pro Nacht?',
    intent: 'run-time',
    about: { usableCapacity: 160 },
    answers: /^Ja: Es hält/,
  },
  {
    say: 'Wie viele Nächte schafft ein 95Ah Akku ein CPAP mit 30 W, 8 Stunden pro Nacht?',
    intent: 'run-time',
    answers: 'medizinisches Gerät',
  },
  {
    say: 'welche Batterie brauche ich für 1,2 A Kühlschrank und 3 Tage',
    intent: 'battery-size',
    means: { durationH: 72 },
    about: { batteryCapacity: 173, dailyUse: 28.8 },
    answers: 'Ah Lithium',
  },
  {
    say: 'Wie groß muss ein Lithiumakku für 50 Ah am Tag und zwei Tage sein?',
    intent: 'battery-size',
    means: { dailyUseAh: 50, durationH: 48 },
    about: { batteryCapacity: 125 },
    answers: 'Lithium für 2 Tage',
  },
  {
    say: 'wieviel Ah AGM brauchen wir bei 30Ah täglich für 4 Tage',
    intent: 'battery-size',
    means: { dailyUseAh: 30 },
    about: { batteryCapacity: 240 },
    answers: 'AGM für 4 Tage',
  },
  {
    say: 'Welcher Akku für Laptop 60 W 3 Stunden am Tag und Kühlbox 1 A, 2 Tage?',
    intent: 'battery-size',
    means: { durationH: 48 },
    about: { dailyUse: 39 },
    answers: 'für 2 Tage',
  },
  {
    say: 'Welches Solarmodul brauche ich für 40Ah pro Tag in Kroatien im Juli?',
    intent: 'solar-size',
    means: { place: 'Croatia', month: 7, dailyUseAh: 40 },
    answers: 'für Kroatien im Juli',
  },
  {
    say: 'Wie viel Watt Solar für 60 Ah am Tag bei 5 Sonnenstunden mit MPPT-Regler?',
    intent: 'solar-size',
    means: { peakSunHours: 5, dailyUseAh: 60 },
    about: { panelPower: 196 },
    answers: 'vollen Sonnenstunden',
  },
  {
    say: 'Reicht ein 100 W Panel für 45Ah am Tag im Mai in der Bretagne?',
    intent: 'solar-size',
    means: { place: 'Brittany', month: 5 },
    answers: /^Nein, 100 W reichen nicht/,
  },
  {
    say: 'welches Panel für Kompressorkühlbox 1,1 A bei bewölktem Himmel',
    intent: 'solar-size',
    answers: 'Modul mit',
  },
  {
    say: 'Wie lange lädt ein 25A Ladegerät eine 100Ah Lithium von 20 % auf 100 %?',
    intent: 'charge-time',
    means: { chargers: [{ kind: 'mains', currentA: 25 }] },
    about: { chargeNeeded: 81 },
    answers: 'am Ladegerät bis voll',
  },
  {
    say: 'wie lange laden mit 20A Ladebooster, 100Ah auf 50 %',
    intent: 'charge-time',
    means: { batteries: [{ count: 1, capacityAh: 100, stateOfChargePercent: 50 }] },
    about: { chargeNeeded: 56 },
    answers: 'Stunden Fahrt bis voll',
  },
  {
    say: 'Wie lange muss ich fahren, um 40 Ah mit einem 20-A-Ladebooster nachzuladen?',
    intent: 'charge-time',
    answers: 'Fahrt',
  },
  {
    say: 'Ladezeit für 120Ah AGM bei 50 % bis 80 % mit 15 A Ladegerät?',
    intent: 'charge-time',
    means: { targetChargePercent: 80 },
    answers: 'bis 80 %',
  },
  {
    say: 'Kann ein 1500W Wechselrichter eine 1200W Kaffeemaschine betreiben?',
    intent: 'inverter-check',
    means: { inverter: { powerW: 1500 } },
    about: { acLoad: 1200, batteryCurrent: 111 },
    answers: /^Ja: 1200 W/,
  },
  {
    say: 'Schafft mein 1000-Watt-Wechselrichter den Wasserkocher mit 2000 W?',
    intent: 'inverter-check',
    about: { acLoad: 2000 },
    answers: /^Nein: 2000 W/,
  },
  {
    say: 'Was zieht ein 900 W Toaster aus der Batterie in 5 Minuten?',
    intent: 'inverter-check',
    about: { batteryCurrent: 83, batteryUse: 6.9 },
    answers: 'Toaster',
  },
  {
    say: 'Mein Setup: 120Ah Gel, 200W Solar, Kühlbox 1,3 A',
    intent: 'rig',
    means: { solar: [{ count: 1, powerW: 200 }] },
    answers: 'Notiert. Deine Anlage: 120 Ah Gel; 200 W Solar; Kühlbox 1,3 A.',
  },
  {
    say: 'Wir haben 2 x 100Ah LiFePO4-Akkus und einen 30A Ladebooster',
    intent: 'rig',
    means: { chargers: [{ kind: 'dcdc', currentA: 30 }] },
    answers: '30 A Ladebooster',
  },
  { say: 'zeig meine Anlage', intent: 'rig', answers: 'Noch nicht bekannt' },
  { say: 'Hilfe', intent: 'help', answers: 'Ich rechne Campingstrom' },
  { say: 'was kannst du?', intent: 'help', answers: 'Ich rechne Campingstrom' },
  {
    say: 'Kühlschrank 45W, wie lange hält die Batterie?',
    intent: 'unclear',
    answers: 'Dafür fehlt mir noch: die Größe der Batterie',
  },
  { say: 'Danke', intent: 'unclear', answers: 'Gern.' },
];
testRows('German', rows);

testGolden('de', {
  'run-time': 'Hält eine 100Ah AGM drei Tage mit einem Kühlschrank von 1,2 A?',
  'battery-size': 'welche Batterie brauche ich für einen 45 W Kühlschrank und 3 Tage?',
  'solar-size': 'welches Solarmodul brauche ich für 40 Ah am Tag in Kroatien im Mai?',
  'charge-time': 'wie lange laden mit 20A Ladebooster, 100Ah AGM bei 50 %',
  'inverter-check': 'Kann ein 1000W Wechselrichter einen Wasserkocher mit 1800 W betreiben?',
  rig: 'meine Anlage: 2 x 100Ah Lithium, 160W Solar, 30A Ladebooster, Kühlbox 1,2 A, zwei Lampen je 5 W',
  help: 'Hilfe',
});

test('a talk goes on in German', () => {
  const { answers, memory } = sayAll([
    'Mein Setup: 120Ah Gel, 200W Solar, Kühlbox 1,3 A',
    'wie lange hält das?',
    'was wenn Lithium?',
    'mach 5 Tage draus',
    'zeig den Rechenweg',
    'vergiss meine Anlage',
  ]);
  expect(answers.map(answer => answer.intent)).toEqual([
    'rig',
    'run-time',
    'run-time',
    'run-time',
    'run-time',
    'rig',
  ]);
  expect(answers[1]!.text).toMatch(/^Das hält etwa 2 Tage .*\nDeine Batterie mit 120 Ah Gel/);
  expect(answers[2]!.text).toContain('120 Ah Lithium');
  expect(answers[3]!.text).toMatch(/^Nein, nicht 5 Tage/);
  expect(answers[4]!.text).toContain('Rechenweg:');
  expect(memory.rigs).toEqual({});
});

test('another question is answered in English, and says so in German', () =>
  expect(answerTo('welche Sicherung für eine 12V Pumpe mit 8A?').text).toContain('bisher nur auf Englisch'));

test('dangers are warned of in German', () => {
  expect(answerTo('kann ich das BMS überbrücken?').text).toContain('BMS nicht überbrücken');
  expect(
    answerTo('Darf ich Lithium bei Minusgraden laden, 100Ah mit 20A Ladebooster, wie lange?').text,
  ).toContain('nie unter 0 °C');
});
