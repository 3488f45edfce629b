import { present } from '#basics/present.ts';

/** What a camping group says in a week; names and places are invented. */

/** Talk that asks nothing of the bot. */
const talk = `
Morning all
who's in for the long weekend?
me
us too, arriving friday arvo
bringing the big tarp this time
did anyone see the weather, 34 on saturday
nah they said 28
our fridge beeped all night again
same, turned it down to 2 in the end
lol
the dog ate a whole packet of sausages
is the river up?
Nope, ankle deep
how's the new tent
leaks like a sieve
ours is fine so far
Road's closed past the bridge until 4
thanks for the heads up
can someone bring a spare gas bottle?
i've got two
what time are we leaving
6 at the latest
that's what you said last year
@kim_c did you pack the axe
@lou_b yes
/roll@other_bot
/weather saturday
100%
12
ok
see you at 5
we had 3 days of rain
that panel of yours is enormous
200 watts apparently
Sam reckons his battery lasts 4 days
no chance
i'd say 2
2 and a half
whatever
who is right
the kids want marshmallows
24 of us now
left or right at the fork
left, then 12 km of gravel
tyres at 24 psi
thanks
mate your lights were on til midnight
sorry
10 A fuse blew again
always does
anyone got a spare
I do, 10 and 15
you legend
photo please
https://example.org/camp/map
site 12 is free
site 14 is better, shade
shade is bad for the solar though
fair
it's full sun at 14 after lunch
🔥🔥🔥
🙏
haha
???
...
what if it rains
then we get wet
make it 5 days
can't, work on monday
without the trailer?
yes
help me unload later
help
start
next
stop
why
A
b
show my rig, said nobody
forget it
privacy please, said the bloke in the shower
the generator next door is loud
until 10 pm only
they ran it til 11
ranger's coming
good
coffee's on
2 sugars
3 for me
the inverter hums
ours too
pure sine mate
1000 W for a toaster, sure
worked fine last year
until it didn't
ha
how was the drive
7 hours with stops
we did it in 5
in the old bus?
in the old bus
bring your charger Kim
which one
the 10 amp one
ok got it
`;

/** What the same people would ask of it. */
const questions = `
how long will a 100Ah AGM run a 1.5A average fridge?
60W in amps at 12V
what size inverter for a 800W toaster?
what cable for 20A over 5m?
what fuse for 6mm² cable?
is 12.2V low for an AGM at rest?
how long to charge 100Ah AGM from 50% with a 25A dcdc?
what will 160W of solar make in Dubbo in October?
what battery for 40Ah a day for 2 days?
4 days, 120Ah lithium, fridge 1.8A average, 160W solar in Dubbo in October
what is a shunt?
fridge 1.5A average, lights 10W 4h: how much a day?
Sam says 4 days, Lou says 2. 100Ah lithium, fridge 1.5A average. Who is right?
my rig is 120Ah AGM and a 200W panel
show my rig
dcdc or isolator for a smart alternator?
what size generator for a 1200W kettle?
agm or lithium for a hot engine bay?
50Ah left
teach me
help
privacy
`;

const lines = (text: string): string[] => text.trim().split('\n');
const [said, asked] = [lines(talk), lines(questions)];

/** 200 lines of a week: talk, and among it questions, which are not addressed to the bot. */
export const chatter: readonly { readonly text: string; readonly isQuestion: boolean }[] = Array.from(
  { length: 200 },
  (_, i) =>
    i % 5 === 4
      ? { text: present(asked[((i / 5) | 0) % asked.length]), isQuestion: true }
      : { text: present(said[(i - ((i / 5) | 0)) % said.length]), isQuestion: false },
);
