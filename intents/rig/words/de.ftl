title = Deine Anlage
example = meine Anlage: 100Ah AGM, Kühlbox 1,2 A, 160W Solar

your-rig = deine Anlage
the-rig = die Anlage
rig-of = die Anlage von { $owner }
unknown-rig = Noch nicht bekannt: { $name }. Was gehört dazu?
tell-rig = Sag es in einer Zeile, etwa „meine Anlage: 100Ah AGM, Kühlbox 1,2 A, 160W Solar“.
only-admin = Die Anlage der Gruppe kann nur ein Admin löschen.
deleted = Gelöscht: { $name }.
nothing-so-far = noch nichts
rig-shown = { $name }: { $what }.
rig-kept = Notiert. { $name }: { $what }.
rig-changed = Geändert. { $name }: { $what }.
not-found = Nicht gefunden: { $missed }.
next-use = was verbrauchen wir am Tag?

# A shared location.
north = N
south = S
east = O
west = W
sun-noted = Gemerkt: Sonne bei { $latitude }° { $ns }, { $longitude }° { $ew }
nearest-town = , nächste Stadt { $town }
place-kept = Auf etwa 10 km genau behalten. Nenn jederzeit einen anderen Ort, dann gilt der.
next-panel = welches solarmodul brauche ich?
