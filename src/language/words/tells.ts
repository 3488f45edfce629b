/** Small and common words that give a language away, and how it is named. None is an English word of this trade. */
export interface Tells {
  readonly code: string;
  /** As problems name it. */
  readonly name: string;
  /** What people call it, without accents. */
  readonly called: readonly string[];
  readonly words: string;
  /** Those of which one is enough where nothing speaks for English. */
  readonly sure: string;
  /** Those that tell by themselves only in a message of a few words: "Hilfe". */
  readonly alone: string;
  /** Whether it has its words in `words/<code>/`; else the bot says that it can't read it. */
  readonly isRead: boolean;
}

export const tells: readonly Tells[] = [
  {
    code: 'en',
    name: 'English',
    called: ['en', 'english', 'englisch', 'anglais', 'ingles'],
    // They weigh against any other language.
    words: `the is are what how my our your with will would it its that this these for of to and can do does i we you from have has had
      need needs much many run runs last lasts should please if not on at when which who or be been there they get got about just only per day
      days hours by he she his her them long enough without over up out all any some more than then whats im ive dont
      fridge battery batteries lights kettle charger heater cable wire mate trip off as me`,
    sure: '',
    alone: '',
    isRead: true,
  },
  {
    code: 'de',
    name: 'German',
    called: ['de', 'deutsch', 'german', 'allemand', 'aleman'],
    words: `wie und der das dem ich ist nicht eine einen einem einer für fuer mit wir kann können konnte viel viele lange muss müssen sein
      auf tage tagen stunden stunde oder von vom zum zur nach bis zwei drei vier fünf akku laufen läuft laden täglich zeig zeige sind noch nur
      sonne wochenende woche nacht licht lampen fahren voll leer mach wenn warum strom aus bei haben habe als regler`,
    sure: `welche welchen welches welcher mein meine meinen meiner meinem unser unsere unseren reicht reichen brauche brauchen brauchst wieviel hält haelt
      halten schafft kühlbox kuehlbox kühlschrank kuehlschrank kompressorkühlbox wechselrichter ladebooster solarmodul wohnmobil kaffeemaschine
      wasserkocher ladegerät ladegeraet aufladen rechenweg kannst verbrauchen verbrauche darf dürfen bringt`,
    alone: 'hilfe danke datenschutz servus hallo',
    isRead: true,
  },
  {
    code: 'fr',
    name: 'French',
    called: ['fr', 'francais', 'french', 'franzosisch', 'frances'],
    words: `le les un une et pour avec je jours jour temps dans sur du batterie batteries heures heure nous faut il elle aux par ou tient dure durer
      panneaux solaire frigo chargeur nos votre peut puis besoin deux trois quatre cinq montre calcul charger consomme cette que qui ai sont mois
      semaine nuit moyenne lampe lampes plein est ça`,
    sure: `combien quel quelle quels quelles notre glacière onduleur cafetière bouilloire panneau réfrigérateur recharger suffit tenir montre affiche oublie efface peux consommation consommons fais sais`,
    alone: 'aide merci bonjour salut',
    isRead: true,
  },
  {
    code: 'es',
    name: 'Spanish',
    called: ['es', 'espanol', 'castellano', 'spanish', 'spanisch', 'espagnol'],
    words: `un una que qué para nuestra nuestro dura durar tiempo y es puedo puede por horas hora inversor placas cargar tengo tenemos dos tres cuatro cinco
      semana noche noches como son consumo consume hasta luces día dia el equipo instalación enseña muestra más`,
    sure: `cuánto cuanto cuánta cuántos cuantos cuántas cuantas nevera batería batería días necesito necesitamos cuál cargador frigorífico cafetera
      hervidor aguanta placa puedes haces basta bastan consumimos gastamos`,
    alone: 'ayuda gracias hola',
    isRead: true,
  },
  {
    code: 'it',
    name: 'Italian',
    called: [],
    words: 'il che quanto per con batteria mio mia giorni dura serve di della quale frigo ore ho posso una quanti',
    sure: '',
    alone: '',
    isRead: false,
  },
  {
    code: 'nl',
    name: 'Dutch',
    called: [],
    words: 'het een hoe lang mijn ik en van voor welke met accu koelkast dagen nodig gaat de uur wat heb',
    sure: '',
    alone: '',
    isRead: false,
  },
  {
    code: 'pt',
    name: 'Portuguese',
    called: [],
    words: 'quanto tempo uma com meu minha bateria geladeira dias preciso dura qual o os não para horas',
    sure: '',
    alone: '',
    isRead: false,
  },
];
