title = Combien de temps ça tient ?
example = combien de temps tient une batterie lithium 100Ah avec un frigo 1,1 A ?

lasts = Ça tient { $lasts }.
yes-lasts = Oui : ça tient { $lasts }, et tu veux { $wanted }.
tight-lasts = Juste : ça tient { $lasts }, et tu veux { $wanted }.
no-lasts = Non, pas { $wanted } : ça tient { $lasts }.
used-up = Il n'y a plus rien à prendre : elle est aussi basse qu'elle doit l'être, ou plus. Recharge-la d'abord.
hangs-on-health = Tout dépend de la santé de la batterie : consomme un peu moins, ou recharge un peu, et ça tient.
to-make-it = Pour { $wanted } il te faut environ { $more } Ah de la même batterie, ou environ { $perDay } Ah par jour de soleil ou de route.
over-limit = Un appareil tire environ { $amps } A, plus que cette batterie ne devrait donner en continu ({ $limit } A) : elle coupera tôt.
sags = Sous { $amps } A elle tombe à environ { $sag } V à moitié pleine, et les onduleurs coupent vers { $cutOut } V.
amps-on-average = { $amps } A en moyenne
ah-a-day = { $ah } Ah par jour
gives = { $bank } donne environ { $usable } Ah utilisables ; tu tires environ { $drawn }.

the-chat = le groupe
yours = Ton installation
rig-of = L'installation de { $name }
rig-lasts = { $rig } tient { $time }
first-out = { $rig } lâche en premier, après { $time } ; { $other }.
none-makes = Aucune ne fait { $time } : au mieux, { $best }.
all-make = Toutes font { $time } : au moins, { $least }.
some-make = Pour { $time }, ça va : { $made }. Pas assez : { $others }.
rig-line = { $rig } : { $time }, { $usable } Ah utilisables à { $use } Ah par jour.
