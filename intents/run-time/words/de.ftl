title = Wie lange hält das?
example = Kühlbox 45W, 100Ah AGM, wie lange hält das?

lasts = Das hält { $lasts }.
yes-lasts = Ja: Es hält { $lasts }, und du willst { $wanted }.
tight-lasts = Knapp: Es hält { $lasts }, und du willst { $wanted }.
no-lasts = Nein, nicht { $wanted }: Es hält { $lasts }.
used-up = Es ist nichts mehr zu holen: Die Batterie ist so leer, wie sie sein darf, oder leerer. Lade sie erst.
hangs-on-health = Es hängt davon ab, wie gesund die Batterie ist: Verbrauch etwas weniger oder lade etwas nach, dann reicht es.
to-make-it = Für { $wanted } brauchst du etwa { $more } Ah derselben Art, oder etwa { $perDay } Ah am Tag von Sonne oder Fahrt zurück.
over-limit = Ein Verbraucher zieht etwa { $amps } A, mehr als die Batterie auf Dauer geben sollte ({ $limit } A): Sie schaltet wohl früh ab.
sags = Unter { $amps } A sinkt sie halbvoll auf etwa { $sag } V, und Wechselrichter schalten bei etwa { $cutOut } V ab.
amps-on-average = { $amps } A im Schnitt
ah-a-day = { $ah } Ah am Tag
gives = { $bank } gibt etwa { $usable } Ah her; du verbrauchst etwa { $drawn }.

the-chat = die Gruppe
yours = Deine Anlage
rig-of = Die Anlage von { $name }
rig-lasts = { $rig } hält { $time }
first-out = { $rig } gibt zuerst auf, das hält { $time }. { $other }.
none-makes = Keine schafft { $time }: Am besten { $best }.
all-make = Alle schaffen { $time }: Mindestens { $least }.
some-make = Für { $time } reicht: { $made }. Nicht: { $others }.
rig-line = { $rig }: { $time }, { $usable } Ah nutzbar bei { $use } Ah am Tag.
