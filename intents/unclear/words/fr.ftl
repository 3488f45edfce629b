title = Redemande-moi

sample = Essaie « frigo 1,2 A, 100Ah, 3 jours ? » ou dis « aide ».
i-got = J'ai compris : { $parts }. Que veux-tu savoir : combien de temps ça tient, quoi monter, ou comment charger ?
welcome = De rien. Autre chose sur l'électricité ?
hello = Bonjour ! Que puis-je calculer pour toi ?
number-of-what = { $number } de quoi : ampères, ampères-heures, watts, volts, heures ?
no-question = Je n'y ai pas trouvé de question d'électricité. Que veux-tu savoir ?
