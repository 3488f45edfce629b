# French: one short sentence each. All defer to local rules and licensed people.

caution-fuse-at-battery = Mets le fusible côté batterie, le plus près possible de la borne.
caution-mains-wiring = Le câblage fixe en 230 V est l'affaire d'un électricien qualifié.
caution-backfeed = Ne branche jamais un onduleur sur la prise d'alimentation du camping-car ni sur une prise murale : les broches nues seraient sous tension. Utilise la prise de l'onduleur, ou un électricien qualifié.
caution-battery-gas = Les batteries au plomb dégagent un gaz explosif en charge : ventile le coffre, pas d'étincelle.
caution-lithium-cold = Ne charge jamais du lithium sous 0 °C, et doucement jusqu'à 5 °C : ça détruit les cellules.
caution-bypass-bms = Ne contourne pas le BMS : c'est lui qui protège la batterie lithium du feu. Cherche pourquoi il coupe, ou vois le vendeur.
caution-mixed-batteries = N'assemble pas des batteries de type, d'âge ou de taille différents, et jamais lithium et plomb en direct.
caution-big-current = Gros courants : câbles courts et épais, cosses serrées, fusible adapté. Fais contrôler par un professionnel.
caution-no-fuse = Ne supprime, ne ponte et ne surdimensionne jamais un fusible : c'est le câble qui brûlerait, et le véhicule avec.
caution-carbon-monoxide = Le monoxyde de carbone tue : groupe et moteur seulement dehors, loin des tentes et des aérations.
caution-fuel-heater = Un chauffage à combustion a besoin d'un échappement dehors et d'un détecteur de CO qui marche.
caution-medical = Un appareil médical a besoin d'un secours qui ne dépend pas d'une seule batterie ; demande au fabricant ou à ta clinique.
caution-starter-reserve = La batterie de démarrage sert à démarrer : garde un booster de démarrage et prends une seconde batterie pour le camp.
caution-surge = Moteurs et compresseurs tirent plusieurs fois leur puissance un instant au démarrage.
caution-alternator-share = C'est beaucoup pour la plupart des alternateurs : vérifie sa puissance et qu'il reste froid au ralenti.
caution-plate-first = La plaque de l'appareil et les règles locales passent avant.
caution-park-rules = Demande au camping : beaucoup limitent les heures et le bruit des groupes.
caution-high-dc = Au-dessus d’environ 60 V continu, un contact peut blesser : couvrez les panneaux et faites vérifier par un professionnel.
