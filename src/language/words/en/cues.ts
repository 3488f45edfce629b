/**
 * What kind of talk was heard, each named for what the words ask or do.
 * Lexicon: `words/en/cues.ts` lists the ways to say each.
 */
export const cues = [
  // asking
  'ask-how-long', // how long, how many days/hours, will it last, get through
  'ask-what-size', // what size, how big, which (battery/panel), smallest, do I need, how much (solar)
  'ask-how-much', // how much, how many amps/Ah/watts, total, per day, use, consume, cost
  'ask-can-it', // can I, will it, is it enough, ok?, works?, go or no go
  'ask-which', // or: isolator or dcdc, agm or lithium; which is better
  'ask-what-is', // what is, whats a, meaning of, explain, difference between
  'ask-who-is-right', // who is right/wins/closer, bot tell him, settle this, bet
  'ask-whose', // whose fridge goes warm first
  'ask-why', // why, how come
  'ask-working', // show the working, how did you get that
  'ask-drop', // voltage drop, what's the drop
  'ask-charge-level', // how full, how much is left, state of charge
  'ask-yield', // what will it make/put in/harvest/give, produce
  'ask-total', // daily use, per day total, energy budget
  'ask-lowest', // how low does it get
  'ask-crank', // will it start/crank, before it won't start
  'ask-compare', // versus, vs, or, gives more, better
  'question-mark',
  // things spoken of (also without any figure)
  'battery',
  'starter',
  'second-battery',
  'solar',
  'controller',
  'charger',
  'isolator',
  'dcdc',
  'alternator',
  'smart-alternator',
  'generator',
  'mains',
  'power-station',
  'inverter',
  'cable',
  'auto-cable',
  'bs-gauge',
  'fuse',
  'monitor',
  'bms',
  'load',
  'sun',
  'series',
  'parallel',
  'bank',
  'volts',
  'agm',
  'gel',
  'flooded',
  'lfp',
  // doings
  'run',
  'last',
  'charge',
  'drive',
  'camp',
  'trip',
  'day-plan',
  'rest-reading',
  'on-charge',
  'under-load',
  'full',
  'flat-battery',
  'night',
  'no-charge',
  'carry-over', // "straight off the panel"
  // rig talk
  'rig',
  'save',
  'show',
  'add',
  'remove',
  'change',
  'forget',
  'everything',
  'mine',
  'own-statement',
  'statement',
  // turning the last question
  'what-if',
  'make-it',
  'and-with',
  'without',
  'only',
  'correction',
  'same-again',
  // teaching
  'learn',
  'next',
  'previous',
  'simpler',
  'quiz',
  'stop',
  'start-over',
  'quiz-answer',
  'progress',
  // social
  'help',
  'privacy',
  'greeting',
  'thanks',
  'chatter',
  'settings',
  'export',
  // somebody tries something
  'injection',
] as const;
export type Cue = (typeof cues)[number];


/**
 * The ways to say each cue: lower case, no apostrophes, hyphens as spaces; "*" stands for any one word.
 * Of phrases that start at the same word the longest counts.
 */
