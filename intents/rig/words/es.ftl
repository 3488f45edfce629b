title = Tu equipo
example = mi equipo: 100Ah AGM, nevera 1,2 A, 160W solar

your-rig = tu equipo
the-rig = el equipo
rig-of = el equipo de { $owner }
unknown-rig = Todavía no conozco { $name }. ¿Qué lleva?
tell-rig = Dímelo en una línea, por ejemplo «mi equipo: 100Ah AGM, nevera 1,2 A, 160W solar».
only-admin = Solo un administrador puede borrar el equipo del grupo.
deleted = Hecho: he borrado { $name }.
nothing-so-far = nada todavía
rig-shown = { $name }: { $what }.
rig-kept = Apuntado. { $name }: { $what }.
rig-changed = Cambiado. { $name }: { $what }.
not-found = No he encontrado { $missed }.
next-use = ¿cuál es nuestro consumo diario?

# A shared location.
north = N
south = S
east = E
west = O
sun-noted = Anotado: sol en { $latitude }° { $ns }, { $longitude }° { $ew }
nearest-town = , la ciudad más cercana { $town }
place-kept = Guardado con unos 10 km de precisión. Nombra otro lugar cuando quieras y tomo ese.
next-panel = ¿qué panel solar necesito?
