# German: menus, buttons and what the bot says besides its answers.

# Commands that have a name in this language, beside the English one.
name-power = strom
name-rig = anlage
name-working = rechenweg

about-power = Fragen: /strom Kühlbox 1,2A, 100Ah, 3 Tage?
about-rig = Deine Anlage zeigen oder eintragen: /anlage 100Ah AGM
about-working = Zeigt, wie die letzte Antwort gerechnet ist
about-learn = Ein kurzer Kurs in Campingstrom (auf Englisch)
about-help = Was ich kann und wie du fragst
about-settings = Wonach ich mich in diesem Chat richte
about-privacy = Was ich speichere, warum und wie lange
about-export = Was ich von dir habe, als Datei
about-forget = Löscht, was ich gespeichert habe
about-language = Antworten in einer anderen Sprache: /language en
about-pictures = Bilder: an oder aus
about-bot = Campingstrom, gerechnet: wie lange er reicht, welche Batterie, welches Modul, mit Rechenweg.

# What a command says, in words that are understood in this language.
say-help = hilfe
say-rig = zeig meine anlage
say-rig-is = meine anlage ist { $rest }
say-working = zeig den rechenweg

button-working = Rechenweg zeigen
button-picture = Bild
button-place = Mein Standort
the-working = Der Rechenweg:
share-place = Standort teilen
share-how = Tippe unten auf „Standort teilen“ oder schreib den Ort: „in Freiburg“.
    Ich behalte ihn auf etwa 10 km genau, nur für die Sonne.

toast-old = Dieser Knopf ist von einer älteren Version von mir. Bitte frag noch einmal.
toast-gone = Ich sehe diese Nachricht nicht mehr. Bitte frag noch einmal.
toast-notYours = Nur wer gefragt hat oder Admin ist, kann diese Knöpfe drücken. Frag mich selbst mit /strom.
toast-moved = Das Gespräch ist weiter. Frag noch einmal, dann zeige ich es.

pictures-off = Gut, ich schicke hier nur noch Text. „/pictures on“ holt die Bilder zurück.
pictures-on = Gut, Bilder kommen wieder mit.
only-admin = Das kann für die Gruppe nur ein Admin einstellen.
