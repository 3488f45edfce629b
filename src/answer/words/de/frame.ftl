# German: what all answers share.

locale = de-DE
assumed = Angenommen
working = Rechenweg
careful = Achtung
need = { $title } Dafür fehlt mir noch: { $needs }. Sagst du es mir?
unsafe = Nein, bitte nicht.
only-english = (Das beantworte ich bisher nur auf Englisch.)
speak-now = Gut, ab jetzt antworte ich hier auf Deutsch.
and = und
that = das

## Times. $n is the number as written, $count the same to choose the plural by.

for-ever = unbegrenzt
minutes = { $n } { $count ->
    [one] Minute
   *[other] Minuten
}
hours = { $n } { $count ->
    [one] Stunde
   *[other] Stunden
}
days = { $n } { $count ->
    [one] Tag
   *[other] Tage
}
about-hours = etwa { $n } { $count ->
    [one] Stunde
   *[other] Stunden
}
about-days = etwa { $n } { $count ->
    [one] Tag
   *[other] Tage
}
one-day = einen Tag
unit-minutes = Minuten
unit-days = { $count ->
    [one] Tag
   *[other] Tage
}

## How a message was read.

unknown-unit-near = „{ $said }“ kenne ich nicht. Meinst du „{ $near }“?
unknown-unit = Die Einheit „{ $said }“ kenne ich nicht. Was ist es: A, Ah, W oder V?
unit-mismatch = „{ $said }“ lese ich als { $repair }.
absurd-value = „{ $said }“ kann nicht stimmen ({ $thing }). Wie viel ist es wirklich?
contradiction = Das passt nicht zusammen: { $first } macht { $expected }, nicht { $second }.
ambiguous = „{ $said }“ habe ich als { $taken } genommen; wenn du { $other } meinst, sag es.

## What is missing.

need-battery = die Größe der Batterie (etwa „100Ah AGM“)
need-loads = was daran läuft (etwa „Kühlbox 1,2 A“ oder „40Ah am Tag“)
need-run = was damit laufen soll (etwa „Kühlbox 1,2 A“ oder „40Ah am Tag“)

## Messages to tap next. Each has to be one that the bot reads.

next-help = Hilfe
next-agm = was wenn AGM?
next-lithium = was wenn Lithium?
next-solar = welches Solarmodul brauche ich?
next-yield = was bringt das Solar?
next-panel = welches Solarmodul brauche ich?
next-battery = welche Batterie brauche ich?
next-lasts = wie lange hält das?
next-mine = wie lange hält meine Anlage?
next-days = mach { $n } Tage draus
next-working = zeig den Rechenweg
next-mppt = was wenn MPPT?
next-pwm = was wenn PWM?
next-sunny = was wenn es sonnig ist?
next-overcast = was wenn es bewölkt ist?
next-path = Trennrelais oder Ladebooster?
next-save = merk dir das als meine Anlage
