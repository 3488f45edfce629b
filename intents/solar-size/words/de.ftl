title = Welches Solarmodul brauche ich?
example = welches Solarmodul für 40 Ah am Tag in Kroatien im Mai?

panel-size = Etwa { $watts } W Solar ({ $range }){ $where }: Ein Modul mit { $size } W reicht.
panel-enough = Ja, { $has } W reichen: Du brauchst etwa { $watts } W Solar ({ $range }){ $where }.
panel-tight = Knapp: Du brauchst etwa { $watts } W Solar ({ $range }){ $where } und hast { $has } W.
panel-short = Nein, { $has } W reichen nicht: Du brauchst etwa { $watts } W Solar ({ $range }){ $where }.
no-sunrise = Kein Modul reicht: Die Sonne geht nicht auf{ $where }.
puts-back = Das bringt an einem mittleren Tag etwa { $ah } Ah zurück; für mehrere trübe Tage braucht die Batterie Reserve.
owner-covers = { $watts } W von { $owner } reichen.
owner-short = { $watts } W von { $owner } reichen nicht.
your-covers = Deine { $watts } W reichen.
your-short = Deine { $watts } W reichen nicht.
covers = { $watts } W reichen.
falls-short = { $watts } W reichen nicht.

no-because = Nein: { $reason }
only-in-sun = Nur solange die Sonne daraufscheint: { $reason }
panel-too-small = { $panel } W Modul geben bei voller Sonne etwa { $best } W, und { $names } zieht etwa { $draw } W.
no-sun-at-night = Nachts scheint keine Sonne; durch die Dunkelheit muss eine Batterie helfen.
stops-with-cloud = Es bleibt stehen, wenn eine Wolke oder der Abend die Sonne nimmt; dazwischen gehört eine Batterie.
off-battery-and-panel = Aus einer Batterie braucht es etwa { $ah } Ah ({ $kwh } kWh) am Tag, und etwa { $watts } W Modul, um das zurückzuladen.
off-battery = Aus einer Batterie braucht es etwa { $ah } Ah ({ $kwh } kWh) am Tag.
dark = Nachts scheint gar keine Sonne: Da muss eine Batterie helfen.
