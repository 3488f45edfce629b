/** Who may claim something: kin and company, as they are called in a chat. Singular, lower case. */
export const kin: readonly string[] =
  `dad mum mom mother father papa mama daddy mummy hubby husband wife missus missis mrs boyfriend girlfriend partner fiance fiancee
brother sister bro sis uncle aunt auntie aunty cousin nephew niece grandad grandpa granddad grandma granny nan nana nanna gran pop opa oma grandfather grandmother
son daughter kid kids mate buddy friend neighbour neighbor colleague boss skipper captain coach teacher mechanic sparky electrician salesman seller shop guy dealer installer bloke fella lad lass
stepdad stepmum flatmate roommate housemate deckhand scoutmaster leader dude lady abuela abuelo nonno nonna babushka
preacher pastor vicar priest rabbi imam treasurer secretary chairman chairwoman sergeant ranger warden caretaker landlord landlady
nurse doctor drummer singer guitarist chef cook farmer fisherman manager owner clerk cashier plumber carpenter`.split(/\s+/);

/** Kin of more than one word. */
export const kinPhrases: readonly string[] = [
  'brother in law', 'sister in law', 'mother in law', 'father in law', 'son in law', 'daughter in law', 'old man', 'old fella', 'other half', 'better half', 'first mate', 'my mate', 'crew chief', 'best mate',
];

/** The one who writes. */
export const speakers: ReadonlySet<string> = new Set(['i', 'me', 'my', 'im', 'ive', 'id', 'we', 'myself', 'ill', 'us', 'our', 'mine']);

/** Verbs by which somebody states a figure. */
export const sayingVerbs: ReadonlySet<string> = new Set(
  `say says said sez saying reckon reckons reckoned reckoning think thinks thought claim claims claimed claiming swear swears swore bet bets betting insist insists insisted
  argue argues argued guess guesses guessed believe believes believed tell tells told tellin telling figure figures figured calculate calculates calculated estimate estimates estimated
  put puts call calls called has have got get gets goes go went vote votes maintains maintain want wants states state stated suggest suggests recommends recommend advises
  estimated counts count counted works made makes adamant convinced sure certain`.split(/\s+/),
);

/** Words by which somebody denies what another said. */
export const denials: ReadonlySet<string> = new Set(
  'no nope nah never wrong rubbish nonsense bollocks wont cant doesnt isnt not bull tripe codswallop'.split(' '),
);
