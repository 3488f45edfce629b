title = Welche Batterie brauche ich?
example = welche Batterie für Kühlschrank 1,2 A und 3 Tage?

size-of-kind = Etwa { $ah } Ah { $kind } für { $time } ({ $range }): Kauf die nächste übliche Größe, { $size }.
size-or-lithium = Etwa { $ah } Ah { $kind } für { $time } ({ $range }), oder etwa { $lithium } Ah Lithium.
less-with-sun = Mit den { $sun } Ah am Tag von der Sonne reichen etwa { $less } Ah; die Größe oben gilt ganz ohne Sonne.
sun-covers = Die genannte Sonne deckt den Verbrauch: Die Größe oben gilt für Tage ohne sie.
nothing-counted = Was hereinkommt, ist nicht gezählt; Sonne und Fahrt strecken es.
big-draw = Ein Verbraucher zieht etwa { $amps } A: Prüf, ob die Batterie das darf.
too-big-draw = Ein Verbraucher zieht etwa { $amps } A, mehr als sie auf Dauer geben sollte ({ $limit } A): Nimm sie größer, oder sieh ins Datenblatt.
too-big-draw-many = Ein Verbraucher zieht etwa { $amps } A, mehr als sie zusammen auf Dauer geben sollten ({ $limit } A): Nimm sie größer, oder sieh ins Datenblatt.
long-life = Wenn du sie täglich so nutzt, lebt sie mit etwa { $ah } Ah länger, ein Drittel am Tag.
own-does = Deine { $ah } Ah reichen.
own-short = Deine { $ah } Ah reichen dafür nicht.
used = Du verbrauchst etwa { $daily } Ah am Tag, { $need } Ah für { $time }.
used-of-label = Du verbrauchst etwa { $daily } Ah am Tag, { $need } Ah für { $time }, und { $share } % vom Aufdruck sind nutzbar.
usual-sizes = Nächste übliche Größen: { $agm } AGM, { $lithium } Lithium (höchstens halb so schwer, viel mehr Zyklen).
