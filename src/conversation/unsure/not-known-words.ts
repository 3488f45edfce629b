// How people say that they don't know what they were asked for. Words in small letters without apostrophes, as reading gives them.

const words = (text: string): ReadonlySet<string> => new Set(text.trim().split(/\s+/));
const phrases = (text: string): ReadonlySet<string> =>
  new Set(text.split(/[,\n]/).flatMap(phrase => phrase.trim() || []));

/** Words that stand between the others and change nothing. They are left out before anything is looked for. */
export const fillers = words(`
  i im ive id am is are was be a an the to of really honestly quite even just exactly precisely bloody well um umm uh er ah oh
  hm hmm sorry soz mate lol haha tbh pls please though but and so then me us my mine our it its that thats this them those these
  there off top afraid yet atm completely totally absolutely still only right now too either like ya bot bro cheers ta here for at
  got have has had
`);

/** People who are spoken of: who it is that doesn't know, where somebody speaks for another. */
export const ofOthers = words('he she they we hes shes theyre weve');
/** The same of all there are. */
export const ofNobody = words('neither none nobody');

/** Words that deny, and what may be denied behind them: "no idea", "haven't a clue", "not even sure". */
export const denying = words(`
  no not never dont doesnt didnt wont wouldnt cant cannot couldnt havent hasnt hadnt isnt aint nobody none neither without
`);
export const denied = words(`
  idea ideer idears clue clues clueless sure certain foggiest faintest scooby tell say label sticker number numbers figures marking
  markings marked written told said heard
`);
/** The same where what follows is what it is of: "don't know him". */
export const deniedOf = words('know knows kno no find see read looked checked measured remember recall');

/** That it isn't known, in other words. */
const unknown = phrases(`
  dunno, dunnow, dono, idk, nfi, unsure, clueless, stumped, wish knew, foggiest, faintest idea, hard say, hard tell, way knowing, no one knows, no one told, no one said
  how would know, how should know, how do know, how can know, how could know, how meant know, how supposed know
  who knows, god knows, lord knows, goodness knows, heaven knows, dear knows, who know, above pay grade
  you tell, you pick, you choose, you decide, you guess, take guess, take your pick, your guess, your guess good as
  pick one, pick something, choose one, label gone, label worn, label faded, label came, labels gone, labels worn, labels faded, labels come
  guess as good, your guess as good as, your guess as good
`);

/** Where it is to be found, or what it is. */
const where = phrases('where, what do look, what do you mean, what you mean, what does mean, what mean');

/** "How can I tell": what stands behind "how", and the words that come between. */
export const helping = words('do does can could would should might did');
export const finding = words('find tell check measure see read look work get spot test');

/** That it is what others have too. */
const usual = phrases(`
  usual, normal, standard, regular, average, ordinary, typical, default, bog standard, common one, basic one, nothing special, nothing fancy
  nothing unusual, whatever you think, whatever you reckon, whatever people, whatever most, what everyone, what everybody, what most, what do most, what do people
  whatever typical, whatever usual, whatever normal, whatever standard, whatever common, whatever average, whatevers typical
  whatevers usual, whatevers normal, whatevers standard, whatevers common, whats typical, whats usual, whats normal, whats standard
  what would typical, what would usual, what would normal, what typical, what usual, what normal, same as everyone, same as everybody
`);

/** Phrases by what they say. */
export const notKnowing = { unknown, where, usual } as const;

/** Words that say so only where the line says nothing else. */
export const sayingAlone: Readonly<Record<string, keyof typeof notKnowing>> = {
  beats: 'unknown',
  beyond: 'unknown',
  search: 'unknown',
  lost: 'unknown',
  pass: 'unknown',
  skip: 'unknown',
  guess: 'unknown',
  forgot: 'unknown',
  forgotten: 'unknown',
  whats: 'where',
  whatever: 'usual',
  common: 'usual',
  basic: 'usual',
  any: 'usual',
  anything: 'usual',
};

/** What more such a line says of what was asked for: how big which thing is, whose it is, whence it came. */
export const besides = words(`
  how big what size much many long full old which kind type sort one ones thing things stuff number numbers figure figures amount
  amps amp watts watt volts volt ah capacity rating values value draw draws pulls uses use power battery batteries panel panels solar
  fridge lights phones charger inverter cable fuse lead wire length distance current meter multimeter monitor gauge label sticker plate box
  case van camper caravan car ute truck trailer motorhome boat rental hire hired rented second hand secondhand used bought came come with
  in on were mums dads mum dad husband husbands wife wifes partner partners brother brothers sister sisters mates friends owner previous
  last new put fitted installed runs run running plug plugged hours drive driving about from where does do did can could would will should
  might your you most people campers everyone everybody else any all anywhere as maybe probably actually think suppose reckon guess
  assume something take go pick choose written printed say says stand stands find out find measure check tell see look mean means
`);

/** Words that open something else than what was asked for, where the line goes on with words of its own. */
export const opensElse = words('if whether about why who whos whats when where what');

/** Words that open a question about the word behind them. */
export const asks = words('is are isnt arent does do would will can should');

/** Words that stand for two. */
export const contracted: Readonly<Record<string, string>> = {
  wheres: 'where',
  whered: 'where',
  hows: 'how',
  howd: 'how',
};
