title = Que puis-je demander ?

what-i-do = Je calcule l'électricité du camping : écris court, avec les chiffres que tu as. Essaie :
then = Puis « et si lithium ? », « mets 5 jours » ou « montre le calcul ».
in-a-group = Dans un groupe : commence par /power, ou réponds-moi.
tell-once = Dis-moi une fois ton installation, je m'en sers ensuite.
