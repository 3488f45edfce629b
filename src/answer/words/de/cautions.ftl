# German: one short sentence each. All defer to local rules and licensed people.

caution-fuse-at-battery = Sicherung an die Batterie setzen, so nah am Pol wie möglich.
caution-mains-wiring = Feste 230-V-Leitungen gehören in die Hand einer Elektrofachkraft.
caution-backfeed = Nie einen Wechselrichter in den Landstromeingang oder eine Steckdose einspeisen: blanke Steckerstifte stehen unter Spannung. Nimm die Steckdose am Wechselrichter oder eine Elektrofachkraft.
caution-battery-gas = Bleibatterien geben beim Laden explosives Gas ab: Kasten lüften, keine Funken.
caution-lithium-cold = Lithium nie unter 0 °C laden und bis 5 °C nur sanft: sonst gehen die Zellen kaputt.
caution-bypass-bms = Das BMS nicht überbrücken: Es steht zwischen der Lithiumbatterie und einem Brand. Such die Ursache oder frag den Händler.
caution-mixed-batteries = Keine Batterien verschiedener Art, Größe oder verschiedenen Alters zusammenschalten, und nie Lithium direkt an Blei.
caution-big-current = Große Ströme: kurze, dicke Kabel, feste Kabelschuhe, passende Sicherung. Lass es von einer Fachkraft prüfen.
caution-no-fuse = Nie eine Sicherung weglassen, überbrücken oder zu groß wählen: Dann brennt das Kabel, und mit ihm das Fahrzeug.
caution-carbon-monoxide = Kohlenmonoxid tötet: Stromerzeuger und Motoren nur draußen, weit weg von Zelten und Fenstern.
caution-fuel-heater = Brennstoffheizungen brauchen ihren Auspuff draußen und einen funktionierenden CO-Melder.
caution-medical = Ein medizinisches Gerät braucht eine Reserve, die nicht an einer Batterie hängt; frag den Hersteller oder deine Klinik.
caution-starter-reserve = Die Starterbatterie ist zum Starten da: halte eine Starthilfe bereit und nimm fürs Camp eine zweite Batterie.
caution-surge = Motoren und Kompressoren ziehen beim Anlaufen kurz ein Mehrfaches ihrer Leistung.
caution-alternator-share = Das ist viel für die meisten Lichtmaschinen: prüf ihre Leistung und ob sie im Leerlauf kühl bleibt.
caution-plate-first = Das Typenschild des Geräts und die örtlichen Regeln gehen vor.
caution-park-rules = Frag auf dem Platz: Viele begrenzen Laufzeit und Lärm von Stromerzeugern.
caution-high-dc = Über etwa 60 V Gleichspannung kann eine Berührung verletzen: Module beim Anschließen abdecken und von einer Fachkraft prüfen lassen.
