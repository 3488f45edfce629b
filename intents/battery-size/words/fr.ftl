title = Quelle batterie me faut-il ?
example = quelle batterie pour un frigo de 1,2 A pendant 3 jours ?

size-of-kind = Environ { $ah } Ah en { $kind } pour { $time } ({ $range }) : prends la taille courante au-dessus, { $size }.
size-or-lithium = Environ { $ah } Ah en { $kind } pour { $time } ({ $range }), ou environ { $lithium } Ah en lithium.
less-with-sun = Avec les { $sun } Ah par jour du soleil, environ { $less } Ah suffiraient ; la taille ci-dessus vaut sans soleil du tout.
sun-covers = Le soleil annoncé couvre la consommation : la taille ci-dessus vaut pour les jours sans lui.
nothing-counted = Rien de ce qui rentre n'est compté ; le soleil et la route prolongent.
big-draw = Un appareil tire environ { $amps } A : vérifie que la batterie le permet.
too-big-draw = Un appareil tire environ { $amps } A, plus qu'elle ne devrait donner en continu ({ $limit } A) : prends plus grand, ou vois la fiche du fabricant.
too-big-draw-many = Un appareil tire environ { $amps } A, plus qu'elles ne devraient donner en continu ({ $limit } A) : prends plus grand, ou vois la fiche du fabricant.
long-life = Utilisée ainsi chaque jour, elle vit plus longtemps à environ { $ah } Ah, un tiers par jour.
own-does = Tes { $ah } Ah suffisent.
own-short = Tes { $ah } Ah ne suffisent pas.
used = Tu consommes environ { $daily } Ah par jour, { $need } Ah pour { $time }.
used-of-label = Tu consommes environ { $daily } Ah par jour, { $need } Ah pour { $time }, et { $share } % de l'étiquette est utilisable.
usual-sizes = Tailles courantes au-dessus : { $agm } en AGM, { $lithium } en lithium (moitié du poids au plus, bien plus de cycles).
