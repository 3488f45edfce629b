# French: menus, buttons and what the bot says besides its answers.

# Commands that have a name in this language, beside the English one.
name-power = energie
name-rig = installation
name-working = calcul

about-power = Demander : /energie frigo 1,2A, 100Ah, 3 jours ?
about-rig = Montrer ou noter ton installation : /installation 100Ah AGM
about-working = Montre comment la dernière réponse est calculée
about-learn = Un petit cours d’électricité en camping (en anglais)
about-help = Ce que je sais faire et comment demander
about-settings = Ce dont je tiens compte dans ce chat
about-privacy = Ce que je garde, pourquoi et combien de temps
about-export = Ce que je garde de toi, en fichier
about-forget = Efface ce que je garde
about-language = Répondre dans une autre langue : /language en
about-pictures = Images : avec ou sans
about-bot = L’énergie en camping, calculée : combien de temps, quelle batterie, quel panneau, avec le calcul.

# What a command says, in words that are understood in this language.
say-help = aide
say-rig = montre mon installation
say-rig-is = dans mon installation il y a { $rest }
say-working = montre le calcul

button-working = Voir le calcul
button-picture = Image
button-place = Ma position
the-working = Le calcul :
share-place = Partager ma position
share-how = Touche « Partager ma position » ci-dessous, ou écris le lieu : « à Lyon ».
    Je la garde à environ 10 km près, seulement pour le soleil.

toast-old = Ce bouton vient d’une ancienne version de moi. Demande encore une fois.
toast-gone = Je ne vois plus ce message. Demande encore une fois.
toast-notYours = Seule la personne qui a demandé, ou un admin, peut utiliser ces boutons. Demande-moi avec /energie.
toast-moved = La conversation a avancé. Demande encore une fois et je le montre.

pictures-off = D’accord, seulement du texte ici. « /pictures on » remet les images.
pictures-on = D’accord, les images reviennent.
only-admin = Seul un admin peut régler cela pour le groupe.
