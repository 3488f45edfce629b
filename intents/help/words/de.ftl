title = Was kann ich fragen?

what-i-do = Ich rechne Campingstrom: Schreib kurz, mit den Zahlen, die du hast. Zum Beispiel:
then = Dann „was wenn Lithium?“, „mach 5 Tage draus“ oder „zeig den Rechenweg“.
in-a-group = In einer Gruppe: Beginne mit /power oder antworte mir.
tell-once = Sag mir einmal deine Anlage, dann rechne ich damit.
