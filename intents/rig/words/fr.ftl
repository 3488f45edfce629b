title = Ton installation
example = mon installation : 100Ah AGM, frigo 1,2 A, 160W solaire

your-rig = ton installation
the-rig = l'installation
rig-of = l'installation de { $owner }
unknown-rig = Je ne connais pas encore { $name }. Qu'y a-t-il dedans ?
tell-rig = Dis-le en une ligne, par exemple « mon installation : 100Ah AGM, frigo 1,2 A, 160W solaire ».
only-admin = Seul un admin peut effacer l'installation du groupe.
deleted = C'est fait : { $name } est effacée.
nothing-so-far = rien pour l'instant
rig-shown = { $name } : { $what }.
rig-kept = Noté. { $name } : { $what }.
rig-changed = Changé. { $name } : { $what }.
not-found = Je n'y ai pas trouvé { $missed }.
next-use = quelle est notre consommation par jour ?

# A shared location.
north = N
south = S
east = E
west = O
sun-noted = Noté : soleil à { $latitude }° { $ns }, { $longitude }° { $ew }
nearest-town = , ville la plus proche { $town }
place-kept = Gardé à environ 10 km près. Nomme un autre lieu quand tu veux, je prends celui-là.
next-panel = quel panneau solaire me faut-il ?
