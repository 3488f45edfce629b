title = Quel panneau me faut-il ?
example = quel panneau pour 40 Ah par jour en Bretagne en mai ?

panel-size = Environ { $watts } W de solaire ({ $range }){ $where } : un panneau de { $size } W suffit.
panel-enough = Oui, { $has } W suffisent : il te faut environ { $watts } W de solaire ({ $range }){ $where }.
panel-tight = Juste : il te faut environ { $watts } W de solaire ({ $range }){ $where }, et tu as { $has } W.
panel-short = Non, { $has } W ne suffisent pas : il te faut environ { $watts } W de solaire ({ $range }){ $where }.
no-sunrise = Aucun panneau ne suffit : le soleil ne se lève pas{ $where }.
puts-back = Ça remet environ { $ah } Ah par jour un jour moyen ; plusieurs jours gris de suite demandent de la réserve de batterie.
owner-covers = Les { $watts } W de { $owner } suffisent.
owner-short = Les { $watts } W de { $owner } ne suffisent pas.
your-covers = Tes { $watts } W suffisent.
your-short = Tes { $watts } W ne suffisent pas.
covers = { $watts } W suffisent.
falls-short = { $watts } W ne suffisent pas.

no-because = Non : { $reason }
only-in-sun = Seulement tant que le soleil donne : { $reason }
panel-too-small = { $panel } W de panneau donnent environ { $best } W en plein soleil, et { $names } tire environ { $draw } W.
no-sun-at-night = il n'y a pas de soleil la nuit, il faut une batterie pour passer le noir.
stops-with-cloud = ça s'arrête dès qu'un nuage ou le soir prend le soleil ; il faut une batterie entre les deux.
off-battery-and-panel = Sur batterie, il faut environ { $ah } Ah ({ $kwh } kWh) par jour, et environ { $watts } W de panneau pour les remettre.
off-battery = Sur batterie, il faut environ { $ah } Ah ({ $kwh } kWh) par jour.
dark = La nuit il n'y a pas de soleil du tout : il faut une batterie.