export const cuePhrases: Readonly<Partial<Record<Cue, readonly string[]>>> = {
  'ask-how-long': [    'how many more hours',
    'how many more days',
    'how many full days',
    'how many extra days',
'how long', 'hw long', 'how lng', 'howlong', 'how lon', 'how many days', 'how many nights', 'how many nites', 'how many hours', 'how many hrs', 'how many h', 'how many weeks', 'how many sleeps', 'how many more days', 'how many more nights', 'how many more hours', 'days off grid', 'how much time', 'what run time', 'run time', 'runtime', 'hours to full', 'hrs to full', 'time to full', 'time to empty', 'how soon', 'when does it', 'when will it', 'when is it', 'days how many', 'hours how many', 'what sort of time', 'how far will', 'how many minutes', 'how many mins', 'hours of driving', 'hrs of driving', 'what driving time', 'what hours', 'days how long', 'how long between', 'till its flat', 'until its flat', 'till its dead', 'before its flat', 'before its dead', 'before it dies', 'before it goes flat', 'til its flat', 'til its dead', 'til flat', 'till flat', 'until flat', 'time till flat', 'nights how many', 'how long for', 'wie lange', 'cuanto tiempo', 'combien de temps', 'how many dayz', 'when does the battery', 'how many days of', 'how may days', 'how may hours', 'how mny days', 'how mny hours', 'when would it', 'how manny days', 'how manny hours', 'when do we run out', 'when do i run out', 'when will we run out', 'days we get', 'hours we get', 'when am i out', 'how quick', 'how quickly', 'how fast', 'how fast will', 'time to charge', 'charge time', 'charging time', 'how many hrs driving', 'when should i recharge', 'endurance', 'autonomy', 'how many days autonomy', 'how many evenings', 'how many weekends', 'how much longer', 'how many more', 'hours left', 'days left', 'how long left'],
  last: ['last', 'lasts', 'lasting', 'hold out', 'holds out', 'hold up', 'survive', 'survives', 'get through', 'get thru', 'get us through', 'get us thru', 'get me through', 'get me thru', 'make it through', 'makes it through', 'make it thru', 'see us through', 'see me through', 'keep going', 'keep it going', 'keep us going', 'keep me going', 'keeps going', 'last us', 'last me', 'enough for', 'go the distance', 'do us', 'do me', 'get us by', 'get by', 'cover us', 'carry us through', 'see it through', 'keep running', 'stay alive', 'stay on', 'stays on', 'good for', 'good till', 'good until', 'good til', 'run out', 'runs out', 'go flat', 'goes flat', 'die on us', 'be dead', 'go dead', 'goes dead', 'hang on', 'get to', 'stretch to', 'do * days', 'do * nights', 'see a', 'get a'],
  'ask-what-size': ['need a battery', 'need a lithium battery', 'want a battery', 'looking for a battery', 'need a panel', 'need a solar panel', 'need a cable', 'need a fuse', 'need an inverter', 'need a generator', 'what size', 'wat size', 'wot size', 'what sized', 'which size', 'what sz', 'wat battery', 'wot battery', 'how big', 'how large', 'how small', 'smallest', 'biggest', 'minimum size', 'min size', 'what capacity', 'how much solar', 'how much panel', 'how much battery', 'how much lithium', 'how much agm', 'how many panels', 'how many watts of solar', 'how many watts of panel', 'how many watts of panels', 'how much panels', 'how many batteries', 'what rating', 'what gauge', 'what awg', 'what b&s', 'how thick', 'what thickness', 'size pls', 'size please', 'what mm2', 'how many mm2', 'how many mm', 'what mm', 'wat fuse', 'what wattage', 'what amperage', 'how beefy', 'solar needed', 'panel needed', 'battery needed', 'size battery', 'size panel', 'size cable', 'size fuse', 'size inverter', 'size generator', 'size genny', 'size wire', 'size needed', 'do i need a bigger', 'need what size', 'capacity needed', 'what ah', 'how many ah do i need', 'how many ah do we need', 'how many amp hours do i need', 'how many amp hours do we need', 'how many watts do i need', 'how many watts do we need', 'ah needed', 'watts needed', 'best size', 'right size', 'which gauge', 'what do i need to run', 'what do we need to run', 'i need enough', 'we need enough', 'size of battery', 'size of panel', 'size of cable', 'size of fuse', 'wie groß', 'which capacity', 'quelle taille', 'recommend a battery', 'recommend a panel', 'how many mm²', 'what mm²', 'which mm²', 'how big of', 'sizing', 'how many ah should', 'how many amp hours should', 'what would i need', 'what would we need', 'what will i need', 'what will we need', 'what does it need to be'],
  'ask-how-much': [    'how many amps hours',
    'how many amp hrs',
    'how many amphrs',
'how much', 'how many amps', 'how many ah', 'how many amp hours', 'how many watts', 'how many wh', 'how many watt hours', 'how many amp', 'how many kwh', 'how many * amps', 'how many * ah', 'consume', 'consumption', 'use up', 'pull outta', 'pull out of', 'pull off', 'what does it draw', 'what does it pull', 'what does that draw', 'what does that pull', 'what does that cost', 'draw from the battery', 'pull from the battery', 'battery amps', 'what do they use', 'what does it use', 'what does it cost', 'cost us in', 'cost me in', 'amps from the battery', 'how many volts', 'what current', 'what draw', 'suck out', 'suck from', 'take from the battery', 'take out of the battery', 'cost in ah', 'what amps', 'how mny amps', 'how many aH', 'how many amphours', 'how many ahs'],
  'ask-total': ['add this up', 'total per 24h', 'total in 24 hours', 'chewing through daily', 'chewing thru daily', 'use per night', 'use overnight', 'use in a night', 'the sum for', 'sum for', 'the sum for one day', 'the sum for a day', 'sum for one day', 'sum for a day', 'what does * use per night', 'what does * * use per night', 'what does * use a night', 'what does * * use a night', 'come to', 'comes to', 'adds up to', 'whats that over', 'what is that over', 'whats that come to', 'what does that come to', 'whats that a day', 'whats that per day', 'whats that all up', 'daily use', 'daily usage', 'daily total', 'total per day', 'per day total', 'total a day', 'a day total', 'total daily', 'daily consumption', 'daily draw', 'energy budget', 'power budget', 'add it up', 'add up', 'add them up', 'add that up', 'tally', 'tally up', 'sum it up', 'sum up', 'total it', 'in total', 'total up', 'total our', 'total my', 'total draw', 'total use', 'total usage', 'total consumption', 'power consumption', 'what do we use', 'what do i use', 'whats our use', 'what are we using', 'how much do we use', 'how much do i use', 'how much power do we use', 'how much power do i use', 'our use', 'our usage', 'my usage', 'our consumption', 'my consumption', 'daily ah', 'daily wh', 'daily amp hours', 'daily watt hours', 'ah per day', 'ah a day', 'wh per day', 'wh a day', 'amp hours per day', 'amp hours a day', 'watt hours per day', 'watt hours a day', 'ah / day', 'wh / day', 'daily needs', 'daily load', 'daily power', 'total load', 'use per day', 'use a day', 'using per day', 'using a day', 'use in a day', 'use each day', 'use every day', 'use in 24 hours', 'grand total', 'use in 24h', 'daily amp', 'what does all that', 'what does that lot', 'what is our daily', 'per 24h', 'usage per day', 'consume we', 'do we burn', 'we burning', 'am i using', 'are we using', 'draw per day', 'draw a day', 'daily energy', 'daily requirement', 'total energy', 'total ah', 'total wh', 'total amp hours', 'all up', 'chew through a day', 'go through a day', 'go thru a day', 'get through a day', 'the total', 'total please', 'total pls', 'whats the total'],
  'ask-can-it': ['will she be right', 'she be right', 'sweet as', 'doable', 'see me through', 'see us through', 'get me through', 'will it cop', 'gonna run', 'going to run', 'hows it go', 'how does it go', 'hows she go', 'how does she go', 'hows that go', 'how would it go', 'how would that go', 'how will it go', 'how do we go', 'how will we go', 'how do i go', 'will she be right', 'will she be', 'she be right', 'shell be right', 'will she go', 'will she last', 'will she do', 'good to go', 'are we right', 'am i right for', 'is that bad', 'is this bad', 'all good', 'is it any good', 'any good', 'any chance',     'enough for',
    'enough to',
    'enough to run',
    'keep up',
    'keep up with',
    'good enough for',
    'plenty for',
'can i', 'can we', 'can it', 'can my', 'can a', 'can the', 'can our', 'can u', 'will it', 'will i', 'will we', 'will my', 'will a', 'will that', 'will this', 'will the', 'will our', 'would it', 'would a', 'would my', 'would that', 'would the', 'could i', 'could it', 'could we', 'could a', 'could my', 'enough', 'enuf', 'enuff', 'ok', 'okay', 'alright', 'all right', 'works', 'does it work', 'go or no go', 'go no go', 'am i ok', 'are we ok', 'are we good', 'am i good', 'are we fine', 'fine', 'possible', 'handle', 'handles', 'cope', 'copes', 'manage', 'safe', 'is it safe', 'do we make it', 'will we make it', 'make it', 'does it', 'does that', 'do the job', 'up to it', 'good enough', 'too much', 'too big', 'too small', 'overkill', 'is that ok', 'is this ok', 'sweet', 'yes or no', 'y n', 'sufficient', 'adequate', 'should i be right', 'be right', 'right or wrong', 'should be fine', 'feasible', 'match', 'plenty', 'too little', 'ok to run', 'able to', 'sustainable', 'get away with', 'doable', 'allowed', 'is it possible', 'works on', 'enough to', 'sustain'],
  'ask-which': ['whats a good', 'what is a good', 'whats a decent', 'what is a decent', 'whats the best', 'what is the best', 'best battery', 'good battery', 'decent battery', 'what battery is best', 'which battery', 'what do i charge', 'what do we charge', 'what should i charge', 'what should we charge', 'what do i need to charge', 'best way to charge', 'how do i charge', 'how do we charge', 'how should i charge', 'how should we charge', 'which is better', 'which one', 'which do i', 'whats better', 'what is better', 'which is best', 'which gives more', 'which should', 'which of', 'which would', 'or should i', 'isolator or', 'dcdc or', 'dc dc or', 'dc to dc or', 'vsr or', 'b2b or', 'relay or', 'or dcdc', 'or dc dc', 'or dc to dc', 'or a dcdc', 'or a dc dc', 'or a dc to dc', 'or isolator', 'or an isolator', 'or vsr', 'or a vsr', 'or b2b', 'or a b2b', 'or lithium', 'or agm', 'or an agm', 'or lifepo4', 'or lfp', 'or a lithium', 'or one', 'which way', 'choosing between', 'deciding between', 'choose between', 'tossing up', 'torn between', 'which battery type', 'which type', 'what type of battery', 'what kind of battery', 'which kind', 'better for', 'should i get', 'should i go', 'should i buy', 'should we get', 'should we go', 'should i replace', 'worth going', 'worth paying', 'worth buying', 'worth spending', 'is it worth', 'worth it', 'worth the', 'worth upgrading', 'worth switching', 'do i need a dcdc', 'do i need a dc dc', 'need a dcdc', 'need a dc dc', 'need a dc to dc', 'need a b2b', 'what would you pick', 'which to get', 'better off with'],
  'ask-compare': ['versus', 'vs', 'v lithium', 'v agm', 'gives more', 'better', 'compare', 'compared', 'comparison', 'difference between', 'differences between', 'more usable', 'really usable', 'more than an', 'more than a', 'less than a', 'same as', 'against', 'than agm', 'over agm', 'compare usable', 'instead of agm', 'rather than', 'which gives', 'more usable power', 'which has more', 'which gets more', 'or lithium', 'or agm', 'or lifepo4', 'or lfp', 'or one', 'same thing', 'better than', 'pros and cons', 'compares', 'stack up', 'use of each', 'of each'],
  'ask-what-is': ['what is', 'whats a', 'whats an', 'whats', 'what are', 'wots a', 'wots an', 'wots', 'wats a', 'wats an', 'wats', 'what means', 'what does * mean', 'what does * * mean', 'what does * * * mean', 'meaning of', 'whats the meaning of', 'explain', 'define', 'definition of', 'what do you mean by', 'what is meant by', 'what the heck is', 'what the hell is', 'difference between', 'whats the difference', 'tell me what', 'eli5', 'what actually is', 'what exactly is', 'what on earth is', 'wtf is', 'what do they mean by', 'what do people mean by', 'what did you mean by', 'was ist', 'explain to me', 'what is the difference', 'whats the go with', 'whats this', 'whats that', 'mean', 'means', 'what does it mean', 'dont understand', 'dont get', 'whats with', 'hows a', 'how does a', 'how does an', 'how do', 'never heard of', 'is a watt', 'is an amp', 'are watts', 'are amps', 'stand for', 'stands for'],
  'ask-who-is-right': ['who is right', 'whos right', 'whose right', 'who s right', 'who wins', 'whos winning', 'who win', 'who is closer', 'whos closer', 'whose closer', 'who is closest', 'whos closest', 'whos close', 'who is nearer', 'whos nearer', 'settle', 'settle it', 'settle this', 'settle a bet', 'settle an argument', 'bot tell him', 'bot tell her', 'bot tell them', 'tell him', 'tell her', 'tell them', 'bet', 'a bet', 'wager', 'who is it', 'who is wrong', 'whos wrong', 'who buys', 'whos buying', 'who pays', 'who owes', 'which of us', 'which one of us', 'argument', 'arguing', 'disagree', 'disagreement', 'bet with', 'who do you reckon', 'who is correct', 'whos correct', 'whos got it', 'who has it', 'who is on the money', 'judge', 'referee', 'umpire', 'who gets', 'right or', 'am i right', 'is he right', 'he right', 'she right', 'they right', 'is she right', 'are they right', 'is that right', 'is he wrong', 'is she wrong', 'am i wrong', 'prove him wrong', 'prove her wrong', 'who knows better', 'who is talking rubbish', 'verdict', 'who has to', 'whose on the money', 'who shouts', 'who does the dishes', 'whos on the money', 'debate', 'dispute', 'who got it right', 'who was right', 'who cooks', 'who washes up', 'loser'],
  'ask-whose': ['whose fridge', 'whose battery', 'whose rig', 'whose setup', 'whose', 'which of them', 'whos fridge', 'whos battery', 'whos rig', 'which of the two', 'whose lasts', 'who lasts', 'who goes flat first', 'who runs out first', 'mine or', 'or mine', 'whose goes', 'whos goes'],
  'ask-why': ['why', 'how come', 'why is', 'why cant', 'why not', 'why does', 'why do', 'warum'],
  'ask-working': ['be more exact', 'working', 'workings', 'show the working', 'show working', 'show your working', 'show the maths', 'show the math', 'how did you get', 'how do you get', 'how do you work that out', 'how did you work', 'how is that calculated', 'how was that calculated', 'how do you know', 'the maths', 'the math', 'prove it', 'where does that come from', 'the sums', 'step by step', 'show me how', 'how do you figure', 'how come that', 'show us how', 'formula', 'show calculation', 'the calculation', 'the calcs', 'sources', 'why that'],
  'ask-drop': ['voltage drop', 'volt drop', 'volts drop', 'whats the drop', 'what is the drop', 'what drop', 'the drop', 'drop on', 'drop over', 'drop in', 'how much drop', 'how many volts do i lose', 'lose in the cable', 'volts lost', 'voltage loss', 'how much do i lose', 'how much do we lose', 'how much will i lose', 'loss in the cable', 'vdrop', 'v drop', 'drop across', 'drop for', 'drop with', 'drop at', 'volts do i lose', 'spannungsabfall', 'drop', 'loss on', 'volts will i lose', 'volts at the end', 'volts at the far end', 'volts at the fridge'],
  'ask-charge-level': ['any good on a', 'any good on the', 'is that any good', 'any good for a battery', 'is * full', 'is * flat', 'is the * full', 'is the * flat', 'is my * full', 'is my * flat', 'is our * full', 'how full', 'how charged', 'state of charge', 'how much is left', 'how much left', 'hows the battery', 'how flat', 'how empty', 'charge level', 'what percent', 'what percentage', 'whats that in percent', 'what soc', 'is it full', 'is it flat', 'is it dead', 'be full', 'must be full', 'full right', 'battery full', 'is the battery full', 'is it charged', 'in percent', 'as a percentage', 'how many percent', 'how much charge', 'how much juice', 'how much is in it', 'how discharged', 'percent full', 'how low is it', 'what state', 'how much have i got left', 'how much have we got left', 'how much battery left', 'how much battery have i', 'how much battery is left', 'is that full', 'is that flat', 'is that low', 'what level', 'nearly flat', 'nearly full', 'wat percent', 'full or not', 'soc'],
  'ask-yield': ['put in', 'puts in', 'produce', 'produces', 'harvest', 'harvests', 'yield', 'yields', 'generate', 'generates', 'put out', 'puts out', 'putting in', 'get from', 'get out of', 'expect from', 'what will it make', 'will it make', 'make in', 'make a day', 'make per day', 'make on', 'make at', 'make round', 'make around', 'make near', 'will make', 'should make', 'panel make', 'panels make', 'give me a day', 'give us a day', 'give me per day', 'give us per day', 'bring', 'brings', 'bring in', 'deliver', 'delivers', 'output', 'what would it make', 'what will that make', 'solar make', 'solar give', 'panel give', 'panels give', 'how much will we get', 'how much sun', 'what do i get', 'what should i get', 'what will i get', 'ah from', 'amp hours from', 'wh from', 'watt hours from', 'expect in', 'can i expect', 'should i expect', 'what should i expect', 'make next', 'make', 'give', 'gives', 'return', 'whats it worth', 'collect', 'pump in', 'pumps in', 'bringing in', 'charge per day from', 'making', 'good for a day', 'daily yield', 'daily harvest', 'daily output', 'earn'],
  'ask-lowest': ['and how low', 'how low', 'lowest', 'lowest point', 'how low does it get', 'how far down', 'how deep will', 'how deep do', 'low point', 'bottom out', 'worst point', 'how far does it drop', 'how far will it drop', 'how low do we get', 'how low will', 'minimum charge', 'how empty does'],
  'ask-crank': ['will it start', 'will it crank', 'still start', 'wont start', 'start after', 'crank after', 'start the car', 'start the engine', 'start tomorrow', 'start in the morning', 'will the car start', 'still crank', 'wont crank', 'start again', 'able to start', 'will she start', 'turn over', 'crank', 'start up after', 'will the van start', 'will the ute start', 'to start the', 'get it started', 'stop it starting', 'stranded', 'car start', 'van start', 'engine start', 'ute start', 'truck start', 'start the van', 'start the truck', 'start the ute', 'not start', 'will it still', 'it starts', 'left to start', 'cant start', 'no start', 'jump start after', 'drain the starter', 'drain my starter', 'kill the starter', 'flatten the starter', 'be able to start', 'start ok', 'fire up'],
  solar: ['flat on the roof', 'panels'],
  sun: ['sun', 'sunny', 'sunshine', 'sunlight', 'full sun'],
  run: ['run', 'runs', 'running', 'power', 'keep', 'drive the'],
  charge: ['charge', 'charges', 'charging', 'recharge', 'recharging', 'top up', 'top it up', 'top off', 'fill it', 'fill up', 'to fill', 'put back', 'back in', 'replenish', 'to full', 'get to full', 'fill the', 'filled', 'back up to', 'full again', 'refill', 'put * back', 'put * * back', 'topped up', 'to 100', 'laden', 'back to full', 'until full', 'till full', 'til full', 'charged'],
  drive: ['drive', 'driving', 'drove', 'driven', 'on the road', 'engine running', 'drives', 'hour drive', 'drivin', 'behind the wheel', 'trip home', 'idle', 'idling'],
  camp: ['camp', 'camped', 'camping', 'parked', 'free camp', 'staying', 'stay', 'boondocking', 'boondock', 'off grid', 'wild camp', 'wild camping', 'bush', 'beach', 'in the woods', 'at the lake', 'campsite', 'freecamp', 'at the river', 'at the beach', 'in the hills', 'standing', 'stationary', 'remote camp', 'dry camping'],
  trip: ['trip', 'trips', 'holiday', 'getaway', 'road trip', 'journey', 'expedition', 'weekend away', 'week away', 'days away', 'will our setup cope', 'track', 'tour', 'do we get through', 'will we get through', 'will we get thru', 'are we ok', 'are we fine', 'do we make it', 'will we make it', 'sustainable', 'camping trip', 'tramp', 'vacation', 'break even', 'end up at', 'end charge', 'what will be left'],
  full: ['full', 'fully charged', 'full charge', 'topped off', '100 percent', 'start full', 'charged up', 'brimmed'],
  'flat-battery': ['flat', 'dead', 'empty', 'dead flat', 'flat battery', 'drained'],
  night: ['overnight', 'overnite', 'all night', 'all nite', 'at night', 'at nite', 'nightly', 'nightime', 'night time', 'night', 'nights', 'tonight', 'over night', 'through the night', 'each evening', 'evening', 'evenings'],
  'no-charge': ['w / out charging', 'w out charging', 'between charges', 'without plugging in', 'no charge', 'no charging', 'no recharge', 'no hook up', 'no hookup', 'no hookups', 'no electric hook up', 'no electric hookup', 'without charging', 'no power', 'no sun', 'no solar', 'no driving', 'not charging', 'without recharging', 'no charge at all', 'no charging at all', 'nothing charging', 'no mains', 'without hookup', 'no top up', 'unpowered', 'without hook up', 'no ehu', 'no shore power', 'no power hookup', 'off hookup', 'nothing going in', 'no input', 'without any charging', 'no gen', 'no genny', 'no generator', 'no sunshine'],
  'carry-over': ['straight off', 'straight from the panel', 'straight from the sun', 'directly off', 'direct from', 'off the panel', 'straight off the panel', 'without a battery', 'no battery', 'without battery', 'off a panel', 'from the panel directly', 'direct off', 'straight to the panel'],
  series: ['series', 'in series', 'seires', 'serie'],
  parallel: ['parallel', 'in parallel', 'paralell', 'parallell', 'paralel', 'side by side', 'paralleled', 'paralleling'],
  bank: ['bank', 'banks', 'in total what have i got', 'what have i got', 'is what', 'what do i end up with', 'what does that make', 'combined', 'wire them', 'wired', 'hooked together', 'linked', 'join', 'joined', 'connected together'],
  cable: ['what mm2', 'wat mm2', 'which mm2', 'how many mm2', 'what mm²', 'which mm²', 'what awg', 'which awg', 'what gauge', 'which gauge', 'how thick'],
  volts: ['volts', 'voltage', 'volt', 'v'],
  monitor: ['reads', 'reading', 'multimeter', 'voltmeter', 'meter', 'display', 'gauge', 'monitor'],
  'rest-reading': ['nothings been running', 'nothing has been running', 'nothing been running', 'nothin on', 'nothing on it', 'off charge', 'off the charger', 'rested', 'at rest', 'resting', 'after sitting', 'sitting overnight', 'no load', 'nothing running', 'sat overnight', 'rested overnight', 'nothing on', 'been sitting', 'after a rest', 'disconnected', 'been rested', 'been resting', 'everything off', 'all off', 'with nothing', 'sat all night', 'after resting', 'a night off', 'settled', 'sat for', 'off all night', 'nothing connected', 'left overnight', 'stood overnight', 'unloaded', 'overnight rest', 'off overnight', 'in ruhe', 'nothing plugged in', 'rest'],
  'on-charge': ['while driving', 'while were driving', 'while we drive', 'engine on', 'engine running', 'motor running', 'on charge', 'while charging', 'is charging', 'solar on', 'sun on it', 'sun on the panel', 'on the charger', 'with the engine', 'charger on', 'being charged', 'plugged in', 'solars charging', 'under charge', 'when driving', 'while im driving', 'with the sun', 'whilst driving', 'charging at', 'when were driving', 'when its charging', 'alternator running', 'on hookup', 'on hook up', 'charging now', 'while the sun', 'driving along', 'at idle', 'with solar', 'sun is out', 'in full sun'],
  'under-load': ['with the * going', 'with the * * going', 'with the * and * going', 'with the * * and * going', 'with * going', 'under load', 'with the fridge running', 'fridge running', 'fridge on', 'with the fridge on', 'while the fridge', 'with everything on', 'with lights on', 'with the lights on', 'when the fridge', 'with a load', 'with load', 'everything running', 'compressor running', 'with the inverter on', 'when the inverter', 'kettle on'],

  rig: ['what does our setup look like', 'what does my setup look like', 'what does the setup look like', 'what you have now', 'what youve got now', 'setup look like', 'what you have for us', 'what you have for me', 'what you got for us', 'what you got for me', 'what youve got for us', 'what youve got for me', 'what you have on us', 'what you have on me', 'rig', 'my rig', 'our rig', 'setup', 'my setup', 'our setup', 'set up', 'my system', 'our system', 'system', 'my gear', 'our gear', 'my kit', 'our kit', 'my van has', 'our van has', 'outfit', 'the rig', 'rigs', 'what ive got', 'what weve got', 'my van', 'our van', 'my camper', 'our camper', 'in my van', 'electrics', 'my electrics'],
  save: ['save', 'save this', 'remember', 'remember this', 'store', 'note', 'note down', 'write down', 'keep this', 'log this', 'for next time', 'keep in mind', 'save my rig', 'save it', 'take note', 'jot down', 'record this', 'note that', 'put this down', 'memorise', 'memorize', 'set my rig', 'register'],
  show: ['what does our setup look like', 'what does my setup look like', 'what does the setup look like', 'setup look like',     'have you got saved',
    'got saved',
    'saved for',
    'what did i save',
    'have you saved',
    'what have you got for me',
'show', 'show me', 'show my rig', 'show us', 'list', 'what is my rig', 'whats my rig', 'whats in my rig', 'what rig', 'what have you got for', 'what do you have for', 'tell me my rig', 'read back', 'whats our rig', 'whats my setup', 'whats our setup', 'display my rig', 'what have you saved', 'view', 'print my rig', 'what did i tell you', 'whats the rig', 'whats my', 'recap', 'whats on my rig', 'got down for', 'have down for', 'got on file', 'have on file', 'saved about my', 'saved about our', 'stored about my', 'stored about our', 'kept about my', 'got saved for', 'know about my rig', 'know about my setup', 'know about my gear'],
  add: ['another', 'dont forget', 'add', 'adding', 'also got', 'also have', 'plus add', 'add in', 'ive added', 'weve added', 'added', 'include', 'we also', 'i also', 'chuck in', 'throw in', 'bought a', 'got a new', 'new addition', 'adds'],
  remove: [    'scratch the',
    'scratch that',
    'scratch my',
'remove', 'take out', 'take off', 'take away', 'drop the', 'lose the', 'ditch', 'get rid of', 'leave out', 'skip the', 'delete the', 'scrap', 'sold the', 'binned', 'chuck out', 'pull out the', 'took out', 'left out', 'forget about the', 'forget the', 'get rid', 'sold', 'unplug', 'removing', 'cut the', 'cut out'],
  change: ['change', 'change the', 'swap', 'swapped', 'replace', 'replaced', 'upgrade', 'upgraded', 'update', 'updated', 'set the', 'make that', 'is now', 'now have', 'now has', 'edit', 'switch the', 'changed', 'upgrading', 'modify', 'went up to', 'correct the'],
  forget: ['forget', 'delete', 'erase', 'wipe', 'clear', 'forget me', 'forget us', 'forget everything', 'delete my', 'delete our', 'purge', 'reset', '/ forget', 'remove all', 'scrub', 'unlearn', 'get rid of everything', 'remove everything', 'forgotten', 'delete me', 'destroy', 'clean out'],
  everything: ['everything', 'all my data', 'all our data', 'all data', 'my data', 'our data', 'about us', 'about me', 'all of it', 'all you know', 'all you have', 'all that you know', 'everything you know', 'about our group', 'about this group', 'this chat', 'our group', 'this group', 'from this group', 'your memory', 'forget me', 'forget us', 'all memory', 'memory', 'the lot', 'all info', 'my info', 'our info', 'all about', '/ forget', 'what you remember', 'what you know', 'all records', 'everythin', 'evrything', 'the history', 'our history', 'my history', 'whole lot', 'everything youve got', 'delete me', 'all the data', 'all the info', 'data'],
  'own-statement': ['our * has', 'my * has', 'our * * has', 'my * * has', 'we have', 'we got', 'weve got', 'ive got', 'i have', 'i got', 'we have got', 'i have got', 'weve', 'ive', 'were running', 'im running', 'we run', 'i run', 'were on', 'ours is', 'mine is', 'mines', 'my rig is', 'our rig is', 'there is a', 'got a', 'got an', 'so weve got', 'i use', 'were using', 'im using', 'we carry', 'i carry', 'we also have', 'my battery is', 'our battery is', 'in the camper', 'in the van', 'installed', 'fitted', 'weve a', 'ive a'],
  mine: ['mine', 'mines', 'my rig', 'my setup', 'my own'],

  'what-if': ['what if', 'wat if', 'wot if', 'whatif', 'what about', 'wat about', 'how about', 'and if', 'suppose', 'say the', 'say its', 'say we', 'say i', 'but if', 'if instead', 'what happens if', 'would it be different', 'and when', 'assuming', 'instead', 'whatabout', 'and what if', 'now if', 'if we had', 'if i had', 'if it was', 'if its', 'imagine', 'lets say', 'pretend', 'what abt', 'and on', 'and in', 'and at', 'and for', 'if i use', 'if we use', 'if i used', 'if we used', 'if i swap', 'if we swap', 'and a', 'and an', 'same but', 'same with', 'same for', 'say its all', 'what would happen', 'wie wäre'],
  'make-it': ['make it', 'make that', 'change it to', 'change that to', 'lets make it', 'call it', 'better make it', 'bump it to', 'bump it up to', 'change to', 'switch to', 'turn it into', 'extend to', 'extend it to', 'stretch it to', 'ok make it', 'actually', 'try', 'lets try', 'make the'],
  'and-with': ['and with', 'and with the', 'now with', 'and now with', 'with the * too', 'as well', 'too', 'also with', 'plus', 'and also', 'and add', 'on top of that', 'if i add', 'if we add', 'if i also', 'if we also', 'adding', 'and the', 'also', 'along with', 'together with', 'with also', 'and i add', 'and then', 'chuck in', 'throw in'],
  without: ['without', 'w/o', 'leave out', 'leaving out', 'no more', 'excluding', 'except', 'not counting', 'turn off', 'switch off', 'turned off', 'switched off', 'sans', 'wihtout', 'witout', 'without the', 'and without', 'if i skip', 'if we skip', 'skip', 'ignore the', 'ignoring', 'if we turn off', 'forgetting', 'less the', 'drop the', 'lose the', 'ditch the', 'unplug'],
  only: ['only', 'just', 'nothing else', 'nothin else', 'thats it', 'thats all', 'n nothin else', 'just the', 'only the', 'on its own', 'by itself', 'and nothing else'],
  'same-again': ['same again', 'again', 'same question', 'and for', 'same thing for', 'do it again', 'same but', 'same for', 'redo', 'rerun', 'once more', 'recalculate', 'recalc', 'same with'],

  learn: ['teach', 'teach me', 'teach us', 'lesson', 'lessons', 'learn', 'learning', 'course', 'tutorial', 'beginner', 'total beginner', 'basics', 'from zero', 'from scratch', 'from the start', 'from the beginning', 'one thing at a time', 'start me', 'start at the beginning', 'i know nothing', 'know nothing', 'new to this', 'for dummies', 'for beginners', 'school me', 'educate', 'training', 'class', 'where do i start', 'explain it all', 'crash course', 'start the lessons', '/ learn', 'from square one', 'square one', 'teaching', 'learn me', '101', 'teach the basics', 'walk me through', 'the ropes', 'start with the basics', 'noob', 'newbie lessons', 'continue lesson', 'study', 'start teaching', 'begin the course', 'guide me'],
  next: ['next', 'next one', 'next lesson', 'next step', 'next please', 'go on', 'continue', 'carry on', 'keep going', 'more', 'what next', 'whats next', 'and then', 'proceed', 'onwards', 'got it', 'move on', 'ok next', 'next pls', 'nxt', 'go ahead', 'ready', 'understood', 'next bit', 'next part', 'forward'],
  previous: ['previous', 'back', 'go back', 'last one again', 'the one before', 'prev', 'back one', 'step back', 'previous lesson', 'one back'],
  simpler: ['simpler', 'simple', 'easier', 'dumb it down', 'in simple words', 'simpler please', 'plain english', 'too hard', 'dont get it', 'i dont get it', 'i dont understand', 'like im five', 'eli5', 'more simply', 'in easy words', 'simplify', 'slower', 'too complicated', 'easier words', 'explain like', 'in english', 'explain again', 'say it simpler', 'again simpler', 'dumber', 'for a kid', 'confused', 'lost me', 'you lost me', 'didnt get that', 'huh'],
  quiz: ['quiz', 'quiz me', 'test me', 'test us', 'quiz us', 'ask me a question', 'ask me something', 'give me a question', 'another question', 'question me', 'test my knowledge', 'pop quiz', '/ quiz', 'exam', 'try me', 'quizz'],
  stop: ['stop', 'stop it', 'enough', 'quit', 'exit', 'end', 'thats enough', 'no more', 'cancel', 'finish', 'end the lesson', 'shut up', 'pause', 'im done', 'stop the quiz', 'stop please', 'done', 'thats it for now', 'leave it', 'nevermind', 'never mind', '/ stop', '/ cancel', 'give up', 'i give up', 'im out'],
  'start-over': ['start over', 'restart', 'start again', 'from the top', 'reset the lessons', 'begin again', 'reset lessons', 'start from the beginning', 'back to the start', 'lesson one', 'lesson 1', 'all over again'],
  progress: ['progress', 'my progress', 'how am i going', 'how far am i', 'where am i up to', 'where was i', 'my score', 'how many lessons', 'how am i doing', 'what have i learned', 'how did i do', 'where are we up to', 'how many left'],

  help: ['what * can i ask', 'what * * can i ask', 'what * * * can i ask', 'things can i ask', 'stuff can i ask', 'what can you answer', 'what do you know', 'help', '/ help', '/ start', 'what can you do', 'what can u do', 'what can you help', 'what can you help us with', 'what can i ask', 'what can we ask', 'how does this bot work', 'how does this work', 'how do i use', 'how do we use', 'how do you use', 'commands', 'what do you do', 'what are you', 'who are you', 'what is this bot', 'whats this bot', 'instructions', 'what are you for', 'what are you good for', 'how do you work', 'example questions', 'examples', 'some examples', 'what else can you do', 'menu', 'manual', 'what can it do', 'what can this', 'what does this bot', 'what does this thing do', 'how to use', 'what questions', 'what sort of questions', 'what kind of questions', 'hilfe', 'ayuda', 'aide', 'what can ya do', 'what do u do', 'what are your', 'what r u', 'wat can u do', 'what is billywatt', 'whats billywatt', 'bot what can you', 'usage instructions', 'give me some example', 'what do i ask'],
  privacy: ['who else can see', 'who else sees', 'who else reads', 'who can read this', 'privacy', '/ privacy', 'what do you store', 'what do you keep', 'what do you save', 'what data', 'do you store', 'do you save', 'do you keep', 'do you record', 'are you recording', 'recording', 'what info', 'who can see', 'what do you know about', 'my data', 'our data', 'is my data', 'private', 'does this thing save', 'save what we say', 'what do you remember about', 'what do you remember', 'spying', 'spy', 'gdpr', 'personal data', 'data safe', 'do you share', 'listening', 'are you listening', 'do you read', 'read our messages', 'our messages', 'store our', 'keep our', 'log our', 'do you log', 'stored', 'where is my data', 'where is our data', 'data stored', 'data kept', 'who reads', 'who sees', 'store from', 'does the bot save', 'does the bot keep', 'does the bot store', 'does it save', 'does it store', 'does it record', 'does this bot save', 'does this bot store', 'does this bot keep', 'does this bot record', 'tracking us', 'do u store', 'do u save', 'do u keep', 'u store', 'u keep on', 'do u record', 'sell our', 'sell my', 'information do you', 'info do you', 'encrypted', 'collect about', 'does this thing store', 'does this thing keep', 'does this thing record', 'what have you stored', 'what have you got on', 'have you got on us', 'have you got on me', 'data protection', 'privacy policy', 'save what', 'are we being recorded', 'keep what we', 'do you remember what we', 'keep about'],
  greeting: ['hi', 'hello', 'hey', 'gday', 'g day', 'howdy', 'morning', 'good morning', 'good evening', 'good afternoon', 'hiya', 'hallo', 'hola', 'yo', 'hi all', 'hey all', 'evening all', 'moin', 'arvo all', 'greetings', 'sup'],
  thanks: ['thanks', 'thank you', 'thx', 'ta', 'cheers', 'legend', 'ur a legend', 'youre the best', 'good bot', 'nice one', 'much obliged', 'thankyou', 'tks', 'tysm', 'ty', 'danke', 'merci', 'gracias', 'great bot', 'awesome', 'youre a legend', 'well done', 'appreciate it', 'brilliant', 'love it', 'top stuff', 'good on ya', 'bloody legend', 'onya', 'champion', 'best bot', 'youre great'],
  chatter: ['last night', 'last week', 'last time', 'last year', 'last trip', 'last weekend', 'last month', 'last summer', 'last winter', 'lol', 'haha', 'hahaha', 'lmao', 'rofl', 'nah', 'yeah nah', 'see ya', 'see yas', 'see you at', 'see you', 'drongo', 'mate', 'beer', 'beers', 'fishing', 'fish', 'bbq', 'snags', 'sausages', 'firewood', 'good night', 'goodnight', 'cya', 'lmfao', 'hehe', 'yep', 'yeah', 'ferry', 'swim', 'surf', 'who ate', 'whos bringing', 'who has', 'marshmallows', 'bait', 'caught', 'dinner', 'lunch', 'breakfast', 'brekkie', 'happy birthday', 'footy', 'dog', 'kids'],
  settings: ['settings', '/ settings', 'mains voltage', 'set mains', 'preferences', 'options', 'configure'],
  export: ['export', 'my data file', 'download my data', 'give me my data', '/ export', 'copy of my data'],

  injection: ['system prompt', 'developer mode', 'ignore all previous', 'ignore previous', 'ignore all prior', 'ignore your instructions', 'your token', 'bot token', 'api key', 'your instructions', 'print your', 'reveal your', 'jailbreak', 'you are now', 'drop table', 'process env', 'environment variables', 'admin mode', 'sudo', 'eval', 'disregard', 'pretend to be', 'act as', 'your password', 'secret key', 'database password', 'rm rf', 'alert'],
};
