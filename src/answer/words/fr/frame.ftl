# French: what all answers share.

locale = fr-FR
assumed = Supposé
working = Calcul
careful = Attention
need = { $title } Il me manque pour cela : { $needs }. Tu peux me le dire ?
unsafe = Non, ne fais pas ça.
only-english = (Je ne réponds à cela qu'en anglais pour l'instant.)
speak-now = D'accord, je réponds ici en français à partir de maintenant.
and = et
that = cela

## Times. $n is the number as written, $count the same to choose the plural by.

for-ever = sans fin
minutes = { $n } { $count ->
    [one] minute
   *[other] minutes
}
hours = { $n } { $count ->
    [one] heure
   *[other] heures
}
days = { $n } { $count ->
    [one] jour
   *[other] jours
}
about-hours = environ { $n } { $count ->
    [one] heure
   *[other] heures
}
about-days = environ { $n } { $count ->
    [one] jour
   *[other] jours
}
one-day = un jour
unit-minutes = minutes
unit-days = { $count ->
    [one] jour
   *[other] jours
}

## How a message was read.

unknown-unit-near = Je ne connais pas « { $said } ». Tu veux dire « { $near } » ?
unknown-unit = Je ne connais pas l'unité « { $said } ». C'est quoi : A, Ah, W ou V ?
unit-mismatch = J'ai lu « { $said } » comme { $repair }.
absurd-value = « { $said } » ne peut pas être juste ({ $thing }). C'est combien en vrai ?
contradiction = Ça ne va pas ensemble : { $first } donne { $expected }, pas { $second }.
ambiguous = J'ai pris « { $said } » pour { $taken } ; si tu veux dire { $other }, dis-le.

## What is missing.

need-battery = la taille de la batterie (par exemple « 100Ah AGM »)
need-loads = ce qui tourne dessus (par exemple « frigo 1,2 A » ou « 40Ah par jour »)
need-run = ce que ça doit alimenter (par exemple « frigo 1,2 A » ou « 40Ah par jour »)

## Messages to tap next. Each has to be one that the bot reads.

next-help = aide
next-agm = et si AGM ?
next-lithium = et si lithium ?
next-solar = quel panneau me faut-il ?
next-yield = combien produit le panneau ?
next-panel = quel panneau me faut-il ?
next-battery = quelle batterie me faut-il ?
next-lasts = combien de temps ça tient ?
next-mine = combien de temps tient mon installation ?
next-days = mets { $n } jours
next-working = montre le calcul
next-mppt = et si MPPT ?
next-pwm = et si PWM ?
next-sunny = et si ensoleillé ?
next-overcast = et si couvert ?
next-path = coupleur ou booster ?
next-save = enregistre comme mon installation
